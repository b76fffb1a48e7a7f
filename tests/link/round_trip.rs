//! Whatever a document holds comes back.

use coldwright::job::link::JobLinks;
use coldwright::quantity::Arrived;
use coldwright::terminal::arrived;
use serde_json::json;

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

#[test]
fn the_order_of_members_is_no_part_of_a_link_and_photos_are_left_out() {
    let links = JobLinks::default();
    let one = |text: &str| Arrived::Text(text.into());
    let member = |name: &str, value| (name.to_owned(), value);
    let photos = arrived(json!([{ "id": "abcde", "stage": "plan" }, { "id": "fghij" }]));
    let members = vec![
        member("zone", one("b")),
        member("photos", photos),
        member("name", one("a")),
        member(
            "area",
            Arrived::Object(vec![member("photos", one("within"))]),
        ),
    ];
    let turned = members.iter().rev().cloned().collect();
    let (link, other) = (
        links.write(&Arrived::Object(members)).unwrap(),
        links.write(&Arrived::Object(turned)).unwrap(),
    );
    assert_eq!(link, other);
    assert_eq!(link.photos_left_out, 2);
    let expected = arrived(json!({ "name": "a", "area": { "photos": "within" }, "zone": "b" }));
    assert!(same(&links.read(&link.text).unwrap(), &expected));
}
