//! The door for terminals: JSON lines in, JSON lines out; the catalogue; jobs as links; messages in English.

mod batch;
mod catalogue;
mod job_link;
mod messages;

pub use batch::{LONGEST_LINE, answer_line, arrived, batch};
pub use catalogue::{catalogue, job_schema};
pub use job_link::{job_link, job_of_link};
pub use messages::Messages;
