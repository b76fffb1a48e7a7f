//! Pump-down: against integrated differential equations, against closed forms, at its limits, and its laws.

use coldwright::calc::pump_down::{
    IceRisk, LineChange, Moisture, PumpDownAnswer, PumpDownInput, VacuumHoseInput,
    VacuumTargetInput, ValveCore, pump_down,
};
use coldwright::quantity::{
    AbsolutePressure, Length, Mass, Quantity, Temperature, Volume, VolumeFlow,
};
use coldwright::terminal::{Messages, answer_line};
use proptest::prelude::*;
use serde::Deserialize;
use serde_json::{Value, json};

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Row {
    input: String,
    target_Pa: f64,
    seconds: f64,
    seconds_turbulent: Option<f64>,
}

fn rows() -> Vec<Row> {
    let path = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/tests/reference/pump_down/times.csv"
    );
    let rows: Vec<Row> = csv::Reader::from_path(path)
        .unwrap()
        .into_deserialize()
        .collect::<Result<_, _>>()
        .unwrap();
    assert_eq!(rows.len(), 200, "50 systems of 4 targets");
    rows
}

fn reply(input: &Value) -> Value {
    let request = json!({ "calculation": "pump-down", "input": input });
    answer_line(request.to_string().as_bytes(), &Messages::english())
}

fn seconds(row: &Row) -> f64 {
    let mut input: Value = serde_json::from_str(&row.input).unwrap();
    input["targets"] = json!([{ "pressure": row.target_Pa }]);
    let reply = reply(&input);
    let time = &reply["answer"]["milestones"][0]["time"];
    time.as_f64().unwrap_or_else(|| panic!("{input}: {reply}"))
}

/// By scipy 1.17.1 and iapws 1.5.5, see tests/reference/pump_down; accepted 5 %.
#[test]
fn times_keep_to_the_differential_equation() {
    let (mut worst, mut place) = (0.0_f64, String::new());
    for row in rows() {
        let deviation = (seconds(&row) / row.seconds - 1.0).abs();
        if deviation > worst {
            (worst, place) = (deviation, format!("{} to {} Pa", row.input, row.target_Pa));
        }
    }
    println!("pump-down: worst {worst:.1e} of the time: {place}");
    assert!(worst < 1e-4);
}

/// What laminar flow leaves out near the pressure of the air, dry. The times with the estimate against turbulent
/// and choked flow integrated.
#[test]
fn turbulence_is_told_as_an_estimate() {
    let (mut parts, mut worst) = (Vec::new(), 0.0_f64);
    for row in rows().iter().filter(|row| row.target_Pa < 70.0) {
        let Some(turbulent) = row.seconds_turbulent else {
            continue;
        };
        let mut input: Value = serde_json::from_str(&row.input).unwrap();
        input["targets"] = json!([{ "pressure": row.target_Pa }]);
        let told = reply(&input)["answer"]["earlyTurbulence"].as_f64().unwrap();
        worst = worst.max(((row.seconds + told) / turbulent - 1.0).abs());
        parts.push(turbulent / row.seconds - 1.0);
    }
    parts.sort_by(f64::total_cmp);
    let (median, most) = (parts[parts.len() / 2], parts[parts.len() - 1]);
    println!(
        "turbulence: adds {median:.3} in the middle, {most:.3} at most; with the estimate within {worst:.3}"
    );
    assert!(median < 0.02 && most < 0.4 && worst < 0.05);
}

fn litres(number: f64) -> Volume {
    Volume::cubic_metres(number * 1e-3)
}

fn hose(millimetres: f64, metres: f64) -> VacuumHoseInput {
    VacuumHoseInput {
        bore: Length::millimetres(millimetres).into(),
        length: Length::metres(metres).into(),
        ..VacuumHoseInput::default()
    }
}

fn target(pressure: AbsolutePressure) -> Vec<VacuumTargetInput> {
    vec![VacuumTargetInput {
        pressure: pressure.into(),
    }]
}

/// 5 L, a pump of 2.8 L/s, a hose of 5 mm by 1.5 m with its core.
fn usual() -> PumpDownInput {
    PumpDownInput {
        pump_speed: VolumeFlow::read("6 cfm").unwrap().into(),
        volume: litres(5.0).into(),
        hoses: vec![hose(5.0, 1.5)].into(),
        ..PumpDownInput::default()
    }
}

