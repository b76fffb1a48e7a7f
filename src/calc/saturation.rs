//! Where a refrigerant boils and condenses, and what its liquid and vapour are like there.

use serde::Serialize;

use super::ambient::{Ambient, Entered, ambient, entered, entered_steps};
use super::count::Count;
use super::input::input;
use super::problem::{Cause, Field, Problem, Problems};
use super::reading::{Reading, filled, optional, required};
use super::refrigerant_facts::{RefrigerantFacts, refrigerant_facts};
use super::refusal::Origin;
use super::saturation_point::{SaturationPoint, curve, from_equations, table};
use super::working::{Step, Working};
use crate::physics::Beyond;
use crate::physics::saturation::{
    CriticalPoint, Phase, critical_point, density, enthalpy, glide, heat_capacity,
    temperature_range, viscosity,
};
use crate::quantity::{
    AbsolutePressure, Altitude, Band, Density, DynamicViscosity, Entry, GaugePressure,
    QuantityKind, SpecificEnthalpy, SpecificHeatCapacity, Temperature, TemperatureDifference,
};
use crate::tables::SourceId;
use crate::tables::refrigerants::{Refrigerant, SaturationUncertainty, Sourced, ViscosityBasis};

input! {
    /// What [`saturation`] asks for.
    pub struct SaturationInput {
        /// Refrigerant, required: "R-410A".
        pub refrigerant: Entry<Refrigerant>,
        /// Gauge reading: "118 psi"; exactly one of this, `absolutePressure` and `temperature`.
        pub gauge_pressure: Entry<GaugePressure>,
        /// Pressure above vacuum.
        pub absolute_pressure: Entry<AbsolutePressure>,
        /// Temperature, taken as that of the bubble line for the bubble pressure and as that of the dew line for the dew pressure.
        pub temperature: Entry<Temperature>,
        /// Altitude above sea level, for gauge readings; sea level if neither it nor `barometer` is entered.
        pub altitude: Entry<Altitude>,
        /// Pressure of the air as a barometer at the place shows it, instead of the altitude.
        pub barometer: Entry<AbsolutePressure>,
        /// Points of a curve to plot, 2 to 64; none if nothing is entered.
        pub curve_points: Entry<Count>,
        /// Coldest temperature of the curve; that of the data if nothing is entered.
        pub curve_from: Entry<Temperature>,
        /// Hottest temperature of the curve; that of the data if nothing is entered.
        pub curve_to: Entry<Temperature>,
        /// Step of a table around the reading, 0.1 to 20 K: "1 °F"; 1 K if only `tableRows` is entered.
        pub table_step: Entry<TemperatureDifference>,
        /// Rows of the table, 1 to 200; 21 if only `tableStep` is entered.
        pub table_rows: Entry<Count>,
    }
}

/// What [`saturation`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct SaturationAnswer {
    /// The refrigerant.
    pub refrigerant: Refrigerant,
    /// The air that gauge pressures count from.
    pub ambient: Ambient,
    /// Where all is liquid and the first bubble rises: subcooling counts from here. The temperature entered, if one was.
    pub bubble_temperature: Temperature,
    /// Where all is vapour and the first drop falls: superheat counts from here. The temperature entered, if one was.
    pub dew_temperature: Temperature,
    /// Pressure of the bubble line: the pressure entered, or the one at the temperature entered.
    pub bubble_pressure: AbsolutePressure,
    /// Pressure of the dew line: the pressure entered, or the one at the temperature entered.
    pub dew_pressure: AbsolutePressure,
    /// The bubble pressure on a gauge.
    pub bubble_gauge_pressure: GaugePressure,
    /// The dew pressure on a gauge.
    pub dew_gauge_pressure: GaugePressure,
    /// Dew less bubble temperature at one pressure: that entered, or the dew pressure at the
    /// temperature entered. Absent where the bubble line does not reach that pressure.
    pub glide: Option<TemperatureDifference>,
    /// Density of the liquid at the bubble temperature.
    pub liquid_density: Density,
    /// Density of the vapour at the dew temperature.
    pub vapour_density: Density,
    /// Vapour less liquid enthalpy, as they stand here: at one pressure if a pressure was entered, at one temperature if that was.
    pub latent_heat: SpecificEnthalpy,
    /// Enthalpy of the liquid; 200 kJ/kg for saturated liquid at 0 °C.
    pub liquid_enthalpy: SpecificEnthalpy,
    /// Enthalpy of the vapour, from the same zero.
    pub vapour_enthalpy: SpecificEnthalpy,
    /// Isobaric heat capacity of the liquid.
    pub liquid_heat_capacity: SpecificHeatCapacity,
    /// Isobaric heat capacity of the vapour.
    pub vapour_heat_capacity: SpecificHeatCapacity,
    /// Viscosity of the liquid.
    pub liquid_viscosity: DynamicViscosity,
    /// Viscosity of the vapour.
    pub vapour_viscosity: DynamicViscosity,
    /// Where the viscosities come from.
    pub viscosity_basis: ViscosityBasis,
    /// Where liquid and vapour become one.
    pub critical_point: CriticalPoint,
    /// Temperatures that the data hold for.
    pub valid_temperatures: Band<Temperature>,
    /// How far bubble and dew may be from the truth: a temperature, and a pressure relative to itself.
    pub uncertainty: Sourced<SaturationUncertainty>,
    /// Where the properties come from.
    pub sources: &'static [SourceId],
    /// What the refrigerant is and how it is handled.
    pub facts: RefrigerantFacts,
    /// Points of both lines for a plot.
    pub curve: Vec<SaturationPoint>,
    /// Rows around the reading.
    pub table: Vec<SaturationPoint>,
    /// The working.
    pub working: Working,
}

