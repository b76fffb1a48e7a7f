//! Water: where it boils, and where ice turns to vapour.

use super::beyond::{Argument, Beyond, within};
use super::root::turning_point;
use crate::quantity::choice;
use crate::quantity::{AbsolutePressure, SpecificEnthalpy, Temperature};

choice! {
    /// What the vapour stands over.
    Surface {
        /// Ice, below the triple point.
        Ice = "ice",
        /// Liquid water.
        Liquid = "liquid",
    }
}

/// Triple point, K. Source: IAPWS R14-08.
const TRIPLE_TEMPERATURE: f64 = 273.16;
/// Pressure at the triple point, Pa. Source: IAPWS R14-08.
const TRIPLE_PRESSURE: f64 = 611.657;
/// Critical point, K. Source: IAPWS R7-97.
const CRITICAL_TEMPERATURE: f64 = 647.096;
/// Coldest ice that is answered for, K: 0.2 micron. The equation reaches further.
const COLDEST: f64 = 190.0;

/// Coefficients n1 to n10. Source: IAPWS R7-97(2012), table 34.
const N: [f64; 10] = [
    0.116_705_214_527_67e4,
    -0.724_213_167_032_06e6,
    -0.170_738_469_400_92e2,
    0.120_208_247_024_70e5,
    -0.323_255_503_223_33e7,
    0.149_151_086_135_30e2,
    -0.482_326_573_615_91e4,
    0.405_113_405_420_57e6,
    -0.238_555_575_678_49,
    0.650_175_348_447_98e3,
];

/// Coefficients and exponents. Source: IAPWS R14-08(2011), table 2.
const ICE: [(f64, f64); 3] = [
    (-0.212_144_006e2, 0.333_333_333e-2),
    (0.273_203_819e2, 0.120_666_667e1),
    (-0.610_598_130e1, 0.170_333_333e1),
];

/// Pressure at which water at this temperature boils, or ice below the triple point sublimes.
///
/// # Method
/// Liquid: IAPWS R7-97, equation 30. Ice: IAPWS R14-08, equation 6.
///
/// # Valid for
/// 190 K to the critical temperature, 647.096 K.
///
/// # Errors
/// [`Beyond`] on `Temperature`.
///
/// # Examples
/// ```
/// use coldwright::physics::water;
/// use coldwright::quantity::Temperature;
/// let pressure = water::saturation_pressure(Temperature::kelvins(300.0)).unwrap();
/// assert!((pressure.in_pascals() - 3536.589_41).abs() < 1e-5);
/// ```
///
/// # References
/// Figure in the example: IAPWS R7-97(2012), table 35.
pub fn saturation_pressure(temperature: Temperature) -> Result<AbsolutePressure, Beyond> {
    let kelvins = temperature.in_kelvins();
    if kelvins >= CRITICAL_TEMPERATURE && kelvins.is_finite() {
        let argument = Argument::Temperature;
        return Err(Beyond::AboveCritical {
            argument,
            critical: CRITICAL_TEMPERATURE,
        });
    }
    let kelvins = within(
        Argument::Temperature,
        kelvins,
        COLDEST,
        CRITICAL_TEMPERATURE,
    )?;
    Ok(AbsolutePressure::pascals(if kelvins < TRIPLE_TEMPERATURE {
        sublimation_pressure(kelvins)
    } else {
        boiling_pressure(kelvins)
    }))
}

/// Temperature at which water boils at this pressure, or ice sublimes below the triple point.
///
/// # Method
/// Liquid: IAPWS R7-97, equation 31. Ice: IAPWS R14-08, equation 6, halving an interval.
///
/// # Valid for
/// 0.0324 Pa (0.24 micron) to the critical pressure, 22.064 MPa.
///
/// # Errors
/// [`Beyond`] on `Pressure`.
///
/// # Examples
/// ```
/// use coldwright::physics::water;
/// use coldwright::quantity::{AbsolutePressure, Quantity};
/// let pressure = AbsolutePressure::read("500 micron").unwrap();
/// let temperature = water::saturation_temperature(pressure).unwrap();
/// assert!((temperature.in_kelvins() - 273.15 + 24.48).abs() < 0.01);
/// assert_eq!(water::surface(pressure), water::Surface::Ice);
/// ```
pub fn saturation_temperature(pressure: AbsolutePressure) -> Result<Temperature, Beyond> {
    let (lowest, critical) = (
        sublimation_pressure(COLDEST),
        boiling_pressure(CRITICAL_TEMPERATURE),
    );
    let argument = Argument::Pressure;
    let pascals = pressure.in_pascals();
    if pascals >= critical && pascals.is_finite() {
        return Err(Beyond::AboveCritical { argument, critical });
    }
    let pascals = within(argument, pascals, lowest, critical)?;
    Ok(Temperature::kelvins(if pascals < TRIPLE_PRESSURE {
        turning_point(COLDEST, TRIPLE_TEMPERATURE, |kelvins| {
            sublimation_pressure(kelvins) < pascals
        })
    } else {
        boiling_temperature(pascals)
    }))
}

