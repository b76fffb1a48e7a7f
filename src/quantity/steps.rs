//! Figures some steps of an instrument above and below one that was read: the next reading lies near the last.

use serde::Serialize;

use super::show::{decimals_of, with_decimals};
use super::{Notation, QuantityKind, Unit, checked, read};

/// A figure so many steps away.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Stepped {
    /// How far away: `+0.05`.
    pub label: String,
    /// The figure with its unit, as a person would enter it; nothing beyond the quantity's range.
    pub text: Option<String>,
}

/// Most digits after the decimal mark: a step in another unit than the figure's has no end of them.
const MOST_DECIMALS: usize = 4;

/// The figures that lie `counts` steps from the figure in `text`, in its unit or in that of a bare number,
/// `assume`. `step` is the instrument's, written with its unit; without one that can be read it is the usual
/// instrument's. Nothing if `text` is no figure.
///
/// ```
/// use coldwright::quantity::{Notation, QuantityKind, steps};
/// let near = steps(QuantityKind::GaugePressure, "42.2 bar", "psi", "0.05 bar", &[-1.0, 10.0], Notation::POINT);
/// let texts: Vec<_> = near.iter().map(|near| near.text.as_deref().unwrap()).collect();
/// assert_eq!(texts, ["42.15 bar", "42.70 bar"]);
/// ```
pub fn steps(
    kind: QuantityKind,
    text: &str,
    assume: &str,
    step: &str,
    counts: &[f64],
    notation: Notation,
) -> Vec<Stepped> {
    let Ok(si) = read(kind, text, Some(assume)) else {
        return Vec::new();
    };
    let Some(unit) = unit_in(kind, text).or_else(|| kind.unit_of_symbol(assume)) else {
        return Vec::new();
    };
    let step = match read(difference(kind), step, None) {
        Ok(step) if step > 0.0 => step / unit.scale,
        _ => unit.step,
    };
    let decimals = decimals_of(step).min(MOST_DECIMALS);
    let figure = unit.from_si(si);
    let own = decimals_in(text).max(decimals);
    // `7,430` would be refused where it is entered: it could be thousands.
    let entered = if own == 3 { Notation::POINT } else { notation };
    counts
        .iter()
        .map(|count| {
            let sign = if *count < 0.0 { "" } else { "+" };
            let next = figure + count * step;
            Stepped {
                label: format!("{sign}{}", with_decimals(count * step, decimals, notation)),
                text: checked(kind, unit.to_si(next))
                    .is_ok()
                    .then(|| format!("{} {}", with_decimals(next, own, entered), unit.symbol)),
            }
        })
        .collect()
}

/// What steps of a quantity are differences of.
fn difference(kind: QuantityKind) -> QuantityKind {
    match kind {
        QuantityKind::GaugePressure | QuantityKind::AbsolutePressure => {
            QuantityKind::PressureDifference
        }
        QuantityKind::Temperature => QuantityKind::TemperatureDifference,
        other => other,
    }
}

/// The unit that stands behind a figure.
fn unit_in(kind: QuantityKind, text: &str) -> Option<&'static Unit> {
    let last = text.rfind(|character: char| character.is_ascii_digit())?;
    let spelled = text.get(last + 1..)?.trim().trim_start_matches(['.', ',']);
    kind.unit(spelled).map(|(unit, _)| unit)
}

/// How many digits stand after the decimal mark.
fn decimals_in(text: &str) -> usize {
    let after = text.split_once(['.', ',']).map_or("", |(_, after)| after);
    let digits = after.chars().take_while(char::is_ascii_digit);
    digits.count().min(MOST_DECIMALS)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(kind: QuantityKind, text: &str, assume: &str, step: &str) -> Vec<(String, String)> {
        steps(kind, text, assume, step, &[-1.0, 1.0], Notation::POINT)
            .into_iter()
            .map(|near| (near.label, near.text.unwrap_or_default()))
            .collect()
    }

    fn pairs(found: &[(&str, &str)]) -> Vec<(String, String)> {
        let owned = |(label, text): &(&str, &str)| ((*label).into(), (*text).into());
        found.iter().map(owned).collect()
    }

    #[test]
    fn a_step_is_the_instruments_in_the_unit_of_the_figure() {
        use QuantityKind::{AbsolutePressure, GaugePressure, Temperature};
        let by = near(GaugePressure, "44.2", "bar", "0.05 bar");
        assert_eq!(by, pairs(&[("−0.05", "44.15 bar"), ("+0.05", "44.25 bar")]));
        let by = near(Temperature, "70 °F", "°C", "0.5 K");
        assert_eq!(by, pairs(&[("−0.9", "69.1 °F"), ("+0.9", "70.9 °F")]));
        let by = near(Temperature, "-0.1 °C", "°C", "0.2 K");
        assert_eq!(by, pairs(&[("−0.2", "−0.3 °C"), ("+0.2", "0.1 °C")]));
        let by = near(AbsolutePressure, "650 micron", "Pa", "1 micron");
        assert_eq!(by, pairs(&[("−1", "649 micron"), ("+1", "651 micron")]));
    }

    #[test]
    fn without_a_step_it_is_the_usual_instruments() {
        let by = near(QuantityKind::GaugePressure, "602 psi", "bar", "");
        assert_eq!(by, pairs(&[("−1", "601 psi"), ("+1", "603 psi")]));
        let by = near(QuantityKind::GaugePressure, "602 psi", "bar", "small");
        assert_eq!(by, pairs(&[("−1", "601 psi"), ("+1", "603 psi")]));
    }

    #[test]
    fn beyond_the_range_there_is_no_figure_and_none_near_a_word() {
        let by = near(
            QuantityKind::AbsolutePressure,
            "5 micron",
            "micron",
            "10 micron",
        );
        assert_eq!(by, pairs(&[("−10", ""), ("+10", "15 micron")]));
        for text in ["", "full", "12 parsec"] {
            assert_eq!(near(QuantityKind::GaugePressure, text, "bar", ""), []);
        }
    }
}
