//! The form in which nearly every figure arrives, read in one pass: `46.15 bar`, `-3 °C`, `200 micron`.

use super::decimal::decimal_value;
use super::{QuantityKind, Unit};

/// Most digits: so many are read as they stand, in no more than one rounding.
const MOST_DIGITS: usize = 15;

/// The SI number of digits, with at most one point among them, and a unit's own symbol; nothing for any other text.
///
/// It says what [`read`](super::read) says of the same text, only sooner: a job has hundreds of readings.
pub(super) fn plain_figure(kind: QuantityKind, text: &str, assume: Option<&str>) -> Option<f64> {
    let (sign, unsigned) = match text.strip_prefix('-') {
        Some(unsigned) => (-1.0, unsigned),
        None => (1.0, text),
    };
    let (digits, spelled) = unsigned.split_at_checked(digits_before_unit(unsigned.as_bytes())?)?;
    let unit = plain_unit(kind, spelled.trim_start_matches(' '), assume)?;
    Some(unit.to_si(sign * decimal_value(digits, 0)))
}

/// Bytes of the digits and the point within them.
fn digits_before_unit(text: &[u8]) -> Option<usize> {
    let count = |from: usize| {
        let after = text.get(from..).unwrap_or_default();
        after
            .iter()
            .take_while(|byte| byte.is_ascii_digit())
            .count()
    };
    let whole = count(0);
    let part = match text.get(whole) {
        Some(b'.') => count(whole + 1),
        _ => 0,
    };
    let length = if part > 0 { whole + 1 + part } else { whole };
    (whole > 0 && whole + part <= MOST_DIGITS).then_some(length)
}

/// The unit of a symbol, or the one that is assumed where none is written. A vacuum bears a mark besides.
fn plain_unit(kind: QuantityKind, symbol: &str, assume: Option<&str>) -> Option<&'static Unit> {
    if kind == QuantityKind::Vacuum {
        return None;
    }
    kind.unit_of_symbol(if symbol.is_empty() { assume? } else { symbol })
}
