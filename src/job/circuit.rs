//! The circuit as a drawing needs it: how long and how high it runs, and how thick its lines are.

use serde::Serialize;

use super::parts::Parts;
use crate::calc::line_set::HigherUnit;
use crate::quantity::{Entry, Length};

/// What is known of the way from unit to unit.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Circuit {
    /// Length of the lines, one way.
    pub length: Option<Length>,
    /// Height of one unit above the other.
    pub lift: Option<Length>,
    /// Which unit stands higher.
    pub higher_unit: Option<HigherUnit>,
    /// Outside diameter of the thinner line.
    pub liquid_line: Option<Length>,
    /// Outside diameter of the thicker line.
    pub gas_line: Option<Length>,
}

impl Circuit {
    /// What cannot be read is told where it is asked about, and is unknown here.
    pub(super) fn of(parts: &Parts<'_>) -> Self {
        Self {
            length: read(&parts.lines.length),
            lift: read(&parts.lines.lift),
            higher_unit: read(&parts.lines.higher_unit),
            liquid_line: read(&parts.liquid_line.tube),
            gas_line: read(&parts.gas_line.tube),
        }
    }
}

fn read<T: Copy>(entry: &Entry<T>) -> Option<T> {
    match entry {
        Entry::Read(found) => Some(*found),
        _ => None,
    }
}
