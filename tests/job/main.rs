//! The job: what a document comes to, whatever is in it.

mod documents;
mod laws;
mod order;
mod practice;
