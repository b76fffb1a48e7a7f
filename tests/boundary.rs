//! What crosses the boundary, kept as a snapshot: the catalogue's calculations and a reply of each.
//!
//! The replies guard a change and prove nothing; `tests/wasm/door.rs` compares the same lines inside
//! WebAssembly. `COLDWRIGHT_BLESS=1 cargo test --test boundary` records them anew.

use std::fs;
use std::path::{Path, PathBuf};

use coldwright::registry;
use coldwright::terminal::arrived;
use serde_json::{Value, json};

fn snapshot() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/reference/boundary.jsonl")
}

fn reply(name: &str, input: Value) -> Value {
    registry::answer(name, arrived(input), serde_json::value::Serializer).unwrap()
}

#[test]
fn replies_are_as_recorded() {
    let recorded = fs::read_to_string(snapshot()).unwrap();
    let mut names = Vec::new();
    let mut fresh = String::new();
    for line in recorded.lines() {
        let row: Value = serde_json::from_str(line).unwrap();
        let name = row["calculation"].as_str().unwrap().to_string();
        let reply = reply(&name, row["input"].clone());
        let line = json!({ "calculation": name, "input": row["input"], "reply": reply });
        fresh.push_str(&format!("{line}\n"));
        names.push(name);
    }
    if std::env::var_os("COLDWRIGHT_BLESS").is_some() {
        fs::write(snapshot(), &fresh).unwrap();
        return;
    }
    for (fresh, recorded) in fresh.lines().zip(recorded.lines()) {
        let value = |line: &str| serde_json::from_str::<Value>(line).unwrap();
        assert_eq!(value(fresh), value(recorded));
    }
    for name in registry::NAMES {
        assert!(
            names.iter().any(|recorded| recorded == name),
            "no line for {name}"
        );
    }
}
