//! Numbers that look random and are the same in every run: SplitMix64 (Steele, Lea and Flood 2014).

pub struct Random(pub u64);

impl Random {
    pub fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ mixed >> 30).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ mixed >> 27).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ mixed >> 31
    }

    /// A whole number below this.
    pub fn below(&mut self, most: usize) -> usize {
        (self.next() % most.max(1) as u64) as usize
    }

    /// A whole number from the first up to the last.
    pub fn between(&mut self, first: i64, last: i64) -> i64 {
        first + self.below((last - first + 1) as usize) as i64
    }

    /// True so many times in a hundred.
    pub fn happens(&mut self, percent: usize) -> bool {
        self.below(100) < percent
    }

    pub fn one_of<T: Copy>(&mut self, choices: &[T]) -> T {
        choices[self.below(choices.len())]
    }

    /// An id as the page makes them up.
    pub fn id(&mut self, letters: usize) -> String {
        (0..letters)
            .map(|_| char::from(self.one_of(b"abcdefghijkmnpqrstuvwxyz23456789")))
            .collect()
    }
}
