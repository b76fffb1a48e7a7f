//! What people write, and what the core makes of it.

use coldwright::quantity::{
    AbsolutePressure, Angle, Flaw, GaugePressure, Length, Mass, Notation, Power, Precision,
    Quantity, QuantityKind, Ratio, Temperature, TemperatureDifference, Time, Torque, Vacuum,
    VolumeFlow, nearest_sixty_fourth, read, show, show_band, steps,
};

/// Reads a text and compares with an SI number that was worked by hand from exact definitions.
#[track_caller]
fn reads<Q: Quantity>(text: &str, expected: f64) {
    let found = Q::read(text)
        .unwrap_or_else(|flaw| panic!("{text}: {flaw:?}"))
        .si();
    let tolerance = 1e-12 * expected.abs().max(1e-9);
    assert!(
        (found - expected).abs() <= tolerance,
        "{text}: {found} is not {expected}"
    );
}

#[track_caller]
fn refuses<Q: Quantity>(text: &str) -> Flaw {
    Q::read(text).expect_err(text)
}

#[test]
fn lengths_as_tube_is_sold() {
    for text in [
        "5/8",
        "5/8 in",
        "5/8\"",
        "0.625in",
        "5/8 inch",
        "10/16 ″",
        "⅝ in",
        " 5 / 8 ",
    ] {
        reads::<Length>(text, 0.015875);
    }
    for text in ["1-1/8 in", "1 1/8\"", "1⅛ in", "1 ⅛", "1.125 inches"] {
        reads::<Length>(text, 0.028575);
    }
    reads::<Length>("15.88mm", 0.01588);
    reads::<Length>("35 m", 35.0);
    reads::<Length>("1 234,5 mm", 1.2345);
    reads::<Length>("2 300 mm", 2.3);
}

#[test]
fn quantities_in_parts() {
    reads::<Length>("114 ft 6 in", 34.8996);
    reads::<Length>("5' 6\"", 1.6764);
    reads::<Length>("5' 6 1/2\"", 1.6891);
    reads::<Length>("1 m 20 cm", 1.2);
    reads::<Mass>("2 lb 6 oz", 38.0 * 0.028_349_523_125);
    reads::<Mass>("2lb6oz", 38.0 * 0.028_349_523_125);
    reads::<Time>("1 h 05 min", 3900.0);
    assert!(matches!(
        refuses::<Length>("6 in 114 ft"),
        Flaw::PartsOutOfOrder { .. }
    ));
}

#[test]
fn torques_in_every_spelling() {
    for text in [
        "38 Nm",
        "38 N·m",
        "38 N m",
        "38 N-m",
        "38 N.m",
        "38nm",
        "38 newton metres",
    ] {
        reads::<Torque>(text, 38.0);
    }
    for text in [
        "25 ft-lb",
        "25 ft·lbf",
        "25 lb-ft",
        "25 lbf·ft",
        "25 foot pounds",
    ] {
        reads::<Torque>(text, 25.0 * 1.355_817_948_331_400_4);
    }
    reads::<Torque>("300 lbf·in", 300.0 * 0.112_984_829_027_616_7);
}

#[test]
fn pressures_keep_their_reference() {
    reads::<GaugePressure>("140 psi", 140.0 * 6_894.757_293_168_361);
    reads::<GaugePressure>("140 psig", 140.0 * 6_894.757_293_168_361);
    reads::<GaugePressure>("9.7 barg", 9.7e5);
    reads::<GaugePressure>("9,7 bar (g)", 9.7e5);
    reads::<GaugePressure>("12,5 bar", 12.5e5);
    reads::<GaugePressure>("29.9 inHg vac", -29.9 * 3_386.388_640_341);
    reads::<Vacuum>("29.9 inHg vac", 29.9 * 3_386.388_640_341);
    let found = |text| match refuses::<GaugePressure>(text) {
        Flaw::OtherQuantity { found, .. } => found,
        other => panic!("{text}: {other:?}"),
    };
    assert_eq!(found("140 psia"), QuantityKind::AbsolutePressure);
    assert_eq!(found("500 micron"), QuantityKind::AbsolutePressure);
    assert_eq!(found("38 N·m"), QuantityKind::Torque);
}

