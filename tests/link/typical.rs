//! The jobs that the model learns from.

use coldwright::job::link::learnt_from;
use coldwright::terminal::arrived;
use serde_json::Value;

/// `COLDWRIGHT_BLESS=1` writes the file anew: another version of the link, once there are links of this one.
#[test]
fn the_model_learns_from_the_typical_jobs() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/src/job/link/typical-jobs.bin");
    let jobs: Vec<Value> =
        serde_json::from_str(include_str!("../../src/job/link/typical-jobs.json")).unwrap();
    let jobs: Vec<_> = jobs.into_iter().map(arrived).collect();
    let learnt = learnt_from(&jobs).unwrap();
    println!("{} bytes", learnt.len());
    if std::env::var_os("COLDWRIGHT_BLESS").is_some() {
        std::fs::write(path, &learnt).unwrap();
    }
    assert!(std::fs::read(path).unwrap() == learnt);
}
