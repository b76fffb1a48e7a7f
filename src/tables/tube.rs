//! Copper tube in coils: the sizes that line sets are made of.

use super::SourceId;
use crate::quantity::Length;
use crate::quantity::choice;
use crate::quantity::factors::METRE_PER_INCH;

choice! {
    /// A series of tube sizes.
    TubeSeries {
        /// Inch sizes, ASTM B280, annealed coils.
        AstmB280 = "astm-b280",
        /// Metric sizes, EN 12735-1, annealed coils.
        En12735 = "en-12735-1",
    }
}

/// One size of a series, with its outside diameter and wall as printed, in the series' unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TubeSize {
    /// The series.
    pub series: TubeSeries,
    /// What people call it: `5/8` or `16`.
    pub name: &'static str,
    /// Outside diameter as printed.
    pub outside_diameter: f64,
    /// Wall as printed.
    pub wall: f64,
    /// Where the figures come from.
    pub source: SourceId,
}

const fn inch(name: &'static str, outside_diameter: f64, wall: f64) -> TubeSize {
    TubeSize {
        series: TubeSeries::AstmB280,
        name,
        outside_diameter,
        wall,
        source: SourceId::AstmB280,
    }
}

const fn metric(name: &'static str, outside_diameter: f64, wall: f64) -> TubeSize {
    TubeSize {
        series: TubeSeries::En12735,
        name,
        outside_diameter,
        wall,
        source: SourceId::En12735,
    }
}

/// Annealed coils. ASTM B280: inches, in hundredths and thousandths as printed. EN 12735-1:
/// millimetres. Of two walls in a series the usual one comes first.
pub const TUBE_SIZES: &[TubeSize] = &[
    inch("1/4", 0.250, 0.030),
    inch("5/16", 0.312, 0.032),
    inch("3/8", 0.375, 0.032),
    inch("1/2", 0.500, 0.032),
    inch("5/8", 0.625, 0.035),
    inch("3/4", 0.750, 0.035),
    inch("3/4", 0.750, 0.042),
    inch("7/8", 0.875, 0.045),
    inch("1 1/8", 1.125, 0.050),
    metric("6", 6.0, 1.0),
    metric("8", 8.0, 1.0),
    metric("10", 10.0, 1.0),
    metric("12", 12.0, 1.0),
    metric("15", 15.0, 1.0),
    metric("16", 16.0, 1.0),
    metric("18", 18.0, 1.0),
    metric("22", 22.0, 1.0),
];

/// Two diameters nearer than this are the same size: 7.94 mm is 5/16 and 8 mm is not.
const SAME_DIAMETER: Length = Length::metres(0.03e-3);

/// Whether a diameter as written, in full or rounded as the trade rounds it, means a nominal one.
pub fn is_same_size(nominal: Length, written: Length) -> bool {
    (nominal - written).magnitude() <= SAME_DIAMETER
}

impl TubeSize {
    /// Metres in the series' unit.
    const fn unit(&self) -> f64 {
        match self.series {
            TubeSeries::AstmB280 => METRE_PER_INCH,
            TubeSeries::En12735 => 1e-3,
        }
    }

    /// Outside diameter.
    pub const fn outside_diameter(&self) -> Length {
        Length::metres(self.outside_diameter * self.unit())
    }

    /// Wall.
    pub const fn wall(&self) -> Length {
        Length::metres(self.wall * self.unit())
    }

    /// Least wall and largest diameter that the standard's tolerances allow, and their source.
    pub fn worst_case(&self) -> (Length, Length, SourceId) {
        worst_case(self.series, self.outside_diameter(), self.wall())
    }
}

/// Least wall and largest outside diameter that a series' tolerances allow, and their source.
///
/// ASTM B280: wall -0.003 in up to 1/2, -0.004 in from 5/8; diameter +0.002 in, +0.0025 in from
/// 3/4. EN 12735-1: wall -13 %, diameter +0.04 mm up to 18 mm, +0.05 mm above.
pub fn worst_case(
    series: TubeSeries,
    diameter: Length,
    wall: Length,
) -> (Length, Length, SourceId) {
    /// A printed limit is met by its own conversion.
    const EDGE: Length = Length::metres(1e-9);
    match series {
        TubeSeries::AstmB280 => {
            let thinner = if diameter + EDGE < Length::inches(0.625) {
                0.003
            } else {
                0.004
            };
            let wider = if diameter + EDGE < Length::inches(0.75) {
                0.002
            } else {
                0.0025
            };
            let least_wall = wall - Length::inches(thinner);
            (
                least_wall,
                diameter + Length::inches(wider),
                SourceId::AstmB280Tolerance,
            )
        }
        TubeSeries::En12735 => {
            let wider = if diameter <= Length::millimetres(18.0) + EDGE {
                0.04
            } else {
                0.05
            };
            (
                wall * 0.87,
                diameter + Length::millimetres(wider),
                SourceId::En12735,
            )
        }
    }
}

/// The sizes of one series or of all that a diameter means, the usual wall first.
pub fn sizes_of(
    diameter: Length,
    series: Option<TubeSeries>,
) -> impl Iterator<Item = &'static TubeSize> {
    TUBE_SIZES.iter().filter(move |size| {
        is_same_size(size.outside_diameter(), diameter)
            && series.is_none_or(|series| series == size.series)
    })
}

/// The names of all sizes, for a message.
pub fn size_names() -> Vec<&'static str> {
    let mut names: Vec<_> = TUBE_SIZES.iter().map(|size| size.name).collect();
    names.dedup();
    names
}
