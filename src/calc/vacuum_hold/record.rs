//! The readings of a hold as the fits take them: few, in time from the first, each with its weight.

use super::MICRON;

/// Most points that the fits see; more readings are averaged over equal spans of time.
const MOST_POINTS: usize = 96;

/// Part of the pressure that no simple law is trusted to, however many readings there are.
const LAW_ERROR: f64 = 0.002;

/// Readings on each side that are averaged for the level at a point.
const NEIGHBOURS: usize = 2;

/// Readings that count for each step which the gauge shows: the rounding errors of more of them are one and the same.
const READINGS_A_STEP: f64 = 4.0;

/// Part of a step by which a reading may miss it, for units that are converted roughly.
const OFF_STEP: f64 = 0.05;

/// Steps of vacuum gauges, Pa, the coarsest first.
const STEPS: [f64; 14] = [
    100.0 * MICRON,
    10.0,
    50.0 * MICRON,
    5.0,
    25.0 * MICRON,
    20.0 * MICRON,
    2.0,
    10.0 * MICRON,
    1.0,
    5.0 * MICRON,
    0.5,
    2.0 * MICRON,
    MICRON,
    0.1,
];

/// One reading, or the mean of several near each other.
#[derive(Clone, Copy, Debug)]
pub(super) struct Point {
    /// Since the first reading, s.
    pub time: f64,
    /// Pa.
    pub pressure: f64,
    /// Readings in it.
    pub count: f64,
    /// Pressure around it, of which the noise is a part, Pa.
    pub level: f64,
}

/// A hold as it was read.
#[derive(Clone, Debug)]
pub(super) struct Record {
    /// In order of time.
    pub points: Vec<Point>,
    /// From the first reading to the last, s.
    pub held: f64,
    /// Readings at different times.
    pub moments: usize,
    /// Step of the gauge, Pa; zero if it shows none.
    pub resolution: f64,
    /// Variance that rounding to this step brings into a reading, Pa².
    rounding: f64,
}

impl Record {
    /// Takes readings, time in s and pressure in Pa, in order of time; `resolution` if the gauge's step is known.
    pub fn of(readings: &[(f64, f64)], resolution: Option<f64>) -> Self {
        let zero = readings.first().map_or(0.0, |(time, _)| *time);
        let held = readings.last().map_or(0.0, |(time, _)| time - zero);
        let resolution = resolution.unwrap_or_else(|| shown_step(readings));
        let changes = |differ: fn(&(f64, f64), &(f64, f64)) -> bool| {
            let pairs = readings.windows(2);
            1 + pairs
                .filter(|pair| matches!(pair, [one, other] if differ(one, other)))
                .count()
        };
        let steps = changes(|one, other| (one.1 - other.1).abs() > 0.0) as f64;
        let alike = readings.len() as f64 / (READINGS_A_STEP * steps);
        let mut points = averaged(readings, zero, held / MOST_POINTS as f64);
        smooth(&mut points);
        Self {
            points,
            held,
            moments: changes(|one, other| other.0 > one.0),
            resolution,
            rounding: resolution * resolution / 12.0 * alike.max(1.0),
        }
    }

    /// Variance of a point if readings scatter by `noise` of their level, Pa².
    pub fn variance(&self, point: &Point, noise: f64) -> f64 {
        let level = point.level.max(MICRON);
        let scatter = noise * noise * level * level;
        (scatter + self.rounding) / point.count + LAW_ERROR * LAW_ERROR * level * level
    }

    /// Reading nearest to a time, Pa.
    pub fn near(&self, time: f64) -> f64 {
        let away = |point: &&Point| (point.time - time).abs();
        let nearer = |one: &&Point, other: &&Point| away(one).total_cmp(&away(other));
        let nearest = self.points.iter().min_by(nearer);
        nearest.map_or(0.0, |point| point.pressure)
    }

    /// Pressure at the start, Pa, rather too low than too high.
    pub fn least_start(&self) -> f64 {
        let first = self.points.iter().take(NEIGHBOURS + 1);
        let least = first.map(|point| point.pressure.min(point.level));
        0.97 * least.fold(f64::INFINITY, f64::min)
    }
}

/// The coarsest step of which all readings are multiples.
fn shown_step(readings: &[(f64, f64)]) -> f64 {
    let fits = |step: &&f64| {
        readings.iter().all(|(_, pressure)| {
            let steps = pressure / **step;
            (steps - libm::rint(steps)).abs() < OFF_STEP
        })
    };
    STEPS.iter().find(fits).copied().unwrap_or(0.0)
}

/// One point a reading, or the means over spans of `width` if there are too many.
fn averaged(readings: &[(f64, f64)], zero: f64, width: f64) -> Vec<Point> {
    let mut points: Vec<Point> = Vec::with_capacity(readings.len().min(MOST_POINTS + 1));
    let mut end = 0.0;
    for (time, pressure) in readings {
        let time = time - zero;
        match points.last_mut() {
            Some(last) if readings.len() > MOST_POINTS && time < end => {
                last.count += 1.0;
                last.time += (time - last.time) / last.count;
                last.pressure += (pressure - last.pressure) / last.count;
            }
            _ => {
                end = time + width;
                points.push(Point {
                    time,
                    pressure: *pressure,
                    count: 1.0,
                    level: *pressure,
                });
            }
        }
    }
    points
}

/// Sets the level of each point to the mean of it and its neighbours, as many before as after.
fn smooth(points: &mut [Point]) {
    let last = points.len().saturating_sub(1);
    let levels: Vec<f64> = (0..points.len())
        .map(|place| {
            let reach = NEIGHBOURS.min(place).min(last - place);
            let near = points.iter().skip(place - reach).take(2 * reach + 1);
            let (sum, count) = near.fold((0.0, 0.0), |(sum, count), point| {
                (sum + point.pressure * point.count, count + point.count)
            });
            sum / count
        })
        .collect();
    for (point, level) in points.iter_mut().zip(levels) {
        point.level = level;
    }
}
