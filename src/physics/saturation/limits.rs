//! How far the data of a refrigerant reach.

use serde::Serialize;

use super::Line;
use crate::physics::{Argument, Beyond};
use crate::quantity::{AbsolutePressure, Density, Temperature};
use crate::tables::fluids::{Expansions, Range, expansions};
use crate::tables::refrigerants::Refrigerant;

/// Coldest and hottest temperature that the data of a refrigerant hold for, both included.
pub fn temperature_range(refrigerant: Refrigerant) -> (Temperature, Temperature) {
    let range = &expansions(refrigerant).temperature;
    (
        Temperature::kelvins(range.low),
        Temperature::kelvins(range.high),
    )
}

/// Lowest and highest pressure that a line holds for, both included.
pub fn pressure_range(
    refrigerant: Refrigerant,
    line: Line,
) -> (AbsolutePressure, AbsolutePressure) {
    let fluid = expansions(refrigerant);
    let range = match line {
        Line::Bubble => &fluid.bubble_pressure,
        Line::Dew => &fluid.dew_pressure,
    };
    (
        AbsolutePressure::pascals(range.low),
        AbsolutePressure::pascals(range.high),
    )
}

/// Where liquid and vapour become one.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct CriticalPoint {
    /// Its temperature.
    pub temperature: Temperature,
    /// Its pressure.
    pub pressure: AbsolutePressure,
    /// Its density.
    pub density: Density,
}

/// The critical point of a refrigerant, of its equation of state.
///
/// ```
/// use coldwright::physics::saturation::critical_point;
/// use coldwright::tables::refrigerants::Refrigerant;
/// let critical = critical_point(Refrigerant::R744);
/// assert!((critical.temperature.in_kelvins() - 304.128_2).abs() < 1e-3);
/// assert!((critical.pressure.in_pascals() / 7.377_3e6 - 1.0).abs() < 1e-5);
/// ```
pub fn critical_point(refrigerant: Refrigerant) -> CriticalPoint {
    let fluid = expansions(refrigerant);
    CriticalPoint {
        temperature: Temperature::kelvins(fluid.critical_temperature),
        pressure: AbsolutePressure::pascals(fluid.critical_pressure),
        density: Density::kilograms_per_cubic_metre(fluid.critical_density),
    }
}

/// Mass of a mole, kg/mol.
pub fn molar_mass(refrigerant: Refrigerant) -> f64 {
    expansions(refrigerant).molar_mass
}

/// theta of a temperature, mapped to -1..1; refuses outside the data.
pub(in crate::physics) fn scaled_theta(
    fluid: &Expansions,
    temperature: Temperature,
) -> Result<f64, Beyond> {
    let kelvins = below_critical(
        Argument::Temperature,
        temperature.in_kelvins(),
        &fluid.temperature,
        fluid.critical_temperature,
    )?;
    Ok(fluid
        .theta
        .scaled((1.0 - kelvins / fluid.critical_temperature).sqrt()))
}

/// The temperature, moved into the range of the data: one found from a pressure may miss its end by a
/// rounding error.
pub fn into_range(refrigerant: Refrigerant, temperature: Temperature) -> Temperature {
    let range = &expansions(refrigerant).temperature;
    Temperature::kelvins(temperature.in_kelvins().clamp(range.low, range.high))
}

/// `number`, if it lies in the range; otherwise which side of it, and of the critical point.
pub(super) fn below_critical(
    argument: Argument,
    number: f64,
    range: &Range,
    critical: f64,
) -> Result<f64, Beyond> {
    if !number.is_finite() {
        Err(Beyond::NotFinite { argument })
    } else if number < range.low {
        Err(Beyond::TooLow {
            argument,
            limit: range.low,
        })
    } else if number <= range.high {
        Ok(number)
    } else if number < critical {
        Err(Beyond::NearCritical {
            argument,
            limit: range.high,
            critical,
        })
    } else {
        Err(Beyond::AboveCritical { argument, critical })
    }
}
