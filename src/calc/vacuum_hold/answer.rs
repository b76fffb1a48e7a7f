//! What the fits come to.

use serde::Serialize;

use super::finding::{FEWEST_MOMENTS, Finding, HoldReason, HoldVerdict};
use super::fit::Trial;
use super::pass_rule::PassCheck;
use super::posterior::{Posterior, Spread, Which, settled_after};
use super::{Cause, Hold, MICRON, SATURATION_ERROR, Shape};
use crate::calc::working::Working;
use crate::physics::water::{Surface, saturation_temperature, surface};
use crate::quantity::{
    AbsolutePressure, LeakRate, PressureDifference, PressureRate, Ratio, Temperature, Time,
};

/// What [`vacuum_hold`](super::vacuum_hold) finds. Uncertainties are two standard uncertainties.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct VacuumHoldAnswer {
    /// Dry and tight, moisture, leak, cannot tell, or open for want of readings.
    pub verdict: HoldVerdict,
    /// Why it cannot be told.
    pub reason: Option<HoldReason>,
    /// Probability of the likeliest cause, which is the verdict if there is one.
    pub probability: Ratio,
    /// By how much this exceeds what a verdict needs; negative if it falls short.
    pub margin: Ratio,
    /// Probability of each cause.
    pub likelihoods: Likelihoods,
    /// The three laws, each fitted by least squares; without those that only negative pressures would fit, none from fewer than four readings.
    pub fits: Vec<Fit>,
    /// The plateau that the rise levels off at, if it does.
    pub plateau: Option<Level>,
    /// The even rise, if it is a leak or as likely as not.
    pub leak: Option<LeakFound>,
    /// Level at the end of the readings: by the laws fitted, as read if there is no verdict for want of readings or of a law.
    pub latest: Level,
    /// What the gauge will show 10, 30 and 60 minutes after the first reading, whatever the cause.
    pub expected: Vec<ExpectedReading>,
    /// The same for a plot.
    pub curve: Vec<ExpectedReading>,
    /// Whether the hold passes by its rule.
    pub pass: PassCheck,
    /// How much longer to hold before the cause can be told; absent if it is told, or if time will not tell.
    pub hold_longer: Option<Time>,
    /// How long the readings lasted.
    pub held: Time,
    /// Ambient temperature taken.
    pub ambient_temperature: Temperature,
    /// Whether it was assumed.
    pub ambient_assumed: bool,
    /// Pressure of water at this temperature, which moisture cannot exceed.
    pub saturation_pressure: AbsolutePressure,
    /// Highest level that counted as dry.
    pub dry_pressure: AbsolutePressure,
    /// Scatter of the readings, one standard deviation, as a part of their level.
    pub gauge_noise: Option<Ratio>,
    /// Step of the gauge taken; zero if it shows none.
    pub gauge_resolution: PressureDifference,
    /// The working.
    pub working: Working,
}

/// Probability of each cause, given the readings.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Likelihoods {
    /// Stays or levels off low.
    pub dry_and_tight: Ratio,
    /// Levels off high.
    pub moisture: Ratio,
    /// Rises evenly, with or without moisture.
    pub leak: Ratio,
    /// Something else: falls, stays even but high, or rises too slowly for a leak and too fast for a tight system.
    pub other: Ratio,
}

/// A law fitted by least squares to the readings.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Fit {
    /// The law.
    pub law: Shape,
    /// Probability of this law, all causes together.
    pub probability: Ratio,
    /// Pressure at the first reading.
    pub start: AbsolutePressure,
    /// Pressure that it levels off at; with a leak, that which outgassing adds to the start.
    pub plateau: Option<AbsolutePressure>,
    /// How far this may be wrong.
    pub plateau_uncertainty: Option<PressureDifference>,
    /// Time constant of the levelling off.
    pub time_constant: Option<Time>,
    /// How far this may be wrong.
    pub time_constant_uncertainty: Option<Time>,
    /// Even rise.
    pub rate: Option<PressureRate>,
    /// How far this may be wrong.
    pub rate_uncertainty: Option<PressureRate>,
    /// Mean deviation of the readings from it (root mean square), each over its own uncertainty; near 1 for a law that fits.
    pub deviation: Ratio,
}

