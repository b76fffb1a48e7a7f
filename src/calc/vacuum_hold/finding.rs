//! The verdict, and how much longer to hold where there is none.

use super::posterior::{Posterior, Which};
use super::{Cause, Hold, MICRON};
use crate::quantity::choice;

choice! {
    /// What the hold says of the system.
    VacuumVerdict {
        /// Neither moisture nor a leak shows.
        DryAndTight = "dry-and-tight",
        /// The pressure levels off too high: water, or gas from oil and walls.
        Moisture = "moisture",
        /// The pressure rises evenly: air comes in, whether or not there is moisture besides.
        Leak = "leak",
        /// The readings do not decide.
        CannotTell = "cannot-tell",
        /// Too few readings, or too short a time.
        Open = "open",
    }
}

choice! {
    /// Why there is no verdict.
    VacuumReason {
        /// Fewer than four readings at different times, or less than two minutes.
        TooFewReadings = "too-few-readings",
        /// Two causes explain the readings about as well.
        CausesAlike = "causes-alike",
        /// No law fits: something was changed during the hold, or the gauge is at fault.
        FitsNoLaw = "fits-no-law",
        /// The readings fall: the pump still draws, or the gauge or the system cools.
        ReadingsFall = "readings-fall",
        /// The level is even but too high: the pump-down was not finished.
        LevelTooHigh = "level-too-high",
        /// The rise is faster than a tight system creeps and slower than what is called a leak.
        SlowRise = "slow-rise",
        /// The gauge shows nothing.
        GaugeShowsNothing = "gauge-shows-nothing",
    }
}

// The thresholds below are our own choice, no source.

/// Probability that a verdict needs: three to one. Less would call what is a guess a verdict, more would
/// leave too many holds of a quarter of an hour open; a wrong word costs a look at a joint, or some more pumping.
pub(super) const NEEDED: f64 = 0.75;
/// Most probability of a leak beside the verdict dry and tight: to call a leak tight is the costlier
/// mistake, since refrigerant goes in upon it.
pub(super) const LEAK_UNDER_DRY: f64 = 0.03;
/// Fewest readings at different times for a verdict: one more than a law has unknowns.
pub(super) const FEWEST_MOMENTS: usize = 4;
/// Least time for a verdict, s: as long as the shortest usual time constant of moisture.
const SHORTEST_HOLD: f64 = 120.0;
/// Usual hold, s: common practice, no source. Of simulated holds of this length nine in ten get a verdict.
const USUAL_HOLD: f64 = 900.0;
/// Mean squared deviation of the readings above which no law fits: twice what the gauge's own scatter explains.
const WORST_MISFIT: f64 = 4.0;
/// Level under which a vacuum gauge shows nothing, Pa.
const LEAST_LEVEL: f64 = MICRON;
/// Unknowns of a law.
const UNKNOWNS: f64 = 3.0;

/// Times to hold on that are tried, s: steps in which people wait.
const LONGER: [f64; 8] = [300.0, 600.0, 900.0, 1800.0, 2700.0, 3600.0, 5400.0, 7200.0];
/// Standard uncertainties that two causes must be apart to be told from each other: chance seldom brings about three.
const APART: f64 = 3.0;

/// The verdict with what it rests on.
pub(super) struct Finding {
    pub verdict: VacuumVerdict,
    pub reason: Option<VacuumReason>,
    /// Of the likeliest cause.
    pub probability: f64,
    pub margin: f64,
    /// s.
    pub hold_longer: Option<f64>,
}

impl Finding {
    pub fn of(hold: &Hold, posterior: &Posterior) -> Self {
        let causes = ranked(posterior);
        let [(likeliest, probability), ..] = causes;
        let leak = posterior.probability(Which::Of(Cause::Leak));
        let decided = verdict_of(likeliest);
        // The margin is that of the condition which is the nearer to failing.
        let margin = match decided {
            Ok(VacuumVerdict::DryAndTight) => (probability - NEEDED).min(LEAK_UNDER_DRY - leak),
            _ => probability - NEEDED,
        };
        let (verdict, reason) = match (obstacle(hold, posterior), decided) {
            (Some(VacuumReason::TooFewReadings), _) => {
                (VacuumVerdict::Open, Some(VacuumReason::TooFewReadings))
            }
            (Some(reason), _) => (VacuumVerdict::CannotTell, Some(reason)),
            (None, Ok(verdict)) if margin >= 0.0 => (verdict, None),
            (None, Err(reason)) if margin >= 0.0 => (VacuumVerdict::CannotTell, Some(reason)),
            _ => (VacuumVerdict::CannotTell, Some(VacuumReason::CausesAlike)),
        };
        let to_usual = USUAL_HOLD - hold.record.held;
        let hold_longer = match reason {
            Some(VacuumReason::TooFewReadings) => Some(to_usual.max(SHORTEST_HOLD)),
            Some(VacuumReason::CausesAlike) if to_usual >= SHORTEST_HOLD => Some(to_usual),
            Some(VacuumReason::CausesAlike) => longer(hold, posterior, causes),
            _ => None,
        };
        Self {
            verdict,
            reason,
            probability,
            margin,
            hold_longer,
        }
    }
}

