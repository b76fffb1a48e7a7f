//! Fits of the three laws to a hold: at a given time constant each is straight in its other unknowns.

use super::posterior::settled_after;
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

    /// A law as one of the trials, if it can be fitted.
    fn try_out(&self, trials: &mut Vec<Trial>, choice: Choice, line: Option<Line>) {
        let Some(line) = line else {
            return;
        };
        let log_readings = self.log_scale - 0.5 * line.misfit;
        let worth = choice.mass * line.start_spread * line.spread;
        trials.push(Trial {
            shape: choice.shape,
            time_constant: choice.time_constant,
            outgassing: choice.outgassing,
            noise: self.noise,
            log_readings,
            log_likelihood: log_readings + libm::log(worth),
            line,
        });
    }
}

/// What is chosen before a fit.
#[derive(Clone, Copy)]
struct Choice {
    shape: Shape,
    time_constant: f64,
    outgassing: f64,
    /// Probability beforehand.
    mass: f64,
}

/// All fits of a hold whose pressures stay below `highest` but for a leak.
pub(super) fn trials(record: &Record, noises: &[f64], highest: f64) -> Vec<Trial> {
    let mut weighted = Vec::new();
    for noise in noises {
        weighted.push(Noise::of(record, *noise));
    }
    let mut trials = Vec::new();
    let choice = Choice {
        shape: Shape::LinearRise,
        time_constant: 0.0,
        outgassing: 0.0,
        mass: 1.0,
    };
    for noise in &weighted {
        noise.try_out(&mut trials, choice, noise.rise(0.0, &Settling::default()));
    }
    let room = highest - record.least_start();
    rises_with_outgassing(record, &weighted, room, &mut trials);
    trials.append(&mut plateaus(record, &weighted));
    trials
}

/// Even rises with outgassing besides, which adds no more than there is `room` for.
fn rises_with_outgassing(record: &Record, noises: &[Noise], room: f64, trials: &mut Vec<Trial>) {
    let outgassing = prior::outgassing();
    for cell in prior::time_constants().iter().step_by(prior::WITH_LEAK) {
        let time_constant = cell.middle();
        let settled = settled(record, time_constant);
        for noise in noises {
            let settling = noise.settling(record, &settled);
            for (added, likely) in &outgassing {
                if *added <= room {
                    let choice = Choice {
                        shape: Shape::PlateauAndLinearRise,
                        time_constant,
                        outgassing: *added,
                        mass: cell.mass * prior::WITH_LEAK as f64 * likely,
                    };
                    noise.try_out(trials, choice, noise.rise(*added, &settling));
                }
            }
        }
    }
}

/// Rises that level off, the time constants the closer the narrower the likely ones are.
fn plateaus(record: &Record, noises: &[Noise]) -> Vec<Trial> {
    let mut cells = prior::time_constants();
    let mut trials = Vec::new();
    for round in 0..=REFINEMENTS {
        for cell in cells.iter_mut().filter(|cell| !cell.is_tried) {
            cell.is_tried = true;
            let choice = Choice {
                shape: Shape::Plateau,
                time_constant: cell.middle(),
                outgassing: 0.0,
                mass: cell.mass,
            };
            let settled = settled(record, choice.time_constant);
            for noise in noises {
                let line = noise.plateau(&noise.settling(record, &settled));
                noise.try_out(&mut trials, choice, line);
            }
        }
        let Some(around) = narrow_peak(&trials).filter(|_| round < REFINEMENTS) else {
            break;
        };
        let (from, to) = prior::divide(&mut cells, around);
        trials.retain(|trial| trial.time_constant < from || trial.time_constant >= to);
    }
    trials
}

/// How often the time constants around the best may be divided further.
const REFINEMENTS: usize = 3;
/// Share of one time constant from which on those around it are divided further.
const NARROW: f64 = 0.25;

/// `1 − exp(−t/τ)` at each point.
fn settled(record: &Record, constant: f64) -> Vec<f64> {
    let mut settled = Vec::with_capacity(record.points.len());
    for point in &record.points {
        settled.push(settled_after(point.time, constant));
    }
    settled
}

/// The time constant that takes so much of the likelihood that the truth may lie between it and the next.
fn narrow_peak(trials: &[Trial]) -> Option<f64> {
    let mut best = trials.first()?;
    for trial in trials {
        if trial.log_likelihood > best.log_likelihood {
            best = trial;
        }
    }
    let (mut own, mut all) = (0.0, 0.0);
    for trial in trials {
        let weight = libm::exp(trial.log_likelihood - best.log_likelihood);
        all += weight;
        if (trial.time_constant - best.time_constant).abs() <= 0.0 {
            own += weight;
        }
    }
    (own > NARROW * all).then_some(best.time_constant)
}
