//! What keeps a job from becoming a link, or a link from becoming a job.

use super::{DEEPEST, MOST_BYTES, MOST_PARTS};
use crate::quantity::choice;

choice! {
    /// What of a document is bounded.
    LinkBound {
        /// Bytes of its names and texts.
        Bytes = "bytes",
        /// Values, those within others counted.
        Parts = "parts",
        /// How deep values lie in each other.
        Depth = "depth",
    }
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq, Eq, serde::Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum LinkProblem {
    /// The text is no link of a job.
    NotALink,
    /// The link was cut off or changed on its way.
    Damaged,
    /// A later version has written the link.
    NewerVersion {
        /// The version it says.
        found: u8,
        /// The latest version that can be read.
        known: u8,
    },
    /// The link is longer than may be: one to be read, or the one that the job would have.
    TooLarge {
        /// Its characters.
        characters: usize,
        /// The most there may be.
        most: usize,
    },
    /// The document is larger than any job.
    BeyondBounds {
        /// In what.
        bound: LinkBound,
        /// The most there may be.
        most: usize,
    },
    /// What is to be written is no document: none with named members, or with something in it that is no entry.
    NotADocument,
}

/// What stops the walk through a document. As small as can be: every step may be stopped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Stop {
    Damaged,
    NotADocument,
    Beyond(LinkBound),
}

impl From<Stop> for LinkProblem {
    fn from(stop: Stop) -> Self {
        match stop {
            Stop::Damaged => Self::Damaged,
            Stop::NotADocument => Self::NotADocument,
            Stop::Beyond(bound) => Self::BeyondBounds {
                bound,
                most: match bound {
                    LinkBound::Bytes => MOST_BYTES,
                    LinkBound::Parts => MOST_PARTS,
                    LinkBound::Depth => DEEPEST,
                },
            },
        }
    }
}

impl LinkProblem {
    /// The kinds, as they are written.
    pub const KINDS: &'static [&'static str] = &[
        "not-a-link",
        "damaged",
        "newer-version",
        "too-large",
        "beyond-bounds",
        "not-a-document",
    ];
}
