//! Compressibility factor of nitrogen. Written by tests/reference/fluids/generate.py.
//!
//! Source: CoolProp 8.0.0; Span et al., J. Phys. Chem. Ref. Data 29 (2000).

use super::{Range, Scale};

/// Temperatures that the expansion holds for, K.
pub(crate) const TEMPERATURE: Range = Range {
    low: 233.15,
    high: 343.15,
};

/// How they map to -1..1.
pub(crate) const TEMPERATURE_SCALE: Scale = Scale::over(TEMPERATURE.low, TEMPERATURE.high);

/// Largest pressure that the expansion holds for, Pa.
pub(crate) const LARGEST_PRESSURE: f64 = 7500000.0;

/// (Z - 1) over the part of the largest pressure: one row for each degree in pressure,
/// coefficients in temperature.
pub(crate) static DEPARTURE: &[&[f32]] = &[
    &[
        -0.022_707_67,
        0.040_998_46,
        -0.008_350_134,
        0.001_337_736_8,
        -0.000_196_397_3,
        0.000_027_894_974,
        -0.000_003_933_906_6,
        0.000_000_566_244_1,
    ],
    &[
        0.007_671_356,
        -0.003_525_614_7,
        0.000_400_930_64,
        -0.000_001_221_895_2,
        -0.000_012_576_58,
        0.000_004_142_523,
        -0.000_000_983_476_6,
    ],
    &[
        0.000_221_192_84,
        -0.000_330_626_96,
        0.000_121_414_66,
        -0.000_031_888_485,
        0.000_006_914_139,
        -0.000_001_341_104_5,
    ],
    &[
        -0.000_002_235_174_2,
        0.000_000_476_837_16,
        0.000_002_682_209,
        -0.000_001_847_744,
    ],
    &[
        -0.000_002_056_360_2,
        0.000_002_413_988,
        -0.000_000_983_476_6,
    ],
];
