//! Whatever a document holds, an assessment comes back; and a document is what its file says.

use coldwright::job::DOCUMENT_VERSION;
use proptest::prelude::*;
use serde_json::{Map, Value, json};

use crate::documents::{AFTER_PRACTICE, assessed, practice, reply};

fn leaf() -> impl Strategy<Value = Value> {
    prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<f64>().prop_map(|number| json!(number)),
        prop_oneof![Just(f64::MAX), Just(-1.0), Just(0.0), Just(1e-300)]
            .prop_map(|number| json!(number)),
        "[-0-9a-zA-Z:/.,·²° µ\u{202e}%]{0,24}".prop_map(Value::from),
        Just(json!("2026-13-45T99:99:99Z")),
        Just(json!("9999-12-31T23:59:59Z[_clock=65535]")),
        Just(json!({ "text": "7", "assume": "furlong" })),
        Just(json!({ "low": 1, "high": "x" })),
    ]
}

fn tree() -> impl Strategy<Value = Value> {
    leaf().prop_recursive(4, 40, 6, |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..6).prop_map(Value::from),
            prop::collection::vec((name(), inner), 0..6)
                .prop_map(|members| Value::Object(Map::from_iter(members))),
        ]
    })
}

/// Names of the document and others.
fn name() -> impl Strategy<Value = String> {
    prop_oneof![
        prop::sample::select(vec![
            "plate",
            "lines",
            "joints",
            "readings",
            "pressureTest",
            "evacuation",
            "release",
            "overrides",
            "at",
            "gasLine",
            "tube",
            "unions",
            "order",
            "id",
            "clockChanges",
            "instruments",
            "wrench",
            "charge",
            "hold",
        ])
        .prop_map(str::to_owned),
        "[a-z_]{0,8}",
    ]
}

/// Every place of a document, by the steps to it.
fn places(tree: &Value) -> Vec<String> {
    let mut found = Vec::new();
    let inner: Vec<(String, &Value)> = match tree {
        Value::Object(members) => members
            .iter()
            .map(|(name, member)| (name.clone(), member))
            .collect(),
        Value::Array(items) => items
            .iter()
            .enumerate()
            .map(|(place, item)| (place.to_string(), item))
            .collect(),
        _ => Vec::new(),
    };
    for (step, member) in inner {
        found.push(format!("/{step}"));
        found.extend(
            places(member)
                .into_iter()
                .map(|place| format!("/{step}{place}")),
        );
    }
    found
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn any_document_is_assessed(job in tree(), now in leaf()) {
        let now = now.as_str().unwrap_or(AFTER_PRACTICE).to_owned();
        let reply = reply(job, &now);
        prop_assert!(reply["answer"].is_object() || reply["problems"].is_array());
    }

    #[test]
    fn the_practice_job_with_anything_anywhere_is_assessed(
        changes in prop::collection::vec((any::<prop::sample::Index>(), tree()), 1..6),
    ) {
        let mut job = practice();
        for (place, change) in changes {
            let places = places(&job);
            *job.pointer_mut(&places[place.index(places.len())]).unwrap() = change;
        }
        let reply = reply(job, AFTER_PRACTICE);
        prop_assert!(reply["answer"].is_object() || reply["problems"].is_array());
        if reply["answer"].is_object() {
            let stages = reply["answer"]["stages"].as_array().unwrap();
            prop_assert_eq!(stages.len(), 8);
            // No figure is anything but a number: JSON has no other, and would show null.
            for fact in stages.iter().flat_map(|stage| stage["facts"].as_array().unwrap()) {
                prop_assert!(fact["si"].is_number(), "{}", fact);
            }
        }
    }

    #[test]
    fn a_file_read_back_is_the_same_job(changes in prop::collection::vec((any::<prop::sample::Index>(), leaf()), 0..6)) {
        let mut job = practice();
        for (place, change) in changes {
            let places = places(&job);
            *job.pointer_mut(&places[place.index(places.len())]).unwrap() = change;
        }
        let file = serde_json::to_string_pretty(&job).unwrap();
        let read: Value = serde_json::from_str(&file).unwrap();
        prop_assert_eq!(reply(job, AFTER_PRACTICE), reply(read, AFTER_PRACTICE));
    }
}

#[test]
fn the_document_that_is_written_is_of_the_known_version() {
    assert_eq!(practice()["version"], json!(DOCUMENT_VERSION));
}

#[test]
fn a_job_with_nothing_in_it_is_open_everywhere() {
    let found = assessed(json!({}), AFTER_PRACTICE);
    for stage in found["stages"].as_array().unwrap() {
        assert_eq!(stage["state"], "not-begun", "{stage}");
    }
    assert_eq!(found["joints"], json!([]));
    assert_eq!(found["problems"], json!([]));
}
