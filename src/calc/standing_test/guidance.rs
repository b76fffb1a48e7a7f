//! Test pressure, the stages on the way to it, and how long to hold.

use serde::Serialize;

use super::StandingTestInput;
use crate::calc::problem::{Field, Misfit, Problem};
use crate::calc::reading::{Reading, optional, required};
use crate::calc::working::Step;
use crate::quantity::{GaugePressure, PressureDifference, Ratio, Time, choice};
use crate::tables::SourceId;
use crate::tables::pressure_test::PressureTestRule;

/// How to carry out the test.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct PressureTestGuidance {
    /// The rule.
    pub rule: PressureTestRule,
    /// The pressure that the rule wants.
    pub wanted_test_pressure: GaugePressure,
    /// The pressure to test at: never above the lowest-rated part.
    pub test_pressure: GaugePressure,
    /// How the pressure that the rule wants stands to the lowest-rated part.
    pub rating: RatingCheck,
    /// Rating of the lowest-rated part less the pressure that the rule wants; negative if the rule wants too much.
    pub rating_margin: Option<PressureDifference>,
    /// The stages, in order, the last one at the test pressure.
    pub stages: Vec<PressureStage>,
    /// How long the test pressure is held at least, by the rule.
    pub hold: Time,
    /// Where test pressure and time come from.
    pub source: SourceId,
    /// Where the steps come from.
    pub steps_source: SourceId,
}

/// A stage on the way to the test pressure.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct PressureStage {
    /// Raise to this.
    pub gauge_pressure: GaugePressure,
    /// What to do there.
    pub action: StageAction,
}

choice! {
    /// What to do at a stage.
    StageAction {
        /// Look for gross leaks: listen, and soap every joint.
        SoapJoints = "soap-joints",
        /// Stop, let it settle, see that nothing gives way and the gauge stands.
        StopAndLook = "stop-and-look",
        /// Close the cylinder, take the hose off, hold and read.
        Hold = "hold",
    }
}

choice! {
    /// How the pressure that a rule wants stands to the lowest-rated part.
    RatingCheck {
        /// No part is rated below it.
        WithinRating = "within-rating",
        /// A part is rated below it: the stages end at its rating. Take the part off or ask who made the equipment.
        AboveRating = "above-rating",
        /// The rating of the lowest-rated part was not entered: find it before any pressure goes on.
        RatingOpen = "rating-open",
    }
}

/// Pressures that a design, a plate or a part may have.
const PRESSURES: (GaugePressure, GaugePressure) =
    (GaugePressure::pascals(5e4), GaugePressure::pascals(2e7));

/// The guidance, if it was asked for and nothing is wrong with what it needs.
pub(super) fn take(
    reading: &mut Reading,
    input: &StandingTestInput,
) -> Option<PressureTestGuidance> {
    let rule = optional!(reading, input.test_rule);
    let design = optional!(reading, input.design_pressure);
    let plate = optional!(reading, input.plate_test_pressure);
    let rating = optional!(reading, input.lowest_rating);
    for (name, given) in [
        ("design_pressure", design),
        ("plate_test_pressure", plate),
        ("lowest_rating", rating),
    ] {
        reading.within(Field::named(name), given, PRESSURES);
    }
    let rule = match (rule, plate, design) {
        (Some(rule), ..) => rule,
        (None, Some(_), _) => PressureTestRule::Plate,
        (None, None, Some(_)) => PressureTestRule::RealDecreto552,
        (None, None, None) => return None,
    };
    let from = if rule == PressureTestRule::Plate {
        required!(reading, input.plate_test_pressure)
    } else if plate.is_some() {
        // The plate outranks every rule: which of the two shall hold must be said.
        let with = Field::named("plate_test_pressure");
        let misfit = Misfit::Conflict { with };
        reading.problem(Problem::misfit(Field::named("test_rule"), misfit));
        None
    } else {
        required!(reading, input.design_pressure)
    };
    from.map(|from| guidance(rule, from, rating))
}

fn guidance(
    rule: PressureTestRule,
    from: GaugePressure,
    rating: Option<GaugePressure>,
) -> PressureTestGuidance {
    let row = rule.row();
    let wanted = GaugePressure::pascals(row.factor * from.in_pascals());
    let margin = rating.map(|rating| rating - wanted);
    let (test, check) = match rating {
        None => (wanted, RatingCheck::RatingOpen),
        Some(rating) if rating < wanted => (rating, RatingCheck::AboveRating),
        Some(_) => (wanted, RatingCheck::WithinRating),
    };
    PressureTestGuidance {
        rule,
        wanted_test_pressure: wanted,
        test_pressure: test,
        rating: check,
        rating_margin: margin,
        stages: stages(row.preliminary, row.parts, test),
        hold: row.hold,
        source: row.source,
        steps_source: row.steps_source,
    }
}

/// The stages up to `test`; those that a low test pressure leaves no room for fall away.
fn stages(preliminary: GaugePressure, parts: &[f64], test: GaugePressure) -> Vec<PressureStage> {
    let mut stages = Vec::with_capacity(parts.len() + 1);
    if preliminary < test {
        stages.push(PressureStage {
            gauge_pressure: preliminary,
            action: StageAction::SoapJoints,
        });
    }
    for part in parts {
        let gauge_pressure = GaugePressure::pascals(part * test.in_pascals());
        let action = if *part < 1.0 {
            StageAction::StopAndLook
        } else {
            StageAction::Hold
        };
        if gauge_pressure > preliminary || action == StageAction::Hold {
            stages.push(PressureStage {
                gauge_pressure,
                action,
            });
        }
    }
    stages
}

/// The step that finds the pressure that the rule wants.
pub(super) fn step(guidance: &PressureTestGuidance) -> Step {
    let factor = guidance.rule.row().factor;
    let wanted = guidance.wanted_test_pressure;
    Step::of("step-test-pressure", "{p} = {f}·{PS}")
        .with("f", "figure-test-factor", Ratio::of_one(factor))
        .with(
            "PS",
            "figure-rule-pressure",
            GaugePressure::pascals(wanted.in_pascals() / factor),
        )
        .from(guidance.source)
        .gives("p", "figure-test-pressure", wanted)
}
