//! The JSON Schema of every input and answer.

use schemars::generate::SchemaSettings;
use serde_json::{Value, json};

use crate::calc::Problem;
use crate::job::JobInput;
use crate::job::link::LinkProblem;
use crate::registry;
use crate::tables::Source;

/// The catalogue: one JSON Schema document with the calculations by name and all types under `$defs`.
pub fn catalogue() -> Value {
    let mut generator = SchemaSettings::draft2020_12().into_generator();
    let entries = registry::catalogue(&mut generator);
    let problem = generator.subschema_for::<Problem>();
    let source = generator.subschema_for::<Source>();
    let link_problem = generator.subschema_for::<LinkProblem>();
    let calculations: serde_json::Map<String, Value> = entries
        .into_iter()
        .map(|entry| {
            let members = json!({
                "type": "object",
                "properties": { "input": entry.input, "answer": entry.answer },
                "required": ["input", "answer"],
                "additionalProperties": false,
            });
            (entry.name.to_string(), members)
        })
        .collect();
    let names: Vec<String> = calculations.keys().cloned().collect();
    json!({
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Catalogue",
        "description": "Calculations by name. A line {\"calculation\": name, \"input\": {…}} gets {\"answer\": {…}} or {\"problems\": [{\"field\", \"code\", \"message\", …}]}. Numbers are in SI units, named in each schema as x-unit.",
        "type": "object",
        "properties": {
            "calculations": {
                "type": "object",
                "properties": calculations,
                "required": names,
                "additionalProperties": false,
            },
            "problem": problem,
            "source": source,
            "linkProblem": link_problem,
        },
        "required": ["calculations", "problem", "source", "linkProblem"],
        "additionalProperties": false,
        "$defs": generator.definitions(),
    })
}

/// The JSON Schema of a job's document.
pub fn job_schema() -> Value {
    let mut generator = SchemaSettings::draft2020_12().into_generator();
    let document = generator.subschema_for::<JobInput>();
    json!({
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Job",
        "description": "A job of Coldwright, document version 1: plate, lines, joints, readings and names as they were entered. Numbers are in SI units, named in each schema as x-unit; a text carries its own unit.",
        "$ref": document.get("$ref"),
        "$defs": generator.definitions(),
    })
}
