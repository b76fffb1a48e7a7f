//! Jobs as links at the page's door: the same text as natively.

use coldwright::web::{read_job_link, write_job_link};
use js_sys::{Array, Object, Reflect};
use wasm_bindgen::JsValue;
use wasm_bindgen_test::wasm_bindgen_test;

use super::javascript::{at, parse, sorted};

const FROZEN_LINK: &str = include_str!("../link/frozen/version-1.txt");
const FROZEN_DOCUMENT: &str = include_str!("../link/frozen/version-1.json");

#[wasm_bindgen_test]
fn the_text_is_that_of_the_native_core() {
    let document = parse(FROZEN_DOCUMENT);
    let written = write_job_link(&document).unwrap();
    assert_eq!(
        at(&written, "text").as_string().unwrap(),
        FROZEN_LINK.trim_end()
    );
    assert_eq!(at(&written, "photosLeftOut").as_f64(), Some(0.0));
    let read = read_job_link(FROZEN_LINK.trim_end()).unwrap();
    assert_eq!(sorted(&at(&read, "document")), sorted(&document));
}

#[wasm_bindgen_test]
fn what_is_wrong_is_a_kind_with_its_data() {
    let kind = |reply: JsValue| sorted(&at(&reply, "problem"));
    let refused = |text: &str| kind(read_job_link(text).unwrap());
    assert_eq!(refused("hello"), r#"{"kind":"not-a-link"}"#);
    assert_eq!(refused(&FROZEN_LINK[..400]), r#"{"kind":"damaged"}"#);
    let long = "A".repeat(50_000);
    assert_eq!(
        refused(&long),
        r#"{"characters":50000,"kind":"too-large","most":40000}"#
    );
    let unwritten = |document: &JsValue| kind(write_job_link(document).unwrap());
    let odd = Object::new();
    Reflect::set(
        &odd,
        &"at".into(),
        &js_sys::Function::new_no_args("").into(),
    )
    .unwrap();
    let endless = Object::new();
    Reflect::set(&endless, &"within".into(), &endless).unwrap();
    for none in [
        JsValue::NULL,
        JsValue::from_str("job"),
        Array::new().into(),
        odd.into(),
    ] {
        assert_eq!(unwritten(&none), r#"{"kind":"not-a-document"}"#);
    }
    assert_eq!(
        unwritten(&endless),
        r#"{"bound":"depth","kind":"beyond-bounds","most":64}"#
    );
}

#[wasm_bindgen_test]
fn half_a_letter_is_replaced_as_in_any_text_of_unicode() {
    let document = Object::new();
    let half = js_sys::JsString::from_char_code1(0xD83D);
    Reflect::set(&document, &"name".into(), &half).unwrap();
    let written = write_job_link(&document).unwrap();
    let read = read_job_link(&at(&written, "text").as_string().unwrap()).unwrap();
    assert_eq!(at(&read, "document.name").as_string().unwrap(), "\u{FFFD}");
}
