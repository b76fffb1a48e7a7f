//! A law fitted by least squares: the mean over its trials.

use serde::Serialize;

use super::Shape;
use super::answer::COVERAGE;
use super::fit::Trial;
use super::posterior::{Posterior, Spread, Which, settled_after};
use crate::quantity::{AbsolutePressure, PressureDifference, PressureRate, Ratio, Time};

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

/// The least-squares fit of a law over its trials, each as likely as the readings make it.
pub(super) fn fit(posterior: &Posterior, shape: Shape, points: usize) -> Option<Fit> {
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
