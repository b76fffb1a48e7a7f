//! Whether the hold stood at the test pressure.

use super::guidance::PressureTestGuidance;
use super::instruments::Instruments;
use super::left_out::LeftOut;
use super::readings::HoldReading;
use crate::calc::verdict::{Judgement, judge_at_least};
use crate::quantity::{GaugePressure, PressureDifference, Quantity};

/// Judges the highest reading that counts: the night may be colder than the filling, but a pressure that the
/// circuit never had shows nothing of it. Where a part bears less than the rule wants, its rating does not do
/// instead. It may be wrong by the gauge's uncertainty and half a step.
pub(super) fn judge(
    readings: &[HoldReading],
    left_out: &[LeftOut],
    instruments: &Instruments,
    guidance: &PressureTestGuidance,
) -> Option<Judgement<GaugePressure, PressureDifference>> {
    let counts = |place: usize| left_out.iter().all(|left| left.place != place);
    let highest = readings
        .iter()
        .enumerate()
        .filter(|(place, _)| counts(*place))
        .map(|(_, reading)| reading.gauge)
        .reduce(|highest, gauge| if gauge > highest { gauge } else { highest })?;
    let half_a_step = 0.5 * instruments.gauge_resolution.si();
    let uncertainty = PressureDifference::pascals(instruments.gauge_uncertainty.si() + half_a_step);
    Some(judge_at_least(
        highest,
        uncertainty,
        guidance.wanted_test_pressure,
    ))
}
