//! One room: what it is and what it allows.

use serde::Serialize;

use super::basis::{Basis, LIMIT, Limit, missing};
use super::{Charge, OccupiedRoomInput};
use crate::calc::problem::{Field, Misfit, Problem};
use crate::calc::reading::{Reading, filled, optional, required};
use crate::calc::verdict::{Judgement, judge_at_most};
use crate::calc::working::{Step, Working};
use crate::quantity::{Area, Entry, Length, Mass, Volume, choice};
use crate::tables::SourceId;

choice! {
    /// How an indoor unit is mounted.
    Mounting {
        /// On the floor: 0.6 m.
        Floor = "floor",
        /// In a window: 1.0 m.
        Window = "window",
        /// On a wall: 1.8 m.
        Wall = "wall",
        /// At the ceiling: 2.2 m.
        Ceiling = "ceiling",
    }
}

impl Mounting {
    /// From the floor to where refrigerant would come out.
    pub const fn release_height(self) -> Length {
        Length::metres(match self {
            Self::Floor => 0.6,
            Self::Window => 1.0,
            Self::Wall => 1.8,
            Self::Ceiling => 2.2,
        })
    }
}

choice! {
    /// What limits the charge in a room.
    Governor {
        /// The formula with release height and floor area.
        RoomFormula = "by-room-formula",
        /// A charge so small that no room is too small.
        NoRoomLimit = "by-small-charge",
        /// The cap, however large the room is.
        Cap = "by-cap",
        /// Concentration limit times volume.
        Concentration = "by-concentration",
    }
}

/// What a room allows.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct RoomAllowance {
    /// What it is called.
    pub name: Option<String>,
    /// Floor area.
    pub area: Area,
    /// Volume, if its height was entered.
    pub volume: Option<Volume>,
    /// From the floor to where refrigerant would come out.
    pub release_height: Option<Length>,
    /// Charge by the formula for flammable refrigerants, before the caps; absent where a concentration governs.
    pub formula_charge: Option<Mass>,
    /// Concentration limit times volume; absent without a height or a limit. It governs only where `governor` says so.
    pub concentration_charge: Option<Mass>,
    /// Largest charge that the room allows.
    pub largest_charge: Mass,
    /// What limits it.
    pub governor: Governor,
    /// Smallest floor area for the charge, at this height of release or this height of room; absent where the charge needs no room
    /// or may be in none.
    pub smallest_area: Option<Area>,
    /// How the charge stands to what the room allows; no more is in band.
    pub charge: Option<Judgement<Mass, Mass>>,
}

/// Floor areas that are answered for.
const AREAS: (Area, Area) = (Area::square_metres(0.5), Area::square_metres(1e4));
/// Heights of rooms that are answered for.
const HEIGHTS: (Length, Length) = (Length::metres(1.0), Length::metres(30.0));
/// Heights of release that the formula names.
const RELEASE_HEIGHTS: (Length, Length) = (
    Mounting::Floor.release_height(),
    Mounting::Ceiling.release_height(),
);

/// A room as entered.
pub(super) struct Room {
    name: Option<String>,
    area: Area,
    height: Option<Length>,
    release_height: Option<Length>,
}

impl Room {
    pub fn read(
        input: &OccupiedRoomInput,
        basis: Option<&Basis>,
        reading: &mut Reading,
    ) -> Option<Self> {
        let limit = basis.map(|basis| basis.limit);
        let name = optional!(reading, input.name);
        let area = required!(reading, input.area, AREAS);
        let by_volume = matches!(limit, Some(Limit::Concentration { .. }));
        let height = optional!(reading, input.height);
        if by_volume && matches!(input.height, Entry::Absent) {
            reading.problem(missing("height", "2.4 m"));
        }
        reading.within(Field::named("height"), height, HEIGHTS);
        let mounting = optional!(reading, input.mounting);
        let entered = optional!(reading, input.release_height, RELEASE_HEIGHTS);
        let ways = [filled!(input.mounting), filled!(input.release_height)];
        let is_needed = matches!(limit, Some(Limit::Formula { .. }));
        if is_needed || ways.iter().all(|(_, filled)| *filled) {
            reading.exactly(1, &ways);
        }
        let release_height = entered.or(mounting.map(Mounting::release_height));
        if release_height
            .zip(height)
            .is_some_and(|(release, height)| release > height)
        {
            let by_height = entered.is_some();
            let field = Field::named(if by_height {
                "release_height"
            } else {
                "mounting"
            });
            let with = Field::named("height");
            reading.problem(Problem::misfit(field, Misfit::Impossible { with }));
        }
        Some(Self {
            name,
            area: area?,
            height,
            release_height,
        })
    }

