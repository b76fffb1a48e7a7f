//! Simulated vacuum holds of systems whose state is known: how often the verdict is right.
//!
//! No one knows how the next person would simulate a hold. So several definitions of dry, wet and
//! leaking are tried, and the figures must hold over all of them.

use coldwright::calc::vacuum_hold::{
    VacuumHoldInput, VacuumReadingInput, VacuumVerdict, vacuum_hold,
};
use coldwright::quantity::{AbsolutePressure, PressureDifference, Ratio, Temperature, Time};
use coldwright::terminal::{Messages, answer_line};
use proptest::prelude::*;
use serde_json::{Value, json};

const MICRON: f64 = 0.133_322_387_415;

/// A small generator of random numbers with a seed (splitmix64).
struct Chance(u64);

impl Chance {
    fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    fn part(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1u64 << 53) as f64
    }

    fn between(&mut self, (low, high): (f64, f64)) -> f64 {
        low + (high - low) * self.part()
    }

    fn spread(&mut self, (low, high): (f64, f64), by_ratio: bool) -> f64 {
        if by_ratio {
            self.between((low.ln(), high.ln())).exp()
        } else {
            self.between((low, high))
        }
    }

    fn normal(&mut self) -> f64 {
        let radius = (-2.0 * (1.0 - self.part()).ln()).sqrt();
        radius * (std::f64::consts::TAU * self.part()).cos()
    }

    fn one_of(&mut self, choices: &[f64]) -> f64 {
        choices[(self.bits() % choices.len() as u64) as usize]
    }
}

/// What dry, wet and leaking systems are, and how they are read. Pressures in micron, times in minutes.
#[derive(Clone)]
struct Definition {
    name: &'static str,
    /// Shares of dry systems that stay flat, and that creep.
    flat: f64,
    creeping: f64,
    creep: (f64, f64),
    /// Plateaus of the other dry systems, and of wet ones.
    dry: (f64, f64),
    wet: (f64, f64),
    plateaus_by_ratio: bool,
    time_constant: (f64, f64),
    time_constants_by_ratio: bool,
    leak: (f64, f64),
    leaks_by_ratio: bool,
    /// Share of leaks with outgassing besides, and how much.
    outgassing: f64,
    outgassed: (f64, f64),
    start: (f64, f64),
    /// Minutes between readings; 0 for irregular ones.
    intervals: Vec<f64>,
    resolutions: Vec<f64>,
    noise: (f64, f64),
    even_noise: bool,
    rounded_down: bool,
    /// Whether the gauge and the ambient temperature are told.
    told: bool,
    ambient: (f64, f64),
}

fn usual() -> Definition {
    Definition {
        name: "usual",
        flat: 0.33,
        creeping: 0.33,
        creep: (0.0, 5.0),
        dry: (300.0, 600.0),
        wet: (1000.0, 12_000.0),
        plateaus_by_ratio: true,
        time_constant: (2.0, 40.0),
        time_constants_by_ratio: false,
        leak: (20.0, 400.0),
        leaks_by_ratio: true,
        outgassing: 0.5,
        outgassed: (20.0, 200.0),
        start: (100.0, 500.0),
        intervals: vec![0.25, 0.5, 1.0, 0.0],
        resolutions: vec![1.0, 5.0, 10.0, 25.0, 50.0, 100.0],
        noise: (0.01, 0.03),
        even_noise: false,
        rounded_down: false,
        told: true,
        ambient: (20.0, 20.0),
    }
}

