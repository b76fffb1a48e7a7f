//! Readings as they come: one only, out of order, at one time, with a jump, with a gauge knocked.

use coldwright::terminal::{Messages, answer_line};
use serde_json::{Value, json};

fn reply(input: Value) -> Value {
    let request = json!({ "calculation": "standing-test", "input": input });
    answer_line(request.to_string().as_bytes(), &Messages::english())
}

/// Hours, psi, degrees Celsius.
fn hold(taken: &[(f64, f64, f64)]) -> Value {
    let reading = |(hours, psi, celsius): &(f64, f64, f64)| {
        json!({
            "time": format!("{hours} h"),
            "gaugePressure": format!("{psi} psi"),
            "temperature": format!("{celsius} °C"),
        })
    };
    let readings: Vec<Value> = taken.iter().map(reading).collect();
    reply(json!({ "readings": readings, "gaugeResolution": "1 psi" }))
}

fn verdict(reply: &Value) -> (&str, &str) {
    let word = |at: &str| {
        reply
            .pointer(at)
            .and_then(Value::as_str)
            .unwrap_or_default()
    };
    (word("/answer/verdict"), word("/answer/reason"))
}

fn left_out(reply: &Value) -> Vec<(u64, &str)> {
    let out = |out: &'_ Value| out["place"].as_u64().unwrap();
    let list = reply["answer"]["leftOut"].as_array().unwrap();
    list.iter()
        .map(|o| (out(o), o["reason"].as_str().unwrap()))
        .collect()
}

#[test]
fn too_few_readings_are_open_and_none_are_asked_for() {
    assert_eq!(reply(json!({}))["problems"][0]["code"], "too-few");
    assert_eq!(
        verdict(&hold(&[(0.0, 600.0, 20.0)])),
        ("open", "too-few-readings")
    );
    let at_once = [(1.0, 600.0, 20.0), (1.0, 590.0, 20.0)];
    assert_eq!(verdict(&hold(&at_once)), ("open", "too-few-readings"));
}

#[test]
fn one_reading_tells_how_long_to_hold() {
    let reply = hold(&[(0.0, 600.0, 20.0)]);
    let seconds = reply["answer"]["holdOfTwoReadings"].as_f64().unwrap();
    assert!((18.0..26.0).contains(&(seconds / 3600.0)), "{seconds} s");
}

#[test]
fn a_reading_before_the_one_above_is_told() {
    let reply = hold(&[(0.0, 600.0, 20.0), (8.0, 600.0, 20.0), (7.0, 600.0, 20.0)]);
    assert_eq!(reply["problems"][0]["field"], "readings[2].time");
    assert_eq!(reply["problems"][0]["code"], "out-of-order");
    assert_eq!(reply["problems"][0]["with"], "readings[1].time");
}

#[test]
fn all_that_is_wrong_is_told_at_its_place() {
    let reply = hold(&[(0.0, -5.0, 20.0), (1.0, 600.0, 90.0), (2.0, 900.0, 20.0)]);
    let problems = reply["problems"].as_array().unwrap();
    let fields: Vec<_> = problems
        .iter()
        .map(|p| p["field"].as_str().unwrap())
        .collect();
    let expected = [
        "readings[0].gaugePressure",
        "readings[1].temperature",
        "readings[2].gaugePressure",
    ];
    assert_eq!(fields, expected);
}

#[test]
fn a_gauge_at_zero_the_next_morning_is_a_loss() {
    let burst = [
        (0.0, 600.0, 20.0),
        (1.0, 600.0, 20.0),
        (2.0, 600.0, 20.0),
        (12.0, 0.0, 18.0),
    ];
    assert_eq!(verdict(&hold(&burst)), ("losing-gas", "large-loss"));
    assert_eq!(
        verdict(&hold(&[(0.0, 600.0, 20.0), (12.0, 0.0, 18.0)])),
        ("losing-gas", "large-loss")
    );
}

#[test]
fn a_short_hold_cannot_tell() {
    let half_an_hour = [(0.0, 600.0, 20.0), (0.5, 600.0, 20.0)];
    assert_eq!(
        verdict(&hold(&half_an_hour)),
        ("cannot-tell", "too-short-to-tell")
    );
}

#[test]
fn weather_is_no_leak() {
    // 30 °F colder overnight: tight nitrogen shows 562 psi.
    let night = [(0.0, 600.0, 21.11), (24.0, 562.0, 4.44)];
    assert_eq!(verdict(&hold(&night)), ("tight", "loss-ruled-out"));
}

#[test]
fn a_pressure_that_rises_unexplained_is_not_tight() {
    let rising = [(0.0, 600.0, 20.0), (24.0, 630.0, 20.0)];
    assert_eq!(verdict(&hold(&rising)), ("cannot-tell", "pressure-rose"));
}

#[test]
fn a_jump_of_40_kelvin_leaves_readings_out() {
    let mut taken: Vec<_> = (0..12)
        .map(|hour| (2.0 * f64::from(hour), 600.0, 20.0))
        .collect();
    taken.insert(6, (10.02, 600.0, 55.0));
    let reply = hold(&taken);
    assert_eq!(left_out(&reply), [(6, "stray")]);
    assert_eq!(verdict(&reply), ("tight", "loss-ruled-out"));
    // Without neighbours to compare with, a fast change counts for nothing.
    let reply = hold(&[(0.0, 600.0, 10.0), (0.02, 600.0, 50.0), (24.0, 596.0, 18.0)]);
    assert_eq!(left_out(&reply), [(1, "temperature-changing")]);
}

