//! A band between two limits, as plates print it: `34–42 N·m`, `38 ± 4 N·m`, `38 N·m`.

use serde::Serialize;

use super::entry::Enter;
use super::{Flaw, Quantity, example};

/// Two limits, both inside the band; the lower one is never above the upper one.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Band<Q> {
    /// The lower limit.
    pub low: Q,
    /// The upper limit.
    pub high: Q,
}

impl<Q: Quantity> Band<Q> {
    /// A band from its limits, in either order.
    pub fn new(one: Q, other: Q) -> Self {
        if one > other {
            Self {
                low: other,
                high: one,
            }
        } else {
            Self {
                low: one,
                high: other,
            }
        }
    }

    /// Half way between the limits.
    pub fn middle(self) -> Q {
        Q::from_si((self.low.si() + self.high.si()) / 2.0)
    }

    /// What both bands allow; `None` if that is nothing.
    ///
    /// ```
    /// use coldwright::quantity::Band;
    /// use coldwright::quantity::Torque;
    /// let newton_metres = |low, high| Band::new(Torque::newton_metres(low), Torque::newton_metres(high));
    /// let overlap = newton_metres(63.0, 77.0).overlap(newton_metres(68.0, 82.0));
    /// assert_eq!(overlap, Some(newton_metres(68.0, 77.0)));
    /// assert_eq!(newton_metres(1.0, 2.0).overlap(newton_metres(3.0, 4.0)), None);
    /// ```
    pub fn overlap(self, other: Self) -> Option<Self> {
        let low = if self.low > other.low {
            self.low
        } else {
            other.low
        };
        let high = if self.high < other.high {
            self.high
        } else {
            other.high
        };
        (low <= high).then_some(Self { low, high })
    }
}

impl<Q: Quantity> Enter for Band<Q> {
    fn from_number(number: f64) -> Result<Self, Flaw> {
        Q::from_number(number).map(|only| Self {
            low: only,
            high: only,
        })
    }

    /// Two figures parted by a dash or "to", or one with ± and a tolerance, or one alone. A unit
    /// may stand once, at the end.
    fn from_text(text: &str, assume: Option<&str>) -> Result<Self, Flaw> {
        if let Some((middle, tolerance)) = parted(text, &["±", "+/-", "+-"]) {
            return around(middle, tolerance, assume);
        }
        match parted(text, &["–", "—", "…", "..", " to ", "-"]) {
            Some((low, high)) => {
                let unit = trailing_unit(high);
                let low = Q::from_text(low, unit.or(assume))?;
                Ok(Self::new(low, Q::from_text(high, assume)?))
            }
            None => Q::from_text(text, assume).map(|only| Self {
                low: only,
                high: only,
            }),
        }
    }

    fn from_limits(low: Self, high: Self) -> Result<Self, Flaw> {
        if low.low > high.high {
            return Err(Flaw::PartsOutOfOrder {
                example: Self::example(),
            });
        }
        Ok(Self {
            low: low.low,
            high: high.high,
        })
    }

    fn example() -> String {
        format!("{0} – {0}", example(Q::KIND))
    }

    #[cfg(feature = "terminal")]
    fn schema() -> (String, schemars::Schema) {
        super::schema::band_entry(Q::KIND)
    }
}

fn around<Q: Quantity>(
    middle: &str,
    tolerance: &str,
    assume: Option<&str>,
) -> Result<Band<Q>, Flaw> {
    let unit = trailing_unit(tolerance);
    if unit == Some("%") {
        let middle = Q::from_text(middle, assume)?;
        let spread = middle.si() * super::Ratio::from_text(tolerance, None)?.in_one();
        return limits(middle.si() - spread, middle.si() + spread);
    }
    let middle = Q::from_text(middle, unit.or(assume))?;
    let tolerance = Q::from_text(tolerance, assume)?;
    limits(middle.si() - tolerance.si(), middle.si() + tolerance.si())
}

fn limits<Q: Quantity>(low: f64, high: f64) -> Result<Band<Q>, Flaw> {
    Ok(Band::new(Q::from_number(low)?, Q::from_number(high)?))
}

/// Both sides of the first of `marks` that parts the text into two that are not empty.
fn parted<'a>(text: &'a str, marks: &[&str]) -> Option<(&'a str, &'a str)> {
    marks.iter().find_map(|mark| {
        // Not at the very start, where a dash is a minus sign, nor between letters, as in "ft-lb".
        text.match_indices(mark).find_map(|(at, mark)| {
            let (low, high) = (text.get(..at)?.trim(), text.get(at + mark.len()..)?.trim());
            let digit_follows = high.starts_with(|c: char| c.is_ascii_digit() || c == '.');
            let before = low
                .chars()
                .next_back()
                .is_some_and(|c| c != '/' && c != 'e' && c != 'E');
            (digit_follows && before).then_some((low, high))
        })
    })
}

/// The unit at the end of a figure, if one is written.
fn trailing_unit(text: &str) -> Option<&str> {
    let start = text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '/' | ' ')))?;
    text.get(start..)
        .map(str::trim)
        .filter(|unit| !unit.is_empty())
}
