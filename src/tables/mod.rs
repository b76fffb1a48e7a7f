//! Published tables as data: kept as printed in their document, each with its source; conversion is
//! code. Tables are not interpolated unless their source allows it.

pub mod flare;
pub(crate) mod fluids;
pub mod pressure_test;
mod refrigerant_rows;
pub mod refrigerants;
mod sources;
pub mod stress;
pub mod substances;
pub mod torque;
pub mod tube;

pub use sources::{SOURCES, Source, SourceId, SourceKind, Standing};
