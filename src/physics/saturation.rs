//! Refrigerants on their bubble and dew lines.
//!
//! # Method
//! Chebyshev expansions of reference equations of state; the data, their sources and their certified
//! errors are in `tables::fluids` and `tests/reference/fluids`.
//!
//! # Valid for
//! [`temperature_range`] and [`pressure_range`]. Outside them, and near the critical point, every
//! function refuses.

use serde::Serialize;

use super::beyond::{Argument, Beyond};
use super::chebyshev;
use crate::quantity::choice;
use crate::quantity::{
    AbsolutePressure, Density, DynamicViscosity, SpecificEnthalpy, SpecificHeatCapacity,
    Temperature, TemperatureDifference,
};
use crate::tables::fluids::{Expansions, Span, expansions};
use crate::tables::refrigerants::Refrigerant;

choice! {
    /// Which end of boiling is meant. They differ for blends with a glide.
    Line {
        /// All liquid, the first bubble: subcooling counts from here.
        Bubble = "bubble",
        /// All vapour, the first drop: superheat counts from here.
        Dew = "dew",
    }
}

choice! {
    /// Which of the two saturated phases: liquid lies on the bubble line, vapour on the dew line.
    Phase {
        /// Saturated liquid.
        Liquid = "liquid",
        /// Saturated vapour.
        Vapour = "vapour",
    }
}

/// Pressure on a line at a temperature.
///
/// # Errors
/// [`Beyond`] on `Temperature`, where no saturation exists or the data do not reach.
///
/// # Examples
/// ```
/// use coldwright::physics::saturation::{self, Line};
/// use coldwright::quantity::Temperature;
/// use coldwright::tables::refrigerants::Refrigerant;
/// let pressure = saturation::pressure(Refrigerant::R410A, Line::Dew, Temperature::celsius(24.0));
/// // 1608.6 kPa in the source.
/// assert!((pressure.unwrap().in_pascals() / 1_608_600.0 - 1.0).abs() < 1e-3);
/// ```
///
/// # References
/// Figure in the example: US Department of Energy, EnergyPlus property data, after Lemmon (2003).
pub fn pressure(
    refrigerant: Refrigerant,
    line: Line,
    temperature: Temperature,
) -> Result<AbsolutePressure, Beyond> {
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, temperature)?;
    Ok(AbsolutePressure::pascals(libm::exp(log_pressure(fluid, line, at))))
}

/// Temperature on a line at a pressure.
///
/// # Errors
/// [`Beyond`] on `Pressure`.
///
/// # Examples
/// ```
/// use coldwright::physics::saturation::{self, Line};
/// use coldwright::quantity::AbsolutePressure;
/// use coldwright::tables::refrigerants::Refrigerant;
/// let boiling = saturation::temperature(Refrigerant::R134a, Line::Dew, AbsolutePressure::pascals(1e6));
/// assert!((boiling.unwrap().in_kelvins() - 273.15 - 39.37).abs() < 0.05);
/// ```
///
/// # References
/// Figure in the example: Moran and Shapiro, Fundamentals of Engineering Thermodynamics, table of R-134a.
pub fn temperature(
    refrigerant: Refrigerant,
    line: Line,
    pressure: AbsolutePressure,
) -> Result<Temperature, Beyond> {
    let fluid = expansions(refrigerant);
    let (range, phi, coefficients) = match line {
        Line::Bubble => (&fluid.bubble_pressure, &fluid.bubble_phi, fluid.bubble_temperature),
        Line::Dew => (&fluid.dew_pressure, &fluid.dew_phi, fluid.dew_temperature),
    };
    let pressure = below_critical(
        Argument::Pressure,
        pressure.in_pascals(),
        range,
        fluid.critical_pressure,
    )?;
    let at = phi.scaled((fluid.log_pressure_ceiling - libm::log(pressure)).sqrt());
    Ok(Temperature::kelvins(chebyshev::sum(coefficients, at)))
}

/// Dew temperature less bubble temperature at a pressure: zero for a pure fluid.
///
/// # Errors
/// [`Beyond`] on `Pressure`, if either line does not reach it.
pub fn glide(
    refrigerant: Refrigerant,
    pressure: AbsolutePressure,
) -> Result<TemperatureDifference, Beyond> {
    let dew = temperature(refrigerant, Line::Dew, pressure)?;
    Ok(dew - temperature(refrigerant, Line::Bubble, pressure)?)
}

/// Density of a saturated phase at its temperature.
///
/// # Errors
/// [`Beyond`] on `Temperature`.
///
/// # Examples
/// ```
/// use coldwright::physics::saturation::{self, Phase};
/// use coldwright::quantity::Temperature;
/// use coldwright::tables::refrigerants::Refrigerant;
/// let liquid = saturation::density(Refrigerant::R410A, Phase::Liquid, Temperature::celsius(24.0));
/// // 1063.9 kg/m³ in the source.
/// assert!((liquid.unwrap().in_kilograms_per_cubic_metre() / 1063.9 - 1.0).abs() < 2e-3);
/// ```
///
/// # References
/// Figure in the example: US Department of Energy, EnergyPlus property data.
pub fn density(
    refrigerant: Refrigerant,
    phase: Phase,
    temperature: Temperature,
) -> Result<Density, Beyond> {
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, temperature)?;
    Ok(Density::kilograms_per_cubic_metre(match phase {
        Phase::Liquid => chebyshev::sum(fluid.liquid_density, at),
        Phase::Vapour => vapour_density(fluid, at),
    }))
}

