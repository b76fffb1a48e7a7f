//! At the edges: at, just below, just above; and what is said about it.

use coldwright::physics::moist_air::{self, Known};
use coldwright::physics::saturation::{self, Line};
use coldwright::physics::{Argument, Beyond, nitrogen, vapour, water};
use coldwright::quantity::{
    AbsolutePressure, Ratio, STANDARD_ATMOSPHERE, SpecificEnthalpy, Temperature,
    TemperatureDifference,
};
use coldwright::tables::refrigerants::Refrigerant;

#[test]
fn every_refrigerant_answers_up_to_both_ends_and_no_further() {
    for refrigerant in Refrigerant::ALL {
        for line in Line::ALL {
            let (coldest, hottest) = saturation::temperature_range(*refrigerant);
            let by_temperature = |t| saturation::pressure(*refrigerant, *line, t);
            let little = TemperatureDifference::kelvins(1e-9);
            assert!(by_temperature(coldest).is_ok() && by_temperature(hottest).is_ok());
            assert_eq!(
                by_temperature(coldest - little),
                Err(Beyond::TooLow {
                    argument: Argument::Temperature,
                    limit: coldest.in_kelvins(),
                })
            );
            let critical = saturation::critical_point(*refrigerant);
            assert_eq!(
                by_temperature(hottest + little),
                Err(Beyond::NearCritical {
                    argument: Argument::Temperature,
                    limit: hottest.in_kelvins(),
                    critical: critical.temperature.in_kelvins(),
                })
            );
            let (lowest, highest) = saturation::pressure_range(*refrigerant, *line);
            let by_pressure =
                |p: f64| saturation::temperature(*refrigerant, *line, AbsolutePressure::pascals(p));
            assert!(by_pressure(lowest.in_pascals()).is_ok());
            assert!(by_pressure(highest.in_pascals()).is_ok());
            assert!(matches!(
                by_pressure(lowest.in_pascals() * 0.999_999),
                Err(Beyond::TooLow {
                    argument: Argument::Pressure,
                    ..
                })
            ));
            assert!(matches!(
                by_pressure(highest.in_pascals() * 1.000_001),
                Err(Beyond::NearCritical {
                    argument: Argument::Pressure,
                    ..
                })
            ));
            assert_eq!(
                by_pressure(critical.pressure.in_pascals()),
                Err(Beyond::AboveCritical {
                    argument: Argument::Pressure,
                    critical: critical.pressure.in_pascals(),
                })
            );
        }
    }
}

/// The promise reaches from -50 °C to the lower of 75 °C and 3 K below critical.
#[test]
fn every_refrigerant_covers_what_is_promised() {
    for refrigerant in Refrigerant::ALL {
        let (coldest, hottest) = saturation::temperature_range(*refrigerant);
        let critical = saturation::critical_point(*refrigerant)
            .temperature
            .in_kelvins();
        assert!(coldest.in_kelvins() <= 223.15, "{refrigerant:?}");
        assert!(
            hottest.in_kelvins() >= (critical - 3.0 - 1e-9).min(348.15),
            "{refrigerant:?}"
        );
    }
}

#[test]
fn vapour_colder_than_its_dew_point_is_wet() {
    let pressure = AbsolutePressure::pascals(1e6);
    let dew = saturation::temperature(Refrigerant::R407C, Line::Dew, pressure).unwrap();
    let at = |kelvins| {
        let temperature = dew + TemperatureDifference::kelvins(kelvins);
        vapour::at(Refrigerant::R407C, pressure, temperature)
    };
    assert_eq!(
        at(-0.01),
        Err(Beyond::Wet {
            dew_temperature: dew.in_kelvins()
        })
    );
    // The two directions of the dew line differ by less than a thousandth of a kelvin.
    assert_eq!(
        at(-0.000_5).unwrap().superheat,
        TemperatureDifference::kelvins(0.0)
    );
    let saturated = saturation::density(Refrigerant::R407C, saturation::Phase::Vapour, dew);
    let ratio = at(0.0).unwrap().density / saturated.unwrap();
    assert!((ratio - 1.0).abs() < 1e-12);
    assert!(at(39.999).is_ok());
    assert_eq!(
        at(40.001).unwrap_err(),
        Beyond::TooHigh {
            argument: Argument::Superheat,
            limit: 40.0
        }
    );
}

