//! Fits of the three laws to a hold: at a given time constant each is straight in its other unknowns.

use super::record::Record;
use super::{Shape, prior};

/// Weighted sums of products of two courses `u` and `v` over time and of the pressure `p`.
struct Sums {
    uu: f64,
    uv: f64,
    vv: f64,
    up: f64,
    vp: f64,
    pp: f64,
}

/// The fit `p = start·u(t) + free·v(t)`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Line {
    /// Sum of the squared deviations, each in its own standard uncertainty.
    pub misfit: f64,
    /// What is asked for: the plateau, Pa, or the rate, Pa/s.
    pub free: f64,
    /// Its standard uncertainty.
    pub spread: f64,
    /// Start if `free` were zero, Pa, …
    pub start: f64,
    /// … its change with `free`, …
    pub start_slope: f64,
    /// … and its standard uncertainty for a given `free`, Pa.
    pub start_spread: f64,
}

/// Part of a sum that is lost to rounding.
const ROUNDING: f64 = 1e-12;

impl Line {
    fn of(sums: &Sums) -> Option<Self> {
        let own = sums.vv - sums.uv * sums.uv / sums.uu;
        if own.is_nan() || own <= ROUNDING * sums.vv {
            return None;
        }
        let free = (sums.vp - sums.uv * sums.up / sums.uu) / own;
        Some(Self {
            misfit: (sums.pp - sums.up * sums.up / sums.uu - own * free * free).max(0.0),
            free,
            spread: 1.0 / own.sqrt(),
            start: sums.up / sums.uu,
            start_slope: -sums.uv / sums.uu,
            start_spread: 1.0 / sums.uu.sqrt(),
        })
    }
}

/// A law with its time constant and its outgassing chosen, fitted with one size of noise.
#[derive(Clone, Copy, Debug)]
pub(super) struct Trial {
    pub shape: Shape,
    /// s; zero for an even rise.
    pub time_constant: f64,
    /// Pressure that outgassing adds besides a leak, Pa.
    pub outgassing: f64,
    /// Scatter of the readings, part of their level.
    pub noise: f64,
    /// Logarithm of the readings' probability if the fit is the truth.
    pub log_readings: f64,
    /// The same averaged over all starts and over all of the unknown asked for, but for how likely a span of that is.
    pub log_likelihood: f64,
    pub line: Line,
}

/// Weighted sums over the readings that need no time constant, for one size of noise.
struct Noise {
    noise: f64,
    log_scale: f64,
    weights: Vec<f64>,
    w: f64,
    wt: f64,
    wtt: f64,
    wp: f64,
    wtp: f64,
    wpp: f64,
}

/// The same with `g = 1 − exp(−t/τ)`.
#[derive(Default)]
struct Settling {
    wg: f64,
    wtg: f64,
    wgg: f64,
    wgp: f64,
}

impl Noise {
    fn of(record: &Record, noise: f64) -> Self {
        let mut sums = Self {
            noise,
            log_scale: 0.0,
            weights: Vec::with_capacity(record.points.len()),
            w: 0.0,
            wt: 0.0,
            wtt: 0.0,
            wp: 0.0,
            wtp: 0.0,
            wpp: 0.0,
        };
        for point in &record.points {
            let weight = 1.0 / record.variance(point, noise);
            let (time, pressure) = (weight * point.time, weight * point.pressure);
            sums.log_scale += 0.5 * libm::log(weight);
            sums.w += weight;
            sums.wt += time;
            sums.wtt += time * point.time;
            sums.wp += pressure;
            sums.wtp += pressure * point.time;
            sums.wpp += pressure * point.pressure;
            sums.weights.push(weight);
        }
        sums
    }

    fn settling(&self, record: &Record, settled: &[f64]) -> Settling {
        let mut sums = Settling::default();
        for ((point, weight), settled) in record.points.iter().zip(&self.weights).zip(settled) {
            let weighted = weight * settled;
            sums.wg += weighted;
            sums.wtg += weighted * point.time;
            sums.wgg += weighted * settled;
            sums.wgp += weighted * point.pressure;
        }
        sums
    }

    /// `p = start + rate·t`, with outgassing that settles added.
    fn rise(&self, outgassing: f64, settling: &Settling) -> Option<Line> {
        let a = outgassing;
        Line::of(&Sums {
            uu: self.w,
            uv: self.wt,
            vv: self.wtt,
            up: self.wp - a * settling.wg,
            vp: self.wtp - a * settling.wtg,
            pp: self.wpp - 2.0 * a * settling.wgp + a * a * settling.wgg,
        })
    }

