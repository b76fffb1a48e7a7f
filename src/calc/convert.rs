//! Any quantity in all its units: what one free text can mean.

use serde::Serialize;

use super::ambient::{Ambient, air_steps, ambient, gauge_step};
use super::input::input;
use super::problem::{Cause, Field, Problem, Problems};
use super::reading::{Reading, optional, required};
use super::refusal::Origin;
use super::saturation_point::SaturationPoint;
use super::working::{Step, Working};
use crate::quantity::{
    AbsolutePressure, Altitude, Entry, Flaw, GaugePressure, InchFraction, Length, Notation,
    Precision, Quantity, QuantityKind, System, Temperature, Vacuum, choice, nearest_sixty_fourth,
    read, show,
};
use crate::tables::refrigerants::Refrigerant;

input! {
    /// What [`convert`] asks for.
    pub struct ConvertInput {
        /// A figure as people write it, required: "140 psi", "5/8", "-12 °F". A number is in the SI unit of `quantity`.
        pub text: Entry<String>,
        /// The quantity it is of; by default every one that the text can mean.
        pub quantity: Entry<ConvertQuantity>,
        /// Altitude above sea level, to change between gauge and absolute.
        pub altitude: Entry<Altitude>,
        /// Pressure of the air as a barometer at the place shows it, instead of the altitude.
        pub barometer: Entry<AbsolutePressure>,
        /// Refrigerant whose bubble and dew belong to a pressure or temperature: "R-410A".
        pub refrigerant: Entry<Refrigerant>,
    }
}

/// What [`convert`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct ConvertAnswer {
    /// What the text can mean, the trade's usual meaning first.
    pub readings: Vec<ConvertReading>,
    /// The air that gauge and absolute pressures are converted with; absent where none is in play.
    pub ambient: Option<Ambient>,
    /// Bubble and dew at the first pressure or temperature that the text can mean; absent without a refrigerant.
    pub saturation: Option<SaturationPoint>,
    /// Why there is no bubble and dew at that pressure or temperature.
    pub no_saturation: Option<Problem>,
    /// The working.
    pub working: Working,
}

/// One meaning of the text.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct ConvertReading {
    /// The quantity it is of.
    pub quantity: QuantityKind,
    /// Its SI number.
    pub si: f64,
    /// Its SI unit.
    pub si_unit: &'static str,
    /// The same in every unit.
    pub units: Vec<ConvertUnit>,
    /// Nearest sixty-fourth of an inch, for lengths.
    pub fraction: Option<InchFraction>,
    /// Whether it was converted from the text's own meaning with the pressure of the air.
    pub by_ambient: bool,
}

/// A figure in one unit.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct ConvertUnit {
    /// The unit's symbol.
    pub unit: &'static str,
    /// Whether it is a metric unit.
    pub metric: bool,
    /// The number in that unit, unrounded.
    pub value: f64,
    /// The number rounded to five significant digits.
    pub text: String,
}

choice! {
    /// A quantity to read a text as.
    ConvertQuantity {
        /// Pressure above the air.
        GaugePressure = "gauge-pressure",
        /// Pressure above vacuum.
        AbsolutePressure = "absolute-pressure",
        /// Depth below the air.
        Vacuum = "vacuum",
        /// Turning moment.
        Torque = "torque",
        /// Distance.
        Length = "length",
        /// Temperature.
        Temperature = "temperature",
        /// Difference of temperatures.
        TemperatureDifference = "temperature-difference",
        /// Difference of pressures.
        PressureDifference = "pressure-difference",
        /// Mass.
        Mass = "mass",
        /// Mass per length.
        MassPerLength = "mass-per-length",
        /// Density.
        Density = "density",
        /// Mass per time.
        MassFlow = "mass-flow",
        /// Area.
        Area = "area",
        /// Volume.
        Volume = "volume",
        /// Volume per time.
        VolumeFlow = "volume-flow",
        /// Length per time.
        Velocity = "velocity",
        /// Force.
        Force = "force",
        /// Work or heat.
        Energy = "energy",
        /// Energy per time.
        Power = "power",
        /// Heat content per mass.
        SpecificEnthalpy = "specific-enthalpy",
        /// Heat per mass and temperature difference.
        SpecificHeatCapacity = "specific-heat-capacity",
        /// Viscosity.
        DynamicViscosity = "dynamic-viscosity",
        /// Span of time.
        Time = "time",
        /// Angle.
        Angle = "angle",
        /// Ratio.
        Ratio = "ratio",
        /// Stress.
        Stress = "stress",
        /// Height above sea level.
        Altitude = "altitude",
        /// How well a material conducts heat.
        ThermalConductivity = "thermal-conductivity",
        /// How well heat passes from a surface to the air.
        HeatTransferCoefficient = "heat-transfer-coefficient",
        /// Heat that passes a length of line.
        HeatFlowPerLength = "heat-flow-per-length",
        /// Change of pressure over time.
        PressureRate = "pressure-rate",
        /// Gas through a leak.
        LeakRate = "leak-rate",
        /// Refrigerant lost in a year.
        YearlyLoss = "yearly-loss",
    }
}

