//! Where a yes turns into a no: a root finder that cannot fail.

/// Halvings of the interval; more do not move a 64-bit number.
const HALVINGS: usize = 64;

/// The point between `low` and `high` where `before` turns from true to false. If it is false
/// everywhere that is `low`, if true everywhere `high`, each to the last digits.
pub(super) fn turning_point(low: f64, high: f64, before: impl Fn(f64) -> bool) -> f64 {
    let (mut low, mut high) = (low, high);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if before(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}

#[cfg(test)]
mod tests {
    use super::turning_point;

    #[test]
    fn finds_the_square_root_of_two() {
        let root = turning_point(0.0, 2.0, |x| x * x < 2.0);
        assert!((root - core::f64::consts::SQRT_2).abs() < 1e-15);
    }

    #[test]
    fn stays_at_the_end_without_a_turn() {
        assert!((turning_point(1.0, 2.0, |_| true) - 2.0).abs() < 1e-15);
        assert!((turning_point(1.0, 2.0, |_| false) - 1.0).abs() < 1e-15);
    }
}
