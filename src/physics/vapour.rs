//! Superheated refrigerant vapour, from the dew line to 40 K above it.
//!
//! # Method
//! Volume over that of saturated vapour, and enthalpy above it, as Chebyshev expansions in theta of
//! the dew temperature and a stretched superheat; at no superheat they meet the dew line exactly.

use serde::Serialize;

use super::beyond::{Argument, Beyond, within};
use super::chebyshev;
use super::saturation::{
    self, Line, into_range, log_pressure, scaled_theta, vapour_density, vapour_enthalpy,
};
use crate::quantity::{
    AbsolutePressure, Density, SpecificEnthalpy, Temperature, TemperatureDifference,
};
use crate::tables::fluids::{Expansions, LARGEST_SUPERHEAT, expansions};
use crate::tables::refrigerants::Refrigerant;

/// How far below its dew temperature vapour may stand and still count as saturated, K. The two
/// directions of the dew line agree to a fifth of it.
const SATURATED_WITHIN: f64 = 1e-3;

/// A state of superheated vapour.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Vapour {
    /// Its temperature.
    pub temperature: Temperature,
    /// Its pressure.
    pub pressure: AbsolutePressure,
    /// Dew temperature at its pressure.
    pub dew_temperature: Temperature,
    /// Temperature above that.
    pub superheat: TemperatureDifference,
    /// Its density.
    pub density: Density,
    /// Its enthalpy; 200 kJ/kg for saturated liquid at 0 °C.
    pub enthalpy: SpecificEnthalpy,
}

/// Vapour so many kelvins above a dew temperature, at the pressure of that dew temperature.
///
/// # Valid for
/// Dew temperatures in [`saturation::temperature_range`], superheat 0 to 40 K.
///
/// # Errors
/// [`Beyond`] on `Temperature` or `Superheat`.
///
/// # Examples
/// ```
/// use coldwright::physics::vapour;
/// use coldwright::quantity::{Temperature, TemperatureDifference};
/// use coldwright::tables::refrigerants::Refrigerant;
/// let suction =
///     vapour::superheated(Refrigerant::R410A, Temperature::celsius(10.0), TemperatureDifference::kelvins(8.0));
/// // A 3/4 in line, bore 0.680 in, holds 9.25 g of it in a metre.
/// let in_the_line = suction.unwrap().density * coldwright::quantity::Length::inches(0.680).circle();
/// assert!((in_the_line.in_kilograms_per_metre() - 9.25e-3).abs() < 0.05e-3);
/// ```
pub fn superheated(
    refrigerant: Refrigerant,
    dew_temperature: Temperature,
    superheat: TemperatureDifference,
) -> Result<Vapour, Beyond> {
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, dew_temperature)?;
    let pressure = AbsolutePressure::pascals(libm::exp(log_pressure(fluid, Line::Dew, at)));
    state(fluid, at, pressure, dew_temperature, superheat)
}

/// Vapour at a pressure and a temperature.
///
/// # Errors
/// [`Beyond`] on `Pressure`, [`Beyond::Wet`] below the dew temperature, `TooHigh` on `Superheat`
/// above 40 K.
///
/// # Examples
/// ```
/// use coldwright::physics::vapour;
/// use coldwright::quantity::{AbsolutePressure, Temperature};
/// use coldwright::tables::refrigerants::Refrigerant;
/// // R-22 boils at 0 °C at 498.11 kPa (Moran and Shapiro, table A-7).
/// let suction =
///     vapour::at(Refrigerant::R22, AbsolutePressure::pascals(498_110.0), Temperature::celsius(7.0));
/// assert!((suction.unwrap().superheat.in_kelvins() - 7.0).abs() < 0.05);
/// ```
pub fn at(
    refrigerant: Refrigerant,
    pressure: AbsolutePressure,
    temperature: Temperature,
) -> Result<Vapour, Beyond> {
    let dew = into_range(
        refrigerant,
        saturation::temperature(refrigerant, Line::Dew, pressure)?,
    );
    if !temperature.in_kelvins().is_finite() {
        return Err(Beyond::NotFinite {
            argument: Argument::Temperature,
        });
    }
    let superheat = (temperature - dew).in_kelvins();
    if superheat < -SATURATED_WITHIN {
        return Err(Beyond::Wet {
            dew_temperature: dew.in_kelvins(),
        });
    }
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, dew)?;
    state(
        fluid,
        at,
        pressure,
        dew,
        TemperatureDifference::kelvins(superheat.max(0.0)),
    )
}

fn state(
    fluid: &Expansions,
    scaled_theta: f64,
    pressure: AbsolutePressure,
    dew_temperature: Temperature,
    superheat: TemperatureDifference,
) -> Result<Vapour, Beyond> {
    let kelvins = within(
        Argument::Superheat,
        superheat.in_kelvins(),
        0.0,
        LARGEST_SUPERHEAT,
    )?;
    let part = stretched(fluid, dew_temperature.in_kelvins(), kelvins);
    let y = 2.0 * part - 1.0;
    let volume = 1.0 + part * chebyshev::surface(fluid.superheated_volume, scaled_theta, y);
    let added = part * chebyshev::surface(fluid.superheated_enthalpy, scaled_theta, y);
    Ok(Vapour {
        temperature: dew_temperature + superheat,
        pressure,
        dew_temperature,
        superheat,
        density: Density::kilograms_per_cubic_metre(vapour_density(fluid, scaled_theta) / volume),
        enthalpy: SpecificEnthalpy::joules_per_kilogram(
            vapour_enthalpy(fluid, scaled_theta) + added,
        ),
    })
}

/// The superheat as a part of the largest, 0 to 1, stretched at its start: near the critical point
/// vapour changes fast there.
fn stretched(fluid: &Expansions, dew: f64, superheat: f64) -> f64 {
    let distance = fluid.critical_temperature - dew;
    let onset = fluid.superheat_onset * distance * (distance / fluid.critical_temperature).sqrt();
    let root = onset.sqrt();
    ((superheat + onset).sqrt() - root) / ((LARGEST_SUPERHEAT + onset).sqrt() - root)
}
