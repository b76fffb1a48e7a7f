//! Links that nobody should send: each is refused with a reason, or is a document within the bounds.

use coldwright::job::link::{
    DEEPEST, JobLinks, LONGEST_READ, LinkBound, LinkProblem, MOST_BYTES, MOST_PARTS,
};
use coldwright::quantity::Arrived;
use coldwright::terminal::arrived;

use crate::framed::{bytes_of, framed, text_of};
use crate::generated::generated;
use crate::random::Random;

const HOSTILE_LINKS: usize = 100_000;
/// One in so many has the checksum of what it holds, as only somebody who means it would send.
const FORGED: usize = 50;

const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
const FOREIGN: &[&str] = &[
    "",
    "A",
    "AQ",
    "AQAAAAA",
    "hello",
    "https://example.org/#/torque?tube=5/8",
    "null",
    "{}",
    "AQ==",
    "\u{202e}",
    "<script>alert(1)</script>",
    "data:text/html,hi",
    "%41%51",
    "AQ AQ",
];

fn sample(random: &mut Random) -> Vec<u8> {
    (0..random.below(60))
        .map(|_| random.one_of(LETTERS))
        .collect()
}

/// A link that was cut off, changed, put together of two, or never was one.
fn mangled(random: &mut Random, links: &[String]) -> String {
    let mut link = links[random.below(links.len())].clone().into_bytes();
    match random.below(7) {
        0 => link.truncate(random.below(link.len())),
        1 | 2 => {
            for _ in 0..=random.below(3) {
                let place = random.below(link.len());
                link[place] = random.one_of(LETTERS);
            }
        }
        3 => {
            let other = links[random.below(links.len())].as_bytes();
            let (cut, from) = (random.below(link.len()), random.below(other.len()));
            link.truncate(cut);
            link.extend(&other[from..]);
        }
        4 => link.extend(sample(random)),
        5 => link = sample(random),
        _ => return random.one_of(FOREIGN).into(),
    }
    String::from_utf8(link).unwrap()
}

/// The same with a head that fits, so that what is behind it is read.
fn forged(random: &mut Random, links: &[String]) -> String {
    let link = mangled(random, links);
    let bytes = bytes_of(&link).unwrap_or_default();
    text_of(&framed(1, bytes.get(5..).unwrap_or_default()))
}

#[test]
fn a_hundred_thousand_hostile_links_are_refused_or_are_documents() {
    let reader = JobLinks::default();
    let mut random = Random(7);
    let mut links = Vec::new();
    while links.len() < 40 {
        let link = reader
            .write_whole(&arrived(generated(&mut random)))
            .unwrap()
            .text;
        if link.len() < 400 {
            links.push(link);
        }
    }
    let (mut refused, mut read) = (0, 0);
    let mut forged_and_read = 0;
    for number in 0..HOSTILE_LINKS {
        let is_forged = number % FORGED == 0;
        let link = if is_forged {
            forged(&mut random, &links)
        } else {
            mangled(&mut random, &links)
        };
        match reader.read(&link) {
            Ok(document) => {
                is_within_bounds(&document);
                assert!(is_forged || links.contains(&link), "{link}");
                read += 1;
                forged_and_read += usize::from(is_forged);
            }
            Err(_) => refused += 1,
        }
    }
    println!(
        "{HOSTILE_LINKS} hostile links: {refused} refused, {read} read, {forged_and_read} of them with a forged checksum; no panic"
    );
    assert_eq!(refused + read, HOSTILE_LINKS);
    assert!(refused > HOSTILE_LINKS * 9 / 10);
}

fn is_within_bounds(document: &Arrived) {
    let (parts, bytes) = measured(document, 0);
    assert!(parts <= MOST_PARTS && bytes <= MOST_BYTES);
}

/// Values, and bytes of texts and names.
fn measured(tree: &Arrived, depth: usize) -> (usize, usize) {
    assert!(depth <= DEEPEST);
    let inner: Vec<(usize, usize)> = match tree {
        Arrived::Text(text) => vec![(0, text.len())],
        Arrived::List(items) => items.iter().map(|item| measured(item, depth + 1)).collect(),
        Arrived::Object(members) => members
            .iter()
            .map(|(name, member)| {
                assert!(name != "__proto__" && !name.starts_with('#'));
                let (parts, bytes) = measured(member, depth + 1);
                (parts, bytes + name.len())
            })
            .collect(),
        Arrived::Number(number) => {
            assert!(number.is_finite());
            Vec::new()
        }
        _ => Vec::new(),
    };
    inner
        .into_iter()
        .fold((1, 0), |sum, one| (sum.0 + one.0, sum.1 + one.1))
}

