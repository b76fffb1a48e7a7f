//! Pressure and temperature on the bubble and dew lines.

use super::limits::{below_critical, scaled_theta};
use crate::physics::{Argument, Beyond, chebyshev};
use crate::quantity::choice;
use crate::quantity::{AbsolutePressure, Temperature, TemperatureDifference};
use crate::tables::fluids::{Expansions, expansions};
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
    Ok(AbsolutePressure::pascals(libm::exp(log_pressure(
        fluid, line, at,
    ))))
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
        Line::Bubble => (
            &fluid.bubble_pressure,
            &fluid.bubble_phi,
            fluid.bubble_temperature,
        ),
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
///
/// # Examples
/// ```
/// use coldwright::physics::saturation;
/// use coldwright::quantity::AbsolutePressure;
/// use coldwright::tables::refrigerants::Refrigerant;
/// let pressure = AbsolutePressure::pascals(600e3);
/// assert!(saturation::glide(Refrigerant::R407C, pressure).unwrap().in_kelvins() > 5.0);
/// assert!(saturation::glide(Refrigerant::R410A, pressure).unwrap().in_kelvins() < 0.2);
/// assert_eq!(saturation::glide(Refrigerant::R32, pressure).unwrap().in_kelvins(), 0.0);
/// ```
pub fn glide(
    refrigerant: Refrigerant,
    pressure: AbsolutePressure,
) -> Result<TemperatureDifference, Beyond> {
    let dew = temperature(refrigerant, Line::Dew, pressure)?;
    Ok(dew - temperature(refrigerant, Line::Bubble, pressure)?)
}

pub(in crate::physics) fn log_pressure(fluid: &Expansions, line: Line, scaled_theta: f64) -> f64 {
    let coefficients = match line {
        Line::Bubble => fluid.ln_bubble_pressure,
        Line::Dew => fluid.ln_dew_pressure,
    };
    chebyshev::sum(coefficients, scaled_theta)
}