impl Finding {
    /// Whether a law is known to hold, so that figures may come from it.
    pub fn has_law(&self) -> bool {
        use VacuumReason::{FitsNoLaw, GaugeShowsNothing, TooFewReadings};
        !matches!(
            self.reason,
            Some(TooFewReadings | FitsNoLaw | GaugeShowsNothing)
        )
    }
}

impl Hold {
    /// Level at a time of the hold and its standard uncertainty, Pa: by the laws, or as read where none is known to hold.
    pub fn level(&self, posterior: &Posterior, finding: &Finding, time: f64) -> (f64, f64) {
        let by_laws = posterior
            .expected(time, Which::All)
            .filter(|_| finding.has_law());
        by_laws.unwrap_or_else(|| (self.record.near(time), 0.0))
    }
}

/// The two likeliest causes, the likeliest first, with their probabilities.
fn ranked(posterior: &Posterior) -> [(Cause, f64); 2] {
    let mut best = [(Cause::Leak, 0.0); 2];
    for cause in [
        Cause::DryAndTight,
        Cause::Moisture,
        Cause::Leak,
        Cause::SlowRise,
        Cause::Falling,
        Cause::HighLevel,
    ] {
        let found = (cause, posterior.probability(Which::Of(cause)));
        let [first, second] = best;
        if found.1 > first.1 {
            best = [found, first];
        } else if found.1 > second.1 {
            best = [first, found];
        }
    }
    best
}

fn verdict_of(cause: Cause) -> Result<VacuumVerdict, VacuumReason> {
    match cause {
        Cause::DryAndTight => Ok(VacuumVerdict::DryAndTight),
        Cause::Moisture => Ok(VacuumVerdict::Moisture),
        Cause::Leak => Ok(VacuumVerdict::Leak),
        Cause::SlowRise => Err(VacuumReason::SlowRise),
        Cause::Falling => Err(VacuumReason::ReadingsFall),
        Cause::HighLevel => Err(VacuumReason::LevelTooHigh),
    }
}

/// What keeps the readings from being judged at all.
fn obstacle(hold: &Hold, posterior: &Posterior) -> Option<VacuumReason> {
    let record = &hold.record;
    if record.moments < FEWEST_MOMENTS || record.held < SHORTEST_HOLD {
        return Some(VacuumReason::TooFewReadings);
    }
    if record.points.iter().all(|point| point.level < LEAST_LEVEL) {
        return Some(VacuumReason::GaugeShowsNothing);
    }
    let mut misfit = f64::INFINITY;
    for trial in &posterior.trials {
        misfit = misfit.min(trial.line.misfit);
    }
    let free = (record.points.len() as f64 - UNKNOWNS).max(1.0);
    (misfit > WORST_MISFIT * free).then_some(VacuumReason::FitsNoLaw)
}

/// The first time after which the two likeliest causes lead one to expect different readings.
fn longer(hold: &Hold, posterior: &Posterior, causes: [(Cause, f64); 2]) -> Option<f64> {
    let [(first, _), (second, _)] = causes;
    let noise = hold.noises.last().copied().unwrap_or(0.0);
    for more in LONGER {
        let time = hold.record.held + more;
        let (one, spread) = posterior.expected(time, Which::Of(first))?;
        let (other, other_spread) = posterior.expected(time, Which::Of(second))?;
        let scatter = noise * one.min(other) + hold.record.resolution;
        let squares = spread * spread + other_spread * other_spread + scatter * scatter;
        if (one - other).abs() > APART * squares.sqrt() {
            return Some(more);
        }
    }
    None
}
