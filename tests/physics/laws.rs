//! What must hold for any input.

use coldwright::physics::moist_air::{self, Known};
use coldwright::physics::pipe_flow::{self, Bore, Fluid};
use coldwright::physics::saturation::{self, Line, Phase};
use coldwright::physics::{Beyond, nitrogen, vacuum_flow, vapour, water};
use coldwright::quantity::{
    AbsolutePressure, Density, DynamicViscosity, Length, MassFlow, Quantity, Ratio,
    SpecificEnthalpy, Temperature, TemperatureDifference, VolumeFlow,
};
use coldwright::tables::refrigerants::Refrigerant;
use proptest::prelude::*;

/// The two directions of a line are expansions of their own.
const ROUND_TRIP_KELVINS: f64 = 1e-3;

fn refrigerant() -> impl Strategy<Value = Refrigerant> {
    proptest::sample::select(Refrigerant::ALL)
}

fn line() -> impl Strategy<Value = Line> {
    proptest::sample::select(Line::ALL)
}

/// A temperature of the range of a refrigerant, at `part` from its cold end.
fn valid_temperature(refrigerant: Refrigerant, part: f64) -> Temperature {
    let (low, high) = saturation::temperature_range(refrigerant);
    let kelvins = low.in_kelvins() + part * (high - low).in_kelvins();
    Temperature::kelvins(kelvins.min(high.in_kelvins()))
}

fn is_whole<Q: Quantity>(result: Result<Q, Beyond>) -> bool {
    result.is_ok_and(|quantity| quantity.si().is_finite())
}

/// An answer is a finite number, or there is none.
fn is_sound<Q: Quantity>(result: Result<Q, Beyond>) -> bool {
    result.is_err() || is_whole(result)
}

fn is_above_critical<Q>(result: Result<Q, Beyond>) -> bool {
    matches!(result, Err(Beyond::AboveCritical { .. }))
}

fn is_near_critical<Q>(result: Result<Q, Beyond>) -> bool {
    matches!(result, Err(Beyond::NearCritical { .. }))
}

