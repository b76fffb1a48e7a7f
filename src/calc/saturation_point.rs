//! Bubble and dew together, the steps that find them, and rows of them for a curve or a table.

use serde::Serialize;

use super::working::{Step, Unfinished};
use crate::physics::Beyond;
use crate::physics::saturation::{self, Line, critical_point, into_range};
use crate::quantity::{AbsolutePressure, GaugePressure, Temperature, TemperatureDifference};
use crate::tables::refrigerants::Refrigerant;

/// Bubble and dew of a refrigerant, at one pressure or at one temperature.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct SaturationPoint {
    /// Where all is liquid and the first bubble rises.
    pub bubble_temperature: Temperature,
    /// Where all is vapour and the first drop falls.
    pub dew_temperature: Temperature,
    /// Pressure at the bubble temperature.
    pub bubble_pressure: AbsolutePressure,
    /// Pressure at the dew temperature.
    pub dew_pressure: AbsolutePressure,
    /// The same on a gauge in the air around.
    pub bubble_gauge_pressure: GaugePressure,
    /// The same on a gauge in the air around.
    pub dew_gauge_pressure: GaugePressure,
}

impl SaturationPoint {
    /// Bubble and dew at a pressure.
    ///
    /// # Errors
    /// [`Beyond`] on `Pressure`, if either line does not reach it.
    pub fn at_pressure(
        refrigerant: Refrigerant,
        pressure: AbsolutePressure,
        air: AbsolutePressure,
    ) -> Result<Self, Beyond> {
        let temperature = |line| {
            let found = saturation::temperature(refrigerant, line, pressure)?;
            Ok(into_range(refrigerant, found))
        };
        let temperatures = (temperature(Line::Bubble)?, temperature(Line::Dew)?);
        Ok(Self::of(temperatures, (pressure, pressure), air))
    }

    /// Bubble and dew at a temperature.
    ///
    /// # Errors
    /// [`Beyond`] on `Temperature`.
    pub fn at_temperature(
        refrigerant: Refrigerant,
        temperature: Temperature,
        air: AbsolutePressure,
    ) -> Result<Self, Beyond> {
        let pressure = |line| saturation::pressure(refrigerant, line, temperature);
        let pressures = (pressure(Line::Bubble)?, pressure(Line::Dew)?);
        Ok(Self::of((temperature, temperature), pressures, air))
    }

    fn of(
        (bubble_temperature, dew_temperature): (Temperature, Temperature),
        (bubble_pressure, dew_pressure): (AbsolutePressure, AbsolutePressure),
        air: AbsolutePressure,
    ) -> Self {
        Self {
            bubble_temperature,
            dew_temperature,
            bubble_pressure,
            dew_pressure,
            bubble_gauge_pressure: bubble_pressure.to_gauge(air),
            dew_gauge_pressure: dew_pressure.to_gauge(air),
        }
    }

    /// The steps that find both temperatures from the pressure.
    pub fn temperature_steps(&self, refrigerant: Refrigerant) -> [Step; 2] {
        let (bubble, dew) = (self.bubble_temperature, self.dew_temperature);
        [
            temperature_step(refrigerant, Line::Bubble, self.bubble_pressure, bubble),
            temperature_step(refrigerant, Line::Dew, self.dew_pressure, dew),
        ]
    }

    /// The steps that find both pressures from the temperature.
    pub fn pressure_steps(&self, refrigerant: Refrigerant) -> [Step; 2] {
        let (bubble, dew) = (self.bubble_pressure, self.dew_pressure);
        [
            pressure_step(refrigerant, Line::Bubble, self.bubble_temperature, bubble),
            pressure_step(refrigerant, Line::Dew, self.dew_temperature, dew),
        ]
    }
}

