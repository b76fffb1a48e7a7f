//! Pressure in its four meanings, which people confuse, and stress in a wall.

use super::define::{linear, quantity};
use super::factors::{
    PASCAL_PER_ATMOSPHERE, PASCAL_PER_INCH_OF_MERCURY, PASCAL_PER_MICRON,
    PASCAL_PER_MILLIMETRE_OF_MERCURY, PASCAL_PER_PSI, PASCAL_PER_TECHNICAL_ATMOSPHERE,
    PASCAL_PER_TORR,
};
use super::unit::{Unit, customary, metric};

const BAR: Unit = metric("bar", &["bars"], 1e5, 0.1, 0.01);
const KILOPASCAL: Unit = metric("kPa", &[], 1e3, 10.0, 0.1);
const MEGAPASCAL: Unit = metric("MPa", &[], 1e6, 0.01, 0.001);
const PASCAL: Unit = metric("Pa", &["pascal", "n/m2"], 1.0, 1.0, 0.01);
const MILLIBAR: Unit = metric("mbar", &["hpa", "millibar"], 100.0, 1.0, 0.1);
const TECHNICAL_ATMOSPHERE: Unit = metric(
    "kgf/cm²",
    &["kg/cm2", "kpcm2", "at"],
    PASCAL_PER_TECHNICAL_ATMOSPHERE,
    0.1,
    0.01,
);
const PSI: Unit = customary(
    "psi",
    &[
        "lbf/in2",
        "lb/in2",
        "lbf/pulg2",
        "lb/pulg2",
        "poundspersquareinch",
    ],
    PASCAL_PER_PSI,
    1.0,
    0.1,
);
const INCH_OF_MERCURY: Unit = customary(
    "inHg",
    &["\"hg", "inchhg", "pulghg"],
    PASCAL_PER_INCH_OF_MERCURY,
    0.1,
    0.01,
);
const MILLIMETRE_OF_MERCURY: Unit =
    metric("mmHg", &[], PASCAL_PER_MILLIMETRE_OF_MERCURY, 0.1, 0.01);

