//! What was read off the instruments, taken out of the input and checked.

use serde::Serialize;

use super::coil::Coil;
use super::measured::{ErrorSource, Read};
use super::stream::{Stream, StreamFields};
use super::{MeteringDevice, RunningInput, RunningMode};
use crate::calc::ambient::{Ambient, Entered, ambient, entered};
use crate::calc::problem::{Field, Misfit, Problem};
use crate::calc::reading::{Reading, filled, optional, required};
use crate::physics::moist_air::Known;
use crate::quantity::factors::{KELVIN_PER_FAHRENHEIT, PASCAL_PER_PSI};
use crate::quantity::{
    AbsolutePressure, Band, Entry, Power, PressureDifference, Quantity, Ratio, Temperature,
    TemperatureDifference, Time, VolumeFlow,
};
use crate::tables::refrigerants::Refrigerant;

/// How far each instrument may be off: what was entered, or else what is taken.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Accuracy {
    /// Gauge on the suction side.
    pub suction_gauge: PressureDifference,
    /// Gauge on the liquid and discharge side.
    pub liquid_gauge: PressureDifference,
    /// Every thermometer, on lines and in the air.
    pub thermometer: TemperatureDifference,
    /// Relative humidity, in parts of saturation.
    pub relative_humidity: Ratio,
    /// Airflow, relative to itself.
    pub airflow: Ratio,
}

impl Accuracy {
    /// What is taken where nothing is entered. Gauges and thermometer: California Title 24 (2008),
    /// residential appendix RA3.2.2.2, the thermometer's 1.3 °F + 0.1 % at 100 °F. Humidity and airflow:
    /// common practice.
    pub const USUAL: Self = Self {
        suction_gauge: PressureDifference::pascals(3.5 * PASCAL_PER_PSI),
        liquid_gauge: PressureDifference::pascals(7.0 * PASCAL_PER_PSI),
        thermometer: TemperatureDifference::kelvins(1.4 * KELVIN_PER_FAHRENHEIT),
        relative_humidity: Ratio::of_one(0.03),
        airflow: Ratio::of_one(0.1),
    };

    fn read(input: &RunningInput, reading: &mut Reading) -> Self {
        let usual = Self::USUAL;
        let suction = optional!(reading, input.suction_gauge_uncertainty);
        let liquid = optional!(reading, input.liquid_gauge_uncertainty);
        let thermometer = optional!(reading, input.thermometer_uncertainty);
        let humidity = optional!(reading, input.humidity_uncertainty);
        let airflow = optional!(reading, input.airflow_uncertainty);
        reading.within(
            Field::named("suction_gauge_uncertainty"),
            suction,
            GAUGE_ERRORS,
        );
        reading.within(
            Field::named("liquid_gauge_uncertainty"),
            liquid,
            GAUGE_ERRORS,
        );
        reading.within(
            Field::named("thermometer_uncertainty"),
            thermometer,
            THERMOMETER_ERRORS,
        );
        reading.within(Field::named("humidity_uncertainty"), humidity, RATIO_ERRORS);
        reading.within(Field::named("airflow_uncertainty"), airflow, RATIO_ERRORS);
        Self {
            suction_gauge: suction.unwrap_or(usual.suction_gauge),
            liquid_gauge: liquid.unwrap_or(usual.liquid_gauge),
            thermometer: thermometer.unwrap_or(usual.thermometer),
            relative_humidity: humidity.unwrap_or(usual.relative_humidity),
            airflow: airflow.unwrap_or(usual.airflow),
        }
    }

    /// A temperature of the air as a reading.
    pub(super) fn air(&self, temperature: Temperature) -> Read {
        self.thermometer(temperature, ErrorSource::AirThermometers)
    }

    /// A temperature as a reading.
    pub(super) fn thermometer(&self, temperature: Temperature, source: ErrorSource) -> Read {
        Read {
            si: temperature.si(),
            error: self.thermometer.si(),
            source,
        }
    }
}

/// Errors of gauges, thermometers and others that are answered for.
const GAUGE_ERRORS: (PressureDifference, PressureDifference) = (
    PressureDifference::pascals(0.0),
    PressureDifference::pascals(5e5),
);
const THERMOMETER_ERRORS: (TemperatureDifference, TemperatureDifference) = (
    TemperatureDifference::kelvins(0.0),
    TemperatureDifference::kelvins(10.0),
);
const RATIO_ERRORS: (Ratio, Ratio) = (Ratio::of_one(0.0), Ratio::of_one(0.5));

/// Temperatures of refrigerant lines that are answered for.
const LINE_TEMPERATURES: (Temperature, Temperature) =
    (Temperature::celsius(-60.0), Temperature::celsius(150.0));