impl ConvertQuantity {
    fn kind(self) -> Option<QuantityKind> {
        QuantityKind::named(self.word())
    }
}

/// Kinds that share every spelling with one above them; offered only when they are asked for.
const ONLY_WHEN_ASKED: &[QuantityKind] = &[
    QuantityKind::PressureDifference,
    QuantityKind::Stress,
    QuantityKind::Altitude,
];

/// What can this text mean, and what is that in every unit?
///
/// # Method
/// Each quantity is tried on the text. A pressure is also given as the other kinds of pressure,
/// with the air of the altitude or barometer, and with a refrigerant its bubble and dew temperature
/// beside it; to a temperature belong bubble and dew pressure.
///
/// # Errors
/// Text that no quantity can read; both altitude and barometer.
///
/// # Examples
/// ```
/// use coldwright::calc::convert::{ConvertInput, convert};
/// let answer = convert(&ConvertInput { text: "140 psi".to_string().into(), ..Default::default() });
/// let gauge = answer.unwrap().readings.into_iter().next().unwrap();
/// let bar = gauge.units.iter().find(|unit| unit.unit == "bar").unwrap();
/// assert_eq!(bar.text, "9.6527");
/// ```
///
/// # References
/// NIST Special Publication 811 (2008), appendix B.8.
pub fn convert(input: &ConvertInput) -> Result<ConvertAnswer, Problems> {
    let mut reading = Reading::default();
    let text = required!(reading, input.text);
    let asked = optional!(reading, input.quantity).and_then(ConvertQuantity::kind);
    let air = ambient(&mut reading, &input.altitude, &input.barometer);
    let refrigerant = optional!(reading, input.refrigerant);
    let meanings = text
        .map(|text| meanings(&text, asked))
        .and_then(|meanings| {
            let field = Field::named("text");
            reading.accept(meanings.map_err(|flaw| Problem {
                field,
                cause: Cause::Entry(flaw),
            }))
        });
    reading.sound()?;
    let (Some(meanings), Some(air)) = (meanings, air) else {
        return Err(reading.take());
    };
    Ok(answer(&meanings, air, input, refrigerant))
}

/// Every quantity that the text can be read as, with its SI number.
fn meanings(text: &str, asked: Option<QuantityKind>) -> Result<Vec<(QuantityKind, f64)>, Flaw> {
    if let Some(kind) = asked {
        return read(kind, text, asked_number_unit(kind)).map(|si| vec![(kind, si)]);
    }
    let tried = QuantityKind::ALL
        .iter()
        .map(|(_, kind)| *kind)
        .filter(|kind| !ONLY_WHEN_ASKED.contains(kind))
        .map(|kind| (kind, read(kind, text, None)));
    let (found, failed): (Vec<_>, Vec<_>) = tried.partition(|(_, result)| result.is_ok());
    let found: Vec<_> = found
        .into_iter()
        .filter_map(|(kind, si)| Some((kind, si.ok()?)))
        .collect();
    if found.is_empty() {
        Err(best_flaw(failed))
    } else {
        Ok(found)
    }
}

/// A number sent instead of a text is in the SI unit.
fn asked_number_unit(kind: QuantityKind) -> Option<&'static str> {
    kind.units()
        .iter()
        .find(|unit| unit.is_si())
        .map(|unit| unit.symbol)
}

/// Of the flaws of all quantities the one that says most: a unit that was understood, then a number.
fn best_flaw(failed: Vec<(QuantityKind, Result<f64, Flaw>)>) -> Flaw {
    let flaws: Vec<Flaw> = failed
        .into_iter()
        .filter_map(|(_, result)| result.err())
        .collect();
    let understood = |flaw: &&Flaw| {
        !matches!(
            flaw,
            Flaw::OtherQuantity { .. } | Flaw::UnknownUnit { .. } | Flaw::UnitMissing { .. }
        )
    };
    if let Some(flaw) = flaws.iter().find(understood) {
        return flaw.clone();
    }
    let every_kind = QuantityKind::ALL
        .iter()
        .filter_map(|(_, kind)| kind.units().first());
    let accepted = every_kind
        .map(|unit| unit.symbol)
        .take(OFFERED_UNITS)
        .collect();
    match flaws.into_iter().next() {
        Some(Flaw::UnknownUnit { found, .. }) => Flaw::UnknownUnit { found, accepted },
        _ => Flaw::UnitMissing { accepted },
    }
}

/// Units named when none was understood.
const OFFERED_UNITS: usize = 9;

