//! A job as a link: the whole document in a short text of `A-Z a-z 0-9 - _`, and back.
//!
//! # Layout
//! Base64url (RFC 4648, section 5, without padding) of: the version's byte; four bytes of CRC-32 over the version's
//! byte and all that follows the checksum; the document. Every later version keeps this head, so that a reader can
//! tell a damaged link from a newer one.
//!
//! The document of version 1 is its tree walked in order, each decision coded arithmetically by what a model expects
//! there. The model begins with what it learnt from [typical jobs](typical) and goes on learning from the document.

mod bytes;
mod coder;
mod figure;
mod letters;
mod memory;
mod model;
mod moment;
mod names;
mod problem;
mod slots;
mod text;
mod tree;
mod typical;

pub use problem::{LinkBound, LinkProblem};
pub use typical::learnt_from;

use crate::quantity::Arrived;
use coder::Coder;
use memory::Memory;
use tree::Walk;

/// The version that is written. Version 1 is the first.
pub const LINK_VERSION: u8 = 1;

/// Most characters of a job's link that are written: with the page's address before them they fit a message, and a
/// code that a camera reads.
pub const LONGEST_WRITTEN: usize = 1_160;

/// Most characters that are read.
pub const LONGEST_READ: usize = 40_000;

/// Most bytes that the names and texts of a document may have.
pub const MOST_BYTES: usize = 100_000;

/// Most values that a document may have, those within others counted.
pub const MOST_PARTS: usize = 20_000;

/// How deep values may lie in each other: as deep as in the page's store.
pub const DEEPEST: usize = 64;

/// The member of the document that is not carried: pictures that are kept elsewhere.
const PHOTOS: &str = "photos";

/// A job as a link.
#[derive(Clone, Debug, PartialEq)]
pub struct WrittenLink {
    /// The link's text.
    pub text: String,
    /// Photos of the document that are not in it.
    pub photos_left_out: usize,
}

/// Writes and reads links. Learning from typical jobs takes some milliseconds, and is done once for each.
#[derive(Clone)]
pub struct JobLinks {
    memory: Memory,
}

impl Default for JobLinks {
    fn default() -> Self {
        Self {
            memory: typical::memory(),
        }
    }
}

impl JobLinks {
    /// The document as a link, without its `photos`, which are pictures kept elsewhere.
    ///
    /// The order of an object's members says nothing and is not kept: the same document has the same link.
    ///
    /// # Errors
    /// What is no document, what is beyond the bounds of one, and a link that would be too long.
    ///
    /// # Examples
    /// ```
    /// use coldwright::job::link::JobLinks;
    /// use coldwright::quantity::Arrived;
    /// let job = Arrived::Object(vec![("name".into(), Arrived::Text("Mill house".into()))]);
    /// let links = JobLinks::default();
    /// let written = links.write(&job).unwrap();
    /// assert!(written.text.starts_with('A') && written.text.len() < 40);
    /// assert_eq!(links.read(&written.text), Ok(job));
    /// ```
    pub fn write(&self, document: &Arrived) -> Result<WrittenLink, LinkProblem> {
        self.write_whole(document)
            .and_then(WrittenLink::short_enough)
    }

    /// The same, however long the link is.
    ///
    /// # Errors
    /// What is no document, and what is beyond the bounds of one.
    pub fn write_whole(&self, document: &Arrived) -> Result<WrittenLink, LinkProblem> {
        written(self.memory.clone(), document)
    }

    /// The document that a link carries.
    ///
    /// # Errors
    /// What is wrong with the link. Time and memory are bounded, whatever it is.
    pub fn read(&self, text: &str) -> Result<Arrived, LinkProblem> {
        read(&content_of(text)?, self.memory.clone())
    }
}

/// [`JobLinks::write`] for a single document.
///
/// # Errors
/// The same.
pub fn write_job_link(document: &Arrived) -> Result<WrittenLink, LinkProblem> {
    written(typical::memory(), document).and_then(WrittenLink::short_enough)
}

/// [`JobLinks::read`] for a single link.
///
/// # Errors
/// The same.
pub fn read_job_link(text: &str) -> Result<Arrived, LinkProblem> {
    read(&content_of(text)?, typical::memory())
}

fn written(memory: Memory, document: &Arrived) -> Result<WrittenLink, LinkProblem> {
    let Arrived::Object(members) = document else {
        return Err(LinkProblem::NotADocument);
    };
    let photos = members.iter().find(|(name, _)| name == PHOTOS);
    let photos_left_out = match photos {
        Some((_, Arrived::List(photos))) => photos.len(),
        _ => 0,
    };
    let mut walk = Walk::new(Coder::writing(), memory);
    walk.document(Some(document))?;
    Ok(WrittenLink {
        text: letters::text_of(&bytes::framed(&walk.finish())),
        photos_left_out,
    })
}

fn content_of(text: &str) -> Result<Vec<u8>, LinkProblem> {
    if text.len() > LONGEST_READ {
        return Err(LinkProblem::TooLarge {
            characters: text.len(),
            most: LONGEST_READ,
        });
    }
    let bytes = letters::bytes_of(text).ok_or(LinkProblem::NotALink)?;
    let is_as_written = letters::text_of(&bytes) == text;
    let content = bytes::content(bytes)?;
    is_as_written.then_some(content).ok_or(LinkProblem::Damaged)
}

fn read(content: &[u8], memory: Memory) -> Result<Arrived, LinkProblem> {
    let mut walk = Walk::new(Coder::reading(content), memory);
    let document = walk.document(None)?;
    // What was read would be written just so: nothing stands behind it, and nothing is missing.
    if walk.finish() == content {
        Ok(document)
    } else {
        Err(LinkProblem::Damaged)
    }
}

impl WrittenLink {
    fn short_enough(self) -> Result<Self, LinkProblem> {
        if self.text.len() <= LONGEST_WRITTEN {
            return Ok(self);
        }
        Err(LinkProblem::TooLarge {
            characters: self.text.len(),
            most: LONGEST_WRITTEN,
        })
    }
}
