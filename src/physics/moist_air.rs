//! Moist air: any two facts about it give all the others.
//!
//! Equations of ASHRAE Handbook, Fundamentals (2017), chapter 1, and of Hyland and Wexler (1983).
//! Temperatures in °C inside, enthalpy and humidity ratio for a kilogram of dry air.

use serde::Serialize;

use super::beyond::{Argument, Beyond, within};
use super::psychrometrics::{
    self, SEARCHED, density, dew_point, humidity_by_wet_bulb, humidity_ratio, saturation_pressure,
    vapour_pressure,
};
use super::root::turning_point;
use crate::quantity::factors::KELVIN_AT_ZERO_CELSIUS;
use crate::quantity::{AbsolutePressure, Density, Ratio, SpecificEnthalpy, Temperature};

/// Coldest and hottest air that is answered for, °C.
const DRY_BULB: (f64, f64) = (-60.0, 80.0);
/// Pressures of the air, Pa: 5 500 m to a deep mine. At the lowest, water boils above 80 °C.
const PRESSURE: (f64, f64) = (50_000.0, 120_000.0);
/// Driest air that is answered for: a frost point near -75 °C.
const DRIEST: f64 = 1e-6;
/// A relative humidity above one by no more than rounding.
const SATURATED_WITHIN: f64 = 1e-9;

/// A fact about air. Two of them and the pressure fix a state.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Known {
    /// What a dry thermometer shows.
    DryBulb(Temperature),
    /// What a wetted thermometer shows in moving air.
    WetBulb(Temperature),
    /// Where its moisture begins to condense, or to freeze out below 0 °C.
    DewPoint(Temperature),
    /// Vapour pressure over its saturation.
    RelativeHumidity(Ratio),
    /// Mass of water over mass of dry air.
    HumidityRatio(Ratio),
    /// Enthalpy for a kilogram of dry air, from dry air and liquid water at 0 °C.
    Enthalpy(SpecificEnthalpy),
}

impl Known {
    const fn argument(self) -> Argument {
        match self {
            Self::DryBulb(_) => Argument::DryBulb,
            Self::WetBulb(_) => Argument::WetBulb,
            Self::DewPoint(_) => Argument::DewPoint,
            Self::RelativeHumidity(_) => Argument::RelativeHumidity,
            Self::HumidityRatio(_) => Argument::HumidityRatio,
            Self::Enthalpy(_) => Argument::Enthalpy,
        }
    }

    fn number(self) -> f64 {
        match self {
            Self::DryBulb(t) | Self::WetBulb(t) | Self::DewPoint(t) => {
                t.in_kelvins() - KELVIN_AT_ZERO_CELSIUS
            }
            Self::RelativeHumidity(ratio) | Self::HumidityRatio(ratio) => ratio.in_one(),
            Self::Enthalpy(enthalpy) => enthalpy.in_joules_per_kilogram(),
        }
    }

    const fn rank(self) -> u8 {
        match self {
            Self::DryBulb(_) => 0,
            Self::HumidityRatio(_) => 1,
            Self::DewPoint(_) => 2,
            Self::RelativeHumidity(_) => 3,
            Self::WetBulb(_) => 4,
            Self::Enthalpy(_) => 5,
        }
    }
}

/// A state of moist air.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct MoistAir {
    /// Pressure of the air.
    pub pressure: AbsolutePressure,
    /// What a dry thermometer shows.
    pub dry_bulb: Temperature,
    /// What a wetted thermometer shows.
    pub wet_bulb: Temperature,
    /// Where its moisture begins to condense.
    pub dew_point: Temperature,
    /// Vapour pressure over its saturation.
    pub relative_humidity: Ratio,
    /// Mass of water over mass of dry air.
    pub humidity_ratio: Ratio,
    /// Enthalpy for a kilogram of dry air.
    pub enthalpy: SpecificEnthalpy,
    /// Mass of air and moisture in a volume.
    pub density: Density,
}

