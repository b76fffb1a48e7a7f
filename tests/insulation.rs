//! Laws of insulation against condensation, and what it must survive.

use coldwright::calc::Verdict;
use coldwright::calc::insulation::{InsulationAnswer, InsulationInput, THICKEST, insulation};
use coldwright::physics::tube_heat::{Film, Surroundings, Tube};
use coldwright::quantity::{
    HeatTransferCoefficient, Length, Ratio, STANDARD_ATMOSPHERE, Temperature,
    TemperatureDifference, ThermalConductivity, Velocity,
};
use coldwright::terminal::{Messages, answer_line};
use proptest::prelude::*;
use serde_json::{Value, json};

/// A line that needs insulation: diameter in mm, line and air in °C, humidity of 1, conductivity.
#[derive(Clone, Debug)]
struct Line {
    diameter: f64,
    line: f64,
    air: f64,
    humidity: f64,
    conductivity: f64,
}

fn lines() -> impl Strategy<Value = Line> {
    (
        5.0..60.0f64,
        -40.0..5.0f64,
        20.0..40.0f64,
        0.5..0.85f64,
        0.03..0.05f64,
    )
        .prop_map(|(diameter, line, air, humidity, conductivity)| Line {
            diameter,
            line,
            air,
            humidity,
            conductivity,
        })
}

impl Line {
    fn input(&self) -> InsulationInput {
        InsulationInput {
            tube: Length::millimetres(self.diameter).into(),
            line_temperature: Temperature::celsius(self.line).into(),
            dry_bulb: Temperature::celsius(self.air).into(),
            relative_humidity: Ratio::of_one(self.humidity).into(),
            conductivity: ThermalConductivity::watts_per_metre_kelvin(self.conductivity).into(),
            ..InsulationInput::default()
        }
    }

    fn answer(&self) -> InsulationAnswer {
        insulation(&self.input()).unwrap()
    }
}

fn kelvins(one: Temperature, other: Temperature) -> f64 {
    (one - other).in_kelvins()
}

