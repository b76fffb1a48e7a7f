//! Moist air: any two facts give all the others.

use serde::Serialize;

use super::ambient::{Ambient, air_steps, ambient};
use super::input::input;
use super::problem::Problems;
use super::reading::{Reading, filled, optional};
use super::refusal::Origin;
use super::working::{Step, Working};
use crate::physics::moist_air::{Known, MoistAir, state};
use crate::physics::{Argument, Beyond};
use crate::quantity::{
    AbsolutePressure, Altitude, Density, Entry, QuantityKind, Ratio, SpecificEnthalpy, Temperature,
};
use crate::tables::SourceId;

input! {
    /// What [`moist_air`] asks for: exactly two facts, and the pressure of the air.
    pub struct MoistAirInput {
        /// What a dry thermometer shows: "75 °F".
        pub dry_bulb: Entry<Temperature>,
        /// What a wetted thermometer shows in moving air.
        pub wet_bulb: Entry<Temperature>,
        /// Where its moisture begins to condense, or to freeze out below 0 °C.
        pub dew_point: Entry<Temperature>,
        /// Vapour pressure over its saturation: "50 %".
        pub relative_humidity: Entry<Ratio>,
        /// Mass of water over mass of dry air: 0.0093, "0.93 %".
        pub humidity_ratio: Entry<Ratio>,
        /// Enthalpy for a kilogram of dry air, from dry air and liquid water at 0 °C: "48 kJ/kg".
        pub enthalpy: Entry<SpecificEnthalpy>,
        /// Altitude above sea level; sea level if neither it nor `barometer` is entered.
        pub altitude: Entry<Altitude>,
        /// Pressure of the air as a barometer at the place shows it, instead of the altitude.
        pub barometer: Entry<AbsolutePressure>,
    }
}

/// What [`moist_air`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct MoistAirAnswer {
    /// Pressure of the air.
    pub ambient: Ambient,
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
    /// Volume in m³ for a kilogram of dry air.
    pub specific_volume: f64,
    /// Mass of air and moisture in a volume.
    pub density: Density,
    /// The working.
    pub working: Working,
}

/// The fields of the facts with what is entered in them, in the order in which they are offered.
const FACTS: [(&str, Argument, QuantityKind); 6] = [
    ("dry_bulb", Argument::DryBulb, QuantityKind::Temperature),
    ("wet_bulb", Argument::WetBulb, QuantityKind::Temperature),
    ("dew_point", Argument::DewPoint, QuantityKind::Temperature),
    (
        "relative_humidity",
        Argument::RelativeHumidity,
        QuantityKind::Ratio,
    ),
    (
        "humidity_ratio",
        Argument::HumidityRatio,
        QuantityKind::Ratio,
    ),
    (
        "enthalpy",
        Argument::Enthalpy,
        QuantityKind::SpecificEnthalpy,
    ),
];

/// What else is true of this air?
///
/// # Method
/// Equations of ASHRAE Fundamentals, chapter 1, for an ideal mixture of dry air and water vapour.
///
/// # Valid for
/// Dry bulb -60 to 80 °C, pressure 50 to 120 kPa (to 5 500 m), humidity ratio from 1e-6.
///
/// # Errors
/// Not exactly two facts; two that say nearly the same (dew point and humidity ratio, wet bulb and
/// enthalpy); two that contradict each other; a fact outside these limits.
///
/// # Examples
/// ```
/// use coldwright::calc::moist_air::{MoistAirInput, moist_air};
/// use coldwright::quantity::Temperature;
/// let air = moist_air(&MoistAirInput {
///     dry_bulb: Temperature::celsius(40.0).into(),
///     wet_bulb: Temperature::celsius(20.0).into(),
///     ..MoistAirInput::default()
/// }).unwrap();
/// assert!((air.humidity_ratio.in_one() - 0.006_5).abs() < 1e-4);
/// assert!((air.specific_volume - 0.896).abs() < 1e-3);
/// ```
///
/// # References
/// ASHRAE Handbook, Fundamentals (2017), chapter 1; Hyland and Wexler, ASHRAE Trans. 89 (1983) 500. The
/// example is the chapter's example 1: 6.5 g/kg and 0.896 m³/kg, read from the chart.
pub fn moist_air(input: &MoistAirInput) -> Result<MoistAirAnswer, Problems> {
    let mut reading = Reading::default();
    let known = [
        optional!(reading, input.dry_bulb).map(Known::DryBulb),
        optional!(reading, input.wet_bulb).map(Known::WetBulb),
        optional!(reading, input.dew_point).map(Known::DewPoint),
        optional!(reading, input.relative_humidity).map(Known::RelativeHumidity),
        optional!(reading, input.humidity_ratio).map(Known::HumidityRatio),
        optional!(reading, input.enthalpy).map(Known::Enthalpy),
    ];
    reading.exactly(
        2,
        &[
            filled!(input.dry_bulb),
            filled!(input.wet_bulb),
            filled!(input.dew_point),
            filled!(input.relative_humidity),
            filled!(input.humidity_ratio),
            filled!(input.enthalpy),
        ],
    );
    let air = ambient(&mut reading, &input.altitude, &input.barometer);
    reading.sound()?;
    let mut facts = known.into_iter().flatten();
    let (Some(first), Some(second), Some(air)) = (facts.next(), facts.next(), air) else {
        return Err(reading.take());
    };
    let found = state(first, second, air.pressure).map_err(|beyond| {
        let by_altitude = matches!(input.altitude, Entry::Read(_));
        vec![refused(beyond, by_altitude)]
    })?;
    let mut working = air_steps(&input.altitude, air.pressure);
    working.extend(steps(&found));
    Ok(answer(air, &found, working))
}

