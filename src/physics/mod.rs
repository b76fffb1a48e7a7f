//! Laws with no trade in them.

pub mod atmosphere;
mod beyond;
mod chebyshev;
pub mod evacuation;
pub mod moist_air;
pub mod nitrogen;
pub mod pipe_flow;
mod psychrometrics;
mod root;
pub mod saturation;
pub mod tube_heat;
pub mod vacuum_flow;
pub mod vacuum_line;
pub mod vapour;
pub mod water;

pub use beyond::{Argument, Beyond};
