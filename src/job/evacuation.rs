//! The evacuation: is the circuit dry and tight, and does the hold pass?

use super::clock::Clock;
use super::document::{Stage, VacuumGaugeReadingInput};
use super::hold_clock::{HoldClock, Times};
use super::order::{OrderRule, Overrides};
use super::parts::Parts;
use super::paths::Paths;
use super::pressure_test::PressureTest;
use super::stage::{Draft, OpenMatter};
use crate::calc::vacuum_hold::{
    VacuumHoldAnswer, VacuumHoldInput, VacuumReadingInput, vacuum_hold,
};
use crate::calc::{Field, Reading, Verdict, optional};
use crate::quantity::{Entry, Moment, Quantity, Time};

/// What the evacuation comes to.
pub(super) struct Evacuation {
    pub answer: Option<VacuumHoldAnswer>,
    pub pump: Option<HoldClock>,
    pub clock: Option<HoldClock>,
    /// Where the readings of the hold are in the document.
    pub places: Vec<usize>,
    /// Whether the hold passed, and the moment of the last reading that shows it.
    pub dry_since: Option<Moment>,
}

const PATHS: Paths = Paths {
    shared: &[
        ("readings", "evacuation.readings"),
        ("gaugeResolution", "instruments.vacuumGauge.resolution"),
        ("gaugeUncertainty", "instruments.vacuumGauge.uncertainty"),
    ],
    own: "evacuation.hold",
};

/// Points of the curve that the page draws.
const CURVE_POINTS: u16 = 48;

fn is_valved_off(reading: &VacuumGaugeReadingInput) -> bool {
    matches!(reading.valved_off, Entry::Read(true))
}

impl Evacuation {
    pub fn draft(overrides: &Overrides) -> Draft<'_> {
        Draft::of(Stage::Evacuate, overrides)
    }

    pub fn take(
        draft: &mut Draft<'_>,
        reading: &mut Reading,
        parts: &Parts<'_>,
        pressure_test: &PressureTest,
        (clock, now): (&Clock, Moment),
    ) -> Self {
        let entered = parts.evacuation.readings.items();
        let first = entered
            .iter()
            .rposition(|reading| !is_valved_off(reading))
            .map_or(0, |pumping| pumping + 1);
        let places: Vec<usize> = (first..entered.len()).collect();
        for (place, earlier) in entered.iter().take(first).enumerate() {
            let item = Field::written(format!("evacuation.readings[{place}]"));
            reading.inside(&item, |reading| {
                optional!(reading, earlier.at);
                optional!(reading, earlier.pressure);
            });
        }
        let mut times = Times::of(clock);
        let readings: Vec<VacuumReadingInput> = entered
            .iter()
            .skip(first)
            .map(|reading| VacuumReadingInput {
                time: times.next(&reading.at),
                pressure: reading.pressure.clone(),
            })
            .collect();
        let field = Field::written("evacuation.pumpStarted".into());
        let pump_started = reading.optional(field, &parts.evacuation.pump_started);
        draft.begun(pump_started.is_some() || !entered.is_empty());
        let pump_end = first.checked_sub(1).and_then(|last| entered.get(last));
        let pump_end = pump_end.filter(|end| matches!(end.pressure, Entry::Read(_)));
        let answer = (!readings.is_empty()).then(|| {
            vacuum_hold(&VacuumHoldInput {
                readings: readings.into(),
                pump_end_pressure: pump_end.map_or(Entry::Absent, |end| end.pressure.clone()),
                gauge_resolution: parts.vacuum_gauge.resolution.clone(),
                gauge_uncertainty: parts.vacuum_gauge.uncertainty.clone(),
                curve_points: crate::calc::Count::of(CURVE_POINTS).into(),
                ..parts.hold.clone()
            })
        });
        let answer = match answer {
            None => None,
            Some(Ok(answer)) => Some(answer),
            Some(Err(problems)) => {
                reading.take_over(draft.missing(PATHS.place(problems, &places)));
                None
            }
        };
        let lasts = answer.as_ref().map(|answer| answer.pass.time);
        let until = times.first.unwrap_or(now);
        let verdict = answer.as_ref().and_then(verdict);
        let evacuation = Self {
            pump: pump_started.map(|started| HoldClock::of(clock, started, until, None, None)),
            clock: times
                .first
                .map(|first| HoldClock::of(clock, first, now, lasts, times.doubt_at(now))),
            dry_since: times.last.filter(|_| verdict == Some(Verdict::InBand)),
            answer,
            places,
        };
        evacuation.judge(draft, verdict, entered.is_empty());
        let is_begun = evacuation.pump.is_some() || !entered.is_empty();
        let is_tight = pressure_test.tight_since.is_some();
        draft.rule(OrderRule::PumpBeforeTight, is_begun && !is_tight);
        evacuation
    }

    fn judge(&self, draft: &mut Draft<'_>, verdict: Option<Verdict>, has_none: bool) {
        if has_none {
            draft.open(OpenMatter::PumpDown);
        }
        match verdict {
            None => draft.open(OpenMatter::Readings),
            Some(Verdict::CannotTell) => {
                draft.verdict(Verdict::CannotTell);
                draft.open(OpenMatter::HoldOn);
            }
            Some(verdict) => draft.verdict(verdict),
        }
        let Some(answer) = &self.answer else { return };
        if answer.pass.remaining > Time::seconds(0.0) {
            draft.open(OpenMatter::HoldOn);
        }
        draft.fact("fact-held", answer.held);
        let uncertainty = answer.latest.uncertainty.si();
        draft.uncertain("fact-vacuum-level", answer.latest.pressure, uncertainty);
    }
}

/// The verdict on cause and rule together; nothing before there are enough readings.
fn verdict(answer: &VacuumHoldAnswer) -> Option<Verdict> {
    use crate::calc::vacuum_hold::VacuumVerdict as V;
    let cause = match answer.verdict {
        V::DryAndTight => Verdict::InBand,
        V::Moisture | V::Leak => Verdict::OutOfBand,
        V::CannotTell => Verdict::CannotTell,
        V::Open => return None,
    };
    Some(cause.and(answer.pass.verdict))
}
