//! Which readings do not count towards a leak, and why.

use serde::Serialize;

use super::instruments::Instruments;
use super::line::{Line, Split, Spot, excess_scatter, median};
use super::loss::LONGEST_SETTLING;
use super::points::{Point, points};
use super::readings::HoldReading;
use crate::quantity::choice;

choice! {
    /// Why a reading is left out.
    LeftOutReason {
        /// Off on its own, while those before and after agree: misread, or the gauge was knocked.
        Stray = "stray",
        /// The temperature changes so fast that the nitrogen cannot be at what the thermometer shows.
        TemperatureChanging = "temperature-changing",
        /// Early, while the nitrogen was still settling to the tube's temperature after filling.
        Settling = "settling",
        /// Before a sudden change: gas was let out, or added, at one moment.
        BeforeStep = "before-step",
        /// After a sudden change too near the end to follow what comes of it.
        AfterStep = "after-step",
    }
}

/// A reading that is left out.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct LeftOut {
    /// Its place in `readings`, counted from 0 as in the field of a problem.
    pub place: usize,
    /// Why.
    pub reason: LeftOutReason,
}

/// How many standard deviations off both its neighbours a reading is a stray.
const STRAY: f64 = 6.0;
/// Fewest readings among which a stray shows.
const FEWEST_FOR_STRAYS: usize = 5;
/// Lag behind the tube beyond which a point is left out, K.
const LARGEST_LAG: f64 = 3.0;
/// How much better a line with a step must fit than one without, in weighted squares: 3.5 standard deviations.
const STEP_GAIN: f64 = 12.25;
/// Fewest points that must stay on the side that is kept.
const FEWEST_KEPT: usize = 3;
/// Largest part of the pressure that settling, or gas let out at one moment, can make: more lost is a loss.
pub(super) const LARGEST_STEP: f64 = 0.2;
/// Part of the hold within which the gas may settle, if that is longer than three times the longest settling.
const EARLY: f64 = 1.0 / 3.0;
/// Part of a sudden change that comes between two neighbours.
const MOSTLY: f64 = 0.6;
/// Most changes that are looked for.
const MOST_STEPS: usize = 8;

/// The points, those left out marked; and whether gas was lost so near the end that nobody knows how it goes on.
pub(super) struct Sorted {
    pub points: Vec<Point>,
    pub fell_at_end: bool,
}

impl Sorted {
    /// Sorts readings with their compensated pressures.
    pub fn of(readings: &[HoldReading], pressures: &[f64], instruments: &Instruments) -> Self {
        let strays = strays(readings, pressures, instruments);
        let mut points = points(readings, pressures, &strays, instruments);
        for point in &mut points {
            if point.left_out.is_none() && point.lag > LARGEST_LAG {
                point.left_out = Some(LeftOutReason::TemperatureChanging);
            }
        }
        let mut sorted = Self {
            points,
            fell_at_end: false,
        };
        for _ in 0..MOST_STEPS {
            if !sorted.leave_out_a_side() {
                break;
            }
        }
        sorted
    }

    /// The points that count.
    pub fn used(&self) -> impl Iterator<Item = &Point> {
        self.points.iter().filter(|point| point.left_out.is_none())
    }

    pub fn spots(&self) -> Vec<Spot> {
        self.used().map(Point::spot).collect()
    }

    /// The readings left out, in their order.
    pub fn left_out(&self) -> Vec<LeftOut> {
        let mut strays = Vec::new();
        let mut left_out = Vec::new();
        for point in &self.points {
            let Some(reason) = point.left_out else {
                continue;
            };
            if reason == LeftOutReason::Stray {
                strays.push(point.places.0);
            }
            let (first, last) = point.places;
            left_out.extend((first..=last).map(|place| LeftOut { place, reason }));
        }
        // A stray lies amid the places of the point around it, which may count.
        left_out.retain(|out| {
            out.reason == LeftOutReason::Stray || strays.binary_search(&out.place).is_err()
        });
        left_out.sort_by_key(|out| out.place);
        left_out
    }

    /// Whether a change comes so early in the whole hold that nitrogen may still have been settling.
    fn is_early(&self, spots: &[Spot], split: &Split) -> bool {
        let (Some(start), Some(end)) = (self.points.first(), self.points.last()) else {
            return false;
        };
        let early = (EARLY * (end.time - start.time)).max(3.0 * LONGEST_SETTLING);
        let kept = spots.get(split.at);
        kept.is_some_and(|kept| kept.time - start.time <= early)
    }