/// Temperatures of the air that are answered for, as for moist air.
const AIR_TEMPERATURES: (Temperature, Temperature) =
    (Temperature::celsius(-60.0), Temperature::celsius(80.0));
/// Limits of a target that makes sense.
const TARGETS: (TemperatureDifference, TemperatureDifference) = (
    TemperatureDifference::kelvins(0.0),
    TemperatureDifference::kelvins(60.0),
);
/// Capacities of plates and airflows that are answered for: a room to a large hall.
const CAPACITIES: (Power, Power) = (Power::watts(100.0), Power::watts(1e6));
const AIRFLOWS: (VolumeFlow, VolumeFlow) = (
    VolumeFlow::cubic_metres_per_second(1e-3),
    VolumeFlow::cubic_metres_per_second(1e3),
);

const RETURN: StreamFields = [
    "return_dry_bulb",
    "return_wet_bulb",
    "return_relative_humidity",
];
const SUPPLY: StreamFields = [
    "supply_dry_bulb",
    "supply_wet_bulb",
    "supply_relative_humidity",
];

/// What was read off.
#[derive(Clone, Debug)]
pub(super) struct Readings {
    pub air: Ambient,
    pub refrigerant: Option<Refrigerant>,
    pub device: Option<MeteringDevice>,
    pub suction: Option<Entered>,
    pub suction_line: Option<Temperature>,
    /// Liquid pressure, or discharge pressure if that alone was entered.
    pub liquid: Option<Entered>,
    pub discharge: Option<AbsolutePressure>,
    pub liquid_line: Option<Temperature>,
    pub plate_superheat: Option<Band<TemperatureDifference>>,
    pub plate_subcooling: Option<Band<TemperatureDifference>>,
    pub target_split: Option<Band<TemperatureDifference>>,
    pub evaporating_band: Option<Band<TemperatureDifference>>,
    pub condensing_band: Option<Band<TemperatureDifference>>,
    pub outdoor: Option<Temperature>,
    pub coil: Coil,
    pub airflow_checked: bool,
    pub running_time: Option<Time>,
    pub accuracy: Accuracy,
}

impl Readings {
    /// Reads every field; `None` if the air's pressure is not known. Problems go to `reading`.
    pub fn read(input: &RunningInput, reading: &mut Reading) -> Option<Self> {
        let pressures = [
            filled!(input.suction_gauge_pressure),
            filled!(input.liquid_gauge_pressure),
            filled!(input.discharge_gauge_pressure),
        ];
        let refrigerant = if pressures.iter().any(|(_, filled)| *filled) {
            required!(reading, input.refrigerant)
        } else {
            optional!(reading, input.refrigerant)
        };
        let suction = optional!(reading, input.suction_gauge_pressure);
        let liquid = optional!(reading, input.liquid_gauge_pressure);
        let discharge = optional!(reading, input.discharge_gauge_pressure);
        let suction_line = optional!(reading, input.suction_line_temperature);
        let liquid_line = optional!(reading, input.liquid_line_temperature);
        reading.within(
            Field::named("suction_line_temperature"),
            suction_line,
            LINE_TEMPERATURES,
        );
        reading.within(
            Field::named("liquid_line_temperature"),
            liquid_line,
            LINE_TEMPERATURES,
        );
        let outdoor = optional!(reading, input.outdoor_dry_bulb, AIR_TEMPERATURES);
        let accuracy = Accuracy::read(input, reading);
        let mut target = |name, entry| band(reading, Field::named(name), entry);
        let plate_superheat = target("plate_superheat", &input.plate_superheat);
        let plate_subcooling = target("plate_subcooling", &input.plate_subcooling);
        let target_split = target("target_split", &input.target_split);
        let evaporating_band = target(
            "evaporating_difference_band",
            &input.evaporating_difference_band,
        );
        let condensing_band = target(
            "condensing_difference_band",
            &input.condensing_difference_band,
        );
        let device = optional!(reading, input.metering_device);
        let airflow_checked = optional!(reading, input.airflow_checked).unwrap_or(false);
        let running_time = optional!(reading, input.running_time);
        let air = ambient(reading, &input.altitude, &input.barometer);
        let coil = coil(input, reading, air);
        let air = air?;
        let pressure = |name, gauge| entered((name, gauge), ("", None), air.pressure);
        let discharge = pressure("discharge_gauge_pressure", discharge);
        Some(Self {
            air,
            refrigerant,
            device,
            suction: pressure("suction_gauge_pressure", suction),
            suction_line,
            liquid: pressure("liquid_gauge_pressure", liquid).or(discharge.clone()),
            discharge: discharge.map(|discharge| discharge.absolute),
            liquid_line,
            plate_superheat,
            plate_subcooling,
            target_split,
            evaporating_band,
            condensing_band,
            outdoor,
            coil: coil?,
            airflow_checked,
            running_time,
            accuracy,
        })
    }

