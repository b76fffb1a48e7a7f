//! Laws that hold for every hold.

use coldwright::calc::standing_test::{
    HoldReadingInput, HoldVerdict, StandingTestAnswer, StandingTestInput, standing_test,
};
use coldwright::quantity::{GaugePressure, PressureDifference, Temperature, Time, Volume};
use coldwright::tables::pressure_test::PressureTestRule;
use coldwright::tables::refrigerants::Refrigerant;
use proptest::prelude::*;

/// Hours, pascal, kelvin.
type Taken = (f64, f64, f64);

fn reading((hours, pascals, kelvins): Taken) -> HoldReadingInput {
    HoldReadingInput {
        time: Time::seconds(3600.0 * hours).into(),
        gauge_pressure: GaugePressure::pascals(pascals).into(),
        temperature: Temperature::kelvins(kelvins).into(),
        ..HoldReadingInput::default()
    }
}

fn input(taken: &[Taken]) -> StandingTestInput {
    StandingTestInput {
        readings: taken
            .iter()
            .copied()
            .map(reading)
            .collect::<Vec<_>>()
            .into(),
        gauge_resolution: PressureDifference::pascals(1e3).into(),
        ..StandingTestInput::default()
    }
}

fn answer(taken: &[Taken]) -> StandingTestAnswer {
    standing_test(&input(taken)).unwrap()
}

/// Loss and its uncertainty, Pa/s.
fn rates(answer: &StandingTestAnswer) -> (f64, f64) {
    let hold = answer.hold.as_ref().unwrap();
    (
        hold.pressure_loss_rate.in_pascals_per_second(),
        hold.pressure_loss_rate_uncertainty.in_pascals_per_second(),
    )
}

/// Evenly spaced readings at one temperature that lose so many pascal an hour.
fn losing(count: usize, hours: f64, pressure: f64, an_hour: f64) -> Vec<Taken> {
    let step = hours / (count - 1) as f64;
    let at = |place: usize| step * place as f64;
    (0..count)
        .map(|place| (at(place), pressure - an_hour * at(place), 293.15))
        .collect()
}

/// Readings in order of time that any hand may have typed.
fn any_readings() -> impl Strategy<Value = Vec<Taken>> {
    let one = (0.0..5.0f64, 0.0..6e6f64, 250.0..330.0f64);
    let awkward = prop_oneof![
        3 => one.clone(),
        1 => (Just(0.0), prop_oneof![Just(0.0), Just(2e6), Just(6e6)], prop_oneof![Just(250.0), Just(330.0)]),
    ];
    (
        1e4..6e6f64,
        260.0..320.0f64,
        prop::collection::vec(awkward, 0..70),
    )
        .prop_map(|(first, kelvins, rest)| {
            let mut time = 0.0;
            let mut readings = vec![(time, first, kelvins)];
            for (passed, pressure, kelvins) in rest {
                time += passed;
                readings.push((time, pressure, kelvins));
            }
            readings
        })
}

