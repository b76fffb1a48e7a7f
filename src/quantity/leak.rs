//! Leaks: how fast a pressure changes, and how much gas passes.

use super::define::{linear, quantity};
use super::factors::{
    KILOGRAM_PER_OUNCE, PASCAL_PER_ATMOSPHERE, PASCAL_PER_MICRON, PASCAL_PER_PSI, SECONDS_PER_DAY,
    SECONDS_PER_HOUR, SECONDS_PER_YEAR,
};
use super::unit::{customary, metric};

quantity! {
    /// Change of a pressure over time: the loss in a pressure hold, the rise in a vacuum hold.
    ///
    /// ```
    /// use coldwright::quantity::{PressureRate, Quantity};
    /// let lost = PressureRate::read("0.36 kPa/h").unwrap();
    /// assert!((lost.in_pascals_per_second() - 0.1).abs() < 1e-15);
    /// ```
    PressureRate: "Pa/s", pascals_per_second, in_pascals_per_second, range -1e8, 1e8, units &[
        metric("kPa/h", &["kpa/hr", "kpa/hour"], 1e3 / SECONDS_PER_HOUR, 0.1, 0.01),
        metric("mbar/h", &["mbar/hr", "mbar/hour", "hpa/h"], 100.0 / SECONDS_PER_HOUR, 1.0, 0.1),
        metric("bar/h", &["bar/hr", "bar/hour"], 1e5 / SECONDS_PER_HOUR, 0.01, 0.001),
        metric("kPa/d", &["kpa/day"], 1e3 / SECONDS_PER_DAY, 1.0, 0.1),
        metric("bar/d", &["bar/day"], 1e5 / SECONDS_PER_DAY, 0.01, 0.001),
        metric("Pa/min", &["pa/minute"], 1.0 / 60.0, 0.1, 0.01),
        metric("Pa/s", &["pa/sec"], 1.0, 0.01, 0.0001),
        customary("psi/h", &["psi/hr", "psi/hour"], PASCAL_PER_PSI / SECONDS_PER_HOUR, 0.1, 0.01),
        customary("psi/d", &["psi/day"], PASCAL_PER_PSI / SECONDS_PER_DAY, 1.0, 0.1),
        customary("micron/min", &["microns/min", "micron/minute", "micrones/min", "micras/min"], PASCAL_PER_MICRON / 60.0, 1.0, 0.1),
    ]
}
linear!(PressureRate);

quantity! {
    /// Gas that passes a leak: pressure times volume over time.
    LeakRate: "Pa·m³/s", pascal_cubic_metres_per_second, in_pascal_cubic_metres_per_second,
    range 0.0, 1e6, units &[
        metric("mbar·L/s", &["mbarl/sec"], 0.1, 0.001, 0.0001),
        metric("Pa·m³/s", &[], 1.0, 0.0001, 0.00001),
        customary("atm·cm³/s", &["atmcc/s", "atmcc/sec", "stdcc/s"], PASCAL_PER_ATMOSPHERE * 1e-6, 0.001, 0.0001),
    ]
}
linear!(LeakRate);

quantity! {
    /// Refrigerant that a leak loses over a year.
    YearlyLoss: "kg/s", kilograms_per_second, in_kilograms_per_second, range 0.0, 1e3, units &[
        metric("g/year", &["g/yr", "g/y", "g/a", "g/año"], 1e-3 / SECONDS_PER_YEAR, 1.0, 0.1),
        metric("kg/year", &["kg/yr", "kg/y", "kg/a", "kg/año"], 1.0 / SECONDS_PER_YEAR, 0.1, 0.01),
        customary("oz/year", &["oz/yr", "oz/y", "oz/año"], KILOGRAM_PER_OUNCE / SECONDS_PER_YEAR, 0.1, 0.01),
    ]
}
linear!(YearlyLoss);
