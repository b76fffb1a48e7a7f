//! The refrigerants and nitrogen against CoolProp 8.0.0, at random points that no fit has seen.
//!
//! The table it prints is kept as `tests/reference/fluids/accuracy.txt`; a change of the data or of
//! the code shows there.

use std::fmt::Write;

use coldwright::physics::saturation::{self, Line, Phase};
use coldwright::physics::{nitrogen, vapour};
use coldwright::quantity::{AbsolutePressure, Temperature, TemperatureDifference};
use coldwright::tables::refrigerants::Refrigerant;
use serde::Deserialize;

use crate::rows;

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct SaturationRow {
    refrigerant: String,
    temperature_K: f64,
    bubble_pressure_Pa: f64,
    dew_pressure_Pa: f64,
    liquid_density_kg_m3: f64,
    vapour_density_kg_m3: f64,
    liquid_enthalpy_J_kg: f64,
    vapour_enthalpy_J_kg: f64,
    liquid_heat_capacity_J_kgK: f64,
    vapour_heat_capacity_J_kgK: f64,
    liquid_viscosity_Pas: f64,
    vapour_viscosity_Pas: f64,
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct PressureRow {
    refrigerant: String,
    pressure_Pa: f64,
    bubble_temperature_K: f64,
    dew_temperature_K: f64,
    latent_heat_J_kg: f64,
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct SuperheatRow {
    refrigerant: String,
    dew_temperature_K: f64,
    superheat_K: f64,
    pressure_Pa: f64,
    density_kg_m3: f64,
    enthalpy_J_kg: f64,
}

#[derive(Deserialize)]
#[allow(non_snake_case)]
struct NitrogenRow {
    filled_pressure_Pa: f64,
    filled_temperature_K: f64,
    read_temperature_K: f64,
    read_pressure_Pa: f64,
    density_kg_m3: f64,
    filled_compressibility: f64,
}

const ROWS_A_REFRIGERANT: [usize; 3] = [60, 40, 60];

/// What is compared, its unit, and the largest deviation that is accepted. The limits on heat
/// capacity and viscosity are of the fit alone.
const COLUMNS: [(&str, &str, f64); 10] = [
    ("temperature", "mK", 5.0),
    ("pressure", "%", 0.02),
    ("liquid density", "%", 0.05),
    ("vapour density", "%", 0.1),
    ("latent heat", "%", 0.2),
    ("gas density", "%", 0.3),
    ("gas enthalpy", "kJ/kg", 0.3),
    ("heat capacity", "%", 0.5),
    ("viscosity", "%", 0.5),
    ("enthalpy", "kJ/kg", 0.15),
];

/// Largest deviations of one refrigerant, column by column.
#[derive(Default)]
struct Worst([f64; COLUMNS.len()]);

impl Worst {
    fn note(&mut self, column: &str, deviation: f64) {
        assert!(deviation.is_finite());
        let at = COLUMNS
            .iter()
            .position(|(name, ..)| *name == column)
            .unwrap();
        self.0[at] = self.0[at].max(deviation.abs());
    }

    fn note_relative(&mut self, column: &str, found: f64, expected: f64) {
        self.note(column, 100.0 * (found / expected - 1.0));
    }
}

fn named(designation: &str) -> Refrigerant {
    let at = Refrigerant::WORDS
        .iter()
        .position(|word| *word == designation)
        .unwrap();
    Refrigerant::ALL[at]
}

fn note_saturation(worst: &mut Worst, row: &SaturationRow) {
    let refrigerant = named(&row.refrigerant);
    let temperature = Temperature::kelvins(row.temperature_K);
    for (line, expected) in [
        (Line::Bubble, row.bubble_pressure_Pa),
        (Line::Dew, row.dew_pressure_Pa),
    ] {
        let found = saturation::pressure(refrigerant, line, temperature).unwrap();
        worst.note_relative("pressure", found.in_pascals(), expected);
        let back = saturation::temperature(refrigerant, line, AbsolutePressure::pascals(expected))
            .unwrap();
        worst.note("temperature", 1e3 * (back - temperature).in_kelvins());
    }
    let phases = [
        (
            Phase::Liquid,
            "liquid density",
            row.liquid_density_kg_m3,
            row.liquid_enthalpy_J_kg,
            row.liquid_heat_capacity_J_kgK,
            row.liquid_viscosity_Pas,
        ),
        (
            Phase::Vapour,
            "vapour density",
            row.vapour_density_kg_m3,
            row.vapour_enthalpy_J_kg,
            row.vapour_heat_capacity_J_kgK,
            row.vapour_viscosity_Pas,
        ),
    ];
    for (phase, column, density, enthalpy, heat_capacity, viscosity) in phases {
        let found = saturation::density(refrigerant, phase, temperature).unwrap();
        worst.note_relative(column, found.in_kilograms_per_cubic_metre(), density);
        let found = saturation::enthalpy(refrigerant, phase, temperature).unwrap();
        worst.note(
            "enthalpy",
            (found.in_joules_per_kilogram() - enthalpy) / 1e3,
        );
        let found = saturation::heat_capacity(refrigerant, phase, temperature).unwrap();
        worst.note_relative(
            "heat capacity",
            found.in_joules_per_kilogram_kelvin(),
            heat_capacity,
        );
        let found = saturation::viscosity(refrigerant, phase, temperature).unwrap();
        worst.note_relative("viscosity", found.in_pascal_seconds(), viscosity);
    }
}

fn note_pressure(worst: &mut Worst, row: &PressureRow) {
    let refrigerant = named(&row.refrigerant);
    let pressure = AbsolutePressure::pascals(row.pressure_Pa);
    for (line, expected) in [
        (Line::Bubble, row.bubble_temperature_K),
        (Line::Dew, row.dew_temperature_K),
    ] {
        let found = saturation::temperature(refrigerant, line, pressure).unwrap();
        worst.note("temperature", 1e3 * (found.in_kelvins() - expected));
    }
    let found = saturation::latent_heat(refrigerant, pressure).unwrap();
    worst.note_relative(
        "latent heat",
        found.in_joules_per_kilogram(),
        row.latent_heat_J_kg,
    );
    let glide = saturation::glide(refrigerant, pressure)
        .unwrap()
        .in_kelvins();
    let expected = row.dew_temperature_K - row.bubble_temperature_K;
    worst.note("temperature", 1e3 * (glide - expected));
}

fn note_superheat(worst: &mut Worst, row: &SuperheatRow) {
    let refrigerant = named(&row.refrigerant);
    let dew = Temperature::kelvins(row.dew_temperature_K);
    let superheat = TemperatureDifference::kelvins(row.superheat_K);
    let by_dew = vapour::superheated(refrigerant, dew, superheat).unwrap();
    let pressure = AbsolutePressure::pascals(row.pressure_Pa);
    let by_pressure = vapour::at(refrigerant, pressure, dew + superheat).unwrap();
    for found in [by_dew, by_pressure] {
        worst.note_relative(
            "gas density",
            found.density.in_kilograms_per_cubic_metre(),
            row.density_kg_m3,
        );
        worst.note(
            "gas enthalpy",
            (found.enthalpy.in_joules_per_kilogram() - row.enthalpy_J_kg) / 1e3,
        );
        worst.note_relative("pressure", found.pressure.in_pascals(), row.pressure_Pa);
    }
}

/// Whether a dew or saturation temperature lies in the range that the accuracy is promised for:
/// -50 °C to the lower of 75 °C and 3 K below critical. The data reach further.
fn is_promised(refrigerant: Refrigerant, temperature: f64) -> bool {
    let highest = saturation::critical_point(refrigerant)
        .temperature
        .in_kelvins()
        - 3.0;
    (223.15..=highest.min(348.15)).contains(&temperature)
}

fn table(title: &str, counts: impl Fn(Refrigerant, f64) -> bool) -> String {
    let all = Refrigerant::ALL.len();
    let [saturation_rows, pressure_rows, superheat_rows] = ROWS_A_REFRIGERANT;
    let by_temperature: Vec<SaturationRow> = rows::read("saturation.csv", all * saturation_rows);
    let by_pressure: Vec<PressureRow> = rows::read("pressure.csv", all * pressure_rows);
    let superheated: Vec<SuperheatRow> = rows::read("superheat.csv", all * superheat_rows);
    let mut text = format!("{title}\n\n{:12}", "");
    for (name, ..) in COLUMNS {
        write!(text, "{name:>16}").unwrap();
    }
    write!(text, "\n{:12}", "").unwrap();
    for (_, unit, _) in COLUMNS {
        write!(text, "{unit:>16}").unwrap();
    }
    write!(text, "\n{:12}", "accepted").unwrap();
    for (.., limit) in COLUMNS {
        write!(text, "{limit:>16}").unwrap();
    }
    for (refrigerant, word) in Refrigerant::ALL.iter().zip(Refrigerant::WORDS) {
        let mut worst = Worst::default();
        let mut seen = 0;
        for row in by_temperature.iter().filter(|row| row.refrigerant == *word) {
            if counts(*refrigerant, row.temperature_K) {
                seen += 1;
                note_saturation(&mut worst, row);
            }
        }
        for row in by_pressure.iter().filter(|row| row.refrigerant == *word) {
            if counts(*refrigerant, row.bubble_temperature_K)
                && counts(*refrigerant, row.dew_temperature_K)
            {
                seen += 1;
                note_pressure(&mut worst, row);
            }
        }
        for row in superheated.iter().filter(|row| row.refrigerant == *word) {
            if counts(*refrigerant, row.dew_temperature_K) {
                seen += 1;
                note_superheat(&mut worst, row);
            }
        }
        assert!(seen >= 90, "{word}: only {seen} points");
        write!(text, "\n{word:12}").unwrap();
        for ((name, unit, limit), deviation) in COLUMNS.iter().zip(worst.0) {
            assert!(
                deviation <= *limit,
                "{word}: {name} {deviation} {unit}, accepted {limit}"
            );
            write!(text, "{deviation:>16.5}").unwrap();
        }
    }
    text + "\n"
}

#[test]
fn refrigerants_keep_to_the_library_and_the_table_is_the_one_kept() {
    let promised = table(
        "Largest deviation from CoolProp 8.0.0 from -50 °C to the lower of 75 °C and 3 K below critical.",
        is_promised,
    );
    let all = table("The same over all that the data reach.", |_, _| true);
    let found = format!("{promised}\n{all}");
    println!("{found}");
    let kept = std::fs::read_to_string(rows::path("accuracy.txt")).unwrap_or_default();
    assert!(
        found == kept,
        "keep the table printed above as accuracy.txt"
    );
}

#[test]
fn nitrogen_holds_its_density() {
    let mut worst: f64 = 0.0;
    for row in rows::read::<NitrogenRow>("nitrogen.csv", NITROGEN_ROWS) {
        let filled = AbsolutePressure::pascals(row.filled_pressure_Pa);
        let from = Temperature::kelvins(row.filled_temperature_K);
        let to = Temperature::kelvins(row.read_temperature_K);
        let read = nitrogen::at_constant_density(filled, from, to).unwrap();
        worst = worst.max((read.in_pascals() / row.read_pressure_Pa - 1.0).abs());
        let density = nitrogen::density(filled, from)
            .unwrap()
            .in_kilograms_per_cubic_metre();
        assert!((density / row.density_kg_m3 - 1.0).abs() < 2e-5);
        let factor = nitrogen::compressibility(filled, from).unwrap();
        assert!((factor - row.filled_compressibility).abs() < 2e-6);
    }
    println!(
        "nitrogen hold: worst {:.2e} of the pressure, accepted 2e-4",
        worst
    );
    assert!(worst < 2e-4);
}

/// Rows whose pressure stays in range.
const NITROGEN_ROWS: usize = 100;