proptest! {
    #[test]
    fn every_figure_is_finite(taken in any_readings()) {
        // Only warming far beyond 60 bar is refused.
        let Ok(answer) = standing_test(&input(&taken)) else { return Ok(()); };
        if let Some(hold) = &answer.hold {
            let (loss, uncertainty) = rates(&answer);
            let figures = [
                loss, uncertainty, hold.upper_limit.in_pascals_per_second(),
                hold.least_detectable.in_pascals_per_second(), hold.difference.in_pascals(),
                hold.difference_uncertainty.in_pascals(), hold.hold_to_see.in_seconds(),
                hold.longer.in_seconds(),
            ];
            prop_assert!(figures.iter().all(|figure| figure.is_finite()), "{figures:?}");
            prop_assert!(uncertainty > 0.0);
        }
        let finite = |point: &coldwright::calc::standing_test::HoldPoint| {
            point.expected_gauge_pressure.in_pascals().is_finite() && point.uncertainty.in_pascals().is_finite()
        };
        prop_assert!(answer.points.iter().all(finite));
        let mut places: Vec<_> = answer.left_out.iter().map(|out| out.place).collect();
        places.dedup();
        prop_assert_eq!(places.len(), answer.left_out.len(), "each place once");
        prop_assert!(places.windows(2).all(|pair| pair[0] < pair[1]));
        prop_assert!(places.last().is_none_or(|place| *place < taken.len()));
    }

    #[test]
    fn tight_means_that_the_leak_to_see_would_have_shown(taken in any_readings()) {
        let Ok(answer) = standing_test(&input(&taken)) else { return Ok(()); };
        let Some(hold) = &answer.hold else { return Ok(()); };
        if answer.verdict == HoldVerdict::Tight {
            prop_assert!(hold.upper_limit <= hold.leak_to_see);
        }
    }

    #[test]
    fn more_leak_is_a_larger_rate(count in 2..40usize, hours in 1.0..48.0f64, pressure in 1e6..5e6f64, an_hour in 0.0..0.001f64) {
        let an_hour = an_hour * pressure;
        let (less, _) = rates(&answer(&losing(count, hours, pressure, an_hour)));
        let (more, _) = rates(&answer(&losing(count, hours, pressure, 1.1 * an_hour + 1.0)));
        prop_assert!(more > less, "{more} after {less}");
        // The compressibility factor moves with the loss, less than a hundredth of it.
        prop_assert!((less * 3600.0 - an_hour).abs() <= 0.01 * an_hour + 1e-6, "{less} for {an_hour} an hour");
    }

    #[test]
    fn a_longer_hold_sees_less_leak(hours in 1.0..48.0f64, pressure in 1e6..5e6f64) {
        let (_, short) = rates(&answer(&losing(2, hours, pressure, 0.0)));
        let (_, long) = rates(&answer(&losing(2, 2.0 * hours, pressure, 0.0)));
        prop_assert!((short / long - 2.0).abs() < 1e-9);
    }

    #[test]
    fn when_the_clock_was_started_does_not_matter(taken in any_readings(), later in 0.0..1000.0f64) {
        let shifted: Vec<Taken> = taken.iter().map(|(hours, p, t)| (hours + later, *p, *t)).collect();
        let (one, other) = (standing_test(&input(&taken)), standing_test(&input(&shifted)));
        if let (Ok(one), Ok(other)) = (one, other) {
            prop_assert_eq!(one.hold.is_some(), other.hold.is_some());
            if one.hold.is_some() && one.left_out == other.left_out {
                let ((a, u), (b, _)) = (rates(&one), rates(&other));
                prop_assert!((a - b).abs() <= 1e-3 * u + 1e-9 * a.abs(), "{a} {b} {u}");
            }
        }
    }

    #[test]
    fn what_the_gauge_is_off_by_throughout_hardly_counts(offset in -5e4..5e4f64, an_hour in 0.0..1e3f64) {
        let (right, _) = rates(&answer(&losing(12, 24.0, 3e6, an_hour)));
        let (off, _) = rates(&answer(&losing(12, 24.0, 3e6 + offset, an_hour)));
        prop_assert!((right - off).abs() <= 1e-3 * right.abs() + 1e-9);
    }

    #[test]
    fn twice_the_volume_is_twice_the_leak(litres in 0.1..100.0f64, an_hour in 10.0..1e3f64) {
        let leak = |litres: f64| {
            let mut input = input(&losing(5, 24.0, 3e6, an_hour));
            input.volume = Volume::cubic_metres(litres / 1000.0).into();
            input.refrigerant = Refrigerant::R410A.into();
            standing_test(&input).unwrap().hold.unwrap().leak.unwrap()
        };
        let (one, two) = (leak(litres), leak(2.0 * litres));
        prop_assert!((two.nitrogen / one.nitrogen - 2.0).abs() < 1e-9);
        prop_assert!((two.refrigerant.unwrap() / one.refrigerant.unwrap() - 2.0).abs() < 1e-9);
    }

    #[test]
    fn no_stage_is_above_the_lowest_rated_part(
        design in 5e4..1.5e7f64, rating in 5e4..1.5e7f64,
        rule in prop::sample::select(PressureTestRule::ALL),
    ) {
        let pressure = GaugePressure::pascals(design);
        let mut input = StandingTestInput {
            test_rule: rule.into(),
            lowest_rating: GaugePressure::pascals(rating).into(),
            ..StandingTestInput::default()
        };
        if rule == PressureTestRule::Plate {
            input.plate_test_pressure = pressure.into();
        } else {
            input.design_pressure = pressure.into();
        }
        let guidance = standing_test(&input).unwrap().guidance.unwrap();
        let stages: Vec<f64> = guidance.stages.iter().map(|s| s.gauge_pressure.in_pascals()).collect();
        prop_assert!(stages.windows(2).all(|pair| pair[0] < pair[1]), "{stages:?}");
        prop_assert!(stages.iter().all(|stage| *stage <= rating));
        prop_assert_eq!(*stages.last().unwrap(), guidance.test_pressure.in_pascals());
    }
}
