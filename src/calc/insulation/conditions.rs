//! The line and the air around it, as entered and as they may be instead.

use super::facts::Facts;
use super::layer::{Condition, Layer, clearance, layer};
use super::{CoefficientBasis, InsulationInput};
use crate::calc::moist_air;
use crate::calc::problem::{Field, Misfit, Problem};
use crate::calc::reading::Reading;
use crate::calc::working::{Step, Unfinished};
use crate::physics::moist_air::{Known, MoistAir, state};
use crate::physics::tube_heat::{Film, Tube};
use crate::quantity::{Entry, Length, Quantity, Ratio, Temperature, TemperatureDifference};
use crate::tables::SourceId;

/// What was entered, and each figure of it as far off as it may be.
pub(super) struct Conditions {
    pub facts: Facts,
    as_entered: Condition,
    instead: Vec<Condition>,
}

impl Conditions {
    pub fn read(input: &InsulationInput, reading: &mut Reading) -> Option<Self> {
        let facts = Facts::read(input, reading).filter(|_| reading.is_sound())?;
        let found = facts
            .condition()
            .and_then(|as_entered| Ok((as_entered, facts.instead()?)));
        let found = found
            .map_err(|beyond| moist_air::refused(beyond, matches!(input.altitude, Entry::Read(_))));
        let (as_entered, instead) = reading.accept(found)?;
        Some(Self {
            facts,
            as_entered,
            instead,
        })
    }

    pub fn air(&self) -> &MoistAir {
        &self.as_entered.air
    }

    pub fn tube(&self) -> &Tube {
        &self.as_entered.tube
    }

    /// How cold the outside may get.
    pub fn least_surface(&self) -> Temperature {
        self.air().dew_point + self.facts.margin
    }

    /// Whether water would condense on the bare line.
    pub fn is_cold(&self) -> bool {
        self.tube().temperature < self.least_surface()
    }

    /// The line with insulation of this thickness.
    pub fn layer(&self, thickness: Length) -> Layer {
        let found = clearance(&self.as_entered, thickness);
        let variance = self.instead.iter().fold(0.0, |sum, condition| {
            let change = clearance(condition, thickness) - found;
            sum + change * change
        });
        let uncertainty = TemperatureDifference::kelvins(variance.sqrt());
        layer(self.tube(), thickness, uncertainty, self.least_surface())
    }

    /// The problem where not even the thickest insulation keeps the outside warm enough, but only at `reached`.
    pub fn too_moist(&self, reached: Temperature) -> Problem {
        let dew_point = self.air().dew_point;
        if dew_point < reached {
            let misfit = Misfit::TooHigh {
                quantity: TemperatureDifference::KIND,
                limit: (reached - dew_point).in_kelvins(),
            };
            return Problem::misfit(Field::named("dew_point_margin"), misfit);
        }
        let bearable = state(
            Known::DryBulb(self.air().dry_bulb),
            Known::DewPoint(reached - self.facts.margin),
            self.facts.ambient.pressure,
        );
        let (quantity, limit) = match (self.facts.moisture, bearable) {
            (Known::RelativeHumidity(_), Ok(air)) => (Ratio::KIND, air.relative_humidity.si()),
            (Known::WetBulb(_), Ok(air)) => (Temperature::KIND, air.wet_bulb.si()),
            (Known::DewPoint(_), Ok(air)) => (Temperature::KIND, air.dew_point.si()),
            (_, _) => {
                let with = Field::named("dry_bulb");
                let misfit = Misfit::Impossible { with };
                return Problem::misfit(moisture_field(self.facts.moisture), misfit);
            }
        };
        let misfit = Misfit::TooHigh { quantity, limit };
        Problem::misfit(moisture_field(self.facts.moisture), misfit)
    }

    pub fn dew_point_step(&self) -> Step {
        let air = self.air();
        Step::of("step-dew-point", "p_ws({t_d}) = {φ}·p_ws({t})")
            .with("φ", "figure-relative-humidity", air.relative_humidity)
            .with("t", "figure-dry-bulb", air.dry_bulb)
            .from(SourceId::AshraeFundamentals)
            .from(SourceId::HylandWexler1983)
            .gives("t_d", "figure-dew-point", air.dew_point)
    }

    /// The step that finds the coefficient, if it was not entered.
    pub fn coefficient_step(&self, layer: &Layer) -> Option<Step> {
        let Film::Worked {
            emissivity, speed, ..
        } = self.tube().surroundings.film
        else {
            return None;
        };
        let with = |step: Unfinished| {
            step.with("ε", "figure-emissivity", emissivity)
                .with("t", "figure-dry-bulb", self.air().dry_bulb)
                .with(
                    "t_s",
                    "figure-surface-temperature",
                    layer.surface_temperature,
                )
                .with("D₂", "figure-insulated-diameter", layer.outside_diameter)
                .from(SourceId::UsStandardAtmosphere)
        };
        let still = self.facts.coefficient_basis == CoefficientBasis::StillAir;
        let step = if still {
            with(Step::of(
                "step-coefficient-still",
                "{h} = Nu·λ/{D₂} + {ε}·σ·(T² + T_s²)·(T + T_s), with T = {t}, T_s = {t_s}, absolute",
            ))
            .from(SourceId::ChurchillChu1975)
        } else {
            with(Step::of(
                "step-coefficient-moving",
                "{h} = Nu({v})·λ/{D₂} + {ε}·σ·(T² + T_s²)·(T + T_s), with T = {t}, T_s = {t_s}, absolute",
            ))
            .with("v", "figure-air-speed", speed)
            .from(SourceId::ChurchillBernstein1977)
        };
        Some(step.gives("h", "figure-surface-coefficient", layer.surface_coefficient))
    }
}

/// What the field about moisture is called, as an input and as a fact.
fn moisture_field(known: Known) -> Field {
    Field::named(match known {
        Known::WetBulb(_) => "wet_bulb",
        Known::DewPoint(_) => "dew_point",
        _ => "relative_humidity",
    })
}
