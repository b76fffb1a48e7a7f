//! Refrigerants on their bubble and dew lines.
//!
//! # Method
//! Chebyshev expansions of reference equations of state; the data, their sources and their certified
//! errors are in `tables::fluids` and `tests/reference/fluids`.
//!
//! # Valid for
//! [`temperature_range`] and [`pressure_range`]. Outside them, and near the critical point, every
//! function refuses.

mod limits;
mod lines;
mod phases;

pub use limits::{
    CriticalPoint, critical_point, into_range, molar_mass, pressure_range, temperature_range,
};
pub use lines::{Line, glide, pressure, temperature};
pub use phases::{Phase, density, enthalpy, heat_capacity, latent_heat, viscosity};

pub(super) use limits::scaled_theta;
pub(super) use lines::log_pressure;
pub(super) use phases::{vapour_density, vapour_enthalpy};
