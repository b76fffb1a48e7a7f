//! JSON Schemas of the fields of an input, for the catalogue and for the page's types.

use schemars::{Schema, json_schema};

use super::{QuantityKind, example};

/// `{"text": "12", "assume": "mm"}`: a text as typed, with the unit of a bare number.
fn text_and_unit() -> Schema {
    json_schema!({
        "type": "object",
        "properties": { "text": { "type": "string" }, "assume": { "type": "string" } },
        "required": ["text"],
        "additionalProperties": false,
    })
}

/// `length` to `LengthEntry`.
fn entry_name(kind: QuantityKind, what: &str) -> String {
    let words = kind.name().split('-').map(|word| {
        let (first, rest) = word.split_at(word.len().min(1));
        first.to_uppercase() + rest
    });
    words.collect::<String>() + what
}

pub(super) fn quantity_entry(kind: QuantityKind) -> (String, Schema) {
    let (low, high) = kind.range();
    let description = format!(
        "{} as a number in {}, or as text with a unit such as \"{}\"; {{text, assume}} gives the unit of a bare number",
        kind.name(),
        kind.si_symbol(),
        example(kind)
    );
    let schema = json_schema!({
        "description": description,
        "anyOf": [
            { "type": "number", "minimum": low, "maximum": high },
            { "type": "string" },
            text_and_unit(),
            { "type": "null" },
        ],
        "x-quantity": kind.name(),
        "x-unit": kind.si_symbol(),
    });
    (entry_name(kind, "Entry"), schema)
}

pub(super) fn band_entry(kind: QuantityKind) -> (String, Schema) {
    let (low, high) = kind.range();
    let limit = json_schema!({
        "anyOf": [{ "type": "number", "minimum": low, "maximum": high }, { "type": "string" }],
    });
    let unit = kind.units().first().map_or("", |unit| unit.symbol);
    let description = format!(
        "a band of {0}: text such as \"34-42 {1}\", \"38 ± 4 {1}\" or \"38 {1}\"; {{low, high}}; or a number in {2}",
        kind.name(),
        unit,
        kind.si_symbol()
    );
    let schema = json_schema!({
        "description": description,
        "anyOf": [
            { "type": "number", "minimum": low, "maximum": high },
            { "type": "string" },
            {
                "type": "object",
                "properties": { "low": limit, "high": limit },
                "required": ["low", "high"],
                "additionalProperties": false,
            },
            text_and_unit(),
            { "type": "null" },
        ],
        "x-quantity": kind.name(),
        "x-unit": kind.si_symbol(),
    });
    (entry_name(kind, "BandEntry"), schema)
}

/// Name and schema of a field with words to choose from.
pub fn choice_entry(name: &str, words: &[&str]) -> (String, Schema) {
    let schema = json_schema!({
        "description": "one of the words, or an empty text for none",
        "anyOf": [{ "enum": words }, { "const": "" }, { "type": "null" }],
    });
    (format!("{name}Entry"), schema)
}

pub(super) fn yes_or_no_entry() -> (String, Schema) {
    let schema = json_schema!({ "anyOf": [{ "type": "boolean" }, { "type": "null" }] });
    ("YesOrNoEntry".into(), schema)
}

pub(super) fn text_entry() -> (String, Schema) {
    let schema = json_schema!({ "anyOf": [{ "type": "string" }, { "type": "null" }] });
    ("TextEntry".into(), schema)
}