fn first_time(answer: &PumpDownAnswer) -> Option<f64> {
    answer.milestones[0].time.map(|time| time.in_seconds())
}

/// t = V/S·ln((p₀ − p_ult)/(p − p_ult)) where nothing but the pump resists; accepted 0.1 %.
#[test]
fn with_no_hose_the_time_is_the_closed_form() {
    let mut worst = 0.0_f64;
    for (speed, ultimate, volume, start, pressure) in [
        (2e-3, 0.0, 5e-3, 101_325.0, 40.0),
        (2e-3, 6.0, 5e-3, 101_325.0, 6.01),
        (0.1, 0.0, 1.0, 1e5, 1e-3),
        (1e-6, 9999.0, 1000.0, 2e5, 1e4),
        (10.0, 1.0, 1e-6, 70e3, 69e3),
    ] {
        let answer = pump_down(&PumpDownInput {
            pump_speed: VolumeFlow::cubic_metres_per_second(speed).into(),
            ultimate_pressure: AbsolutePressure::pascals(ultimate).into(),
            volume: Volume::cubic_metres(volume).into(),
            starting_pressure: AbsolutePressure::pascals(start).into(),
            targets: target(AbsolutePressure::pascals(pressure)).into(),
            ..PumpDownInput::default()
        });
        let closed = volume / speed * ((start - ultimate) / (pressure - ultimate)).ln();
        worst = worst.max((first_time(&answer.unwrap()).unwrap() / closed - 1.0).abs());
    }
    println!("no hose: worst {worst:.1e} of the closed form");
    assert!(worst < 1e-3);
}

/// A hose so wide and short that it resists nothing must not matter.
#[test]
fn a_hose_that_does_not_resist_changes_nothing() {
    let with = pump_down(&PumpDownInput {
        hoses: vec![VacuumHoseInput {
            core: ValveCore::Out.into(),
            ..hose(300.0, 0.05)
        }]
        .into(),
        ..usual()
    });
    let without = pump_down(&PumpDownInput {
        hoses: Vec::new().into(),
        ..usual()
    });
    let (with, without) = (with.unwrap(), without.unwrap());
    let ratio = first_time(&with).unwrap() / first_time(&without).unwrap();
    assert!((ratio - 1.0).abs() < 1e-3, "{ratio}");
}

/// At, just inside and just outside each limit.
#[test]
fn limits_hold_on_both_sides() {
    let sound = |change: &dyn Fn(&mut Value)| {
        let mut input = json!({ "pumpSpeed": 0.003, "volume": 0.005, "hoses": [{ "bore": 0.005, "length": 1.5 }] });
        change(&mut input);
        let reply = reply(&input);
        assert_eq!(
            reply.get("answer").is_some(),
            reply.get("problems").is_none()
        );
        reply.get("answer").is_some()
    };
    for (pointer, low, high) in [
        ("/pumpSpeed", 1e-6, 10.0),
        ("/volume", 1e-6, 1e3),
        ("/hoses/0/bore", 1e-4, 1.0),
        ("/hoses/0/length", 1e-3, 1e3),
        ("/startingPressure", 6.667, 2e5),
        ("/ultimatePressure", 0.0, 1e4),
        ("/ambientTemperature", 233.151, 333.149),
        ("/waterDepth", 1e-5, 0.1),
        ("/coreBore", 1e-4, 1.0),
        ("/coreLength", 1e-3, 1e3),
        ("/sharePressure", 6.667, 2e5),
    ] {
        let set = |number: f64| {
            move |input: &mut Value| match input.pointer_mut(pointer) {
                Some(place) => *place = number.into(),
                None => input[pointer.trim_start_matches('/')] = number.into(),
            }
        };
        for inside in [low, low * 1.0001, high * 0.9999, high] {
            assert!(sound(&set(inside)), "{pointer} {inside}");
        }
        for outside in [low * 0.999 - 1e-12, high * 1.0001] {
            assert!(!sound(&set(outside)), "{pointer} {outside}");
        }
    }
}