/// Step of a table if only its rows are asked for.
const USUAL_STEP: TemperatureDifference = TemperatureDifference::kelvins(1.0);
/// Rows of a table if only its step is asked for.
const USUAL_ROWS: u16 = 21;
/// Finest and coarsest step of a table.
const STEPS: (TemperatureDifference, TemperatureDifference) = (
    TemperatureDifference::kelvins(0.1),
    TemperatureDifference::kelvins(20.0),
);

/// Where does this refrigerant boil and condense, and what are its liquid and vapour like there?
///
/// # Method
/// Expansions of reference equations of state: temperature over the logarithm of the pressure, and
/// the other properties over the temperature. A gauge reading becomes absolute with the air around.
///
/// # Valid for
/// -60 °C (R-744 -56 °C) to 3 K below the critical point, R-407C to 78 °C; `validTemperatures` says it.
///
/// # Errors
/// No refrigerant, not exactly one reading, a reading below the data, near the critical point, or
/// at or above it.
///
/// # Examples
/// ```
/// use coldwright::calc::saturation::{SaturationInput, saturation};
/// use coldwright::quantity::Temperature;
/// use coldwright::tables::refrigerants::Refrigerant;
/// let answer = saturation(&SaturationInput {
///     refrigerant: Refrigerant::R410A.into(),
///     temperature: Temperature::celsius(24.0).into(),
///     ..SaturationInput::default()
/// }).unwrap();
/// // 1608.6 kPa in the source, dew line.
/// assert!((answer.dew_pressure.in_pascals() / 1_608_600.0 - 1.0).abs() < 1e-3);
/// ```
///
/// # References
/// CoolProp 8.0.0 and the equations of state in it, named by `sources`. Figure in the example: US
/// Department of Energy, EnergyPlus property data, after Lemmon (2003).
pub fn saturation(input: &SaturationInput) -> Result<SaturationAnswer, Problems> {
    let mut reading = Reading::default();
    let refrigerant = required!(reading, input.refrigerant);
    let gauge = optional!(reading, input.gauge_pressure);
    let absolute = optional!(reading, input.absolute_pressure);
    let temperature = optional!(reading, input.temperature);
    reading.exactly(
        1,
        &[
            filled!(input.gauge_pressure),
            filled!(input.absolute_pressure),
            filled!(input.temperature),
        ],
    );
    let air = ambient(&mut reading, &input.altitude, &input.barometer);
    let extras = Extras::read(input, &mut reading);
    let point = refrigerant
        .zip(air)
        .filter(|_| reading.is_sound())
        .and_then(|(refrigerant, air)| {
            let pressure = entered(
                ("gauge_pressure", gauge),
                ("absolute_pressure", absolute),
                air.pressure,
            );
            let found = match (pressure, temperature) {
                (Some(pressure), _) => at_pressure(refrigerant, &pressure, input, air),
                (None, Some(temperature)) => at_temperature(refrigerant, temperature, air),
                (None, None) => return None,
            };
            reading.accept(found)
        });
    reading.sound()?;
    let (Some(refrigerant), Some(air), Some((point, working))) = (refrigerant, air, point) else {
        return Err(reading.take());
    };
    answer(refrigerant, air, point, &extras, working)
        .map_err(|beyond| vec![by_temperature().refused(beyond, "refrigerant")])
}

/// A point and the steps to it.
type Found = Result<(SaturationPoint, Working), Problem>;

fn at_pressure(
    refrigerant: Refrigerant,
    pressure: &Entered,
    input: &SaturationInput,
    air: Ambient,
) -> Found {
    let point = SaturationPoint::at_pressure(refrigerant, pressure.absolute, air.pressure)
        .map_err(|beyond| pressure.origin.refused(beyond, "refrigerant"))?;
    let mut working = entered_steps(pressure, &input.altitude, air);
    working.extend(point.temperature_steps(refrigerant));
    Ok((point, working))
}

fn at_temperature(refrigerant: Refrigerant, temperature: Temperature, air: Ambient) -> Found {
    let point = SaturationPoint::at_temperature(refrigerant, temperature, air.pressure)
        .map_err(|beyond| by_temperature().refused(beyond, "refrigerant"))?;
    Ok((point, point.pressure_steps(refrigerant).into()))
}