/// The state of air of a pressure, from two facts about it.
///
/// # Valid for
/// Dry bulb -60 to 80 °C, pressure 50 to 120 kPa, humidity ratio from 1e-6.
///
/// # Errors
/// [`Beyond`]: an argument out of range; `Dependent` for two of a kind, for dew point with humidity
/// ratio and for wet bulb with enthalpy, which run almost parallel; `Contradiction` for what cannot be,
/// such as a wet bulb above the dry bulb.
///
/// # Examples
/// ```
/// use coldwright::physics::moist_air::{self, Known};
/// use coldwright::quantity::{STANDARD_ATMOSPHERE, Temperature};
/// let air = moist_air::state(
///     Known::DryBulb(Temperature::celsius(40.0)),
///     Known::WetBulb(Temperature::celsius(20.0)),
///     STANDARD_ATMOSPHERE,
/// ).unwrap();
/// assert!((air.humidity_ratio.in_one() - 0.006_5).abs() < 1e-4);
/// assert!((air.dew_point.in_kelvins() - 273.15 - 7.0).abs() < 0.5);
/// ```
///
/// # References
/// The example is ASHRAE Handbook, Fundamentals, chapter 1, example 1 (W 6.5 g/kg, dew point 7 °C,
/// read from the chart).
pub fn state(first: Known, second: Known, pressure: AbsolutePressure) -> Result<MoistAir, Beyond> {
    let pressure = within(
        Argument::Pressure,
        pressure.in_pascals(),
        PRESSURE.0,
        PRESSURE.1,
    )?;
    checked(first)?;
    checked(second)?;
    let (first, second) = if first.rank() <= second.rank() {
        (first, second)
    } else {
        (second, first)
    };
    let (dry_bulb, humidity) = dry_bulb_and_humidity(first, second, pressure)?;
    within(first.argument(), dry_bulb, DRY_BULB.0, DRY_BULB.1)
        .map_err(|_| contradiction(first, second))?;
    let vapour = vapour_pressure(humidity, pressure);
    let relative = vapour / saturation_pressure(dry_bulb);
    if humidity.is_nan() || humidity < 0.0 || relative > 1.0 + SATURATED_WITHIN {
        return Err(contradiction(first, second));
    }
    if humidity < DRIEST {
        return Err(Beyond::TooLow {
            argument: Argument::HumidityRatio,
            limit: DRIEST,
        });
    }
    Ok(complete(dry_bulb, humidity, relative.min(1.0), pressure))
}

/// Enthalpy for a kilogram of dry air of a dry bulb and a humidity ratio, whether such air can be or not:
/// what changes one of the two at a time.
///
/// ```
/// use coldwright::physics::moist_air::enthalpy;
/// use coldwright::quantity::{Ratio, Temperature};
/// let humid = enthalpy(Temperature::celsius(25.0), Ratio::of_one(0.01));
/// assert!((humid.in_joules_per_kilogram() - 50_625.0).abs() < 1e-6);
/// ```
///
/// # References
/// ASHRAE Handbook, Fundamentals (2017), chapter 1, equation 30.
pub fn enthalpy(dry_bulb: Temperature, humidity: Ratio) -> SpecificEnthalpy {
    let celsius = dry_bulb.in_kelvins() - KELVIN_AT_ZERO_CELSIUS;
    SpecificEnthalpy::joules_per_kilogram(psychrometrics::enthalpy(celsius, humidity.in_one()))
}

fn contradiction(first: Known, second: Known) -> Beyond {
    Beyond::Contradiction {
        first: first.argument(),
        second: second.argument(),
    }
}

/// Refuses a fact that cannot hold by itself.
fn checked(known: Known) -> Result<f64, Beyond> {
    let (low, high) = match known {
        Known::DryBulb(_) | Known::WetBulb(_) => DRY_BULB,
        Known::DewPoint(_) => (-75.0, DRY_BULB.1),
        Known::RelativeHumidity(_) => (0.0, 1.0),
        Known::HumidityRatio(_) => (DRIEST, 20.0),
        Known::Enthalpy(_) => (-1e5, 1e8),
    };
    let zero = match known {
        Known::DryBulb(_) | Known::WetBulb(_) | Known::DewPoint(_) => KELVIN_AT_ZERO_CELSIUS,
        _ => 0.0,
    };
    // Limits are reported in SI.
    within(
        known.argument(),
        known.number() + zero,
        low + zero,
        high + zero,
    )
}

