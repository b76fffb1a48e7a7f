//! Reads a number as people write it: `5/8`, `1 1/8`, `1-1/8`, `1⅛`, `12,5`, `2 300`, `1e-3`.

use super::Flaw;
use super::decimal::decimal_value;

/// A number read from the start of a text.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Number {
    /// Its magnitude; signs are read one level up.
    pub magnitude: f64,
    /// Characters used.
    pub length: usize,
    /// Whether it was written as a fraction.
    pub fraction: bool,
}

/// Reads the number at the start of `text`. `Ok(None)` if none stands there.
pub(super) fn number(text: &[char]) -> Result<Option<Number>, Flaw> {
    if let Some(magnitude) = text.first().and_then(|c| vulgar_fraction(*c)) {
        return Ok(Some(Number {
            magnitude,
            length: 1,
            fraction: true,
        }));
    }
    let Some((token, length)) = decimal_token(text) else {
        return Ok(None);
    };
    let whole = token.chars().all(|c| c.is_ascii_digit());
    if whole && let Some(fraction) = fraction_after(text, &token, length)? {
        return Ok(Some(fraction));
    }
    let magnitude = decimal(&token)?;
    Ok(Some(Number {
        magnitude,
        length,
        fraction: false,
    }))
}

/// What follows a whole number: `/8`, or ` 1/8`, `-1/8`, `⅛`.
fn fraction_after(text: &[char], whole: &str, length: usize) -> Result<Option<Number>, Flaw> {
    let whole = decimal(whole)?;
    let after = text.get(length..).unwrap_or_default();
    if let Some((denominator, used)) = denominator(after) {
        let magnitude = quotient(whole, denominator)?;
        return Ok(Some(Number {
            magnitude,
            length: length + used,
            fraction: true,
        }));
    }
    let joint = after
        .iter()
        .take_while(|c| c.is_whitespace() || **c == '-')
        .count();
    let after = after.get(joint..).unwrap_or_default();
    if let Some(part) = after.first().and_then(|c| vulgar_fraction(*c)) {
        let magnitude = whole + part;
        return Ok(Some(Number {
            magnitude,
            length: length + joint + 1,
            fraction: true,
        }));
    }
    let digits = after.iter().take_while(|c| c.is_ascii_digit()).count();
    let numerator: String = after.iter().take(digits).collect();
    let rest = after.get(digits..).unwrap_or_default();
    match denominator(rest) {
        Some((denominator, used)) if joint > 0 && digits > 0 => {
            let magnitude = whole + quotient(decimal(&numerator)?, denominator)?;
            let length = length + joint + digits + used;
            Ok(Some(Number {
                magnitude,
                length,
                fraction: true,
            }))
        }
        _ => Ok(None),
    }
}

/// `/8` at the start of `text`: the denominator and the characters used.
fn denominator(text: &[char]) -> Option<(f64, usize)> {
    let blanks = text.iter().take_while(|c| c.is_whitespace()).count();
    let slash = text.get(blanks)?;
    if !matches!(slash, '/' | '⁄') {
        return None;
    }
    let after = text.get(blanks + 1..)?;
    let inner = after.iter().take_while(|c| c.is_whitespace()).count();
    let digits: String = after
        .iter()
        .skip(inner)
        .take_while(|c| c.is_ascii_digit())
        .collect();
    if digits.is_empty() {
        return None;
    }
    let denominator = decimal_value(&digits, 0);
    Some((denominator, blanks + 1 + inner + digits.len()))
}

fn quotient(numerator: f64, denominator: f64) -> Result<f64, Flaw> {
    if denominator > 0.0 {
        Ok(numerator / denominator)
    } else {
        Err(Flaw::DivisionByZero)
    }
}

fn vulgar_fraction(character: char) -> Option<f64> {
    Some(match character {
        '½' => 0.5,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => return None,
    })
}

/// Digits with separators and an exponent at the start of `text`, blanks between groups of three
/// digits left out, and the characters used.
fn decimal_token(text: &[char]) -> Option<(String, usize)> {
    let mut token = String::new();
    let mut position = 0;
    while let Some(character) = text.get(position) {
        let digit_follows = text.get(position + 1).is_some_and(char::is_ascii_digit);
        match character {
            digit if digit.is_ascii_digit() => token.push(*digit),
            '.' | ',' if digit_follows || (!token.is_empty() && *character == '.') => {
                token.push(*character);
            }
            blank if blank.is_whitespace() && group_follows(&token, text, position) => {}
            _ => break,
        }
        position += 1;
    }
    if !token.chars().any(|c| c.is_ascii_digit()) {
        return None;
    }
    let (exponent, used) = exponent(text.get(position..).unwrap_or_default());
    token.push_str(&exponent);
    Some((token, position + used))
}

