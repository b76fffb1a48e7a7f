//! Jobs as links, for the page.

use js_sys::{Array, Object, Reflect};
use wasm_bindgen::prelude::{JsError, JsValue, wasm_bindgen};

use super::{arrived, to_js};
use crate::job::link::{self, DEEPEST, LinkProblem};
use crate::quantity::Arrived;

/// A job's document as a link: `{text, photosLeftOut}` or `{problem}`.
#[wasm_bindgen(js_name = writeJobLink)]
pub fn write_job_link(document: &JsValue) -> Result<JsValue, JsError> {
    // One deeper than may be, so that it is the link that says so.
    let document = arrived(document, DEEPEST + 2);
    match link::write_job_link(&document) {
        Ok(link) => {
            let photos = JsValue::from_f64(link.photos_left_out as f64);
            Ok(object([
                ("text", link.text.into()),
                ("photosLeftOut", photos),
            ]))
        }
        Err(problem) => refused(&problem),
    }
}

/// The document that a job's link carries: `{document}` or `{problem}`.
#[wasm_bindgen(js_name = readJobLink)]
pub fn read_job_link(text: &str) -> Result<JsValue, JsError> {
    match link::read_job_link(text) {
        Ok(document) => Ok(object([("document", tree(&document))])),
        Err(problem) => refused(&problem),
    }
}

fn refused(problem: &LinkProblem) -> Result<JsValue, JsError> {
    Ok(object([("problem", to_js(problem)?)]))
}

fn tree(document: &Arrived) -> JsValue {
    match document {
        Arrived::Nothing | Arrived::Other => JsValue::NULL,
        Arrived::Number(number) => JsValue::from_f64(*number),
        Arrived::Truth(truth) => JsValue::from_bool(*truth),
        Arrived::Text(text) => JsValue::from_str(text),
        Arrived::List(items) => items.iter().map(tree).collect::<Array>().into(),
        Arrived::Object(members) => object(
            members
                .iter()
                .map(|(name, member)| (name.as_str(), tree(member))),
        ),
    }
}

fn object<'a>(members: impl IntoIterator<Item = (&'a str, JsValue)>) -> JsValue {
    let object = Object::new();
    for (name, member) in members {
        // A fresh object takes any member.
        let _ = Reflect::set(&object, &JsValue::from_str(name), &member);
    }
    object.into()
}
