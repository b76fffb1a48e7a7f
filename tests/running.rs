//! Laws of the running system, and what is never advised.

use coldwright::calc::running::{
    Deviation, IndoorAirflow, MeteringDevice, NextCheck, RunningAnswer, RunningInput, RunningMode,
    UsualCause, running, usual_causes,
};
use coldwright::calc::{Cause, Verdict};
use coldwright::quantity::{
    Entry, GaugePressure, Power, PressureDifference, Quantity, Ratio, Temperature,
    TemperatureDifference, Time, VolumeFlow,
};
use coldwright::tables::refrigerants::Refrigerant;
use proptest::prelude::*;

const SEEN: [Option<Deviation>; 4] = [
    None,
    Some(Deviation::Low),
    Some(Deviation::InBand),
    Some(Deviation::High),
];
const DEVICES: [Option<MeteringDevice>; 4] = [
    None,
    Some(MeteringDevice::ThermostaticValve),
    Some(MeteringDevice::ElectronicValve),
    Some(MeteringDevice::FixedOrifice),
];

/// Every pattern of the five figures.
fn patterns() -> impl Iterator<Item = [Option<Deviation>; 5]> {
    (0..4usize.pow(5)).map(|number| [1, 4, 16, 64, 256].map(|place| SEEN[number / place % 4]))
}

#[test]
fn adding_refrigerant_waits_for_airflow_in_every_pattern() {
    let mut advised = 0;
    for seen in patterns() {
        for device in DEVICES {
            for airflow in IndoorAirflow::ALL {
                let causes = usual_causes(seen, device, *airflow).causes;
                let adds = |check| check == NextCheck::FindLeakThenWeighIn;
                if causes.iter().any(|cause| adds(cause.next_check)) {
                    assert_eq!(*airflow, IndoorAirflow::RuledOut, "{seen:?}");
                    advised += 1;
                }
            }
        }
    }
    assert!(advised > 0, "the advice exists");
}

#[test]
fn causes_come_from_deviations_only() {
    for seen in patterns() {
        for device in DEVICES {
            let pattern = usual_causes(seen, device, IndoorAirflow::RuledOut);
            let out = |seen: &&Option<Deviation>| !matches!(seen, None | Some(Deviation::InBand));
            let deviations = seen.iter().filter(out).count();
            assert_eq!(usize::from(pattern.deviations), deviations);
            assert!(deviations > 0 || pattern.causes.is_empty());
            assert!(deviations > 0 || pattern.would_decide.is_empty());
            for cause in &pattern.causes {
                assert!(cause.explains >= 1 && usize::from(cause.explains) <= deviations);
            }
        }
    }
}

#[test]
fn every_cause_is_the_best_fit_of_some_pattern() {
    for wanted in UsualCause::ALL {
        let found = patterns().any(|seen| {
            DEVICES.iter().any(|device| {
                let causes = usual_causes(seen, *device, IndoorAirflow::RuledOut).causes;
                causes.iter().take(2).any(|cause| cause.cause == *wanted)
            })
        });
        assert!(found, "{wanted:?} is never found");
    }
}

#[test]
fn airflow_measured_as_too_little_comes_first() {
    for seen in patterns() {
        let causes = usual_causes(seen, None, IndoorAirflow::TooLittle).causes;
        assert_eq!(causes[0].cause, UsualCause::LowIndoorAirflow);
    }
}

/// A sound cooling run of R-410A.
fn cooling() -> RunningInput {
    RunningInput {
        refrigerant: Refrigerant::R410A.into(),
        metering_device: MeteringDevice::ThermostaticValve.into(),
        suction_gauge_pressure: GaugePressure::read("118 psi").unwrap().into(),
        suction_line_temperature: Temperature::fahrenheit(52.0).into(),
        liquid_gauge_pressure: GaugePressure::read("340 psi").unwrap().into(),
        liquid_line_temperature: Temperature::fahrenheit(95.0).into(),
        outdoor_dry_bulb: Temperature::fahrenheit(88.0).into(),
        ..RunningInput::default()
    }
}

fn field(input: &RunningInput) -> String {
    running(input).unwrap_err()[0].field.json_name()
}

#[test]
fn nothing_entered_says_what_to_enter_first() {
    assert_eq!(field(&RunningInput::default()), "refrigerant");
    let refrigerant = RunningInput {
        refrigerant: Refrigerant::R32.into(),
        ..RunningInput::default()
    };
    assert_eq!(field(&refrigerant), "suctionGaugePressure");
    let outdoor = RunningInput {
        outdoor_dry_bulb: Temperature::fahrenheit(88.0).into(),
        ..RunningInput::default()
    };
    assert_eq!(field(&outdoor), "refrigerant");
}

