//! Nitrogen as a real gas, for a vessel that holds its density while its temperature changes.

use super::beyond::{Argument, Beyond, within};
use super::chebyshev;
use super::root::turning_point;
use crate::quantity::{AbsolutePressure, Density, Temperature};
use crate::tables::fluids::nitrogen::{
    DEPARTURE, LARGEST_PRESSURE, TEMPERATURE, TEMPERATURE_SCALE,
};

/// Specific gas constant, J/(kg K). Source: CODATA 2018 molar gas constant; molar mass of Span et al. (2000).
const GAS_CONSTANT: f64 = 8.314_462_618 / 0.028_013_48;

/// The largest pressure that is answered for.
pub const HIGHEST_PRESSURE: AbsolutePressure = AbsolutePressure::pascals(LARGEST_PRESSURE);

/// Each step of the fixed point gains more than a digit; more never help.
const STEPS: usize = 24;

/// Compressibility factor pv/(RT).
///
/// # Valid for
/// -40 to 70 °C, up to 7.5 MPa; within 1e-6 of the equation it is fitted to.
///
/// # Errors
/// [`Beyond`] on `Pressure` or `Temperature`.
///
/// # Examples
/// ```
/// use coldwright::physics::nitrogen::compressibility;
/// use coldwright::quantity::{AbsolutePressure, Temperature};
/// let factor = compressibility(AbsolutePressure::pascals(1e6), Temperature::kelvins(300.0)).unwrap();
/// assert!((factor - 0.998).abs() < 1e-3);
/// ```
///
/// # References
/// Span, Lemmon, Jacobsen, Wagner and Yokozeki, J. Phys. Chem. Ref. Data 29 (2000) 1361.
pub fn compressibility(
    pressure: AbsolutePressure,
    temperature: Temperature,
) -> Result<f64, Beyond> {
    let pressure = within(
        Argument::Pressure,
        pressure.in_pascals(),
        0.0,
        LARGEST_PRESSURE,
    )?;
    let kelvins = valid_temperature(temperature)?;
    Ok(factor(pressure, kelvins))
}

/// Density.
///
/// # Errors
/// As [`compressibility`].
pub fn density(pressure: AbsolutePressure, temperature: Temperature) -> Result<Density, Beyond> {
    let factor = compressibility(pressure, temperature)?;
    Ok(Density::kilograms_per_cubic_metre(
        pressure.in_pascals() / (factor * GAS_CONSTANT * temperature.in_kelvins()),
    ))
}

/// What the pressure becomes when nitrogen goes from one temperature to another at constant density.
///
/// # Method
/// p2 = p1 (T2 / T1) Z(p2, T2) / Z(p1, T1), repeated until it stands.
///
/// # Errors
/// [`Beyond`] on `Pressure`, the result's included, or `Temperature`.
///
/// # Examples
/// ```
/// use coldwright::physics::nitrogen;
/// use coldwright::quantity::{GaugePressure, Quantity, STANDARD_ATMOSPHERE, Temperature};
/// let filled = GaugePressure::read("600 psi").unwrap().to_absolute(STANDARD_ATMOSPHERE);
/// let read = nitrogen::at_constant_density(filled, Temperature::fahrenheit(70.0), Temperature::fahrenheit(40.0));
/// let gauge = read.unwrap().to_gauge(STANDARD_ATMOSPHERE);
/// // 565.2 psi for an ideal gas.
/// assert!((gauge.in_pascals() / 6894.757 - 561.6).abs() < 0.05);
/// ```
pub fn at_constant_density(
    pressure: AbsolutePressure,
    from: Temperature,
    to: Temperature,
) -> Result<AbsolutePressure, Beyond> {
    let filled = compressibility(pressure, from)?;
    let kelvins = valid_temperature(to)?;
    let ideal = pressure.in_pascals() * kelvins / from.in_kelvins() / filled;
    let mut found = ideal.min(LARGEST_PRESSURE);
    for _ in 0..STEPS {
        found = (ideal * factor(found, kelvins)).min(LARGEST_PRESSURE);
    }
    // At the lid the product may still lie above it.
    let found = within(
        Argument::Pressure,
        ideal * factor(found, kelvins),
        0.0,
        LARGEST_PRESSURE,
    )?;
    Ok(AbsolutePressure::pascals(found))
}

