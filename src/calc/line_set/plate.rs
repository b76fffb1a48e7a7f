//! The plate's limits of length, lift and precharge.

use super::answer::PlateLimits;
use super::input::LineSetInput;
use super::line::Line;
use crate::calc::reading::{Reading, optional};
use crate::calc::verdict::{Judgement, judge_at_most};
use crate::quantity::Length;

/// How the longer of the lines and the lift stand to the plate's limits.
pub(super) fn limits(
    input: &LineSetInput,
    reading: &mut Reading,
    liquid: &Option<Line>,
    suction: &Option<Line>,
    lift: Option<Length>,
) -> PlateLimits {
    let lengths = [liquid, suction].map(|line| line.as_ref().and_then(|line| line.length));
    let longer = lengths
        .into_iter()
        .flatten()
        .reduce(|one, other| if one > other { one } else { other });
    PlateLimits {
        length: against(longer, optional!(reading, input.longest_length)),
        lift: against(lift, optional!(reading, input.longest_lift)),
        precharged_length: against(longer, optional!(reading, input.precharged_length)),
    }
}

fn against(figure: Option<Length>, limit: Option<Length>) -> Option<Judgement<Length, Length>> {
    let exact = Length::metres(0.0);
    Some(judge_at_most(figure?, exact, limit?))
}