#[test]
fn a_misread_gauge_is_left_out() {
    let mut taken: Vec<_> = (0..13)
        .map(|hour| (2.0 * f64::from(hour), 600.0, 20.0))
        .collect();
    taken[4].1 = 500.0;
    let reply = hold(&taken);
    assert_eq!(left_out(&reply), [(4, "stray")]);
    assert_eq!(verdict(&reply), ("tight", "loss-ruled-out"));
}

#[test]
fn gas_let_out_when_a_hose_is_connected_is_no_leak() {
    let at = |hour: i32| {
        (
            2.0 * f64::from(hour),
            if hour < 4 { 600.0 } else { 580.0 },
            20.0,
        )
    };
    let reply = hold(&(0..17).map(at).collect::<Vec<_>>());
    let before: Vec<_> = (0..4).map(|place| (place, "before-step")).collect();
    assert_eq!(left_out(&reply), before);
    assert_eq!(verdict(&reply), ("tight", "loss-ruled-out"));
}

#[test]
fn gas_lost_just_now_may_be_the_start_of_a_leak() {
    let at = |hour: i32| {
        (
            2.0 * f64::from(hour),
            if hour < 12 { 600.0 } else { 580.0 },
            20.0,
        )
    };
    let reply = hold(&(0..14).map(at).collect::<Vec<_>>());
    assert_eq!(left_out(&reply), [(12, "after-step"), (13, "after-step")]);
    assert_eq!(verdict(&reply), ("cannot-tell", "fell-near-end"));
}

#[test]
fn nitrogen_still_warm_from_filling_is_left_out() {
    let at = |place: i32| {
        let hours = 0.25 * f64::from(place);
        (hours, (600.0 + 25.0 * (-hours / 0.25).exp()).round(), 20.0)
    };
    let reply = hold(&(0..97).map(at).collect::<Vec<_>>());
    let out = left_out(&reply);
    assert!(
        !out.is_empty() && out.iter().all(|(_, reason)| *reason == "settling"),
        "{out:?}"
    );
    assert_eq!(out[0].0, 0);
    assert_eq!(verdict(&reply), ("tight", "loss-ruled-out"));
}

#[test]
fn pressure_above_the_weakest_part_is_told() {
    let reading = json!({ "time": 0, "gaugePressure": "600 psi", "temperature": "20 °C" });
    let reply = reply(json!({ "readings": [reading], "lowestRating": "550 psi" }));
    assert_eq!(reply["answer"]["warnings"][0], "above-lowest-rating");
}

#[test]
fn guidance_is_only_a_problem_if_asked_for() {
    assert!(reply(json!({}))["answer"]["guidance"].is_null());
    let asked = reply(json!({ "testRule": "ufgs-15182" }));
    assert_eq!(asked["problems"][0]["field"], "designPressure");
    let both = reply(json!({
        "testRule": "ufgs-15182", "designPressure": "4 MPa", "plateTestPressure": "4 MPa",
    }));
    assert_eq!(both["problems"][0]["code"], "conflict");
}

#[test]
fn half_a_cylinder_is_a_problem() {
    let half = reply(json!({ "designPressure": "4 MPa", "cylinderVolume": "10 L" }));
    let problems = half["problems"].as_array().unwrap();
    let fields: Vec<_> = problems
        .iter()
        .map(|p| p["field"].as_str().unwrap())
        .collect();
    assert_eq!(fields, ["volume", "cylinderPressure"]);
}

/// A tight hold, 600 psi at first and 562 psi a day later and 30 °F colder, with a plate's test pressure.
fn tight_hold_wanting(test_pressure: &str) -> Value {
    let reading = |hours: u8, psi: u16, fahrenheit: u8| {
        json!({
            "time": format!("{hours} h"),
            "gaugePressure": format!("{psi} psi"),
            "temperature": format!("{fahrenheit} °F"),
        })
    };
    reply(json!({
        "readings": [reading(0, 600, 70), reading(24, 562, 40)],
        "gaugeResolution": "1 psi",
        "gaugeUncertainty": "6 psi",
        "plateTestPressure": test_pressure,
    }))
}

#[test]
fn the_highest_reading_must_reach_the_test_pressure() {
    for (wanted, reached, verdict) in [
        ("593 psi", "in-band", ("tight", "loss-ruled-out")),
        ("594 psi", "cannot-tell", ("tight", "loss-ruled-out")),
        ("606 psi", "cannot-tell", ("tight", "loss-ruled-out")),
        (
            "607 psi",
            "out-of-band",
            ("cannot-tell", "test-pressure-not-reached"),
        ),
    ] {
        let found = tight_hold_wanting(wanted);
        assert_eq!(self::verdict(&found), verdict, "{wanted}");
        assert_eq!(found["answer"]["reached"]["verdict"], reached, "{wanted}");
    }
}

#[test]
fn the_rating_of_a_part_is_no_test_pressure() {
    let mut input = json!({ "gaugeUncertainty": "0.1 bar", "designPressure": "41.5 bar", "lowestRating": "44 bar" });
    input["readings"] =
        json!([{ "time": "0 h", "gaugePressure": "44 bar", "temperature": "20 °C" }]);
    let answer = reply(input)["answer"].take();
    assert_eq!(answer["guidance"]["testPressure"], 44e5);
    assert_eq!(answer["reached"]["verdict"], "out-of-band");
}

#[test]
fn a_leak_below_the_test_pressure_is_a_leak_all_the_same() {
    let mut input = json!({ "gaugeResolution": "1 psi", "plateTestPressure": "600 psi" });
    input["readings"] = json!([
        { "time": "0 h", "gaugePressure": "300 psi", "temperature": "20 °C" },
        { "time": "5 h", "gaugePressure": "200 psi", "temperature": "20 °C" },
    ]);
    assert_eq!(verdict(&reply(input)).0, "losing-gas");
}
