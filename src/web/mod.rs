//! The page's door: converts, calls, converts. The only room that knows JavaScript exists.

#[cfg(feature = "further")]
mod job_link;

use js_sys::{Array, Object, Reflect};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::prelude::{JsCast, JsError, JsValue, wasm_bindgen};

#[cfg(feature = "further")]
pub use job_link::{read_job_link, write_job_link};

use crate::quantity::{
    self, Arrived, DEEPEST_INPUT, Length, Notation, Precision, QuantityKind, System,
};
use crate::registry;
use crate::tables::SOURCES;
use crate::tables::flare::flare_size;
use crate::tables::tube::{TUBE_SIZES, TubeSeries, sizes_of};

/// Says on the console where the core stopped, should it ever: after that the instance is dead.
#[wasm_bindgen(start)]
pub fn start() {
    std::panic::set_hook(Box::new(|stop| {
        web_sys::console::error_1(&JsValue::from_str(&stop.to_string()));
    }));
}

/// Answers an input by a calculation's name: `{answer}` or `{problems}`.
#[wasm_bindgen]
pub fn calculate(name: &str, input: JsValue) -> Result<JsValue, JsError> {
    let input = arrived(&input, DEEPEST_INPUT);
    Ok(registry::answer(
        name,
        input,
        &Serializer::json_compatible(),
    )?)
}

/// Shows an SI number of a quantity in a unit: `{number, unit}`, or nothing for a unit it does not have.
#[wasm_bindgen]
pub fn show(
    quantity: &str,
    si: f64,
    unit: &str,
    precision: &str,
    decimal_mark: &str,
) -> Result<JsValue, JsError> {
    let shown = kind(quantity)
        .zip(Precision::named(precision))
        .and_then(|(kind, precision)| {
            quantity::show(kind, si, unit, precision, notation(decimal_mark))
        });
    to_js(&shown)
}

/// Shows a band in a unit, its limits rounded into it: `{low, high, unit}`.
#[wasm_bindgen(js_name = showBand)]
pub fn show_band(
    quantity: &str,
    low: f64,
    high: f64,
    unit: &str,
    decimal_mark: &str,
) -> Result<JsValue, JsError> {
    let shown = kind(quantity)
        .and_then(|kind| quantity::show_band(kind, (low, high), unit, notation(decimal_mark)));
    to_js(&shown)
}

/// The figures `counts` steps of an instrument away from one that was read: `[{label, text}]`.
#[cfg(feature = "further")]
#[wasm_bindgen]
pub fn steps(
    quantity: &str,
    text: &str,
    assume: &str,
    step: &str,
    counts: &[f64],
    decimal_mark: &str,
) -> Result<JsValue, JsError> {
    let near = |kind| {
        let notation = notation(decimal_mark);
        quantity::steps(kind, text, assume, step, counts, notation)
    };
    to_js(&kind(quantity).map(near).unwrap_or_default())
}

/// The units of a quantity: `[{symbol, metric}]`, the usual metric one first.
#[wasm_bindgen]
pub fn units(quantity: &str) -> Result<JsValue, JsError> {
    #[derive(Serialize)]
    struct UnitChoice {
        symbol: &'static str,
        metric: bool,
    }
    let units = kind(quantity).map_or(&[] as &[_], QuantityKind::units);
    let choices: Vec<UnitChoice> = units
        .iter()
        .map(|unit| UnitChoice {
            symbol: unit.symbol,
            metric: unit.system == System::Metric,
        })
        .collect();
    to_js(&choices)
}

/// The whole bibliography.
#[wasm_bindgen]
pub fn bibliography() -> Result<JsValue, JsError> {
    to_js(&SOURCES)
}

/// The sizes of tube in the tables, in their order: `[{name, series, wall, isFlared}]`. `wall` stands only
/// where a size has several and this is not the usual one: it then belongs into the input of `tube`.
#[wasm_bindgen(js_name = tubeSizes)]
pub fn tube_sizes() -> Result<JsValue, JsError> {
    #[derive(Serialize)]
    #[serde(rename_all = "camelCase")]
    struct TubeSizeChoice {
        name: &'static str,
        series: TubeSeries,
        wall: Option<Length>,
        flared_diameter: Option<Length>,
    }
    let choices: Vec<TubeSizeChoice> = TUBE_SIZES
        .iter()
        .map(|size| {
            let diameter = size.outside_diameter();
            let usual = sizes_of(diameter, Some(size.series)).next();
            let is_usual = usual.is_some_and(|usual| usual.wall() == size.wall());
            TubeSizeChoice {
                name: size.name,
                series: size.series,
                wall: (!is_usual).then(|| size.wall()),
                flared_diameter: flare_size(diameter)
                    .filter(|_| is_usual)
                    .map(|flared| flared.tube()),
            }
        })
        .collect();
    to_js(&choices)
}

fn to_js(value: &impl Serialize) -> Result<JsValue, JsError> {
    Ok(value.serialize(&Serializer::json_compatible())?)
}

fn kind(name: &str) -> Option<QuantityKind> {
    QuantityKind::named(name)
}

fn notation(decimal_mark: &str) -> Notation {
    Notation {
        decimal_mark: decimal_mark.chars().next().unwrap_or('.'),
    }
}

/// Whatever the page sends as the calculations take it; what lies deeper than `depth` is not looked at.
fn arrived(sent: &JsValue, depth: usize) -> Arrived {
    // Texts first, then what they stand in: a job is made of them, and each question asked of JavaScript takes its time.
    if let Some(text) = sent.as_string() {
        return Arrived::Text(text);
    }
    if sent.is_object() {
        return if depth == 0 {
            Arrived::Other
        } else {
            arrived_object(sent, depth - 1)
        };
    }
    if sent.is_undefined() || sent.is_null() {
        return Arrived::Nothing;
    }
    if let Some(number) = sent.as_f64() {
        return Arrived::Number(number);
    }
    sent.as_bool().map_or(Arrived::Other, Arrived::Truth)
}

fn arrived_object(sent: &JsValue, depth: usize) -> Arrived {
    if let Some(items) = sent.dyn_ref::<Array>() {
        return Arrived::List(items.iter().map(|item| arrived(&item, depth)).collect());
    }
    let names = Object::keys(sent.unchecked_ref::<Object>());
    let member = |name: JsValue| {
        let member = Reflect::get(sent, &name);
        let member = member.map_or(Arrived::Other, |member| arrived(&member, depth));
        Some((name.as_string()?, member))
    };
    Arrived::Object(names.iter().filter_map(member).collect())
}