/// The problem that the law's refusal is: of the fact concerned, or of the air's pressure.
pub(super) fn refused(beyond: Beyond, by_altitude: bool) -> super::problem::Problem {
    let (argument, other) = match beyond {
        Beyond::Dependent { first, second } | Beyond::Contradiction { first, second } => {
            (first, second)
        }
        Beyond::TooLow { argument, .. }
        | Beyond::TooHigh { argument, .. }
        | Beyond::NotFinite { argument }
        | Beyond::NearCritical { argument, .. }
        | Beyond::AboveCritical { argument, .. } => (argument, argument),
        Beyond::Wet { .. } => (Argument::DryBulb, Argument::DryBulb),
    };
    let fact = |argument| FACTS.iter().find(|(_, known, _)| *known == argument);
    let air = if by_altitude { "altitude" } else { "barometer" };
    let (field, quantity) = fact(argument).map_or(
        (air, QuantityKind::AbsolutePressure),
        |(field, _, quantity)| (*field, *quantity),
    );
    let with = fact(other).map_or(air, |(field, ..)| *field);
    Origin::of(field, quantity).refused(beyond, with)
}

fn steps(air: &MoistAir) -> [Step; 3] {
    let vapour = air.relative_humidity;
    [
        Step::of(
            "step-humidity-ratio",
            "{W} = 0.621945·p_w / ({p} − p_w), p_w = {φ}·p_ws({t})",
        )
        .with("p", "figure-air-pressure", air.pressure)
        .with("φ", "figure-relative-humidity", vapour)
        .with("t", "figure-dry-bulb", air.dry_bulb)
        .from(SourceId::AshraeFundamentals)
        .from(SourceId::HylandWexler1983)
        .gives("W", "figure-humidity-ratio", air.humidity_ratio),
        Step::of(
            "step-air-enthalpy",
            "{h} = 1.006·{t} + {W}·(2501 + 1.86·{t}), {t} in °C, {h} in kJ/kg",
        )
        .with("t", "figure-dry-bulb", air.dry_bulb)
        .with("W", "figure-humidity-ratio", air.humidity_ratio)
        .from(SourceId::AshraeFundamentals)
        .gives("h", "figure-air-enthalpy", air.enthalpy),
        Step::of(
            "step-air-density",
            "{ρ} = {p}·(1 + {W}) / (287.042·{t}·(1 + 1.607858·{W})), {t} in K",
        )
        .with("p", "figure-air-pressure", air.pressure)
        .with("W", "figure-humidity-ratio", air.humidity_ratio)
        .with("t", "figure-dry-bulb", air.dry_bulb)
        .from(SourceId::AshraeFundamentals)
        .gives("ρ", "figure-density", air.density),
    ]
}

fn answer(ambient: Ambient, air: &MoistAir, working: Working) -> MoistAirAnswer {
    let wet_mass = 1.0 + air.humidity_ratio.in_one();
    MoistAirAnswer {
        ambient,
        dry_bulb: air.dry_bulb,
        wet_bulb: air.wet_bulb,
        dew_point: air.dew_point,
        relative_humidity: air.relative_humidity,
        humidity_ratio: air.humidity_ratio,
        enthalpy: air.enthalpy,
        specific_volume: wet_mass / air.density.in_kilograms_per_cubic_metre(),
        density: air.density,
        working,
    }
}
