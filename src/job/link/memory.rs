//! What is known when a value comes: the model, the names, and what stood in such places before.

use super::figure::Figure;
use super::model::Model;
use super::names::Names;
use super::slots::mixed;

#[derive(Clone)]
pub(super) struct Memory {
    pub model: Model,
    pub names: Names,
    /// The minute of the last moment.
    pub minute: i64,
    /// Whether the last figure with a decimal mark had a comma.
    pub is_comma: bool,
    places: Vec<PlaceMemory>,
    /// The numbers of the places, by the place around and the name.
    numbers: Vec<((usize, usize), usize)>,
}

/// A place in documents: names from the outside inwards, whichever item of a list.
#[derive(Clone, Copy)]
pub(super) struct Place {
    pub number: usize,
    /// The place of its last name among the names; that of no name for the document itself.
    pub name: usize,
}

impl Place {
    pub const DOCUMENT: Self = Self {
        number: 0,
        name: usize::MAX,
    };

    pub fn is_document(self) -> bool {
        self.number == Self::DOCUMENT.number
    }

    /// A context of this very place.
    pub fn own(self) -> u32 {
        mixed(self.number as u32, 1)
    }

    /// A context of all places of the name.
    pub fn named(self) -> u32 {
        mixed(self.name as u32, 2)
    }
}

/// What stood in a place before.
#[derive(Clone, Default)]
pub(super) struct PlaceMemory {
    /// The texts that were spelt.
    pub texts: Vec<String>,
    /// Which of them it was last, and how far that was from the one before.
    pub last: u32,
    pub step: u32,
    pub figure: Option<Figure>,
    /// How the last differences of figures or of moments began, the latest lowest.
    pub differences: u32,
    pub minute: Option<i64>,
    /// What the last values were, the latest lowest.
    pub kinds: u32,
    /// What came after this member in the last objects, the latest lowest.
    pub next: u32,
}

impl Memory {
    pub fn new() -> Self {
        Self {
            model: Model::new(),
            names: Names::default(),
            minute: 0,
            is_comma: false,
            places: vec![PlaceMemory::default()],
            numbers: Vec::new(),
        }
    }

    /// The place of a member within a place.
    pub fn inside(&mut self, around: Place, name: usize) -> Place {
        let key = (around.number, name);
        let found = self.numbers.binary_search_by(|(known, _)| known.cmp(&key));
        let known = found.ok().and_then(|at| self.numbers.get(at));
        let number = known.map_or(self.places.len(), |(_, number)| *number);
        if let Err(before) = found {
            self.places.push(PlaceMemory::default());
            self.numbers.insert(before, (key, number));
        }
        Place { number, name }
    }

    pub fn at(&self, place: Place) -> Option<&PlaceMemory> {
        self.places.get(place.number)
    }

    pub fn change(&mut self, place: Place, change: impl FnOnce(&mut PlaceMemory)) {
        if let Some(memory) = self.places.get_mut(place.number) {
            change(memory);
        }
    }
}
