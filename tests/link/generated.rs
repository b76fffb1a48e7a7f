//! Jobs of any size with anything in them that the page's store could hold.

use serde_json::{Map, Value, json};

use crate::ordinary::ordinary;
use crate::random::Random;

/// Texts that are nearly what is coded in a way of its own, and texts that nobody expects.
const ODD_TEXTS: &[&str] = &[
    "",
    " ",
    "-",
    "--1",
    "-0",
    "007",
    "0.0",
    "-0.5 K",
    "1,250",
    "1.250,5",
    "1.",
    ".5 bar",
    "12,5 bar",
    "12.50 bar",
    "12.5  bar",
    "9999999999",
    "999999999",
    "-999999999 K",
    "0,001",
    "0.0001 bar",
    "5-9 K",
    "true",
    "null",
    "2026-11-25",
    "2026-11-31",
    "2026-11-25T20:34:21Z",
    "2026-11-25T20:34:21.5Z",
    "2026-11-25T20:34:21.500Z",
    "2026-11-25T20:34:21.000Z",
    "2026-11-25T21:34:21+01:00",
    "2026-11-25T20:34Z",
    "2026-11-25T20:34:60Z",
    "2026-11-25T20:34:21Z[_clock=1]",
    "2026-11-25T20:34:21.007Z[_clock=65535]",
    "2026-11-25T20:34:21Z[_clock=0]",
    "2026-11-25[_clock=2]",
    "1970-01-01T00:00:00Z",
    "9999-12-31T23:59:59.999Z",
    "0001-01-01",
    "abcde",
    "abcdefghijkm",
    "aaaaaaaaaaaaa",
    "liquid-line-union-indoor-side-1",
    "<b onload=x>",
    "\u{0}\u{1}",
    "\u{202e}abc",
    "é",
    "𝄞🛠",
    "\u{feff}",
    "line one\nline two",
    "ÿ",
    "日本語のメモ",
    "a\u{300}",
    "\"\\",
];

const ODD_NAMES: &[&str] = &[
    "",
    "constructor",
    "toString",
    "future field",
    "ñ",
    "at",
    "id",
    "readings",
    "text",
    "assume",
    "0",
    "photos",
];

fn odd_number(random: &mut Random) -> f64 {
    let any = f64::from_bits(random.next());
    let any = if any.is_finite() { any } else { 1.0 };
    random.one_of(&[
        0.0,
        -0.0,
        1.0,
        2.5,
        -7.0,
        0.1,
        1e300,
        f64::MIN_POSITIVE,
        any,
    ])
}

fn odd_text(random: &mut Random) -> String {
    if random.happens(70) {
        return random.one_of(ODD_TEXTS).into();
    }
    let length = random.one_of(&[3, 20, 200]);
    (0..length)
        .filter_map(|_| {
            let highest = random.one_of(&[0x7f, 0x2ff, 0x1_ffff]);
            char::from_u32(random.below(highest) as u32)
        })
        .collect()
}

fn odd(random: &mut Random, depth: usize) -> Value {
    match random.below(if depth == 0 { 6 } else { 8 }) {
        0 => Value::Null,
        1 => json!(random.happens(50)),
        2 => json!(odd_number(random)),
        6 => (0..random.below(4))
            .map(|_| odd(random, depth - 1))
            .collect(),
        7 => {
            let members = (0..random.below(4))
                .map(|_| (random.one_of(ODD_NAMES).to_owned(), odd(random, depth - 1)));
            Value::Object(Map::from_iter(members.collect::<Vec<_>>()))
        }
        _ => json!(odd_text(random)),
    }
}

/// Shortens lists, takes members out and puts odd things in.
fn changed(random: &mut Random, value: &mut Value, most: usize, oddness: usize) {
    match value {
        Value::Array(items) => {
            items.truncate(random.below(most + 1));
            for item in &mut *items {
                changed(random, item, most, oddness);
            }
        }
        Value::Object(members) => {
            if oddness > 0 && random.happens(oddness) {
                members.insert(random.one_of(ODD_NAMES).into(), odd(random, 3));
            }
            let names: Vec<String> = members.keys().cloned().collect();
            for name in names {
                match random.below(100) {
                    0..=2 if oddness > 0 => drop(members.remove(&name)),
                    chance if chance < 3 + oddness => drop(members.insert(name, odd(random, 2))),
                    _ => changed(random, &mut members[&name], most, oddness),
                }
            }
        }
        _ => {}
    }
}

/// The parts of a job in the order of work: a job that has come so far has no later ones.
const PARTS: &[&str] = &[
    "plate",
    "lines",
    "rooms",
    "instruments",
    "packed",
    "joints",
    "pressureTest",
    "evacuation",
    "release",
    "runCheck",
    "notes",
    "signOffs",
];

/// A job at any stage; most are small, some as large as an ordinary one.
pub fn generated(random: &mut Random) -> Value {
    let mut job = ordinary(random);
    let most = if random.happens(3) {
        30
    } else {
        random.below(4)
    };
    let oddness = random.one_of(&[0, 1, 3, 10]);
    let come_to = random
        .below(PARTS.len() + 1)
        .min(random.below(PARTS.len() + 1));
    if let Some(job) = job.as_object_mut() {
        for part in &PARTS[come_to..] {
            if random.happens(90) {
                job.remove(*part);
            }
        }
    }
    changed(random, &mut job, most, oddness);
    if let Some(job) = job.as_object_mut() {
        job.remove("photos");
    }
    job
}
