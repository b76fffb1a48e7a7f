//! The door for terminals: JSON lines in, JSON lines out; the catalogue; messages in English.

mod batch;
mod catalogue;
mod messages;

pub use batch::{LONGEST_LINE, answer_line, arrived, batch};
pub use catalogue::{catalogue, job_schema};
pub use messages::Messages;