#[test]
fn a_target_at_or_below_the_ultimate_pressure_is_never_reached() {
    let micron = |number: f64| AbsolutePressure::read(&format!("{number} micron")).unwrap();
    let time = |pressure: AbsolutePressure| {
        let input = PumpDownInput {
            targets: target(pressure).into(),
            ..usual()
        };
        first_time(&pump_down(&input).unwrap())
    };
    assert_eq!(time(micron(49.0)), None);
    assert_eq!(time(micron(50.0)), None);
    assert!(time(micron(50.001)).is_some());
    assert_eq!(time(AbsolutePressure::pascals(0.0)), None);
    // Above the start nothing is to do.
    assert_eq!(time(AbsolutePressure::pascals(102e3)), Some(0.0));
    assert_eq!(time(AbsolutePressure::pascals(101_325.0)), Some(0.0));
}

#[test]
fn ice_forms_below_the_triple_point_and_not_above() {
    let ice = |celsius: f64, depth: Option<f64>| {
        let mut input = PumpDownInput {
            moisture: Moisture::Damp.into(),
            ambient_temperature: Temperature::celsius(celsius).into(),
            ..usual()
        };
        if let Some(depth) = depth {
            input.water_depth = Length::millimetres(depth).into();
        }
        pump_down(&input).unwrap().water.unwrap().ice
    };
    assert_eq!(ice(0.02, Some(0.01)), IceRisk::NoIce);
    assert_eq!(ice(0.0, Some(0.01)), IceRisk::Forms);
    assert_eq!(ice(25.0, Some(20.0)), IceRisk::Forms);
    assert_eq!(ice(0.5, None), IceRisk::Possible);
    assert_eq!(ice(30.0, None), IceRisk::NoIce);
    assert_eq!(ice(-30.0, None), IceRisk::Forms);
}

/// Ice whose vapour is thinner than the pump's ultimate pressure stays; what lies above it is reached.
#[test]
fn ice_colder_than_the_pump_can_reach_stays() {
    let answer = pump_down(&PumpDownInput {
        moisture: Moisture::Damp.into(),
        ambient_temperature: Temperature::celsius(-40.0).into(),
        ultimate_pressure: AbsolutePressure::read("150 micron").unwrap().into(),
        ..usual()
    });
    let answer = answer.unwrap();
    assert_eq!(answer.water.unwrap().boiling.dry_after, None);
    assert!(
        answer
            .milestones
            .iter()
            .all(|milestone| milestone.time.is_some())
    );
}

/// What a man or a machine may send: never a panic, never NaN, always an answer or problems.
#[test]
fn nonsense_is_answered_with_problems() {
    let base = json!({ "pumpSpeed": "6 cfm", "volume": "5 L" });
    for (name, value, codes) in [
        ("pumpSpeed", json!(0), &["outside-validity"][..]),
        ("pumpSpeed", json!("NaN cfm"), &["not-a-number"]),
        ("volume", json!(-1), &["out-of-range"]),
        (
            "volume",
            json!("1e300 L"),
            &["out-of-range", "not-a-number"],
        ),
        ("hoses", json!([{}]), &["missing"]),
        ("hoses", json!("5 mm"), &["not-a-list"]),
        ("hoses", json!([7]), &["not-an-object"]),
        (
            "hoses",
            json!([{ "bore": "5 mm", "length": "1 m", "count": 9 }]),
            &["not-a-choice"],
        ),
        (
            "hoses",
            json!(vec![json!({ "bore": "5 mm", "length": "1 m" }); 13]),
            &["too-many"],
        ),
        ("targets", json!([{}]), &["missing"]),
        (
            "tubes",
            json!([{ "tube": "5/8", "length": "3 m" }]),
            &["wrong-count"],
        ),
        ("coilVolume", json!("1 L"), &["conflict"]),
        ("ambientTemperature", json!("-80 °C"), &["outside-validity"]),
        ("barometer", json!("1 bar"), &[]),
        ("startingPressure", json!("1 micron"), &["outside-validity"]),
        (
            "evacuations",
            json!([{ "lowPressure": "20 psi" }]),
            &["outside-validity"],
        ),
        (
            "evacuations",
            json!([{ "lowPressure": "500 micron", "breakPressure": "-28 inHg" }]),
            &[],
        ),
        (
            "evacuations",
            json!([{ "lowPressure": "500 micron", "breakPressure": "100 psi" }]),
            &["outside-validity"],
        ),
        ("core", json!("in"), &["unknown-field"]),
    ] {
        let mut input = base.clone();
        input[name] = value;
        let reply = reply(&input);
        let found = reply["problems"].as_array().cloned().unwrap_or_default();
        if codes.is_empty() {
            assert!(reply.get("answer").is_some(), "{input}: {reply}");
        } else {
            let code = found[0]["code"].as_str().unwrap();
            assert!(codes.contains(&code), "{input}: {reply}");
        }
    }
}