proptest! {
    #[test]
    fn moister_air_and_a_colder_line_need_more(line in lines()) {
        let here = line.answer().thickness;
        let moister = Line { humidity: line.humidity + 0.02, ..line.clone() };
        let colder = Line { line: line.line - 2.0, ..line.clone() };
        let worse = Line { conductivity: line.conductivity * 1.05, ..line.clone() };
        for other in [moister, colder, worse] {
            prop_assert!(other.answer().thickness > here, "{other:?}");
        }
    }

    #[test]
    fn a_brighter_outside_needs_more_and_moving_air_less(line in lines()) {
        let here = line.answer().thickness;
        let mut bright = line.input();
        bright.emissivity = Ratio::of_one(0.5).into();
        prop_assert!(insulation(&bright).unwrap().thickness > here);
        let mut windy = line.input();
        windy.air_speed = Velocity::metres_per_second(4.0).into();
        prop_assert!(insulation(&windy).unwrap().thickness < here);
        let mut cautious = line.input();
        cautious.dew_point_margin = TemperatureDifference::kelvins(0.5).into();
        prop_assert!(insulation(&cautious).unwrap().thickness > here);
    }

    #[test]
    fn the_least_thickness_brings_the_outside_to_the_dew_point(line in lines()) {
        let answer = line.answer();
        prop_assert!(answer.is_needed);
        prop_assert!(kelvins(answer.least.surface_temperature, answer.dew_point).abs() < 1e-9);
        prop_assert_eq!(answer.bare.against_dew_point.verdict, Verdict::OutOfBand);
        let common = answer.common_thickness.unwrap_or(THICKEST);
        prop_assert!(common >= answer.thickness);
    }

    #[test]
    fn heat_that_arrives_passes_through(line in lines(), thickness in 1.0..100.0f64) {
        let mut input = line.input();
        input.thickness = Length::millimetres(thickness).into();
        let entered = insulation(&input).unwrap().entered.unwrap();
        let outside = entered.outside_diameter.in_metres();
        let surface = kelvins(entered.surface_temperature, Temperature::celsius(line.line));
        let passes = core::f64::consts::TAU * line.conductivity * surface
            / (outside / (outside - 2e-3 * thickness)).ln();
        prop_assert!((entered.heat_gain.in_watts_per_metre() / passes - 1.0).abs() < 1e-7);
    }

    #[test]
    fn thicker_is_warmer_outside(line in lines()) {
        let common = line.answer().common;
        for pair in common.windows(2) {
            prop_assert!(pair[0].surface_temperature < pair[1].surface_temperature);
            prop_assert!(kelvins(pair[1].surface_temperature, Temperature::celsius(line.air)) < 0.0);
        }
    }

    #[test]
    fn a_thinner_tube_than_critical_gains_more_with_insulation(
        coefficient in 2.0..15.0f64,
        conductivity in 0.02..0.1f64,
        part in 0.2..0.9f64,
    ) {
        // k/h is the radius of the most heat: the textbook's critical radius.
        let tube = Tube {
            diameter: Length::metres(2.0 * part * conductivity / coefficient),
            temperature: Temperature::celsius(5.0),
            conductivity: ThermalConductivity::watts_per_metre_kelvin(conductivity),
            surroundings: Surroundings {
                air: Temperature::celsius(25.0),
                pressure: STANDARD_ATMOSPHERE,
                film: Film::Given(HeatTransferCoefficient::watts_per_square_metre_kelvin(coefficient)),
            },
        };
        let critical = Length::metres(conductivity / coefficient) - tube.diameter / 2.0;
        let gain = |thickness: Length| {
            let surface = tube.surface_temperature(thickness);
            tube.heat_gain(tube.outside(thickness), surface).in_watts_per_metre()
        };
        prop_assert!(gain(critical) > gain(Length::metres(0.0)));
        prop_assert!(gain(critical) > gain(critical * 0.8) && gain(critical) > gain(critical * 1.2));
    }

    #[test]
    fn a_line_no_colder_than_the_dew_point_needs_none(air in 0.0..40.0f64, humidity in 0.05..0.95f64, above in 0.0..20.0f64) {
        let line = Line { diameter: 16.0, line: 0.0, air, humidity, conductivity: 0.04 };
        let mut input = line.input();
        input.line_temperature = Temperature::celsius(-100.0).into();
        let dew_point = insulation(&input).map_or(Temperature::celsius(air), |answer| answer.dew_point);
        input.line_temperature = (dew_point + TemperatureDifference::kelvins(above)).into();
        let answer = insulation(&input).unwrap();
        prop_assert!(!answer.is_needed && answer.common_thickness.is_none());
        prop_assert_eq!(answer.thickness, Length::metres(0.0));
    }

    #[test]
    fn air_that_no_thickness_will_do_for_is_told_the_most_that_it_may_hold(line in lines(), humidity in 0.9..1.0f64) {
        let moist = Line { humidity, ..line };
        let Err(problems) = insulation(&moist.input()) else { return Ok(()) };
        let problem = serde_json::to_value(&problems[0]).unwrap();
        prop_assert_eq!(&problem["code"], "too-high");
        let limit = problem["limit"].as_f64().unwrap();
        prop_assert!(limit < humidity);
        let bearable = Line { humidity: limit - 1e-6, ..moist.clone() };
        let thickness = bearable.answer().thickness;
        prop_assert!(thickness <= THICKEST && thickness > THICKEST * 0.9);
        let too_moist = Line { humidity: limit + 1e-6, ..moist };
        prop_assert!(insulation(&too_moist.input()).is_err());
    }

    #[test]
    fn nothing_that_arrives_makes_a_number_that_is_none(
        sound in proptest::bool::ANY,
        fields in proptest::collection::vec((proptest::sample::select(FIELDS), wild()), 0..8),
    ) {
        let mut input = if sound {
            json!({ "tube": "5/8", "lineTemperature": "5 °C", "dryBulb": "30 °C", "relativeHumidity": 0.7 })
        } else {
            json!({})
        };
        for (field, value) in fields {
            input[field] = value;
        }
        let request = json!({ "calculation": "insulation", "input": input });
        let reply = answer_line(request.to_string().as_bytes(), &Messages::english());
        if let Some(answer) = reply.get("answer") {
            // What is not a number would be written as null.
            for at in ["/thickness", "/least/surfaceTemperature", "/bare/heatGain", "/common/5/againstDewPoint/uncertainty"] {
                prop_assert!(answer.pointer(at).unwrap().is_number(), "{at}: {request}");
            }
        } else {
            prop_assert!(!reply["problems"].as_array().unwrap().is_empty());
        }
    }
}

const FIELDS: &[&str] = &[
    "tube",
    "lineTemperature",
    "dryBulb",
    "relativeHumidity",
    "wetBulb",
    "dewPoint",
    "altitude",
    "barometer",
    "conductivity",
    "emissivity",
    "airSpeed",
    "surfaceCoefficient",
    "dewPointMargin",
    "thickness",
    "thermometerUncertainty",
    "humidityUncertainty",
];

/// Numbers and texts of every size, and none at all.
fn wild() -> impl Strategy<Value = Value> {
    prop_oneof![
        any::<f64>().prop_map(|number| json!(number)),
        (-300.0..300.0f64).prop_map(|size| json!(10f64.powf(size))),
        (0.0..1.0f64).prop_map(|number| json!(number)),
        (200.0..400.0f64).prop_map(|number| json!(number)),
        Just(json!(0)),
        Just(json!("")),
        Just(json!("100 %")),
        Just(Value::Null),
    ]
}
