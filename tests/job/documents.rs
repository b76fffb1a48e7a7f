//! Documents for the tests.

use coldwright::registry;
use coldwright::terminal::arrived;
use serde_json::{Value, json};

/// The practice job as the page opens it.
pub fn practice() -> Value {
    serde_json::from_str(include_str!("../../www/locales/en-practice-job.json")).unwrap()
}

/// A moment after everything in it.
pub const AFTER_PRACTICE: &str = "2026-03-03T14:00:00Z";

/// The reply to a document, with the answers of every stage.
pub fn reply(job: Value, now: &str) -> Value {
    let input = json!({ "job": job, "now": now, "stage": "record" });
    registry::answer("job", arrived(input), serde_json::value::Serializer).unwrap()
}

/// How a document stands.
pub fn assessed(job: Value, now: &str) -> Value {
    let mut reply = reply(job, now);
    assert!(reply["problems"].is_null(), "{reply}");
    reply["answer"].take()
}

/// A stage of an assessment.
pub fn stage<'a>(assessment: &'a Value, name: &str) -> &'a Value {
    let stages = assessment["stages"].as_array().unwrap();
    stages.iter().find(|stage| stage["stage"] == name).unwrap()
}

/// Rules that were broken in a stage.
pub fn rules(assessment: &Value, name: &str) -> Vec<String> {
    texts(&stage(assessment, name)["alarms"], "rule")
}

/// What is open in a stage.
pub fn open(assessment: &Value, name: &str) -> Vec<String> {
    texts(&stage(assessment, name)["open"], "matter")
}

/// One member of each item of a list.
pub fn texts(list: &Value, member: &str) -> Vec<String> {
    let items = list.as_array().unwrap().iter();
    items
        .map(|item| item[member].as_str().unwrap().to_owned())
        .collect()
}
