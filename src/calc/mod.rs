//! The calculations of the trade: one file each, a pure function from an input to an answer or
//! problems.

mod ambient;
pub mod charge;
pub mod convert;
mod count;
pub mod flare;
mod input;
pub mod insulation;
pub mod line_set;
pub mod moist_air;
mod nested;
pub mod nitrogen_hold;
pub mod pipe_friction;
mod problem;
pub mod pump_down;
mod reading;
mod refrigerant_facts;
mod refusal;
pub mod room_limit;
pub mod running;
pub mod saturation;
mod saturation_point;
pub mod standing_test;
pub mod torque;
pub mod tube;
pub mod vacuum_hold;
pub mod vapour;
mod verdict;
pub mod water_saturation;
mod working;

pub use ambient::{Ambient, AmbientBasis};
pub use count::Count;
#[cfg(feature = "further")]
pub(crate) use input::input;
pub use input::{Input, Members};
pub use nested::{Entries, MOST_ITEMS, Part};
pub use problem::{Cause, Field, Misfit, Problem, Problems};
pub use reading::Reading;
#[cfg(feature = "further")]
pub(crate) use reading::{optional, required};
pub use refrigerant_facts::{RefrigerantFacts, WarmingPotentials};
pub use saturation_point::SaturationPoint;
pub use verdict::{Judgement, Verdict, judge, judge_at_least, judge_at_most};
pub use working::{Figure, Step, Unfinished, Working};