#[test]
fn the_verdict_on_the_whole_needs_superheat_and_subcooling() {
    let whole = |input: &RunningInput| running(input).unwrap().verdict;
    assert_eq!(whole(&cooling()), Some(Verdict::CannotTell));
    let plate = |kelvins: f64| RunningInput {
        plate_subcooling: Entry::Read(coldwright::quantity::Band::new(
            TemperatureDifference::kelvins(kelvins),
            TemperatureDifference::kelvins(kelvins),
        )),
        ..cooling()
    };
    assert_eq!(whole(&plate(5.5)), Some(Verdict::InBand));
    assert_eq!(whole(&plate(15.0)), Some(Verdict::OutOfBand));
    let unsettled = RunningInput {
        running_time: Time::seconds(899.0).into(),
        ..plate(5.5)
    };
    assert_eq!(whole(&unsettled), None);
    assert_eq!(running(&unsettled).unwrap().pattern, None);
}

#[test]
fn heating_has_no_causes_and_no_method_of_its_own() {
    let heating = RunningInput {
        mode: RunningMode::Heating.into(),
        ..cooling()
    };
    let answer = running(&heating).unwrap();
    assert_eq!(answer.pattern, None);
    assert!(answer.superheat.figure.is_some() && answer.superheat.judgement.is_none());
}

fn any_refrigerant() -> impl Strategy<Value = Refrigerant> {
    proptest::sample::select(Refrigerant::ALL)
}

/// Readings of all sizes: what is usual, the edges, and far beyond.
fn any_pressure() -> impl Strategy<Value = GaugePressure> {
    prop_oneof![
        20 => (3e5..3e6f64).prop_map(GaugePressure::pascals),
        2 => (-1e5..5e6f64).prop_map(GaugePressure::pascals),
        1 => prop_oneof![Just(-1.2e5), Just(-101_325.0), Just(0.0), Just(1e8), Just(7.4e6)]
            .prop_map(GaugePressure::pascals),
    ]
}

fn any_temperature() -> impl Strategy<Value = Temperature> {
    prop_oneof![
        60 => (230.0..350.0f64).prop_map(Temperature::kelvins),
        1 => prop_oneof![Just(0.0), Just(213.15), Just(273.15), Just(2000.0)].prop_map(Temperature::kelvins),
    ]
}

fn maybe<T: core::fmt::Debug + Clone + 'static>(
    strategy: impl Strategy<Value = T> + 'static,
) -> impl Strategy<Value = Entry<T>> {
    prop_oneof![1 => Just(Entry::Absent), 4 => strategy.prop_map(Entry::Read)]
}

prop_compose! {
    fn any_circuit()(
        refrigerant in any_refrigerant(),
        suction in maybe(any_pressure()),
        suction_line in maybe(any_temperature()),
        liquid in maybe(any_pressure()),
        liquid_line in maybe(any_temperature()),
        discharge in prop_oneof![Just(Entry::Absent), any_pressure().prop_map(Entry::Read)],
        device in maybe(proptest::sample::select(MeteringDevice::ALL)),
        mode in maybe(proptest::sample::select(RunningMode::ALL)),
        outdoor in maybe(any_temperature()),
        checked in maybe(any::<bool>()),
        gauge in maybe((0.0..4e5f64).prop_map(PressureDifference::pascals)),
    ) -> RunningInput {
        RunningInput {
            refrigerant: refrigerant.into(),
            suction_gauge_pressure: suction,
            suction_line_temperature: suction_line,
            liquid_gauge_pressure: liquid,
            liquid_line_temperature: liquid_line,
            discharge_gauge_pressure: discharge,
            metering_device: device,
            mode,
            outdoor_dry_bulb: outdoor,
            airflow_checked: checked,
            suction_gauge_uncertainty: gauge.clone(),
            liquid_gauge_uncertainty: gauge,
            ..RunningInput::default()
        }
    }
}

prop_compose! {
    fn any_input()(
        circuit in any_circuit(),
        return_dry in maybe(any_temperature()),
        return_wet in prop_oneof![3 => Just(Entry::Absent), 1 => any_temperature().prop_map(Entry::Read)],
        supply_dry in maybe(any_temperature()),
        supply_humid in maybe((-0.01..1.02f64).prop_map(Ratio::of_one)),
        airflow in maybe((0.0..4.0f64).prop_map(VolumeFlow::cubic_metres_per_second)),
        plate in maybe((0.0..1e5f64).prop_map(Power::watts)),
        time in maybe((0.0..4e3f64).prop_map(Time::seconds)),
        thermometer in maybe((0.0..10.2f64).prop_map(TemperatureDifference::kelvins)),
    ) -> RunningInput {
        RunningInput {
            return_dry_bulb: return_dry,
            return_wet_bulb: return_wet,
            supply_dry_bulb: supply_dry,
            supply_relative_humidity: supply_humid,
            airflow,
            plate_capacity: plate,
            running_time: time,
            thermometer_uncertainty: thermometer,
            ..circuit
        }
    }
}

/// Every number in a tree of JSON.
fn numbers(value: &serde_json::Value, found: &mut Vec<f64>) {
    match value {
        serde_json::Value::Number(number) => found.push(number.as_f64().unwrap()),
        serde_json::Value::Array(items) => items.iter().for_each(|item| numbers(item, found)),
        serde_json::Value::Object(members) => {
            members.values().for_each(|item| numbers(item, found))
        }
        _ => {}
    }
}