    /// `p = start·exp(−t/τ) + plateau·(1 − exp(−t/τ))`.
    fn plateau(&self, settling: &Settling) -> Option<Line> {
        Line::of(&Sums {
            uu: self.w - 2.0 * settling.wg + settling.wgg,
            uv: settling.wg - settling.wgg,
            vv: settling.wgg,
            up: self.wp - settling.wgp,
            vp: settling.wgp,
            pp: self.wpp,
        })
    }

    fn trial(
        &self,
        shape: Shape,
        (time_constant, outgassing): (f64, f64),
        mass: f64,
        line: Option<Line>,
    ) -> Option<Trial> {
        line.map(|line| {
            let log_readings = self.log_scale - 0.5 * line.misfit;
            Trial {
                shape,
                time_constant,
                outgassing,
                noise: self.noise,
                log_readings,
                log_likelihood: log_readings + libm::log(mass * line.start_spread * line.spread),
                line,
            }
        })
    }
}

/// All fits of a hold whose pressures stay below `highest` but for a leak.
pub(super) fn trials(record: &Record, noises: &[f64], highest: f64) -> Vec<Trial> {
    let noises: Vec<Noise> = noises.iter().map(|n| Noise::of(record, *n)).collect();
    let mut trials = Vec::new();
    for noise in &noises {
        let line = noise.rise(0.0, &Settling::default());
        trials.extend(noise.trial(Shape::LinearRise, (0.0, 0.0), 1.0, line));
    }
    let room = highest - record.least_start();
    let mut outgassing = prior::outgassing();
    outgassing.retain(|(added, _)| *added <= room);
    let mut constants = prior::time_constants();
    for cell in constants.iter().step_by(prior::WITH_LEAK) {
        let constant = cell.middle();
        let settled = settled(record, constant);
        for noise in &noises {
            let settling = noise.settling(record, &settled);
            for (added, likely) in &outgassing {
                let line = noise.rise(*added, &settling);
                let mass = cell.mass * prior::WITH_LEAK as f64 * likely;
                let shape = Shape::PlateauAndLinearRise;
                trials.extend(noise.trial(shape, (constant, *added), mass, line));
            }
        }
    }
    let mut plateaus = Vec::new();
    for cell in &constants {
        plateaus.extend(plateau_trials(record, &noises, cell));
    }
    for _ in 0..REFINEMENTS {
        let Some(around) = narrow_peak(&plateaus) else {
            break;
        };
        let (kept, fine) = prior::refined(constants, around);
        plateaus.retain(|trial| kept.iter().any(|cell| cell.holds(trial.time_constant)));
        for cell in &fine {
            plateaus.extend(plateau_trials(record, &noises, cell));
        }
        constants = kept;
        constants.extend(fine);
    }
    trials.extend(plateaus);
    trials
}

/// How often the time constants around the best may be divided further.
const REFINEMENTS: usize = 3;
/// Share of one time constant from which on those around it are divided further.
const NARROW: f64 = 0.25;

/// `1 − exp(−t/τ)` at each point.
fn settled(record: &Record, constant: f64) -> Vec<f64> {
    let at = |point: &super::record::Point| -libm::expm1(-point.time / constant);
    record.points.iter().map(at).collect()
}

fn plateau_trials<'a>(
    record: &'a Record,
    noises: &'a [Noise],
    cell: &prior::Cell,
) -> impl Iterator<Item = Trial> {
    let (constant, mass) = (cell.middle(), cell.mass);
    let settled = settled(record, constant);
    noises.iter().filter_map(move |noise| {
        let line = noise.plateau(&noise.settling(record, &settled));
        noise.trial(Shape::Plateau, (constant, 0.0), mass, line)
    })
}

/// The time constant that takes so much of the likelihood that the truth may lie between it and the next.
fn narrow_peak(trials: &[Trial]) -> Option<f64> {
    let order = |one: &&Trial, other: &&Trial| one.log_likelihood.total_cmp(&other.log_likelihood);
    let best = trials.iter().max_by(order)?;
    let weight = |trial: &Trial| libm::exp(trial.log_likelihood - best.log_likelihood);
    let all: f64 = trials.iter().map(weight).sum();
    let same = |trial: &&Trial| (trial.time_constant - best.time_constant).abs() <= 0.0;
    let own: f64 = trials.iter().filter(same).map(weight).sum();
    (own > NARROW * all).then_some(best.time_constant)
}
