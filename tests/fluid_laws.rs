//! Laws of the calculations on refrigerants, nitrogen, water, air and flow that hold for every input.

mod hostile;

use coldwright::terminal::{Messages, answer_line};
use proptest::prelude::*;
use serde_json::{Value, json};

const REFRIGERANTS: &[&str] = coldwright::tables::refrigerants::Refrigerant::WORDS;

/// Members that may be absent; any other null is a number that is none.
const MAY_BE_ABSENT: &[&str] = &[
    "glide",
    "lowerFlammabilityLimit",
    "flareClass",
    "overIce",
    "overLiquid",
    "measuredLessExpected",
    "equivalentLength",
    "pressureDrop",
];

fn reply(calculation: &str, input: &Value) -> Value {
    thread_local! {
        static MESSAGES: Messages = Messages::english();
    }
    let line = json!({ "calculation": calculation, "input": input }).to_string();
    MESSAGES.with(|messages| answer_line(line.as_bytes(), messages))
}

fn number(reply: &Value, name: &str) -> f64 {
    let at = reply.pointer(&format!("/answer/{name}"));
    at.and_then(Value::as_f64)
        .unwrap_or_else(|| panic!("no {name} in {reply}"))
}

/// A number around these limits, mostly a sensible one.
fn around(low: f64, high: f64) -> impl Strategy<Value = Value> {
    hostile::around(low, high, 6, 2)
}

fn any_refrigerant() -> impl Strategy<Value = Value> {
    prop_oneof![
        9 => proptest::sample::select(REFRIGERANTS).prop_map(|word| json!(word)),
        1 => "[A-Z]-[0-9]{1,4}[A-Fa-f]?".prop_map(|word| json!(word)),
    ]
}

