//! The practice job holds the faults that it is to teach, and nothing in it is unreadable.

use serde_json::{Value, json};

use crate::documents::{AFTER_PRACTICE, assessed, open, practice, reply, rules, stage, texts};

fn states(assessment: &Value) -> Vec<(String, String)> {
    let stages = assessment["stages"].as_array().unwrap().iter();
    let text = |value: &Value| value.as_str().unwrap().to_owned();
    stages
        .map(|stage| (text(&stage["stage"]), text(&stage["state"])))
        .collect()
}

#[test]
fn its_stages_stand_as_the_scenario_wants() {
    let found = assessed(practice(), AFTER_PRACTICE);
    let expected = [
        ("plan", "under-way"),
        ("flare", "in-band"),
        ("tighten", "out-of-band"),
        ("pressure-test", "in-band"),
        ("evacuate", "in-band"),
        ("release-and-charge", "out-of-band"),
        ("run-check", "in-band"),
        ("record", "not-begun"),
    ];
    let expected = expected.map(|(stage, state)| (stage.to_owned(), state.to_owned()));
    assert_eq!(states(&found), expected);
    assert_eq!(found["problems"], json!([]));
    assert_eq!(found["next"], "plan");
    assert_eq!(rules(&found, "release-and-charge"), ["release-before-look"]);
    assert_eq!(open(&found, "plan"), ["calibration"]);
    assert_eq!(open(&found, "release-and-charge"), ["caps-to-look-at"]);
}

#[test]
fn the_overnight_drop_is_weather() {
    let found = assessed(practice(), AFTER_PRACTICE);
    let hold = &found["standingTest"]["hold"];
    // 46.1 bar at 21.0 °C; an ideal gas at 620 m (94.1 kPa of air) would read 44.76 bar at 12.6 °C,
    // real nitrogen a little less.
    let ideal = (46.1e5 + 94.1e3) * (273.15 + 12.6) / (273.15 + 21.0) - 94.1e3;
    let expected = hold["expectedGaugePressure"].as_f64().unwrap();
    assert!(
        (-0.2e5..0.0).contains(&(expected - ideal)),
        "{expected} {ideal}"
    );
    assert_eq!(found["standingTest"]["verdict"], "tight");
}

#[test]
fn only_the_last_hold_of_the_vacuum_counts() {
    let found = assessed(practice(), AFTER_PRACTICE);
    assert_eq!(found["vacuumHoldReadings"], json!([6, 7, 8, 9, 10, 11]));
    assert_eq!(found["vacuumHold"]["verdict"], "dry-and-tight");
    let mut first_hold = practice();
    let readings = first_hold["evacuation"]["readings"].as_array_mut().unwrap();
    readings.truncate(5);
    let found = assessed(first_hold, AFTER_PRACTICE);
    assert_eq!(found["vacuumHoldReadings"], json!([1, 2, 3, 4]));
    assert_ne!(found["vacuumHold"]["verdict"], "dry-and-tight");
}

#[test]
fn the_charge_is_the_plates() {
    let found = assessed(practice(), AFTER_PRACTICE);
    // 20 g/m for 5 m beyond 7.5 m.
    let to_add = found["charge"]["charge"]["toAdd"].as_f64().unwrap();
    assert!((to_add - 0.1).abs() < 1e-9, "{to_add}");
    assert_eq!(found["charge"]["scale"]["state"], "scale-stop");
}

#[test]
fn its_bring_list_comes_from_the_plan() {
    let found = assessed(practice(), AFTER_PRACTICE);
    let ids = texts(&found["bring"], "id");
    for needed in [
        "torque-wrench",
        "nut-wrench-17.0",
        "nut-wrench-22.0",
        "nitrogen",
        "oil",
        "refrigerant-cylinder",
        "service-port-adapter",
        "flammable-gear",
    ] {
        assert!(ids.iter().any(|id| id == needed), "{needed} in {ids:?}");
    }
    assert!(
        !ids.iter()
            .any(|id| id == "recovery-cylinder" || id == "brazing")
    );
    let mut packed = practice();
    packed["packed"] =
        json!([{ "id": "oil", "packed": true }, { "id": "nitrogen", "packed": false }]);
    let found = assessed(packed, AFTER_PRACTICE);
    let bring = found["bring"].as_array().unwrap().iter();
    let packed: Vec<_> = bring.filter(|item| item["packed"] == true).collect();
    assert_eq!(packed.len(), 1);
    assert_eq!(packed[0]["matter"], "oil");
}

#[test]
fn answers_come_with_the_stage_that_is_asked() {
    let input = |stage: Value| json!({ "job": practice(), "now": AFTER_PRACTICE, "stage": stage });
    let ask = |stage: Value| {
        let input = coldwright::terminal::arrived(input(stage));
        let reply = coldwright::registry::answer("job", input, serde_json::value::Serializer);
        reply.unwrap()["answer"].take()
    };
    let plain = ask(Value::Null);
    let evacuate = ask(json!("evacuate"));
    for answer in [
        "charge",
        "roomLimit",
        "standingTest",
        "vacuumHold",
        "running",
        "afterRelease",
    ] {
        assert!(plain[answer].is_null(), "{answer}");
        assert_eq!(
            evacuate[answer].is_null(),
            answer != "vacuumHold",
            "{answer}"
        );
    }
    assert_eq!(plain["stages"], evacuate["stages"]);
}

#[test]
fn a_document_of_a_later_version_is_refused_untouched() {
    let mut later = practice();
    later["version"] = json!(2);
    let reply = reply(later, AFTER_PRACTICE);
    let problem = &reply["problems"][0];
    assert_eq!(problem["code"], "newer-version");
    assert_eq!(
        (&problem["found"], &problem["known"]),
        (&json!(2), &json!(1))
    );
}

#[test]
fn what_is_wrong_is_named_by_its_place_in_the_document() {
    let mut wrong = practice();
    wrong["plate"]["plateCharge"] = json!("much");
    wrong["joints"][1]["measuredCone"] = json!("wide");
    wrong["pressureTest"]["readings"][2]["temperature"] = json!("900 °C");
    wrong["evacuation"]["readings"][7]["pressure"] = json!("low");
    wrong["instruments"]["wrench"]["wrenchAccuracy"] = json!("90 %");
    wrong["lines"]["gasLine"]["colour"] = json!("copper");
    let found = assessed(wrong, AFTER_PRACTICE);
    let mut fields = texts(&found["problems"], "field");
    fields.sort();
    fields.dedup();
    for expected in [
        "evacuation.readings[7].pressure",
        "instruments.wrench.wrenchAccuracy",
        "joints[1].measuredCone",
        "lines.gasLine.colour",
        "plate.plateCharge",
        "pressureTest.readings[2].temperature",
    ] {
        assert!(
            fields.iter().any(|field| field == expected),
            "{expected} in {fields:?}"
        );
    }
    assert_eq!(fields.len(), 6, "{fields:?}");
    assert_eq!(stage(&found, "pressure-test")["state"], "under-way");
}