/// Whether the blank at `position` parts thousands: digits before it, exactly three after it, and
/// those three do not begin a fraction.
fn group_follows(token: &str, text: &[char], position: usize) -> bool {
    let after = text.get(position + 1..).unwrap_or_default();
    let digits = after.iter().take_while(|c| c.is_ascii_digit()).count();
    let whole = !token.is_empty() && token.chars().all(|c| c.is_ascii_digit());
    whole && digits == 3 && denominator(after.get(3..).unwrap_or_default()).is_none()
}

/// `e-3` at the start of `text`, if digits follow the letter.
fn exponent(text: &[char]) -> (String, usize) {
    if !matches!(text.first(), Some('e' | 'E')) {
        return (String::new(), 0);
    }
    let sign: String = match text.get(1) {
        Some('-' | '−') => "-".into(),
        Some('+') => "+".into(),
        _ => String::new(),
    };
    let start = 1 + sign.len();
    let digits: String = text
        .iter()
        .skip(start)
        .take_while(|c| c.is_ascii_digit())
        .take(6)
        .collect();
    if digits.is_empty() {
        return (String::new(), 0);
    }
    (format!("e{sign}{digits}"), start + digits.len())
}

/// The value of a token of digits, points, commas and an exponent.
fn decimal(token: &str) -> Result<f64, Flaw> {
    let (mantissa, exponent) = token.split_at(token.find('e').unwrap_or(token.len()));
    let plain = without_thousands(mantissa)?;
    // At most six digits, so that only the sign of a missing exponent can fail.
    let exponent = exponent.trim_start_matches('e').parse().unwrap_or(0);
    let number = decimal_value(&plain, exponent);
    if number.is_finite() {
        Ok(number)
    } else {
        Err(Flaw::NotFinite)
    }
}

/// Turns the separators of a mantissa into one decimal point.
fn without_thousands(mantissa: &str) -> Result<String, Flaw> {
    let points = mantissa.matches('.').count();
    let commas = mantissa.matches(',').count();
    let decimal_mark = match (points, commas) {
        (0, 0) => return Ok(mantissa.into()),
        (1, 0) => '.',
        (0, 1) if is_ambiguous(mantissa) => return Err(ambiguous(mantissa)),
        (0, 1) => ',',
        (_, 1) if mantissa.rfind(',') > mantissa.rfind('.') => ',',
        (1, _) if mantissa.rfind('.') > mantissa.rfind(',') => '.',
        (0, _) | (_, 0) => ' ',
        _ => return Err(not_grouped(mantissa)),
    };
    let (whole, part) = mantissa.rsplit_once(decimal_mark).unwrap_or((mantissa, ""));
    if !is_grouped(whole) {
        return Err(not_grouped(mantissa));
    }
    let whole: String = whole.chars().filter(char::is_ascii_digit).collect();
    Ok(format!(
        "{}.{}",
        if whole.is_empty() { "0" } else { &whole },
        if part.is_empty() { "0" } else { part }
    ))
}

/// `1,250`: a thousand and something, or one and a quarter. `0,125` and `12,5` are clear.
fn is_ambiguous(mantissa: &str) -> bool {
    mantissa.split_once(',').is_some_and(|(whole, part)| {
        part.len() == 3 && (1..=3).contains(&whole.len()) && !whole.starts_with('0')
    })
}

fn ambiguous(mantissa: &str) -> Flaw {
    Flaw::AmbiguousNumber {
        found: mantissa.into(),
        decimal: mantissa.replace(',', "."),
        thousands: mantissa.replace(',', ""),
    }
}

/// Whether separators part the digits into a first group of up to three and further groups of three.
fn is_grouped(whole: &str) -> bool {
    let mut groups = whole.split(['.', ',']);
    let first = groups.next().unwrap_or_default().len();
    let rest: Vec<usize> = groups.map(str::len).collect();
    rest.is_empty() || ((1..=3).contains(&first) && rest.iter().all(|length| *length == 3))
}

fn not_grouped(mantissa: &str) -> Flaw {
    Flaw::NotANumber {
        at: 1,
        found: mantissa.into(),
        example: mantissa.replace(['.', ','], ""),
    }
}
