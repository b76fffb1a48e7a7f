//! Simulated nitrogen holds of known truth: how often a tight system is called leaking, and how often a leak
//! of twice the stated least detectable is found.
//!
//! The generator is native to these tests and seeded: real nitrogen (Span et al. 2000, as in the core)
//! whose amount is constant or falls exponentially, tube temperatures that swing daily, wander or
//! drift, gauges that round, readings and thermometers that scatter, cores that were vented, and
//! gas that was still warm from filling.

use coldwright::calc::standing_test::{
    HoldReadingInput, HoldVerdict, StandingTestAnswer, StandingTestInput, standing_test,
};
use coldwright::physics::nitrogen::at_constant_density;
use coldwright::quantity::{
    AbsolutePressure, GaugePressure, PressureDifference, Temperature, TemperatureDifference, Time,
};

const PSI: f64 = 6894.757;
const HOUR: f64 = 3600.0;
const AIR: f64 = 101_325.0;

/// Numbers that look random and are the same every time: SplitMix64 (Steele, Lea and Flood, 2014).
struct Dice(u64);

impl Dice {
    fn uniform(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((mixed ^ (mixed >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.uniform()
    }

    fn one_of<T: Copy>(&mut self, choices: &[T]) -> T {
        choices[(self.uniform() * choices.len() as f64) as usize]
    }

    /// Normal with mean 0 and standard deviation 1 (Box and Muller, 1958).
    fn normal(&mut self) -> f64 {
        let radius = (-2.0 * (1.0 - self.uniform()).ln()).sqrt();
        radius * (std::f64::consts::TAU * self.uniform()).cos()
    }
}

/// What happened to a hold besides a leak.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Mishap {
    None,
    /// Gas let out at one moment.
    Vented,
    /// The gas was still warm from filling.
    WarmUp,
}

/// How the tube's temperature goes.
#[derive(Clone, Copy, Debug)]
enum Weather {
    /// Amplitude, K, and phase.
    Daily(f64, f64),
    /// Kelvin per root of an hour.
    Walk(f64),
    /// Kelvin per hour.
    Linear(f64),
}

/// A hold whose readings differ only by scatter and leak.
#[derive(Clone, Copy, Debug)]
struct Scene {
    /// Gauge pressure after filling, Pa.
    pressure: f64,
    hours: f64,
    count: usize,
    weather: Weather,
    resolution: f64,
    /// Standard deviation of the gauge besides rounding, Pa.
    noise: f64,
    /// What the gauge is off by throughout, Pa.
    offset: f64,
    mishap: Mishap,
    /// Part of the pressure that the mishap moves, and when, as a part of the hold or of an hour.
    size: f64,
    when: f64,
}

const THERMOMETER_NOISE: f64 = 0.5;

impl Scene {
    fn roll(dice: &mut Dice, mishap: Mishap) -> Self {
        let counts: &[usize] = if mishap == Mishap::None {
            &[2, 3, 4, 5, 7, 10, 13, 24, 48, 97, 289, 1000]
        } else {
            &[8, 10, 13, 24, 48, 97, 289, 1000]
        };
        let weather = match dice.one_of(&[0, 1, 2]) {
            0 => Weather::Daily(dice.between(2.0, 8.0), dice.between(0.0, 24.0)),
            1 => Weather::Walk(dice.between(0.2, 1.0)),
            _ => Weather::Linear(dice.between(-0.5, 0.5)),
        };
        Self {
            pressure: dice.one_of(&[140.0, 300.0, 450.0, 600.0]) * PSI,
            hours: dice.one_of(&[1.0, 2.0, 6.0, 12.0, 16.0, 24.0, 48.0]),
            count: dice.one_of(counts),
            weather,
            resolution: dice.one_of(&[PSI, 1e4, 0.1 * PSI]),
            noise: dice.one_of(&[0.0, 0.2, 0.4]) * PSI,
            offset: dice.between(-4.0, 4.0) * PSI,
            mishap,
            size: match mishap {
                Mishap::Vented => dice.between(0.003, 0.08),
                _ => dice.between(0.005, 0.05),
            },
            when: match mishap {
                Mishap::Vented => dice.between(0.05, 0.9),
                _ => dice.between(0.05, 0.4),
            },
        }
    }

    /// The readings, with a loss of so many pascal a second at the start.
    fn readings(&self, dice: &mut Dice, loss: f64) -> Vec<HoldReadingInput> {
        let filled = self.pressure + AIR;
        let start = 293.15;
        let (mut kelvins, mut readings) = (start, Vec::new());
        let step = self.hours / (self.count - 1) as f64;
        for place in 0..self.count {
            let hours = step * place as f64;
            kelvins = match self.weather {
                Weather::Daily(amplitude, phase) => {
                    let turn = |hours: f64| (std::f64::consts::TAU * (hours + phase) / 24.0).sin();
                    start + amplitude * (turn(hours) - turn(0.0))
                }
                Weather::Walk(size) if place > 0 => {
                    (kelvins + size * step.sqrt() * dice.normal()).clamp(255.0, 325.0)
                }
                Weather::Walk(_) => start,
                Weather::Linear(rate) => (start + rate * hours).clamp(255.0, 325.0),
            };
            let mut amount = filled * (-loss / filled * hours * HOUR).exp();
            if self.mishap == Mishap::Vented && hours > self.when * self.hours {
                amount -= self.size * filled;
            }
            let tight = at_constant_density(
                AbsolutePressure::pascals(amount.max(AIR)),
                Temperature::kelvins(start),
                Temperature::kelvins(kelvins),
            );
            let mut absolute = tight.unwrap().in_pascals();
            if self.mishap == Mishap::WarmUp {
                absolute *= 1.0 + self.size * (-hours / self.when).exp();
            }
            let shown = absolute - AIR + self.offset + self.noise * dice.normal();
            let rounded = (shown / self.resolution).round() * self.resolution;
            let measured = kelvins + THERMOMETER_NOISE * dice.normal();
            readings.push(HoldReadingInput {
                time: Time::seconds(hours * HOUR).into(),
                gauge_pressure: GaugePressure::pascals(rounded.max(0.0)).into(),
                temperature: Temperature::kelvins(measured).into(),
                ..HoldReadingInput::default()
            });
        }
        readings
    }

    fn answer(&self, dice: &mut Dice, loss: f64) -> StandingTestAnswer {
        standing_test(&StandingTestInput {
            readings: self.readings(dice, loss).into(),
            gauge_resolution: PressureDifference::pascals(self.resolution).into(),
            thermometer_uncertainty: TemperatureDifference::kelvins(THERMOMETER_NOISE).into(),
            ..StandingTestInput::default()
        })
        .unwrap()
    }
}

#[derive(Debug, Default)]
struct Tally {
    tight: usize,
    losing: usize,
    open: usize,
    cannot: std::collections::BTreeMap<String, usize>,
}

impl Tally {
    fn add(&mut self, answer: &StandingTestAnswer) {
        match answer.verdict {
            HoldVerdict::Tight => self.tight += 1,
            HoldVerdict::LosingGas => self.losing += 1,
            HoldVerdict::Open => self.open += 1,
            HoldVerdict::CannotTell => {
                *self.cannot.entry(answer.reason.word().into()).or_default() += 1;
            }
        }
    }
}

#[test]
fn explore() {
    let mut dice = Dice(7);
    for mishap in [Mishap::None, Mishap::Vented, Mishap::WarmUp] {
        let (mut tight, mut leaking) = (Tally::default(), Tally::default());
        let mut by: std::collections::BTreeMap<(usize, i64), (usize, usize, usize, f64)> =
            Default::default();
        for _ in 0..20000 {
            let scene = Scene::roll(&mut dice, mishap);
            let answer = scene.answer(&mut dice, 0.0);
            tight.add(&answer);
            let e = by
                .entry((
                    scene.count,
                    if mishap == Mishap::WarmUp {
                        (10.0 * scene.when / scene.hours) as i64
                    } else {
                        0
                    },
                ))
                .or_default();
            e.0 += 1;
            if answer.verdict == HoldVerdict::LosingGas {
                e.1 += 1;
                if std::env::var_os("SHOW").is_some() && e.1 < 3 {
                    println!("{scene:?} {:?} {}", answer.hold, answer.left_out.len());
                }
            }
            let Some(hold) = answer.hold.as_ref() else {
                continue;
            };
            let h = hold.pressure_loss_rate.in_pascals_per_second()
                / hold.pressure_loss_rate_uncertainty.in_pascals_per_second()
                * 3.0;
            e.3 += h * h;
            let least = hold.least_detectable.in_pascals_per_second();
            let multiple: f64 = std::env::var("MULT")
                .map(|m| m.parse().unwrap())
                .unwrap_or(2.0);
            let again = scene.answer(&mut dice, multiple * least);
            leaking.add(&again);
            if again.verdict != HoldVerdict::LosingGas {
                e.2 += 1;
                if std::env::var_os("SHOW").is_some() && e.2 < 3 {
                    println!(
                        "MISS {} {scene:?} {:?} {:?} {}",
                        2.0 * least,
                        again.reason,
                        again.hold,
                        again.left_out.len()
                    );
                }
            }
        }
        println!("{mishap:?}\n tight {tight:?}\n leaking {leaking:?}");
        for (k, v) in by {
            println!(
                "   {k:?} n {} false {} missed {} z-rms {:.2}",
                v.0,
                v.1,
                v.2,
                (v.3 / v.0 as f64).sqrt()
            );
        }
    }
}
