//! What was entered about the line and its air, within what is answered for.

use super::layer::Condition;
use super::{CoefficientBasis, InsulationInput};
use crate::calc::ambient::{Ambient, ambient};
use crate::calc::problem::{Field, Misfit, Problem};
use crate::calc::reading::{Reading, filled, optional, required};
use crate::physics::Beyond;
use crate::physics::moist_air::{Known, state};
use crate::physics::tube_heat::{Film, Surroundings, Tube};
use crate::quantity::{
    HeatTransferCoefficient, Length, Ratio, Temperature, TemperatureDifference,
    ThermalConductivity, Velocity,
};
use crate::tables::SourceId;
use crate::tables::refrigerants::Sourced;
use crate::tables::tube::sizes_of;

/// Bare tubes that are answered for.
const DIAMETERS: (Length, Length) = (Length::metres(0.003), Length::metres(1.0));
/// Lines that are answered for.
const LINES: (Temperature, Temperature) =
    (Temperature::celsius(-100.0), Temperature::celsius(100.0));
/// Insulations that are answered for.
const CONDUCTIVITIES: (ThermalConductivity, ThermalConductivity) = (
    ThermalConductivity::watts_per_metre_kelvin(0.005),
    ThermalConductivity::watts_per_metre_kelvin(1.0),
);
/// Coefficients that are answered for.
const COEFFICIENTS: (HeatTransferCoefficient, HeatTransferCoefficient) = (
    HeatTransferCoefficient::watts_per_square_metre_kelvin(0.5),
    HeatTransferCoefficient::watts_per_square_metre_kelvin(500.0),
);
/// Emissivities that are answered for.
const EMISSIVITIES: (Ratio, Ratio) = (Ratio::of_one(0.01), Ratio::of_one(1.0));
/// Air speeds that are answered for.
const SPEEDS: (Velocity, Velocity) = (
    Velocity::metres_per_second(0.0),
    Velocity::metres_per_second(30.0),
);
/// Margins that are answered for.
const MARGINS: (TemperatureDifference, TemperatureDifference) = (
    TemperatureDifference::kelvins(0.0),
    TemperatureDifference::kelvins(30.0),
);
/// Uncertain thermometers that are answered for.
const THERMOMETERS: (TemperatureDifference, TemperatureDifference) = (
    TemperatureDifference::kelvins(0.0),
    TemperatureDifference::kelvins(10.0),
);
/// Uncertain hygrometers that are answered for.
const HYGROMETERS: (Ratio, Ratio) = (Ratio::of_one(0.0), Ratio::of_one(0.3));

/// The most that ASTM C534 allows closed-cell elastomeric foam at 75 °F, 0.28 Btu·in/(h·ft²·°F).
const FOAM_CONDUCTIVITY: ThermalConductivity = ThermalConductivity::watts_per_metre_kelvin(0.040);
/// Of foam, tape, paint. Common practice.
const DULL_EMISSIVITY: Ratio = Ratio::of_one(0.9);
/// A thermometer in order. Common practice.
const USUAL_THERMOMETER: TemperatureDifference = TemperatureDifference::kelvins(0.5);
/// A hygrometer in order, in points of relative humidity. Common practice.
const USUAL_HYGROMETER: Ratio = Ratio::of_one(0.03);
/// Part by which a coefficient that was worked out may be too large. Textbooks trust such equations to about
/// 20 % (Bergman and others, Introduction to Heat Transfer, chapters 7 and 9, from memory).
const COEFFICIENT_UNCERTAINTY: f64 = 0.2;

/// What was entered, or stands where nothing was.
#[derive(Clone, Copy)]
pub(super) struct Facts {
    pub ambient: Ambient,
    pub name: Option<&'static str>,
    pub conductivity: Sourced<ThermalConductivity>,
    pub coefficient_basis: CoefficientBasis,
    pub moisture: Known,
    pub margin: TemperatureDifference,
    diameter: Length,
    line: Temperature,
    dry_bulb: Temperature,
    film: Film,
    temperature_off: TemperatureDifference,
    humidity_off: Ratio,
}

