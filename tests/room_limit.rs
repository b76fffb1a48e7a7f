//! Laws of the room limit, and what it must survive.

use coldwright::calc::room_limit::{
    ChargeStanding, Governor, Mounting, OccupiedRoomInput, RoomLimitAnswer, RoomLimitInput,
    room_limit,
};
use coldwright::calc::{Entries, Verdict};
use coldwright::quantity::{Area, Density, Length, Mass};
use coldwright::tables::refrigerants::{Refrigerant, SafetyClass};
use coldwright::terminal::{Messages, answer_line};
use proptest::prelude::*;
use serde_json::{Value, json};

fn flammable() -> impl Strategy<Value = Refrigerant> {
    let burns = |refrigerant: &Refrigerant| {
        let class = refrigerant.safety_class().figure;
        matches!(class, SafetyClass::A2L | SafetyClass::A3)
    };
    let all: Vec<_> = Refrigerant::ALL.iter().copied().filter(burns).collect();
    proptest::sample::select(all)
}

fn room(area: f64, release_height: f64) -> OccupiedRoomInput {
    OccupiedRoomInput {
        area: Area::square_metres(area).into(),
        release_height: Length::metres(release_height).into(),
        ..OccupiedRoomInput::default()
    }
}

fn ask(
    refrigerant: Refrigerant,
    charge: Option<f64>,
    rooms: Vec<OccupiedRoomInput>,
) -> RoomLimitAnswer {
    let mut input = RoomLimitInput {
        refrigerant: refrigerant.into(),
        rooms: Entries::from(rooms),
        ..RoomLimitInput::default()
    };
    if let Some(charge) = charge {
        input.charge = Mass::kilograms(charge).into();
    }
    room_limit(&input).unwrap()
}

fn largest(answer: &RoomLimitAnswer) -> f64 {
    answer.largest_charge.unwrap().in_kilograms()
}