impl Fit {
    /// Pressure of the law at a time after the first reading, s.
    pub(super) fn at(&self, time: f64) -> AbsolutePressure {
        let start = self.start.in_pascals();
        let constant = self.time_constant.map_or(0.0, Time::in_seconds);
        let settled = settled_after(time, constant);
        let levelled = self.plateau.map_or(0.0, |p| p.in_pascals() - start);
        let rate = self.rate.map_or(0.0, PressureRate::in_pascals_per_second);
        AbsolutePressure::pascals(start + levelled * settled + rate * time)
    }
}

/// A level, and what water it would take to hold it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Level {
    /// The pressure.
    pub pressure: AbsolutePressure,
    /// How far it may be wrong.
    pub uncertainty: PressureDifference,
    /// Temperature at which water boils or ice turns to vapour at this pressure; absent under a quarter micron.
    pub water_temperature: Option<Temperature>,
    /// Ice or liquid water.
    pub surface: Surface,
}

/// A leak.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct LeakFound {
    /// How fast the pressure rises.
    pub rate: PressureRate,
    /// How far this may be wrong.
    pub uncertainty: PressureRate,
    /// Air that comes in; absent without the volume.
    pub gas: Option<LeakRate>,
}

/// A reading to expect.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct ExpectedReading {
    /// Time after the first reading.
    pub time: Time,
    /// What the gauge would show.
    pub pressure: AbsolutePressure,
    /// How far this may be wrong.
    pub uncertainty: PressureDifference,
}

/// Standard uncertainties in an uncertainty.
pub(super) const COVERAGE: f64 = 2.0;

/// Times of the readings to expect, s.
const EXPECTED_AT: [f64; 3] = [600.0, 1800.0, 3600.0];

impl Level {
    fn of((pascals, spread): (f64, f64)) -> Self {
        let pressure = AbsolutePressure::pascals(pascals);
        Self {
            pressure,
            uncertainty: PressureDifference::pascals(COVERAGE * spread),
            water_temperature: saturation_temperature(pressure).ok(),
            surface: surface(pressure),
        }
    }
}

impl Hold {
    /// Fits, weighs, and says what comes of it.
    pub fn answer(&self) -> VacuumHoldAnswer {
        let highest = SATURATION_ERROR * self.saturation.in_pascals();
        let posterior = Posterior::of(&self.record, &self.noises, self.dry_limit, highest);
        let finding = Finding::of(self, &posterior);
        let latest = self.level(&posterior, &finding, self.record.held);
        let plateau = posterior.plateau();
        let leak = self.leak(&posterior, &finding);
        let mut fits = Vec::with_capacity(Shape::ALL.len());
        if self.record.moments >= FEWEST_MOMENTS {
            for shape in Shape::ALL {
                fits.extend(fit(&posterior, *shape, self.record.points.len()));
            }
        }
        let last = f64::from(self.curve_points.saturating_sub(1).max(1));
        let mut times = Vec::with_capacity(self.curve_points.into());
        for place in 0..self.curve_points {
            times.push(self.curve_until * f64::from(place) / last);
        }
        VacuumHoldAnswer {
            verdict: finding.verdict,
            reason: finding.reason,
            probability: Ratio::of_one(finding.probability),
            margin: Ratio::of_one(finding.margin),
            likelihoods: likelihoods(&posterior),
            working: self.working(&finding, &fits, plateau.as_ref(), leak.as_ref()),
            fits,
            plateau,
            leak,
            latest: Level::of(latest),
            expected: expected(&posterior, &EXPECTED_AT),
            curve: expected(&posterior, &times),
            pass: self.pass_check(&posterior, &finding),
            hold_longer: finding.hold_longer.map(Time::seconds),
            held: Time::seconds(self.record.held),
            ambient_temperature: self.ambient,
            ambient_assumed: self.ambient_assumed,
            saturation_pressure: self.saturation,
            dry_pressure: AbsolutePressure::pascals(self.dry_limit),
            gauge_noise: posterior.noise().map(Ratio::of_one),
            gauge_resolution: PressureDifference::pascals(self.record.resolution),
        }
    }

    fn leak(&self, posterior: &Posterior, finding: &Finding) -> Option<LeakFound> {
        let leaks = Which::Of(Cause::Leak);
        if finding.verdict != HoldVerdict::Leak && posterior.probability(leaks) < AS_LIKELY_AS_NOT {
            return None;
        }
        let (rate, spread) = posterior.free(leaks)?;
        let gas = |volume: crate::quantity::Volume| rate * volume.in_cubic_metres();
        Some(LeakFound {
            rate: PressureRate::pascals_per_second(rate),
            uncertainty: PressureRate::pascals_per_second(COVERAGE * spread),
            gas: (self.volume).map(|v| LeakRate::pascal_cubic_metres_per_second(gas(v))),
        })
    }
}