fn answer(
    meanings: &[(QuantityKind, f64)],
    air: Ambient,
    input: &ConvertInput,
    refrigerant: Option<Refrigerant>,
) -> ConvertAnswer {
    let mut readings: Vec<ConvertReading> = Vec::new();
    let mut working = Working::new();
    let pressure = meanings
        .iter()
        .find(|(kind, _)| is_pressure(*kind))
        .copied();
    for (kind, si) in meanings {
        match pressure {
            // A bare psi can be gauge or absolute; the trade means gauge, and one pressure is enough.
            Some((first, _)) if is_pressure(*kind) && *kind != first => {}
            _ => readings.push(one_reading(*kind, *si, false)),
        }
    }
    if let Some((kind, si)) = pressure {
        let (others, step) = other_pressures(kind, si, air.pressure);
        working.extend(air_steps(&input.altitude, air.pressure));
        working.extend(step);
        let absolute = |kind| kind == QuantityKind::AbsolutePressure;
        for (place, (other, si)) in others.into_iter().enumerate() {
            let by_ambient = absolute(kind) != absolute(other);
            readings.insert(place + 1, one_reading(other, si, by_ambient));
        }
    }
    let boiling = refrigerant.and_then(|refrigerant| {
        let (point, steps) = match boiling(refrigerant, meanings, air.pressure)? {
            Ok((point, steps)) => (Ok(point), Some(steps)),
            Err(problem) => (Err(problem), None),
        };
        working.extend(steps.into_iter().flatten());
        Some(point)
    });
    let (saturation, no_saturation) = match boiling {
        Some(Ok(point)) => (Some(point), None),
        Some(Err(problem)) => (None, Some(problem)),
        None => (None, None),
    };
    ConvertAnswer {
        readings,
        ambient: pressure.map(|_| air),
        saturation,
        no_saturation,
        working,
    }
}

/// Bubble and dew with the steps to them.
type Boiling = (SaturationPoint, [Step; 2]);

/// Bubble and dew at the first pressure or temperature among the meanings of the text.
fn boiling(
    refrigerant: Refrigerant,
    meanings: &[(QuantityKind, f64)],
    air: AbsolutePressure,
) -> Option<Result<Boiling, Problem>> {
    let (kind, si) = *meanings
        .iter()
        .find(|(kind, _)| is_pressure(*kind) || *kind == QuantityKind::Temperature)?;
    let found = if kind == QuantityKind::Temperature {
        SaturationPoint::at_temperature(refrigerant, Temperature::kelvins(si), air)
            .map(|point| (point, point.pressure_steps(refrigerant)))
    } else {
        let absolute = gauge_of(kind, si, air).to_absolute(air);
        SaturationPoint::at_pressure(refrigerant, absolute, air)
            .map(|point| (point, point.temperature_steps(refrigerant)))
    };
    let quantity = if kind == QuantityKind::Temperature {
        kind
    } else {
        QuantityKind::AbsolutePressure
    };
    Some(found.map_err(|beyond| Origin::of("text", quantity).refused(beyond, "refrigerant")))
}

fn is_pressure(kind: QuantityKind) -> bool {
    matches!(
        kind,
        QuantityKind::GaugePressure | QuantityKind::AbsolutePressure | QuantityKind::Vacuum
    )
}

/// A pressure of any kind as a gauge shows it.
fn gauge_of(kind: QuantityKind, si: f64, air: AbsolutePressure) -> GaugePressure {
    match kind {
        QuantityKind::AbsolutePressure => AbsolutePressure::pascals(si).to_gauge(air),
        QuantityKind::Vacuum => Vacuum::pascals(si).to_gauge(),
        _ => GaugePressure::pascals(si),
    }
}

/// A pressure as the other kinds of pressure in this air, and the step from gauge to absolute.
fn other_pressures(
    kind: QuantityKind,
    si: f64,
    air: AbsolutePressure,
) -> (Vec<(QuantityKind, f64)>, Option<Step>) {
    let gauge = gauge_of(kind, si, air);
    let absolute = gauge.to_absolute(air);
    let step = gauge_step(gauge, air);
    let mut others = vec![(QuantityKind::GaugePressure, gauge.in_pascals())];
    if absolute.in_pascals() >= 0.0 {
        others.push((QuantityKind::AbsolutePressure, absolute.in_pascals()));
    }
    if gauge.in_pascals() < 0.0 {
        others.push((QuantityKind::Vacuum, -gauge.in_pascals()));
    }
    others.retain(|(other, _)| *other != kind);
    (others, Some(step).filter(|_| absolute.in_pascals() >= 0.0))
}

fn one_reading(kind: QuantityKind, si: f64, by_ambient: bool) -> ConvertReading {
    let units = kind.units().iter().map(|unit| ConvertUnit {
        unit: unit.symbol,
        metric: unit.system == System::Metric,
        value: unit.from_si(si),
        text: show(
            kind,
            si,
            unit.symbol,
            Precision::Significant,
            Notation::POINT,
        )
        .map_or_else(String::new, |shown| shown.number),
    });
    let length = (kind == QuantityKind::Length).then(|| Length::from_si(si));
    ConvertReading {
        quantity: kind,
        si,
        si_unit: kind.si_symbol(),
        units: units.collect(),
        fraction: length.and_then(nearest_sixty_fourth),
        by_ambient,
    }
}
