//! The pressure test: does the nitrogen hold, was every joint looked at?

use super::clock::Clock;
use super::document::{GaugeReadingInput, Stage};
use super::hold_clock::{HoldClock, Times};
use super::joint::JointKind;
use super::joint_state::{JointAssessment, JointState, JointStep};
use super::order::{OrderRule, Overrides};
use super::parts::Parts;
use super::paths::Paths;
use super::stage::{Draft, OpenMatter};
use crate::calc::standing_test::{
    HoldReadingInput, HoldVerdict, HoldWarning, StandingTestAnswer, StandingTestInput,
    standing_test,
};
use crate::calc::{Field, Reading, Verdict, optional};
use crate::quantity::{Entry, Moment, Quantity};

/// What the pressure test comes to.
pub(super) struct PressureTest {
    pub answer: Option<StandingTestAnswer>,
    pub clock: Option<HoldClock>,
    /// Where the readings of the hold are in the document.
    pub places: Vec<usize>,
    /// Whether the circuit is proven tight at its test pressure, and the moment of the last reading that proves it.
    pub tight_since: Option<Moment>,
}

const PATHS: Paths = Paths {
    shared: &[
        ("readings", "pressureTest.readings"),
        ("altitude", "altitude"),
        ("barometer", "barometer"),
        ("gaugeResolution", "instruments.gauge.resolution"),
        ("gaugeUncertainty", "instruments.gauge.uncertainty"),
        (
            "thermometerUncertainty",
            "instruments.thermometer.uncertainty",
        ),
        ("refrigerant", "plate.refrigerant"),
        ("designPressure", "plate.designPressure"),
        ("plateTestPressure", "plate.plateTestPressure"),
        ("lowestRating", "plate.lowestRating"),
    ],
    own: "pressureTest.test",
};

