//! The published JSON Schema of a job's document.

use std::fs;
use std::path::Path;

use coldwright::terminal::job_schema;
use serde_json::Value;

fn file(name: &str) -> Value {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("www").join(name);
    serde_json::from_str(&fs::read_to_string(path).unwrap()).unwrap()
}

#[test]
fn the_published_schema_is_that_of_the_core() {
    let published = file("job.schema.json");
    assert_eq!(published, job_schema(), "run ./build.sh types");
}

/// Members of `document` that the schema does not describe.
fn undescribed(schema: &Value, described: &Value, document: &Value, place: &str) -> Vec<String> {
    let described = match described["$ref"].as_str() {
        Some(reference) => schema.pointer(&reference[1..]).unwrap(),
        None => described,
    };
    match document {
        Value::Object(members) if described["properties"].is_object() => members
            .iter()
            .flat_map(|(name, member)| {
                let place = format!("{place}.{name}");
                match described["properties"].get(name) {
                    Some(of_member) => undescribed(schema, of_member, member, &place),
                    None => vec![place],
                }
            })
            .collect(),
        Value::Array(items) => items
            .iter()
            .flat_map(|item| undescribed(schema, &described["items"], item, place))
            .collect(),
        _ => Vec::new(),
    }
}

#[test]
fn every_member_of_the_practice_job_is_described() {
    let schema = job_schema();
    let mut document = file("locales/en-practice-job.json");
    assert_eq!(undescribed(&schema, &schema, &document, ""), [""; 0]);
    document["joints"][0]["unheardOf"] = Value::from(1);
    assert_eq!(
        undescribed(&schema, &schema, &document, ""),
        [".joints.unheardOf"]
    );
}
