//! Pump-down: against integrated differential equations, against closed forms, at its limits, and its laws.

use coldwright::calc::pump_down::{
    IceRisk, LineChange, Moisture, PumpDownAnswer, PumpDownInput, VacuumHoseInput,
    VacuumTargetInput, ValveCore, pump_down,
};
use coldwright::quantity::{
    AbsolutePressure, Length, Mass, Quantity, Temperature, Volume, VolumeFlow,
};
use coldwright::terminal::{Messages, answer_line};
use proptest::prelude::*;
use serde::Deserialize;
use serde_json::{Value, json};

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct Row {
    input: String,
    target_Pa: f64,
    seconds: f64,
    seconds_turbulent: Option<f64>,
}

fn rows() -> Vec<Row> {
    let path = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/tests/reference/pump_down/times.csv"
    );
    let rows: Vec<Row> = csv::Reader::from_path(path)
        .unwrap()
        .into_deserialize()
        .collect::<Result<_, _>>()
        .unwrap();
    assert_eq!(rows.len(), 200, "50 systems of 4 targets");
    rows
}

fn reply(input: &Value) -> Value {
    let request = json!({ "calculation": "pump-down", "input": input });
    answer_line(request.to_string().as_bytes(), &Messages::english())
}

fn seconds(row: &Row) -> f64 {
    let mut input: Value = serde_json::from_str(&row.input).unwrap();
    input["targets"] = json!([{ "pressure": row.target_Pa }]);
    let reply = reply(&input);
    let time = &reply["answer"]["milestones"][0]["time"];
    time.as_f64().unwrap_or_else(|| panic!("{input}: {reply}"))
}

/// By scipy 1.17.1 and iapws 1.5.5, see tests/reference/pump_down; accepted 5 %.
#[test]
fn times_keep_to_the_differential_equation() {
    let (mut worst, mut place) = (0.0_f64, String::new());
    for row in rows() {
        let deviation = (seconds(&row) / row.seconds - 1.0).abs();
        if deviation > worst {
            (worst, place) = (deviation, format!("{} to {} Pa", row.input, row.target_Pa));
        }
    }
    println!("pump-down: worst {worst:.1e} of the time: {place}");
    assert!(worst < 1e-4);
}

/// What laminar flow leaves out near the pressure of the air, dry: in each system the same for every
/// deep vacuum. The estimate against turbulent and choked flow integrated.
#[test]
fn turbulence_is_told_as_an_estimate() {
    let mut parts = Vec::new();
    for row in rows().iter().filter(|row| row.target_Pa < 70.0) {
        let Some(turbulent) = row.seconds_turbulent else {
            continue;
        };
        let more = turbulent - row.seconds;
        parts.push(more / row.seconds);
        let mut input: Value = serde_json::from_str(&row.input).unwrap();
        input["targets"] = json!([{ "pressure": row.target_Pa }]);
        let told = reply(&input)["answer"]["earlyTurbulence"].as_f64().unwrap();
        println!(
            "turbulence: {more:.2} s of {:.1} s, told {told:.2} s",
            row.seconds
        );
    }
    parts.sort_by(f64::total_cmp);
    println!(
        "turbulence: median {:.3}, most {:.3}",
        parts[parts.len() / 2],
        parts[parts.len() - 1]
    );
}
