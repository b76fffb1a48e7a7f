//! How long a vacuum pump needs, what holds it back, and what to change.

mod answer;
mod changes;
mod found;
mod input;
mod plan;
mod read;
mod steps;
mod system;

pub use answer::{
    Boiling, Change, CurvePoint, HeldBack, IceRisk, LineChange, LinePart, Milestone, PartShare,
    PlannedEvacuation, PumpDownAnswer, PumpDownNotice, WaterRemoval,
};
pub use input::{
    EvacuatedTubeInput, Moisture, NitrogenBreakInput, PumpDownInput, VacuumHoseInput,
    VacuumTargetInput, ValveCore,
};
pub use read::{DEPTHS, MOST_IN_LIST, SPEEDS, TEMPERATURES, VOLUMES};

use super::problem::{Field, Misfit, Problem, Problems};
use super::reading::{Reading, optional, required};
use crate::physics::vacuum_flow::PRESSURES;
use crate::quantity::AbsolutePressure;
use crate::quantity::factors::PASCAL_PER_MICRON;
use found::Found;
use read::few;
use system::System;

/// The milestones if none are entered, micron. Common practice, no source.
const USUAL_TARGETS: [f64; 4] = [5000.0, 1000.0, 500.0, 300.0];

/// How long will the pump take to each vacuum, what holds it back, and what is the best change?
///
/// # Method
/// The gas in the volume `V` keeps its temperature: `V·dp/dt = −Q(p)`. The throughput is the same in
/// hoses and pump, `Q = C(p̄)·(p − pᵢ) = S·(1 − p_ult/pᵢ)·pᵢ`, with Knudsen's conductance from viscous to
/// molecular flow at the mean pressure of each tube; a valve core is a short narrow tube of its own.
/// The time is the integral of `V·dp/Q`, taken over `ln(p − p_ult)`.
///
/// Water keeps its saturation pressure until it is gone, and for each e-fold by which the other gas gets
/// thinner the pump removes the vapour that fills the volume once: the gauge creeps to the saturation
/// pressure and stands there. As a film it has the ambient temperature, the fastest case. Of an entered
/// depth it is as cold as the heat through half that depth lets it be while it boils; below 611.657 Pa
/// (4588 micron) it is ice, which sublimes.
///
/// A share of the resistance is a part's fall of pressure over the pressure in the system; the pump's
/// own is the inlet pressure over it. Each change is reckoned anew with all else as it is.
///
/// Nitrogen thins what is left: after each break the part of the first gas is the product of low over
/// break pressure so far.
///
/// # Valid for
/// Speeds from 0.06 L/min to 10 m³/s, volumes from 1 mL to 1000 m³, bores from 0.1 mm to 1 m, lengths
/// from 1 mm to 1 km, at the start up to 200 kPa, ambient temperatures from −40 to 60 °C; lists of at
/// most 12.
///
/// Air at 20 °C: 40 K colder or warmer changes the resistance of hoses by 7 to 10 %. Vapour is taken to
/// flow like air, though it flows more easily, by a quarter in molecular and nine tenths in viscous
/// flow. Tubes of ten bores and more. Laminar flow: near the pressure of the air it is turbulent, and
/// choked in a narrow core. What that costs is estimated beside the times; over the dry reference
/// systems it is 1 % of the time to 500 micron in the middle and 35 % at most, with thin hoses on a
/// strong pump. Oil, leaks, what comes off the walls and the resistance of the system's own tubes are left
/// out: a job takes longer, not shorter.
///
/// # Errors
/// Missing speed or volume; a volume both entered and summed up; figures outside these limits; dry
/// with water; water that fills the volume or would boil at the start.
///
/// # Examples
/// ```
/// use coldwright::calc::pump_down::{LineChange, PumpDownInput, VacuumHoseInput, pump_down};
/// use coldwright::quantity::{Length, Quantity, Volume, VolumeFlow};
/// let answer = pump_down(&PumpDownInput {
///     pump_speed: VolumeFlow::read("6 cfm").unwrap().into(),
///     volume: Volume::read("5 L").unwrap().into(),
///     hoses: vec![VacuumHoseInput {
///         bore: Length::millimetres(5.0).into(),
///         length: Length::metres(1.5).into(),
///         ..VacuumHoseInput::default()
///     }].into(),
///     ..PumpDownInput::default()
/// }).unwrap();
/// // A thin hose makes a 6 cfm pump wait for minutes; a larger one is worth most.
/// let to_500_micron = answer.milestones[2].time.unwrap().in_seconds();
/// assert!((200.0..400.0).contains(&to_500_micron));
/// assert_eq!(answer.best_change, Some(LineChange::LargerHose));
/// ```
///
/// # References
/// Conductances and `t = V/S·ln(p₀/p₁)`: engineeringtoolbox.com. Transition: Knudsen, Ann. Phys. 28
/// (1909) 75, from memory. Water: IAPWS R7-97 and R14-08. Nitrogen breaks: Crowl and Louvar, Chemical
/// Process Safety, vacuum purging. The valve core's resistance, the usual ultimate pressure, the water
/// of a damp system and the milestones are common practice with no source.
pub fn pump_down(input: &PumpDownInput) -> Result<PumpDownAnswer, Problems> {
    let mut reading = Reading::default();
    let system = System::read(&mut reading, input);
    let targets = targets(&mut reading, input);
    let breaks = plan::read(&mut reading, input, system.as_ref());
    let share_pressure = optional!(reading, input.share_pressure);
    if let Some(system) = &system {
        let limits = (system.ultimate, PRESSURES.1);
        reading.within(Field::named("share_pressure"), share_pressure, limits);
        reading.accept(fits(system, input));
    }
    reading.sound()?;
    let (Some(system), Some(targets), Some(breaks)) = (system, targets, breaks) else {
        return Err(reading.take());
    };
    let boils_at_start = |_| {
        let with = Field::named("ambient_temperature");
        let field = Field::named("starting_pressure");
        vec![Problem::misfit(field, Misfit::Impossible { with })]
    };
    let line = system.line().map_err(boils_at_start)?;
    let evacuation = system.evacuation(&line).map_err(boils_at_start)?;
    Ok(Found {
        system: &system,
        line: &line,
        evacuation,
    }
    .answer(input, &targets, &breaks, share_pressure))
}

/// The pressures to reach, in the order entered.
fn targets(reading: &mut Reading, input: &PumpDownInput) -> Option<Vec<AbsolutePressure>> {
    few(reading, "targets", input.targets.items().len());
    let entered = reading.list(
        Field::named("targets"),
        &input.targets,
        0,
        |reading, target| required!(reading, target.pressure),
    )?;
    if entered.is_empty() {
        return Some(USUAL_TARGETS.map(micron).into());
    }
    Some(entered)
}

const fn micron(number: f64) -> AbsolutePressure {
    AbsolutePressure::pascals(number * PASCAL_PER_MICRON)
}

/// Whether the water leaves room for anything else.
fn fits(system: &System, input: &PumpDownInput) -> Result<(), Problem> {
    let liquid = system.water.map(|water| water.mass.in_kilograms() / 1000.0);
    if liquid.is_some_and(|liquid| liquid >= system.volume.in_cubic_metres()) {
        let volume = if input.tubes.items().is_empty() {
            "volume"
        } else {
            "tubes"
        };
        let with = Field::named(volume);
        return Err(Problem::misfit(
            Field::named("water"),
            Misfit::Impossible { with },
        ));
    }
    Ok(())
}
