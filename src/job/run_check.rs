//! The check of the running unit.

use super::document::Stage;
use super::order::Overrides;
use super::parts::Parts;
use super::paths::Paths;
use super::stage::{Draft, OpenMatter};
use crate::calc::running::{Check, RunningAnswer, RunningInput, running};
use crate::calc::{Field, Reading, Verdict};
use crate::quantity::{Entry, Quantity};

const PATHS: Paths = Paths {
    shared: &[
        ("refrigerant", "plate.refrigerant"),
        ("altitude", "altitude"),
        ("barometer", "barometer"),
        ("suctionGaugeUncertainty", "instruments.gauge.uncertainty"),
        ("liquidGaugeUncertainty", "instruments.gauge.uncertainty"),
        (
            "thermometerUncertainty",
            "instruments.thermometer.uncertainty",
        ),
    ],
    own: "runCheck.readings",
};

pub(super) fn draft(overrides: &Overrides) -> Draft<'_> {
    Draft::of(Stage::RunCheck, overrides)
}

/// Whether any reading of the running unit is entered.
fn is_begun(input: &RunningInput) -> bool {
    let is_there = |entries: &[bool]| entries.contains(&true);
    is_there(&[
        !matches!(input.suction_gauge_pressure, Entry::Absent),
        !matches!(input.suction_line_temperature, Entry::Absent),
        !matches!(input.liquid_gauge_pressure, Entry::Absent),
        !matches!(input.liquid_line_temperature, Entry::Absent),
        !matches!(input.discharge_gauge_pressure, Entry::Absent),
        !matches!(input.return_dry_bulb, Entry::Absent),
        !matches!(input.supply_dry_bulb, Entry::Absent),
    ])
}

pub(super) fn take(
    draft: &mut Draft<'_>,
    reading: &mut Reading,
    parts: &Parts<'_>,
) -> Option<RunningAnswer> {
    let field = Field::written("runCheck.at".into());
    reading.optional(field, &parts.run_check.at);
    if !is_begun(parts.running) {
        draft.open(OpenMatter::RunReadings);
        return None;
    }
    draft.begun(true);
    let answer = running(&RunningInput {
        refrigerant: parts.plate.refrigerant.clone(),
        altitude: parts.job.altitude.clone(),
        barometer: parts.job.barometer.clone(),
        suction_gauge_uncertainty: parts.gauge.uncertainty.clone(),
        liquid_gauge_uncertainty: parts.gauge.uncertainty.clone(),
        thermometer_uncertainty: parts.thermometer.uncertainty.clone(),
        ..parts.running.clone()
    });
    match answer {
        Ok(answer) => {
            judge(draft, &answer);
            Some(answer)
        }
        Err(problems) => {
            reading.take_over(draft.missing(PATHS.place(problems, &[])));
            None
        }
    }
}

fn judge(draft: &mut Draft<'_>, answer: &RunningAnswer) {
    match answer.verdict {
        Some(verdict) => draft.verdict(verdict),
        None => {
            draft.verdict(Verdict::CannotTell);
            draft.open(OpenMatter::RunReadings);
        }
    }
    for (meaning, check) in [
        ("fact-superheat", &answer.superheat),
        ("fact-subcooling", &answer.subcooling),
        ("fact-temperature-split", &answer.temperature_split),
    ] {
        fact(draft, meaning, check);
    }
}

fn fact(draft: &mut Draft<'_>, meaning: &'static str, check: &Check) {
    if let Some(figure) = check.figure {
        draft.uncertain(meaning, figure, check.uncertainty.map_or(0.0, Quantity::si));
    }
}
