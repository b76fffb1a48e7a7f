//! Laws of the charge calculation: more line takes more, nothing is lost between cylinder and circuit,
//! and whatever is entered gets figures or problems.

use coldwright::calc::charge::{ChargeAnswer, ChargeInput, ChargingState, charge};
use coldwright::quantity::{Entry, Length, Mass, MassPerLength, Temperature};
use coldwright::tables::refrigerants::Refrigerant;
use coldwright::terminal::{Messages, answer_line};
use proptest::prelude::*;
use serde_json::{Value, json};

const HAIR: f64 = 1e-9;

fn metres(number: f64) -> Entry<Length> {
    Length::metres(number).into()
}

fn kilograms(number: f64) -> Entry<Mass> {
    Mass::kilograms(number).into()
}

fn plate(charge: f64, precharged: f64, length: f64, adder: f64) -> ChargeInput {
    ChargeInput {
        plate_charge: kilograms(charge),
        precharged_length: metres(precharged),
        length: metres(length),
        plate_adder: MassPerLength::kilograms_per_metre(adder).into(),
        ..ChargeInput::default()
    }
}

fn answered(input: &ChargeInput) -> ChargeAnswer {
    charge(input).unwrap()
}

fn any_refrigerant() -> impl Strategy<Value = Refrigerant> {
    let liquid_when_hot = |refrigerant: &Refrigerant| *refrigerant != Refrigerant::R744;
    let all = Refrigerant::ALL.iter().copied().filter(liquid_when_hot);
    proptest::sample::select(all.collect::<Vec<_>>())
}

