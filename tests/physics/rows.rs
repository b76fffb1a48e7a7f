//! Reads the reference rows beside `tests/reference/fluids/README.md`.

use std::path::PathBuf;

use serde::de::DeserializeOwned;

/// A file beside the reference rows.
pub fn path(file: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("tests/reference/fluids")
        .join(file)
}

/// The rows of a file, and a guard that none got lost.
pub fn read<Row: DeserializeOwned>(file: &str, count: usize) -> Vec<Row> {
    let rows: Vec<Row> = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path(path(file))
        .unwrap()
        .into_deserialize()
        .collect::<Result<_, _>>()
        .unwrap();
    assert_eq!(rows.len(), count, "{file}");
    rows
}
