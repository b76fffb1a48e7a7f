//! What nobody should send and somebody will, and how to tell that an answer to it is sound.

use proptest::prelude::*;
use serde_json::{Value, json};

/// A number within, near and far outside what is sensible, in SI; or what is none. `within` and `near` say how
/// often it is one of the first two, against once for each of the rest.
pub fn around(low: f64, high: f64, within: u32, near: u32) -> impl Strategy<Value = Value> {
    let wide = high - low;
    prop_oneof![
        within => (low..high).prop_map(|number| json!(number)),
        near => (low - wide..high + wide).prop_map(|number| json!(number)),
        1 => any::<f64>().prop_filter("JSON has no infinity", |f| f.is_finite()).prop_map(|f| json!(f)),
        1 => Just(Value::Null),
        1 => Just(json!(low)),
        1 => Just(json!(high)),
        1 => "[-0-9a-zA-Z°% .]{0,8}".prop_map(|text| json!(text)),
    ]
}

/// Where a null stands that must be a number: JSON writes what is not finite as one.
pub fn nothing_in(value: &Value, name: &str, may_be_absent: &[&str]) -> Option<String> {
    match value {
        Value::Null if !may_be_absent.contains(&name) => Some(name.into()),
        Value::Array(items) => items
            .iter()
            .find_map(|item| nothing_in(item, name, may_be_absent)),
        Value::Object(members) => members
            .iter()
            .find_map(|(name, member)| nothing_in(member, name, may_be_absent)),
        _ => None,
    }
}
