//! Equations of moist air, in °C, Pa and kilograms of dry air.
//!
//! Equation numbers are those of ASHRAE Handbook, Fundamentals (2017), chapter 1; saturation after
//! Hyland and Wexler, ASHRAE Trans. 89 (1983) 500.

use super::root::turning_point;
use crate::quantity::factors::KELVIN_AT_ZERO_CELSIUS;

/// Range of the saturation equations that is searched, °C.
pub(super) const SEARCHED: (f64, f64) = (-100.0, 85.0);
/// Mass of a mole of water over that of air. Equation 20.
const MOLAR_MASS_RATIO: f64 = 0.621_945;
/// Where the saturation equation changes from ice to liquid, °C.
const TRIPLE_POINT: f64 = 0.01;

/// Equation 30.
pub(super) fn enthalpy(dry_bulb: f64, humidity: f64) -> f64 {
    1006.0 * dry_bulb + humidity * (2_501_000.0 + 1860.0 * dry_bulb)
}

/// Equation 20.
pub(super) fn humidity_ratio(vapour: f64, p: f64) -> f64 {
    if vapour < p {
        MOLAR_MASS_RATIO * vapour / (p - vapour)
    } else {
        f64::NAN
    }
}

/// Equation 20, solved for the vapour pressure.
pub(super) fn vapour_pressure(humidity: f64, p: f64) -> f64 {
    p * humidity / (MOLAR_MASS_RATIO + humidity)
}

/// Equations 33, over water, and 35, over ice.
pub(super) fn humidity_by_wet_bulb(dry_bulb: f64, wet_bulb: f64, p: f64) -> f64 {
    let saturated = humidity_ratio(saturation_pressure(wet_bulb), p);
    let sensible = 1.006 * (dry_bulb - wet_bulb);
    if wet_bulb >= 0.0 {
        ((2501.0 - 2.326 * wet_bulb) * saturated - sensible)
            / (2501.0 + 1.86 * dry_bulb - 4.186 * wet_bulb)
    } else {
        ((2830.0 - 0.24 * wet_bulb) * saturated - sensible)
            / (2830.0 + 1.86 * dry_bulb - 2.1 * wet_bulb)
    }
}

/// Temperature in °C at which vapour of this pressure is saturated; an end of the range if there is none.
pub(super) fn dew_point(vapour: f64) -> f64 {
    turning_point(SEARCHED.0, SEARCHED.1, |celsius| {
        saturation_pressure(celsius) < vapour
    })
}

/// Equations 5, over ice, and 6, over water, in Pa.
pub(super) fn saturation_pressure(celsius: f64) -> f64 {
    let t = celsius + KELVIN_AT_ZERO_CELSIUS;
    libm::exp(if celsius <= TRIPLE_POINT {
        -5.674_535_9e3 / t + 6.392_524_7 - 9.677_843_0e-3 * t
            + 6.221_570_1e-7 * t * t
            + 2.074_782_5e-9 * t * t * t
            - 9.484_024_0e-13 * t * t * t * t
            + 4.163_501_9 * libm::log(t)
    } else {
        -5.800_220_6e3 / t + 1.391_499_3 - 4.864_023_9e-2 * t + 4.176_476_8e-5 * t * t
            - 1.445_209_3e-8 * t * t * t
            + 6.545_967_3 * libm::log(t)
    })
}

/// Equation 26, solved for the mass of air and moisture in a cubic metre.
pub(super) fn density(dry_bulb: f64, humidity: f64, p: f64) -> f64 {
    let kelvins = dry_bulb + KELVIN_AT_ZERO_CELSIUS;
    let volume = 287.042 * kelvins * (1.0 + 1.607_858 * humidity) / p;
    (1.0 + humidity) / volume
}
