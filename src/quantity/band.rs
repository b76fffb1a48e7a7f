//! A band between two limits, as plates print it: `34–42 N·m`, `38 ± 4 N·m`, `38 N·m`.

use serde::Serialize;

use super::entry::{Enter, Plain};
use super::{Arrived, Flaw, Quantity, QuantityKind, checked, example, read};

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

impl<Q: Quantity> Band<Q> {
    fn from_si((low, high): Limits) -> Self {
        Self {
            low: Q::from_si(low),
            high: Q::from_si(high),
        }
    }
}

impl<Q: Quantity> Enter for Band<Q> {
    fn from_number(number: f64) -> Result<Self, Flaw> {
        only(checked(Q::KIND, number)).map(Self::from_si)
    }

    /// Two figures parted by a dash or "to", or one with ± and a tolerance, or one alone. A unit
    /// may stand once, at the end.
    fn from_text(text: &str, assume: Option<&str>) -> Result<Self, Flaw> {
        written(Q::KIND, text, assume).map(Self::from_si)
    }

    fn from_arrived(arrived: Arrived) -> Result<Option<Self>, Flaw> {
        Ok(limits_of(Q::KIND, arrived)?.map(Self::from_si))
    }

    fn example() -> String {
        example_of(Q::KIND)
    }

    #[cfg(feature = "terminal")]
    fn schema() -> (String, schemars::Schema) {
        super::schema::band_entry(Q::KIND)
    }
}

/// Both limits in SI, the lower one first: one piece of code reads the bands of all quantities.
type Limits = (f64, f64);

fn example_of(kind: QuantityKind) -> String {
    format!("{0} – {0}", example(kind))
}

/// One figure is a band without width.
fn only(figure: Result<f64, Flaw>) -> Result<Limits, Flaw> {
    figure.map(|only| (only, only))
}

fn sorted(one: f64, other: f64) -> Limits {
    if one > other {
        (other, one)
    } else {
        (one, other)
    }
}

/// The limits from whatever arrived; `Ok(None)` for nothing.
fn limits_of(kind: QuantityKind, arrived: Arrived) -> Result<Option<Limits>, Flaw> {
    let example = || example_of(kind);
    match Plain::of(arrived) {
        Plain::Nothing => Ok(None),
        Plain::Number(number) => only(checked(kind, number)).map(Some),
        Plain::Text(text, assume) => written(kind, &text, assume.as_deref()).map(Some),
        Plain::Limits(low, high) => match (limits_of(kind, low)?, limits_of(kind, high)?) {
            (Some((low, _)), Some((_, high))) if low > high => {
                Err(Flaw::PartsOutOfOrder { example: example() })
            }
            (Some((low, _)), Some((_, high))) => Ok(Some((low, high))),
            _ => Err(Flaw::WrongType { example: example() }),
        },
        Plain::Truth(_) | Plain::Other => Err(Flaw::WrongType { example: example() }),
    }
}

fn written(kind: QuantityKind, text: &str, assume: Option<&str>) -> Result<Limits, Flaw> {
    if let Some((middle, tolerance)) = parted(text, &["±", "+/-", "+-"]) {
        return around(kind, middle, tolerance, assume);
    }
    match parted(text, &["–", "—", "…", "..", " to ", " a ", "-"]) {
        Some((low, high)) => {
            let low = read(kind, low, trailing_unit(high).or(assume))?;
            Ok(sorted(low, read(kind, high, assume)?))
        }
        None => only(read(kind, text, assume)),
    }
}

fn around(
    kind: QuantityKind,
    middle: &str,
    tolerance: &str,
    assume: Option<&str>,
) -> Result<Limits, Flaw> {
    let unit = trailing_unit(tolerance);
    let (middle, spread) = if unit == Some("%") {
        let middle = read(kind, middle, assume)?;
        (middle, middle * read(QuantityKind::Ratio, tolerance, None)?)
    } else {
        let middle = read(kind, middle, unit.or(assume))?;
        (middle, read(kind, tolerance, assume)?)
    };
    let low = checked(kind, middle - spread)?;
    Ok(sorted(low, checked(kind, middle + spread)?))
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