/// Dry bulb in °C and humidity ratio from two facts in the order of their rank.
fn dry_bulb_and_humidity(first: Known, second: Known, p: f64) -> Result<(f64, f64), Beyond> {
    let dependent = Beyond::Dependent {
        first: first.argument(),
        second: second.argument(),
    };
    let (a, b) = (first.number(), second.number());
    match (first, second) {
        (Known::DryBulb(_), Known::DryBulb(_)) => Err(dependent),
        (Known::DryBulb(_), _) => Ok((a, humidity_at(a, second, p))),
        (Known::HumidityRatio(_), _) => dry_bulb_at(a, second, p).map(|t| (t, a)).ok_or(dependent),
        (Known::DewPoint(_), _) => {
            let humidity = humidity_ratio(saturation_pressure(a), p);
            dry_bulb_at(humidity, second, p)
                .map(|t| (t, humidity))
                .ok_or(dependent)
        }
        (Known::RelativeHumidity(_), Known::WetBulb(_)) => {
            let before = |t: f64| humidity_at(t, second, p) > humidity_at(t, first, p);
            let t = turning_point(b, DRY_BULB.1, before);
            Ok((t, humidity_at(t, first, p)))
        }
        (Known::RelativeHumidity(_), Known::Enthalpy(_)) => {
            let before = |t: f64| psychrometrics::enthalpy(t, humidity_at(t, first, p)) < b;
            let t = turning_point(DRY_BULB.0, DRY_BULB.1, before);
            let humidity = humidity_at(t, first, p);
            // At an end of the range the enthalpy may not have been met.
            let met = (psychrometrics::enthalpy(t, humidity) - b).abs() <= 1e-6 * (b.abs() + 1e4);
            if met {
                Ok((t, humidity))
            } else {
                Err(contradiction(first, second))
            }
        }
        _ => Err(dependent),
    }
}

/// Humidity ratio of air of a dry bulb, from another fact. Outside 0 to saturation if they contradict.
fn humidity_at(dry_bulb: f64, known: Known, p: f64) -> f64 {
    let number = known.number();
    match known {
        Known::WetBulb(_) if number > dry_bulb => f64::NAN,
        Known::WetBulb(_) => humidity_by_wet_bulb(dry_bulb, number, p),
        Known::DewPoint(_) => humidity_ratio(saturation_pressure(number), p),
        Known::RelativeHumidity(_) => humidity_ratio(number * saturation_pressure(dry_bulb), p),
        Known::Enthalpy(_) => (number - 1006.0 * dry_bulb) / (2_501_000.0 + 1860.0 * dry_bulb),
        Known::HumidityRatio(_) | Known::DryBulb(_) => number,
    }
}

/// Dry bulb of air of a humidity ratio, from another fact that does not say the same.
fn dry_bulb_at(humidity: f64, known: Known, p: f64) -> Option<f64> {
    let number = known.number();
    match known {
        Known::RelativeHumidity(_) => Some(dew_point(vapour_pressure(humidity, p) / number)),
        Known::Enthalpy(_) => {
            Some((number - 2_501_000.0 * humidity) / (1006.0 + 1860.0 * humidity))
        }
        Known::WetBulb(_) => {
            let before = |t: f64| humidity_by_wet_bulb(t, number, p) > humidity;
            Some(turning_point(number, SEARCHED.1, before))
        }
        _ => None,
    }
}

fn complete(dry_bulb: f64, humidity: f64, relative: f64, p: f64) -> MoistAir {
    let vapour = vapour_pressure(humidity, p);
    let dew_point = dew_point(vapour).min(dry_bulb);
    let wet_bulb = turning_point(dew_point, dry_bulb, |t| {
        humidity_by_wet_bulb(dry_bulb, t, p) < humidity
    });
    MoistAir {
        pressure: AbsolutePressure::pascals(p),
        dry_bulb: Temperature::celsius(dry_bulb),
        wet_bulb: Temperature::celsius(wet_bulb),
        dew_point: Temperature::celsius(dew_point),
        relative_humidity: Ratio::of_one(relative),
        humidity_ratio: Ratio::of_one(humidity),
        enthalpy: SpecificEnthalpy::joules_per_kilogram(psychrometrics::enthalpy(
            dry_bulb, humidity,
        )),
        density: Density::kilograms_per_cubic_metre(density(dry_bulb, humidity, p)),
    }
}
