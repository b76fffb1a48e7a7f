//! Reads the system, its hoses, its pump and its water.

use super::input::{EvacuatedTubeInput, Moisture, PumpDownInput, VacuumHoseInput, ValveCore};
use super::micron;
use super::system::{Hoses, System, Water};
use crate::calc::ambient::ambient;
use crate::calc::count::Count;
use crate::calc::problem::{Cause, Field, Misfit, Problem};
use crate::calc::reading::{Reading, filled, optional, required};
use crate::calc::tube::{TubeInput, tube};
use crate::physics::vacuum_flow::{BORES, LENGTHS, PRESSURES};
use crate::quantity::{AbsolutePressure, Length, Mass, Temperature, Volume, VolumeFlow};

/// Pumps that are answered for: 0.06 L/min to 36 000 m³/h.
pub const SPEEDS: (VolumeFlow, VolumeFlow) = (
    VolumeFlow::cubic_metres_per_second(1e-6),
    VolumeFlow::cubic_metres_per_second(10.0),
);
/// Volumes that are answered for: 1 mL to 1000 m³.
pub const VOLUMES: (Volume, Volume) = (Volume::cubic_metres(1e-6), Volume::cubic_metres(1e3));
/// Temperatures that are answered for: -40 to 60 °C.
pub const TEMPERATURES: (Temperature, Temperature) =
    (Temperature::celsius(-40.0), Temperature::celsius(60.0));
/// Depths of standing water that are answered for.
pub const DEPTHS: (Length, Length) = (Length::metres(1e-5), Length::metres(0.1));
/// Most hoses, tubes, targets or evacuations in a list.
pub const MOST_IN_LIST: usize = 12;

/// Highest ultimate pressure that makes sense of a vacuum pump.
const HIGHEST_ULTIMATE: AbsolutePressure = AbsolutePressure::pascals(1e4);
/// Ultimate pressure of a pump in order: 50 micron. Common practice, no source.
const USUAL_ULTIMATE: AbsolutePressure = micron(50.0);
/// Ambient temperature if none is entered: 20 °C. Common practice, no source.
const USUAL_TEMPERATURE: Temperature = Temperature::kelvins(293.15);
/// Water in a damp system: a teaspoon. Common practice, no source.
const DAMP: Mass = Mass::grams(5.0);
/// The tube that resists as a valve core does, pressed open. Common practice, no source.
const USUAL_CORE: (Length, Length) = (Length::millimetres(2.0), Length::millimetres(10.0));

impl System {
    /// The system, if all of it was entered soundly.
    pub fn read(reading: &mut Reading, input: &PumpDownInput) -> Option<Self> {
        let air = ambient(reading, &input.altitude, &input.barometer);
        let (speed, ultimate) = pump(reading, input);
        let start = optional!(reading, input.starting_pressure, (ultimate, PRESSURES.1));
        let ambient_temperature = optional!(reading, input.ambient_temperature, TEMPERATURES);
        let core = core(reading, input);
        let volume = volume(reading, input);
        let water = water(reading, input);
        let hoses = reading.list(Field::named("hoses"), &input.hoses, 0, hoses);
        few(reading, "hoses", input.hoses.items().len());
        Some(Self {
            start: start.or(air.map(|air| air.pressure))?,
            air: air?,
            volume: volume?,
            speed: speed?,
            ultimate,
            hoses: hoses?,
            core,
            water,
            ambient_temperature: ambient_temperature.unwrap_or(USUAL_TEMPERATURE),
        })
    }
}

/// Refuses a list that is longer than anything on a job.
pub(super) fn few(reading: &mut Reading, field: &'static str, found: usize) {
    if found > MOST_IN_LIST {
        let most = MOST_IN_LIST;
        let misfit = Misfit::TooMany { most, found };
        reading.problem(Problem::misfit(Field::named(field), misfit));
    }
}

fn pump(reading: &mut Reading, input: &PumpDownInput) -> (Option<VolumeFlow>, AbsolutePressure) {
    let speed = required!(reading, input.pump_speed, SPEEDS);
    let ultimate = optional!(reading, input.ultimate_pressure);
    let field = Field::named("ultimate_pressure");
    reading.within(field, ultimate, (PRESSURES.0, HIGHEST_ULTIMATE));
    (speed, ultimate.unwrap_or(USUAL_ULTIMATE))
}

