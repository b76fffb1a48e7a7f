//! The air around: what turns a gauge pressure into an absolute one.

use serde::Serialize;

use super::problem::{Field, Misfit, Problem};
use super::reading::Reading;
use super::refusal::Origin;
use super::working::{Step, Working};
use crate::physics::atmosphere::standard_pressure;
use crate::quantity::{
    AbsolutePressure, Altitude, Entry, GaugePressure, QuantityKind, STANDARD_ATMOSPHERE, choice,
};
use crate::tables::SourceId;

/// Pressure of the air and how it is known.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Ambient {
    /// Pressure of the air.
    pub pressure: AbsolutePressure,
    /// How it is known.
    pub basis: AmbientBasis,
}

choice! {
    /// How the pressure of the air is known.
    AmbientBasis {
        /// Read off a barometer at the place (not reduced to sea level).
        Barometer = "barometer",
        /// The standard atmosphere's at the altitude.
        Altitude = "altitude",
        /// Nothing was entered: the standard atmosphere at sea level is assumed.
        AssumedSeaLevel = "assumed-sea-level",
    }
}

/// Lowest and highest pressure of the air at places where people work: at 9 000 m, and above
/// the highest ever recorded.
const BAROMETER_RANGE: (f64, f64) = (30_000.0, 110_000.0);

/// The air from the fields `altitude` and `barometer`, of which at most one may be filled.
pub fn ambient(
    reading: &mut Reading,
    altitude: &Entry<Altitude>,
    barometer: &Entry<AbsolutePressure>,
) -> Option<Ambient> {
    let altitude_given = reading.optional(Field::named("altitude"), altitude);
    let barometer_given = reading.optional(Field::named("barometer"), barometer);
    match (altitude_given, barometer_given) {
        (Some(_), Some(_)) => {
            let misfit = Misfit::Conflict {
                with: Field::named("altitude"),
            };
            reading.problem(Problem::misfit(Field::named("barometer"), misfit));
            None
        }
        (_, Some(pressure)) => by_barometer(reading, Field::named("barometer"), pressure),
        (Some(altitude), None) => Some(Ambient {
            pressure: standard_pressure(altitude),
            basis: AmbientBasis::Altitude,
        }),
        (None, None) => {
            let absent = matches!((altitude, barometer), (Entry::Absent, Entry::Absent));
            absent.then_some(Ambient {
                pressure: STANDARD_ATMOSPHERE,
                basis: AmbientBasis::AssumedSeaLevel,
            })
        }
    }
}

/// The air from what a barometer shows.
pub fn by_barometer(
    reading: &mut Reading,
    field: Field,
    pressure: AbsolutePressure,
) -> Option<Ambient> {
    let (low, high) = BAROMETER_RANGE;
    if !(low..=high).contains(&pressure.in_pascals()) {
        let limit = AbsolutePressure::pascals;
        reading.problem(Problem::outside(field, limit(low), limit(high)));
        return None;
    }
    Some(Ambient {
        pressure,
        basis: AmbientBasis::Barometer,
    })
}

/// A pressure that was entered, as a gauge reading or absolute.
#[derive(Clone, Debug)]
pub struct Entered {
    /// Above vacuum.
    pub absolute: AbsolutePressure,
    /// As a gauge shows it in the air around.
    pub gauge: GaugePressure,
    /// Whether it was entered as a gauge reading.
    pub by_gauge: bool,
    /// Where it was entered.
    pub origin: Origin,
}

/// The pressure that was entered in one of two fields, each given by its name.
pub fn entered(
    (gauge_field, gauge): (&'static str, Option<GaugePressure>),
    (absolute_field, absolute): (&'static str, Option<AbsolutePressure>),
    air: AbsolutePressure,
) -> Option<Entered> {
    match (gauge, absolute) {
        (Some(gauge), _) => Some(Entered {
            absolute: gauge.to_absolute(air),
            gauge,
            by_gauge: true,
            origin: Origin {
                shift: air.in_pascals(),
                ..Origin::of(gauge_field, QuantityKind::GaugePressure)
            },
        }),
        (None, Some(absolute)) => Some(Entered {
            absolute,
            gauge: absolute.to_gauge(air),
            by_gauge: false,
            origin: Origin::of(absolute_field, QuantityKind::AbsolutePressure),
        }),
        (None, None) => None,
    }
}

/// The steps that lead to an absolute pressure from what was entered.
pub fn entered_steps(entered: &Entered, altitude: &Entry<Altitude>, air: Ambient) -> Working {
    if !entered.by_gauge {
        return Working::new();
    }
    let mut steps = air_steps(altitude, air.pressure);
    steps.push(gauge_step(entered.gauge, air.pressure));
    steps
}

/// The step that finds the pressure of the air, if an altitude was entered.
pub fn air_steps(altitude: &Entry<Altitude>, air: AbsolutePressure) -> Working {
    match altitude {
        Entry::Read(altitude) => vec![ambient_step(*altitude, air)],
        _ => Working::new(),
    }
}

/// The step that finds the pressure of the air from an altitude.
pub fn ambient_step(altitude: Altitude, pressure: AbsolutePressure) -> Step {
    Step::of(
        "step-standard-pressure",
        "{p} = 101 325 Pa·(1 − 0.0065·{h} / 288.15 K)^5.2559",
    )
    .with("h", "figure-altitude", altitude)
    .from(SourceId::Icao7488)
    .gives("p", "figure-air-pressure", pressure)
}

/// The step that turns a gauge pressure into an absolute one.
pub fn gauge_step(gauge: GaugePressure, air: AbsolutePressure) -> Step {
    Step::of("step-gauge-to-absolute", "{p} = {pₑ} + {pₐ}")
        .with("pₑ", "figure-gauge-pressure", gauge)
        .with("pₐ", "figure-air-pressure", air)
        .gives("p", "figure-absolute-pressure", gauge.to_absolute(air))
}
