//! Shows a quantity in a chosen unit. Figures are rounded here and nowhere else.

use serde::Serialize;

use super::{Length, QuantityKind, Unit};

/// How fine a figure is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Precision {
    /// As the usual instrument shows it: a wrench whole newton metres, a scale 5 g.
    Instrument,
    /// As a printed table does.
    Table,
    /// Five significant digits.
    Significant,
    /// Every digit, so that reading it back gives the same number.
    Exact,
}

impl Precision {
    /// The precision of a name, for an untyped edge.
    pub fn named(name: &str) -> Option<Self> {
        Some(match name {
            "instrument" => Self::Instrument,
            "table" => Self::Table,
            "significant" => Self::Significant,
            _ => return None,
        })
    }
}

/// How figures are written in a language.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Notation {
    /// `.` or `,`.
    pub decimal_mark: char,
}

impl Notation {
    /// A decimal point.
    pub const POINT: Self = Self { decimal_mark: '.' };
}

/// A figure ready to be drawn.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Shown {
    /// The number.
    pub number: String,
    /// The unit's symbol.
    pub unit: &'static str,
}

/// A band ready to be drawn.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ShownBand {
    /// The lower limit, rounded up.
    pub low: String,
    /// The upper limit, rounded down.
    pub high: String,
    /// The unit's symbol.
    pub unit: &'static str,
}

/// Significant digits of [`Precision::Significant`].
const SIGNIFICANT_DIGITS: i32 = 5;

/// Shows an SI number of a quantity in the unit with this symbol; `None` if the quantity has no such unit.
///
/// ```
/// use coldwright::quantity::{Notation, Precision, QuantityKind, show};
/// let shown = show(QuantityKind::Torque, 72.5, "ft·lbf", Precision::Instrument, Notation::POINT).unwrap();
/// assert_eq!((shown.number.as_str(), shown.unit), ("53", "ft·lbf"));
/// ```
pub fn show(
    kind: QuantityKind,
    si: f64,
    symbol: &str,
    precision: Precision,
    notation: Notation,
) -> Option<Shown> {
    let unit = kind.unit_of_symbol(symbol)?;
    let number = figure(unit.from_si(si), unit, precision, notation);
    Some(Shown {
        number,
        unit: unit.symbol,
    })
}

/// Shows a band; both limits are rounded into it, so that a figure read off lies inside. A band
/// narrower than a step takes the table's step.
///
/// ```
/// use coldwright::quantity::{Notation, QuantityKind, show_band};
/// let shown = show_band(QuantityKind::Torque, (68.0, 77.0), "ft·lbf", Notation::POINT).unwrap();
/// assert_eq!((shown.low.as_str(), shown.high.as_str()), ("51", "56"));
/// ```
pub fn show_band(
    kind: QuantityKind,
    (low, high): (f64, f64),
    symbol: &str,
    notation: Notation,
) -> Option<ShownBand> {
    let unit = kind.unit_of_symbol(symbol)?;
    let inward = |step: f64| {
        let low = (unit.from_si(low) / step - EDGE).ceil() * step;
        let high = (unit.from_si(high) / step + EDGE).floor() * step;
        (low <= high).then(|| (stepped(low, step, notation), stepped(high, step, notation)))
    };
    let plain = |si| figure(unit.from_si(si), unit, Precision::Table, notation);
    let (low, high) = inward(unit.step)
        .or_else(|| inward(unit.table_step))
        .unwrap_or_else(|| (plain(low), plain(high)));
    Some(ShownBand {
        low,
        high,
        unit: unit.symbol,
    })
}

/// Part of a step that a conversion may miss a whole step by.
const EDGE: f64 = 1e-9;

fn figure(number: f64, unit: &Unit, precision: Precision, notation: Notation) -> String {
    match precision {
        Precision::Instrument => stepped(number, unit.step, notation),
        Precision::Table => stepped(number, unit.table_step, notation),
        Precision::Significant => significant(number, notation),
        Precision::Exact => written(&format!("{number}"), notation),
    }
}

/// Rounded to a multiple of `step`, halves to even, with the digits that the step has.
fn stepped(number: f64, step: f64, notation: Notation) -> String {
    let rounded = libm::rint(number / step) * step;
    with_decimals(rounded, decimals_of(step), notation)
}