/// A unit counted downwards from the air: its symbol says so, its spellings are those without the mark.
const fn below(symbol: &'static str, spellings: &'static [&'static str], unit: Unit) -> Unit {
    Unit {
        symbol,
        spellings,
        ..unit
    }
}

quantity! {
    /// Pressure above vacuum. Made from a [`GaugePressure`] only together with the air's pressure.
    AbsolutePressure: "Pa", pascals, in_pascals, range 0.0, 1e8, units &[
        BAR, KILOPASCAL, MEGAPASCAL, PASCAL, MILLIBAR, TECHNICAL_ATMOSPHERE,
        MILLIMETRE_OF_MERCURY,
        metric("torr", &[], PASCAL_PER_TORR, 0.1, 0.01),
        metric("atm", &["atmosphere", "atmospheres", "atmósfera", "atmósferas", "atmosferas"], PASCAL_PER_ATMOSPHERE, 0.01, 0.001),
        PSI, INCH_OF_MERCURY,
        customary("micron", &["microns", "micrón", "micrones", "micra", "micras", "um", "umhg", "mtorr", "millitorr"], PASCAL_PER_MICRON, 10.0, 1.0),
    ]
}

quantity! {
    /// Pressure above the surrounding air, what a manifold gauge shows. Negative under vacuum.
    ///
    /// ```
    /// use coldwright::quantity::{AbsolutePressure, GaugePressure, Quantity};
    /// let standing = GaugePressure::read("140 psi").unwrap();
    /// let at_sea_level = standing.to_absolute(AbsolutePressure::pascals(101_325.0));
    /// assert!((at_sea_level.in_pascals() - 1_066_591.0).abs() < 1.0);
    /// ```
    ///
    /// The two are never mixed:
    /// ```compile_fail
    /// # use coldwright::quantity::{AbsolutePressure, GaugePressure};
    /// let wrong: AbsolutePressure = GaugePressure::pascals(1e5);
    /// ```
    /// ```compile_fail
    /// # use coldwright::quantity::{AbsolutePressure, GaugePressure};
    /// let wrong = GaugePressure::pascals(1e5) > AbsolutePressure::pascals(1e5);
    /// ```
    GaugePressure: "Pa gauge", pascals, in_pascals, range -1.2e5, 1e8, units &[
        BAR, KILOPASCAL, MEGAPASCAL, PASCAL, MILLIBAR, TECHNICAL_ATMOSPHERE, PSI, INCH_OF_MERCURY,
    ]
}

quantity! {
    /// Depth below the surrounding air, positive: what a compound gauge shows left of zero.
    Vacuum: "Pa below ambient", pascals, in_pascals, range 0.0, 1.2e5, units &[
        below("mbar vac", &["mbar"], MILLIBAR),
        below("kPa vac", &["kpa"], KILOPASCAL),
        below("bar vac", &["bar"], BAR),
        below("Pa vac", &["pa"], PASCAL),
        below("mmHg vac", &["mmhg"], MILLIMETRE_OF_MERCURY),
        below("inHg vac", &["inhg", "\"hg", "pulghg"], INCH_OF_MERCURY),
        below("psi vac", &["psi"], PSI),
    ]
}

quantity! {
    /// A difference of two pressures: a drop along a line, a margin, an uncertainty.
    PressureDifference: "Pa", pascals, in_pascals, range -1e8, 1e8, units &[
        KILOPASCAL, BAR, MEGAPASCAL, PASCAL, MILLIBAR, PSI, INCH_OF_MERCURY,
        customary("micron", &["microns", "micrón", "micrones", "micra", "micras", "mtorr"], PASCAL_PER_MICRON, 10.0, 1.0),
    ]
}
linear!(PressureDifference);

quantity! {
    /// Force per area inside a wall, or what a material is allowed to bear.
    Stress: "Pa", pascals, in_pascals, range 0.0, 1e10, units &[MEGAPASCAL, PSI]
}
linear!(Stress);

/// Standard atmosphere at sea level. Source: ICAO Doc 7488, NIST SP 811: 101 325 Pa exactly.
pub const STANDARD_ATMOSPHERE: AbsolutePressure = AbsolutePressure(PASCAL_PER_ATMOSPHERE);

impl GaugePressure {
    /// This pressure above vacuum, with `atmosphere` around it.
    pub fn to_absolute(self, atmosphere: AbsolutePressure) -> AbsolutePressure {
        AbsolutePressure(self.0 + atmosphere.0)
    }
}

impl AbsolutePressure {
    /// What a gauge shows for this pressure in an air of pressure `atmosphere`.
    pub fn to_gauge(self, atmosphere: AbsolutePressure) -> GaugePressure {
        GaugePressure(self.0 - atmosphere.0)
    }
}

impl Vacuum {
    /// The same as a (negative) gauge pressure.
    pub fn to_gauge(self) -> GaugePressure {
        GaugePressure(-self.0)
    }
}

macro_rules! pressure_and_difference {
    ($name:ident) => {
        impl core::ops::Sub for $name {
            type Output = PressureDifference;
            fn sub(self, other: Self) -> PressureDifference {
                PressureDifference(self.0 - other.0)
            }
        }
        impl core::ops::Add<PressureDifference> for $name {
            type Output = Self;
            fn add(self, difference: PressureDifference) -> Self {
                Self(self.0 + difference.0)
            }
        }
        impl core::ops::Sub<PressureDifference> for $name {
            type Output = Self;
            fn sub(self, difference: PressureDifference) -> Self {
                Self(self.0 - difference.0)
            }
        }
    };
}
pressure_and_difference!(AbsolutePressure);
pressure_and_difference!(GaugePressure);
