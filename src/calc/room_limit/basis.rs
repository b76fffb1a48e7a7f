//! What a limit is worked out from: rule, class, limits of the refrigerant.

use serde::Serialize;

use super::{RoomLimitInput, RoomRule};
use crate::calc::problem::{Field, Misfit, Problem};
use crate::calc::reading::{Reading, filled, optional, required};
use crate::calc::working::{Step, Working};
use crate::quantity::{Area, Density, Entry, Length, Mass, Volume, choice};
use crate::tables::SourceId;
use crate::tables::refrigerants::{Refrigerant, SafetyClass, Sourced};

choice! {
    /// How a charge stands to the caps.
    ChargeStanding {
        /// So small that no room is too small.
        NoRoomLimit = "no-room-limit",
        /// The room limits it.
        RoomLimited = "room-limited",
        /// Too much for any room, without additional measures.
        AboveCap = "above-cap",
    }
}

/// Charges at which the rule for a flammable refrigerant changes, the factor of its class included.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct ChargeCaps {
    /// m₁: up to this there is no room limit.
    pub no_room_limit: Mass,
    /// m₂: never more than this in a room without additional measures.
    pub cap: Mass,
    /// m₃: never more than this, with the additional measures that the code names.
    pub with_measures: Mass,
}

/// Cubic metres of air at the LFL that m₁, m₂ and m₃ fill. Real Decreto 552/2019, IF-04.
const VOLUMES: [f64; 3] = [4.0, 26.0, 130.0];
/// What the three are multiplied by for class 2L. Same source.
const SLOWLY_BURNING_FACTOR: f64 = 1.5;
/// Factor of the formula for the largest charge. Same source.
const FORMULA_FACTOR: f64 = 2.5;

/// Lower flammability limits that are answered for.
const FLAMMABILITY_LIMITS: (Density, Density) = (
    Density::kilograms_per_cubic_metre(0.01),
    Density::kilograms_per_cubic_metre(1.0),
);
/// Concentration limits that are answered for.
const CONCENTRATION_LIMITS: (Density, Density) = (
    Density::kilograms_per_cubic_metre(0.001),
    Density::kilograms_per_cubic_metre(2.0),
);

/// What limits a charge in a room.
#[derive(Clone, Copy)]
pub(super) enum Limit {
    /// The formula of a flammable refrigerant.
    Formula { flammability: Sourced<Density> },
    /// A concentration times the volume; the flammability limit is told along, if there is one.
    Concentration {
        concentration: Density,
        flammability: Option<Sourced<Density>>,
    },
}

/// What a limit is worked out from.
pub(super) struct Basis {
    pub rule: RoomRule,
    pub class: Sourced<SafetyClass>,
    pub concentration: Option<Sourced<Density>>,
    pub limit: Limit,
}

impl Basis {
    pub fn read(input: &RoomLimitInput, reading: &mut Reading) -> Option<Self> {
        let rule = optional!(reading, input.rule).unwrap_or(RoomRule::RoomFormula);
        let flammability = optional!(reading, input.lower_flammability_limit);
        let concentration = optional!(reading, input.concentration_limit);
        reading.within(
            Field::named("lower_flammability_limit"),
            flammability,
            FLAMMABILITY_LIMITS,
        );
        reading.within(
            Field::named("concentration_limit"),
            concentration,
            CONCENTRATION_LIMITS,
        );
        let refrigerant = optional!(reading, input.refrigerant);
        let class = class(input, refrigerant, reading)?;
        let (named_by, burns) = (named_by(input), class.figure != SafetyClass::A1);
        if !burns && flammability.is_some() {
            let with = Field::named(named_by);
            let field = Field::named("lower_flammability_limit");
            reading.problem(Problem::misfit(field, Misfit::Impossible { with }));
        }
        let flammability = flammability
            .map(entered)
            .or(refrigerant.and_then(Refrigerant::lower_flammability_limit))
            .filter(|_| burns);
        let concentration = concentration
            .map(entered)
            .or(refrigerant.map(Refrigerant::concentration_limit));
        let by_formula = burns && rule == RoomRule::RoomFormula;
        let limit = if by_formula {
            if flammability.is_none() && input.lower_flammability_limit == Entry::Absent {
                reading.problem(missing("lower_flammability_limit", "0.307 kg/m³"));
            }
            Limit::Formula {
                flammability: flammability?,
            }
        } else {
            if concentration.is_none() && input.concentration_limit == Entry::Absent {
                reading.problem(missing("concentration_limit", "420 g/m³"));
            }
            Limit::Concentration {
                concentration: concentration?.figure,
                flammability,
            }
        };
        Some(Self {
            rule,
            class,
            concentration,
            limit,
        })
    }

    pub fn flammability(&self) -> Option<Sourced<Density>> {
        match self.limit {
            Limit::Formula { flammability } => Some(flammability),
            Limit::Concentration { flammability, .. } => flammability,
        }
    }

