//! The names of members that were met so far: each is spelt once.

/// Names by the order in which they were met.
#[derive(Clone, Default)]
pub(super) struct Names(Vec<String>);

impl Names {
    pub fn place_of(&self, name: &str) -> Option<usize> {
        self.0.iter().position(|known| known == name)
    }

    pub fn at(&self, place: usize) -> Option<&str> {
        self.0.get(place).map(String::as_str)
    }

    /// Gives the place of one that is new.
    pub fn add(&mut self, name: &str) -> usize {
        self.0.push(name.into());
        self.0.len() - 1
    }
}
