//! Coldwright's calculation core. Each room may use the rooms below it and none above.
//!
//! - [`web`]: the only room that knows JavaScript exists; the page's door (feature `page`).
//! - `terminal`: the same door for JSON lines, and the catalogue (feature `terminal`).
//! - [`registry`]: the one door behind both, every calculation by name.
//! - `job`: the job document, its joints, its stages and its assessment (feature `further`).
//! - [`calc`]: one file a calculation of the trade, an input to an answer or problems.
//! - [`physics`]: laws with no trade in them.
//! - [`tables`]: published tables as data, each row with its source; the bibliography.
//! - [`quantity`]: typed quantities, SI inside; reads what people write, shows figures in a chosen unit.
//!
//! The core is pure: no clock, no storage, no randomness, no global state. The same input gives the
//! same answer, to the last bit, in a terminal and in every browser; transcendental functions come
//! from `libm` for that reason.
#![forbid(unsafe_code)]
#![deny(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::float_cmp
)]
#![warn(missing_docs)]

pub mod calc;
#[cfg(feature = "further")]
pub mod job;
pub mod physics;
pub mod quantity;
pub mod registry;
pub mod tables;
#[cfg(feature = "terminal")]
pub mod terminal;
#[cfg(feature = "page")]
pub mod web;
