//! Mass, and mass over length, volume and time.

use super::define::{linear, product, quantity};
use super::factors::{
    CUBIC_METRE_PER_CUBIC_FOOT, KILOGRAM_PER_OUNCE, KILOGRAM_PER_POUND, METRE_PER_FOOT,
};
use super::unit::{customary, metric};
use super::{Area, Length, Time, Velocity, Volume, VolumeFlow};

quantity! {
    /// A mass.
    Mass: "kg", kilograms, in_kilograms, range 0.0, 1e6, units &[
        metric("kg", &["kilogram", "kilograms", "kilo", "kilos", "kilogramo", "kilogramos"], 1.0, 0.005, 0.001),
        metric("g", &["gram", "grams", "gramme", "grammes", "gramo", "gramos"], 1e-3, 5.0, 0.1),
        customary("lb", &["lbs", "pound", "pounds", "lbm", "libra", "libras"], KILOGRAM_PER_POUND, 0.01, 0.001),
        customary("oz", &["ounce", "ounces", "onza", "onzas"], KILOGRAM_PER_OUNCE, 0.1, 0.01),
    ]
}
linear!(Mass);

quantity! {
    /// Mass per length: of a tube, or of the refrigerant in it. Not a [`Mass`].
    MassPerLength: "kg/m", kilograms_per_metre, in_kilograms_per_metre, range 0.0, 1e4, units &[
        metric("g/m", &[], 1e-3, 1.0, 0.1),
        metric("kg/m", &[], 1.0, 0.01, 0.001),
        customary("oz/ft", &["oz/pie"], KILOGRAM_PER_OUNCE / METRE_PER_FOOT, 0.01, 0.001),
        customary("lb/ft", &["lb/pie"], KILOGRAM_PER_POUND / METRE_PER_FOOT, 0.01, 0.001),
    ]
}
linear!(MassPerLength);

quantity! {
    /// Mass per volume.
    Density: "kg/m³", kilograms_per_cubic_metre, in_kilograms_per_cubic_metre, range 0.0, 3e4, units &[
        metric("kg/m³", &["g/l"], 1.0, 1.0, 0.1),
        customary("lb/ft³", &["lb/cuft"], KILOGRAM_PER_POUND / CUBIC_METRE_PER_CUBIC_FOOT, 0.1, 0.01),
        metric("g/m³", &[], 1e-3, 1.0, 0.1),
    ]
}
linear!(Density);

quantity! {
    /// Mass per time, through a line.
    MassFlow: "kg/s", kilograms_per_second, in_kilograms_per_second, range 0.0, 1e4, units &[
        metric("kg/h", &[], 1.0 / 3600.0, 1.0, 0.1),
        metric("g/s", &[], 1e-3, 0.1, 0.01),
        metric("kg/s", &[], 1.0, 0.001, 0.0001),
        customary("lb/h", &["lb/hr"], KILOGRAM_PER_POUND / 3600.0, 1.0, 0.1),
        customary("lb/min", &[], KILOGRAM_PER_POUND / 60.0, 0.1, 0.01),
    ]
}
linear!(MassFlow);

product!(Density * Area = MassPerLength);
product!(MassPerLength * Length = Mass);
product!(Density * Volume = Mass);
product!(MassFlow * Time = Mass);
product!(MassPerLength * Velocity = MassFlow);
product!(Density * VolumeFlow = MassFlow);

impl Mass {
    /// From a number of grams.
    pub const fn grams(number: f64) -> Self {
        Self(number / 1000.0)
    }
}
