//! The laws against reference libraries, published points, and what must hold for any input.

mod accuracy;
mod air_and_flow;
mod edges;
mod laws;
mod published;
mod rows;