fn core(reading: &mut Reading, input: &PumpDownInput) -> (Length, Length) {
    let bore = optional!(reading, input.core_bore, BORES);
    let length = optional!(reading, input.core_length, LENGTHS);
    (bore.unwrap_or(USUAL_CORE.0), length.unwrap_or(USUAL_CORE.1))
}

fn hoses(reading: &mut Reading, input: &VacuumHoseInput) -> Option<Hoses> {
    let bore = required!(reading, input.bore, BORES);
    let length = required!(reading, input.length, LENGTHS);
    let core = optional!(reading, input.core).unwrap_or(ValveCore::In);
    let count = optional!(reading, input.count).unwrap_or(Count::of(1));
    let count = count.between(1, 8, "1…8").map_err(|flaw| Problem {
        field: Field::named("count"),
        cause: Cause::Entry(flaw),
    });
    let count = reading.accept(count)?;
    Some(Hoses {
        bore: bore?,
        length: length?,
        core,
        count: count.number(),
    })
}

fn volume(reading: &mut Reading, input: &PumpDownInput) -> Option<Volume> {
    let volume = optional!(reading, input.volume);
    let coils = optional!(reading, input.coil_volume);
    let has_tubes = !input.tubes.items().is_empty();
    let tubes = reading.list(Field::named("tubes"), &input.tubes, 0, tube_volume);
    few(reading, "tubes", input.tubes.items().len());
    if tubes.is_some() {
        reading.exactly(1, &[filled!(input.volume), ("tubes", has_tubes)]);
    }
    if let (true, (coil_volume, true)) = (filled!(input.volume).1, filled!(input.coil_volume)) {
        let with = Field::named("volume");
        reading.problem(Problem::misfit(
            Field::named(coil_volume),
            Misfit::Conflict { with },
        ));
    }
    reading.within(Field::named("volume"), volume, VOLUMES);
    reading.within(
        Field::named("coil_volume"),
        coils,
        (Volume::cubic_metres(0.0), VOLUMES.1),
    );
    if !has_tubes {
        return volume;
    }
    let nothing = coils.unwrap_or(Volume::cubic_metres(0.0));
    let sum = tubes?.into_iter().fold(nothing, |sum, tube| sum + tube);
    reading.within(Field::named("tubes"), Some(sum), VOLUMES);
    Some(sum)
}

fn tube_volume(reading: &mut Reading, input: &EvacuatedTubeInput) -> Option<Volume> {
    required!(reading, input.length);
    let found = tube(&TubeInput {
        tube: input.tube.clone(),
        series: input.tube_series.clone(),
        length: input.length.clone(),
        ..TubeInput::default()
    });
    let problems = match found {
        Ok(found) => return found.volume,
        Err(problems) => problems,
    };
    for problem in problems {
        let field = match problem.field {
            // What is wrong with the length was told already.
            field if field == Field::named("length") => continue,
            field if field == Field::named("series") => Field::named("tube_series"),
            field => field,
        };
        reading.problem(Problem { field, ..problem });
    }
    None
}

fn water(reading: &mut Reading, input: &PumpDownInput) -> Option<Water> {
    let moisture = optional!(reading, input.moisture);
    let entered = optional!(reading, input.water);
    let depth = optional!(reading, input.water_depth, DEPTHS);
    let is_some = |mass: &Mass| *mass > Mass::grams(0.0);
    if moisture == Some(Moisture::Dry) && entered.as_ref().is_some_and(is_some) {
        let with = Field::named("moisture");
        reading.problem(Problem::misfit(
            Field::named("water"),
            Misfit::Conflict { with },
        ));
    }
    let assumed = (moisture == Some(Moisture::Damp)).then_some(DAMP);
    let mass = entered.or(assumed).filter(is_some)?;
    Some(Water {
        mass,
        is_assumed: entered.is_none(),
        depth,
    })
}
