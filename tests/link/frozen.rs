//! Links that were written once: every later version must read them.

use coldwright::job::link::{JobLinks, LINK_VERSION};
use coldwright::terminal::arrived;
use serde_json::Value;

use crate::same;

/// For a new version add its link and document; those before stay as they are.
const FROZEN: &[(u8, &str, &str)] = &[(
    1,
    include_str!("frozen/version-1.txt"),
    include_str!("frozen/version-1.json"),
)];

#[test]
fn links_of_every_version_are_read() {
    let links = JobLinks::default();
    for (version, link, document) in FROZEN {
        let document: Value = serde_json::from_str(document).unwrap();
        let document = arrived(document);
        if *version == LINK_VERSION {
            assert_eq!(links.write(&document).unwrap().text, link.trim_end());
        }
        assert!(same(&links.read(link.trim_end()).unwrap(), &document));
    }
    assert_eq!(FROZEN.len(), usize::from(LINK_VERSION));
}