    /// Finds the sudden change that explains most, if one does beyond chance, and leaves out one side of it.
    fn leave_out_a_side(&mut self) -> bool {
        let spots = self.spots();
        let (Some(first), Some(line)) = (spots.first(), Line::through(&spots)) else {
            return false;
        };
        let found = Split::all(&spots)
            .filter(|split| split.at.max(spots.len() - split.at) >= FEWEST_KEPT)
            .filter(|split| is_sudden(&spots, split) || self.is_early(&spots, split))
            .min_by(|one, other| {
                let left = |split: &Split| split.left_by_line_and_step;
                left(one).total_cmp(&left(other))
            });
        let Some(split) = found else {
            return false;
        };
        let gain = line.left - split.left_by_line_and_step;
        let too_large = split.offset.abs() > LARGEST_STEP * first.pressure;
        if too_large || gain < STEP_GAIN * excess_scatter(&spots) {
            return false;
        }
        let keeps_late = keeps_late(&spots, split.at);
        self.fell_at_end |= !keeps_late;
        // A first reading alone does not show which of the two it was.
        let reason = match (keeps_late, split.at > 1 && is_sudden(&spots, &split)) {
            (false, _) => LeftOutReason::AfterStep,
            (true, true) => LeftOutReason::BeforeStep,
            (true, false) => LeftOutReason::Settling,
        };
        let used = self.points.iter_mut().filter(|p| p.left_out.is_none());
        for (index, point) in used.enumerate() {
            if (index < split.at) == keeps_late {
                point.left_out = Some(reason);
            }
        }
        true
    }
}

/// Whether the readings after a change tell more than those before: they are what is there now, so
/// they need not be as many, unless they are too few or over too short a time and show nothing new.
fn keeps_late(spots: &[Spot], at: usize) -> bool {
    let Some((early, late)) = spots.split_at_checked(at) else {
        return false;
    };
    let span = |side: &[Spot]| match (side.first(), side.last()) {
        (Some(first), Some(last)) => last.time - first.time,
        _ => 0.0,
    };
    if late.len() < FEWEST_KEPT {
        return false;
    }
    early.len() < FEWEST_KEPT || span(late) >= 0.5 * span(early) || falls(late) && !falls(early)
}

/// Whether spots fall beyond chance.
fn falls(spots: &[Spot]) -> bool {
    Line::through(spots).is_some_and(|line| line.slope * line.leverage.sqrt() < -3.0)
}

/// Whether most of a change comes between two neighbours, and not little by little.
fn is_sudden(spots: &[Spot], split: &Split) -> bool {
    let pressure = |index: usize| spots.get(index).map(|spot| spot.pressure);
    let (Some(before), Some(after)) = (pressure(split.at.wrapping_sub(1)), pressure(split.at))
    else {
        return false;
    };
    (before - after) / split.offset > MOSTLY
}

/// Places of readings that stand alone between neighbours that agree. The first and the last have none.
fn strays(readings: &[HoldReading], pressures: &[f64], instruments: &Instruments) -> Vec<usize> {
    if pressures.len() < FEWEST_FOR_STRAYS {
        return Vec::new();
    }
    let mut steps: Vec<f64> = pressures
        .windows(2)
        .filter_map(|pair| match pair {
            [one, next] => Some((next - one).abs()),
            _ => None,
        })
        .collect();
    // The median step of normal scatter is 0.954 of its standard deviation.
    let usual = median(&mut steps) / 0.954;
    let is_stray = |place: usize, near: &[f64]| {
        let ([before, own, after], Some(reading)) = (near, readings.get(place)) else {
            return false;
        };
        let per_kelvin = reading.absolute().in_pascals() / reading.temperature.in_kelvins();
        let expected = (instruments.scatter(per_kelvin) + instruments.rounding()).sqrt();
        let (off, other) = (own - before, own - after);
        off * other > 0.0 && off.abs().min(other.abs()) > STRAY * usual.max(expected)
    };
    let neighbours = pressures.windows(3).zip(1..);
    neighbours
        .filter(|(near, place)| is_stray(*place, near))
        .map(|(_, place)| place)
        .collect()
}