#[test]
fn units_as_spanish_speakers_write_them() {
    reads::<Length>("5/8 pulg", 0.015_875);
    reads::<Length>("3/8 pulgadas", 0.009_525);
    reads::<Length>("12 pies 6 pulgadas", 3.81);
    reads::<Length>("12,5 metros", 12.5);
    for text in ["25 lb-pie", "25 lbf·pie", "25 libras-pie", "25 pie-libra"] {
        reads::<Torque>(text, 25.0 * 1.355_817_948_331_400_4);
    }
    reads::<Torque>("300 lb-pulg", 300.0 * 0.112_984_829_027_616_7);
    for text in ["500 micrones", "500 micras", "500 MICRONES", "500 micrón"] {
        reads::<AbsolutePressure>(text, 500.0 * 0.133_322_387_415);
    }
    reads::<AbsolutePressure>("3,5 bar absoluta", 3.5e5);
    reads::<GaugePressure>("9,7 bar man.", 9.7e5);
    reads::<GaugePressure>("29,9 pulgHg de vacío", -29.9 * 3_386.388_640_341);
    reads::<GaugePressure>("140 lb/pulg²", 140.0 * 6_894.757_293_168_361);
    reads::<Mass>("2 libras 6 onzas", 2.375 * 0.453_592_37);
    reads::<Time>("1 hora 30 minutos", 5400.0);
    reads::<VolumeFlow>("4 pcm", 4.0 * 0.028_316_846_592 / 60.0);
    reads::<Power>("3000 frigorías/h", 3000.0 * 4186.8 / 3600.0);
    reads::<Angle>("45 grados", 45.0 * std::f64::consts::PI / 180.0);
}

#[test]
fn temperatures_and_their_differences() {
    reads::<Temperature>("-12 °F", (459.67 - 12.0) / 1.8);
    reads::<Temperature>("−12 F", (459.67 - 12.0) / 1.8);
    reads::<Temperature>("20 degC", 293.15);
    reads::<TemperatureDifference>("18 °F", 10.0);
    assert!(matches!(
        refuses::<Temperature>("-300 °C"),
        Flaw::OutOfRange { .. }
    ));
}

#[test]
fn ratios_with_and_without_percent() {
    reads::<Ratio>("4 %", 0.04);
    reads::<Ratio>("0.04", 0.04);
}

#[test]
fn separators_of_both_conventions() {
    reads::<Length>("0,125 m", 0.125);
    reads::<Length>("1.234,5 mm", 1.2345);
    reads::<Length>("1,234.5 mm", 1.2345);
    reads::<Length>("1,234,567 mm", 1234.567);
    match refuses::<Length>("1,250 mm") {
        Flaw::AmbiguousNumber {
            decimal, thousands, ..
        } => {
            assert_eq!((decimal.as_str(), thousands.as_str()), ("1.250", "1250"));
        }
        other => panic!("{other:?}"),
    }
}

#[test]
fn bad_text_says_what_is_wrong_and_where() {
    assert_eq!(refuses::<Length>("1/0"), Flaw::DivisionByZero);
    assert!(matches!(
        refuses::<Length>("wide"),
        Flaw::NotANumber { at: 1, .. }
    ));
    assert!(matches!(
        refuses::<Length>("NaN mm"),
        Flaw::NotANumber { .. }
    ));
    assert!(matches!(
        refuses::<Length>("-5 mm"),
        Flaw::OutOfRange { .. }
    ));
    assert!(matches!(
        refuses::<Length>("1e30 mm"),
        Flaw::OutOfRange { .. }
    ));
    assert_eq!(refuses::<Length>("1e999 mm"), Flaw::NotFinite);
    assert!(matches!(
        refuses::<Length>("10^30 mm"),
        Flaw::UnknownUnit { .. }
    ));
    assert!(matches!(
        refuses::<Length>("15.88"),
        Flaw::UnitMissing { .. }
    ));
    assert!(matches!(
        refuses::<Length>("12 flurb"),
        Flaw::UnknownUnit { .. }
    ));
    assert!(matches!(
        refuses::<Length>(&"9".repeat(500)),
        Flaw::NotANumber { .. }
    ));
}