fn definitions() -> Vec<Definition> {
    let levelling = Definition {
        flat: 0.0,
        creeping: 0.0,
        ..usual()
    };
    vec![
        usual(),
        Definition {
            name: "nothing told of the gauge",
            told: false,
            ..usual()
        },
        Definition {
            name: "plateaus and leaks evenly spread",
            plateaus_by_ratio: false,
            leaks_by_ratio: false,
            ..usual()
        },
        Definition {
            name: "time constants spread by ratio",
            time_constants_by_ratio: true,
            ..usual()
        },
        Definition {
            name: "dry to 700, wet from 800",
            dry: (300.0, 700.0),
            wet: (800.0, 12_000.0),
            ..usual()
        },
        Definition {
            name: "dry levels off, 300 to 500",
            dry: (300.0, 500.0),
            ..levelling.clone()
        },
        Definition {
            name: "dry levels off to 700, wet 800",
            dry: (300.0, 700.0),
            wet: (800.0, 12_000.0),
            told: false,
            ..levelling
        },
        Definition {
            name: "dry creeps",
            creeping: 1.0,
            flat: 0.0,
            creep: (1.0, 6.0),
            ..usual()
        },
        Definition {
            name: "leaks pure",
            outgassing: 0.0,
            told: false,
            ..usual()
        },
        Definition {
            name: "leaks always with outgassing",
            outgassing: 1.0,
            outgassed: (50.0, 300.0),
            ..usual()
        },
        Definition {
            name: "rounded down, noise even",
            rounded_down: true,
            even_noise: true,
            told: false,
            ..usual()
        },
        Definition {
            name: "a reading a minute, fine gauge",
            intervals: vec![1.0],
            resolutions: vec![1.0, 5.0, 10.0],
            ..usual()
        },
        Definition {
            name: "four a minute, coarse gauge",
            intervals: vec![0.25],
            resolutions: vec![25.0, 50.0, 100.0],
            ..usual()
        },
        Definition {
            name: "ambient 0 to 35 °C, told",
            ambient: (0.0, 35.0),
            ..usual()
        },
    ]
}

const STATES: [VacuumVerdict; 3] = [
    VacuumVerdict::DryAndTight,
    VacuumVerdict::Moisture,
    VacuumVerdict::Leak,
];

/// The pressure over time of a system in a state: start, plateau, time constant, rate.
struct System {
    start: f64,
    plateau: f64,
    time_constant: f64,
    rate: f64,
}

impl System {
    fn of(
        state: VacuumVerdict,
        definition: &Definition,
        ceiling: f64,
        chance: &mut Chance,
    ) -> Self {
        let start = chance.between(definition.start);
        let by_ratio = definition.time_constants_by_ratio;
        let time_constant = chance.spread(definition.time_constant, by_ratio);
        let (plateau, rate) = match state {
            VacuumVerdict::DryAndTight => {
                let part = chance.part();
                if part < definition.flat {
                    (start, 0.0)
                } else if part < definition.flat + definition.creeping {
                    (start, chance.between(definition.creep))
                } else {
                    let (low, high) = definition.dry;
                    (chance.between((low.max(start), high.max(start))), 0.0)
                }
            }
            VacuumVerdict::Moisture => {
                let (low, high) = definition.wet;
                let wet = (low, high.min(ceiling));
                (chance.spread(wet, definition.plateaus_by_ratio), 0.0)
            }
            _ => {
                let outgasses = chance.part() < definition.outgassing;
                let outgassed = chance.between(definition.outgassed);
                let rate = chance.spread(definition.leak, definition.leaks_by_ratio);
                (start + if outgasses { outgassed } else { 0.0 }, rate)
            }
        };
        Self {
            start,
            plateau,
            time_constant,
            rate,
        }
    }

    fn pressure(&self, minutes: f64) -> f64 {
        let settled = 1.0 - (-minutes / self.time_constant).exp();
        self.start + (self.plateau - self.start) * settled + self.rate * minutes
    }
}

