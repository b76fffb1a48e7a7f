//! How likely each cause is, given the readings; and what each leads one to expect.

use super::fit::{Trial, trials};
use super::prior::{self, Span};
use super::record::Record;
use super::{Cause, Shape};

/// A law with its cause and a narrow span of its unknowns.
#[derive(Clone, Copy, Debug)]
pub(super) struct Case {
    pub shape: Shape,
    pub cause: Cause,
    /// Probability, given the readings.
    pub weight: f64,
    /// s.
    pub time_constant: f64,
    pub outgassing: f64,
    pub noise: f64,
    /// Plateau, Pa, or rate, Pa/s: mean and variance.
    pub free: (f64, f64),
    /// Start for a given `free`: at zero, its change, its variance.
    start: (f64, f64, f64),
}

impl Case {
    /// Weight in a figure: a leak gives off gas besides as likely as not, however the verdict is better served by
    /// thinking it seldom. Else what little gas does not show would be taken for air.
    fn weight_in_figures(&self) -> f64 {
        match self.shape {
            Shape::PlateauAndLinearRise => self.weight * prior::OUTGASSING_EVENED,
            Shape::LinearRise | Shape::Plateau => self.weight,
        }
    }

    /// Mean and variance of the pressure at a time of which `settled` is `1 − exp(−t/τ)`.
    fn pressure(&self, time: f64, settled: f64) -> (f64, f64) {
        let (u, v) = match self.shape {
            Shape::Plateau => (1.0 - settled, settled),
            Shape::LinearRise | Shape::PlateauAndLinearRise => (1.0, time),
        };
        let (start, slope, spread) = self.start;
        let change = u * slope + v;
        let mean = u * start + change * self.free.0 + self.outgassing * settled;
        (mean, change * change * self.free.1 + u * u * spread)
    }
}

/// Everything that the readings leave possible.
pub(super) struct Posterior {
    /// The cases that are worth counting, their weights adding up to 1.
    pub cases: Vec<Case>,
    pub trials: Vec<Trial>,
}

/// Logarithm of how much less likely than the best a case may be and still count.
const NEGLIGIBLE: f64 = 14.0;

impl Posterior {
    /// Weighs all cases of a hold. `highest` is the highest plateau of moisture, `dry_limit` the
    /// highest of a dry system, Pa.
    pub fn of(record: &Record, noises: &[f64], dry_limit: f64, highest: f64) -> Self {
        let trials = trials(record, noises, highest);
        let rates = prior::rates();
        let leaks = prior::leaks_with_outgassing();
        let plateaus = prior::plateaus(record.least_start(), dry_limit, highest);
        let spans = |trial: &Trial| match trial.shape {
            Shape::LinearRise => &rates,
            Shape::Plateau => &plateaus,
            Shape::PlateauAndLinearRise => &leaks,
        };
        let best = trials.iter().fold(f64::NEG_INFINITY, |best, trial| {
            let logs = spans(trial).iter().map(|span| log_bound(trial, span));
            logs.fold(best, f64::max)
        });
        let mut cases = Vec::new();
        for trial in &trials {
            cases.extend(spans(trial).iter().filter_map(|s| case(trial, s, best)));
        }
        let mut posterior = Self { cases, trials };
        posterior.cases.retain(|case| case.weight > 0.0);
        posterior.name_high_levels(record.held, dry_limit);
        posterior.normalise();
        posterior
    }

    /// An even pressure above the dry limit is no dry system's.
    fn name_high_levels(&mut self, held: f64, dry_limit: f64) {
        for case in &mut self.cases {
            let creeps = case.shape == Shape::LinearRise && case.cause == Cause::DryAndTight;
            if creeps && case.pressure(held, 0.0).0 > dry_limit {
                case.cause = Cause::HighLevel;
            }
        }
    }

    fn normalise(&mut self) {
        let most = self.cases.iter().map(|c| c.weight).fold(0.0, f64::max);
        let least = most * libm::exp(-NEGLIGIBLE);
        self.cases.retain(|case| case.weight > least);
        let total: f64 = self.cases.iter().map(|case| case.weight).sum();
        for case in &mut self.cases {
            case.weight /= total;
        }
    }

    /// Probability of what `counts` selects.
    pub fn probability(&self, counts: impl Fn(&Case) -> bool) -> f64 {
        let counted = self.cases.iter().filter(|case| counts(case));
        counted.fold(0.0, |sum, case| sum + case.weight)
    }

