//! Where water boils or ice turns to vapour: what a vacuum gauge says about moisture.

use serde::Serialize;

use super::input::input;
use super::problem::Problems;
use super::reading::{Reading, filled, optional};
use super::refusal::Origin;
use super::working::{Step, Working};
use crate::physics::Beyond;
use crate::physics::water::{
    Surface, pressure_over, saturation_pressure, saturation_temperature, surface, temperature_over,
};
use crate::quantity::{AbsolutePressure, Entry, QuantityKind, Temperature};
use crate::tables::SourceId;

input! {
    /// What [`water_saturation`] asks for.
    pub struct WaterSaturationInput {
        /// Pressure above vacuum, of water vapour alone: "500 micron"; exactly one of this and `temperature`.
        pub absolute_pressure: Entry<AbsolutePressure>,
        /// Temperature of the water or ice.
        pub temperature: Entry<Temperature>,
    }
}

/// What [`water_saturation`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct WaterSaturationAnswer {
    /// What is stable: ice below the triple point, 611.657 Pa and 0.01 °C, liquid above it.
    pub surface: Surface,
    /// Temperature of the stable one: boiling point of liquid, frost point over ice.
    pub temperature: Temperature,
    /// Saturation pressure of the stable one.
    pub absolute_pressure: AbsolutePressure,
    /// Ice at the pressure or temperature entered; absent above the triple point.
    pub over_ice: Option<WaterState>,
    /// Liquid at the pressure or temperature entered, supercooled below 0.01 °C; absent below -40 °C.
    pub over_liquid: Option<WaterState>,
    /// The working.
    pub working: Working,
}

/// Ice or liquid in balance with vapour.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct WaterState {
    /// Its temperature.
    pub temperature: Temperature,
    /// Pressure of the vapour.
    pub pressure: AbsolutePressure,
}

/// At what temperature does water boil at this pressure, or at what pressure at this temperature?
///
/// # Method
/// Liquid: IAPWS R7-97, equations 30 and 31. Ice: IAPWS R14-08, equation 6. Supercooled liquid by
/// the liquid's equation, extrapolated.
///
/// # Valid for
/// 190 K (0.24 micron) to the critical point; supercooled liquid to -40 °C, there within 0.25 % of
/// Murphy and Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539.
///
/// # Errors
/// Neither or both entered; outside these limits.
///
/// # Examples
/// ```
/// use coldwright::calc::water_saturation::{WaterSaturationInput, water_saturation};
/// use coldwright::physics::water::Surface;
/// use coldwright::quantity::{AbsolutePressure, Quantity};
/// let at_500_micron = water_saturation(&WaterSaturationInput {
///     absolute_pressure: AbsolutePressure::read("500 micron").unwrap().into(),
///     ..WaterSaturationInput::default()
/// }).unwrap();
/// assert_eq!(at_500_micron.surface, Surface::Ice);
/// assert!((at_500_micron.temperature.in_kelvins() - 273.15 + 24.48).abs() < 0.01);
/// ```
///
/// # References
/// IAPWS R7-97 (2012), Industrial Formulation 1997; IAPWS R14-08 (2011), Melting and Sublimation
/// Curves.
pub fn water_saturation(input: &WaterSaturationInput) -> Result<WaterSaturationAnswer, Problems> {
    let mut reading = Reading::default();
    let pressure = optional!(reading, input.absolute_pressure);
    let temperature = optional!(reading, input.temperature);
    reading.exactly(
        1,
        &[filled!(input.absolute_pressure), filled!(input.temperature)],
    );
    reading.sound()?;
    let found = match (pressure, temperature) {
        (Some(pressure), _) => at_pressure(pressure).map_err(|beyond| {
            let origin = Origin::of("absolute_pressure", QuantityKind::AbsolutePressure);
            origin.refused(beyond, "temperature")
        }),
        (None, Some(temperature)) => at_temperature(temperature).map_err(|beyond| {
            let origin = Origin::of("temperature", QuantityKind::Temperature);
            origin.refused(beyond, "absolute_pressure")
        }),
        (None, None) => return Err(reading.take()),
    };
    found.map_err(|problem| vec![problem])
}

fn at_pressure(pressure: AbsolutePressure) -> Result<WaterSaturationAnswer, Beyond> {
    let stable = surface(pressure);
    let temperature = saturation_temperature(pressure)?;
    let over = |surface| {
        let temperature = if surface == stable {
            temperature
        } else {
            temperature_over(surface, pressure).ok()?
        };
        Some(WaterState {
            temperature,
            pressure,
        })
    };
    Ok(WaterSaturationAnswer {
        surface: stable,
        temperature,
        absolute_pressure: pressure,
        over_ice: over(Surface::Ice),
        over_liquid: over(Surface::Liquid),
        working: vec![temperature_step(pressure, temperature)],
    })
}

fn at_temperature(temperature: Temperature) -> Result<WaterSaturationAnswer, Beyond> {
    let pressure = saturation_pressure(temperature)?;
    let stable = surface(pressure);
    let over = |surface| {
        let pressure = pressure_over(surface, temperature).ok()?;
        Some(WaterState {
            temperature,
            pressure,
        })
    };
    Ok(WaterSaturationAnswer {
        surface: stable,
        temperature,
        absolute_pressure: pressure,
        over_ice: over(Surface::Ice),
        over_liquid: over(Surface::Liquid),
        working: vec![pressure_step(temperature, pressure)],
    })
}

/// How the temperature of the stable one follows from its pressure.
pub(super) fn temperature_step(pressure: AbsolutePressure, temperature: Temperature) -> Step {
    let step = match surface(pressure) {
        Surface::Ice => Step::of(
            "step-frost-point",
            "ln({p} / 611.657 Pa) = (T_t/{t})·Σ aₙ·({t}/T_t)^bₙ, T_t = 273.16 K",
        )
        .from(SourceId::IapwsR14),
        Surface::Liquid => {
            Step::of("step-boiling-point", "{t} = f(β), β⁴ = {p} / 1 MPa").from(SourceId::IapwsR7)
        }
    };
    step.with("p", "figure-vapour-pressure", pressure).gives(
        "t",
        "figure-water-temperature",
        temperature,
    )
}

/// How the pressure of the stable one follows from its temperature.
pub(super) fn pressure_step(temperature: Temperature, pressure: AbsolutePressure) -> Step {
    let step = match surface(pressure) {
        Surface::Ice => Step::of(
            "step-sublimation-pressure",
            "{p} = 611.657 Pa·exp((T_t/{t})·Σ aₙ·({t}/T_t)^bₙ), T_t = 273.16 K",
        )
        .from(SourceId::IapwsR14),
        Surface::Liquid => Step::of(
            "step-boiling-pressure",
            "{p} = 1 MPa·(2·C / (−B + √(B² − 4·A·C)))⁴ with A, B, C of {t}",
        )
        .from(SourceId::IapwsR7),
    };
    step.with("t", "figure-water-temperature", temperature)
        .gives("p", "figure-vapour-pressure", pressure)
}
