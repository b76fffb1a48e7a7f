//! The sheet that a charge is worked out on.

use super::super::problem::Field;
use super::super::reading::{Reading, filled};
use super::super::working::Working;
use super::{ChargeInput, ChargeNotice};
use crate::quantity::{Entry, Quantity};
use crate::tables::refrigerants::Refrigerant;

/// The input, and what gathers while its parts are answered.
pub(super) struct Sheet<'a> {
    pub input: &'a ChargeInput,
    pub refrigerant: Option<Refrigerant>,
    pub reading: Reading,
    pub notices: Vec<ChargeNotice>,
    pub working: Working,
}

impl<'a> Sheet<'a> {
    pub fn new(input: &'a ChargeInput) -> Self {
        let mut reading = Reading::default();
        Self {
            input,
            refrigerant: refrigerant(input, &mut reading),
            reading,
            notices: Vec::new(),
            working: Working::new(),
        }
    }
}

/// The refrigerant, which must be there for all that asks for a density, and where nothing else is.
fn refrigerant(input: &ChargeInput, reading: &mut Reading) -> Option<Refrigerant> {
    let field = Field::named("refrigerant");
    let accessories = input.accessories.items();
    let has_volumes = accessories.iter().any(|item| filled!(item.volume).1);
    let dense = [
        filled!(input.liquid_tube),
        filled!(input.liquid_bore),
        filled!(input.vapour_tube),
        filled!(input.vapour_bore),
        filled!(input.recovery_water_capacity),
        filled!(input.recovery_volume),
        filled!(input.recovery_tare),
        filled!(input.recovery_gross),
        filled!(input.hose_bore),
        filled!(input.hose_length),
    ];
    let weighed = [
        filled!(input.plate_charge),
        filled!(input.precharged_length),
        filled!(input.length),
        filled!(input.plate_adder),
        filled!(input.charge_to_add),
        filled!(input.cylinder_start),
        filled!(input.cylinder_now),
        filled!(input.cylinder_tare),
    ];
    let is_bare = accessories.is_empty() && !any(&weighed);
    if is_bare || has_volumes || any(&dense) {
        reading.required(field, &input.refrigerant)
    } else {
        reading.optional(field, &input.refrigerant)
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
    let field = Field::named(name);
    let given = if needed {
        reading.required(field.clone(), entry)
    } else {
        reading.optional(field.clone(), entry)
    };
    reading.within(field, given, limits);
    given
}

/// The larger of two.
pub(super) fn largest<Q: Quantity>(one: Q, other: Q) -> Q {
    if one > other { one } else { other }
}
