//! The names of members that were met so far: each is spelt once.

/// Names by the order in which they were met.
#[derive(Clone, Default)]
pub(super) struct Names {
    met: Vec<String>,
    /// Their places in the order of their letters.
    sorted: Vec<usize>,
}

impl Names {
    fn search(&self, name: &str) -> Result<usize, usize> {
        self.sorted
            .binary_search_by(|place| self.at(*place).unwrap_or_default().cmp(name))
    }

    pub fn place_of(&self, name: &str) -> Option<usize> {
        let found = self.search(name).ok()?;
        self.sorted.get(found).copied()
    }

    pub fn at(&self, place: usize) -> Option<&str> {
        self.met.get(place).map(String::as_str)
    }

    /// The place of one that is new; nothing if it is not.
    pub fn add(&mut self, name: &str) -> Option<usize> {
        let place = self.met.len();
        let Err(before) = self.search(name) else {
            return None;
        };
        self.sorted.insert(before, place);
        self.met.push(name.into());
        Some(place)
    }
}