#[test]
fn each_refusal_says_what_it_is() {
    let links = JobLinks::default();
    let job = Arrived::Object(vec![("name".into(), Arrived::Text("Mill house".into()))]);
    let link = links.write(&job).unwrap().text;
    assert_eq!(links.read(&link), Ok(job));
    for end in 2..link.len() {
        assert_eq!(links.read(&link[..end]), Err(LinkProblem::Damaged), "{end}");
    }
    for foreign in FOREIGN
        .iter()
        .filter(|foreign| !foreign.starts_with("AQ") || foreign.contains(['=', ' ']))
    {
        assert_eq!(links.read(foreign), Err(LinkProblem::NotALink), "{foreign}");
    }
    let content = &bytes_of(&link).unwrap()[5..];
    let newer = text_of(&framed(2, content));
    assert_eq!(
        links.read(&newer),
        Err(LinkProblem::NewerVersion { found: 2, known: 1 })
    );
    assert_eq!(
        links.read(&text_of(&framed(0, content))),
        Err(LinkProblem::NotALink)
    );
    let damaged_newer = format!("{}A", &newer[..newer.len() - 1]);
    assert_eq!(links.read(&damaged_newer), Err(LinkProblem::NotALink));
    let long = "A".repeat(LONGEST_READ + 1);
    assert_eq!(
        links.read(&long),
        Err(LinkProblem::TooLarge {
            characters: LONGEST_READ + 1,
            most: LONGEST_READ
        })
    );
    // One letter more or another last one may spell the same bytes, and is still not what was written.
    let respelled = (0..64).flat_map(|letter| {
        let letter = char::from(LETTERS[letter]);
        [
            format!("{link}{letter}"),
            format!("{}{letter}", &link[..link.len() - 1]),
        ]
    });
    for other in respelled.filter(|other| *other != link) {
        assert_eq!(links.read(&other), Err(LinkProblem::Damaged), "{other}");
    }
    let behind = text_of(&framed(1, &[content, &[0, 0, 1]].concat()));
    assert_eq!(links.read(&behind), Err(LinkProblem::Damaged));
}

/// A short link of a document beyond all bounds, as only somebody who means it would make one: what a writer without
/// bounds gives for a list of the same thing over and over.
#[test]
fn a_short_link_of_a_huge_document_is_refused_at_the_bounds() {
    let links = JobLinks::default();
    let text = |length: usize| Arrived::Text("a".repeat(length));
    let object = |value: Arrived| Arrived::Object(vec![("notes".into(), value)]);
    let most = MOST_BYTES - "notes".len() - 1;
    let largest = links.write_whole(&object(text(most))).unwrap().text;
    println!(
        "{MOST_BYTES} bytes in a link of {} characters",
        largest.len()
    );
    assert!(largest.len() < 4000);
    assert!(links.read(&largest).is_ok());
    let beyond = |bound, most| Err(LinkProblem::BeyondBounds { bound, most });
    assert_eq!(
        links.write_whole(&object(text(most + 1))),
        beyond(LinkBound::Bytes, MOST_BYTES)
    );
    let nothings = |count| object(Arrived::List(vec![Arrived::Nothing; count]));
    assert!(links.write_whole(&nothings(MOST_PARTS - 2)).is_ok());
    assert_eq!(
        links.write_whole(&nothings(MOST_PARTS - 1)),
        beyond(LinkBound::Parts, MOST_PARTS)
    );
    let nested =
        |depth| object((0..depth).fold(Arrived::Nothing, |inner, _| Arrived::List(vec![inner])));
    assert!(links.write_whole(&nested(DEEPEST - 1)).is_ok());
    assert_eq!(
        links.write_whole(&nested(DEEPEST)),
        beyond(LinkBound::Depth, DEEPEST)
    );
    // The last letters of the largest link go on for as long as anybody reads: more of the same letter.
    let content = bytes_of(&largest).unwrap();
    for extra in [1, 512] {
        let bomb = [&content[5..], &vec![0xFF; extra]].concat();
        assert!(links.read(&text_of(&framed(1, &bomb))).is_err());
        let bomb = [&content[5..content.len() - 3], &vec![0x55; extra]].concat();
        assert!(links.read(&text_of(&framed(1, &bomb))).is_err());
    }
}

#[test]
fn what_is_no_document_is_not_written() {
    let links = JobLinks::default();
    let object = |name: &str, value| Arrived::Object(vec![(name.into(), value)]);
    for none in [
        Arrived::Nothing,
        Arrived::Text("job".into()),
        Arrived::List(Vec::new()),
        object("a", Arrived::Other),
        object("a", Arrived::Number(f64::NAN)),
        object("a", Arrived::Number(f64::INFINITY)),
        object("__proto__", Arrived::Nothing),
        object("#a", Arrived::Nothing),
    ] {
        assert_eq!(
            links.write(&none).unwrap_err(),
            LinkProblem::NotADocument,
            "{none:?}"
        );
    }
}
