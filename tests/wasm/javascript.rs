//! What JavaScript sends and gets, as tests look at it.

use js_sys::{Array, JSON, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};

pub fn parse(json: &str) -> JsValue {
    JSON::parse(json).unwrap()
}

pub fn text(value: &JsValue) -> String {
    JSON::stringify(value).unwrap().into()
}

/// The member at a path of names parted by dots.
pub fn at(value: &JsValue, path: &str) -> JsValue {
    path.split('.')
        .fold(value.clone(), |value, name| member(&value, name))
}

fn member(value: &JsValue, name: &str) -> JsValue {
    Reflect::get(value, &name.into()).unwrap()
}

/// A value as JSON with the members of every object in the order of their names.
pub fn sorted(value: &JsValue) -> String {
    if Array::is_array(value) {
        let items = value.unchecked_ref::<Array>().iter();
        let items: Vec<String> = items.map(|item| sorted(&item)).collect();
        return format!("[{}]", items.join(","));
    }
    if !value.is_object() {
        return text(value);
    }
    let keys = Object::keys(value.unchecked_ref::<Object>());
    let mut names: Vec<String> = keys.iter().filter_map(|key| key.as_string()).collect();
    names.sort();
    let members = names
        .iter()
        .map(|name| format!("{name:?}:{}", sorted(&member(value, name))));
    format!("{{{}}}", members.collect::<Vec<_>>().join(","))
}
