//! The calculations of the trade: one file each, a pure function from an input to an answer or
//! problems; and the registry through which page, link, terminal and tests reach them by name.

mod ambient;
pub mod convert;
mod fields;
pub mod flare;
mod problem;
mod reading;
mod registry;
pub mod torque;
pub mod tube;
mod verdict;
mod working;

pub use ambient::{Ambient, AmbientBasis};
pub use fields::fields_of;
pub use problem::{Cause, Field, Misfit, Problem, Problems};
pub use reading::Reading;
pub use registry::{Door, NAMES, answer};
#[cfg(feature = "terminal")]
pub use registry::{Entry as CatalogueEntry, catalogue};
pub use verdict::{Judgement, Verdict, judge, judge_at_least};
pub use working::{Figure, Step, Unfinished, Working};