#[test]
fn a_bare_number_takes_the_assumed_unit() {
    let length = |text| read(QuantityKind::Length, text, Some("mm"));
    assert_eq!(length("40"), Ok(0.04));
    assert_eq!(
        length("5/8"),
        Ok(0.015875),
        "a fraction is inches, whatever is assumed"
    );
    assert_eq!(length("2 in"), Ok(0.0508), "a written unit wins");
}

#[test]
fn figures_are_rounded_for_the_instrument() {
    let torque = |si, unit| {
        show(
            QuantityKind::Torque,
            si,
            unit,
            Precision::Instrument,
            Notation::POINT,
        )
        .unwrap()
        .number
    };
    assert_eq!(torque(72.4, "N·m"), "72");
    assert_eq!(torque(72.5, "ft·lbf"), "53");
    let scale = show(
        QuantityKind::Mass,
        1.2374,
        "kg",
        Precision::Instrument,
        Notation::POINT,
    );
    assert_eq!(scale.unwrap().number, "1.235");
    let micron = show(
        QuantityKind::AbsolutePressure,
        1600.0,
        "micron",
        Precision::Instrument,
        Notation { decimal_mark: ',' },
    );
    assert_eq!(micron.unwrap().number, "12\u{202f}000");
    let none = show(
        QuantityKind::Torque,
        1.0,
        "psi",
        Precision::Instrument,
        Notation::POINT,
    );
    assert_eq!(none, None);
}

#[test]
fn bands_are_rounded_inwards() {
    let band = |low, high, unit| {
        let shown = show_band(QuantityKind::Torque, (low, high), unit, Notation::POINT).unwrap();
        (shown.low, shown.high)
    };
    assert_eq!(band(68.0, 77.0, "N·m"), ("68".into(), "77".into()));
    assert_eq!(band(68.0, 77.0, "ft·lbf"), ("51".into(), "56".into()));
    assert_eq!(band(14.0, 18.0, "ft·lbf"), ("11".into(), "13".into()));
    assert_eq!(
        band(14.1, 14.4, "N·m"),
        ("14.1".into(), "14.4".into()),
        "the table's step"
    );
}

#[test]
fn sixty_fourths() {
    let fraction = |millimetres| nearest_sixty_fourth(Length::millimetres(millimetres)).unwrap();
    assert_eq!(fraction(9.52).text, "3/8");
    assert_eq!(fraction(25.4).text, "1");
    assert_eq!(fraction(0.0).text, "0");
    assert_eq!(fraction(20.0).text, "25/32");
    let remainder = fraction(20.0).remainder.in_metres();
    assert!((remainder - (0.020 - 25.0 / 32.0 * 0.0254)).abs() < 1e-15);
}

#[test]
fn words_are_taken_with_or_without_their_hyphens() {
    use coldwright::quantity::Enter;
    use coldwright::tables::refrigerants::Refrigerant;
    for text in ["R-410A", "r410a", "R 410A", "r-410a"] {
        let refrigerant = Refrigerant::from_text(text, None).map(Refrigerant::word);
        assert_eq!(refrigerant, Ok("R-410A"));
    }
    let flaw = Refrigerant::from_text("R-999", None).unwrap_err();
    assert!(matches!(flaw, Flaw::NotAChoice { accepted, .. } if accepted.contains(&"R-32")));
    for words in [
        Refrigerant::WORDS,
        coldwright::tables::torque::TorqueFamily::WORDS,
    ] {
        for (place, word) in words.iter().enumerate() {
            assert_eq!(
                coldwright::quantity::place_of_word(words, word),
                Some(place),
                "{word}"
            );
        }
    }
}

#[test]
fn a_figure_some_steps_away_can_be_entered_with_a_decimal_comma() {
    let comma = Notation { decimal_mark: ',' };
    for (kind, text, step) in [
        (QuantityKind::Mass, "7,43 kg", "0,005 kg"),
        (QuantityKind::GaugePressure, "4,15 MPa", "0,005 MPa"),
        (QuantityKind::GaugePressure, "42,2 bar", "0,05 bar"),
        (QuantityKind::AbsolutePressure, "250 micron", "1 micron"),
    ] {
        for near in steps(kind, text, "", step, &[-1.0, 1.0], comma) {
            let text = near.text.unwrap();
            assert!(read(kind, &text, None).is_ok(), "{text}");
        }
    }
}