#[test]
fn the_best_change_is_the_one_that_holds_back() {
    let best = |input: PumpDownInput| {
        let answer = pump_down(&input).unwrap();
        let saved: Vec<f64> = answer
            .changes
            .iter()
            .map(|change| change.saved.in_seconds())
            .collect();
        assert!(saved.is_sorted_by(|one, other| one >= other), "{saved:?}");
        answer.best_change
    };
    assert_eq!(best(usual()), Some(LineChange::LargerHose));
    let wide = |core: ValveCore| PumpDownInput {
        hoses: vec![VacuumHoseInput {
            core: core.into(),
            ..hose(19.0, 0.5)
        }]
        .into(),
        ..usual()
    };
    assert_eq!(best(wide(ValveCore::In)), Some(LineChange::CoresOut));
    assert_eq!(best(wide(ValveCore::Out)), Some(LineChange::LargerPump));
}

prop_compose! {
    fn any_system()(
        speed in 1e-5..0.1_f64,
        ultimate in 0.0..40.0_f64,
        volume in 1e-4..0.1_f64,
        hoses in proptest::collection::vec((-1.0..1.5_f64, -2.0..1.0_f64, any::<bool>(), 1..4_u16), 0..4),
        water in proptest::option::of(-4.0..-1.5_f64),
        depth in proptest::option::of(-4.5..-1.5_f64),
        celsius in -40.0..45.0_f64,
    ) -> PumpDownInput {
        let hoses: Vec<_> = hoses.into_iter().map(|(bore, length, out, count)| VacuumHoseInput {
            core: if out { ValveCore::Out } else { ValveCore::In }.into(),
            count: coldwright::calc::Count::of(count).into(),
            ..hose(10f64.powf(bore), 10f64.powf(length))
        }).collect();
        let mut input = PumpDownInput {
            pump_speed: VolumeFlow::cubic_metres_per_second(speed).into(),
            ultimate_pressure: AbsolutePressure::pascals(ultimate).into(),
            volume: Volume::cubic_metres(volume).into(),
            hoses: hoses.into(),
            ambient_temperature: Temperature::celsius(celsius).into(),
            ..PumpDownInput::default()
        };
        if let Some(mass) = water.map(|power| 10f64.powf(power)) {
            input.water = Mass::kilograms(mass.min(volume * 900.0)).into();
        }
        if let Some(power) = depth {
            input.water_depth = Length::metres(10f64.powf(power)).into();
        }
        input
    }
}

fn times(input: &PumpDownInput) -> Vec<Option<f64>> {
    let answer = pump_down(input).unwrap();
    answer
        .milestones
        .iter()
        .map(|milestone| milestone.time.map(|time| time.in_seconds()))
        .collect()
}

/// Whether each time of `other` is at least that of `one`; quadrature may differ by a millionth.
fn no_shorter(one: &[Option<f64>], other: &[Option<f64>]) -> bool {
    one.iter().zip(other).all(|pair| match pair {
        (Some(one), Some(other)) => *other >= one * (1.0 - 1e-5),
        (None, Some(_)) => false,
        (_, None) => true,
    })
}

fn read<T: Clone>(entry: &coldwright::quantity::Entry<T>) -> T {
    match entry {
        coldwright::quantity::Entry::Read(read) => read.clone(),
        _ => panic!("read"),
    }
}

