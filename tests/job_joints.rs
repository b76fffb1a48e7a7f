//! The joints of a job: what is known of one hangs on no more than it must, and the list can be put in any order.

use coldwright::terminal::{Messages, answer_line};
use serde_json::{Value, json};

/// A line of 3/8 and one of 1/4 with a wrench and records of joints.
fn assessed(wrench: &Value, joints: &Value) -> Value {
    let job = json!({
        "version": 1,
        "plate": { "refrigerant": "R-32" },
        "lines": { "gasLine": { "tube": "3/8" }, "liquidLine": { "tube": "1/4" } },
        "instruments": { "wrench": wrench },
        "joints": joints,
    });
    let input = json!({ "job": job, "now": "2026-03-02T08:00:00Z" });
    let request = json!({ "calculation": "job", "input": input });
    let reply = answer_line(request.to_string().as_bytes(), &Messages::english());
    reply["answer"].clone()
}

fn joint<'a>(answer: &'a Value, id: &str) -> &'a Value {
    let joints = answer["joints"].as_array().unwrap();
    joints.iter().find(|joint| joint["id"] == id).unwrap()
}

fn order(answer: &Value) -> Vec<&str> {
    let joints = answer["joints"].as_array().unwrap();
    joints
        .iter()
        .map(|joint| joint["id"].as_str().unwrap())
        .collect()
}

const GAS: &str = "gas-line-indoor-port";

#[test]
fn the_band_at_the_nut_needs_no_wrench() {
    let wrench = json!({ "adapterLength": "40 mm", "wrenchLength": "long" });
    let answer = assessed(&wrench, &json!([]));
    let gas = joint(&answer, GAS);
    assert!(
        gas["torque"]["low"].is_number() && gas["aim"].is_number(),
        "{gas}"
    );
    assert!(gas["setting"].is_null(), "{gas}");
    // Once the adapter is off, its lever does not matter; the length that cannot be read still does.
    let wrench = json!({ "adapterLength": "40 mm" });
    let off = json!([{ "id": GAS, "withAdapter": false }]);
    let answer = assessed(&wrench, &off);
    assert_eq!(joint(&answer, GAS)["setting"], joint(&answer, GAS)["aim"]);
}

#[test]
fn an_adapter_of_unknown_length_withholds_what_to_set() {
    let on = json!([{ "id": GAS, "withAdapter": true, "scaleTorque": "33 N·m" }]);
    let answer = assessed(&json!({ "wrenchLength": "280 mm" }), &on);
    let gas = joint(&answer, GAS);
    assert_eq!(gas["withAdapter"], true);
    assert!(
        gas["setting"].is_null() && gas["tightened"].is_null(),
        "{gas}"
    );
    assert!(gas["torque"]["high"].is_number(), "{gas}");
}

#[test]
fn a_joint_comes_right_after_another() {
    let answer = assessed(&json!({}), &json!([]));
    let after = &joint(&answer, GAS)["after"];
    let answer = assessed(&json!({}), &json!([{ "id": "drier", "order": after }]));
    let place = order(&answer).iter().position(|id| *id == GAS).unwrap();
    assert_eq!(order(&answer).get(place + 1), Some(&"drier"));
    let last = answer["joints"].as_array().unwrap().last().unwrap();
    assert!(last["after"].is_null() && last["later"].is_null(), "{last}");
}

#[test]
fn added_joints_without_a_place_come_last_and_can_be_moved() {
    let answer = assessed(&json!({}), &json!([{ "id": "one" }, { "id": "two" }]));
    assert_eq!(
        order(&answer).iter().rev().take(2).collect::<Vec<_>>(),
        [&"two", &"one"]
    );
    let later = &joint(&answer, "one")["later"];
    let moved = assessed(
        &json!({}),
        &json!([{ "id": "one", "order": later }, { "id": "two" }]),
    );
    assert_eq!(moved["problems"], json!([]));
    let earlier = &joint(&answer, "two")["earlier"];
    let moved = assessed(
        &json!({}),
        &json!([{ "id": "one" }, { "id": "two", "order": earlier }]),
    );
    assert_eq!(
        order(&moved).iter().rev().take(2).collect::<Vec<_>>(),
        [&"one", &"two"]
    );
}
