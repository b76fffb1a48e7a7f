//! Laws that hold for every input.

use coldwright::calc::convert::{ConvertInput, convert};
use coldwright::calc::torque::{TorqueInput, torque};
use coldwright::calc::tube::{TubeInput, tube};
use coldwright::quantity::{
    Angle, Band, Length, Notation, Precision, QuantityKind, Temperature, Torque, Unit, normalised,
    read, show, show_band,
};
use coldwright::tables::tube::TUBE_SIZES;
use coldwright::terminal::{Messages, answer_line};
use proptest::prelude::*;

fn any_unit() -> impl Strategy<Value = (QuantityKind, &'static Unit)> {
    let all: Vec<_> = QuantityKind::ALL
        .iter()
        .flat_map(|(_, kind)| kind.units().iter().map(|unit| (*kind, unit)))
        .collect();
    proptest::sample::select(all)
}

/// A part of a kind's range, with small and large numbers alike.
fn within(kind: QuantityKind, part: f64) -> f64 {
    let (low, high) = kind.range();
    let size = 10f64.powf(part * 12.0 - 9.0);
    (high * size).clamp(low, high)
}

proptest! {
    #[test]
    fn a_shown_figure_reads_back((kind, unit) in any_unit(), part in 0.0..1.0f64, comma: bool) {
        let notation = Notation { decimal_mark: if comma { ',' } else { '.' } };
        let si = within(kind, part);
        let shown = show(kind, si, unit.symbol, Precision::Exact, notation).unwrap();
        let text = format!("{} {}", shown.number, shown.unit);
        match read(kind, &text, None) {
            // Offsets and reciprocal factors each cost a rounding of the larger term.
            Ok(back) => prop_assert!((back - si).abs() <= 1e-14 * si.abs().max(unit.zero), "{text}"),
            Err(flaw) => {
                let ambiguous = matches!(flaw, coldwright::quantity::Flaw::AmbiguousNumber { .. });
                prop_assert!(ambiguous && comma, "{text}: {flaw:?}");
            }
        }
    }

    #[test]
    fn showing_a_read_figure_changes_nothing((kind, unit) in any_unit(), part in 0.0..1.0f64) {
        for precision in [Precision::Instrument, Precision::Table, Precision::Significant] {
            let shown = show(kind, within(kind, part), unit.symbol, precision, Notation::POINT).unwrap();
            let text = format!("{} {}", shown.number, shown.unit);
            // Rounding may lift a figure just over the range's end.
            if let Ok(back) = read(kind, &text, None) {
                let again = show(kind, back, unit.symbol, precision, Notation::POINT).unwrap();
                prop_assert_eq!(again, shown);
            }
        }
    }

    #[test]
    fn conversions_round_trip((kind, unit) in any_unit(), number in -1e6..1e6f64) {
        let back = unit.from_si(unit.to_si(number));
        let rounding = 4e-16 * (number.abs() + unit.zero / unit.scale);
        prop_assert!((back - number).abs() <= rounding.max(1e-300), "{kind:?} {}", unit.symbol);
    }

    #[test]
    fn a_shown_band_lies_inside(low in 0.1..200.0f64, width in 0.0..100.0f64, place in 0..6usize) {
        let units = QuantityKind::Torque.units();
        let unit = &units[place];
        let shown = show_band(QuantityKind::Torque, (low, low + width), unit.symbol, Notation::POINT).unwrap();
        let si = |text: &str| read(QuantityKind::Torque, text, Some(unit.symbol)).unwrap();
        prop_assume!(width / unit.scale > 2.0 * unit.table_step);
        let slack = 1e-9 * unit.step * unit.scale;
        prop_assert!(si(&shown.low) >= low - slack && si(&shown.high) <= low + width + slack);
        prop_assert!(si(&shown.low) <= si(&shown.high));
    }

    #[test]
    fn no_text_panics(text in ".{0,60}", place in 0..QuantityKind::ALL.len()) {
        let (_, kind) = QuantityKind::ALL[place];
        if let Ok(si) = read(kind, &text, Some("mm")) {
            prop_assert!(si.is_finite());
        }
        let _ = convert(&ConvertInput { text: text.into(), ..ConvertInput::default() });
    }

    #[test]
    fn near_figures_do_not_panic(text in "[-−+ 0-9.,/e½]{0,12} ?(mm|in|ft|'|\"|psi|bar|vac|°F|lb|oz|N·m|%|h|min)?") {
        for (_, kind) in QuantityKind::ALL {
            if let Ok(si) = read(*kind, &text, None) {
                let (low, high) = kind.range();
                prop_assert!(si >= low - 1e-3 && si <= high + 1e-3);
            }
        }
    }

    #[test]
    fn a_line_always_gets_an_answer(line in prop_oneof![any_line(), any_request()]) {
        let reply = answer_line(line.as_bytes(), &Messages::english());
        let answered = reply.get("answer").is_some();
        let refused = reply.get("problems").and_then(|p| p.as_array()).is_some_and(|p| !p.is_empty());
        prop_assert!(answered != refused, "{line} -> {reply}");
        prop_assert!(!reply.to_string().contains("\"message\":\"problem-"), "{reply}");
    }

    #[test]
    fn the_aim_lies_in_the_band(
        place in 0..6usize,
        wrench in 0.1..1.0f64,
        adapter in 0.0..0.09f64,
        degrees in -180.0..180.0f64,
    ) {
        let tube = Length::inches([0.25, 0.3125, 0.375, 0.5, 0.625, 0.75][place]);
        let answer = torque(&TorqueInput {
            tube: tube.into(),
            wrench_length: Length::metres(wrench).into(),
            adapter_length: Length::metres(adapter).into(),
            adapter_angle: Angle::degrees(degrees).into(),
            ..TorqueInput::default()
        });
        prop_assume!(answer.is_ok());
        let answer = answer.unwrap();
        prop_assert!(answer.band.low <= answer.aim && answer.aim <= answer.band.high);
        for family in &answer.families {
            prop_assert!(family.band.overlap(answer.band) == Some(answer.band));
        }
        let setting = answer.setting.unwrap();
        prop_assert!(setting.band.low <= setting.aim && setting.aim <= setting.band.high);
        let at_nut = setting.aim.in_newton_metres() * setting.gain.in_one();
        prop_assert!((at_nut - answer.aim.in_newton_metres()).abs() < 1e-9);
    }

    #[test]
    fn hotter_or_thinner_tube_bears_less(place in 0..TUBE_SIZES.len(), cooler in 0.0..180.0f64, more in 0.0..20.0f64) {
        let size = &TUBE_SIZES[place];
        let rated = |wall: Length, celsius: f64| {
            let input = TubeInput {
                tube: size.outside_diameter().into(),
                wall: wall.into(),
                temperature: Temperature::celsius(celsius).into(),
                ..TubeInput::default()
            };
            tube(&input).unwrap().rating.unwrap().rated_pressure
        };
        let wall = size.wall();
        prop_assert!(rated(wall, cooler + more) <= rated(wall, cooler));
        prop_assert!(rated(wall * 0.9, cooler) < rated(wall, cooler));
    }

    #[test]
    fn bands_keep_their_order(one in 0.0..1e4f64, other in 0.0..1e4f64, third in 0.0..1e4f64) {
        let torque = Torque::newton_metres;
        let band = Band::new(torque(one), torque(other));
        prop_assert!(band.low <= band.middle() && band.middle() <= band.high);
        let overlap = band.overlap(Band::new(torque(third), torque(1e4)));
        prop_assert!(overlap.is_none_or(|o| o.low >= band.low && o.high <= band.high && o.low <= o.high));
    }
}