#[test]
fn the_curve_ends_at_a_goal_on_the_stand_of_the_water() {
    let answer = pump_down(&PumpDownInput {
        pump_speed: VolumeFlow::cubic_metres_per_second(0.0627).into(),
        ultimate_pressure: AbsolutePressure::pascals(28.8).into(),
        volume: Volume::cubic_metres(1e-4).into(),
        water: Mass::kilograms(2.23e-4).into(),
        water_depth: Length::metres(1.41e-4).into(),
        ambient_temperature: Temperature::kelvins(244.88).into(),
        ..PumpDownInput::default()
    })
    .unwrap();
    assert_eq!(answer.curve.last().map(|last| last.pressure), answer.goal);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn every_figure_is_sound(input in any_system()) {
        let answer = pump_down(&input).unwrap();
        // Not as JSON, which writes what is not finite as null.
        let written = format!("{answer:?}");
        prop_assert!(!written.contains("NaN") && !written.contains("inf"), "{written}");
        let shares: f64 = answer.held_back.parts.iter().map(|part| part.share.in_one()).sum();
        prop_assert!((shares - 1.0).abs() < 1e-9, "{shares}");
        prop_assert!(answer.held_back.parts.iter().all(|part| part.share.in_one() >= -1e-12));
        // The throughput is the same through hoses and pump.
        let (held, ultimate) = (&answer.held_back, read(&input.ultimate_pressure).in_pascals());
        let through_system = held.effective_speed.in_cubic_metres_per_second() * held.pressure.in_pascals();
        let through_pump = read(&input.pump_speed).in_cubic_metres_per_second() * (held.inlet_pressure.in_pascals() - ultimate);
        // The inlet pressure carries the throughput only to its own last digits.
        let digits = 1e-14 * held.inlet_pressure.in_pascals() * read(&input.pump_speed).in_cubic_metres_per_second();
        prop_assert!((through_pump - through_system).abs() <= 1e-7 * through_system + digits);
    }

    #[test]
    fn the_curve_falls_to_the_goal(input in any_system()) {
        let answer = pump_down(&input).unwrap();
        let is_falling = answer.curve.is_sorted_by(|one, other| one.time <= other.time && one.pressure >= other.pressure);
        prop_assert!(is_falling, "{:?}", answer.curve);
        if let (Some(goal), Some(last)) = (answer.goal, answer.curve.last()) {
            let reached = answer.milestones.iter().find(|milestone| milestone.pressure == goal).unwrap();
            prop_assert!((last.pressure.in_pascals() / goal.in_pascals() - 1.0).abs() < 1e-9);
            let time = reached.time.unwrap().in_seconds();
            prop_assert!((last.time.in_seconds() / time - 1.0).abs() < 1e-4);
        }
    }

    #[test]
    fn a_lower_target_takes_longer(input in any_system()) {
        let times = times(&input);
        for pair in times.windows(2) {
            if let [Some(one), Some(other)] = pair {
                prop_assert!(other > one, "{times:?}");
            } else {
                prop_assert!(pair[1].is_none());
            }
        }
    }

    #[test]
    fn more_volume_takes_longer(input in any_system(), factor in 1.01..3.0_f64) {
        // Water leaves its share of a larger volume less full: dry.
        let dry = PumpDownInput { water: Default::default(), ..input };
        let larger = PumpDownInput { volume: (read(&dry.volume) * factor).into(), ..dry.clone() };
        for (one, other) in times(&dry).iter().zip(times(&larger)) {
            if let (Some(one), Some(other)) = (one, other) {
                prop_assert!((other / one / factor - 1.0).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn a_larger_bore_or_no_core_takes_no_longer(input in any_system(), factor in 1.01..3.0_f64) {
        let film = PumpDownInput { water_depth: Default::default(), ..input };
        let mut wider = film.clone();
        let hoses = film.hoses.items().iter().map(|hose| VacuumHoseInput {
            bore: (read(&hose.bore) * factor).into(),
            ..hose.clone()
        });
        wider.hoses = hoses.collect::<Vec<_>>().into();
        prop_assert!(no_shorter(&times(&wider), &times(&film)));
        let hoses = film.hoses.items().iter().map(|hose| VacuumHoseInput { core: ValveCore::Out.into(), ..hose.clone() });
        let open = PumpDownInput { hoses: hoses.collect::<Vec<_>>().into(), ..film.clone() };
        prop_assert!(no_shorter(&times(&open), &times(&film)));
    }

    #[test]
    fn more_water_takes_longer(input in any_system(), factor in 1.1..3.0_f64) {
        let grams = |number: f64| PumpDownInput {
            water: Mass::grams(number).into(),
            volume: litres(2.0).into(),
            water_depth: Default::default(),
            ..input.clone()
        };
        prop_assert!(no_shorter(&times(&grams(10.0)), &times(&grams(10.0 * factor))));
    }
}
