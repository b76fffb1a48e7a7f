//! Arithmetic coding: each bit narrows an interval by how likely it was; a number in the last interval is the code.

use super::problem::Stop;

/// Where the bits go to or come from. Reading also notes what writing the same bits would have given.
pub(super) struct Coder<'a> {
    low: u64,
    high: u64,
    written: Vec<u8>,
    reading: Option<Source<'a>>,
    is_learning: bool,
}

struct Source<'a> {
    content: &'a [u8],
    /// The bytes of the content from where `low` and `high` are, and zeros behind it.
    window: u64,
    taken: usize,
}

const WIDTH: usize = 8;

impl Source<'_> {
    fn shift(&mut self) {
        let next = self.content.get(self.taken).copied().unwrap_or(0);
        self.window = self.window << 8 | u64::from(next);
        self.taken += 1;
    }
}

impl<'a> Coder<'a> {
    fn new(reading: Option<Source<'a>>) -> Self {
        Self {
            low: 0,
            high: u64::MAX,
            written: Vec::new(),
            reading,
            is_learning: false,
        }
    }

    /// Leaves out what nobody can foresee: nothing is to be learnt from it.
    pub fn learning(self) -> Self {
        Self {
            is_learning: true,
            ..self
        }
    }

    /// Codes bits as [`Self::even`] does, of which nothing can be learnt.
    pub fn unforeseen(&mut self, bits: u32, wanted: u32) -> Result<u32, Stop> {
        if self.is_learning {
            return Ok(0);
        }
        self.even(bits, wanted)
    }

    pub fn writing() -> Self {
        Self::new(None)
    }

    pub fn reading(content: &'a [u8]) -> Self {
        let mut source = Source {
            content,
            window: 0,
            taken: 0,
        };
        for _ in 0..WIDTH {
            source.shift();
        }
        Self::new(Some(source))
    }

    /// Codes a bit that is one with the chance `one` of 65 536: writes `wanted`, or reads and gives what was written.
    pub fn bit(&mut self, one: u16, wanted: bool) -> Result<bool, Stop> {
        let one = u64::from(one.max(1));
        let middle = self.low + ((self.high - self.low) >> 16) * one;
        let bit = match &self.reading {
            None => wanted,
            Some(source) => source.window <= middle,
        };
        if bit {
            self.high = middle;
        } else {
            self.low = middle + 1;
        }
        while (self.low ^ self.high) >> 56 == 0 {
            self.written.push((self.low >> 56) as u8);
            self.low <<= 8;
            self.high = self.high << 8 | 0xFF;
            if let Some(source) = &mut self.reading {
                source.shift();
                // Zeros behind the content could otherwise be read for ever.
                if source.taken > source.content.len() + 2 * WIDTH {
                    return Err(Stop::Damaged);
                }
            }
        }
        Ok(bit)
    }

    /// Codes bits that are one as often as not, the highest first.
    pub fn even(&mut self, bits: u32, wanted: u32) -> Result<u32, Stop> {
        let mut value = 0;
        for place in (0..bits).rev() {
            let bit = self.bit(1 << 15, wanted >> place & 1 == 1)?;
            value = value << 1 | u32::from(bit);
        }
        Ok(value)
    }

    /// The shortest bytes that lead to the last interval, with zeros behind them.
    pub fn finish(mut self) -> Vec<u8> {
        let shortest = (0..=WIDTH as u32).find_map(|bytes| {
            let below = u64::MAX.checked_shr(8 * bytes).unwrap_or(0);
            let number = self.low.checked_add(below)? & !below;
            (number <= self.high).then_some(number)
        });
        self.written
            .extend(shortest.unwrap_or(self.low).to_be_bytes());
        while self.written.last() == Some(&0) {
            self.written.pop();
        }
        self.written
    }
}