/// What an answer must hold whatever was entered.
fn checked(input: &RunningInput, answer: &RunningAnswer) -> Result<(), TestCaseError> {
    // JSON has no NaN: it would be null, and null only stands for what is absent.
    let mut found = Vec::new();
    numbers(&serde_json::to_value(answer).unwrap(), &mut found);
    prop_assert!(found.iter().all(|number| number.is_finite()));
    for check in [&answer.superheat, &answer.subcooling] {
        if let (Some(figure), Some(uncertainty)) = (check.figure, check.uncertainty) {
            prop_assert!(
                figure.si().is_finite() && uncertainty.si() > 0.0 && uncertainty.si().is_finite()
            );
        }
        prop_assert_eq!(check.figure.is_some(), check.uncertainty.is_some());
        prop_assert!(check.judgement.is_some() != check.open.is_some());
    }
    for step in &answer.working {
        prop_assert!(step.result.si.is_finite(), "{}", step.title);
    }
    let told = matches!(input.airflow_checked, Entry::Read(true));
    for cause in answer.pattern.iter().flat_map(|pattern| &pattern.causes) {
        prop_assert!(told || cause.next_check != NextCheck::FindLeakThenWeighIn);
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn any_input_is_answered_or_refused(input in any_input()) {
        match running(&input) {
            Ok(answer) => checked(&input, &answer)?,
            Err(problems) => {
                prop_assert!(!problems.is_empty());
                for problem in problems {
                    prop_assert!(matches!(problem.cause, Cause::Entry(_) | Cause::Use(_)));
                }
            }
        }
    }

    #[test]
    fn superheat_rises_with_the_line_and_falls_with_the_pressure(
        refrigerant in any_refrigerant(),
        kilopascals in 150.0..1000.0f64,
        celsius in -20.0..40.0f64,
        warmer in 0.1..20.0f64,
    ) {
        let at = |kilopascals: f64, celsius: f64| running(&RunningInput {
            refrigerant: refrigerant.into(),
            suction_gauge_pressure: GaugePressure::pascals(kilopascals * 1e3).into(),
            suction_line_temperature: Temperature::celsius(celsius).into(),
            ..RunningInput::default()
        });
        prop_assume!(at(kilopascals, celsius).is_ok() && at(kilopascals + 50.0, celsius).is_ok());
        let superheat = |answer: RunningAnswer| answer.superheat.figure.unwrap().in_kelvins();
        let first = superheat(at(kilopascals, celsius).unwrap());
        let second = superheat(at(kilopascals, celsius + warmer).unwrap());
        prop_assert!((second - first - warmer).abs() < 1e-9);
        prop_assert!(superheat(at(kilopascals + 50.0, celsius).unwrap()) < first);
    }

    #[test]
    fn subcooling_falls_with_the_line(
        refrigerant in any_refrigerant(),
        kilopascals in 900.0..2500.0f64,
        celsius in 0.0..60.0f64,
        warmer in 0.1..20.0f64,
    ) {
        let at = |celsius: f64| running(&RunningInput {
            refrigerant: refrigerant.into(),
            liquid_gauge_pressure: GaugePressure::pascals(kilopascals * 1e3).into(),
            liquid_line_temperature: Temperature::celsius(celsius).into(),
            ..RunningInput::default()
        });
        prop_assume!(at(celsius).is_ok());
        let subcooling = |celsius| at(celsius).unwrap().subcooling.figure.unwrap().in_kelvins();
        prop_assert!((subcooling(celsius) - subcooling(celsius + warmer) - warmer).abs() < 1e-9);
    }

    #[test]
    fn a_worse_gauge_is_less_sure(psi in 0.0..10.0f64, more in 0.1..10.0f64) {
        let uncertainty = |psi: f64| {
            let error = PressureDifference::pascals(psi * 6894.757);
            let input = RunningInput { suction_gauge_uncertainty: error.into(), ..cooling() };
            running(&input).unwrap().superheat.uncertainty.unwrap()
        };
        prop_assert!(uncertainty(psi + more) > uncertainty(psi));
    }

    #[test]
    fn sensible_and_latent_heat_make_the_total(
        warm in 20.0..32.0f64,
        cold in 8.0..18.0f64,
        humid in 0.3..0.7f64,
        flow in 0.05..2.0f64,
    ) {
        let answer = running(&RunningInput {
            return_dry_bulb: Temperature::celsius(warm).into(),
            return_relative_humidity: Ratio::of_one(humid).into(),
            supply_dry_bulb: Temperature::celsius(cold).into(),
            supply_relative_humidity: Ratio::of_one(0.9).into(),
            airflow: VolumeFlow::cubic_metres_per_second(flow).into(),
            ..RunningInput::default()
        }).unwrap();
        let capacity = answer.capacity.unwrap();
        let (total, latent) = (capacity.total.unwrap().figure, capacity.latent.unwrap().figure);
        let sum = capacity.sensible.figure + latent;
        prop_assert!((sum - total).in_watts().abs() < 1e-6 * total.in_watts().abs().max(1.0));
        prop_assert!(capacity.sensible.uncertainty.in_watts() > 0.0);
    }
}