    /// Where the rule is taken from.
    pub fn sources(&self) -> &'static [SourceId] {
        match self.rule {
            RoomRule::RoomFormula => &[SourceId::RealDecreto552Rooms],
            RoomRule::ConcentrationLimit => &[SourceId::MechanicalCode],
        }
    }

    pub fn caps(&self) -> Option<ChargeCaps> {
        let Limit::Formula { flammability } = self.limit else {
            return None;
        };
        let factor = self.class_factor();
        let [no_room_limit, cap, with_measures] =
            VOLUMES.map(|volume| flammability.figure * Volume::cubic_metres(volume * factor));
        Some(ChargeCaps {
            no_room_limit,
            cap,
            with_measures,
        })
    }

    fn class_factor(&self) -> f64 {
        if self.class.figure == SafetyClass::A2L {
            SLOWLY_BURNING_FACTOR
        } else {
            1.0
        }
    }

    pub fn standing(&self, charge: Mass) -> ChargeStanding {
        match self.caps() {
            Some(caps) if !exceeds(charge, caps.no_room_limit) => ChargeStanding::NoRoomLimit,
            Some(caps) if exceeds(charge, caps.cap) => ChargeStanding::AboveCap,
            _ => ChargeStanding::RoomLimited,
        }
    }

    /// Largest charge by the formula for a flammable refrigerant, whatever the caps are.
    pub fn formula_charge(&self, area: Area, release_height: Length) -> Option<Mass> {
        let strength = self.strength()?;
        let (height, area) = (release_height.in_metres(), area.in_square_metres());
        Some(Mass::kilograms(strength * height * area.sqrt()))
    }

    /// Smallest floor area for a charge that the room limits by the formula.
    pub fn smallest_area(&self, charge: Mass, release_height: Length) -> Option<Area> {
        if self.standing(charge) != ChargeStanding::RoomLimited {
            return None;
        }
        let root = charge.in_kilograms() / (self.strength()? * release_height.in_metres());
        Some(Area::square_metres(root * root))
    }

    /// 2.5·LFL^(5/4)
    fn strength(&self) -> Option<f64> {
        let Limit::Formula { flammability } = self.limit else {
            return None;
        };
        let limit = flammability.figure.in_kilograms_per_cubic_metre();
        Some(FORMULA_FACTOR * libm::pow(limit, 1.25))
    }

    /// Smallest volume for a charge, where a concentration governs.
    pub fn smallest_volume(&self, charge: Mass) -> Option<Volume> {
        match self.limit {
            Limit::Concentration { concentration, .. } => Some(charge / concentration),
            Limit::Formula { .. } => None,
        }
    }

    /// The steps that hold for every room.
    pub fn steps(&self) -> Working {
        let Some((flammability, caps)) = self.flammability().zip(self.caps()) else {
            return Working::new();
        };
        let [small, cap] = if self.class.figure == SafetyClass::A2L {
            ["{m₁} = 1.5·4 m³·{LFL}", "{m₂} = 1.5·26 m³·{LFL}"]
        } else {
            ["{m₁} = 4 m³·{LFL}", "{m₂} = 26 m³·{LFL}"]
        };
        let of = |title, formula| {
            Step::of(title, formula)
                .with("LFL", LIMIT, flammability.figure)
                .from(SourceId::RealDecreto552Rooms)
                .from(flammability.source)
        };
        vec![
            of("step-no-room-limit", small).gives("m₁", "figure-no-room-limit", caps.no_room_limit),
            of("step-charge-cap", cap).gives("m₂", "figure-charge-cap", caps.cap),
        ]
    }
}

/// What the LFL is called in a step.
pub(super) const LIMIT: &str = "figure-lower-flammability-limit";

/// Relative size of a rounding error that must not decide: 1.5·26·0.307 is not quite 11.973.
const ROUNDING: f64 = 1e-12;

/// Whether a charge is more than a limit, by more than a rounding error.
pub(super) fn exceeds(charge: Mass, limit: Mass) -> bool {
    charge > limit * (1.0 + ROUNDING)
}

/// The problem of an empty field, with an example of its own.
pub(super) fn missing(field: &'static str, example: &str) -> Problem {
    let example = example.into();
    Problem::misfit(Field::named(field), Misfit::Missing { example })
}

fn entered(figure: Density) -> Sourced<Density> {
    Sourced {
        figure,
        source: SourceId::PlateFigure,
    }
}

/// The field that names the class.
fn named_by(input: &RoomLimitInput) -> &'static str {
    match input.refrigerant {
        Entry::Absent => "safety_class",
        _ => "refrigerant",
    }
}

/// The class, of the refrigerant or as entered; not one to which the rules here do not apply.
fn class(
    input: &RoomLimitInput,
    refrigerant: Option<Refrigerant>,
    reading: &mut Reading,
) -> Option<Sourced<SafetyClass>> {
    let class = optional!(reading, input.safety_class);
    let both = [filled!(input.refrigerant), filled!(input.safety_class)];
    match both {
        [(_, true), (_, true)] => {
            let with = Field::named("refrigerant");
            let field = Field::named("safety_class");
            reading.problem(Problem::misfit(field, Misfit::Conflict { with }));
            return None;
        }
        [(_, false), (_, false)] => {
            required!(reading, input.refrigerant);
        }
        _ => {}
    }
    let found = refrigerant
        .map(Refrigerant::safety_class)
        .or(class.map(|figure| Sourced {
            figure,
            source: SourceId::PlateFigure,
        }))?;
    if found.figure != SafetyClass::B2L {
        return Some(found);
    }
    let heavy = |refrigerant: &&Refrigerant| refrigerant.safety_class().figure != SafetyClass::B2L;
    let accepted = if refrigerant.is_some() {
        let words = Refrigerant::ALL.iter().filter(heavy);
        words.map(|refrigerant| refrigerant.word()).collect()
    } else {
        let harmless = [SafetyClass::A1, SafetyClass::A2L, SafetyClass::A3];
        harmless.map(SafetyClass::word).into()
    };
    let misfit = Misfit::NotInTable { accepted };
    reading.problem(Problem::misfit(Field::named(named_by(input)), misfit));
    None
}
