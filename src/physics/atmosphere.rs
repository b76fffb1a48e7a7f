//! The standard atmosphere: pressure of the air at an altitude.

use crate::quantity::factors::STANDARD_GRAVITY;
use crate::quantity::{AbsolutePressure, Altitude, STANDARD_ATMOSPHERE};

/// Temperature at sea level, K. ICAO Doc 7488.
const SEA_LEVEL_TEMPERATURE: f64 = 288.15;
/// Fall of temperature with altitude in the lowest layer, K/m. ICAO Doc 7488.
const LAPSE_RATE: f64 = 0.006_5;
/// Specific gas constant of air, J/(kg·K). ICAO Doc 7488.
const GAS_CONSTANT_OF_AIR: f64 = 287.052_87;

/// Pressure of the standard atmosphere at an altitude.
///
/// # Method
/// `p = p0·(1 - L·h/T0)^(g/(R·L))`, the lowest layer of the ICAO standard atmosphere.
///
/// # Valid for
/// Geopotential altitude from -5 000 to 11 000 m; [`Altitude`] entries are narrower.
///
/// # Examples
/// ```
/// use coldwright::physics::atmosphere::standard_pressure;
/// use coldwright::quantity::Altitude;
/// let pressure = standard_pressure(Altitude::metres(1000.0)).in_pascals();
/// assert!((pressure - 89_874.6).abs() < 0.5);
/// ```
///
/// # References
/// ICAO Doc 7488, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
pub fn standard_pressure(altitude: Altitude) -> AbsolutePressure {
    let relative = 1.0 - LAPSE_RATE * altitude.in_metres() / SEA_LEVEL_TEMPERATURE;
    let exponent = STANDARD_GRAVITY / (GAS_CONSTANT_OF_AIR * LAPSE_RATE);
    let ratio = libm::pow(relative.max(0.0), exponent);
    AbsolutePressure::pascals(STANDARD_ATMOSPHERE.in_pascals() * ratio)
}
