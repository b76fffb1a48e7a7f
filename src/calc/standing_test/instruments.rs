//! Gauge and thermometer: how far they may be off, and what of that counts between two readings.

use serde::Serialize;

use super::StandingTestInput;
use super::readings::HoldReading;
use crate::calc::problem::Field;
use crate::calc::reading::{Reading, optional};
use crate::quantity::{PressureDifference, Quantity, TemperatureDifference};

/// How far gauge and thermometer may be off, as entered or as assumed.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Instruments {
    /// Smallest step that can be read off the gauge.
    pub gauge_resolution: PressureDifference,
    /// How far the gauge may be off.
    pub gauge_uncertainty: PressureDifference,
    /// How far the thermometer may be off from one reading to the next.
    pub thermometer_uncertainty: TemperatureDifference,
}

/// A gauge's smallest step if none is entered: 0.1 bar. Common practice, no source.
pub const USUAL_RESOLUTION: PressureDifference = PressureDifference::pascals(1e4);

/// A gauge's uncertainty if none is entered, as a part of its highest reading. Common practice, no source.
pub const USUAL_GAUGE_UNCERTAINTY: f64 = 0.01;

/// A thermometer's uncertainty if none is entered. Common practice, no source.
pub const USUAL_THERMOMETER_UNCERTAINTY: TemperatureDifference =
    TemperatureDifference::kelvins(0.5);

/// Coarsest instruments that are answered for.
const COARSEST_GAUGE: PressureDifference = PressureDifference::pascals(1e6);
const COARSEST_THERMOMETER: TemperatureDifference = TemperatureDifference::kelvins(20.0);

/// Part of a gauge's uncertainty that differs from reading to reading; the rest it shows every time,
/// and a difference does not. Common practice, no source.
const GAUGE_SCATTER: f64 = 0.1;
/// How far a needle or a last digit is misread, in steps. Common practice, no source.
const MISREAD: f64 = 0.5;
/// Part of a thermometer's uncertainty that wanders slowly (sun, wind, seat of the probe), so that no
/// number of readings averages it out. Common practice, no source.
const THERMOMETER_WANDER: f64 = 0.2;
/// Part of a change of temperature by which that of all the nitrogen may differ from that of the tube at the
/// probe. Common practice, no source.
const UNEVEN: f64 = 0.05;
/// How far the air's pressure drifts over a hold if no barometer is read, Pa. Common practice, no source.
const WEATHER: f64 = 500.0;

/// Entered, before the readings say how large the rest is.
pub(super) struct Entered {
    resolution: Option<PressureDifference>,
    uncertainty: Option<PressureDifference>,
    thermometer: Option<TemperatureDifference>,
}

impl Entered {
    pub fn take(reading: &mut Reading, input: &StandingTestInput) -> Self {
        let none = PressureDifference::pascals(0.0);
        let resolution = optional!(reading, input.gauge_resolution);
        let uncertainty = optional!(reading, input.gauge_uncertainty);
        let thermometer = optional!(reading, input.thermometer_uncertainty);
        for (name, given) in [
            ("gauge_resolution", resolution),
            ("gauge_uncertainty", uncertainty),
        ] {
            reading.within(Field::named(name), given, (none, COARSEST_GAUGE));
        }
        let limits = (TemperatureDifference::kelvins(0.0), COARSEST_THERMOMETER);
        reading.within(Field::named("thermometer_uncertainty"), thermometer, limits);
        Self {
            resolution,
            uncertainty,
            thermometer,
        }
    }

    /// With what is usual for what was not entered, at pressures up to `highest`, Pa.
    pub fn complete(&self, highest: f64) -> Instruments {
        let usual = PressureDifference::pascals(USUAL_GAUGE_UNCERTAINTY * highest);
        Instruments {
            gauge_resolution: self.resolution.unwrap_or(USUAL_RESOLUTION),
            gauge_uncertainty: self.uncertainty.unwrap_or(usual),
            thermometer_uncertainty: self.thermometer.unwrap_or(USUAL_THERMOMETER_UNCERTAINTY),
        }
    }
}

impl Instruments {
    /// Variance of rounding to a step, Pa²: rectangular.
    pub(super) fn rounding(&self) -> f64 {
        squared(self.gauge_resolution.si()) / 12.0
    }

    /// Variance of what differs from reading to reading, Pa², where a kelvin makes `per_kelvin` pascal.
    pub(super) fn scatter(&self, per_kelvin: f64) -> f64 {
        squared(MISREAD * self.gauge_resolution.si())
            + squared(GAUGE_SCATTER * self.gauge_uncertainty.si())
            + squared(per_kelvin * self.thermometer_uncertainty.si())
    }

    /// Variance of the thermometer's slow wandering, Pa².
    pub(super) fn wander(&self, per_kelvin: f64) -> f64 {
        squared(THERMOMETER_WANDER * per_kelvin * self.thermometer_uncertainty.si())
    }

    /// Variance, Pa², of the difference between two ends of a hold that no number of readings lowers:
    /// rounding, wandering, weather, and what a `change` of temperature brings, K.
    pub(super) fn between_ends(
        &self,
        first: &HoldReading,
        change: f64,
        has_barometer: bool,
    ) -> f64 {
        let (pressure, temperature) = (first.absolute().si(), first.temperature.si());
        let weather = if has_barometer { 0.0 } else { WEATHER };
        2.0 * self.rounding()
            + 2.0 * self.wander(pressure / temperature)
            + squared(weather)
            + self.by_change(pressure, temperature, change)
    }

    /// Variance, Pa², that a change of temperature brings, K: the gauge's own error, which it scales, and uneven
    /// temperatures along the tube.
    pub(super) fn by_change(&self, pressure: f64, temperature: f64, change: f64) -> f64 {
        squared(self.gauge_uncertainty.si() * change / temperature)
            + squared(UNEVEN * change * pressure / temperature)
    }
}

pub(super) fn squared(number: f64) -> f64 {
    number * number
}