fn by_temperature() -> Origin {
    Origin::of("temperature", QuantityKind::Temperature)
}

/// What is asked for besides the reading.
struct Extras {
    points: u16,
    from: Option<Temperature>,
    to: Option<Temperature>,
    step: TemperatureDifference,
    rows: u16,
}

impl Extras {
    fn read(input: &SaturationInput, reading: &mut Reading) -> Self {
        let points = optional!(reading, input.curve_points);
        let points = limited(reading, "curve_points", points, (2, 64), "2…64");
        let rows = optional!(reading, input.table_rows);
        let rows = limited(reading, "table_rows", rows, (1, 200), "1…200");
        let step = optional!(reading, input.table_step, STEPS);
        Self {
            points: points.unwrap_or_default(),
            from: optional!(reading, input.curve_from),
            to: optional!(reading, input.curve_to),
            step: step.unwrap_or(USUAL_STEP),
            rows: rows.unwrap_or(if step.is_some() { USUAL_ROWS } else { 0 }),
        }
    }
}

fn limited(
    reading: &mut Reading,
    field: &'static str,
    count: Option<Count>,
    (least, most): (u16, u16),
    accepted: &'static str,
) -> Option<u16> {
    let limited = count?.between(least, most, accepted);
    let limited = limited.map_err(|flaw| Problem {
        field: Field::named(field),
        cause: Cause::Entry(flaw),
    });
    reading.accept(limited).map(Count::number)
}

/// A saturated phase.
struct Saturated {
    density: Density,
    enthalpy: SpecificEnthalpy,
    heat_capacity: SpecificHeatCapacity,
    viscosity: DynamicViscosity,
}

impl Saturated {
    fn of(refrigerant: Refrigerant, phase: Phase, at: Temperature) -> Result<Self, Beyond> {
        Ok(Self {
            density: density(refrigerant, phase, at)?,
            enthalpy: enthalpy(refrigerant, phase, at)?,
            heat_capacity: heat_capacity(refrigerant, phase, at)?,
            viscosity: viscosity(refrigerant, phase, at)?,
        })
    }
}

fn answer(
    refrigerant: Refrigerant,
    air: Ambient,
    point: SaturationPoint,
    extras: &Extras,
    mut working: Working,
) -> Result<SaturationAnswer, Beyond> {
    let liquid = Saturated::of(refrigerant, Phase::Liquid, point.bubble_temperature)?;
    let vapour = Saturated::of(refrigerant, Phase::Vapour, point.dew_temperature)?;
    let (coldest, hottest) = temperature_range(refrigerant);
    let latent_heat = vapour.enthalpy - liquid.enthalpy;
    let latent = Step::of("step-latent-heat", "{r} = {h″} − {h′}")
        .with("h″", "figure-vapour-enthalpy", vapour.enthalpy)
        .with("h′", "figure-liquid-enthalpy", liquid.enthalpy);
    let latent = from_equations(latent, refrigerant);
    working.push(latent.gives("r", "figure-latent-heat", latent_heat));
    let range = (
        inside(extras.from, (coldest, hottest)).unwrap_or(coldest),
        inside(extras.to, (coldest, hottest)).unwrap_or(hottest),
    );
    let middle =
        point.bubble_temperature + (point.dew_temperature - point.bubble_temperature) / 2.0;
    Ok(SaturationAnswer {
        refrigerant,
        ambient: air,
        bubble_temperature: point.bubble_temperature,
        dew_temperature: point.dew_temperature,
        bubble_pressure: point.bubble_pressure,
        dew_pressure: point.dew_pressure,
        bubble_gauge_pressure: point.bubble_gauge_pressure,
        dew_gauge_pressure: point.dew_gauge_pressure,
        glide: glide(refrigerant, point.dew_pressure).ok(),
        liquid_density: liquid.density,
        vapour_density: vapour.density,
        latent_heat,
        liquid_enthalpy: liquid.enthalpy,
        vapour_enthalpy: vapour.enthalpy,
        liquid_heat_capacity: liquid.heat_capacity,
        vapour_heat_capacity: vapour.heat_capacity,
        liquid_viscosity: liquid.viscosity,
        vapour_viscosity: vapour.viscosity,
        viscosity_basis: refrigerant.viscosity_basis(),
        critical_point: critical_point(refrigerant),
        valid_temperatures: Band::new(coldest, hottest),
        uncertainty: refrigerant.saturation_uncertainty(),
        sources: refrigerant.equations(),
        facts: refrigerant_facts(refrigerant),
        curve: curve(refrigerant, range, extras.points, air.pressure),
        table: table(refrigerant, middle, extras.step, extras.rows, air.pressure),
        working,
    })
}

/// The temperature, or the limit that it lies beyond.
fn inside(
    given: Option<Temperature>,
    (low, high): (Temperature, Temperature),
) -> Option<Temperature> {
    let kelvins = given?.in_kelvins();
    Some(Temperature::kelvins(
        kelvins.clamp(low.in_kelvins(), high.in_kelvins()),
    ))
}