impl PressureTest {
    pub fn draft(overrides: &Overrides) -> Draft<'_> {
        Draft::of(Stage::PressureTest, overrides)
    }

    pub fn take(
        draft: &mut Draft<'_>,
        reading: &mut Reading,
        parts: &Parts<'_>,
        joints: &[JointAssessment],
        (clock, now): (&Clock, Moment),
    ) -> Self {
        let entered = parts.pressure_test.readings.items();
        let begins = |reading: &GaugeReadingInput| matches!(reading.hold_begins, Entry::Read(true));
        let first = entered.iter().rposition(begins).unwrap_or(0);
        let places: Vec<usize> = (first..entered.len()).collect();
        for (place, earlier) in entered.iter().take(first).enumerate() {
            let item = Field::written(format!("pressureTest.readings[{place}]"));
            reading.inside(&item, |reading| earlier_reading(reading, earlier));
        }
        let mut times = Times::of(clock);
        let readings: Vec<HoldReadingInput> = entered
            .iter()
            .skip(first)
            .map(|reading| HoldReadingInput {
                time: times.next(&reading.at),
                gauge_pressure: reading.gauge_pressure.clone(),
                temperature: reading.temperature.clone(),
                ambient_temperature: reading.ambient_temperature.clone(),
                barometer: reading.barometer.clone(),
            })
            .collect();
        draft.begun(!readings.is_empty());
        let answer = standing_test(&StandingTestInput {
            readings: readings.into(),
            altitude: parts.job.altitude.clone(),
            barometer: parts.job.barometer.clone(),
            gauge_resolution: parts.gauge.resolution.clone(),
            gauge_uncertainty: parts.gauge.uncertainty.clone(),
            thermometer_uncertainty: parts.thermometer.uncertainty.clone(),
            refrigerant: parts.plate.refrigerant.clone(),
            design_pressure: parts.plate.design_pressure.clone(),
            plate_test_pressure: parts.plate.plate_test_pressure.clone(),
            lowest_rating: parts.plate.lowest_rating.clone(),
            ..parts.test.clone()
        });
        let answer = match answer {
            Ok(answer) => Some(answer),
            Err(problems) => {
                reading.take_over(draft.missing(PATHS.place(problems, &places)));
                None
            }
        };
        let lasts = answer.as_ref().and_then(|answer| {
            let by_rule = answer.guidance.as_ref().map(|guidance| guidance.hold);
            by_rule.or(answer.hold_of_two_readings)
        });
        let test = Self {
            clock: times
                .first
                .map(|first| HoldClock::of(clock, first, now, lasts, times.doubt_at(now))),
            tight_since: times.last.filter(|_| is_tight(answer.as_ref())),
            answer,
            places,
        };
        test.judge(draft, joints, !entered.is_empty());
        test
    }

    fn judge(&self, draft: &mut Draft<'_>, joints: &[JointAssessment], is_begun: bool) {
        let verdict = self.answer.as_ref().map(|answer| answer.verdict);
        match verdict {
            Some(HoldVerdict::Tight) => draft.verdict(Verdict::InBand),
            Some(HoldVerdict::LosingGas) => draft.verdict(Verdict::OutOfBand),
            Some(HoldVerdict::CannotTell) => draft.verdict(Verdict::CannotTell),
            Some(HoldVerdict::Open) | None => draft.open(OpenMatter::Readings),
        }
        self.judge_pressure(draft, is_begun);
        let hold = self.answer.as_ref().and_then(|answer| answer.hold.as_ref());
        if let Some(hold) = hold {
            draft.fact("fact-held", hold.duration);
            let uncertainty = hold.difference_uncertainty.si();
            draft.uncertain("fact-pressure-difference", hold.difference, uncertainty);
        }
        let present = || {
            joints
                .iter()
                .filter(|joint| joint.state != JointState::Removed)
        };
        let is_under_test = |joint: &&JointAssessment| joint.kind != JointKind::Cap;
        let to_look_at = present()
            .filter(is_under_test)
            .filter(|joint| joint.open.contains(&JointStep::LookForLeaks));
        draft.open_count(OpenMatter::JointsToLookAt, to_look_at.count());
        let leaking = present()
            .filter(|joint| joint.state == JointState::Leaking)
            .count();
        draft.open_count(OpenMatter::JointsToRemake, leaking);
        if leaking > 0 {
            draft.verdict(Verdict::OutOfBand);
        }
        let loose = present()
            .filter(is_under_test)
            .any(|joint| joint.open.contains(&JointStep::Tighten));
        draft.rule(OrderRule::PressureBeforeTightened, is_begun && loose);
        let warnings = self
            .answer
            .as_ref()
            .map(|answer| answer.warnings.as_slice());
        let above = warnings.is_some_and(|all| all.contains(&HoldWarning::AboveLowestRating));
        draft.rule(OrderRule::AboveLowestRating, above);
    }
}

impl PressureTest {
    /// At the pressure that was wanted? Nobody can say so who does not know that pressure.
    fn judge_pressure(&self, draft: &mut Draft<'_>, is_begun: bool) {
        let Some(answer) = &self.answer else { return };
        if is_begun && answer.guidance.is_none() {
            draft.open_field(Field::written("plate.designPressure".into()));
        }
        let reached = answer.reached.map(|reached| reached.verdict);
        if let Some(reached) = reached {
            draft.verdict(reached);
        }
        if reached == Some(Verdict::OutOfBand) {
            draft.open(OpenMatter::TestPressure);
        } else if answer.verdict == HoldVerdict::CannotTell {
            draft.open(OpenMatter::HoldOn);
        }
    }
}

/// What is wrong with a reading that no hold asks about any more.
fn earlier_reading(reading: &mut Reading, earlier: &GaugeReadingInput) {
    optional!(reading, earlier.at);
    optional!(reading, earlier.gauge_pressure);
    optional!(reading, earlier.temperature);
    optional!(reading, earlier.ambient_temperature);
    optional!(reading, earlier.barometer);
}

/// Tight at a test pressure that is known.
fn is_tight(answer: Option<&StandingTestAnswer>) -> bool {
    answer.is_some_and(|answer| answer.guidance.is_some() && answer.verdict == HoldVerdict::Tight)
}