fn any_line() -> impl Strategy<Value = String> {
    "[^\n]{0,80}"
}

fn any_value() -> impl Strategy<Value = String> {
    prop_oneof![
        Just("null".to_string()),
        Just("{}".to_string()),
        Just("[1,[2]]".to_string()),
        Just("true".to_string()),
        Just("1e308".to_string()),
        Just("{\"text\":\"12\",\"assume\":\"mm\"}".to_string()),
        Just("{\"low\":{\"low\":1,\"high\":2},\"high\":3}".to_string()),
        any::<i32>().prop_map(|number| number.to_string()),
        any::<f64>()
            .prop_filter("JSON has no infinity", |f| f.is_finite())
            .prop_map(|f| format!("{f:e}")),
        "[a-z0-9/ .,·°-]{0,12}".prop_map(|text| format!("\"{text}\"")),
    ]
}

/// A sound request with some of its fields, or fields it lacks, turned into odd values.
fn any_request() -> impl Strategy<Value = String> {
    let sound: Vec<(String, serde_json::Value)> = include_str!("reference/boundary.jsonl")
        .lines()
        .map(|line| serde_json::from_str::<serde_json::Value>(line).unwrap())
        .map(|row| {
            (
                row["calculation"].as_str().unwrap().to_string(),
                row["input"].clone(),
            )
        })
        .collect();
    let catalogue = coldwright::terminal::catalogue();
    let odd = proptest::collection::vec((any::<proptest::sample::Index>(), any_value()), 0..4);
    (proptest::sample::select(sound), odd).prop_map(move |((name, mut input), odd)| {
        let fields = input_fields(&catalogue, &name);
        for (place, value) in odd {
            input[place.get(&fields)] = serde_json::from_str(&value).unwrap();
        }
        format!("{{\"calculation\":\"{name}\",\"input\":{input}}}")
    })
}

fn input_fields(catalogue: &serde_json::Value, name: &str) -> Vec<String> {
    let reference = catalogue
        .pointer(&format!(
            "/properties/calculations/properties/{name}/properties/input/$ref"
        ))
        .and_then(|reference| reference.as_str())
        .unwrap();
    let schema = catalogue
        .pointer(reference.trim_start_matches('#'))
        .unwrap();
    schema["properties"]
        .as_object()
        .unwrap()
        .keys()
        .cloned()
        .collect()
}

#[test]
fn spellings_are_normalised_and_mean_one_unit() {
    for (name, kind) in QuantityKind::ALL {
        let mut seen = Vec::new();
        for unit in kind.units() {
            for spelling in unit.spellings {
                assert_eq!(normalised(spelling), *spelling, "{name}: {}", unit.symbol);
                assert!(
                    !seen.contains(spelling),
                    "{name}: {spelling} means two units"
                );
                seen.push(spelling);
            }
            let symbol = kind.unit(unit.symbol).map(|(found, _)| found.symbol);
            assert_eq!(symbol, Some(unit.symbol), "{name}");
        }
    }
}
