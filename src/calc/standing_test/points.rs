//! The points of a hold: each reading, or many gathered over a slice of time, with its pressure brought to the
//! temperature of the first and the variance of that.

use super::instruments::{Instruments, squared};
use super::left_out::LeftOutReason;
use super::line::Spot;
use super::readings::HoldReading;

/// Most points; more readings are gathered, so that the cost of all that follows does not grow with them
/// and that what neighbours have in common does not count as many times as they are.
pub(super) const MOST_POINTS: usize = 48;

/// How long the nitrogen takes to follow the tube, s: a first-order lag. Common practice, no source.
const LAG: f64 = 300.0;

/// Part of the difference between tube and air by which a probe on the tube is off. Common practice, no source.
const AIR_SHARE: f64 = 0.1;

/// A point.
#[derive(Clone, Copy)]
pub(super) struct Point {
    /// Places of its first and last reading.
    pub places: (usize, usize),
    /// How many readings it is the mean of.
    pub count: f64,
    /// Means over its readings.
    pub time: f64,
    pub gauge: f64,
    pub air: f64,
    pub temperature: f64,
    pub imbalance: f64,
    pub has_barometer: bool,
    /// Compensated pressure: that of the same nitrogen at the temperature of the first reading, Pa.
    pub pressure: f64,
    /// How far the nitrogen may lag behind the tube, beyond what the thermometer's scatter explains, K.
    pub lag: f64,
    /// Variance of the compensated pressure, Pa².
    pub variance: f64,
    pub left_out: Option<LeftOutReason>,
}

impl Point {
    pub fn spot(&self) -> Spot {
        Spot {
            time: self.time,
            pressure: self.pressure,
            variance: self.variance,
        }
    }

    fn of(place: usize, reading: &HoldReading, pressure: f64) -> Self {
        Self {
            places: (place, place),
            count: 1.0,
            time: reading.time.in_seconds(),
            gauge: reading.gauge.in_pascals(),
            air: reading.air.in_pascals(),
            temperature: reading.temperature.in_kelvins(),
            imbalance: reading.imbalance,
            has_barometer: reading.has_barometer,
            pressure,
            lag: 0.0,
            variance: 0.0,
            left_out: None,
        }
    }

    /// Takes another in; all figures become means.
    fn gather(&mut self, other: &Self) {
        self.places.1 = other.places.1;
        self.count += 1.0;
        self.has_barometer &= other.has_barometer;
        let part = 1.0 / self.count;
        for (mean, next) in [
            (&mut self.time, other.time),
            (&mut self.gauge, other.gauge),
            (&mut self.air, other.air),
            (&mut self.temperature, other.temperature),
            (&mut self.imbalance, other.imbalance),
            (&mut self.pressure, other.pressure),
        ] {
            *mean += part * (next - *mean);
        }
    }

    /// Pascal for a kelvin at constant density.
    pub fn per_kelvin(&self) -> f64 {
        (self.gauge + self.air) / self.temperature
    }
}

/// The pressure of each reading brought to the temperature of the first: proportional to the amount of
/// nitrogen. The change of the compressibility factor with the loss itself, less than a hundredth of
/// it, is neglected.
pub(super) fn compensated(readings: &[HoldReading]) -> Vec<f64> {
    let scale = readings
        .first()
        .map_or(0.0, |first| first.absolute().in_pascals() / first.amount);
    readings
        .iter()
        .map(|reading| scale * reading.amount)
        .collect()
}

/// The points of readings with their compensated pressures; strays each for itself.
pub(super) fn points(
    readings: &[HoldReading],
    pressures: &[f64],
    strays: &[usize],
    instruments: &Instruments,
) -> Vec<Point> {
    let mut points: Vec<Point> = Vec::with_capacity(MOST_POINTS + strays.len());
    let start = readings
        .first()
        .map_or(0.0, |first| first.time.in_seconds());
    let end = readings.last().map_or(0.0, |last| last.time.in_seconds());
    let gathers = readings.len() > MOST_POINTS && end > start;
    let slice = |point: &Point| {
        let part = (point.time - start) / (end - start);
        ((part * MOST_POINTS as f64) as usize).min(MOST_POINTS - 1)
    };
    let mut strays = strays.iter().peekable();
    let mut open: Option<(usize, usize)> = None;
    for (place, (reading, pressure)) in readings.iter().zip(pressures).enumerate() {
        let mut point = Point::of(place, reading, *pressure);
        if strays.next_if_eq(&&place).is_some() {
            point.left_out = Some(LeftOutReason::Stray);
            points.push(point);
            continue;
        }
        let own_slice = slice(&point);
        match open {
            Some((index, slice)) if gathers && slice == own_slice => {
                if let Some(open) = points.get_mut(index) {
                    open.gather(&point);
                }
            }
            _ => {
                open = Some((points.len(), own_slice));
                points.push(point);
            }
        }
    }
    find_lags(&mut points, instruments);
    for point in &mut points {
        point.variance = variance(point, instruments);
    }
    points
}

/// Follows the tube's temperature by one that lags behind it, from point to point in a straight line.
fn find_lags(points: &mut [Point], instruments: &Instruments) {
    let mut behind = 0.0;
    let mut before: Option<(f64, f64)> = None;
    for point in points.iter_mut().filter(|point| point.left_out.is_none()) {
        if let Some((time, temperature)) = before {
            let passed = point.time - time;
            let kept = libm::exp(-passed / LAG);
            // Over no time at all the whole change is still ahead of the nitrogen.
            let fresh = if passed > 0.0 {
                LAG / passed * (1.0 - kept)
            } else {
                1.0
            };
            behind = behind * kept + (point.temperature - temperature) * fresh;
        }
        before = Some((point.time, point.temperature));
        let noise = 2.0 * instruments.thermometer_uncertainty.in_kelvins() / point.count.sqrt();
        point.lag = (f64::abs(behind) - noise).max(0.0) + AIR_SHARE * point.imbalance;
    }
}

/// Least variance, Pa²: that of instruments that are never off.
const LEAST_VARIANCE: f64 = 1.0;

fn variance(point: &Point, instruments: &Instruments) -> f64 {
    let per_kelvin = point.per_kelvin();
    LEAST_VARIANCE
        + instruments.rounding()
        + instruments.scatter(per_kelvin) / point.count
        + instruments.wander(per_kelvin)
        + squared(point.lag * per_kelvin)
}