proptest! {
    #[test]
    fn the_smallest_room_allows_just_the_charge(
        refrigerant in flammable(),
        part in 0.001..0.999f64,
        height in 0.6..2.2f64,
    ) {
        let any = ask(refrigerant, None, vec![room(20.0, height)]);
        let caps = any.caps.unwrap();
        let (low, high) = (caps.no_room_limit.in_kilograms(), caps.cap.in_kilograms());
        let charge = low + part * (high - low);
        let answer = ask(refrigerant, Some(charge), vec![room(20.0, height)]);
        let smallest = answer.rooms[0].smallest_area.unwrap().in_square_metres();
        prop_assume!((0.5..1e4).contains(&smallest));
        let there = ask(refrigerant, Some(charge), vec![room(smallest, height)]);
        prop_assert!((largest(&there) / charge - 1.0).abs() < 1e-12);
        prop_assert_eq!(there.rooms[0].governor, Governor::RoomFormula);
    }

    #[test]
    fn more_room_never_allows_less(
        refrigerant in flammable(),
        area in 0.5..5000.0f64,
        more in 1.0..2.0f64,
        height in 0.6..1.1f64,
    ) {
        let here = ask(refrigerant, None, vec![room(area, height)]);
        let wider = ask(refrigerant, None, vec![room(area * more, height)]);
        let higher = ask(refrigerant, None, vec![room(area, height * more)]);
        prop_assert!(largest(&wider) >= largest(&here) && largest(&higher) >= largest(&here));
        let caps = here.caps.unwrap();
        prop_assert!(here.largest_charge.unwrap() >= caps.no_room_limit);
        prop_assert!(here.largest_charge.unwrap() <= caps.cap);
    }

    #[test]
    fn the_room_that_allows_least_governs(
        refrigerant in flammable(),
        areas in proptest::collection::vec(0.5..500.0f64, 1..8),
        charge in 0.01..20.0f64,
    ) {
        let rooms = areas.iter().map(|area| room(*area, 1.8)).collect();
        let answer = ask(refrigerant, Some(charge), rooms);
        let governing = &answer.rooms[answer.governing_room.unwrap()];
        for other in &answer.rooms {
            prop_assert!(governing.largest_charge <= other.largest_charge);
        }
        let judgement = answer.charge.unwrap();
        prop_assert_eq!(Some(judgement), governing.charge);
        let margin = judgement.margin.in_kilograms();
        let expected = if margin >= 0.01 { Verdict::InBand } else if margin < -0.01 { Verdict::OutOfBand } else { Verdict::CannotTell };
        prop_assert_eq!(judgement.verdict, expected);
    }

    #[test]
    fn a_larger_charge_needs_a_larger_room(refrigerant in flammable(), charge in 0.05..12.0f64, more in 1.001..1.5f64) {
        let [small, large] = [charge, charge * more].map(|charge| ask(refrigerant, Some(charge), Vec::new()));
        prop_assert!(small.rooms.is_empty() && small.largest_charge.is_none());
        for (small, large) in small.smallest_rooms.iter().zip(&large.smallest_rooms) {
            prop_assert!(small.area < large.area);
        }
        // Nothing is asked of the room up to m₁, and none will do above the cap.
        let is_limited = small.charge_standing == Some(ChargeStanding::RoomLimited);
        prop_assert_eq!(small.smallest_rooms.len(), if is_limited { Mounting::ALL.len() } else { 0 });
    }

    #[test]
    fn a_concentration_fills_the_volume(area in 0.5..1000.0f64, height in 1.0..30.0f64, charge in 0.01..900.0f64) {
        let room = OccupiedRoomInput {
            area: Area::square_metres(area).into(),
            height: Length::metres(height).into(),
            ..OccupiedRoomInput::default()
        };
        let answer = ask(Refrigerant::R410A, Some(charge), vec![room]);
        let filled = largest(&answer) / (area * height);
        prop_assert!((filled - 0.42).abs() < 1e-12);
        let smallest = answer.rooms[0].smallest_area.unwrap().in_square_metres();
        prop_assert!((smallest * height * 0.42 / charge - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_higher_flammability_limit_allows_more(limit in 0.01..0.9f64, area in 0.5..5000.0f64) {
        let [less, more] = [limit, limit * 1.1].map(|limit| {
            let input = RoomLimitInput {
                safety_class: SafetyClass::A3.into(),
                lower_flammability_limit: Density::kilograms_per_cubic_metre(limit).into(),
                rooms: vec![room(area, 1.0)].into(),
                ..RoomLimitInput::default()
            };
            largest(&room_limit(&input).unwrap())
        });
        prop_assert!(less < more);
    }

    #[test]
    fn nothing_that_arrives_makes_a_number_that_is_none(
        refrigerant in proptest::sample::select(Refrigerant::WORDS),
        rule in proptest::sample::select(vec!["room-formula", "concentration-limit", "", "other"]),
        numbers in proptest::array::uniform8(wild()),
        mounting in proptest::sample::select(vec!["floor", "ceiling", "", "roof"]),
    ) {
        let [charge, off, limit, concentration, area, height, release, second] = numbers;
        let input = json!({
            "refrigerant": refrigerant,
            "rule": rule,
            "charge": charge,
            "chargeUncertainty": off,
            "lowerFlammabilityLimit": limit,
            "concentrationLimit": concentration,
            "rooms": [
                { "area": area, "height": height, "releaseHeight": release, "mounting": mounting },
                { "area": second, "mounting": mounting },
                {},
            ],
        });
        let request = json!({ "calculation": "room-limit", "input": input });
        let reply = answer_line(request.to_string().as_bytes(), &Messages::english());
        // The room without a floor area is a problem whatever the others are.
        let problems = reply["problems"].as_array().unwrap();
        let missing = problems.iter().any(|problem| problem["field"] == "rooms[2].area");
        prop_assert!(missing || problems[0]["field"] == "refrigerant", "{reply}");
    }
}

/// Numbers and texts of every size, and none at all.
fn wild() -> impl Strategy<Value = Value> {
    prop_oneof![
        any::<f64>().prop_map(|number| json!(number)),
        (-300.0..300.0f64).prop_map(|size| json!(10f64.powf(size))),
        (0.01..50.0f64).prop_map(|number| json!(number)),
        Just(json!(0)),
        Just(json!("")),
        Just(json!("1e999 m²")),
        Just(Value::Null),
    ]
}
