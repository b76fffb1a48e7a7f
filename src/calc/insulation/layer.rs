//! A line with insulation of one thickness.

use serde::Serialize;

use crate::calc::verdict::{Judgement, judge_at_least};
use crate::calc::working::{Step, Unfinished};
use crate::physics::moist_air::MoistAir;
use crate::physics::tube_heat::Tube;
use crate::quantity::{
    HeatFlowPerLength, HeatTransferCoefficient, Length, Temperature, TemperatureDifference,
};

/// A line with insulation of one thickness.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Layer {
    /// Thickness, one wall.
    pub thickness: Length,
    /// Diameter over the insulation.
    pub outside_diameter: Length,
    /// Temperature of the outside.
    pub surface_temperature: Temperature,
    /// Heat transfer coefficient at the outside, radiation included.
    pub surface_coefficient: HeatTransferCoefficient,
    /// Heat that a metre of line takes up; negative if it gives heat off.
    pub heat_gain: HeatFlowPerLength,
    /// How the outside stands to the dew point and the margin asked for: no colder is in band. Its
    /// uncertainty is that of the thermometers, the hygrometer and a coefficient that was worked out.
    pub against_dew_point: Judgement<Temperature, TemperatureDifference>,
}

/// A line and the air around it.
pub(super) struct Condition {
    pub air: MoistAir,
    pub tube: Tube,
}

/// How many kelvins the outside is warmer than the dew point.
pub(super) fn clearance(condition: &Condition, thickness: Length) -> f64 {
    let surface = condition.tube.surface_temperature(thickness);
    (surface - condition.air.dew_point).in_kelvins()
}

/// The layer of a thickness, judged against how cold its outside may get.
pub(super) fn layer(
    tube: &Tube,
    thickness: Length,
    uncertainty: TemperatureDifference,
    least_surface: Temperature,
) -> Layer {
    let outside_diameter = tube.outside(thickness);
    let surface_temperature = tube.surface_temperature(thickness);
    Layer {
        thickness,
        outside_diameter,
        surface_temperature,
        surface_coefficient: tube
            .surroundings
            .coefficient(outside_diameter, surface_temperature),
        heat_gain: tube.heat_gain(outside_diameter, surface_temperature),
        against_dew_point: judge_at_least(surface_temperature, uncertainty, least_surface),
    }
}

impl Layer {
    /// The steps that find the temperature of the outside and the heat taken up.
    pub(super) fn steps(&self, tube: &Tube) -> [Step; 2] {
        let with = |step: Unfinished| {
            step.with("h", "figure-surface-coefficient", self.surface_coefficient)
                .with("D₂", "figure-insulated-diameter", self.outside_diameter)
                .with("t", "figure-dry-bulb", tube.surroundings.air)
        };
        let balance = "{h}·{D₂}·ln({D₂}/{D})·({t} − {t_s}) = 2·{k}·({t_s} − {t_l})";
        [
            with(Step::of("step-surface-temperature", balance))
                .with("D", "figure-outside-diameter", tube.diameter)
                .with("k", "figure-conductivity", tube.conductivity)
                .with("t_l", "figure-line-temperature", tube.temperature)
                .gives(
                    "t_s",
                    "figure-surface-temperature",
                    self.surface_temperature,
                ),
            with(Step::of("step-heat-gain", "{q} = π·{D₂}·{h}·({t} − {t_s})"))
                .with(
                    "t_s",
                    "figure-surface-temperature",
                    self.surface_temperature,
                )
                .gives("q", "figure-heat-gain", self.heat_gain),
        ]
    }
}