/// Enthalpy of a saturated phase at its temperature; 200 kJ/kg for saturated liquid at 0 °C.
///
/// # Errors
/// [`Beyond`] on `Temperature`.
pub fn enthalpy(
    refrigerant: Refrigerant,
    phase: Phase,
    temperature: Temperature,
) -> Result<SpecificEnthalpy, Beyond> {
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, temperature)?;
    Ok(SpecificEnthalpy::joules_per_kilogram(match phase {
        Phase::Liquid => chebyshev::sum(fluid.liquid_enthalpy, at),
        Phase::Vapour => vapour_enthalpy(fluid, at),
    }))
}

/// Heat that evaporates a kilogram at constant pressure, from the bubble to the dew line.
///
/// # Errors
/// [`Beyond`] on `Pressure`, if either line does not reach it.
pub fn latent_heat(
    refrigerant: Refrigerant,
    pressure: AbsolutePressure,
) -> Result<SpecificEnthalpy, Beyond> {
    let dew = temperature(refrigerant, Line::Dew, pressure)?;
    let bubble = temperature(refrigerant, Line::Bubble, pressure)?;
    let vapour = enthalpy(refrigerant, Phase::Vapour, into_range(refrigerant, dew))?;
    Ok(vapour - enthalpy(refrigerant, Phase::Liquid, into_range(refrigerant, bubble))?)
}

/// Isobaric heat capacity of a saturated phase at its temperature.
///
/// # Errors
/// [`Beyond`] on `Temperature`.
pub fn heat_capacity(
    refrigerant: Refrigerant,
    phase: Phase,
    temperature: Temperature,
) -> Result<SpecificHeatCapacity, Beyond> {
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, temperature)?;
    let coefficients = match phase {
        Phase::Liquid => fluid.liquid_heat_capacity,
        Phase::Vapour => fluid.vapour_heat_capacity,
    };
    let theta_squared = 1.0 - temperature.in_kelvins() / fluid.critical_temperature;
    Ok(SpecificHeatCapacity::joules_per_kilogram_kelvin(
        chebyshev::sum(coefficients, at) / theta_squared,
    ))
}

/// Viscosity of a saturated phase at its temperature.
///
/// For R-448A, R-449A, R-452B, R-454B and R-513A it is mixed from the pure components: liquid by mole
/// fractions of the logarithms (Arrhenius), within about 8 %, at the cold end up to 20 %; vapour by
/// Wilke (1950), within about 8 %. For the rest it is the library's, within about 5 %.
///
/// # Errors
/// [`Beyond`] on `Temperature`.
pub fn viscosity(
    refrigerant: Refrigerant,
    phase: Phase,
    temperature: Temperature,
) -> Result<DynamicViscosity, Beyond> {
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, temperature)?;
    let coefficients = match phase {
        Phase::Liquid => fluid.ln_liquid_viscosity,
        Phase::Vapour => fluid.ln_vapour_viscosity,
    };
    Ok(DynamicViscosity::pascal_seconds(libm::exp(chebyshev::sum(coefficients, at))))
}

/// Coldest and hottest temperature that the data of a refrigerant hold for, both included.
pub fn temperature_range(refrigerant: Refrigerant) -> (Temperature, Temperature) {
    let range = &expansions(refrigerant).temperature;
    (Temperature::kelvins(range.low), Temperature::kelvins(range.high))
}

/// Lowest and highest pressure that a line holds for, both included.
pub fn pressure_range(refrigerant: Refrigerant, line: Line) -> (AbsolutePressure, AbsolutePressure) {
    let fluid = expansions(refrigerant);
    let range = match line {
        Line::Bubble => &fluid.bubble_pressure,
        Line::Dew => &fluid.dew_pressure,
    };
    (AbsolutePressure::pascals(range.low), AbsolutePressure::pascals(range.high))
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
pub(super) fn scaled_theta(fluid: &Expansions, temperature: Temperature) -> Result<f64, Beyond> {
    let kelvins = below_critical(
        Argument::Temperature,
        temperature.in_kelvins(),
        &fluid.temperature,
        fluid.critical_temperature,
    )?;
    Ok(fluid.theta.scaled((1.0 - kelvins / fluid.critical_temperature).sqrt()))
}

pub(super) fn log_pressure(fluid: &Expansions, line: Line, scaled_theta: f64) -> f64 {
    let coefficients = match line {
        Line::Bubble => fluid.ln_bubble_pressure,
        Line::Dew => fluid.ln_dew_pressure,
    };
    chebyshev::sum(coefficients, scaled_theta)
}

pub(super) fn vapour_density(fluid: &Expansions, scaled_theta: f64) -> f64 {
    libm::exp(chebyshev::sum(fluid.ln_vapour_density, scaled_theta))
}

pub(super) fn vapour_enthalpy(fluid: &Expansions, scaled_theta: f64) -> f64 {
    chebyshev::sum(fluid.vapour_enthalpy, scaled_theta)
}

/// A temperature found from a pressure may miss the end of the range by a rounding error.
pub(super) fn into_range(refrigerant: Refrigerant, temperature: Temperature) -> Temperature {
    let range = &expansions(refrigerant).temperature;
    Temperature::kelvins(temperature.in_kelvins().clamp(range.low, range.high))
}

fn below_critical(
    argument: Argument,
    number: f64,
    range: &Span,
    critical: f64,
) -> Result<f64, Beyond> {
    if !number.is_finite() {
        Err(Beyond::NotFinite { argument })
    } else if number < range.low {
        Err(Beyond::TooLow { argument, limit: range.low })
    } else if number <= range.high {
        Ok(number)
    } else if number < critical {
        Err(Beyond::NearCritical { argument, limit: range.high, critical })
    } else {
        Err(Beyond::AboveCritical { argument, critical })
    }
}
