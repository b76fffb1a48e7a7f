//! The value of decimal digits. The standard library's reader is exact for any length and carries 11 kB
//! of tables for it, a tenth of what the page's module may weigh; people type fifteen digits at most.

/// Powers of ten that are exact.
const EXACT_POWERS: [f64; 23] = [
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22,
];

/// Largest mantissa to which another digit still fits.
const FULL_MANTISSA: u64 = u64::MAX / 10 - 1;

/// Exponents beyond this make any mantissa infinite or nothing.
const FARTHEST_EXPONENT: i32 = 400;

/// The number for `digits`, which may hold one decimal point, times ten to the power of `exponent`.
///
/// Rounded correctly, as the standard library would, up to fifteen digits and exponents up to 22;
/// within a few units of the last place beyond.
pub(super) fn decimal_value(digits: &str, exponent: i32) -> f64 {
    let mut mantissa = 0u64;
    let mut power = exponent.clamp(-FARTHEST_EXPONENT, FARTHEST_EXPONENT);
    let mut after_point = false;
    for character in digits.chars() {
        match character.to_digit(10) {
            Some(digit) if mantissa < FULL_MANTISSA => {
                mantissa = mantissa * 10 + u64::from(digit);
                power -= i32::from(after_point);
            }
            Some(_) => power += i32::from(!after_point),
            None => after_point = true,
        }
    }
    scaled(mantissa as f64, power)
}

/// `mantissa` times ten to the power of `power`, in steps that are exact.
fn scaled(mantissa: f64, power: i32) -> f64 {
    let mut number = mantissa;
    let mut left = power.unsigned_abs() as usize;
    while left > 0 {
        let step = left.min(EXACT_POWERS.len() - 1);
        let factor = EXACT_POWERS.get(step).copied().unwrap_or(1.0);
        number = if power < 0 {
            number / factor
        } else {
            number * factor
        };
        left -= step;
        if number == 0.0 || !number.is_finite() {
            break;
        }
    }
    number
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::float_cmp)]
mod tests {
    use super::decimal_value;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn fifteen_digits_are_read_as_the_standard_library_reads_them(
            whole in 0u64..10_000_000, part in "[0-9]{0,8}", exponent in -14i32..=15,
        ) {
            let digits = format!("{whole}.{part}");
            let expected: f64 = format!("{digits}e{exponent}").parse().unwrap();
            prop_assert_eq!(decimal_value(&digits, exponent), expected);
        }

        #[test]
        fn longer_figures_are_near(digits in "[1-9][0-9]{0,30}(\\.[0-9]{0,30})?", exponent in -250i32..=200) {
            let expected: f64 = format!("{digits}e{exponent}").parse().unwrap();
            let found = decimal_value(&digits, exponent);
            prop_assert!((found - expected).abs() <= 1e-14 * expected, "{} {}", found, expected);
        }
    }

    #[test]
    fn what_is_too_large_is_infinite_and_what_is_too_small_is_nothing() {
        assert!(decimal_value("9", 999_999).is_infinite());
        assert!(decimal_value(&"9".repeat(80), i32::MAX).is_infinite());
        assert_eq!(decimal_value("9", -999_999), 0.0);
        assert_eq!(decimal_value("0", i32::MAX), 0.0);
    }
}
