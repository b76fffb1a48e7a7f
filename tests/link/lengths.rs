//! How long links are.

use coldwright::job::link::{JobLinks, LONGEST_WRITTEN};
use coldwright::terminal::arrived;
use serde_json::{Value, json};

use crate::ordinary::ordinary;
use crate::random::Random;

const ORDINARY_JOBS: usize = 500;

/// Characters of an address that a link stands behind: `https://example.org/coldwright/#/link/`.
const ADDRESS: usize = 40;

#[test]
fn an_ordinary_job_of_twenty_joints_and_sixty_readings_fits_a_message() {
    let links = JobLinks::default();
    let mut random = Random(1);
    let mut lengths: Vec<usize> = (0..ORDINARY_JOBS)
        .map(|_| {
            let job = ordinary(&mut random);
            assert_eq!(count(&job, "joints"), 20);
            let readings =
                count(&job["pressureTest"], "readings") + count(&job["evacuation"], "readings");
            assert_eq!(readings, 60);
            let link = links.write(&arrived(job)).unwrap();
            link.text.len()
        })
        .collect();
    lengths.sort_unstable();
    let (median, largest) = (lengths[ORDINARY_JOBS / 2], lengths[ORDINARY_JOBS - 1]);
    println!("{ORDINARY_JOBS} ordinary jobs: median {median} characters, largest {largest}");
    assert!(largest <= LONGEST_WRITTEN);
    const { assert!(LONGEST_WRITTEN + ADDRESS <= 1200) };
}

fn count(value: &Value, list: &str) -> usize {
    value[list].as_array().unwrap().len()
}

#[test]
fn the_practice_job_has_a_link() {
    let practice: Value =
        serde_json::from_str(include_str!("../../www/locales/en-practice-job.json")).unwrap();
    let link = JobLinks::default().write(&arrived(practice)).unwrap();
    println!("the practice job: {} characters", link.text.len());
    assert!(link.text.len() < 700);
}

#[test]
fn a_larger_job_is_told_its_length_and_is_read_all_the_same() {
    let mut random = Random(2);
    let mut job = ordinary(&mut random);
    let readings = job["pressureTest"]["readings"].as_array_mut().unwrap();
    let more: Vec<Value> = readings
        .iter()
        .cloned()
        .cycle()
        .take(400)
        .enumerate()
        .map(|(number, mut reading)| {
            reading["id"] = json!(random.id(12));
            reading["gaugePressure"] = json!(format!("{number} bar"));
            reading
        })
        .collect();
    *readings = more;
    let links = JobLinks::default();
    let job = arrived(job);
    let problem = serde_json::to_value(links.write(&job).unwrap_err()).unwrap();
    let characters = problem["characters"].as_u64().unwrap() as usize;
    assert_eq!(
        problem,
        json!({ "kind": "too-large", "characters": characters, "most": LONGEST_WRITTEN })
    );
    let text = links.write_whole(&job).unwrap().text;
    assert_eq!(text.len(), characters);
    assert!(characters > 4000);
    assert!(crate::same(&links.read(&text).unwrap(), &job));
}
