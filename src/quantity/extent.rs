//! Extent: length, height above sea level, area, volume, angle.

use super::define::{linear, product, quantity};
use super::factors::{
    CUBIC_METRE_PER_CUBIC_FOOT, CUBIC_METRE_PER_CUBIC_INCH, CUBIC_METRE_PER_GALLON, METRE_PER_FOOT,
    METRE_PER_INCH, RADIAN_PER_DEGREE,
};
use super::unit::{Unit, customary, metric};

const LENGTH_UNITS: &[Unit] = &[
    metric(
        "mm",
        &[
            "millimetre",
            "millimeter",
            "millimetres",
            "millimeters",
            "milímetro",
            "milímetros",
            "milimetros",
        ],
        1e-3,
        0.1,
        0.01,
    ),
    metric(
        "m",
        &["metre", "meter", "metres", "meters", "metro", "metros"],
        1.0,
        0.1,
        0.01,
    ),
    metric(
        "cm",
        &[
            "centimetre",
            "centimeter",
            "centimetres",
            "centimeters",
            "centímetro",
            "centímetros",
            "centimetros",
        ],
        1e-2,
        0.1,
        0.01,
    ),
    metric(
        "µm",
        &[
            "micron",
            "microns",
            "micrometre",
            "micrometer",
            "micra",
            "micras",
        ],
        1e-6,
        1.0,
        1.0,
    ),
    customary(
        "in",
        &["\"", "inch", "inches", "''", "pulg", "pulgada", "pulgadas"],
        METRE_PER_INCH,
        0.01,
        0.001,
    ),
    customary(
        "ft",
        &["'", "foot", "feet", "pie", "pies"],
        METRE_PER_FOOT,
        0.1,
        0.01,
    ),
];

quantity! {
    /// A distance. Never negative where it is entered.
    ///
    /// ```
    /// use coldwright::quantity::{Length, Quantity};
    /// assert_eq!(Length::read("1-1/8 in").unwrap(), Length::metres(0.028575));
    /// ```
    Length: "m", metres, in_metres, range 0.0, 1e4, units LENGTH_UNITS
}
linear!(Length);

quantity! {
    /// Height above mean sea level, geopotential. Not a [`Length`]: it may be negative, and it is
    /// good for one thing, the pressure of the air.
    Altitude: "m", metres, in_metres, range -500.0, 9000.0, units &[
        metric("m", &["metre", "meter", "metres", "meters", "metro", "metros"], 1.0, 10.0, 1.0),
        customary("ft", &["'", "foot", "feet", "pie", "pies"], METRE_PER_FOOT, 10.0, 1.0),
    ]
}

quantity! {
    /// An area, of a bore or of a floor.
    Area: "m²", square_metres, in_square_metres, range 0.0, 1e6, units &[
        metric("mm²", &["sqmm"], 1e-6, 1.0, 0.1),
        metric("cm²", &["sqcm"], 1e-4, 0.1, 0.01),
        metric("m²", &["sqm"], 1.0, 0.1, 0.01),
        customary("in²", &["sqin", "pulg2"], METRE_PER_INCH * METRE_PER_INCH, 0.01, 0.001),
        customary("ft²", &["sqft", "pie2", "pies2"], METRE_PER_FOOT * METRE_PER_FOOT, 1.0, 0.1),
    ]
}
linear!(Area);

quantity! {
    /// A volume.
    Volume: "m³", cubic_metres, in_cubic_metres, range 0.0, 1e6, units &[
        metric("L", &["litre", "liter", "litres", "liters", "dm3", "litro", "litros"], 1e-3, 0.1, 0.01),
        metric("mL", &["cc", "cm3", "millilitre", "milliliter"], 1e-6, 1.0, 0.1),
        metric("m³", &["cubicmetre", "cubicmeter", "cum"], 1.0, 0.1, 0.01),
        customary("in³", &["cuin", "pulg3"], CUBIC_METRE_PER_CUBIC_INCH, 0.1, 0.01),
        customary("ft³", &["cuft", "pie3", "pies3"], CUBIC_METRE_PER_CUBIC_FOOT, 0.1, 0.01),
        customary("gal", &["usgal", "gallon", "gallons", "galón", "galon", "galones"], CUBIC_METRE_PER_GALLON, 0.1, 0.01),
    ]
}
linear!(Volume);

quantity! {
    /// A plane angle.
    Angle: "rad", radians, in_radians,
    range -360.0 * RADIAN_PER_DEGREE, 360.0 * RADIAN_PER_DEGREE, units &[
        metric("°", &["deg", "degree", "degrees", "grado", "grados"], RADIAN_PER_DEGREE, 1.0, 0.1),
        metric("rad", &["radian", "radians", "radián", "radianes"], 1.0, 0.01, 0.001),
    ]
}
linear!(Angle);

product!(Length * Area = Volume);

impl core::ops::Mul for Length {
    type Output = Area;
    fn mul(self, other: Self) -> Area {
        Area(self.0 * other.0)
    }
}

impl Length {
    /// From a number of inches.
    pub const fn inches(number: f64) -> Self {
        Self(number * METRE_PER_INCH)
    }

    /// From a number of millimetres.
    pub const fn millimetres(number: f64) -> Self {
        Self(number / 1000.0)
    }

    /// This length without its sign.
    pub fn magnitude(self) -> Self {
        Self(self.0.abs())
    }

    /// Area of the circle with this diameter.
    ///
    /// ```
    /// use coldwright::quantity::Length;
    /// assert_eq!(Length::metres(2.0).circle().in_square_metres(), core::f64::consts::PI);
    /// ```
    pub fn circle(self) -> Area {
        Area(core::f64::consts::FRAC_PI_4 * self.0 * self.0)
    }
}

impl Angle {
    /// From a number of degrees of arc.
    pub const fn degrees(number: f64) -> Self {
        Self(number * RADIAN_PER_DEGREE)
    }

    /// The cosine, exactly 0 at a right angle, where the conversion from degrees leaves a remainder.
    pub fn cosine(self) -> f64 {
        let degrees = self.0 / RADIAN_PER_DEGREE;
        let quarter = libm::fmod(libm::fabs(degrees), 180.0) - 90.0;
        if quarter.abs() < 1e-12 {
            0.0
        } else {
            libm::cos(self.0)
        }
    }
}
