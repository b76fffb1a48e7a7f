//! Reference rows through the door: see tests/reference/door/README.md.

use std::path::Path;

use coldwright::terminal::{Messages, answer_line};
use serde_json::{Value, json};

/// One row, as in the header of the files.
struct Row {
    place: String,
    calculation: String,
    input: Value,
    at: String,
    expected: String,
    tolerance: String,
    origin: String,
    source: String,
}

fn rows(path: &Path) -> Vec<Row> {
    let mut reader = csv::Reader::from_path(path).unwrap();
    let name = path.file_name().unwrap().to_string_lossy().into_owned();
    let records = reader.records().map(Result::unwrap).enumerate();
    records
        .map(|(index, record)| Row {
            place: format!("{name}:{}", index + 2),
            calculation: record[0].into(),
            input: serde_json::from_str(&record[1]).unwrap(),
            at: record[2].into(),
            expected: record[3].into(),
            tolerance: record[4].into(),
            origin: record[5].into(),
            source: record[6].into(),
        })
        .collect()
}

/// What is wrong with a row's reply, if anything.
fn complaint(row: &Row, messages: &Messages) -> Option<String> {
    let request = json!({ "calculation": row.calculation, "input": row.input });
    let reply = answer_line(request.to_string().as_bytes(), messages);
    let answer = reply
        .get("answer")
        .and_then(|answer| answer.pointer(&row.at));
    let Some(found) = answer.or_else(|| reply.pointer(&row.at)) else {
        return Some(format!("{}: nothing at {}: {reply}", row.place, row.at));
    };
    let matches = match (found, row.expected.parse::<f64>()) {
        (Value::Number(found), Ok(expected)) => {
            let tolerance: f64 = row.tolerance.parse().unwrap();
            (found.as_f64().unwrap() - expected).abs() <= tolerance
        }
        (Value::String(found), _) => *found == row.expected,
        _ => false,
    };
    let wanted = format!("{} ± {}", row.expected, row.tolerance);
    (!matches).then(|| format!("{}: {} is {found}, not {wanted}", row.place, row.at))
}

#[test]
fn every_reference_row_holds() {
    let messages = Messages::english();
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/reference/door");
    let mut paths: Vec<_> = std::fs::read_dir(folder)
        .unwrap()
        .map(|e| e.unwrap().path())
        .collect();
    paths.retain(|path| path.extension().is_some_and(|extension| extension == "csv"));
    let rows: Vec<Row> = paths.iter().flat_map(|path| rows(path)).collect();
    // A file that is lost or cut short must not pass for success.
    assert!(rows.len() >= FEWEST_ROWS, "only {} rows", rows.len());
    for row in &rows {
        let known = ["published", "second-method", "hand-worked", "frozen"];
        assert!(
            known.contains(&row.origin.as_str()),
            "{}: origin {}",
            row.place,
            row.origin
        );
        assert!(!row.source.is_empty(), "{}: no source", row.place);
    }
    let complaints: Vec<String> = rows
        .iter()
        .filter_map(|row| complaint(row, &messages))
        .collect();
    assert!(complaints.is_empty(), "{}", complaints.join("\n"));
}

/// Rows that there were when this was last raised.
const FEWEST_ROWS: usize = 1000;