/// Temperature of a cylinder that [`cylinder_density`] and [`cylinder_pressure`] hold for.
pub const CYLINDER_TEMPERATURE: Temperature = Temperature::celsius(20.0);

/// The largest pressure of a cylinder that is answered for: filled to 300 bar, and a hot day.
pub const HIGHEST_CYLINDER_PRESSURE: AbsolutePressure = AbsolutePressure::pascals(32e6);

/// Z - 1 at 20 °C in powers of the pressure in 10 MPa.
const CYLINDER_DEPARTURE: [f64; 3] = [-0.028_137_17, 0.031_145_42, -0.002_063_63];

/// Density of nitrogen in a cylinder at 20 °C.
///
/// # Method
/// ρ = p/(Z R T), Z a polynomial of the third degree in p, fitted to CoolProp 8.0.0 from 0.1 to 32 MPa.
///
/// # Valid for
/// 20 °C, up to 32 MPa; within 0.07 %.
///
/// # Errors
/// [`Beyond`] on `Pressure`.
///
/// # Examples
/// ```
/// use coldwright::physics::nitrogen::cylinder_density;
/// use coldwright::quantity::AbsolutePressure;
/// let full = cylinder_density(AbsolutePressure::pascals(20e6)).unwrap();
/// // CoolProp 8.0.0: 218.5 kg/m³; an ideal gas would have 229.9.
/// assert!((full.in_kilograms_per_cubic_metre() - 218.5).abs() < 0.2);
/// ```
///
/// # References
/// Span, Lemmon, Jacobsen, Wagner and Yokozeki, J. Phys. Chem. Ref. Data 29 (2000) 1361.
pub fn cylinder_density(pressure: AbsolutePressure) -> Result<Density, Beyond> {
    let limit = HIGHEST_CYLINDER_PRESSURE.in_pascals();
    let pressure = within(Argument::Pressure, pressure.in_pascals(), 0.0, limit)?;
    Ok(Density::kilograms_per_cubic_metre(compressed(pressure)))
}

/// Pressure at which nitrogen in a cylinder at 20 °C has this density.
///
/// # Errors
/// [`Beyond`] on `Density`: negative, or above that of the largest pressure.
///
/// # Examples
/// ```
/// use coldwright::physics::nitrogen::{cylinder_density, cylinder_pressure};
/// use coldwright::quantity::AbsolutePressure;
/// let full = cylinder_density(AbsolutePressure::pascals(15e6)).unwrap();
/// let half = cylinder_pressure(full * 0.5).unwrap();
/// assert!((half.in_pascals() / 7.316e6 - 1.0).abs() < 1e-3);
/// ```
pub fn cylinder_pressure(density: Density) -> Result<AbsolutePressure, Beyond> {
    let limit = HIGHEST_CYLINDER_PRESSURE.in_pascals();
    let density = density.in_kilograms_per_cubic_metre();
    let density = within(Argument::Density, density, 0.0, compressed(limit))?;
    let found = turning_point(0.0, limit, |pressure| compressed(pressure) < density);
    Ok(AbsolutePressure::pascals(found))
}

fn compressed(pressure: f64) -> f64 {
    let part = pressure / 1e7;
    let [first, second, third] = CYLINDER_DEPARTURE;
    let factor = 1.0 + part * (first + part * (second + part * third));
    pressure / (factor * GAS_CONSTANT * CYLINDER_TEMPERATURE.in_kelvins())
}

fn valid_temperature(temperature: Temperature) -> Result<f64, Beyond> {
    within(
        Argument::Temperature,
        temperature.in_kelvins(),
        TEMPERATURE.low,
        TEMPERATURE.high,
    )
}

fn factor(pressure: f64, kelvins: f64) -> f64 {
    let part = pressure / LARGEST_PRESSURE;
    1.0 + part
        * chebyshev::surface(
            DEPARTURE,
            TEMPERATURE_SCALE.scaled(kelvins),
            2.0 * part - 1.0,
        )
}
