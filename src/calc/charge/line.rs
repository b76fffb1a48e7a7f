//! What the line takes, by the plate and from physics.

use serde::Serialize;

use super::super::problem::{Field, Misfit, Problem};
use super::super::reading::{filled, optional};
use super::super::working::Step;
use super::filling::{Bore, Contents, Fillings};
use super::sheet::{Sheet, any, largest, limited};
use super::{ChargeInput, ChargeNotice};
use crate::physics::saturation::Phase;
use crate::quantity::{Enter, Length, Mass, MassPerLength, Quantity, choice};
use crate::tables::SourceId;

/// The line's part of the charge: the plate's figures, what physics says, and how they differ.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct LineCharge {
    /// Length beyond what the factory charge serves; 0 if the line is shorter.
    pub extra_length: Option<Length>,
    /// Length short of what the factory charge serves; 0 if the line is longer.
    pub short_by: Option<Length>,
    /// The plate's adder.
    pub plate_adder: Option<MassPerLength>,
    /// What the liquid line holds, full of liquid.
    pub liquid: Option<Contents>,
    /// What the vapour line holds.
    pub vapour: Option<Contents>,
    /// The adder from physics: liquid line, and vapour line if it is entered.
    pub physics_adder: Option<MassPerLength>,
    /// The plate's adder less that of physics; negative if the plate's is smaller.
    pub adder_difference: Option<MassPerLength>,
    /// What the extra length takes by the plate.
    pub plate_extra: Option<Mass>,
    /// What the extra length takes by physics.
    pub physics_extra: Option<Mass>,
    /// The plate's less that of physics; negative if the plate's is smaller.
    pub extra_difference: Option<Mass>,
    /// What both lines hold over their whole length, by physics.
    pub contents: Option<Mass>,
}

choice! {
    /// Where the line's part of the charge comes from.
    LineBasis {
        /// The plate's adder or reduction.
        Plate = "line-by-plate",
        /// Physics, for the plate gives no adder.
        Physics = "line-from-physics",
        /// The factory charge serves the line as it is.
        Served = "line-served-by-factory-charge",
        /// No line was entered: none is counted.
        NotCounted = "line-left-out",
        /// What is to be added was entered as such.
        Entered = "charge-entered",
    }
}

/// What the line adds to the charge or takes off it.
#[derive(Clone, Copy)]
pub(super) struct LinePart {
    pub basis: LineBasis,
    pub added: Mass,
    pub reduced: Mass,
}

impl LinePart {
    /// Neither more nor less.
    pub fn nothing(basis: LineBasis) -> Self {
        Self {
            basis,
            added: NO_MASS,
            reduced: NO_MASS,
        }
    }
}

/// Longest line that is answered for.
pub const LONGEST_LINE: Length = Length::metres(1000.0);
/// Most that a line of any size holds in a length.
const MOST_PER_LENGTH: MassPerLength = MassPerLength::kilograms_per_metre(100.0);
/// Part of the physical adder by which the plate's may differ before a second look at size and unit is worth it. Our own choice.
const APART: f64 = 0.3;

const NO_LENGTH: Length = Length::metres(0.0);
const NO_MASS: Mass = Mass::kilograms(0.0);

/// The plate's words on the line, as entered.
pub(super) struct Line {
    length: Option<Length>,
    precharged: Option<Length>,
    adder: Option<MassPerLength>,
    reduction: Option<MassPerLength>,
    liquid: Option<Bore>,
    vapour: Option<Bore>,
    is_asked: bool,
    is_entered: bool,
}

impl Line {
    pub fn read(sheet: &mut Sheet<'_>) -> Self {
        let input = sheet.input;
        if has_tube(input) {
            sheet.needed();
        }
        let reading = &mut sheet.reading;
        let is_entered = any(&[
            filled!(input.length),
            filled!(input.precharged_length),
            filled!(input.plate_adder),
            filled!(input.plate_reduction),
        ]);
        let is_added = filled!(input.length).1 && filled!(input.plate_adder).1;
        let is_of_the_plate = any(&[
            filled!(input.plate_charge),
            filled!(input.precharged_length),
            filled!(input.plate_reduction),
        ]);
        let is_asked = (is_of_the_plate || is_added) && !filled!(input.charge_to_add).1;
        let needed = is_asked && is_entered;
        let mut length = |name, entry| {
            let limits = (NO_LENGTH, LONGEST_LINE);
            limited(reading, name, entry, needed, limits)
        };
        let (run, precharged) = (
            length("length", &input.length),
            length("precharged_length", &input.precharged_length),
        );
        let mut per_length = |name, entry| {
            let limits = (MassPerLength::kilograms_per_metre(0.0), MOST_PER_LENGTH);
            limited(reading, name, entry, false, limits)
        };
        let (adder, reduction) = (
            per_length("plate_adder", &input.plate_adder),
            per_length("plate_reduction", &input.plate_reduction),
        );
        let tube = ("liquid_tube", optional!(reading, input.liquid_tube));
        let bore = ("liquid_bore", optional!(reading, input.liquid_bore));
        let liquid = Bore::read(reading, tube, bore);
        let tube = ("vapour_tube", optional!(reading, input.vapour_tube));
        let bore = ("vapour_bore", optional!(reading, input.vapour_bore));
        Self {
            length: run,
            precharged,
            adder,
            reduction,
            liquid,
            vapour: Bore::read(reading, tube, bore),
            is_asked,
            is_entered,
        }
    }