/// The step that finds the temperature of a line from a pressure.
pub fn temperature_step(
    refrigerant: Refrigerant,
    line: Line,
    pressure: AbsolutePressure,
    temperature: Temperature,
) -> Step {
    let (title, formula, symbol, meaning) = match line {
        Line::Bubble => (
            "step-bubble-temperature",
            "{t′} = Σ cₙ·Tₙ(φ), φ² = ln {p_c} + 0.02 − ln {p}",
            "t′",
            "figure-bubble-temperature",
        ),
        Line::Dew => (
            "step-dew-temperature",
            "{t″} = Σ cₙ·Tₙ(φ), φ² = ln {p_c} + 0.02 − ln {p}",
            "t″",
            "figure-dew-temperature",
        ),
    };
    let critical = critical_point(refrigerant).pressure;
    let step = Step::of(title, formula)
        .with("p", "figure-absolute-pressure", pressure)
        .with("p_c", "figure-critical-pressure", critical);
    from_equations(step, refrigerant).gives(symbol, meaning, temperature)
}

/// The step that finds the pressure of a line from a temperature.
pub fn pressure_step(
    refrigerant: Refrigerant,
    line: Line,
    temperature: Temperature,
    pressure: AbsolutePressure,
) -> Step {
    let (title, formula, symbol, meaning) = match line {
        Line::Bubble => (
            "step-bubble-pressure",
            "ln {p′} = Σ cₙ·Tₙ(θ), θ² = 1 − {T}/{T_c}",
            "p′",
            "figure-bubble-pressure",
        ),
        Line::Dew => (
            "step-dew-pressure",
            "ln {p″} = Σ cₙ·Tₙ(θ), θ² = 1 − {T}/{T_c}",
            "p″",
            "figure-dew-pressure",
        ),
    };
    let critical = critical_point(refrigerant).temperature;
    let step = Step::of(title, formula)
        .with("T", "figure-saturation-temperature", temperature)
        .with("T_c", "figure-critical-temperature", critical);
    from_equations(step, refrigerant).gives(symbol, meaning, pressure)
}

/// The step with the sources of a refrigerant's properties.
pub fn from_equations(step: Unfinished, refrigerant: Refrigerant) -> Unfinished {
    let sources = refrigerant.equations().iter();
    sources.fold(step, |step, source| step.from(*source))
}

/// Points of both lines, evenly over a range of temperatures, both ends included.
pub fn curve(
    refrigerant: Refrigerant,
    (from, to): (Temperature, Temperature),
    points: u16,
    air: AbsolutePressure,
) -> Vec<SaturationPoint> {
    let last = f64::from(points.saturating_sub(1).max(1));
    let spread = to - from;
    let temperatures =
        (0..points).map(|place| into_range(refrigerant, from + spread * (f64::from(place) / last)));
    rows(refrigerant, temperatures, air)
}

/// Coarsest decimal of a kelvin that a step in °C is counted in.
const DECIMAL_STEP: f64 = 0.1;

/// Rows around a temperature, at whole multiples of a step: in °C, or in °F for a step that is no
/// tenth of a kelvin.
pub fn table(
    refrigerant: Refrigerant,
    around: Temperature,
    step: TemperatureDifference,
    rows_wanted: u16,
    air: AbsolutePressure,
) -> Vec<SaturationPoint> {
    let tenths = step.in_kelvins() / DECIMAL_STEP;
    let decimal = (tenths - libm::rint(tenths)).abs() < 1e-6;
    let zero = if decimal {
        Temperature::celsius(0.0)
    } else {
        Temperature::fahrenheit(0.0)
    };
    let first = libm::rint((around - zero) / step) - f64::from(rows_wanted / 2);
    let temperatures = (0..rows_wanted).map(|place| zero + step * (first + f64::from(place)));
    rows(refrigerant, temperatures, air)
}

/// The points that the data reach.
fn rows(
    refrigerant: Refrigerant,
    temperatures: impl Iterator<Item = Temperature>,
    air: AbsolutePressure,
) -> Vec<SaturationPoint> {
    temperatures
        .filter_map(|temperature| {
            SaturationPoint::at_temperature(refrigerant, temperature, air).ok()
        })
        .collect()
}