    fn volume(&self) -> Option<Volume> {
        self.height.map(|height| height * self.area)
    }

    pub fn allowance(&self, basis: &Basis, charge: Option<Charge>) -> RoomAllowance {
        let formula_charge = self
            .release_height
            .and_then(|height| basis.formula_charge(self.area, height));
        let concentration_charge = self
            .volume()
            .zip(basis.concentration)
            .map(|(volume, limit)| limit.figure * volume);
        let (largest_charge, governor) = match (basis.caps(), formula_charge) {
            (Some(caps), Some(formula)) if formula > caps.cap => (caps.cap, Governor::Cap),
            (Some(caps), Some(formula)) if formula > caps.no_room_limit => {
                (formula, Governor::RoomFormula)
            }
            (Some(caps), _) => (caps.no_room_limit, Governor::NoRoomLimit),
            // Without caps a concentration governs, and the height was required.
            (None, _) => (
                concentration_charge.unwrap_or(Mass::kilograms(0.0)),
                Governor::Concentration,
            ),
        };
        RoomAllowance {
            name: self.name.clone(),
            area: self.area,
            volume: self.volume(),
            release_height: self.release_height,
            formula_charge,
            concentration_charge,
            largest_charge,
            governor,
            smallest_area: charge.and_then(|(charge, _)| self.smallest_area(basis, charge)),
            charge: charge
                .map(|(charge, uncertainty)| judge_at_most(charge, uncertainty, largest_charge)),
        }
    }

    fn smallest_area(&self, basis: &Basis, charge: Mass) -> Option<Area> {
        match basis.smallest_volume(charge) {
            Some(volume) => self.height.map(|height| volume / height),
            None => basis.smallest_area(charge, self.release_height?),
        }
    }

    /// The steps that find what the room allows and how small it might be.
    pub fn steps(
        &self,
        basis: &Basis,
        allowance: &RoomAllowance,
        charge: Option<Charge>,
    ) -> Working {
        match (basis.limit, self.release_height, self.height) {
            (Limit::Formula { .. }, Some(release_height), _) => {
                self.formula_steps(basis, allowance, release_height, charge)
            }
            (Limit::Concentration { .. }, _, Some(height)) => {
                self.concentration_steps(basis, allowance, height, charge)
            }
            _ => Working::new(),
        }
    }

    fn formula_steps(
        &self,
        basis: &Basis,
        allowance: &RoomAllowance,
        release_height: Length,
        charge: Option<Charge>,
    ) -> Working {
        let Some((flammability, formula_charge)) =
            basis.flammability().zip(allowance.formula_charge)
        else {
            return Working::new();
        };
        let of = |title, formula| {
            Step::of(title, formula)
                .with("LFL", LIMIT, flammability.figure)
                .with("h₀", "figure-release-height", release_height)
                .from(SourceId::RealDecreto552Rooms)
                .from(flammability.source)
        };
        let mut steps = vec![
            of(
                "step-room-charge",
                "{m} = 2.5·{LFL}^1.25·{h₀}·√{A}, in kg, m and m²",
            )
            .with("A", "figure-floor-area", self.area)
            .gives("m", "figure-room-charge", formula_charge),
        ];
        steps.extend(
            charge
                .zip(allowance.smallest_area)
                .map(|((charge, _), area)| {
                    of(
                        "step-smallest-room",
                        "{A} = ({m} / (2.5·{LFL}^1.25·{h₀}))², in kg, m and m²",
                    )
                    .with("m", "figure-charge", charge)
                    .gives("A", "figure-smallest-area", area)
                }),
        );
        steps
    }

    fn concentration_steps(
        &self,
        basis: &Basis,
        allowance: &RoomAllowance,
        height: Length,
        charge: Option<Charge>,
    ) -> Working {
        let Some(concentration) = basis.concentration else {
            return Working::new();
        };
        let of = |title, formula| {
            let step = Step::of(title, formula)
                .with("RCL", "figure-concentration-limit", concentration.figure)
                .with("H", "figure-room-height", height)
                .from(concentration.source);
            let others = basis.sources().iter();
            others
                .filter(|source| **source != concentration.source)
                .fold(step, |step, source| step.from(*source))
        };
        let mut steps = vec![
            of("step-concentration-charge", "{m} = {RCL}·{A}·{H}")
                .with("A", "figure-floor-area", self.area)
                .gives("m", "figure-room-charge", allowance.largest_charge),
        ];
        steps.extend(
            charge
                .zip(allowance.smallest_area)
                .map(|((charge, _), area)| {
                    of("step-smallest-room", "{A} = {m} / ({RCL}·{H})")
                        .with("m", "figure-charge", charge)
                        .gives("A", "figure-smallest-area", area)
                }),
        );
        steps
    }
}
