//! How fast the nitrogen is lost, how sure that is, and what the hold could see.

use super::instruments::{Instruments, squared};
use super::left_out::{LARGEST_STEP, Sorted};
use super::line::{Line, Split, Spot, excess_scatter};
use super::readings::HoldReading;
use crate::quantity::{PressureRate, Quantity, Time};

/// Standard deviations beyond which a loss is no chance.
pub(super) const BEYOND_CHANCE: f64 = 3.0;
/// Standard deviations of a loss that such a hold shows: beyond chance even where chance hides half of it.
pub(super) const SHOWN: f64 = 2.0 * BEYOND_CHANCE;
/// Fewest points among which a loss that goes on could be told from one that has ended.
const FEWEST_FOR_COURSE: usize = 4;
/// How much better a line must fit than a loss that has ended, in weighted squares.
const LINE_GAIN: f64 = 3.0;
/// How much of a line a loss that has ended leaves unexplained at best if many readings are evenly spread: a
/// step in the middle leaves a quarter.
const USUAL_REST: f64 = 0.25;
/// Least part that is reckoned with: below it the two cannot be told apart.
const LEAST_REST: f64 = 1e-3;
/// Longest time that nitrogen takes to settle to the tube after filling, s: a first-order decay. Common practice, no source.
pub(super) const LONGEST_SETTLING: f64 = 1200.0;
/// The same as a part of the hold, if that is longer.
const SETTLING_PART: f64 = 0.2;
/// How many times it is halved to find the decay that fits best.
const HALVINGS: i32 = 4;
/// Fewest points whose scatter shows whether neighbours have something in common.
const FEWEST_FOR_LIKENESS: usize = 8;
/// Most likeness of neighbours that is allowed for.
const MOST_LIKENESS: f64 = 0.8;

/// The loss that the points show, Pa and s; a gain is negative.
#[derive(Clone, Copy)]
pub(super) struct Loss {
    pub rate: f64,
    /// Standard uncertainty of the rate.
    pub uncertainty: f64,
    pub count: usize,
    pub duration: f64,
    /// Variance of the scatter over what the instruments explain, at least 1.
    pub scatter: f64,
    /// Whether a loss that has ended explains the readings as well.
    pub may_have_ended: bool,
    /// What of a line a loss that has ended leaves unexplained at best, as a part.
    rest: f64,
    /// Whether more is lost than any settling or venting explains.
    pub is_large: bool,
}

impl Loss {
    /// From what counts; `None` if that is fewer than two points in time.
    pub fn find(sorted: &Sorted, first: &HoldReading, instruments: &Instruments) -> Option<Self> {
        let spots = sorted.spots();
        let line = Line::through(&spots)?;
        let (start, end) = (spots.first()?, spots.last()?);
        let duration = end.time - start.time;
        let scatter = scatter(&spots, &line);
        let (mut own, mut warming, mut has_barometer) = (0.0, 0.0, true);
        for point in sorted.used() {
            let share = line.share(&point.spot());
            // Rounding and wandering are taken from end to end below, for neighbours have them in common.
            let in_common = instruments.rounding() + instruments.wander(point.per_kelvin());
            let variance = scatter * point.variance - in_common;
            own += squared(share) * variance;
            warming += share * point.temperature;
            has_barometer &= point.has_barometer;
        }
        let ends = instruments.between_ends(first, warming * duration, has_barometer);
        Some(Self {
            rate: -line.slope,
            uncertainty: (own + ends / squared(duration)).sqrt(),
            count: spots.len(),
            duration,
            scatter,
            may_have_ended: may_have_ended(&spots, &line),
            rest: rest_of_line(&spots, &line),
            is_large: start.pressure - end.pressure > LARGEST_STEP * start.pressure,
        })
    }

    /// The loss is at most this, beyond chance.
    pub fn upper_limit(&self) -> f64 {
        self.rate.max(0.0) + BEYOND_CHANCE * self.uncertainty
    }

    /// Standard uncertainties in the least rate that such a hold shows: more where a loss that has
    /// ended looks much like a line.
    pub fn shown(&self) -> f64 {
        SHOWN * (USUAL_REST / self.rest).max(1.0).sqrt()
    }

    /// The least rate that such a hold shows.
    pub fn least_detectable(&self) -> f64 {
        self.shown() * self.uncertainty
    }

    /// How long a hold with these readings must last to show a rate.
    pub fn hold_to_see(&self, rate: PressureRate) -> Time {
        Time::seconds(self.duration * self.least_detectable() / rate.si())
    }
}

/// Variance of the scatter about the line over what the variances say, at least 1, and more where
/// neighbours stray alike, for then they are worth fewer.
fn scatter(spots: &[Spot], line: &Line) -> f64 {
    let freedom = spots.len().saturating_sub(2);
    if freedom == 0 {
        return 1.0;
    }
    let excess = (line.left / freedom as f64).max(1.0);
    if spots.len() < FEWEST_FOR_LIKENESS {
        return excess;
    }
    let residual = |spot: &Spot| line.above(spot) / spot.variance.sqrt();
    let alike: f64 = spots
        .windows(2)
        .map(|pair| pair.iter().map(residual).product::<f64>())
        .sum();
    let chance = 1.0 / (spots.len() as f64).sqrt();
    let likeness = (alike / line.left.max(f64::MIN_POSITIVE) - chance).clamp(0.0, MOST_LIKENESS);
    excess * (1.0 + likeness) / (1.0 - likeness)
}

/// Whether a loss that has ended explains the spots as well as one that goes on.
fn may_have_ended(spots: &[Spot], line: &Line) -> bool {
    spots.len() >= FEWEST_FOR_COURSE
        && left_if_ended(spots) - line.left < LINE_GAIN * excess_scatter(spots)
}

/// Weighted squares that are left at best by a loss that has ended: at one moment, as when a hose
/// is connected, or dying away, as while nitrogen cools after filling.
fn left_if_ended(spots: &[Spot]) -> f64 {
    let (Some(start), Some(end)) = (spots.first(), spots.last()) else {
        return 0.0;
    };
    let longest = (SETTLING_PART * (end.time - start.time)).max(LONGEST_SETTLING);
    let decays = (0..=HALVINGS).filter_map(|halvings| {
        let settling = longest / f64::from(1 << halvings);
        let over_decay = |spot: &Spot| Spot {
            time: libm::exp((start.time - spot.time) / settling),
            ..*spot
        };
        let decaying: Vec<Spot> = spots.iter().map(over_decay).collect();
        Line::through(&decaying).map(|line| line.left)
    });
    let steps = Split::all(spots).map(|split| split.left_by_step);
    steps.chain(decays).fold(f64::INFINITY, f64::min)
}

/// What such a loss leaves unexplained of a line without scatter at the times of the spots, as a part.
fn rest_of_line(spots: &[Spot], line: &Line) -> f64 {
    if spots.len() < FEWEST_FOR_COURSE {
        return USUAL_REST;
    }
    let ramp: Vec<Spot> = spots
        .iter()
        .map(|spot| Spot {
            pressure: spot.time,
            ..*spot
        })
        .collect();
    (left_if_ended(&ramp) / line.leverage).max(LEAST_REST)
}

/// How long a hold of two readings must last to show a rate.
pub(super) fn two_readings_to_see(
    rate: PressureRate,
    first: &HoldReading,
    instruments: &Instruments,
) -> Time {
    let per_kelvin = first.absolute().si() / first.temperature.si();
    let variance = 2.0 * instruments.scatter(per_kelvin)
        + instruments.between_ends(first, 0.0, first.has_barometer);
    Time::seconds(SHOWN * variance.sqrt() / rate.si())
}