/// Fifteen minutes of a system, as a gauge shows them.
fn hold(
    definition: &Definition,
    state: VacuumVerdict,
    chance: &mut Chance,
) -> (VacuumHoldInput, System) {
    let celsius = chance.between(definition.ambient);
    let ceiling = saturation_micron(celsius);
    let system = System::of(state, definition, ceiling, chance);
    let interval = chance.one_of(&definition.intervals);
    let resolution = chance.one_of(&definition.resolutions);
    let noise = chance.between(definition.noise);
    let mut readings = Vec::new();
    let mut minutes = 0.0;
    while minutes < 15.001 {
        let deviation = if definition.even_noise {
            chance.between((-1.0, 1.0)) * 3f64.sqrt()
        } else {
            chance.normal()
        };
        let steps = system.pressure(minutes) * (1.0 + noise * deviation) / resolution;
        let steps = if definition.rounded_down {
            steps.floor()
        } else {
            steps.round()
        };
        readings.push(VacuumReadingInput {
            time: Time::seconds(60.0 * minutes).into(),
            pressure: AbsolutePressure::pascals(steps.max(0.0) * resolution * MICRON).into(),
        });
        minutes += if interval > 0.0 {
            interval
        } else {
            chance.between((0.25, 1.5))
        };
    }
    let mut input = VacuumHoldInput {
        readings: readings.into(),
        ..VacuumHoldInput::default()
    };
    if definition.told {
        input.ambient_temperature = Temperature::celsius(celsius).into();
        input.gauge_resolution = PressureDifference::pascals(resolution * MICRON).into();
        input.gauge_noise = Ratio::of_one(noise).into();
    }
    (input, system)
}

/// Water's pressure by the Magnus formula: another equation than the core's, good to a percent.
fn saturation_micron(celsius: f64) -> f64 {
    611.2 * (17.62 * celsius / (243.12 + celsius)).exp() / MICRON
}

/// How often each state got each verdict: dry, moisture, leak, none.
#[derive(Clone, Copy, Default)]
struct Confusion([[usize; 4]; 3]);

impl Confusion {
    fn of(definition: &Definition, holds: usize) -> Self {
        let mut table = Self::default();
        let seed = definition.name.bytes().fold(7u64, |seed, byte| {
            seed.wrapping_mul(31).wrapping_add(byte.into())
        });
        let mut chance = Chance(seed);
        for (state, row) in STATES.into_iter().zip(&mut table.0) {
            for _ in 0..holds {
                let (input, _) = hold(definition, state, &mut chance);
                let answer = vacuum_hold(&input).unwrap();
                let place = STATES.iter().position(|known| *known == answer.verdict);
                row[place.unwrap_or(3)] += 1;
            }
        }
        table
    }

    fn add(&mut self, other: Self) {
        let cells = self.0.iter_mut().flatten();
        for (cell, more) in cells.zip(other.0.iter().flatten()) {
            *cell += more;
        }
    }

    fn given(&self) -> usize {
        self.0.iter().flat_map(|row| &row[..3]).sum()
    }

    fn all(&self) -> usize {
        self.0.iter().flatten().sum()
    }

    /// Part of the verdicts given that are right.
    fn right(&self) -> f64 {
        let right: usize = (0..3).map(|place| self.0[place][place]).sum();
        right as f64 / self.given() as f64
    }

    /// Part of the holds without a verdict.
    fn untold(&self) -> f64 {
        1.0 - self.given() as f64 / self.all() as f64
    }

    /// Part of the leaks that are called dry and tight.
    fn leaks_missed(&self) -> f64 {
        self.0[2][0] as f64 / self.0[2].iter().sum::<usize>() as f64
    }

    fn print(&self, name: &str) {
        println!(
            "{name:32} {:?}  right {:5.1} %, cannot tell {:4.1} %, leaks called dry {:.1} %",
            self.0,
            100.0 * self.right(),
            100.0 * self.untold(),
            100.0 * self.leaks_missed()
        );
    }
}

/// Holds of each state in each definition: few without optimisation, for time.
const HOLDS: usize = if cfg!(debug_assertions) { 40 } else { 300 };

