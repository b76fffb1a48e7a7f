//! A part of a whole: accuracy of an instrument, relative humidity, quality.

use super::define::{linear, quantity};
use super::unit::metric;

quantity! {
    /// A dimensionless ratio: 0.04 or `4 %`.
    Ratio: "1", of_one, in_one, range -1e6, 1e6, units &[
        metric("%", &["percent", "pct"], 0.01, 1.0, 0.1),
        metric("ppm", &[], 1e-6, 100.0, 1.0),
    ]
}
linear!(Ratio);
