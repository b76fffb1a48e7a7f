//! Texts: moments as numbers, random letters as they are, all else letter by letter as typed.

use super::LinkProblem;
use super::moment::{Fineness, WrittenMoment};
use super::slots::mixed;
use super::tree::{Decision, Kind, Place, Walk};

/// Letters of the ids that the page makes up, and how many an id has.
const ID_LETTERS: &[u8; 32] = b"abcdefghijkmnpqrstuvwxyz23456789";
const ID_LENGTHS: [usize; 2] = [5, 12];

/// Ends a text; no byte of one.
const END: u8 = 0xFF;

/// How a text is coded best.
pub(super) fn kind_of(text: &str) -> Kind {
    let is_letter = |letter| ID_LETTERS.contains(&letter);
    if ID_LENGTHS.contains(&text.len()) && text.bytes().all(is_letter) {
        Kind::Letters
    } else if WrittenMoment::of(text).is_some() {
        Kind::Moment
    } else {
        Kind::Text
    }
}

impl Walk<'_> {
    /// A text, letter by letter.
    pub(super) fn text(
        &mut self,
        known: Option<&str>,
        place: Place,
    ) -> Result<String, LinkProblem> {
        let earlier = self
            .memory
            .texts
            .get(&place.field)
            .cloned()
            .unwrap_or_default();
        let context = Some((place, earlier.as_bytes()));
        let text = self.spell(Decision::Letter, known, context)?;
        self.memory.texts.insert(place.field, text.clone());
        Ok(text)
    }

    /// A name that is new.
    pub(super) fn spelt(&mut self, known: Option<&str>) -> Result<String, LinkProblem> {
        self.spell(Decision::Spelling, known, None)
    }

    fn spell(
        &mut self,
        decision: Decision,
        known: Option<&str>,
        place: Option<(Place, &[u8])>,
    ) -> Result<String, LinkProblem> {
        let (field, earlier) =
            place.map_or((0, &[][..]), |(place, text)| (place.field as u32, text));
        let mut letters: Vec<u8> = Vec::new();
        let mut prefix = field;
        loop {
            self.byte()?;
            let at = letters.len();
            let wanted = known.and_then(|known| known.as_bytes().get(at).copied());
            let back = |count: usize| {
                at.checked_sub(count)
                    .and_then(|at| letters.get(at))
                    .copied()
                    .map_or(0, u32::from)
            };
            let [one, two, three, four] = [1, 2, 3, 4].map(back);
            let pair = mixed(two << 8 | one, 1);
            let then = |ahead| earlier.get(at + ahead).copied().map_or(0, u32::from);
            let contexts = [
                mixed(field, one),
                pair,
                mixed(pair, three),
                mixed(pair, three << 8 | four),
                mixed(mixed(prefix, field), 5),
                mixed(mixed(field, then(0) << 8 | then(1)), one),
            ];
            let found = self.number(decision, contexts, 8, wanted.unwrap_or(END).into())? as u8;
            if found == END {
                break;
            }
            prefix = mixed(prefix, u32::from(found) + 1);
            letters.push(found);
        }
        String::from_utf8(letters).map_err(|_| LinkProblem::Damaged)
    }

    /// Letters that nobody can foresee.
    pub(super) fn letters(
        &mut self,
        known: Option<&str>,
        place: Place,
    ) -> Result<String, LinkProblem> {
        let [short, long] = ID_LENGTHS;
        let is_long = known.is_some_and(|known| known.len() == long);
        let contexts = [place.field as u32, place.owner as u32, 1, 0, 0, 0];
        let is_long = self.flag(Decision::Moment, contexts, is_long)?;
        let mut text = String::new();
        for place in 0..if is_long { long } else { short } {
            self.byte()?;
            let letter = known.and_then(|known| known.as_bytes().get(place));
            let number = letter.and_then(|letter| ID_LETTERS.iter().position(|own| own == letter));
            let found = self.coder.even(5, number.unwrap_or(0) as u32)?;
            text.extend(
                ID_LETTERS
                    .get(found as usize)
                    .map(|letter| char::from(*letter)),
            );
        }
        Ok(text)
    }

    /// A moment, as what lies between it and the last one of the field.
    pub(super) fn moment(
        &mut self,
        known: Option<&str>,
        place: Place,
    ) -> Result<String, LinkProblem> {
        let known = known.and_then(WrittenMoment::of);
        let field = place.field as u32;
        let both = mixed(field, place.owner as u32);
        let contexts = |which: u32| [mixed(both, which), mixed(field, which), which, 0, 0, 0];
        let fineness = known.map_or(Fineness::Day, |known| known.fineness);
        let fineness = self.number(Decision::Moment, contexts(1), 2, fineness as u32)?;
        let fineness = Fineness::of(fineness).ok_or(LinkProblem::Damaged)?;
        let minutes = &self.memory.minutes;
        let base = minutes
            .get(&Some(place.field))
            .or_else(|| minutes.get(&None))
            .copied()
            .unwrap_or(0);
        let unit = if fineness == Fineness::Day { 1440 } else { 1 };
        let minute = known.map_or(0, |known| known.minute / unit - base / unit);
        let minute = (self.difference(minute, both)? + base / unit) * unit;
        let mut found = WrittenMoment {
            fineness,
            minute,
            second: 0,
            millisecond: 0,
            clock: 0,
        };
        if fineness != Fineness::Day {
            let second = known.map_or(0, |known| known.second);
            if self.flag(Decision::Moment, contexts(2), second > 0)? {
                found.second = self.coder.even(6, second)?;
            }
        }
        if fineness == Fineness::Millisecond {
            let millisecond = known.map_or(0, |known| known.millisecond);
            if self.flag(Decision::Moment, contexts(3), millisecond > 0)? {
                found.millisecond = self.coder.even(10, millisecond)?;
            }
        }
        let clock = known.map_or(0, |known| u32::from(known.clock));
        if self.flag(Decision::Moment, contexts(4), clock > 0)? {
            found.clock = self.coder.even(16, clock)? as u16;
        }
        self.memory.minutes.insert(Some(place.field), found.minute);
        self.memory.minutes.insert(None, found.minute);
        let text = found.text().ok_or(LinkProblem::Damaged)?;
        for _ in text.bytes() {
            self.byte()?;
        }
        Ok(text)
    }

    /// A whole number: its sign, how many bits it has, then these, the upper ones as expected.
    fn difference(&mut self, wanted: i64, context: u32) -> Result<i64, LinkProblem> {
        let size = wanted.unsigned_abs();
        let length = 64 - size.leading_zeros();
        let last = length + if wanted < 0 { 64 } else { 0 };
        let contexts = |which: u32| [mixed(context, which), which, 0, 0, 0, 0];
        let found = self.number(Decision::Difference, contexts(0), 7, last)?;
        let (length, is_negative) = (found % 64, found >= 64);
        let mut size = u64::from(length > 0);
        for place in (0..length.saturating_sub(1)).rev() {
            let bit = (wanted.unsigned_abs() >> place & 1) as u32;
            let bit = if length - place < 4 {
                self.number(
                    Decision::Difference,
                    contexts(found << 8 | size as u32),
                    1,
                    bit,
                )?
            } else {
                self.coder.even(1, bit)?
            };
            size = size << 1 | u64::from(bit);
        }
        Ok(if is_negative {
            -(size as i64)
        } else {
            size as i64
        })
    }
}