#[test]
fn verdicts_on_simulated_holds_are_right() {
    println!("rows: dry, wet, leaking; columns: dry and tight, moisture, leak, cannot tell");
    let mut all = Confusion::default();
    let mut worst: (f64, f64) = (1.0, 0.0);
    for definition in definitions() {
        let table = Confusion::of(&definition, HOLDS);
        table.print(definition.name);
        worst = (worst.0.min(table.right()), worst.1.max(table.untold()));
        all.add(table);
    }
    all.print("all together");
    assert!(all.right() >= 0.97);
    assert!(all.untold() <= 0.1);
    assert!(all.leaks_missed() <= 0.01);
    // No definition for itself may be far off, chance allowed for.
    assert!(worst.0 >= 0.94, "right in one definition: {}", worst.0);
    assert!(worst.1 <= 0.2, "untold in one definition: {}", worst.1);
}

/// How often the truth lies within the uncertainty, of how many.
#[derive(Default)]
struct Coverage(usize, usize);

impl Coverage {
    fn count(&mut self, truth: f64, found: f64, uncertainty: f64) {
        self.0 += usize::from((truth - found).abs() <= uncertainty);
        self.1 += 1;
    }

    fn part(&self) -> f64 {
        self.0 as f64 / self.1 as f64
    }
}

#[test]
fn the_truth_lies_within_the_uncertainty() {
    let [mut plateaus, mut rates, mut readings] = [(); 3].map(|()| Coverage::default());
    let mut chance = Chance(20);
    for definition in definitions() {
        for state in STATES {
            for _ in 0..HOLDS / 2 {
                let (input, system) = hold(&definition, state, &mut chance);
                let answer = vacuum_hold(&input).unwrap();
                for expected in &answer.expected {
                    let truth = system.pressure(expected.time.in_seconds() / 60.0) * MICRON;
                    let (pressure, uncertainty) = (expected.pressure, expected.uncertainty);
                    readings.count(truth, pressure.in_pascals(), uncertainty.in_pascals());
                }
                if answer.verdict != state {
                    continue;
                }
                if let (VacuumVerdict::Moisture, Some(plateau)) = (state, answer.plateau) {
                    let uncertainty = plateau.uncertainty.in_pascals();
                    plateaus.count(
                        system.plateau * MICRON,
                        plateau.pressure.in_pascals(),
                        uncertainty,
                    );
                }
                if let (VacuumVerdict::Leak, Some(leak)) = (state, answer.leak) {
                    let rate =
                        |rate: coldwright::quantity::PressureRate| rate.in_pascals_per_second();
                    rates.count(
                        system.rate * MICRON / 60.0,
                        rate(leak.rate),
                        rate(leak.uncertainty),
                    );
                }
            }
        }
    }
    for (name, coverage) in [
        ("plateau", &plateaus),
        ("rate", &rates),
        ("reading", &readings),
    ] {
        println!(
            "{name}: truth within the uncertainty {:.1} %",
            100.0 * coverage.part()
        );
        assert!(coverage.part() > 0.9, "{name}: {}", coverage.part());
    }
}

fn reading(seconds: f64, pascals: f64) -> VacuumReadingInput {
    VacuumReadingInput {
        time: Time::seconds(seconds).into(),
        pressure: AbsolutePressure::pascals(pascals).into(),
    }
}

/// Pressures that gauges and mistakes bring, Pa.
fn any_pressure() -> impl Strategy<Value = f64> {
    prop_oneof![
        8 => 1.0..2000.0f64,
        1 => Just(0.0),
        1 => Just(1e-300),
        1 => 0.0..60_000.0f64,
    ]
}

fn any_hold() -> impl Strategy<Value = Vec<(f64, f64)>> {
    let step =
        prop_oneof![6 => 1.0..200.0f64, 1 => Just(0.0), 1 => 0.0..1e9f64, 1 => -50.0..0.0f64];
    proptest::collection::vec((step, any_pressure()), 0..40).prop_map(|steps| {
        let mut time: f64 = 0.0;
        let at = |(step, pressure): (f64, f64)| {
            time = (time + step).max(0.0);
            (time, pressure)
        };
        steps.into_iter().map(at).collect()
    })
}