/// An input with some of the fields, each as likely to stand there as its share says.
fn input(fields: Vec<(&'static str, f64, BoxedStrategy<Value>)>) -> impl Strategy<Value = Value> {
    let members: Vec<_> = fields
        .into_iter()
        .map(|(name, share, value)| {
            proptest::option::weighted(share, value)
                .prop_map(move |value| value.map(|value| (name.to_string(), value)))
        })
        .collect();
    members.prop_map(|members| Value::Object(members.into_iter().flatten().collect()))
}

fn any_request() -> impl Strategy<Value = (&'static str, Value)> {
    let temperature = || around(200.0, 380.0).boxed();
    let gauge = || around(-1e5, 6e6).boxed();
    let absolute = || around(1.0, 6e6).boxed();
    let air = || around(50e3, 110e3).boxed();
    let count = || prop_oneof![(-2..210i32).prop_map(|n| json!(n)), Just(json!("3"))].boxed();
    let ratio = || around(0.0, 1.0).boxed();
    let saturation = input(vec![
        ("refrigerant", 0.97, any_refrigerant().boxed()),
        ("gaugePressure", 0.4, gauge()),
        ("absolutePressure", 0.2, absolute()),
        ("temperature", 0.3, temperature()),
        ("altitude", 0.2, around(-400.0, 4000.0).boxed()),
        ("barometer", 0.1, air()),
        ("curvePoints", 0.3, count()),
        ("curveFrom", 0.2, temperature()),
        ("curveTo", 0.2, temperature()),
        ("tableStep", 0.3, around(0.1, 20.0).boxed()),
        ("tableRows", 0.3, count()),
    ]);
    let vapour = input(vec![
        ("refrigerant", 0.97, any_refrigerant().boxed()),
        ("gaugePressure", 0.4, gauge()),
        ("absolutePressure", 0.2, absolute()),
        ("dewTemperature", 0.3, temperature()),
        ("superheat", 0.5, around(0.0, 40.0).boxed()),
        ("temperature", 0.5, temperature()),
        ("barometer", 0.1, air()),
    ]);
    let nitrogen = input(vec![
        ("firstGaugePressure", 0.8, gauge()),
        ("firstAbsolutePressure", 0.2, absolute()),
        ("firstTemperature", 0.95, around(250.0, 330.0).boxed()),
        ("secondTemperature", 0.95, around(250.0, 330.0).boxed()),
        ("secondGaugePressure", 0.5, gauge()),
        ("barometer", 0.2, air()),
        ("secondBarometer", 0.2, air()),
    ]);
    let water = input(vec![
        ("absolutePressure", 0.6, around(0.01, 2e5).boxed()),
        ("temperature", 0.5, around(180.0, 660.0).boxed()),
    ]);
    let air = input(vec![
        ("dryBulb", 0.7, around(213.0, 353.0).boxed()),
        ("wetBulb", 0.3, around(213.0, 353.0).boxed()),
        ("dewPoint", 0.3, around(198.0, 353.0).boxed()),
        ("relativeHumidity", 0.4, ratio()),
        ("humidityRatio", 0.3, around(1e-6, 0.1).boxed()),
        ("enthalpy", 0.3, around(-6e4, 3e5).boxed()),
        ("barometer", 0.3, air()),
    ]);
    let pipe = input(vec![
        ("bore", 0.97, around(1e-3, 0.1).boxed()),
        ("roughness", 0.3, around(0.0, 1e-4).boxed()),
        ("density", 0.97, around(1.0, 1200.0).boxed()),
        ("viscosity", 0.97, around(8e-6, 1e-3).boxed()),
        ("velocity", 0.4, around(1e-3, 30.0).boxed()),
        ("massFlow", 0.4, around(1e-5, 1.0).boxed()),
        ("volumeFlow", 0.2, around(1e-6, 0.1).boxed()),
        ("length", 0.7, around(0.0, 100.0).boxed()),
        ("elbows90", 0.3, count()),
        ("teeBranches", 0.3, count()),
    ]);
    prop_oneof![
        saturation.prop_map(|input| ("saturation", input)),
        vapour.prop_map(|input| ("vapour", input)),
        nitrogen.prop_map(|input| ("nitrogen-hold", input)),
        water.prop_map(|input| ("water-saturation", input)),
        air.prop_map(|input| ("moist-air", input)),
        pipe.prop_map(|input| ("pipe-friction", input)),
    ]
}

/// A refrigerant and a part of its range of temperatures.
fn any_state() -> impl Strategy<Value = (&'static str, f64)> {
    use coldwright::physics::saturation::temperature_range;
    use coldwright::tables::refrigerants::Refrigerant;
    (proptest::sample::select(Refrigerant::ALL), 0.0..1.0f64).prop_map(|(refrigerant, part)| {
        let (low, high) = temperature_range(refrigerant);
        let (low, high) = (low.in_kelvins(), high.in_kelvins());
        (refrigerant.word(), low + part * (high - low))
    })
}

/// The two directions of a line agree to a tenth of what is promised.
const BOTH_WAYS: f64 = 5e-4;

proptest! {
    #![proptest_config(ProptestConfig { cases: 1500, ..ProptestConfig::default() })]

    #[test]
    fn every_input_gets_numbers_or_problems((calculation, input) in any_request()) {
        let reply = reply(calculation, &input);
        match (reply.get("answer"), reply.get("problems").and_then(Value::as_array)) {
            (Some(answer), None) => {
                let nothing = hostile::nothing_in(answer, "", MAY_BE_ABSENT);
                prop_assert!(nothing.is_none(), "{calculation} {input}: {nothing:?}");
            }
            (None, Some(problems)) => {
                prop_assert!(!problems.is_empty(), "{calculation} {input}");
                for problem in problems {
                    prop_assert!(hostile::nothing_in(problem, "", MAY_BE_ABSENT).is_none(), "{problem}");
                    let message = problem["message"].as_str().unwrap();
                    prop_assert!(!message.contains('{') && !message.starts_with("problem-"), "{message}");
                }
            }
            _ => prop_assert!(false, "{reply}"),
        }
    }
}

proptest! {
    #[test]
    fn a_temperature_leads_to_its_pressure_and_back((refrigerant, kelvins) in any_state()) {
        let there = reply("saturation", &json!({ "refrigerant": refrigerant, "temperature": kelvins }));
        let (bubble, dew) = (number(&there, "bubblePressure"), number(&there, "dewPressure"));
        prop_assert!(bubble >= dew, "{refrigerant} {kelvins}");
        for (pressure, name) in [(bubble, "bubbleTemperature"), (dew, "dewTemperature")] {
            let back = reply("saturation", &json!({ "refrigerant": refrigerant, "absolutePressure": pressure }));
            // At an end of the range the other line may not reach the pressure.
            if back.get("answer").is_some() {
                prop_assert!((number(&back, name) - kelvins).abs() < BOTH_WAYS, "{refrigerant} {kelvins}");
                prop_assert!(number(&back, "glide") >= 0.0);
                prop_assert!(number(&back, "liquidDensity") > number(&back, "vapourDensity"));
                prop_assert!(number(&back, "latentHeat") > 0.0);
            }
        }
    }

    #[test]
    fn higher_pressure_boils_hotter((refrigerant, kelvins) in any_state(), part in 0.01..0.99f64) {
        let at = |kelvins: f64| reply("saturation", &json!({ "refrigerant": refrigerant, "temperature": kelvins }));
        let warmer = at(kelvins);
        let cooler = at(213.15 + (kelvins - 213.15) * part);
        prop_assume!(cooler.get("answer").is_some() && kelvins > 213.2);
        for name in ["bubblePressure", "dewPressure", "vapourDensity"] {
            prop_assert!(number(&warmer, name) > number(&cooler, name), "{refrigerant} {name}");
        }
        prop_assert!(number(&warmer, "liquidDensity") < number(&cooler, "liquidDensity"));
    }

    #[test]
    fn the_gauge_knows_the_air((refrigerant, kelvins) in any_state(), air in 60e3..105e3f64) {
        let there = reply("saturation", &json!({ "refrigerant": refrigerant, "temperature": kelvins, "barometer": air }));
        let gauge = number(&there, "dewGaugePressure");
        let back = reply("vapour", &json!({ "refrigerant": refrigerant, "gaugePressure": gauge, "superheat": 0, "barometer": air }));
        if back.get("answer").is_some() {
            prop_assert!((number(&back, "temperature") - kelvins).abs() < BOTH_WAYS);
            let density = number(&there, "vapourDensity");
            prop_assert!((number(&back, "density") / density - 1.0).abs() < 1e-3);
        }
    }

    #[test]
    fn more_superheat_is_thinner((refrigerant, kelvins) in any_state(), less in 0.0..39.0f64, more in 0.01..1.0f64) {
        let at = |superheat: f64| reply("vapour", &json!({ "refrigerant": refrigerant, "dewTemperature": kelvins, "superheat": superheat }));
        let (cooler, warmer) = (at(less), at(less + more));
        prop_assert!(number(&warmer, "density") < number(&cooler, "density"), "{refrigerant} {kelvins}");
        prop_assert!(number(&warmer, "enthalpy") > number(&cooler, "enthalpy"));
    }

    #[test]
    fn nitrogen_comes_back(pressure in 1e3..5e6f64, first in 250.0..330.0f64, second in 250.0..330.0f64) {
        let hold = |pressure: f64, from: f64, to: f64| {
            reply("nitrogen-hold", &json!({ "firstAbsolutePressure": pressure, "firstTemperature": from, "secondTemperature": to }))
        };
        let there = number(&hold(pressure, first, second), "expectedAbsolutePressure");
        prop_assert!((there > pressure) == (second > first) || first == second);
        prop_assume!(there < 6e6);
        let back = number(&hold(there, second, first), "expectedAbsolutePressure");
        prop_assert!((back / pressure - 1.0).abs() < 1e-9);
    }

    #[test]
    fn water_boils_both_ways(kelvins in 191.0..640.0f64) {
        let there = reply("water-saturation", &json!({ "temperature": kelvins }));
        let back = reply("water-saturation", &json!({ "absolutePressure": number(&there, "absolutePressure") }));
        // The liquid's two equations meet to 25 mK at most, far above 0 °C.
        prop_assert!((number(&back, "temperature") - kelvins).abs() < 0.025, "{kelvins}");
        prop_assert_eq!(&there["answer"]["surface"], &back["answer"]["surface"]);
        if let (Some(ice), Some(liquid)) = (there.pointer("/answer/overIce/pressure"), there.pointer("/answer/overLiquid/pressure")) {
            // Supercooled liquid has the higher vapour pressure, so it turns to ice.
            prop_assert!(liquid.as_f64() >= ice.as_f64());
        }
    }

    #[test]
    fn any_two_facts_of_air_say_the_same(celsius in -20.0..60.0f64, humidity in 0.05..0.99f64, air in 70e3..105e3f64) {
        let state = |first: (&str, f64), second: (&str, f64)| {
            let mut input = json!({ "barometer": air });
            input[first.0] = json!(first.1);
            input[second.0] = json!(second.1);
            reply("moist-air", &input)
        };
        let known = state(("dryBulb", celsius + 273.15), ("relativeHumidity", humidity));
        let fact = |name: &'static str| (name, number(&known, name));
        for name in ["wetBulb", "dewPoint", "humidityRatio", "enthalpy"] {
            let again = state(fact("dryBulb"), fact(name));
            prop_assert!((number(&again, "relativeHumidity") - humidity).abs() < 2e-3, "{name}");
        }
        prop_assert!(number(&known, "dewPoint") <= number(&known, "wetBulb") + 1e-9);
        prop_assert!(number(&known, "wetBulb") <= number(&known, "dryBulb") + 1e-9);
    }

    #[test]
    fn more_flow_costs_more_pressure(bore in 2e-3..0.05f64, velocity in 0.01..20.0f64, more in 1.001..3.0f64) {
        let drop = |velocity: f64| {
            let input = json!({ "bore": bore, "density": 900, "viscosity": 2e-4, "velocity": velocity, "length": 10 });
            number(&reply("pipe-friction", &input), "pressureDrop")
        };
        prop_assert!(drop(velocity * more) > drop(velocity));
    }
}
