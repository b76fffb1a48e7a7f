//! Flare joints: cone, nut and thread by class and size; how far the tube stands above the bar.

use super::SourceId;
use super::tube::is_same_size;
use crate::quantity::Length;
use crate::quantity::choice;

choice! {
    /// Pressure class of a flare joint. The higher class has a wider cone and, at two sizes, a larger nut.
    FlareClass {
        /// Ordinary refrigerants, such as R-22, R-134a and R-407C.
        Class1 = "class-1",
        /// Higher-pressure refrigerants, such as R-410A and R-32.
        Class2 = "class-2",
    }
}

choice! {
    /// Kind of flaring tool.
    FlaringTool {
        /// Eccentric cone with a clutch, made for the higher-pressure refrigerants.
        EccentricClutch = "eccentric-clutch",
        /// Clutch tool made for the ordinary refrigerants.
        OrdinaryClutch = "ordinary-clutch",
        /// Bar and yoke with a wing nut.
        WingNutBar = "wing-nut-bar",
    }
}

/// One size of tube that flare joints are made on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlareSize {
    /// What people call it.
    pub name: &'static str,
    /// Outside diameter of the tube, inches.
    pub tube_inches: f64,
    /// Largest outside diameter of the cone, mm, class 1 and class 2; not every size is in the series.
    pub cone: Option<[f64; 2]>,
    /// Nut across flats, mm, class 1 and class 2.
    pub nut: Option<[f64; 2]>,
    /// Thread designation.
    pub thread: &'static str,
    /// Major diameter of the thread, inches.
    pub thread_inches: f64,
    /// Threads an inch.
    pub threads_per_inch: f64,
}

/// Where cones and nuts come from.
pub const CONE_SOURCE: SourceId = SourceId::JisB8607;
/// Where threads come from.
pub const THREAD_SOURCE: SourceId = SourceId::SaeJ513;

/// Tolerance of the cone's diameter, mm: 0 / -0.4.
pub const CONE_TOLERANCE: Length = Length::metres(0.4e-3);

const fn size(
    name: &'static str,
    tube_inches: f64,
    cone: Option<[f64; 2]>,
    nut: Option<[f64; 2]>,
    (thread, thread_inches, threads_per_inch): (&'static str, f64, f64),
) -> FlareSize {
    FlareSize {
        name,
        tube_inches,
        cone,
        nut,
        thread,
        thread_inches,
        threads_per_inch,
    }
}

/// Flare sizes. Cones and nuts: JIS B 8607; it has no 5/16. Threads: SAE J513.
pub const FLARE_SIZES: &[FlareSize] = &[
    size(
        "1/4",
        0.250,
        Some([9.0, 9.1]),
        Some([17.0, 17.0]),
        ("7/16-20 UNF", 0.4375, 20.0),
    ),
    size("5/16", 0.3125, None, None, ("1/2-20 UNF", 0.5, 20.0)),
    size(
        "3/8",
        0.375,
        Some([13.0, 13.2]),
        Some([22.0, 22.0]),
        ("5/8-18 UNF", 0.625, 18.0),
    ),
    size(
        "1/2",
        0.500,
        Some([16.2, 16.6]),
        Some([24.0, 26.0]),
        ("3/4-16 UNF", 0.75, 16.0),
    ),
    size(
        "5/8",
        0.625,
        Some([19.4, 19.7]),
        Some([27.0, 29.0]),
        ("7/8-14 UNF", 0.875, 14.0),
    ),
    size(
        "3/4",
        0.750,
        Some([23.3, 24.0]),
        Some([36.0, 36.0]),
        ("1 1/16-14 UNS", 1.0625, 14.0),
    ),
];

/// The flare size for an outside diameter.
pub fn flare_size(tube: Length) -> Option<&'static FlareSize> {
    FLARE_SIZES
        .iter()
        .find(|size| is_same_size(size.tube(), tube))
}

/// The names of all flare sizes, for a message.
pub fn flare_size_names() -> Vec<&'static str> {
    FLARE_SIZES.iter().map(|size| size.name).collect()
}

impl FlareSize {
    /// Outside diameter of the tube.
    pub const fn tube(&self) -> Length {
        Length::inches(self.tube_inches)
    }

    /// Smallest and largest outside diameter of the cone.
    pub fn cone(&self, class: FlareClass) -> Option<(Length, Length)> {
        let largest = Length::millimetres(by_class(self.cone?, class));
        Some((largest - CONE_TOLERANCE, largest))
    }

    /// Nut across flats, which is the size of its wrench.
    pub fn nut(&self, class: FlareClass) -> Option<Length> {
        Some(Length::millimetres(by_class(self.nut?, class)))
    }
}

fn by_class([class_1, class_2]: [f64; 2], class: FlareClass) -> f64 {
    match class {
        FlareClass::Class1 => class_1,
        FlareClass::Class2 => class_2,
    }
}

/// Tube above the flaring bar, least and most. Common practice, no source. The wing-nut bar wants
/// more from 1/2 in on; no figure is known between 3/8 and 1/2.
pub fn bar_projection(tool: FlaringTool, tube: Length) -> (Length, Length) {
    let (least, most) = match tool {
        FlaringTool::EccentricClutch => (0.0, 0.5),
        FlaringTool::OrdinaryClutch => (1.0, 1.5),
        FlaringTool::WingNutBar if tube < Length::millimetres(12.0) => (1.5, 2.0),
        FlaringTool::WingNutBar => (2.0, 2.5),
    };
    (Length::millimetres(least), Length::millimetres(most))
}

/// Included half-angle of the cone in degrees, and its tolerance. JIS B 8607, from memory: 90° ± 2° included.
pub const CONE_HALF_ANGLE_DEGREES: (f64, f64) = (45.0, 1.0);

/// Radius at the foot of the cone, mm. JIS B 8607, from memory.
pub const CORNER_RADIUS: (f64, f64) = (0.4, 0.8);

/// Largest tube that may be flared within the scope of Real Decreto 552/2019, IF-06 3.2.3.2: 19 mm,
/// nominal, which is 3/4 in.
pub const LARGEST_FLARED_TUBE: Length = Length::inches(0.75);