    /// What the line takes, as far as it can be said; nothing if nothing about it is entered.
    pub fn charge(&self, sheet: &mut Sheet<'_>, fillings: &Fillings) -> Option<LineCharge> {
        let mut contents = |bore: Option<Bore>, phase| {
            let (bore, refrigerant) = (bore?, sheet.refrigerant?);
            let filling = fillings.of(&mut sheet.reading, refrigerant, phase)?;
            Some(bore.filled(refrigerant, filling, self.length, &mut sheet.working))
        };
        let liquid = contents(self.liquid, Phase::Liquid);
        let vapour = contents(self.vapour, Phase::Vapour);
        if !self.is_entered && liquid.is_none() && vapour.is_none() {
            return None;
        }
        let physics_adder = liquid.as_ref().map(|liquid| {
            let vapour = vapour.as_ref().map(|vapour| vapour.mass_per_length);
            vapour.map_or(liquid.mass_per_length, |vapour| {
                liquid.mass_per_length + vapour
            })
        });
        let beyond = self.length.zip(self.precharged);
        let beyond = beyond.map(|(length, precharged)| length - precharged);
        let extra_length = beyond.map(|beyond| largest(beyond, NO_LENGTH));
        let times = |adder: Option<MassPerLength>, length| Some(adder? * length?);
        let plate_extra = times(self.adder, extra_length);
        let physics_extra = times(physics_adder, extra_length);
        let adder_difference = less(self.adder, physics_adder);
        if let Some(physics) = physics_adder {
            sheet.notices.push(ChargeNotice::LiquidLineTakenFull);
            if adder_difference.is_some_and(|difference| (difference / physics).abs() > APART) {
                sheet.notices.push(ChargeNotice::PlateAndPhysicsApart);
            }
        }
        Some(LineCharge {
            extra_length,
            short_by: beyond.map(|beyond| largest(NO_LENGTH - beyond, NO_LENGTH)),
            plate_adder: self.adder,
            liquid,
            vapour,
            physics_adder,
            adder_difference,
            plate_extra,
            physics_extra,
            extra_difference: less(plate_extra, physics_extra),
            contents: times(physics_adder, self.length),
        })
    }

    /// The line's part of the charge: the plate's words first, physics where it gives no adder.
    pub fn part(&self, sheet: &mut Sheet<'_>, line: Option<&LineCharge>) -> Option<LinePart> {
        if !self.is_asked {
            return None;
        }
        if !self.is_entered {
            return Some(LinePart::nothing(LineBasis::NotCounted));
        }
        let (length, precharged) = (self.length?, self.precharged?);
        if length > precharged {
            let physics = line.and_then(|line| line.physics_adder);
            return self.added(sheet, physics, length, precharged);
        }
        match self.reduction {
            Some(reduction) if length < precharged => {
                let reduced = reduction * (precharged - length);
                let step = reduction_step(reduction, length, precharged, reduced);
                sheet.working.push(step);
                Some(LinePart {
                    reduced,
                    ..LinePart::nothing(LineBasis::Plate)
                })
            }
            _ => {
                if length < precharged {
                    sheet.notices.push(ChargeNotice::NoReductionOnPlate);
                }
                Some(LinePart::nothing(LineBasis::Served))
            }
        }
    }

    fn added(
        &self,
        sheet: &mut Sheet<'_>,
        physics: Option<MassPerLength>,
        length: Length,
        precharged: Length,
    ) -> Option<LinePart> {
        let input = sheet.input;
        let Some((basis, adder)) = self.adder_of(physics) else {
            if !filled!(input.plate_adder).1 && self.liquid.is_none() {
                let example = MassPerLength::example();
                let field = Field::named("plate_adder");
                let missing = Problem::misfit(field, Misfit::Missing { example });
                sheet.reading.problem(missing);
            }
            return None;
        };
        if basis == LineBasis::Physics {
            sheet.notices.push(ChargeNotice::LineByPhysics);
            if self.vapour.is_none() {
                sheet.notices.push(ChargeNotice::VapourLineNotCounted);
            }
        }
        let added = adder * (length - precharged);
        let step = extra_step(basis, adder, length, precharged, added);
        sheet.working.push(step);
        Some(LinePart {
            added,
            ..LinePart::nothing(basis)
        })
    }

    fn adder_of(&self, physics: Option<MassPerLength>) -> Option<(LineBasis, MassPerLength)> {
        let plate = self.adder.map(|adder| (LineBasis::Plate, adder));
        plate.or(physics.map(|adder| (LineBasis::Physics, adder)))
    }
}

/// Whether a line is entered for physics, well or badly.
fn has_tube(input: &ChargeInput) -> bool {
    any(&[
        filled!(input.liquid_tube),
        filled!(input.liquid_bore),
        filled!(input.vapour_tube),
        filled!(input.vapour_bore),
    ])
}

fn less<Q: Quantity>(one: Option<Q>, other: Option<Q>) -> Option<Q> {
    Some(Q::from_si(one?.si() - other?.si()))
}

fn extra_step(
    basis: LineBasis,
    adder: MassPerLength,
    length: Length,
    precharged: Length,
    added: Mass,
) -> Step {
    let step = Step::of("step-line-extra", "{Δm} = {q}·({L} − {L₀})")
        .with("q", "figure-line-adder", adder)
        .with("L", "figure-line-length", length)
        .with("L₀", "figure-precharged-length", precharged);
    let step = match basis {
        LineBasis::Plate => step.from(SourceId::PlateFigure),
        _ => step,
    };
    step.gives("Δm", "figure-line-extra", added)
}

fn reduction_step(
    reduction: MassPerLength,
    length: Length,
    precharged: Length,
    reduced: Mass,
) -> Step {
    Step::of("step-line-reduction", "{Δm} = {q}·({L₀} − {L})")
        .with("q", "figure-line-reduction", reduction)
        .with("L₀", "figure-precharged-length", precharged)
        .with("L", "figure-line-length", length)
        .from(SourceId::PlateFigure)
        .gives("Δm", "figure-line-taken-out", reduced)
}
