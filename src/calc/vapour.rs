//! Superheated vapour of a refrigerant.

use serde::Serialize;

use super::ambient::{Ambient, Entered, ambient, entered, entered_steps};
use super::input::input;
use super::problem::{Field, Misfit, Problem, Problems};
use super::reading::{Reading, filled, optional, required};
use super::refusal::Origin;
use super::saturation_point::{from_equations, pressure_step, temperature_step};
use super::working::{Step, Working};
use crate::physics::saturation::{self, Line, into_range};
use crate::physics::vapour::{Vapour, at};
use crate::quantity::{
    AbsolutePressure, Altitude, Density, Enter, Entry, GaugePressure, Quantity, QuantityKind,
    SpecificEnthalpy, Temperature, TemperatureDifference, choice,
};
use crate::tables::SourceId;
use crate::tables::fluids::LARGEST_SUPERHEAT;
use crate::tables::refrigerants::Refrigerant;

input! {
    /// What [`vapour`] asks for.
    pub struct VapourInput {
        /// Refrigerant, required: "R-410A".
        pub refrigerant: Entry<Refrigerant>,
        /// Gauge reading: "118 psi"; exactly one of this, `absolutePressure` and `dewTemperature`.
        pub gauge_pressure: Entry<GaugePressure>,
        /// Pressure above vacuum.
        pub absolute_pressure: Entry<AbsolutePressure>,
        /// Dew temperature of the pressure: what a gauge's temperature scale shows for vapour.
        pub dew_temperature: Entry<Temperature>,
        /// Temperature above the dew temperature, 0 to 40 K; exactly one of this and `temperature`.
        pub superheat: Entry<TemperatureDifference>,
        /// Temperature of the vapour.
        pub temperature: Entry<Temperature>,
        /// Altitude above sea level, for gauge readings; sea level if neither it nor `barometer` is entered.
        pub altitude: Entry<Altitude>,
        /// Pressure of the air as a barometer at the place shows it, instead of the altitude.
        pub barometer: Entry<AbsolutePressure>,
    }
}

/// What [`vapour`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct VapourAnswer {
    /// The refrigerant.
    pub refrigerant: Refrigerant,
    /// The air that gauge pressures count from.
    pub ambient: Ambient,
    /// Whether the vapour is saturated or superheated.
    pub state: VapourState,
    /// Its pressure.
    pub pressure: AbsolutePressure,
    /// Its pressure on a gauge.
    pub gauge_pressure: GaugePressure,
    /// Its temperature.
    pub temperature: Temperature,
    /// Dew temperature at its pressure.
    pub dew_temperature: Temperature,
    /// Temperature above that.
    pub superheat: TemperatureDifference,
    /// Its density.
    pub density: Density,
    /// Its enthalpy; 200 kJ/kg for saturated liquid at 0 °C.
    pub enthalpy: SpecificEnthalpy,
    /// How far the dew temperature, and so the superheat, may be from the truth.
    pub dew_uncertainty: TemperatureDifference,
    /// Where the properties come from.
    pub sources: &'static [SourceId],
    /// The working.
    pub working: Working,
}

choice! {
    /// State of a vapour.
    VapourState {
        /// On the dew line: any colder and it condenses.
        Saturated = "saturated",
        /// Warmer than its dew temperature.
        Superheated = "superheated",
    }
}

/// Most superheat that is answered for.
pub const MOST_SUPERHEAT: TemperatureDifference = TemperatureDifference::kelvins(LARGEST_SUPERHEAT);

/// Superheat below which a vapour counts as saturated: the accuracy of the dew line's expansion.
const SATURATED_WITHIN: TemperatureDifference = TemperatureDifference::kelvins(1e-3);

/// How dense is this vapour, and what heat does it carry?
///
/// # Method
/// Expansions of reference equations of state over the dew temperature and the superheat.
///
/// # Valid for
/// Dew temperatures of the data, superheat 0 to 40 K.
///
/// # Errors
/// Not exactly one pressure and one of superheat and temperature; a temperature below the dew
/// temperature, where some of it would be liquid; more than 40 K of superheat.
///
/// # Examples
/// ```
/// use coldwright::calc::vapour::{VapourInput, vapour};
/// use coldwright::quantity::{Length, Temperature, TemperatureDifference};
/// use coldwright::tables::refrigerants::Refrigerant;
/// let suction = vapour(&VapourInput {
///     refrigerant: Refrigerant::R410A.into(),
///     dew_temperature: Temperature::celsius(10.0).into(),
///     superheat: TemperatureDifference::kelvins(8.0).into(),
///     ..VapourInput::default()
/// }).unwrap();
/// // A 3/4 in line, bore 0.680 in, holds 9.25 g of it in a metre.
/// let held = suction.density * Length::inches(0.680).circle();
/// assert!((held.in_kilograms_per_metre() - 9.25e-3).abs() < 0.05e-3);
/// ```
///
/// # References
/// CoolProp 8.0.0 and the equations of state in it, named by `sources`.
pub fn vapour(input: &VapourInput) -> Result<VapourAnswer, Problems> {
    let mut reading = Reading::default();
    let refrigerant = required!(reading, input.refrigerant);
    let gauge = optional!(reading, input.gauge_pressure);
    let absolute = optional!(reading, input.absolute_pressure);
    let dew = optional!(reading, input.dew_temperature);
    reading.exactly(
        1,
        &[
            filled!(input.gauge_pressure),
            filled!(input.absolute_pressure),
            filled!(input.dew_temperature),
        ],
    );
    let superheat = optional!(
        reading,
        input.superheat,
        (TemperatureDifference::kelvins(0.0), MOST_SUPERHEAT)
    );
    let temperature = optional!(reading, input.temperature);
    reading.exactly(1, &[filled!(input.superheat), filled!(input.temperature)]);
    let air = ambient(&mut reading, &input.altitude, &input.barometer);
    reading.sound()?;
    let (Some(refrigerant), Some(air)) = (refrigerant, air) else {
        return Err(reading.take());
    };
    let pressure = entered(
        ("gauge_pressure", gauge),
        ("absolute_pressure", absolute),
        air.pressure,
    );
    let found = dew_state(refrigerant, pressure.as_ref(), dew)
        .and_then(|(pressure, dew)| {
            let superheat = superheat_of(dew, superheat, temperature)?;
            let by_temperature = Origin::of("temperature", QuantityKind::Temperature);
            at(refrigerant, pressure, dew + superheat)
                .map_err(|beyond| by_temperature.refused(beyond, "refrigerant"))
        })
        .map_err(|problem| vec![problem])?;
    let working = working(refrigerant, &found, pressure.as_ref(), &input.altitude, air);
    Ok(answer(refrigerant, air, &found, working))
}