    /// Mean and standard uncertainty of `of` over the cases that `counts` selects, if there are any.
    pub fn mean(
        &self,
        counts: impl Fn(&Case) -> bool,
        mut of: impl FnMut(&Case) -> (f64, f64),
    ) -> Option<(f64, f64)> {
        let mut spread = Spread::default();
        for case in self.cases.iter().filter(|case| counts(case)) {
            spread.add(case.weight_in_figures(), of(case));
        }
        spread.mean()
    }

    /// Pressure to expect at a time after the first reading, Pa, and its standard uncertainty.
    pub fn expected(&self, time: f64, counts: impl Fn(&Case) -> bool) -> Option<(f64, f64)> {
        // Cases of one time constant stand together.
        let mut known = (0.0, 0.0);
        self.mean(counts, |case| {
            if (case.time_constant - known.0).abs() > 0.0 {
                known = (case.time_constant, -libm::expm1(-time / case.time_constant));
            }
            let settled = if case.time_constant > 0.0 {
                known.1
            } else {
                0.0
            };
            case.pressure(time, settled)
        })
    }
}

/// Mean and variance of a mixture, gathered one part at a time.
#[derive(Default)]
pub(super) struct Spread {
    weight: f64,
    mean: f64,
    squares: f64,
}

impl Spread {
    /// Adds a part with its mean and variance.
    pub fn add(&mut self, weight: f64, (mean, variance): (f64, f64)) {
        if weight <= 0.0 {
            return;
        }
        self.weight += weight;
        let step = mean - self.mean;
        self.mean += step * weight / self.weight;
        self.squares += weight * (variance + step * (mean - self.mean));
    }

    /// Mean and standard uncertainty, if there was any part.
    pub fn mean(&self) -> Option<(f64, f64)> {
        let variance = self.squares / self.weight;
        (self.weight > 0.0).then(|| (self.mean, variance.max(0.0).sqrt()))
    }
}

/// No less than the logarithm of the weight of a span of a trial.
fn log_bound(trial: &Trial, span: &Span) -> f64 {
    let line = &trial.line;
    let outside = (span.low - line.free).max(line.free - span.high).max(0.0) / line.spread;
    trial.log_likelihood + span.log_density - 0.5 * outside * outside
}

/// The part of a trial whose plateau or rate lies in a span, its weight relative to `best`.
fn case(trial: &Trial, span: &Span, best: f64) -> Option<Case> {
    if log_bound(trial, span) < best - NEGLIGIBLE {
        return None;
    }
    let line = &trial.line;
    let low = (span.low - line.free) / line.spread;
    let high = (span.high - line.free) / line.spread;
    let log = trial.log_likelihood + span.log_density - best;
    let share = share_between(low, high);
    if share <= 0.0 {
        return None;
    }
    let (mean, variance) = moments_between(low, high, share);
    Some(Case {
        shape: trial.shape,
        cause: span.cause,
        weight: libm::exp(log) * share,
        time_constant: trial.time_constant,
        outgassing: trial.outgassing,
        noise: trial.noise,
        free: (
            (line.free + line.spread * mean).clamp(span.low, span.high),
            line.spread * line.spread * variance,
        ),
        start: (
            line.start,
            line.start_slope,
            line.start_spread * line.start_spread,
        ),
    })
}

/// Share of the standard normal distribution between two limits, right far out too.
fn share_between(low: f64, high: f64) -> f64 {
    let above = |limit: f64| 0.5 * libm::erfc(limit * core::f64::consts::FRAC_1_SQRT_2);
    if low > 0.0 {
        above(low) - above(high)
    } else {
        above(-high) - above(-low)
    }
}

/// Mean and variance of the standard normal distribution between two limits.
fn moments_between(low: f64, high: f64, share: f64) -> (f64, f64) {
    let density = |x: f64| {
        libm::exp(-0.5 * x * x)
            * 0.5
            * core::f64::consts::FRAC_2_SQRT_PI
            * core::f64::consts::FRAC_1_SQRT_2
    };
    let (at_low, at_high) = (density(low), density(high));
    let mean = ((at_low - at_high) / share).clamp(low, high);
    let variance = 1.0 + (low * at_low - high * at_high) / share - mean * mean;
    let width = high - low;
    (mean, variance.clamp(0.0, (0.25 * width * width).min(1.0)))
}
