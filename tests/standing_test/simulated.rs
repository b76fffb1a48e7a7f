//! Simulated nitrogen holds of known truth.
//!
//! The generator is native to these tests and seeded: real nitrogen (Span et al. 2000, as in the core)
//! whose amount is constant or falls exponentially, tube temperatures that swing daily, wander or
//! drift, gauges that round, gauges and thermometers that scatter, cores that were vented, and
//! nitrogen that was still warm from filling or that lags behind the tube.

use std::f64::consts::TAU;

use coldwright::calc::standing_test::{
    HoldReadingInput, StandingTestAnswer, StandingTestInput, standing_test,
};
use coldwright::physics::nitrogen::at_constant_density;
use coldwright::quantity::{
    AbsolutePressure, GaugePressure, PressureDifference, Temperature, TemperatureDifference, Time,
};

pub const PSI: f64 = 6894.757;
const HOUR: f64 = 3600.0;
const AIR: f64 = 101_325.0;
const START: f64 = 293.15;
const THERMOMETER_NOISE: f64 = 0.5;

/// Numbers that look random and are the same every time: SplitMix64 (Steele, Lea and Flood, 2014).
pub struct Dice(pub u64);

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
        radius * (TAU * self.uniform()).cos()
    }
}

/// What happens in a hold besides a leak.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mishap {
    None,
    /// A part of the gas is let out at a part of the hold.
    Vented(f64, f64),
    /// The gas is still warm from filling: a part of the pressure, dying away over so many hours.
    WarmUp(f64, f64),
    /// The gas lags behind the tube by so many hours.
    Lags(f64),
}

/// How the tube's temperature goes.
#[derive(Clone, Copy, Debug)]
enum Weather {
    /// Amplitude, K, and phase, h.
    Daily(f64, f64),
    /// Kelvin per root of an hour.
    Walk(f64),
    /// Kelvin per hour.
    Linear(f64),
}

/// A hold; its readings differ by scatter and leak.
#[derive(Clone, Copy, Debug)]
pub struct Scene {
    /// Gauge pressure after filling, Pa.
    pressure: f64,
    pub hours: f64,
    pub count: usize,
    weather: Weather,
    resolution: f64,
    /// Standard deviation of the gauge besides rounding, Pa.
    noise: f64,
    /// What the gauge is off by throughout, Pa.
    offset: f64,
    mishap: Mishap,
}

impl Scene {
    /// A hold without mishap.
    pub fn plain(dice: &mut Dice) -> Self {
        Self {
            pressure: dice.one_of(&[140.0, 300.0, 450.0, 600.0]) * PSI,
            hours: dice.one_of(&[1.0, 2.0, 6.0, 12.0, 16.0, 24.0, 48.0]),
            count: dice.one_of(&[2, 3, 4, 5, 7, 10, 13, 24, 48, 97, 289]),
            weather: match dice.one_of(&[0, 1, 2]) {
                0 => Weather::Daily(dice.between(2.0, 8.0), dice.between(0.0, 24.0)),
                1 => Weather::Walk(dice.between(0.2, 1.0)),
                _ => Weather::Linear(dice.between(-0.5, 0.5)),
            },
            resolution: dice.one_of(&[PSI, 1e4, 0.1 * PSI]),
            noise: dice.one_of(&[0.0, 0.2, 0.4]) * PSI,
            offset: dice.between(-4.0, 4.0) * PSI,
            mishap: Mishap::None,
        }
    }

    /// A hold with enough readings that a mishap can show.
    pub fn with_mishap(dice: &mut Dice, mishap: fn(&mut Dice) -> Mishap) -> Self {
        let mut scene = Self::plain(dice);
        scene.count = scene.count.max(8);
        scene.mishap = mishap(dice);
        scene
    }

    pub fn vented(dice: &mut Dice) -> Mishap {
        Mishap::Vented(dice.between(0.003, 0.08), dice.between(0.05, 0.9))
    }

    pub fn warm_up(dice: &mut Dice) -> Mishap {
        Mishap::WarmUp(dice.between(0.005, 0.05), dice.between(0.05, 0.4))
    }

    pub fn lags(dice: &mut Dice) -> Mishap {
        Mishap::Lags(dice.between(0.05, 0.25))
    }

    fn tube(&self, dice: &mut Dice, hours: f64, step: f64, before: f64) -> f64 {
        match self.weather {
            Weather::Daily(amplitude, phase) => {
                let turn = |hours: f64| (TAU * (hours + phase) / 24.0).sin();
                START + amplitude * (turn(hours) - turn(0.0))
            }
            Weather::Walk(_) if hours <= 0.0 => START,
            Weather::Walk(size) => {
                (before + size * step.sqrt() * dice.normal()).clamp(255.0, 325.0)
            }
            Weather::Linear(rate) => (START + rate * hours).clamp(255.0, 325.0),
        }
    }

    /// Absolute pressure of nitrogen at this temperature.
    fn absolute(&self, hours: f64, gas: f64, loss: f64) -> f64 {
        let filled = self.pressure + AIR;
        let mut amount = filled * (-loss / filled * hours * HOUR).exp();
        if let Mishap::Vented(part, when) = self.mishap
            && hours > when * self.hours
        {
            amount -= part * filled;
        }
        let kelvins = Temperature::kelvins;
        let held = AbsolutePressure::pascals(amount.max(AIR));
        let found = at_constant_density(held, kelvins(START), kelvins(gas));
        let warmth = match self.mishap {
            Mishap::WarmUp(part, hold) => part * (-hours / hold).exp(),
            _ => 0.0,
        };
        found.unwrap().in_pascals() * (1.0 + warmth)
    }

    /// The readings, with a loss of so many pascal a second at the start.
    fn readings(&self, dice: &mut Dice, loss: f64) -> Vec<HoldReadingInput> {
        let step = self.hours / (self.count - 1) as f64;
        let follows = match self.mishap {
            Mishap::Lags(hours) => 1.0 - (-step / hours).exp(),
            _ => 1.0,
        };
        let (mut tube, mut gas, mut readings) = (START, START, Vec::new());
        for place in 0..self.count {
            let hours = step * place as f64;
            tube = self.tube(dice, hours, step, tube);
            gas += follows * (tube - gas);
            let shown = self.absolute(hours, gas, loss) - AIR + self.offset;
            let steps = (shown + self.noise * dice.normal()) / self.resolution;
            let rounded = (steps.round() * self.resolution).max(0.0);
            let measured = tube + THERMOMETER_NOISE * dice.normal();
            readings.push(HoldReadingInput {
                time: Time::seconds(hours * HOUR).into(),
                gauge_pressure: GaugePressure::pascals(rounded).into(),
                temperature: Temperature::kelvins(measured).into(),
                ..HoldReadingInput::default()
            });
        }
        readings
    }

    pub fn answer(&self, dice: &mut Dice, loss: f64) -> StandingTestAnswer {
        let thermometer = TemperatureDifference::kelvins(THERMOMETER_NOISE);
        standing_test(&StandingTestInput {
            readings: self.readings(dice, loss).into(),
            gauge_resolution: PressureDifference::pascals(self.resolution).into(),
            thermometer_uncertainty: thermometer.into(),
            ..StandingTestInput::default()
        })
        .unwrap()
    }
}
