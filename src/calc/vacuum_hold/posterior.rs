//! How likely each cause is, given the readings; and what each leads one to expect.

use super::fit::{Trial, trials};
use super::prior::{self, Span};
use super::record::Record;
use super::{Cause, Shape};

/// A law with its cause and a narrow span of its unknowns.
#[derive(Clone, Copy, Debug)]
struct Case {
    trial: Trial,
    cause: Cause,
    /// Probability, given the readings.
    weight: f64,
    /// Plateau, Pa, or rate, Pa/s: mean and variance.
    free: (f64, f64),
}

/// Which cases count.
#[derive(Clone, Copy, Debug)]
pub(super) enum Which {
    All,
    Of(Cause),
    By(Shape),
}

impl Case {
    fn is(&self, which: Which) -> bool {
        match which {
            Which::All => true,
            Which::Of(cause) => self.cause == cause,
            Which::By(shape) => self.trial.shape == shape,
        }
    }

    /// Weight in a figure: a leak gives off gas besides as likely as not, however the verdict is
    /// better served by thinking it seldom. Else what little gas does not show is taken for air.
    fn weight_in_figures(&self) -> f64 {
        match self.trial.shape {
            Shape::PlateauAndLinearRise => self.weight * prior::OUTGASSING_EVENED,
            Shape::LinearRise | Shape::Plateau => self.weight,
        }
    }

    /// Mean and variance of the pressure at a time of which `settled` is `1 − exp(−t/τ)`.
    fn pressure(&self, time: f64, settled: f64) -> (f64, f64) {
        let (u, v) = match self.trial.shape {
            Shape::Plateau => (1.0 - settled, settled),
            Shape::LinearRise | Shape::PlateauAndLinearRise => (1.0, time),
        };
        let line = &self.trial.line;
        let change = u * line.start_slope + v;
        let mean = u * line.start + change * self.free.0 + self.trial.outgassing * settled;
        let spread = u * line.start_spread;
        (mean, change * change * self.free.1 + spread * spread)
    }
}

/// Everything that the readings leave possible.
pub(super) struct Posterior {
    /// The cases that are worth counting, their weights adding up to 1.
    cases: Vec<Case>,
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
        let mut best = f64::NEG_INFINITY;
        for trial in &trials {
            for span in spans(trial) {
                best = best.max(log_bound(trial, span));
            }
        }
        let mut cases = Vec::new();
        let mut total = 0.0;
        for trial in &trials {
            for span in spans(trial) {
                if log_bound(trial, span) > best - NEGLIGIBLE {
                    let mut case = case(trial, span, best);
                    // An even pressure above the dry limit is no dry system's.
                    if trial.shape == Shape::LinearRise
                        && case.cause == Cause::DryAndTight
                        && case.pressure(record.held, 0.0).0 > dry_limit
                    {
                        case.cause = Cause::HighLevel;
                    }
                    total += case.weight;
                    cases.push(case);
                }
            }
        }
        for case in &mut cases {
            case.weight /= total;
        }
        Self { cases, trials }
    }

    /// Probability of some of the cases.
    pub fn probability(&self, which: Which) -> f64 {
        let mut sum = 0.0;
        for case in &self.cases {
            if case.is(which) {
                sum += case.weight;
            }
        }
        sum
    }

    /// Mean and standard uncertainty of the plateau, Pa, or the rate, Pa/s, of some of the cases.
    pub fn free(&self, which: Which) -> Option<(f64, f64)> {
        self.mean(which, &mut |case| case.free)
    }

    /// Mean scatter of the readings, part of their level.
    pub fn noise(&self) -> Option<f64> {
        let noise = self.mean(Which::All, &mut |case| (case.trial.noise, 0.0));
        noise.map(|(noise, _)| noise)
    }

    /// Pressure to expect at a time after the first reading, Pa, and its standard uncertainty.
    pub fn expected(&self, time: f64, which: Which) -> Option<(f64, f64)> {
        // Cases of one time constant stand together.
        let (mut constant, mut settled) = (0.0, 0.0);
        self.mean(which, &mut |case| {
            if (case.trial.time_constant - constant).abs() > 0.0 {
                constant = case.trial.time_constant;
                settled = settled_after(time, constant);
            }
            case.pressure(time, settled)
        })
    }

    fn mean(&self, which: Which, of: &mut dyn FnMut(&Case) -> (f64, f64)) -> Option<(f64, f64)> {
        let mut spread = Spread::default();
        for case in &self.cases {
            if case.is(which) {
                spread.add(case.weight_in_figures(), of(case));
            }
        }
        spread.mean()
    }
}

/// `1 − exp(−t/τ)`; nothing settles without a time constant.
pub(super) fn settled_after(time: f64, constant: f64) -> f64 {
    if constant > 0.0 {
        1.0 - libm::exp(-time / constant)
    } else {
        0.0
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
        if weight > 0.0 {
            self.weight += weight;
            let step = mean - self.mean;
            self.mean += step * weight / self.weight;
            self.squares += weight * (variance + step * (mean - self.mean));
        }
    }

    /// Mean and standard uncertainty, if there was any part.
    pub fn mean(&self) -> Option<(f64, f64)> {
        let variance = (self.squares / self.weight).max(0.0);
        (self.weight > 0.0).then(|| (self.mean, variance.sqrt()))
    }
}

/// No less than the logarithm of the weight of a span of a trial.
fn log_bound(trial: &Trial, span: &Span) -> f64 {
    let line = &trial.line;
    let outside = (span.low - line.free).max(line.free - span.high).max(0.0) / line.spread;
    trial.log_likelihood + span.log_density - 0.5 * outside * outside
}

/// The part of a trial whose plateau or rate lies in a span, its weight relative to `best`.
fn case(trial: &Trial, span: &Span, best: f64) -> Case {
    let line = &trial.line;
    let low = (span.low - line.free) / line.spread;
    let high = (span.high - line.free) / line.spread;
    let (at_low, at_high) = (density(low), density(high));
    let share = if low > 0.0 {
        beyond(low) - beyond(high)
    } else {
        beyond(-high) - beyond(-low)
    };
    // Mean and variance of the normal distribution between the two.
    let mean = ((at_low - at_high) / share).clamp(low, high);
    let variance = 1.0 + (low * at_low - high * at_high) / share - mean * mean;
    let width = high - low;
    let variance = variance.clamp(0.0, (0.25 * width * width).min(1.0));
    Case {
        trial: *trial,
        cause: span.cause,
        weight: share * libm::exp(trial.log_likelihood + span.log_density - best),
        free: (
            (line.free + line.spread * mean).clamp(span.low, span.high),
            line.spread * line.spread * variance,
        ),
    }
}

/// Density of the standard normal distribution.
fn density(x: f64) -> f64 {
    const AT_ZERO: f64 = 0.398_942_280_401_432_7;
    AT_ZERO * libm::exp(-0.5 * x * x)
}

/// Share of the standard normal distribution beyond `x`, within 1e-7 (Abramowitz and Stegun,
/// Handbook of Mathematical Functions (1964), 26.2.17).
fn beyond(x: f64) -> f64 {
    const FACTORS: [f64; 5] = [
        1.330_274_429,
        -1.821_255_978,
        1.781_477_937,
        -0.356_563_782,
        0.319_381_530,
    ];
    let t = 1.0 / (1.0 + 0.231_641_9 * x.abs());
    let mut sum = 0.0;
    for factor in FACTORS {
        sum = (sum + factor) * t;
    }
    let far = density(x) * sum;
    if x < 0.0 { 1.0 - far } else { far }
}
