//! Jobs as links, for the page.

use serde::Serialize;
use wasm_bindgen::prelude::{JsError, JsValue, wasm_bindgen};

use super::{arrived, to_js};
use crate::job::link::{DEEPEST, JobLinks, LinkProblem};
use crate::quantity::Arrived;

/// What comes back.
#[derive(Serialize)]
#[serde(untagged)]
enum LinkReply {
    #[serde(rename_all = "camelCase")]
    Written {
        text: String,
        photos_left_out: usize,
    },
    Read {
        document: Arrived,
    },
    Refused {
        problem: LinkProblem,
    },
}

/// A job's document as a link: `{text, photosLeftOut}` or `{problem}`.
#[wasm_bindgen(js_name = writeJobLink)]
pub fn write_job_link(document: &JsValue) -> Result<JsValue, JsError> {
    // One deeper than may be, so that it is the link that says so.
    let document = arrived(document, DEEPEST + 2);
    to_js(&match JobLinks::default().write(&document) {
        Ok(link) => LinkReply::Written {
            text: link.text,
            photos_left_out: link.photos_left_out,
        },
        Err(problem) => LinkReply::Refused { problem },
    })
}

/// The document that a job's link carries: `{document}` or `{problem}`.
#[wasm_bindgen(js_name = readJobLink)]
pub fn read_job_link(text: &str) -> Result<JsValue, JsError> {
    to_js(&match JobLinks::default().read(text) {
        Ok(document) => LinkReply::Read { document },
        Err(problem) => LinkReply::Refused { problem },
    })
}
