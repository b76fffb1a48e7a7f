//! The whole charge: factory, line, accessories.

use serde::Serialize;

use super::super::problem::{Field, Misfit, Problem};
use super::super::reading::{Reading, filled, optional};
use super::super::working::Step;
use super::filling::Fillings;
use super::line::{LineBasis, LinePart};
use super::sheet::{Sheet, largest, limited};
use super::{AccessoryInput, ChargeNotice};
use crate::quantity::{Mass, choice};
use crate::tables::SourceId;
use crate::tables::refrigerants::Refrigerant;

choice! {
    /// How equipment arrives.
    Arrival {
        /// With its factory charge in it.
        Charged = "charged",
        /// Empty or under a holding charge: all of the charge is weighed in.
        Empty = "empty",
    }
}

/// The whole charge and what of it is still to go in.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct ChargeTotal {
    /// How the equipment arrives; charged unless it was said otherwise.
    pub arrives: Arrival,
    /// Where the line's part comes from.
    pub basis: LineBasis,
    /// Factory charge, if it is entered.
    pub factory: Option<Mass>,
    /// What the line adds.
    pub line: Mass,
    /// What the plate says to take off for a shorter line.
    pub reduction: Mass,
    /// What the accessories add.
    pub accessories: Mass,
    /// All of the charge in the end, if the factory charge is known.
    pub total: Option<Mass>,
    /// To weigh in now.
    pub to_add: Mass,
    /// To take out into a recovery cylinder now, by the plate's reduction.
    pub to_take_out: Mass,
}

impl ChargeTotal {
    /// Whether refrigerant is taken out.
    pub(super) fn takes_out(&self) -> bool {
        self.to_take_out > NO_MASS
    }
}

/// What an accessory takes.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct AccessoryCharge {
    /// What it was called.
    pub name: Option<String>,
    /// Refrigerant in it.
    pub mass: Mass,
}

const NO_MASS: Mass = Mass::kilograms(0.0);
/// Most that is charged or that an accessory takes.
pub(super) const MOST_CHARGE: Mass = Mass::kilograms(10_000.0);

/// What the accessories take, in the order in which they were entered.
pub(super) fn accessories(sheet: &mut Sheet<'_>, fillings: &Fillings) -> Vec<AccessoryCharge> {
    let (field, list) = (Field::named("accessories"), &sheet.input.accessories);
    if list.items().iter().any(|item| filled!(item.volume).1) {
        sheet.needed();
    }
    let refrigerant = sheet.refrigerant;
    let read = |reading: &mut Reading, item: &AccessoryInput| {
        accessory(reading, item, refrigerant, fillings)
    };
    sheet.reading.list(field, list, 0, read).unwrap_or_default()
}

fn accessory(
    reading: &mut Reading,
    input: &AccessoryInput,
    refrigerant: Option<Refrigerant>,
    fillings: &Fillings,
) -> Option<AccessoryCharge> {
    reading.exactly(1, &[filled!(input.mass), filled!(input.volume)]);
    let name = reading.optional(Field::named("name"), &input.name);
    let mass = optional!(reading, input.mass, (NO_MASS, MOST_CHARGE));
    let volume = reading.optional(Field::named("volume"), &input.volume);
    let field = Field::named("phase");
    let phase = if filled!(input.volume).1 {
        reading.required(field, &input.phase)
    } else {
        reading.optional(field, &input.phase)
    };
    let of_volume = || {
        let volume = volume?;
        Some(fillings.of(reading, refrigerant?, phase?)?.density() * volume)
    };
    Some(AccessoryCharge {
        name,
        mass: mass.or_else(of_volume)?,
    })
}

/// The whole charge, as far as it can be said.
pub(super) fn total(
    sheet: &mut Sheet<'_>,
    line: Option<LinePart>,
    accessories: &[AccessoryCharge],
) -> Option<ChargeTotal> {
    let (input, reading) = (sheet.input, &mut sheet.reading);
    let arrives = reading.optional(Field::named("arrives"), &input.arrives);
    let arrives = arrives.unwrap_or(Arrival::Charged);
    let mut mass = |name, entry, needed| {
        let limits = (NO_MASS, MOST_CHARGE);
        limited(reading, name, entry, needed, limits)
    };
    let entered = mass("charge_to_add", &input.charge_to_add, false);
    let line =
        line.or((!accessories.is_empty()).then_some(LinePart::nothing(LineBasis::NotCounted)));
    let is_needed = arrives == Arrival::Empty && line.is_some() && entered.is_none();
    let factory = mass("plate_charge", &input.plate_charge, is_needed);
    if let Some(to_add) = entered {
        return Some(as_entered(arrives, factory, to_add));
    }
    let line = line?;
    if line.basis == LineBasis::NotCounted {
        sheet.notices.push(ChargeNotice::LineNotCounted);
    }
    let added = accessories
        .iter()
        .fold(NO_MASS, |sum, accessory| sum + accessory.mass);
    let change = line.added + added - line.reduced;
    let total = factory.map(|factory| factory + change);
    if total.is_some_and(|total| total < NO_MASS) {
        let with = Field::named("plate_charge");
        let field = Field::named("plate_reduction");
        let problem = Problem::misfit(field, Misfit::Impossible { with });
        sheet.reading.problem(problem);
    }
    let to_add = match arrives {
        Arrival::Charged => change,
        Arrival::Empty => total?,
    };
    if let Some((factory, total)) = factory.zip(total) {
        sheet.working.push(total_step(factory, line, added, total));
    }
    Some(ChargeTotal {
        arrives,
        basis: line.basis,
        factory,
        line: line.added,
        reduction: line.reduced,
        accessories: added,
        total,
        to_add: largest(to_add, NO_MASS),
        to_take_out: largest(NO_MASS - to_add, NO_MASS),
    })
}

/// The charge where what goes in is known already.
fn as_entered(arrives: Arrival, factory: Option<Mass>, to_add: Mass) -> ChargeTotal {
    let before = match arrives {
        Arrival::Charged => factory,
        Arrival::Empty => Some(NO_MASS),
    };
    ChargeTotal {
        arrives,
        basis: LineBasis::Entered,
        factory,
        line: NO_MASS,
        reduction: NO_MASS,
        accessories: NO_MASS,
        total: before.map(|before| before + to_add),
        to_add,
        to_take_out: NO_MASS,
    }
}

fn total_step(factory: Mass, line: LinePart, accessories: Mass, total: Mass) -> Step {
    Step::of("step-total-charge", "{m} = {m₀} + {Δm} + {mₐ} − {mᵣ}")
        .with("m₀", "figure-factory-charge", factory)
        .with("Δm", "figure-line-extra", line.added)
        .with("mₐ", "figure-accessories-charge", accessories)
        .with("mᵣ", "figure-line-taken-out", line.reduced)
        .from(SourceId::PlateFigure)
        .gives("m", "figure-total-charge", total)
}
