//! Calculations and figures at the page's door.

use coldwright::web::{bibliography, calculate, show, show_band, units};
use js_sys::{Array, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_test::wasm_bindgen_test;

use super::javascript::{at, parse, sorted, text};

#[wasm_bindgen_test]
fn a_typed_input_gets_an_answer() {
    let input = parse(
        r#"{"tube":"5/8","adapterLength":{"text":"40","assume":"mm"},"wrenchLength":"280 mm"}"#,
    );
    let reply = calculate("torque", input).unwrap();
    assert_eq!(at(&reply, "answer.aim").as_f64(), Some(72.5));
    assert_eq!(at(&reply, "answer.setting.aim").as_f64(), Some(63.4375));
    assert!(at(&reply, "problems").is_undefined());
}

#[wasm_bindgen_test]
fn every_problem_comes_at_once_with_its_field() {
    let input = parse(r#"{"tube":"1/0","wall":"38 N·m","wide":1}"#);
    let reply = calculate("tube", input).unwrap();
    let problems: Array = at(&reply, "problems").unchecked_into();
    let codes: Vec<String> = problems
        .iter()
        .map(|problem| {
            format!(
                "{}:{}",
                text(&at(&problem, "field")),
                text(&at(&problem, "code"))
            )
        })
        .collect();
    assert_eq!(
        codes,
        [
            "\"wide\":\"unknown-field\"",
            "\"tube\":\"division-by-zero\"",
            "\"wall\":\"other-quantity\""
        ]
    );
}

#[wasm_bindgen_test]
fn what_javascript_can_send_never_traps() {
    let odd = [
        JsValue::UNDEFINED,
        JsValue::NULL,
        JsValue::TRUE,
        JsValue::from_f64(f64::NAN),
        JsValue::from_f64(f64::INFINITY),
        JsValue::from_f64(-0.0),
        JsValue::from_str(""),
        JsValue::from_str("\u{0}\u{202e}🛠"),
        JsValue::bigint_from_str("12345678901234567890"),
        Array::new().into(),
        Object::new().into(),
        js_sys::Function::new_no_args("").into(),
        JsValue::symbol(None),
    ];
    for value in &odd {
        for name in coldwright::registry::NAMES {
            let whole = calculate(name, value.clone()).unwrap();
            assert!(
                !at(&whole, "problems").is_undefined(),
                "{name}: nothing is required?"
            );
            for field in ["tube", "text", "wall", "plateTorque", "family", "altitude"] {
                let input = Object::new();
                Reflect::set(&input, &field.into(), value).unwrap();
                assert!(calculate(name, input.into()).unwrap().is_object());
            }
        }
    }
    assert!(
        calculate("no such", Object::new().into())
            .unwrap()
            .is_object()
    );
}

#[wasm_bindgen_test]
fn sizes_for_flaring_bear_their_nominal_diameter() {
    let sizes: Array = coldwright::web::tube_sizes().unwrap().unchecked_into();
    let named = sizes.iter().map(|size| {
        let diameter = at(&size, "flaredDiameter").as_f64();
        (at(&size, "name").as_string().unwrap(), diameter)
    });
    let flared: Vec<_> = named
        .filter_map(|(name, diameter)| Some((name, diameter?)))
        .collect();
    let millimetres = [6.35, 7.9375, 9.525, 12.7, 15.875, 19.05];
    assert_eq!(flared.len(), millimetres.len());
    for ((name, diameter), expected) in flared.iter().zip(millimetres) {
        assert!((diameter * 1000.0 - expected).abs() < 1e-9, "{name}");
    }
}

#[wasm_bindgen_test]
fn not_a_number_is_named() {
    let input = Object::new();
    Reflect::set(&input, &"tube".into(), &f64::NAN.into()).unwrap();
    let reply = calculate("tube", input.into()).unwrap();
    assert_eq!(
        at(&reply, "problems.0.code").as_string().unwrap(),
        "not-finite"
    );
}

#[wasm_bindgen_test]
fn figures_are_shown_as_everywhere() {
    let shown = show("torque", 72.5, "ft·lbf", "instrument", ".").unwrap();
    assert_eq!(text(&shown), r#"{"number":"53","unit":"ft·lbf"}"#);
    let band = show_band("torque", 68.0, 77.0, "ft·lbf", ",").unwrap();
    assert_eq!(text(&band), r#"{"low":"51","high":"56","unit":"ft·lbf"}"#);
    assert!(
        show("torque", 1.0, "psi", "instrument", ".")
            .unwrap()
            .is_null()
    );
    let torque: Array = units("torque").unwrap().unchecked_into();
    assert_eq!(text(&at(&torque.get(0), "symbol")), "\"N·m\"");
    let sources: Array = bibliography().unwrap().unchecked_into();
    assert_eq!(sources.length() as usize, coldwright::tables::SOURCES.len());
}

/// The same lines as `tests/boundary.rs` sends natively must get the same replies, to the last digit.
#[wasm_bindgen_test]
fn replies_are_those_of_the_native_core() {
    for line in include_str!("../reference/boundary.jsonl").lines() {
        let recorded = parse(line);
        let name = at(&recorded, "calculation").as_string().unwrap();
        let reply = calculate(&name, at(&recorded, "input")).unwrap();
        assert_eq!(sorted(&reply), sorted(&at(&recorded, "reply")), "{name}");
    }
}
