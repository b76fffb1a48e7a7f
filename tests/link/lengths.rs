//! How long links are.

use coldwright::job::link::JobLinks;
use coldwright::terminal::arrived;
use serde_json::Value;

use crate::ordinary::ordinary;
use crate::random::Random;

#[test]
fn sizes() {
    let links = JobLinks::default();
    let mut random = Random(1);
    let mut lengths = Vec::new();
    let n: usize = std::env::var("N").ok().and_then(|n| n.parse().ok()).unwrap_or(60);
    for number in 0..n {
        let job = ordinary(&mut random);
        if number == 0 && std::env::var("SHOW").is_ok() { println!("{}", serde_json::to_string(&job).unwrap()); }
        lengths.push(links.length(&arrived(job)));
    }
    lengths.sort_unstable();
    println!("ordinary: median {} largest {}", lengths[n / 2], lengths[n - 1]);
    let practice: Value = serde_json::from_str(include_str!("../../www/locales/en-practice-job.json")).unwrap();
    println!("practice: {}", links.length(&arrived(practice)));
}
