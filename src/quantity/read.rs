//! Reads a quantity as people write it: `5/8`, `114 ft 6 in`, `12,5 bar`, `29.9 inHg vac`.

use super::number::{Number, number};
use super::plain_figure::plain_figure;
use super::{Flaw, QuantityKind, Unit};

/// Longest text that is looked at; what is longer is no figure.
const LONGEST_TEXT: usize = 80;

/// Reads `text` as the SI number of a quantity.
///
/// Units may be spelled in many ways. A number without a unit takes the unit `assume`, if given; a
/// bare fraction is a length in inches, as tube is sold.
///
/// # Errors
/// Everything in [`Flaw`] but the choice of words.
pub fn read(kind: QuantityKind, text: &str, assume: Option<&str>) -> Result<f64, Flaw> {
    let text = text.trim();
    match plain_figure(kind, text, assume) {
        Some(si) => checked(kind, si),
        None => read_as_people_write(kind, text, assume),
    }
}

fn read_as_people_write(kind: QuantityKind, text: &str, assume: Option<&str>) -> Result<f64, Flaw> {
    let characters: Vec<char> = text.chars().take(LONGEST_TEXT + 1).collect();
    if characters.len() > LONGEST_TEXT {
        return Err(not_a_number(&characters, 0, kind));
    }
    let (sign, start) = match characters.first() {
        Some('-' | '−' | '–') => (-1.0, 1),
        Some('+') => (1.0, 1),
        _ => (1.0, 0),
    };
    let blanks = characters
        .iter()
        .skip(start)
        .take_while(|c| c.is_whitespace())
        .count();
    let si = parts(kind, &characters, start + blanks, sign, assume)?;
    checked(kind, si)
}

/// The number itself, if it is finite and inside the quantity's range.
///
/// # Errors
/// [`Flaw::NotFinite`], [`Flaw::OutOfRange`].
pub fn checked(kind: QuantityKind, si: f64) -> Result<f64, Flaw> {
    let (low, high) = kind.range();
    if !si.is_finite() {
        return Err(Flaw::NotFinite);
    }
    // A hair of slack: the conversion of the limit itself must not fall outside.
    let slack = 1e-12 * low.abs().max(high.abs());
    if si < low - slack || si > high + slack {
        return Err(Flaw::OutOfRange {
            quantity: kind,
            low,
            high,
        });
    }
    Ok(si)
}

/// A number with its unit, and further ones as long as text is left.
fn parts(
    kind: QuantityKind,
    text: &[char],
    start: usize,
    sign: f64,
    assume: Option<&str>,
) -> Result<f64, Flaw> {
    let mut position = start;
    let mut sum = 0.0;
    let mut last: Option<&Unit> = None;
    loop {
        let here = text.get(position..).unwrap_or_default();
        let first = number(here)?.ok_or_else(|| not_a_number(text, position, kind))?;
        let rest = here.get(first.length..).unwrap_or_default();
        let (unit, unit_sign, used) = unit_after(kind, rest, first, assume)?;
        if last.is_some_and(|larger| unit.scale >= larger.scale) {
            return Err(Flaw::PartsOutOfOrder {
                example: example(kind).into(),
            });
        }
        if last.is_none() {
            sum = unit.to_si(sign * unit_sign * first.magnitude);
        } else {
            sum += sign * unit_sign * first.magnitude * unit.scale;
        }
        last = Some(unit);
        let rest = rest.get(used..).unwrap_or_default();
        let blanks = rest.iter().take_while(|c| c.is_whitespace()).count();
        if blanks == rest.len() {
            return Ok(sum);
        }
        position += first.length + used + blanks;
    }
}

/// The unit after a number, its sign, and the characters it takes.
fn unit_after(
    kind: QuantityKind,
    rest: &[char],
    number: Number,
    assume: Option<&str>,
) -> Result<(&'static Unit, f64, usize), Flaw> {
    let spelled: String = rest.iter().collect();
    let spelled = spelled.trim();
    if spelled.is_empty() {
        let (unit, sign) = unwritten_unit(kind, number, assume)?;
        return Ok((unit, sign, rest.len()));
    }
    if let Some((unit, sign)) = kind.unit(spelled) {
        return Ok((unit, sign, rest.len()));
    }
    if kind.has_parts() {
        for (used, character) in rest.iter().enumerate() {
            let head: String = rest.iter().take(used).collect();
            if character.is_ascii_digit()
                && let Some((unit, sign)) = kind.unit(&head)
            {
                return Ok((unit, sign, used));
            }
        }
    }
    Err(wrong_unit(kind, spelled))
}

fn unwritten_unit(
    kind: QuantityKind,
    number: Number,
    assume: Option<&str>,
) -> Result<(&'static Unit, f64), Flaw> {
    let assumed = match (kind, number.fraction) {
        (QuantityKind::Length, true) => Some("in"),
        (QuantityKind::Ratio, _) if assume.is_none() => return Ok((&ONE, 1.0)),
        _ => assume,
    };
    match assumed {
        Some(symbol) => kind.unit(symbol).ok_or_else(|| wrong_unit(kind, symbol)),
        None => Err(Flaw::UnitMissing {
            accepted: kind.symbols(),
        }),
    }
}

