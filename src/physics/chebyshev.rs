//! Sums of Chebyshev polynomials.

/// Sum of `coefficients[k] T_k(x)` for `x` in -1..1, by Clenshaw's recurrence.
///
/// Source: Clenshaw, Math. Tables Aids Comput. 9 (1955) 118.
pub(super) fn sum(coefficients: &[f32], x: f64) -> f64 {
    let Some((first, rest)) = coefficients.split_first() else {
        return 0.0;
    };
    let (mut nearer, mut farther) = (0.0, 0.0);
    for coefficient in rest.iter().rev() {
        let next = 2.0 * x * nearer + (f64::from(*coefficient) - farther);
        farther = nearer;
        nearer = next;
    }
    x * nearer + (f64::from(*first) - farther)
}

/// Sum of `rows[j][i] T_i(x) T_j(y)`.
pub(super) fn surface(rows: &[&[f32]], x: f64, y: f64) -> f64 {
    let (mut nearer, mut farther) = (0.0, 0.0);
    for row in rows.iter().skip(1).rev() {
        let next = 2.0 * y * nearer + (sum(row, x) - farther);
        farther = nearer;
        nearer = next;
    }
    y * nearer + (rows.first().map_or(0.0, |row| sum(row, x)) - farther)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// T0..T3 written out.
    fn polynomials(x: f64) -> [f64; 4] {
        [1.0, x, 2.0 * x * x - 1.0, 4.0 * x * x * x - 3.0 * x]
    }

    #[test]
    fn sums_agree_with_the_polynomials_written_out() {
        let rows: [&[f32]; 3] = [
            &[1.5, -2.0, 0.25, 3.0],
            &[0.5, 1.0],
            &[-1.0, 0.0, 2.0, 0.125],
        ];
        for x in [-1.0, -0.3, 0.0, 0.7, 1.0] {
            for y in [-1.0, 0.2, 1.0] {
                let mut plain = 0.0;
                for (row, in_y) in rows.iter().zip(polynomials(y)) {
                    let in_x: f64 = row
                        .iter()
                        .zip(polynomials(x))
                        .map(|(c, t)| f64::from(*c) * t)
                        .sum();
                    assert!((sum(row, x) - in_x).abs() < 1e-14);
                    plain += in_x * in_y;
                }
                assert!((surface(&rows, x, y) - plain).abs() < 1e-14);
            }
        }
    }

    #[test]
    fn nothing_sums_to_zero() {
        assert!(sum(&[], 0.5).abs() < f64::MIN_POSITIVE);
        assert!(surface(&[], 0.5, 0.5).abs() < f64::MIN_POSITIVE);
    }
}