/// Through the door, as JSON.
fn through_the_door(readings: Value) -> Value {
    let request = json!({ "calculation": "vacuum-hold", "input": { "readings": readings } });
    answer_line(request.to_string().as_bytes(), &Messages::english())
}

/// A hold with scatter, in whole micron.
fn some_hold() -> impl Strategy<Value = Vec<(f64, f64)>> {
    (any::<u64>(), 0..3usize).prop_map(|(seed, state)| {
        let definition = Definition {
            resolutions: vec![1.0, 10.0],
            ..usual()
        };
        let (input, _) = hold(&definition, STATES[state], &mut Chance(seed));
        let numbers = |item: &VacuumReadingInput| match (&item.time, &item.pressure) {
            (
                coldwright::quantity::Entry::Read(time),
                coldwright::quantity::Entry::Read(pressure),
            ) => (time.in_seconds(), (pressure.in_pascals() / MICRON).round()),
            _ => unreachable!("holds are made of readings"),
        };
        input.readings.items().iter().map(numbers).collect()
    })
}

/// Whether two answers say the same but for rounding.
fn alike(one: &Value, other: &Value) -> bool {
    match (one, other) {
        (Value::Number(one), Value::Number(other)) => {
            let (one, other) = (one.as_f64().unwrap(), other.as_f64().unwrap());
            (one - other).abs() <= 1e-6 * one.abs().max(other.abs()) + 1e-6
        }
        (Value::Array(one), Value::Array(other)) => {
            one.len() == other.len() && one.iter().zip(other).all(|(one, other)| alike(one, other))
        }
        (Value::Object(one), Value::Object(other)) => {
            one.len() == other.len()
                && one
                    .iter()
                    .all(|(name, value)| other.get(name).is_some_and(|o| alike(value, o)))
        }
        _ => one == other,
    }
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: if cfg!(debug_assertions) { 48 } else { 400 },
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn whatever_is_read_the_answer_is_sound(readings in any_hold(), celsius in -60.0..90.0f64, resolution in 0.0..100.0f64) {
        let input = VacuumHoldInput {
            readings: readings.iter().map(|(time, pressure)| reading(*time, *pressure)).collect::<Vec<_>>().into(),
            ambient_temperature: Temperature::celsius(celsius).into(),
            gauge_resolution: PressureDifference::pascals(resolution).into(),
            curve_points: coldwright::calc::Count::of(7).into(),
            ..VacuumHoldInput::default()
        };
        if let Ok(answer) = vacuum_hold(&input) {
            let written = format!("{answer:?}");
            prop_assert!(!written.contains("NaN") && !written.contains("inf"), "{written}");
            let sum = answer.likelihoods.map(|l| (l.dry_and_tight + l.moisture + l.leak + l.other).in_one());
            prop_assert!(sum.is_none_or(|sum| (sum - 1.0).abs() < 1e-9), "{answer:#?}");
            prop_assert!(sum.is_some() || !STATES.contains(&answer.verdict), "{answer:#?}");
        }
    }

    #[test]
    fn a_later_clock_changes_nothing(readings in some_hold(), later in 0.0..1e5f64) {
        // Whole seconds, so that the clock itself rounds nothing.
        let of = |later: f64| {
            let item = |(time, pressure): &(f64, f64)| {
                json!({ "time": time.round() + later.round(), "pressure": format!("{pressure} micron") })
            };
            through_the_door(readings.iter().map(item).collect())
        };
        prop_assert!(alike(&of(0.0), &of(later)));
    }

    #[test]
    fn units_change_nothing(readings in some_hold()) {
        let of = |unit: &str, size: f64| {
            let item = |(time, pressure): &(f64, f64)| {
                json!({ "time": format!("{} s", time), "pressure": format!("{} {unit}", pressure * size) })
            };
            through_the_door(readings.iter().map(item).collect())
        };
        prop_assert!(alike(&of("micron", 1.0), &of("mmHg", 1e-3)));
        prop_assert!(alike(&of("micron", 1.0), &of("Pa", MICRON)));
    }
}