/// The unit of a ratio written as a plain number.
static ONE: Unit = super::unit::metric("", &[], 1.0, 0.01, 0.001);

fn wrong_unit(kind: QuantityKind, spelled: &str) -> Flaw {
    let accepted = kind.symbols();
    let other = QuantityKind::ALL.iter().map(|(_, other)| *other);
    match other
        .into_iter()
        .find(|other| *other != kind && other.unit(spelled).is_some())
    {
        Some(found) => Flaw::OtherQuantity {
            found,
            quantity: kind,
            accepted,
        },
        None => Flaw::UnknownUnit {
            found: spelled.chars().take(24).collect(),
            accepted,
        },
    }
}

fn not_a_number(text: &[char], position: usize, kind: QuantityKind) -> Flaw {
    let found: String = text.iter().skip(position).take(24).collect();
    Flaw::NotANumber {
        at: position + 1,
        found,
        example: example(kind).into(),
    }
}

/// A text that would do, to show beside what did not.
pub fn example(kind: QuantityKind) -> &'static str {
    match kind {
        QuantityKind::Length => "5/8 in",
        QuantityKind::Altitude => "450 m",
        QuantityKind::Area => "21 m²",
        QuantityKind::Volume => "1.8 L",
        QuantityKind::Mass => "2 lb 6 oz",
        QuantityKind::MassPerLength => "30 g/m",
        QuantityKind::Density => "961 kg/m³",
        QuantityKind::MassFlow => "90 kg/h",
        QuantityKind::AbsolutePressure => "500 micron",
        QuantityKind::GaugePressure => "140 psi",
        QuantityKind::Vacuum => "29.9 inHg vac",
        QuantityKind::PressureDifference => "0.6 psi",
        QuantityKind::Stress => "6000 psi",
        QuantityKind::Torque => "38 N·m",
        QuantityKind::Force => "150 N",
        QuantityKind::Temperature => "-12 °F",
        QuantityKind::TemperatureDifference => "5 K",
        QuantityKind::Power => "7.1 kW",
        QuantityKind::VolumeFlow => "4 cfm",
        QuantityKind::Velocity => "6 m/s",
        QuantityKind::Energy => "10 kWh",
        QuantityKind::SpecificEnthalpy => "200 kJ/kg",
        QuantityKind::SpecificHeatCapacity => "4.19 kJ/(kg·K)",
        QuantityKind::DynamicViscosity => "0.16 mPa·s",
        QuantityKind::Angle => "45°",
        QuantityKind::ThermalConductivity => "0.036 W/(m·K)",
        QuantityKind::HeatTransferCoefficient => "9 W/(m²·K)",
        QuantityKind::HeatFlowPerLength => "8 W/m",
        QuantityKind::PressureRate => "0.5 psi/h",
        QuantityKind::LeakRate => "0.01 mbar·L/s",
        QuantityKind::YearlyLoss => "50 g/year",
        QuantityKind::Time => "30 min",
        QuantityKind::Ratio => "4 %",
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::{plain_figure, read_as_people_write};
    use crate::quantity::{QuantityKind, checked};
    use proptest::prelude::*;

    fn is_read_alike(kind: QuantityKind, text: &str, assume: Option<&str>) {
        let text = text.trim();
        if let Some(si) = plain_figure(kind, text, assume) {
            let soon = checked(kind, si);
            assert_eq!(
                soon,
                read_as_people_write(kind, text, assume),
                "{kind:?} {text:?} {assume:?}"
            );
        }
    }

    proptest! {
        #[test]
        fn a_plain_figure_is_what_it_is_otherwise(
            kind in prop::sample::select(QuantityKind::ALL.iter().map(|(_, kind)| *kind).collect::<Vec<_>>()),
            figure in "-?[0-9]{0,9}[.,]?[0-9]{0,8}",
            blank in " {0,2}",
            unit in 0usize..12,
        ) {
            let units = kind.units();
            let symbol = units.get(unit % units.len()).unwrap().symbol;
            is_read_alike(kind, &format!("{figure}{blank}{symbol}"), None);
            is_read_alike(kind, &format!("{figure}{blank}"), Some(symbol));
        }

        #[test]
        fn so_is_whatever_else_is_taken_for_one(
            kind in prop::sample::select(QuantityKind::ALL.iter().map(|(_, kind)| *kind).collect::<Vec<_>>()),
            text in "-{0,2}[0-9]{0,2}[.,/ e⅛-]{0,2}[0-9]{0,2}[.,/ e½-]{0,2} ?(in|m|bar|psi|°C|%|ft|lb)?( ?[0-9]{1,3} ?(in|oz|mm)?)?",
        ) {
            is_read_alike(kind, &text, None);
            is_read_alike(kind, &text, Some("in"));
        }
    }

    #[test]
    fn what_a_job_is_full_of_is_plain() {
        for (kind, text) in [
            (QuantityKind::GaugePressure, "46.15 bar"),
            (QuantityKind::AbsolutePressure, "200 micron"),
            (QuantityKind::Temperature, "-3.5 °C"),
            (QuantityKind::Length, "15.88mm"),
        ] {
            assert!(plain_figure(kind, text, None).is_some(), "{text}");
        }
    }
}