proptest! {
    #[test]
    fn more_line_takes_more(
        precharged in 0.0..30.0f64, length in 0.0..500.0f64, more in 0.1..400.0f64, adder in 0.001..0.5f64,
    ) {
        let to_add = |length| answered(&plate(2.0, precharged, length, adder)).charge.unwrap().to_add;
        let (less, more_of_it) = (to_add(length), to_add(length + more));
        prop_assert!(more_of_it >= less);
        if length > precharged {
            let expected = adder * more;
            prop_assert!((more_of_it - less).in_kilograms() - expected <= HAIR * expected.max(1.0));
        }
    }

    #[test]
    fn physics_takes_more_in_longer_wider_and_colder_lines(
        refrigerant in any_refrigerant(), bore in 2.0..20.0f64, celsius in -20.0..45.0f64, length in 1.0..100.0f64,
    ) {
        let contents = |bore: f64, celsius: f64, length: f64| {
            let input = ChargeInput {
                refrigerant: refrigerant.into(),
                liquid_bore: Length::millimetres(bore).into(),
                liquid_temperature: Temperature::celsius(celsius).into(),
                length: metres(length),
                ..ChargeInput::default()
            };
            answered(&input).line.unwrap().contents.unwrap()
        };
        let held = contents(bore, celsius, length);
        prop_assert!(held < contents(bore, celsius, length * 1.1));
        prop_assert!(held < contents(bore * 1.1, celsius, length));
        prop_assert!(held < contents(bore, celsius - 5.0, length));
        let twice = contents(bore * 2.0, celsius, length) / held;
        prop_assert!((twice - 4.0).abs() < HAIR);
    }

    #[test]
    fn what_went_in_and_what_remains_are_the_target(
        target in 0.0..8.0f64, start in 10.0..40.0f64, gone in 0.0..10.0f64,
    ) {
        let answer = answered(&ChargeInput {
            charge_to_add: kilograms(target),
            cylinder_start: kilograms(start),
            cylinder_now: kilograms(start - gone),
            ..ChargeInput::default()
        });
        let scale = answer.scale.unwrap();
        let (so_far, remaining) = (scale.charged_so_far.unwrap(), scale.remaining.unwrap());
        prop_assert!(((so_far + remaining).in_kilograms() - target).abs() < HAIR);
        let mark = scale.stop_mark.unwrap();
        prop_assert!((Mass::kilograms(start) - mark - Mass::kilograms(target)).in_kilograms().abs() < HAIR);
        // A negative remainder is always said.
        let is_too_much = scale.state == Some(ChargingState::TooMuch);
        prop_assert_eq!(is_too_much, remaining < Mass::kilograms(0.0) - scale.uncertainty);
    }

    #[test]
    fn the_mark_is_a_whole_step_and_never_moves_more(
        target in 0.0..8.0f64, start in 10.0..40.0f64, step in 0.001..0.5f64, out: bool,
    ) {
        let mut input = plate(2.0, 10.0, 5.0, 0.02);
        if out {
            input.charge_to_add = kilograms(target);
        } else {
            input.plate_charge = kilograms(20.0);
            input.plate_reduction = MassPerLength::kilograms_per_metre(target / 5.0).into();
        }
        input.cylinder_start = kilograms(start);
        input.scale_resolution = kilograms(step);
        let mark = answered(&input).scale.unwrap().stop_mark.unwrap().in_kilograms();
        let moved = (start - mark).abs();
        prop_assert!(moved <= target + step * 1e-5 && moved > target - step * 1.001);
        let steps = mark / step;
        prop_assert!((steps - steps.round()).abs() < 1e-6 || (mark - start).abs() < HAIR);
    }

    #[test]
    fn parts_of_the_charge_add_up(
        factory in 1.0..10.0f64, precharged in 0.0..30.0f64, length in 0.0..60.0f64, adder in 0.0..0.1f64,
        reduction in 0.0..0.02f64, empty: bool,
    ) {
        let mut input = plate(factory, precharged, length, adder);
        input.plate_reduction = MassPerLength::kilograms_per_metre(reduction).into();
        if empty {
            input.arrives = coldwright::calc::charge::Arrival::Empty.into();
        }
        let charge = answered(&input).charge.unwrap();
        let total = charge.total.unwrap().in_kilograms();
        let parts = charge.line + charge.accessories - charge.reduction;
        prop_assert!((total - factory - parts.in_kilograms()).abs() < HAIR);
        let before = if empty { 0.0 } else { factory };
        let moved = charge.to_add - charge.to_take_out;
        prop_assert!((total - before - moved.in_kilograms()).abs() < HAIR);
        let none = Mass::kilograms(0.0);
        prop_assert!(charge.to_add >= none && charge.to_take_out >= none && charge.total.unwrap() >= none);
        prop_assert!(charge.to_add <= none || charge.to_take_out <= none);
    }

    #[test]
    fn no_cylinder_is_ever_full_of_liquid_when_hot(
        refrigerant in any_refrigerant(), litres in 1.0..100.0f64, celsius in -40.0..60.0f64, tare in 1.0..50.0f64,
    ) {
        let answer = answered(&ChargeInput {
            refrigerant: refrigerant.into(),
            recovery_volume: coldwright::quantity::Volume::cubic_metres(litres / 1000.0).into(),
            recovery_tare: kilograms(tare),
            recovery_temperature: Temperature::celsius(celsius).into(),
            ..ChargeInput::default()
        });
        let fill = answer.recovery.unwrap();
        prop_assert!(fill.part_full_when_hot.in_one() < 1.0);
        let eighty = fill.liquid_density.in_kilograms_per_cubic_metre() * litres / 1000.0 * 0.8;
        prop_assert!(fill.largest_contents.in_kilograms() <= eighty * (1.0 + HAIR));
        let gross = fill.largest_gross - fill.largest_contents;
        prop_assert!((gross.in_kilograms() - tare).abs() < HAIR);
        for reading in &fill.readings {
            prop_assert_eq!(reading.beyond_limit, reading.contents > fill.largest_contents);
        }
    }

    #[test]
    fn whatever_is_entered_gets_figures_or_problems(fields in fields()) {
        let request = json!({ "calculation": "charge", "input": fields });
        let reply = answer_line(request.to_string().as_bytes(), &Messages::english());
        prop_assert!(reply.get("answer").is_some() != reply.get("problems").is_some());
        if let Some(problems) = reply.get("problems") {
            prop_assert!(!problems.as_array().unwrap().is_empty());
        }
        // JSON writes what is not finite as null, which no figure of the working may be.
        let working = reply.pointer("/answer/working").and_then(Value::as_array);
        for step in working.into_iter().flatten() {
            prop_assert!(step["result"]["si"].is_number(), "{step}");
        }
    }
}

const FIELDS: &[&str] = &[
    "plateCharge",
    "prechargedLength",
    "length",
    "plateAdder",
    "plateReduction",
    "chargeToAdd",
    "liquidBore",
    "liquidTemperature",
    "vapourBore",
    "vapourDewTemperature",
    "superheat",
    "cylinderStart",
    "cylinderNow",
    "cylinderTare",
    "scaleResolution",
    "scaleUncertainty",
    "recoveryWaterCapacity",
    "recoveryVolume",
    "recoveryTare",
    "recoveryGross",
    "recoveryTemperature",
    "hoseBore",
    "hoseLength",
    "hoseTemperature",
];

/// Numbers small, usual and absurd, in any fields.
fn fields() -> impl Strategy<Value = Value> {
    let number = prop_oneof![
        Just(json!(0)),
        Just(json!("NaN")),
        Just(json!(null)),
        (-3.0..300.0f64).prop_map(|number| json!(number)),
        (-12.0..300.0f64).prop_map(|power| json!(10f64.powf(power))),
    ];
    let word = prop_oneof![Just("R-32"), Just("R-744"), Just("R-410A"), Just("R-999")];
    let entry = (proptest::sample::select(FIELDS), number);
    (word, proptest::collection::vec(entry, 0..12)).prop_map(|(word, entries)| {
        let mut fields = serde_json::Map::new();
        fields.insert("refrigerant".into(), word.into());
        for (name, number) in entries {
            fields.insert(name.into(), number);
        }
        Value::Object(fields)
    })
}