impl Facts {
    pub fn read(input: &InsulationInput, reading: &mut Reading) -> Option<Self> {
        let ambient = ambient(reading, &input.altitude, &input.barometer);
        let bare = required!(reading, input.tube);
        let line = required!(reading, input.line_temperature);
        let dry_bulb = required!(reading, input.dry_bulb);
        let moisture = moisture(input, reading);
        let conductivity = optional!(reading, input.conductivity);
        let margin = optional!(reading, input.dew_point_margin);
        let off = optional!(reading, input.thermometer_uncertainty);
        let humidity_off = optional!(reading, input.humidity_uncertainty);
        reading.within(Field::named("tube"), bare, DIAMETERS);
        reading.within(Field::named("line_temperature"), line, LINES);
        reading.within(Field::named("conductivity"), conductivity, CONDUCTIVITIES);
        reading.within(Field::named("dew_point_margin"), margin, MARGINS);
        reading.within(Field::named("thermometer_uncertainty"), off, THERMOMETERS);
        reading.within(
            Field::named("humidity_uncertainty"),
            humidity_off,
            HYGROMETERS,
        );
        let (film, coefficient_basis) = film(input, reading);
        let bare = bare?;
        let size = sizes_of(bare, None).next();
        let foam = (FOAM_CONDUCTIVITY, SourceId::AstmC534);
        let (figure, source) = conductivity.map_or(foam, |given| (given, SourceId::PlateFigure));
        Some(Self {
            ambient: ambient?,
            name: size.map(|size| size.name),
            conductivity: Sourced { figure, source },
            coefficient_basis,
            moisture: moisture?,
            margin: margin.unwrap_or(MARGINS.0),
            diameter: size.map_or(bare, |size| size.outside_diameter()),
            line: line?,
            dry_bulb: dry_bulb?,
            film,
            temperature_off: off.unwrap_or(USUAL_THERMOMETER),
            humidity_off: humidity_off.unwrap_or(USUAL_HYGROMETER),
        })
    }

    pub fn condition(&self) -> Result<Condition, Beyond> {
        let pressure = self.ambient.pressure;
        let air = state(Known::DryBulb(self.dry_bulb), self.moisture, pressure)?;
        let surroundings = Surroundings {
            air: self.dry_bulb,
            pressure,
            film: self.film,
        };
        let tube = Tube {
            diameter: self.diameter,
            temperature: self.line,
            conductivity: self.conductivity.figure,
            surroundings,
        };
        Ok(Condition { air, tube })
    }

    /// The conditions with one figure each as far off as it may be, to the side that there can be.
    pub fn instead(&self) -> Result<Vec<Condition>, Beyond> {
        let changed = [-1.0, 1.0].map(|sign| {
            let (off, humidity_off) = (self.temperature_off * sign, self.humidity_off * sign);
            let moisture = match self.moisture {
                Known::WetBulb(wet_bulb) => Known::WetBulb(wet_bulb + off),
                Known::DewPoint(dew_point) => Known::DewPoint(dew_point + off),
                Known::RelativeHumidity(humidity) => {
                    Known::RelativeHumidity(humidity + humidity_off)
                }
                other => other,
            };
            let (dry_bulb, line) = (self.dry_bulb + off, self.line + off);
            [
                Self { moisture, ..*self },
                Self { dry_bulb, ..*self },
                Self { line, ..*self },
            ]
        });
        let [less, more] = changed;
        let mut found = Vec::with_capacity(4);
        for (less, more) in less.iter().zip(&more) {
            found.push(less.condition().or_else(|_| more.condition())?);
        }
        if let Film::Worked {
            emissivity,
            speed,
            factor,
        } = self.film
        {
            let film = Film::Worked {
                emissivity,
                speed,
                factor: factor * (1.0 - COEFFICIENT_UNCERTAINTY),
            };
            found.push(Self { film, ..*self }.condition()?);
        }
        Ok(found)
    }
}

/// Exactly one fact about the moisture of the air.
fn moisture(input: &InsulationInput, reading: &mut Reading) -> Option<Known> {
    let humidity = optional!(reading, input.relative_humidity).map(Known::RelativeHumidity);
    let wet_bulb = optional!(reading, input.wet_bulb).map(Known::WetBulb);
    let dew_point = optional!(reading, input.dew_point).map(Known::DewPoint);
    reading.exactly(
        1,
        &[
            filled!(input.relative_humidity),
            filled!(input.wet_bulb),
            filled!(input.dew_point),
        ],
    );
    humidity.or(wet_bulb).or(dew_point)
}

/// How heat reaches the outside, and where that comes from.
fn film(input: &InsulationInput, reading: &mut Reading) -> (Film, CoefficientBasis) {
    let given = optional!(reading, input.surface_coefficient);
    let emissivity = optional!(reading, input.emissivity);
    let speed = optional!(reading, input.air_speed);
    reading.within(Field::named("surface_coefficient"), given, COEFFICIENTS);
    reading.within(Field::named("emissivity"), emissivity, EMISSIVITIES);
    reading.within(Field::named("air_speed"), speed, SPEEDS);
    let Some(given) = given else {
        let speed = speed.unwrap_or(SPEEDS.0);
        let basis = if speed > SPEEDS.0 {
            CoefficientBasis::MovingAir
        } else {
            CoefficientBasis::StillAir
        };
        let film = Film::Worked {
            emissivity: emissivity.unwrap_or(DULL_EMISSIVITY),
            speed,
            factor: 1.0,
        };
        return (film, basis);
    };
    for (field, filled) in [filled!(input.emissivity), filled!(input.air_speed)] {
        if filled {
            let with = Field::named("surface_coefficient");
            reading.problem(Problem::misfit(
                Field::named(field),
                Misfit::Conflict { with },
            ));
        }
    }
    (Film::Given(given), CoefficientBasis::Entered)
}
