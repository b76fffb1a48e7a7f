//! A straight line through points of known variance, and how it compares with a single step.

use super::instruments::squared;

/// Time, s; compensated pressure, Pa; variance of the pressure, Pa².
#[derive(Clone, Copy)]
pub(super) struct Spot {
    pub time: f64,
    pub pressure: f64,
    pub variance: f64,
}

/// Weighted sums over spots.
#[derive(Clone, Copy, Default)]
pub(super) struct Sums {
    weight: f64,
    time: f64,
    pressure: f64,
    time_time: f64,
    time_pressure: f64,
    pressure_pressure: f64,
}

impl Sums {
    /// Of spots, counted from `origin` so that no digits are lost.
    pub fn of(spots: &[Spot], origin: Spot) -> Self {
        let mut sums = Self::default();
        for spot in spots {
            let weight = 1.0 / spot.variance;
            let (time, pressure) = (spot.time - origin.time, spot.pressure - origin.pressure);
            sums.weight += weight;
            sums.time += weight * time;
            sums.pressure += weight * pressure;
            sums.time_time += weight * time * time;
            sums.time_pressure += weight * time * pressure;
            sums.pressure_pressure += weight * pressure * pressure;
        }
        sums
    }

    fn mean_time(&self) -> f64 {
        self.time / self.weight
    }

    fn mean_pressure(&self) -> f64 {
        self.pressure / self.weight
    }

    /// Spread of the times about their mean: what fixes a slope.
    pub fn leverage(&self) -> f64 {
        (self.time_time - squared(self.time) / self.weight).max(0.0)
    }

    fn joint(&self) -> f64 {
        self.time_pressure - self.time * self.pressure / self.weight
    }

    /// Weighted squares that are left about the mean.
    fn about_mean(&self) -> f64 {
        (self.pressure_pressure - squared(self.pressure) / self.weight).max(0.0)
    }
}

/// A line, Pa and s from the origin that it was counted from.
#[derive(Clone, Copy)]
pub(super) struct Line {
    pub slope: f64,
    pub mean_time: f64,
    pub mean_pressure: f64,
    pub leverage: f64,
    /// Weighted squares that are left.
    pub left: f64,
}

impl Line {
    /// The best line; `None` if all spots have one time.
    pub fn through(spots: &[Spot]) -> Option<Self> {
        let origin = *spots.first()?;
        let sums = Sums::of(spots, origin);
        let leverage = sums.leverage();
        if leverage <= 0.0 {
            return None;
        }
        let slope = sums.joint() / leverage;
        Some(Self {
            slope,
            mean_time: origin.time + sums.mean_time(),
            mean_pressure: origin.pressure + sums.mean_pressure(),
            leverage,
            left: (sums.about_mean() - slope * sums.joint()).max(0.0),
        })
    }

    /// Pressure above the line.
    pub fn above(&self, spot: &Spot) -> f64 {
        spot.pressure - self.mean_pressure - self.slope * (spot.time - self.mean_time)
    }

    /// What the slope takes from one spot: the slope is the sum of these times the pressures.
    pub fn share(&self, spot: &Spot) -> f64 {
        (spot.time - self.mean_time) / (spot.variance * self.leverage)
    }
}

/// The spots cut in two after the first `at`.
#[derive(Clone, Copy)]
pub(super) struct Split {
    pub at: usize,
    /// How far the early ones lie above the late ones' line, both with one slope, Pa.
    pub offset: f64,
    /// Weighted squares that are left by two levels with one slope.
    pub left_by_line_and_step: f64,
    /// Weighted squares that are left by two levels without a slope.
    pub left_by_step: f64,
}

impl Split {
    fn after(spots: &[Spot], at: usize) -> Option<Self> {
        let origin = *spots.first()?;
        let (early, late) = spots.split_at_checked(at)?;
        let (early, late) = (Sums::of(early, origin), Sums::of(late, origin));
        let leverage = early.leverage() + late.leverage();
        if leverage <= 0.0 {
            return None;
        }
        let joint = early.joint() + late.joint();
        let slope = joint / leverage;
        let left_by_step = early.about_mean() + late.about_mean();
        let apart = early.mean_time() - late.mean_time();
        Some(Self {
            at,
            offset: early.mean_pressure() - late.mean_pressure() - slope * apart,
            left_by_line_and_step: (left_by_step - slope * joint).max(0.0),
            left_by_step,
        })
    }

    /// Every way to cut the spots in two.
    pub fn all(spots: &[Spot]) -> impl Iterator<Item = Self> {
        (1..spots.len()).filter_map(|at| Self::after(spots, at))
    }
}

/// How much larger the scatter of spots about a line with one step is than their variances say, as a
/// factor of the variance, at least 1. Of two estimates the smaller: one that a further step raises,
/// and one that a slope raises.
pub(super) fn excess_scatter(spots: &[Spot]) -> f64 {
    let best = Split::all(spots).map(|split| split.left_by_line_and_step);
    let best = best.fold(f64::INFINITY, f64::min);
    let freedom = spots.len().saturating_sub(3).max(1) as f64;
    let mut steps: Vec<f64> = spots
        .windows(2)
        .filter_map(|pair| match pair {
            [one, next] => {
                Some(squared(next.pressure - one.pressure) / (one.variance + next.variance))
            }
            _ => None,
        })
        .collect();
    // Median of a squared normal deviate.
    let from_steps = median(&mut steps) / 0.4549;
    (best / freedom).min(from_steps).max(1.0)
}

/// The middle one, the lower of two; 0 of none.
pub(super) fn median(numbers: &mut [f64]) -> f64 {
    if numbers.is_empty() {
        return 0.0;
    }
    let middle = (numbers.len() - 1) / 2;
    *numbers.select_nth_unstable_by(middle, f64::total_cmp).1
}
