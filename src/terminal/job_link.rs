//! Jobs as links: a document in JSON in, a link out, and back.

use std::io::{self, Read, Write};

use serde_json::Value;

use super::{LONGEST_LINE, Messages, arrived};
use crate::job::link::{JobLinks, LinkProblem};

/// Reads a job's document and writes its link.
///
/// # Errors
/// Those of reading and writing, and why the document has no link.
pub fn job_link(input: impl Read, mut output: impl Write) -> io::Result<()> {
    let document: Value = serde_json::from_str(&whole(input)?)?;
    let link = JobLinks::default().write(&arrived(document));
    writeln!(output, "{}", link.map_err(refusal)?.text)
}

/// Reads a job's link, or an address that ends in one, and writes the document.
///
/// # Errors
/// Those of reading and writing, and what is wrong with the link.
pub fn job_of_link(input: impl Read, mut output: impl Write) -> io::Result<()> {
    let text = whole(input)?;
    let is_other = |letter: char| !letter.is_ascii_alphanumeric() && !"-_".contains(letter);
    let link = text.trim().rsplit(is_other).next().unwrap_or_default();
    let document = JobLinks::default().read(link).map_err(refusal)?;
    serde_json::to_writer_pretty(&mut output, &document)?;
    output.write_all(b"\n")
}

fn whole(input: impl Read) -> io::Result<String> {
    let mut text = String::new();
    input.take(LONGEST_LINE as u64).read_to_string(&mut text)?;
    Ok(text)
}

fn refusal(problem: LinkProblem) -> io::Error {
    let message = Messages::english().link_problem(&problem);
    io::Error::new(io::ErrorKind::InvalidData, message)
}

impl Messages {
    /// The sentence for what is wrong with a link.
    pub fn link_problem(&self, problem: &LinkProblem) -> String {
        match serde_json::to_value(problem) {
            Ok(Value::Object(problem)) => self.of_kind("link-problem", "kind", &problem),
            _ => String::new(),
        }
    }
}