/// With so many digits after the decimal mark.
pub(super) fn with_decimals(number: f64, decimals: usize, notation: Notation) -> String {
    let plain = format!("{:.decimals$}", without_negative_zero(number));
    written(&plain, notation)
}

/// How many digits after the decimal mark a step has.
pub(super) fn decimals_of(step: f64) -> usize {
    (0..9)
        .find(|places| {
            let shifted = step * libm::pow(10.0, *places as f64);
            (shifted - libm::rint(shifted)).abs() < 1e-6 && shifted > 0.5
        })
        .unwrap_or(9) as usize
}

/// Five significant digits, trailing zeros left out, powers of ten only where a plain figure is unreadable.
fn significant(number: f64, notation: Notation) -> String {
    let size = number.abs();
    if size == 0.0 || !size.is_finite() {
        return "0".into();
    }
    if !(1e-4..1e9).contains(&size) {
        let text = format!("{:.*e}", SIGNIFICANT_DIGITS as usize - 1, number);
        let (mantissa, exponent) = text.split_once('e').unwrap_or((&text, "0"));
        return written(&format!("{}e{exponent}", trimmed(mantissa)), notation);
    }
    let whole_digits = libm::floor(libm::log10(size)) as i32 + 1;
    let places = (SIGNIFICANT_DIGITS - whole_digits).max(0) as usize;
    written(trimmed(&format!("{number:.places$}")), notation)
}

fn trimmed(number: &str) -> &str {
    if number.contains('.') {
        number.trim_end_matches('0').trim_end_matches('.')
    } else {
        number
    }
}

fn without_negative_zero(number: f64) -> f64 {
    if number == 0.0 { 0.0 } else { number }
}

/// A true minus sign, the language's decimal mark, thin spaces between groups from five digits on.
fn written(plain: &str, notation: Notation) -> String {
    let (sign, digits) = match plain.strip_prefix('-') {
        Some(digits) => ("−", digits),
        None => ("", plain),
    };
    let end = digits.find(['.', 'e']).unwrap_or(digits.len());
    let (whole, rest) = digits.split_at(end);
    let mut text = String::from(sign);
    for (index, digit) in whole.chars().enumerate() {
        if index > 0 && whole.len() > 4 && (whole.len() - index) % 3 == 0 {
            text.push('\u{202f}');
        }
        text.push(digit);
    }
    for character in rest.chars() {
        text.push(match character {
            '.' => notation.decimal_mark,
            '-' => '−',
            other => other,
        });
    }
    text
}

/// A length as a fraction of an inch.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct InchFraction {
    /// The fraction in lowest terms, for example `1 1/8`.
    pub text: String,
    /// How much longer the length is than the fraction.
    pub remainder: Length,
}

/// Largest length, in inches, that is given as a fraction.
const LONGEST_FRACTION: f64 = 1e6;

/// The nearest sixty-fourth of an inch; `None` beyond what a rule could show.
///
/// ```
/// use coldwright::quantity::{Length, nearest_sixty_fourth};
/// assert_eq!(nearest_sixty_fourth(Length::millimetres(15.88)).unwrap().text, "5/8");
/// assert_eq!(nearest_sixty_fourth(Length::millimetres(28.575)).unwrap().text, "1 1/8");
/// ```
pub fn nearest_sixty_fourth(length: Length) -> Option<InchFraction> {
    let inches = length.in_metres() / super::factors::METRE_PER_INCH;
    if !(0.0..LONGEST_FRACTION).contains(&inches) {
        return None;
    }
    let parts = libm::rint(inches * 64.0) as u64;
    let (whole, mut numerator, mut denominator) = (parts / 64, parts % 64, 64);
    while numerator > 0 && numerator % 2 == 0 {
        numerator /= 2;
        denominator /= 2;
    }
    let text = match (whole, numerator) {
        (whole, 0) => format!("{whole}"),
        (0, numerator) => format!("{numerator}/{denominator}"),
        (whole, numerator) => format!("{whole} {numerator}/{denominator}"),
    };
    let remainder = length - Length::inches(parts as f64 / 64.0);
    Some(InchFraction { text, remainder })
}
