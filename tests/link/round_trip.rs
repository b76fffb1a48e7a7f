//! Whatever a document holds comes back.

use coldwright::job::link::{JobLinks, LinkBound, LinkProblem, MOST_BYTES, MOST_PARTS};
use coldwright::quantity::Arrived;
use coldwright::terminal::arrived;
use serde_json::{Value, json};

use crate::generated::generated;
use crate::random::Random;
use crate::same;

const GENERATED_JOBS: usize = 10_000;

/// In several threads, since each takes some milliseconds.
#[test]
fn ten_thousand_generated_jobs_come_back_the_same() {
    let links = JobLinks::default();
    let threads = 4;
    let mut lengths: Vec<usize> = std::thread::scope(|scope| {
        let part = |first: usize| {
            let links = &links;
            scope.spawn(move || {
                let mut random = Random(first as u64 + 100);
                let of_one = |_| round_trip(links, arrived(generated(&mut random)));
                (0..GENERATED_JOBS / threads).map(of_one).collect()
            })
        };
        let parts: Vec<_> = (0..threads).map(part).collect();
        parts
            .into_iter()
            .flat_map(|part: std::thread::ScopedJoinHandle<'_, Vec<usize>>| part.join().unwrap())
            .collect()
    });
    lengths.sort_unstable();
    let (median, largest) = (lengths[GENERATED_JOBS / 2], lengths[GENERATED_JOBS - 1]);
    println!(
        "{GENERATED_JOBS} generated jobs came back the same: median {median} characters, largest {largest}"
    );
    assert_eq!(lengths.len(), GENERATED_JOBS);
}

/// Gives the length of its link.
fn round_trip(links: &JobLinks, job: Arrived) -> usize {
    let text = links.write_whole(&job).unwrap().text;
    assert!(
        text.bytes()
            .all(|letter| letter.is_ascii_alphanumeric() || b"-_".contains(&letter))
    );
    let read = links.read(&text).unwrap();
    assert!(same(&read, &job), "{job:?}\n{read:?}");
    text.len()
}