/// Any number at all, and often one in the range of refrigerants.
fn anything() -> impl Strategy<Value = f64> {
    prop_oneof![
        proptest::num::f64::ANY,
        -100.0..700.0,
        0.0..1e7,
        proptest::sample::select(vec![
            0.0,
            -0.0,
            f64::NAN,
            f64::INFINITY,
            f64::NEG_INFINITY,
            273.15
        ]),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn temperature_of_pressure_of_temperature(
        refrigerant in refrigerant(), line in line(), part in 0.0..=1.0,
    ) {
        let temperature = valid_temperature(refrigerant, part);
        let pressure = saturation::pressure(refrigerant, line, temperature).unwrap();
        let (low, high) = saturation::pressure_range(refrigerant, line);
        // The very ends differ by the fit.
        let inside = pressure.in_pascals().clamp(low.in_pascals(), high.in_pascals());
        prop_assert!((inside / pressure.in_pascals() - 1.0).abs() < 1e-5);
        let back = saturation::temperature(refrigerant, line, AbsolutePressure::pascals(inside)).unwrap();
        prop_assert!((back - temperature).in_kelvins().abs() < ROUND_TRIP_KELVINS);
    }

    #[test]
    fn bubble_pressure_is_not_below_dew_pressure(refrigerant in refrigerant(), part in 0.0..=1.0) {
        let temperature = valid_temperature(refrigerant, part);
        let bubble = saturation::pressure(refrigerant, Line::Bubble, temperature).unwrap();
        let dew = saturation::pressure(refrigerant, Line::Dew, temperature).unwrap();
        prop_assert!(bubble >= dew);
        if let Ok(glide) = saturation::glide(refrigerant, dew) {
            prop_assert!(glide.in_kelvins() >= 0.0);
            let pure = refrigerant.composition().figure.len() == 1;
            prop_assert!(!pure || glide.in_kelvins() == 0.0);
        }
    }

    #[test]
    fn warmer_is_thinner_liquid_denser_vapour_higher_pressure(
        refrigerant in refrigerant(), part in 0.0..0.999, step in 1e-4..1.0_f64,
    ) {
        let cold = valid_temperature(refrigerant, part);
        let warm = valid_temperature(refrigerant, part + step * (1.0 - part));
        let density = |phase, at| saturation::density(refrigerant, phase, at).unwrap();
        prop_assert!(density(Phase::Liquid, warm) < density(Phase::Liquid, cold));
        prop_assert!(density(Phase::Vapour, warm) > density(Phase::Vapour, cold));
        prop_assert!(density(Phase::Vapour, warm) < density(Phase::Liquid, warm));
        for line in Line::ALL {
            let pressure = |at| saturation::pressure(refrigerant, *line, at).unwrap();
            prop_assert!(pressure(warm) > pressure(cold));
        }
        let liquid = |at| saturation::enthalpy(refrigerant, Phase::Liquid, at).unwrap();
        prop_assert!(liquid(warm) > liquid(cold));
    }

    #[test]
    fn superheat_thins_vapour_and_adds_heat(
        refrigerant in refrigerant(), part in 0.0..=1.0, superheat in 0.0..39.0, more in 0.01..1.0,
    ) {
        let dew = valid_temperature(refrigerant, part);
        let at = |kelvins| vapour::superheated(refrigerant, dew, TemperatureDifference::kelvins(kelvins)).unwrap();
        let (less, more) = (at(superheat), at(superheat + more));
        prop_assert!(more.density < less.density);
        prop_assert!(more.enthalpy > less.enthalpy);
        prop_assert!(less.density <= saturation::density(refrigerant, Phase::Vapour, dew).unwrap());
        prop_assert!(less.enthalpy >= saturation::enthalpy(refrigerant, Phase::Vapour, dew).unwrap());
    }

    #[test]
    fn everything_answers_inside_its_range(refrigerant in refrigerant(), part in 0.0..=1.0) {
        let temperature = valid_temperature(refrigerant, part);
        for phase in Phase::ALL {
            prop_assert!(is_whole(saturation::density(refrigerant, *phase, temperature)));
            prop_assert!(is_whole(saturation::enthalpy(refrigerant, *phase, temperature)));
            let capacity = saturation::heat_capacity(refrigerant, *phase, temperature).unwrap();
            prop_assert!(capacity.in_joules_per_kilogram_kelvin() > 0.0);
            let viscosity = saturation::viscosity(refrigerant, *phase, temperature).unwrap();
            prop_assert!(viscosity.in_pascal_seconds() > 0.0);
        }
    }

    #[test]
    fn no_refrigerant_answers_beyond_its_critical_point(
        refrigerant in refrigerant(), line in line(), above in 0.0..1e6,
    ) {
        let critical = saturation::critical_point(refrigerant);
        let hot = critical.temperature + TemperatureDifference::kelvins(above);
        let refused = saturation::pressure(refrigerant, line, hot);
        prop_assert!(is_above_critical(refused));
        let (_, highest) = saturation::temperature_range(refrigerant);
        let room = (critical.temperature - highest).in_kelvins();
        let near = highest + TemperatureDifference::kelvins(room * 0.5);
        let refused = saturation::pressure(refrigerant, line, near);
        prop_assert!(is_near_critical(refused));
        let pressure = AbsolutePressure::pascals(critical.pressure.in_pascals() + above);
        let refused = saturation::temperature(refrigerant, line, pressure);
        prop_assert!(is_above_critical(refused));
    }

    #[test]
    fn refrigerants_never_answer_nonsense(
        refrigerant in refrigerant(), line in line(), first in anything(), second in anything(),
    ) {
        let temperature = Temperature::kelvins(first);
        let pressure = AbsolutePressure::pascals(first);
        prop_assert!(is_sound(saturation::pressure(refrigerant, line, temperature)));
        prop_assert!(is_sound(saturation::temperature(refrigerant, line, pressure)));
        prop_assert!(is_sound(saturation::glide(refrigerant, pressure)));
        prop_assert!(is_sound(saturation::latent_heat(refrigerant, pressure)));
        for phase in Phase::ALL {
            prop_assert!(is_sound(saturation::density(refrigerant, *phase, temperature)));
            prop_assert!(is_sound(saturation::enthalpy(refrigerant, *phase, temperature)));
            prop_assert!(is_sound(saturation::heat_capacity(refrigerant, *phase, temperature)));
            prop_assert!(is_sound(saturation::viscosity(refrigerant, *phase, temperature)));
        }
        let superheat = TemperatureDifference::kelvins(second);
        for vapour in [
            vapour::superheated(refrigerant, temperature, superheat),
            vapour::at(refrigerant, pressure, Temperature::kelvins(second)),
        ] {
            prop_assert!(is_sound(vapour.map(|vapour| vapour.density)));
            prop_assert!(is_sound(vapour.map(|vapour| vapour.enthalpy)));
        }
    }

    #[test]
    fn nothing_else_answers_nonsense(
        numbers in proptest::array::uniform5(anything()), kinds in (0..6_usize, 0..6_usize),
    ) {
        let [a, b, c, d, e] = numbers;
        let pressure = AbsolutePressure::pascals(a);
        let (from, to) = (Temperature::kelvins(b), Temperature::kelvins(c));
        prop_assert!(is_sound(nitrogen::at_constant_density(pressure, from, to)));
        prop_assert!(is_sound(nitrogen::density(pressure, from)));
        prop_assert!(is_sound(water::saturation_pressure(from)));
        prop_assert!(is_sound(water::saturation_temperature(pressure)));
        let air = moist_air::state(known(kinds.0, b), known(kinds.1, c), pressure);
        prop_assert!(is_sound(air.map(|air| air.wet_bulb)) && is_sound(air.map(|air| air.dew_point)));
        prop_assert!(is_sound(air.map(|air| air.enthalpy)) && is_sound(air.map(|air| air.density)));
        if let Ok(friction) = pipe_flow::friction(b, c) {
            prop_assert!(friction.factor.is_finite() && friction.factor > 0.0);
        }
        let flow = pipe_flow::flow(
            MassFlow::kilograms_per_second(a),
            Bore { diameter: Length::metres(b), roughness: Length::metres(c) },
            Length::metres(d),
            Fluid {
                density: Density::kilograms_per_cubic_metre(e),
                viscosity: DynamicViscosity::pascal_seconds(a),
            },
        );
        prop_assert!(is_sound(flow.map(|flow| flow.pressure_drop)));
        prop_assert!(is_sound(vacuum_flow::conductance(Length::metres(b), Length::metres(c), pressure)));
        let speed = vacuum_flow::effective_speed(
            VolumeFlow::cubic_metres_per_second(d.abs()),
            VolumeFlow::cubic_metres_per_second(e.abs()),
        );
        prop_assert!(!(d.is_finite() && e.is_finite()) || speed.in_cubic_metres_per_second().is_finite());
    }

    #[test]
    fn air_found_from_two_facts_has_them(
        pressure in 54e3..107e3, celsius in -20.0..60.0, relative in 0.02..1.0,
    ) {
        let pressure = AbsolutePressure::pascals(pressure);
        let dry_bulb = Known::DryBulb(Temperature::celsius(celsius));
        let air = moist_air::state(dry_bulb, Known::RelativeHumidity(Ratio::of_one(relative)), pressure).unwrap();
        prop_assert!(air.dew_point <= air.wet_bulb + TemperatureDifference::kelvins(1e-9));
        prop_assert!(air.wet_bulb <= air.dry_bulb);
        let again = moist_air::state(dry_bulb, Known::DewPoint(air.dew_point), pressure).unwrap();
        prop_assert!((again.relative_humidity.in_one() / relative - 1.0).abs() < 1e-9);
    }

    #[test]
    fn nitrogen_that_returns_reads_as_before(
        pressure in 1e5..6e6, from in 250.0..330.0, to in 250.0..330.0,
    ) {
        let filled = AbsolutePressure::pascals(pressure);
        let (from, to) = (Temperature::kelvins(from), Temperature::kelvins(to));
        if let Ok(read) = nitrogen::at_constant_density(filled, from, to) {
            let back = nitrogen::at_constant_density(read, to, from).unwrap();
            prop_assert!((back.in_pascals() / pressure - 1.0).abs() < 1e-12);
            prop_assert_eq!(read > filled, to > from);
        }
    }

    #[test]
    fn water_boils_at_the_pressure_of_its_temperature(kelvins in 190.0..647.0) {
        let pressure = water::saturation_pressure(Temperature::kelvins(kelvins)).unwrap();
        let back = water::saturation_temperature(pressure).unwrap();
        prop_assert!((back.in_kelvins() - kelvins).abs() < 1e-5);
    }
}

fn known(kind: usize, number: f64) -> Known {
    match kind {
        0 => Known::DryBulb(Temperature::kelvins(number)),
        1 => Known::WetBulb(Temperature::kelvins(number)),
        2 => Known::DewPoint(Temperature::kelvins(number)),
        3 => Known::RelativeHumidity(Ratio::of_one(number)),
        4 => Known::HumidityRatio(Ratio::of_one(number)),
        _ => Known::Enthalpy(SpecificEnthalpy::joules_per_kilogram(number)),
    }
}