/// Coldest liquid water that is answered for, K: -40 °C, where supercooled water freezes by itself.
const COLDEST_LIQUID: f64 = 233.15;

/// Pressure of vapour in balance with ice or liquid water at this temperature, stable or not.
///
/// # Method
/// As [`saturation_pressure`]. Supercooled liquid: IAPWS R7-97, equation 30, extrapolated below
/// 273.15 K; within 0.25 % of Murphy and Koop (2005) down to -40 °C.
///
/// # Valid for
/// Ice from 190 K to the triple point, liquid from 233.15 K to the critical temperature.
///
/// # Errors
/// [`Beyond`] on `Temperature`.
pub fn pressure_over(
    surface: Surface,
    temperature: Temperature,
) -> Result<AbsolutePressure, Beyond> {
    let (low, high) = temperatures(surface);
    let kelvins = within(Argument::Temperature, temperature.in_kelvins(), low, high)?;
    Ok(AbsolutePressure::pascals(match surface {
        Surface::Ice => sublimation_pressure(kelvins),
        Surface::Liquid => boiling_pressure(kelvins),
    }))
}

/// Temperature of ice or liquid water in balance with vapour of this pressure, stable or not.
///
/// # Valid for
/// The pressures of [`pressure_over`].
///
/// # Errors
/// [`Beyond`] on `Pressure`.
///
/// # Examples
/// ```
/// use coldwright::physics::water::{Surface, temperature_over};
/// use coldwright::quantity::{AbsolutePressure, Quantity};
/// let pressure = AbsolutePressure::read("500 micron").unwrap();
/// let supercooled = temperature_over(Surface::Liquid, pressure).unwrap();
/// assert!((supercooled.in_kelvins() - 273.15 + 27.1).abs() < 0.02);
/// ```
pub fn temperature_over(
    surface: Surface,
    pressure: AbsolutePressure,
) -> Result<Temperature, Beyond> {
    let (low, high) = temperatures(surface);
    let law = match surface {
        Surface::Ice => sublimation_pressure,
        Surface::Liquid => boiling_pressure,
    };
    let pascals = within(
        Argument::Pressure,
        pressure.in_pascals(),
        law(low),
        law(high),
    )?;
    Ok(Temperature::kelvins(match surface {
        Surface::Ice => turning_point(low, high, |kelvins| law(kelvins) < pascals),
        Surface::Liquid => boiling_temperature(pascals),
    }))
}

/// Coldest and hottest that a surface is answered for, K.
const fn temperatures(surface: Surface) -> (f64, f64) {
    match surface {
        Surface::Ice => (COLDEST, TRIPLE_TEMPERATURE),
        Surface::Liquid => (COLDEST_LIQUID, CRITICAL_TEMPERATURE),
    }
}

/// Whether vapour at this pressure is in balance with ice or with liquid water.
pub fn surface(pressure: AbsolutePressure) -> Surface {
    if pressure.in_pascals() < TRIPLE_PRESSURE {
        Surface::Ice
    } else {
        Surface::Liquid
    }
}

/// Heat that water takes to evaporate, or ice to sublime.
///
/// # Method
/// `L = 2501 − 2.326·t` above the triple point, `2830 − 0.24·t` below, kJ/kg with t in °C.
///
/// # Valid for
/// −50 to 60 °C, within 0.5 %.
///
/// # References
/// ASHRAE Handbook, Fundamentals (2017), chapter 1, equations 33 and 35.
pub fn latent_heat(temperature: Temperature) -> SpecificEnthalpy {
    let celsius = temperature.in_kelvins() - 273.15;
    SpecificEnthalpy::joules_per_kilogram(if temperature.in_kelvins() < TRIPLE_TEMPERATURE {
        2.830e6 - 240.0 * celsius
    } else {
        2.501e6 - 2326.0 * celsius
    })
}

fn sublimation_pressure(kelvins: f64) -> f64 {
    let theta = kelvins / TRIPLE_TEMPERATURE;
    let sum: f64 = ICE
        .iter()
        .map(|(factor, power)| factor * libm::pow(theta, *power))
        .sum();
    TRIPLE_PRESSURE * libm::exp(sum / theta)
}

fn boiling_pressure(kelvins: f64) -> f64 {
    let [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = N;
    let theta = kelvins + n9 / (kelvins - n10);
    let a = theta * theta + n1 * theta + n2;
    let b = n3 * theta * theta + n4 * theta + n5;
    let c = n6 * theta * theta + n7 * theta + n8;
    let root = 2.0 * c / (-b + (b * b - 4.0 * a * c).sqrt());
    1e6 * root * root * root * root
}

fn boiling_temperature(pascals: f64) -> f64 {
    let [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = N;
    let beta = (pascals / 1e6).sqrt().sqrt();
    let e = beta * beta + n3 * beta + n6;
    let f = n1 * beta * beta + n4 * beta + n7;
    let g = n2 * beta * beta + n5 * beta + n8;
    let d = 2.0 * g / (-f - (f * f - 4.0 * e * g).sqrt());
    0.5 * (n10 + d - ((n10 + d) * (n10 + d) - 4.0 * (n9 + n10 * d)).sqrt())
}
