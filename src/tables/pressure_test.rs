//! How a pressure test with nitrogen is carried out, rule by rule.

use super::SourceId;
use crate::quantity::factors::PASCAL_PER_PSI;
use crate::quantity::{GaugePressure, Time, choice};

choice! {
    /// Whose rule a pressure test follows.
    PressureTestRule {
        /// Real Decreto 552/2019, IF-09, which carries EN 378-2 into Spanish law.
        RealDecreto552 = "real-decreto-552-2019",
        /// UFGS 15182, the specification of United States federal buildings.
        Ufgs15182 = "ufgs-15182",
        /// The equipment's own plate or instructions.
        Plate = "plate",
    }
}

/// A rule, as printed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RuleRow {
    /// Test pressure over the pressure that it is taken from: design pressure, or the plate's own test pressure.
    pub factor: f64,
    /// Pressure of the first look for gross leaks.
    pub preliminary: GaugePressure,
    /// Parts of the test pressure at which it stops on the way, the full one last.
    pub parts: &'static [f64],
    /// How long the test pressure is held at least.
    pub hold: Time,
    /// Where test pressure, preliminary pressure and time come from.
    pub source: SourceId,
    /// Where the steps come from.
    pub steps_source: SourceId,
}

const TENTHS_FROM_HALF: &[f64] = &[0.5, 0.6, 0.7, 0.8, 0.9, 1.0];
const HALF_AND_WHOLE: &[f64] = &[0.5, 1.0];

const fn hours(number: f64) -> Time {
    Time::seconds(number * 3600.0)
}

impl PressureTestRule {
    /// Its figures.
    ///
    /// UFGS says "steps" and no more; a stop at half the pressure is common practice. So is, for the
    /// plate, a first look at 1.5 bar and a night's hold.
    ///
    /// ```
    /// use coldwright::tables::pressure_test::PressureTestRule;
    /// let row = PressureTestRule::RealDecreto552.row();
    /// assert_eq!((row.factor, row.parts.len()), (1.1, 6));
    /// ```
    pub const fn row(self) -> RuleRow {
        match self {
            Self::RealDecreto552 => RuleRow {
                factor: 1.1,
                preliminary: GaugePressure::pascals(1.5e5),
                parts: TENTHS_FROM_HALF,
                hold: hours(0.5),
                source: SourceId::RealDecreto552Tests,
                steps_source: SourceId::RealDecreto552Tests,
            },
            Self::Ufgs15182 => RuleRow {
                factor: 1.0,
                preliminary: GaugePressure::pascals(10.0 * PASCAL_PER_PSI),
                parts: HALF_AND_WHOLE,
                hold: hours(24.0),
                source: SourceId::UfgsPressureTest,
                steps_source: SourceId::CommonPractice,
            },
            Self::Plate => RuleRow {
                factor: 1.0,
                preliminary: GaugePressure::pascals(1.5e5),
                parts: HALF_AND_WHOLE,
                hold: hours(12.0),
                source: SourceId::PlateFigure,
                steps_source: SourceId::CommonPractice,
            },
        }
    }
}