    /// Air that enters the coil that evaporates and the one that condenses.
    pub fn coil_air(&self) -> (Option<Temperature>, Option<Temperature>) {
        let indoor = self.coil.entering.dry_bulb;
        match self.coil.mode {
            RunningMode::Cooling => (indoor, self.outdoor),
            RunningMode::Heating => (self.outdoor, indoor),
        }
    }

    /// Fields that would complete what was begun.
    pub fn missing(&self) -> Vec<Field> {
        let (entering, leaving) = (self.coil.entering, self.coil.leaving);
        let cooling = self.coil.mode == RunningMode::Cooling;
        let airflow = self.coil.airflow.is_some();
        let humid = airflow && cooling;
        let wanted = [
            (
                "suction_gauge_pressure",
                self.suction.is_none(),
                self.suction_line.is_some(),
            ),
            (
                "suction_line_temperature",
                self.suction_line.is_none(),
                self.suction.is_some(),
            ),
            (
                "liquid_gauge_pressure",
                self.liquid.is_none(),
                self.liquid_line.is_some(),
            ),
            (
                "liquid_line_temperature",
                self.liquid_line.is_none(),
                self.liquid.is_some(),
            ),
            (
                "return_dry_bulb",
                entering.dry_bulb.is_none(),
                airflow || leaving.dry_bulb.is_some(),
            ),
            (
                "supply_dry_bulb",
                leaving.dry_bulb.is_none(),
                airflow || entering.dry_bulb.is_some(),
            ),
            ("return_wet_bulb", entering.humidity.is_none(), humid),
            ("supply_wet_bulb", leaving.humidity.is_none(), humid),
        ];
        let missing = wanted.iter().filter(|(_, absent, begun)| *absent && *begun);
        missing.map(|(field, ..)| Field::named(field)).collect()
    }
}

fn band(
    reading: &mut Reading,
    field: Field,
    entry: &Entry<Band<TemperatureDifference>>,
) -> Option<Band<TemperatureDifference>> {
    let band = reading.optional(field.clone(), entry)?;
    let (low, high) = TARGETS;
    if band.low < low || band.high > high {
        reading.problem(Problem::outside(field, low, high));
        return None;
    }
    Some(band)
}

/// The indoor coil's air; `None` if the air's pressure is not known.
fn coil(input: &RunningInput, reading: &mut Reading, air: Option<Ambient>) -> Option<Coil> {
    let airflow = optional!(reading, input.airflow, AIRFLOWS);
    let plate = optional!(reading, input.plate_capacity, CAPACITIES);
    let mode = optional!(reading, input.mode).unwrap_or(RunningMode::Cooling);
    let entering = [&input.return_dry_bulb, &input.return_wet_bulb];
    let entering = stream(reading, RETURN, entering, &input.return_relative_humidity);
    let leaving = [&input.supply_dry_bulb, &input.supply_wet_bulb];
    let leaving = stream(reading, SUPPLY, leaving, &input.supply_relative_humidity);
    let pressure = air?.pressure;
    let source = if matches!(input.altitude, Entry::Read(_)) {
        "altitude"
    } else {
        "barometer"
    };
    reading.accept(entering.checked(RETURN, pressure, source, airflow.is_some()));
    reading.accept(leaving.checked(SUPPLY, pressure, source, airflow.is_some()));
    Some(Coil {
        mode,
        entering,
        leaving,
        airflow,
        plate,
        pressure,
    })
}

fn stream(
    reading: &mut Reading,
    [dry_field, wet_field, humid_field]: StreamFields,
    [dry_bulb, wet_bulb]: [&Entry<Temperature>; 2],
    relative_humidity: &Entry<Ratio>,
) -> Stream {
    let (low, high) = AIR_TEMPERATURES;
    let mut temperature = |field, entry| {
        let found = reading.optional(Field::named(field), entry);
        reading.within(Field::named(field), found, AIR_TEMPERATURES);
        found.filter(|found| (low..=high).contains(found))
    };
    let (dry_bulb, wet_bulb) = (
        temperature(dry_field, dry_bulb),
        temperature(wet_field, wet_bulb),
    );
    let relative = reading.optional(Field::named(humid_field), relative_humidity);
    let humidity = match (wet_bulb, relative) {
        (Some(_), Some(_)) => {
            let with = Field::named(wet_field);
            reading.problem(Problem::misfit(
                Field::named(humid_field),
                Misfit::Conflict { with },
            ));
            None
        }
        (Some(wet_bulb), None) => Some(Known::WetBulb(wet_bulb)),
        (None, relative) => relative.map(Known::RelativeHumidity),
    };
    Stream { dry_bulb, humidity }
}
