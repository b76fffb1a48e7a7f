//! Laws with no trade in them.

pub mod atmosphere;
