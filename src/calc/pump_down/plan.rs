//! Several evacuations with dry nitrogen between them.

use super::answer::PlannedEvacuation;
use super::input::{NitrogenBreakInput, PumpDownInput};
use super::micron;
use super::read::few;
use super::system::System;
use crate::calc::problem::{Field, Problem};
use crate::calc::reading::{Reading, optional, required};
use crate::physics::evacuation::Evacuation;
use crate::physics::vacuum_flow::PRESSURES;
use crate::physics::vacuum_line::VacuumLine;
use crate::quantity::{AbsolutePressure, GaugePressure, Ratio, Time};

/// Low pressures of a triple evacuation, micron. Common practice, no source.
const USUAL_LOWS: [f64; 3] = [1500.0, 1500.0, 500.0];

/// Down to one pressure and up to another.
#[derive(Clone, Copy)]
pub(super) struct Break {
    pub low: AbsolutePressure,
    pub high: AbsolutePressure,
}

/// The evacuations as entered, or the usual triple one.
pub(super) fn read(
    reading: &mut Reading,
    input: &PumpDownInput,
    system: Option<&System>,
) -> Option<Vec<Break>> {
    few(reading, "evacuations", input.evacuations.items().len());
    let air = system.map(|system| system.air.pressure);
    let entered = reading.list(
        Field::named("evacuations"),
        &input.evacuations,
        0,
        |reading, evacuation| one(reading, evacuation, air),
    );
    let high = air?;
    match entered {
        Some(entered) if entered.is_empty() => {
            let usual = USUAL_LOWS.map(|low| Break {
                low: micron(low),
                high,
            });
            Some(usual.into())
        }
        entered => entered,
    }
}

/// One evacuation; where the air is not known only what was entered is looked at.
fn one(
    reading: &mut Reading,
    input: &NitrogenBreakInput,
    air: Option<AbsolutePressure>,
) -> Option<Break> {
    let low = required!(reading, input.low_pressure);
    let gauge = optional!(reading, input.break_pressure);
    let (low, air) = (low?, air?);
    let high = gauge
        .unwrap_or(GaugePressure::pascals(0.0))
        .to_absolute(air);
    if high <= low || high > PRESSURES.1 {
        let field = Field::named("break_pressure");
        let problem = Problem::outside(field, low.to_gauge(air), PRESSURES.1.to_gauge(air));
        reading.problem(problem);
    }
    Some(Break { low, high })
}

/// Times, and what is left after each.
pub(super) fn plan(
    system: &System,
    first: &Evacuation<'_>,
    line: &VacuumLine,
    breaks: &[Break],
) -> Vec<PlannedEvacuation> {
    let mut residual = 1.0;
    let mut from = None;
    let mut planned = Vec::with_capacity(breaks.len());
    for Break { low, high } in breaks {
        let time = match from {
            None => first.time_to(*low),
            Some(start) => Evacuation::new(line, system.volume, start, None)
                .ok()
                .and_then(|evacuation| evacuation.time_to(*low)),
        };
        // A pressure that lies above the start is left as it is.
        let start = from.unwrap_or(system.start);
        let low_pressure = if *low < start { *low } else { start };
        let residual_pressure = AbsolutePressure::pascals(low_pressure.in_pascals() * residual);
        residual *= low_pressure.in_pascals() / high.in_pascals();
        from = Some(*high);
        planned.push(PlannedEvacuation {
            low_pressure: *low,
            break_pressure: *high,
            time,
            residual: Ratio::of_one(residual),
            residual_pressure,
        });
    }
    planned
}

/// Pumping time of all evacuations together.
pub(super) fn whole_time(planned: &[PlannedEvacuation]) -> Option<Time> {
    let nothing = Time::seconds(0.0);
    planned
        .iter()
        .try_fold(nothing, |sum, evacuation| Some(sum + evacuation.time?))
}
