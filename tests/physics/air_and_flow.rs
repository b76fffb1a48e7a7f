//! Water, moist air, friction and vacuum flow against published equations in reference libraries.

use coldwright::physics::moist_air::{self, Known, MoistAir};
use coldwright::physics::pipe_flow::{self, Fitting, Regime};
use coldwright::physics::{vacuum_flow, water};
use coldwright::quantity::{
    AbsolutePressure, Length, Ratio, SpecificEnthalpy, Temperature, VolumeFlow,
};
use serde::Deserialize;

use crate::rows;

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct WaterRow {
    surface: String,
    temperature_K: f64,
    pressure_Pa: f64,
}

/// By iapws 1.5.5; accepted 0.02 K.
#[test]
fn water_boils_and_ice_sublimes_where_iapws_says() {
    let (mut worst, mut worst_pressure): (f64, f64) = (0.0, 0.0);
    for row in rows::read::<WaterRow>("water.csv", 120) {
        let pressure = AbsolutePressure::pascals(row.pressure_Pa);
        let temperature = water::saturation_temperature(pressure)
            .unwrap()
            .in_kelvins();
        worst = worst.max((temperature - row.temperature_K).abs());
        let found = water::saturation_pressure(Temperature::kelvins(row.temperature_K)).unwrap();
        worst_pressure = worst_pressure.max((found.in_pascals() / row.pressure_Pa - 1.0).abs());
        assert_eq!(water::surface(pressure).word(), row.surface);
    }
    println!("water: worst {worst:.1e} K, {worst_pressure:.1e} of the pressure");
    // Both are the same equations: only rounding of the rows remains.
    assert!(worst < 1e-6 && worst_pressure < 1e-8);
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct MoistAirRow {
    pressure_Pa: f64,
    dry_bulb_C: f64,
    relative_humidity: f64,
    humidity_ratio: f64,
    enthalpy_J_kg: f64,
    dew_point_C: f64,
    wet_bulb_C: f64,
    density_kg_m3: f64,
}

/// Largest deviations from the library, in its own terms.
#[derive(Debug, Default)]
struct Deviation {
    humidity_ratio: f64,
    enthalpy: f64,
    relative_humidity: f64,
    kelvins: f64,
    density: f64,
}

impl Deviation {
    fn note(&mut self, air: &MoistAir, row: &MoistAirRow) {
        let celsius = |temperature: Temperature| temperature.in_kelvins() - 273.15;
        let relative = |found: f64, expected: f64| (found / expected - 1.0).abs();
        self.humidity_ratio = self
            .humidity_ratio
            .max(relative(air.humidity_ratio.in_one(), row.humidity_ratio));
        // Enthalpy passes through zero: against the span of 10 kJ/kg there.
        let enthalpy = air.enthalpy.in_joules_per_kilogram() - row.enthalpy_J_kg;
        self.enthalpy = self
            .enthalpy
            .max(enthalpy.abs() / row.enthalpy_J_kg.abs().max(1e4));
        self.relative_humidity = self.relative_humidity.max(relative(
            air.relative_humidity.in_one(),
            row.relative_humidity,
        ));
        for (found, expected) in [
            (air.dry_bulb, row.dry_bulb_C),
            (air.wet_bulb, row.wet_bulb_C),
            (air.dew_point, row.dew_point_C),
        ] {
            self.kelvins = self.kelvins.max((celsius(found) - expected).abs());
        }
        self.density = self.density.max(relative(
            air.density.in_kilograms_per_cubic_metre(),
            row.density_kg_m3,
        ));
    }

    fn is_within(&self, part: f64, kelvins: f64) -> bool {
        self.humidity_ratio < part
            && self.enthalpy < part
            && self.relative_humidity < part
            && self.density < part
            && self.kelvins < kelvins
    }
}

/// By PsychroLib 2.5.0; accepted 0.2 %. From dry bulb and humidity only rounding remains, and the
/// library's own tolerance of 0.001 K on wet bulb and dew point.
#[test]
fn moist_air_keeps_to_psychrolib() {
    let mut worst = Deviation::default();
    for row in rows::read::<MoistAirRow>("moist_air.csv", 120) {
        let air = moist_air::state(
            Known::DryBulb(Temperature::celsius(row.dry_bulb_C)),
            Known::RelativeHumidity(Ratio::of_one(row.relative_humidity)),
            AbsolutePressure::pascals(row.pressure_Pa),
        );
        worst.note(&air.unwrap(), &row);
    }
    println!("moist air: worst {worst:?}");
    assert!(worst.is_within(2e-4, 2e-3));
}

/// Every pair of facts that fixes a state gives the library's state.
#[test]
fn any_two_facts_give_the_same_air() {
    let mut worst = Deviation::default();
    for row in rows::read::<MoistAirRow>("moist_air.csv", 120) {
        let pressure = AbsolutePressure::pascals(row.pressure_Pa);
        let dry_bulb = Known::DryBulb(Temperature::celsius(row.dry_bulb_C));
        let relative_humidity = Known::RelativeHumidity(Ratio::of_one(row.relative_humidity));
        // Wet bulb and dew point as the library's tolerance leaves them would spoil dry air.
        let exact = moist_air::state(dry_bulb, relative_humidity, pressure).unwrap();
        let wet_bulb = Known::WetBulb(exact.wet_bulb);
        let dew_point = Known::DewPoint(exact.dew_point);
        let humidity_ratio = Known::HumidityRatio(Ratio::of_one(row.humidity_ratio));
        let enthalpy = Known::Enthalpy(SpecificEnthalpy::joules_per_kilogram(row.enthalpy_J_kg));
        for (first, second) in [
            (dry_bulb, wet_bulb),
            (dew_point, dry_bulb),
            (dry_bulb, humidity_ratio),
            (enthalpy, dry_bulb),
            (humidity_ratio, relative_humidity),
            (dew_point, relative_humidity),
            (humidity_ratio, wet_bulb),
            (wet_bulb, dew_point),
            (enthalpy, humidity_ratio),
            (dew_point, enthalpy),
            (relative_humidity, wet_bulb),
            (enthalpy, relative_humidity),
        ] {
            let air = moist_air::state(first, second, pressure)
                .unwrap_or_else(|refused| panic!("{first:?} {second:?}: {refused:?}"));
            worst.note(&air, &row);
        }
    }
    println!("moist air by any pair: worst {worst:?}");
    assert!(worst.is_within(2e-3, 1e-2));
}

#[derive(Deserialize)]
struct FrictionRow {
    reynolds: f64,
    relative_roughness: f64,
    factor: f64,
}

/// By fluids 1.3.1, exact solution; accepted 0.5 %.
#[test]
fn friction_keeps_to_colebrook() {
    let mut worst: f64 = 0.0;
    for row in rows::read::<FrictionRow>("friction.csv", 120) {
        let found = pipe_flow::friction(row.reynolds, row.relative_roughness).unwrap();
        worst = worst.max((found.factor / row.factor - 1.0).abs());
        assert_eq!(found.regime, Regime::Turbulent);
    }
    println!("friction: worst {worst:.1e}");
    assert!(worst < 1e-9);
}

/// At the edges of the regimes: at, just below, just above.
#[test]
fn friction_has_no_step() {
    for edge in [2300.0, 4000.0] {
        for roughness in [0.0, 1e-4, 0.05] {
            let factor = |reynolds: f64| pipe_flow::friction(reynolds, roughness).unwrap().factor;
            assert!((factor(edge * (1.0 - 1e-9)) / factor(edge) - 1.0).abs() < 1e-7);
            assert!((factor(edge * (1.0 + 1e-9)) / factor(edge) - 1.0).abs() < 1e-7);
        }
    }
    assert_eq!(
        pipe_flow::friction(2300.0, 0.0).unwrap().regime,
        Regime::Laminar
    );
    assert_eq!(
        pipe_flow::friction(2300.1, 0.0).unwrap().regime,
        Regime::Transition
    );
    assert_eq!(
        pipe_flow::friction(4000.0, 0.0).unwrap().regime,
        Regime::Turbulent
    );
}

/// Elbow of 90°: 30 bores, from memory.
#[test]
fn a_fitting_is_so_much_straight_tube() {
    let length = Fitting::Elbow90
        .equivalent_length(Length::millimetres(16.0))
        .in_metres();
    assert!((length - 0.48).abs() < 1e-12);
}

/// A tube of 1 m and 2 cm at 1 mbar, air: viscous 135·16/100 = 21.6, molecular 12.1·8/100 = 0.968
/// L/s, by the formulas in values as printed (cm, mbar, L/s); hand-worked. Knudsen between.
#[test]
fn hose_conductance_as_worked_by_hand() {
    let (bore, length) = (Length::millimetres(20.0), Length::metres(1.0));
    let pressure = AbsolutePressure::pascals(100.0);
    let litres = |flow: VolumeFlow| flow.in_cubic_metres_per_second() * 1000.0;
    let viscous = litres(vacuum_flow::viscous_conductance(bore, length, pressure).unwrap());
    assert!((viscous - 21.6).abs() < 1e-9);
    let molecular = litres(vacuum_flow::molecular_conductance(bore, length).unwrap());
    assert!((molecular - 0.968).abs() < 1e-9);
    let both = litres(vacuum_flow::conductance(bore, length, pressure).unwrap());
    let by_hand = 21.6 + 0.968 * (1.0 + 192.0 * 2.0) / (1.0 + 237.0 * 2.0);
    assert!((both - by_hand).abs() < 1e-9);
    // Hagen and Poiseuille with 18.2e-6 Pa·s, the viscosity of air at 20 °C.
    let laminar = core::f64::consts::PI * 0.02_f64.powi(4) / (128.0 * 18.2e-6) * 100.0 * 1000.0;
    assert!((viscous / laminar - 1.0).abs() < 2e-3);
    // Kinetic theory: d³/(6 l) sqrt(2 pi R T/M), air of 28.96 g/mol at 293.15 K.
    let speed = (2.0 * core::f64::consts::PI * 8.314_462_6 * 293.15 / 0.028_96).sqrt();
    assert!((molecular / (0.02_f64.powi(3) / 6.0 * speed * 1000.0) - 1.0).abs() < 2e-3);
}

#[test]
fn a_hose_as_slow_as_the_pump_halves_its_speed() {
    let speed = VolumeFlow::cubic_metres_per_second(2e-3);
    let left = vacuum_flow::effective_speed(speed, speed).in_cubic_metres_per_second();
    assert!((left - 1e-3).abs() < 1e-15);
    let none = VolumeFlow::cubic_metres_per_second(0.0);
    assert_eq!(vacuum_flow::effective_speed(none, none), none);
}