/// Pressure and dew temperature of the vapour.
fn dew_state(
    refrigerant: Refrigerant,
    pressure: Option<&Entered>,
    dew: Option<Temperature>,
) -> Result<(AbsolutePressure, Temperature), Problem> {
    if let Some(pressure) = pressure {
        let dew = saturation::temperature(refrigerant, Line::Dew, pressure.absolute)
            .map_err(|beyond| pressure.origin.refused(beyond, "refrigerant"))?;
        return Ok((pressure.absolute, into_range(refrigerant, dew)));
    }
    let by_dew = Origin::of("dew_temperature", QuantityKind::Temperature);
    let dew = dew.ok_or_else(|| {
        let example = Temperature::example();
        Problem::misfit(by_dew.field.clone(), Misfit::Missing { example })
    })?;
    let pressure = saturation::pressure(refrigerant, Line::Dew, dew)
        .map_err(|beyond| by_dew.refused(beyond, "refrigerant"))?;
    Ok((pressure, dew))
}

/// The superheat entered, or that of the temperature entered.
fn superheat_of(
    dew: Temperature,
    superheat: Option<TemperatureDifference>,
    temperature: Option<Temperature>,
) -> Result<TemperatureDifference, Problem> {
    let Some(temperature) = temperature else {
        return Ok(superheat.unwrap_or(TemperatureDifference::kelvins(0.0)));
    };
    let (quantity, found) = (QuantityKind::Temperature, temperature - dew);
    let misfit = if found < TemperatureDifference::kelvins(0.0) - SATURATED_WITHIN {
        let limit = dew.si();
        Misfit::NotVapour { quantity, limit }
    } else if found > MOST_SUPERHEAT {
        let limit = (dew + MOST_SUPERHEAT).si();
        Misfit::TooHigh { quantity, limit }
    } else {
        return Ok(found);
    };
    Err(Problem::misfit(Field::named("temperature"), misfit))
}

fn working(
    refrigerant: Refrigerant,
    vapour: &Vapour,
    pressure: Option<&Entered>,
    altitude: &Entry<Altitude>,
    air: Ambient,
) -> Working {
    let dew = vapour.dew_temperature;
    let mut working = match pressure {
        Some(pressure) => entered_steps(pressure, altitude, air),
        None => Working::new(),
    };
    working.push(match pressure {
        Some(_) => temperature_step(refrigerant, Line::Dew, vapour.pressure, dew),
        None => pressure_step(refrigerant, Line::Dew, dew, vapour.pressure),
    });
    working.push(
        Step::of("step-superheat", "{Δt} = {t} − {t″}")
            .with("t", "figure-vapour-temperature", vapour.temperature)
            .with("t″", "figure-dew-temperature", dew)
            .gives("Δt", "figure-superheat", vapour.superheat),
    );
    let density = Step::of("step-vapour-density", "{ρ} = ρ″({t″}) / (v/v″)({t″}, {Δt})")
        .with("t″", "figure-dew-temperature", dew)
        .with("Δt", "figure-superheat", vapour.superheat);
    working.push(from_equations(density, refrigerant).gives("ρ", "figure-density", vapour.density));
    working
}

fn answer(
    refrigerant: Refrigerant,
    ambient: Ambient,
    vapour: &Vapour,
    working: Working,
) -> VapourAnswer {
    let state = if vapour.superheat > SATURATED_WITHIN {
        VapourState::Superheated
    } else {
        VapourState::Saturated
    };
    VapourAnswer {
        refrigerant,
        ambient,
        state,
        pressure: vapour.pressure,
        gauge_pressure: vapour.pressure.to_gauge(ambient.pressure),
        temperature: vapour.temperature,
        dew_temperature: vapour.dew_temperature,
        superheat: vapour.superheat,
        density: vapour.density,
        enthalpy: vapour.enthalpy,
        dew_uncertainty: refrigerant.saturation_uncertainty().figure.temperature,
        sources: refrigerant.equations(),
        working,
    }
}
