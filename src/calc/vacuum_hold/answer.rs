//! What the fits come to.

use serde::Serialize;

use super::finding::{
    FEWEST_MOMENTS, Finding, LEAK_UNDER_DRY, NEEDED, VacuumReason, VacuumVerdict,
};
use super::law::{Fit, fit};
use super::pass_rule::PassCheck;
use super::posterior::{Posterior, Which};
use super::{Cause, Hold, SATURATION_ERROR, Shape};
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
    pub verdict: VacuumVerdict,
    /// Why it cannot be told.
    pub reason: Option<VacuumReason>,
    /// Probability of the likeliest cause, which is the verdict if there is one.
    pub probability: Ratio,
    /// Probability that a verdict needs.
    pub needed: Ratio,
    /// By how much the verdict's conditions are met, the nearest to failing; negative if one is not.
    pub margin: Ratio,
    /// Most probability of a leak that the verdict dry and tight bears beside it.
    pub leak_allowed: Ratio,
    /// Probability of each cause; absent where no law is known to hold.
    pub likelihoods: Option<Likelihoods>,
    /// The three laws, each fitted by least squares; without those that only negative pressures would fit, none from fewer than four readings.
    pub fits: Vec<Fit>,
    /// The plateau that the rise levels off at, if that is as likely as not.
    pub plateau: Option<Level>,
    /// The even rise, if it is a leak or as likely as not.
    pub leak: Option<LeakFound>,
    /// Level at the end of the readings: by the laws fitted, as read if there is no verdict for want of readings or of a law.
    pub latest: Level,
    /// What the gauge will show 10, 30 and 60 minutes after the first reading, whatever the cause; none where no law is known to hold.
    pub expected: Vec<ExpectedReading>,
    /// The same for a plot.
    pub curve: Vec<ExpectedReading>,
    /// The readings beside that curve: as read, or means over equal spans of time if there are more than 96; none without `curvePoints`.
    pub plotted: Vec<GaugeReading>,
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

/// A reading, or the mean of several near each other.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct GaugeReading {
    /// Time after the first reading.
    pub time: Time,
    /// What the gauge showed.
    pub pressure: AbsolutePressure,
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
        let plateau = posterior.plateau().filter(|_| finding.has_law());
        let leak = self.leak(&posterior, &finding);
        let mut fits = Vec::with_capacity(Shape::ALL.len());
        if self.record.moments >= FEWEST_MOMENTS {
            for shape in Shape::ALL {
                fits.extend(fit(&posterior, *shape, self.record.points.len()));
            }
        }
        VacuumHoldAnswer {
            verdict: finding.verdict,
            reason: finding.reason,
            probability: Ratio::of_one(finding.probability),
            needed: Ratio::of_one(NEEDED),
            margin: Ratio::of_one(finding.margin),
            leak_allowed: Ratio::of_one(LEAK_UNDER_DRY),
            likelihoods: finding.has_law().then(|| likelihoods(&posterior)),
            working: self.working(&finding, &fits, plateau.as_ref(), leak.as_ref()),
            fits,
            plateau,
            leak,
            latest: Level::of(latest),
            expected: expected(&posterior, &finding, &EXPECTED_AT),
            curve: expected(&posterior, &finding, &self.curve_times()),
            plotted: self.plotted(),
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

    /// Times of the curve, s, evenly apart.
    fn curve_times(&self) -> Vec<f64> {
        let last = f64::from(self.curve_points.saturating_sub(1).max(1));
        let times = (0..self.curve_points).map(|place| self.curve_until * f64::from(place) / last);
        times.collect()
    }

    fn plotted(&self) -> Vec<GaugeReading> {
        let points = self.record.points.iter().filter(|_| self.curve_points > 0);
        let plotted = points.map(|point| GaugeReading {
            time: Time::seconds(point.time),
            pressure: AbsolutePressure::pascals(point.pressure),
        });
        plotted.collect()
    }

    fn leak(&self, posterior: &Posterior, finding: &Finding) -> Option<LeakFound> {
        let leaks = Which::Of(Cause::Leak);
        let is_likely = finding.verdict == VacuumVerdict::Leak
            || posterior.probability(leaks) >= AS_LIKELY_AS_NOT;
        if !finding.has_law() || !is_likely {
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

fn expected(posterior: &Posterior, finding: &Finding, times: &[f64]) -> Vec<ExpectedReading> {
    let mut readings = Vec::with_capacity(times.len());
    for time in times.iter().filter(|_| finding.has_law()) {
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
