//! The readings of both holds as they were recorded, in SI: for the record and its tables.

use serde::Serialize;

use super::clock::{Clock, ClockDoubt};
use super::document::{GaugeReadingInput, VacuumGaugeReadingInput};
use crate::quantity::{AbsolutePressure, Entry, GaugePressure, Moment, Temperature, Time};

/// When a reading was taken.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct RecordedMoment {
    /// By the device's clock.
    pub at: Moment,
    /// Since the first reading, every change of the clock that is known taken out.
    pub since: Time,
    /// Why the time since the reading before is doubtful, if it is.
    pub doubt: Option<ClockDoubt>,
}

/// A reading of the pressure gauge as recorded.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct RecordedPressure {
    /// When, if that can be read.
    pub moment: Option<RecordedMoment>,
    /// What the gauge showed.
    pub gauge_pressure: Option<GaugePressure>,
    /// Temperature of the tube.
    pub temperature: Option<Temperature>,
    /// Temperature of the air around it.
    pub ambient_temperature: Option<Temperature>,
    /// Pressure of the air.
    pub barometer: Option<AbsolutePressure>,
    /// Whether the hold begins here.
    pub hold_begins: bool,
}

/// A reading of the vacuum gauge as recorded.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct RecordedVacuum {
    /// When, if that can be read.
    pub moment: Option<RecordedMoment>,
    /// What the gauge showed, above vacuum.
    pub pressure: Option<AbsolutePressure>,
    /// Whether the pump was valved off.
    pub valved_off: bool,
}

pub(super) fn pressures(clock: &Clock, readings: &[GaugeReadingInput]) -> Vec<RecordedPressure> {
    let mut moments = Moments::of(clock);
    let recorded = readings.iter().map(|reading| RecordedPressure {
        moment: moments.next(&reading.at),
        gauge_pressure: read(&reading.gauge_pressure),
        temperature: read(&reading.temperature),
        ambient_temperature: read(&reading.ambient_temperature),
        barometer: read(&reading.barometer),
        hold_begins: read(&reading.hold_begins).unwrap_or(false),
    });
    recorded.collect()
}

pub(super) fn vacuums(clock: &Clock, readings: &[VacuumGaugeReadingInput]) -> Vec<RecordedVacuum> {
    let mut moments = Moments::of(clock);
    let recorded = readings.iter().map(|reading| RecordedVacuum {
        moment: moments.next(&reading.at),
        pressure: read(&reading.pressure),
        valved_off: read(&reading.valved_off).unwrap_or(false),
    });
    recorded.collect()
}

/// What is wrong with an entry is told where it is judged.
fn read<T: Copy>(entry: &Entry<T>) -> Option<T> {
    match entry {
        Entry::Read(value) => Some(*value),
        _ => None,
    }
}

struct Moments<'a> {
    clock: &'a Clock,
    first: Option<Moment>,
    last: Option<Moment>,
}

impl<'a> Moments<'a> {
    fn of(clock: &'a Clock) -> Self {
        Self {
            clock,
            first: None,
            last: None,
        }
    }

    fn next(&mut self, at: &Entry<Moment>) -> Option<RecordedMoment> {
        let at = read(at)?;
        let first = *self.first.get_or_insert(at);
        let before = self.last.replace(at).unwrap_or(at);
        Some(RecordedMoment {
            at,
            since: self.clock.between(first, at).time,
            doubt: self.clock.between(before, at).doubt,
        })
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::indexing_slicing)]
mod tests {
    use super::*;
    use crate::quantity::Enter;

    fn reading(at: &str, pascals: f64) -> VacuumGaugeReadingInput {
        let at = Moment::from_text(at, None).unwrap();
        VacuumGaugeReadingInput {
            at: at.into(),
            pressure: AbsolutePressure::pascals(pascals).into(),
            ..VacuumGaugeReadingInput::default()
        }
    }

    #[test]
    fn times_run_from_the_first_reading_and_doubt_stands_where_it_arose() {
        let readings = [
            reading("2026-03-03T10:57:00Z", 206.0),
            reading("2026-03-03T11:07:00Z", 240.0),
            reading("2026-03-03T11:00:00Z", 250.0),
            VacuumGaugeReadingInput::default(),
        ];
        let recorded = vacuums(&Clock::default(), &readings);
        let since = |place: usize| recorded[place].moment.map(|moment| moment.since);
        let doubt = |place: usize| recorded[place].moment.and_then(|moment| moment.doubt);
        assert_eq!(since(1), Some(Time::seconds(600.0)));
        assert_eq!((doubt(1), doubt(2)), (None, Some(ClockDoubt::WentBack)));
        assert_eq!((since(3), recorded[3].pressure), (None, None));
    }
}