#[test]
fn nitrogen_refuses_a_reading_beyond_its_data() {
    let pressure = AbsolutePressure::pascals(7.4e6);
    let (cold, hot) = (Temperature::celsius(0.0), Temperature::celsius(60.0));
    assert_eq!(
        nitrogen::at_constant_density(pressure, cold, hot),
        Err(Beyond::TooHigh {
            argument: Argument::Pressure,
            limit: 7.5e6
        })
    );
    assert!(nitrogen::at_constant_density(pressure, hot, cold).is_ok());
}

#[test]
fn ice_and_liquid_meet_at_the_triple_point() {
    let pressure = |kelvins| water::saturation_pressure(Temperature::kelvins(kelvins)).unwrap();
    for kelvins in [273.16 - 1e-9, 273.16, 273.16 + 1e-9] {
        assert!((pressure(kelvins).in_pascals() / 611.657 - 1.0).abs() < 1e-6);
    }
    assert!(matches!(
        water::saturation_temperature(AbsolutePressure::pascals(2.3e7)),
        Err(Beyond::AboveCritical { .. })
    ));
}

#[test]
fn facts_about_air_that_do_not_go_together_are_named() {
    let celsius = Temperature::celsius;
    let state = |first, second| moist_air::state(first, second, STANDARD_ATMOSPHERE);
    for (first, second) in [
        (Known::DryBulb(celsius(20.0)), Known::WetBulb(celsius(20.5))),
        (
            Known::DryBulb(celsius(20.0)),
            Known::DewPoint(celsius(21.0)),
        ),
        (
            Known::DryBulb(celsius(20.0)),
            Known::HumidityRatio(Ratio::of_one(0.05)),
        ),
        (Known::DryBulb(celsius(50.0)), Known::WetBulb(celsius(5.0))),
    ] {
        assert!(matches!(
            state(first, second),
            Err(Beyond::Contradiction { .. })
        ));
        assert_eq!(state(first, second), state(second, first));
    }
    let enthalpy = Known::Enthalpy(SpecificEnthalpy::joules_per_kilogram(50e3));
    for (first, second) in [
        (Known::DryBulb(celsius(20.0)), Known::DryBulb(celsius(20.0))),
        (
            Known::DewPoint(celsius(10.0)),
            Known::HumidityRatio(Ratio::of_one(0.0076)),
        ),
        (Known::WetBulb(celsius(15.0)), enthalpy),
    ] {
        assert!(matches!(
            state(first, second),
            Err(Beyond::Dependent { .. })
        ));
    }
    let dry = state(
        Known::DryBulb(celsius(20.0)),
        Known::RelativeHumidity(Ratio::of_one(0.0)),
    );
    assert_eq!(
        dry,
        Err(Beyond::TooLow {
            argument: Argument::HumidityRatio,
            limit: 1e-6
        })
    );
    let humid = Known::RelativeHumidity(Ratio::of_one(1.01));
    assert_eq!(
        state(Known::DryBulb(celsius(20.0)), humid),
        Err(Beyond::TooHigh {
            argument: Argument::RelativeHumidity,
            limit: 1.0
        })
    );
}

#[test]
fn saturated_air_is_as_warm_wet_as_dry() {
    let saturated = moist_air::state(
        Known::DryBulb(Temperature::celsius(25.0)),
        Known::RelativeHumidity(Ratio::of_one(1.0)),
        STANDARD_ATMOSPHERE,
    )
    .unwrap();
    assert!((saturated.dry_bulb - saturated.wet_bulb).in_kelvins().abs() < 1e-9);
    assert!(
        (saturated.dry_bulb - saturated.dew_point)
            .in_kelvins()
            .abs()
            < 1e-9
    );
    // ASHRAE Fundamentals (2017), chapter 1, table 2: 20.17 g/kg at 25 °C.
    assert!((saturated.humidity_ratio.in_one() / 0.020_17 - 1.0).abs() < 5e-3);
}
