//! A verdict with its margin and the uncertainty of the instrument that fed it.

use serde::Serialize;

use crate::quantity::{Band, Quantity};

/// How a measured figure stands to its limits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// Inside, and further from the limit than the instrument may err.
    InBand,
    /// Outside, and further from the limit than the instrument may err.
    OutOfBand,
    /// Nearer to a limit than the instrument can tell.
    CannotTell,
}

impl Verdict {
    /// The verdict on two things that must both be in band.
    pub fn and(self, other: Self) -> Self {
        match (self, other) {
            (Self::OutOfBand, _) | (_, Self::OutOfBand) => Self::OutOfBand,
            (Self::InBand, Self::InBand) => Self::InBand,
            _ => Self::CannotTell,
        }
    }
}

/// A verdict on a figure.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Judgement<Q, Difference> {
    /// The figure judged.
    pub figure: Q,
    /// The verdict.
    pub verdict: Verdict,
    /// Distance to the nearer limit, positive inside, negative outside.
    pub margin: Difference,
    /// How far the figure may be wrong.
    pub uncertainty: Difference,
    /// The nearer limit.
    pub limit: Q,
}

/// Judges `figure`, which may be wrong by `uncertainty` either way, against a band; a limit itself is inside.
///
/// ```
/// use coldwright::calc::{Verdict, judge};
/// use coldwright::quantity::{Band, Length};
/// let cone = Band::new(Length::millimetres(19.3), Length::millimetres(19.7));
/// let measured = |millimetres| {
///     judge(Length::millimetres(millimetres), Length::millimetres(0.05), cone).verdict
/// };
/// assert_eq!(measured(19.5), Verdict::InBand);
/// assert_eq!(measured(19.68), Verdict::CannotTell);
/// assert_eq!(measured(20.1), Verdict::OutOfBand);
/// ```
pub fn judge<Q: Quantity, Difference: Quantity>(
    figure: Q,
    uncertainty: Difference,
    band: Band<Q>,
) -> Judgement<Q, Difference> {
    let above_low = figure.si() - band.low.si();
    let below_high = band.high.si() - figure.si();
    let (margin, limit) = if above_low < below_high {
        (above_low, band.low)
    } else {
        (below_high, band.high)
    };
    judged(figure, uncertainty, margin, limit)
}

/// Judges `figure` against a limit that it must not fall below.
pub fn judge_at_least<Q: Quantity, Difference: Quantity>(
    figure: Q,
    uncertainty: Difference,
    limit: Q,
) -> Judgement<Q, Difference> {
    judged(figure, uncertainty, figure.si() - limit.si(), limit)
}

/// Judges `figure` against a limit that it must not rise above.
///
/// ```
/// use coldwright::calc::Verdict;
/// use coldwright::calc::judge_at_most;
/// use coldwright::quantity::Length;
/// let run = judge_at_most(Length::metres(12.0), Length::metres(0.0), Length::metres(15.0));
/// assert_eq!((run.verdict, run.margin), (Verdict::InBand, Length::metres(3.0)));
/// ```
pub fn judge_at_most<Q: Quantity, Difference: Quantity>(
    figure: Q,
    uncertainty: Difference,
    limit: Q,
) -> Judgement<Q, Difference> {
    judged(figure, uncertainty, limit.si() - figure.si(), limit)
}

/// The judgement of a figure that lies `margin` inside `limit`.
fn judged<Q: Quantity, Difference: Quantity>(
    figure: Q,
    uncertainty: Difference,
    margin: f64,
    limit: Q,
) -> Judgement<Q, Difference> {
    let verdict = verdict(margin, uncertainty.si(), limit.si());
    Judgement {
        figure,
        verdict,
        margin: Difference::from_si(margin),
        uncertainty,
        limit,
    }
}

/// Relative size of a rounding error that must not decide: 20.0 mm - 0.4 mm is not quite 19.6 mm.
const ROUNDING: f64 = 1e-12;

fn verdict(margin: f64, uncertainty: f64, limit: f64) -> Verdict {
    let rounding = ROUNDING * limit.abs();
    if margin >= uncertainty - rounding {
        Verdict::InBand
    } else if margin < -uncertainty - rounding {
        Verdict::OutOfBand
    } else {
        Verdict::CannotTell
    }
}
