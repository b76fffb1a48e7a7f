//! The sheet that a charge is worked out on.

use super::super::problem::{Field, Misfit, Problem};
use super::super::reading::{Reading, optional};
use super::super::working::Working;
use super::{ChargeInput, ChargeNotice};
use crate::quantity::{Enter, Entry, Quantity};
use crate::tables::refrigerants::Refrigerant;

/// The input, and what gathers while its parts are answered.
pub(super) struct Sheet<'a> {
    pub input: &'a ChargeInput,
    pub reading: Reading,
    pub notices: Vec<ChargeNotice>,
    pub working: Working,
    /// The refrigerant, if it is entered.
    pub refrigerant: Option<Refrigerant>,
    is_missed: bool,
}

impl<'a> Sheet<'a> {
    pub fn new(input: &'a ChargeInput) -> Self {
        let mut reading = Reading::default();
        Self {
            input,
            refrigerant: optional!(reading, input.refrigerant),
            reading,
            notices: Vec::new(),
            working: Working::new(),
            is_missed: false,
        }
    }

    /// The refrigerant for a part that needs it; told once if it is not there.
    pub fn needed(&mut self) -> Option<Refrigerant> {
        if matches!(self.input.refrigerant, Entry::Absent) && !self.is_missed {
            self.is_missed = true;
            let example = Refrigerant::example();
            let field = Field::named("refrigerant");
            let missing = Problem::misfit(field, Misfit::Missing { example });
            self.reading.problem(missing);
        }
        self.refrigerant
    }
}

/// Whether any of some fields is filled.
pub(super) fn any(fields: &[(&'static str, bool)]) -> bool {
    fields.iter().any(|(_, filled)| *filled)
}

/// A field, needed or not, within its limits.
pub(super) fn limited<Q: Quantity>(
    reading: &mut Reading,
    name: &'static str,
    entry: &Entry<Q>,
    needed: bool,
    limits: (Q, Q),
) -> Option<Q> {
    if needed {
        reading.required_within(Field::named(name), entry, limits)
    } else {
        reading.optional_within(Field::named(name), entry, limits)
    }
}

/// The larger of two.
pub(super) fn largest<Q: Quantity>(one: Q, other: Q) -> Q {
    if one > other { one } else { other }
}