/// Probability from which a cause's figures are given.
const AS_LIKELY_AS_NOT: f64 = 0.5;

impl Posterior {
    /// The plateau, if levelling off is as likely as not.
    fn plateau(&self) -> Option<Level> {
        let levels = Which::By(Shape::Plateau);
        if self.probability(levels) < AS_LIKELY_AS_NOT {
            return None;
        }
        self.free(levels).map(Level::of)
    }
}

fn expected(posterior: &Posterior, times: &[f64]) -> Vec<ExpectedReading> {
    let mut readings = Vec::with_capacity(times.len());
    for time in times {
        if let Some((pressure, spread)) = posterior.expected(*time, Which::All) {
            readings.push(ExpectedReading {
                time: Time::seconds(*time),
                pressure: AbsolutePressure::pascals(pressure.max(0.0)),
                uncertainty: PressureDifference::pascals(COVERAGE * spread),
            });
        }
    }
    readings
}

fn likelihoods(posterior: &Posterior) -> Likelihoods {
    let of = |cause: Cause| posterior.probability(Which::Of(cause));
    let other = of(Cause::SlowRise) + of(Cause::Falling) + of(Cause::HighLevel);
    Likelihoods {
        dry_and_tight: Ratio::of_one(of(Cause::DryAndTight)),
        moisture: Ratio::of_one(of(Cause::Moisture)),
        leak: Ratio::of_one(of(Cause::Leak)),
        other: Ratio::of_one(other),
    }
}

/// The least-squares fit of a law over its trials, each as likely as the readings make it.
fn fit(posterior: &Posterior, shape: Shape, points: usize) -> Option<Fit> {
    let mut best: Option<&Trial> = None;
    for trial in &posterior.trials {
        let is_better = best.is_none_or(|best| trial.log_readings > best.log_readings);
        if trial.shape == shape && is_better {
            best = Some(trial);
        }
    }
    let best = best?;
    let (mut start, mut free) = (Spread::default(), Spread::default());
    let (mut constant, mut added) = (Spread::default(), Spread::default());
    for trial in &posterior.trials {
        if trial.shape == shape {
            let weight = libm::exp(trial.log_readings - best.log_readings);
            let line = &trial.line;
            free.add(weight, (line.free, line.spread * line.spread));
            start.add(weight, (line.start + line.start_slope * line.free, 0.0));
            constant.add(weight, (trial.time_constant, 0.0));
            added.add(weight, (trial.outgassing, 0.0));
        }
    }
    let (start, _) = start.mean()?;
    let (free, spread) = free.mean()?;
    let (constant, constant_spread) = constant.mean()?;
    let (added, added_spread) = added.mean()?;
    let (plateau, plateau_spread, rises) = match shape {
        Shape::LinearRise => (None, None, true),
        Shape::Plateau => (Some(free), Some(spread), false),
        Shape::PlateauAndLinearRise => (Some(start + added), Some(added_spread), true),
    };
    let levels = plateau.is_some();
    if start < 0.0 || plateau.is_some_and(|plateau| plateau < 0.0) {
        return None;
    }
    Some(Fit {
        law: shape,
        probability: Ratio::of_one(posterior.probability(Which::By(shape))),
        start: AbsolutePressure::pascals(start),
        plateau: plateau.map(AbsolutePressure::pascals),
        plateau_uncertainty: plateau_spread.map(|s| PressureDifference::pascals(COVERAGE * s)),
        time_constant: levels.then(|| Time::seconds(constant)),
        time_constant_uncertainty: levels.then(|| Time::seconds(COVERAGE * constant_spread)),
        rate: rises.then(|| PressureRate::pascals_per_second(free)),
        rate_uncertainty: rises.then(|| PressureRate::pascals_per_second(COVERAGE * spread)),
        deviation: Ratio::of_one((best.line.misfit / points as f64).sqrt()),
    })
}

/// Level under which a vacuum gauge shows nothing, Pa.
pub(super) const LEAST_LEVEL: f64 = MICRON;
