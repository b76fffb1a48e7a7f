//! Tightening torque of flare nuts on annealed copper tube, family by family. The families disagree
//! at 5/8 and 3/4.

use super::SourceId;
use super::tube::is_same_size;
use crate::quantity::choice;
use crate::quantity::{Length, Torque};

choice! {
    /// A family of torque figures.
    TorqueFamily {
        /// EN 378-2 and ISO 5149-2.
        En378 = "en-378-2",
        /// JIS B 8607, class 2.
        JisB8607 = "jis-b-8607",
        /// What the trade says, with no source.
        CommonPractice = "common-practice",
    }
}

impl TorqueFamily {
    /// Where its figures come from.
    pub const fn source(self) -> SourceId {
        match self {
            Self::En378 => SourceId::En378Part2,
            Self::JisB8607 => SourceId::JisB8607,
            Self::CommonPractice => SourceId::CommonPractice,
        }
    }
}

/// A row: tube in inches; least and most torque in N·m of each family, as written there.
struct Row {
    tube_inches: f64,
    en_378: Option<(f64, f64)>,
    jis_b_8607: Option<(f64, f64)>,
    common_practice: Option<(f64, f64)>,
}

const fn row(
    tube_inches: f64,
    en_378: Option<(f64, f64)>,
    jis_b_8607: Option<(f64, f64)>,
    common_practice: Option<(f64, f64)>,
) -> Row {
    Row {
        tube_inches,
        en_378,
        jis_b_8607,
        common_practice,
    }
}

/// Flare nuts. JIS figures are written there as middle ± tolerance: 16 ± 2, 38 ± 4, 55 ± 6, 75 ± 7, 110 ± 10.
const ROWS: &[Row] = &[
    row(
        0.250,
        Some((14.0, 18.0)),
        Some((14.0, 18.0)),
        Some((14.0, 18.0)),
    ),
    row(0.3125, Some((33.0, 42.0)), None, None),
    row(
        0.375,
        Some((33.0, 42.0)),
        Some((34.0, 42.0)),
        Some((34.0, 42.0)),
    ),
    row(
        0.500,
        Some((50.0, 62.0)),
        Some((49.0, 61.0)),
        Some((49.0, 61.0)),
    ),
    row(
        0.625,
        Some((63.0, 77.0)),
        Some((68.0, 82.0)),
        Some((68.0, 82.0)),
    ),
    row(
        0.750,
        Some((90.0, 110.0)),
        Some((100.0, 120.0)),
        Some((97.0, 120.0)),
    ),
];

/// Least and most torque of every family that has this tube, in the order of [`TorqueFamily::ALL`].
pub fn torque_bands(tube: Length) -> Vec<(TorqueFamily, Torque, Torque)> {
    let same = |row: &&Row| is_same_size(Length::inches(row.tube_inches), tube);
    let Some(row) = ROWS.iter().find(same) else {
        return Vec::new();
    };
    let families = [
        (TorqueFamily::En378, row.en_378),
        (TorqueFamily::JisB8607, row.jis_b_8607),
        (TorqueFamily::CommonPractice, row.common_practice),
    ];
    families
        .into_iter()
        .filter_map(|(family, band)| band.map(|(least, most)| (family, least, most)))
        .map(|(family, least, most)| {
            (
                family,
                Torque::newton_metres(least),
                Torque::newton_metres(most),
            )
        })
        .collect()
}
