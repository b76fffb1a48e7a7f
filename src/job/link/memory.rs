//! What is known when a value comes: the model, the names, and what the fields held before.

use std::collections::BTreeMap;

use super::LinkProblem;
use super::coder::Coder;
use super::model::{CONTEXTS, Model};
use super::names::Names;

#[derive(Clone)]
pub(super) struct Memory {
    pub model: Model,
    pub names: Names,
    /// By the place of a field's name: the text that it held last.
    pub texts: BTreeMap<usize, String>,
    /// By the place of a field's name, or none for any field: the minute that it held last.
    pub minutes: BTreeMap<Option<usize>, i64>,
}

impl Memory {
    pub fn new() -> Self {
        Self {
            model: Model::new(),
            names: Names::default(),
            texts: BTreeMap::new(),
            minutes: BTreeMap::new(),
        }
    }

    /// Codes a number of so many bits as one decision a bit, the highest first.
    pub fn number(
        &mut self,
        coder: &mut Coder<'_>,
        (kind, contexts): (usize, &[u32; CONTEXTS]),
        bits: u32,
        wanted: u32,
    ) -> Result<u32, LinkProblem> {
        let mut path = 1;
        for place in (0..bits).rev() {
            let chance = self.model.chance(kind, contexts, path);
            let bit = coder.bit(chance, wanted >> place & 1 == 1)?;
            self.model.learn(bit);
            path = path << 1 | u32::from(bit);
        }
        Ok(path - (1 << bits))
    }
}
