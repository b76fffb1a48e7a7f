//! The working of a pump-down.

use super::answer::{HeldBack, PlannedEvacuation, WaterRemoval};
use super::found::Goal;
use super::input::{PumpDownInput, ValveCore};
use super::system::{Hoses, System};
use crate::calc::ambient::air_steps;
use crate::calc::working::{Step, Working};
use crate::physics::vacuum_line::{PathFlow, VacuumLine};
use crate::physics::water::Surface;
use crate::quantity::{AbsolutePressure, Length, Ratio, VolumeFlow};
use crate::tables::SourceId;

/// What the steps tell of.
pub(super) struct Told<'answer> {
    pub input: &'answer PumpDownInput,
    pub system: &'answer System,
    pub line: &'answer VacuumLine,
    pub held_back: &'answer HeldBack,
    pub goal: Option<Goal>,
    pub water: Option<&'answer WaterRemoval>,
    pub evacuations: &'answer [PlannedEvacuation],
}

/// The steps, from the air to what nitrogen leaves.
pub(super) fn working(told: &Told<'_>) -> Working {
    let system = told.system;
    let mut steps = air_steps(&told.input.altitude, system.air.pressure);
    let pressure = told.held_back.pressure;
    let flow = told.line.flow(pressure);
    for (hoses, path) in system.hoses.iter().zip(&flow.paths) {
        steps.extend(hose_steps(system, *hoses, *path, pressure, flow.inlet));
    }
    steps.push(speed_step(
        told,
        flow.paths.iter().map(|path| path.conductance),
    ));
    steps.extend(told.water.map(water_step));
    steps.extend(told.water.and_then(|water| dry_step(system, water)));
    steps.extend(told.goal.map(|goal| time_step(system, goal)));
    steps.extend(residual_step(told.evacuations));
    steps
}

/// Conductance of a hose and of the core before it.
fn hose_steps(
    system: &System,
    hoses: Hoses,
    path: PathFlow,
    pressure: AbsolutePressure,
    inlet: AbsolutePressure,
) -> Working {
    let mut steps = Working::new();
    if hoses.core == ValveCore::In {
        let (bore, length) = system.core;
        steps.push(conductance_step(
            "step-core-conductance",
            (bore, length),
            pressure,
            path.between,
        ));
    }
    let size = (hoses.bore, hoses.length);
    steps.push(conductance_step(
        "step-hose-conductance",
        size,
        path.between,
        inlet,
    ));
    steps
}

fn conductance_step(
    title: &'static str,
    (bore, length): (Length, Length),
    from: AbsolutePressure,
    to: AbsolutePressure,
) -> Step {
    let mean = AbsolutePressure::pascals(0.5 * (from.in_pascals() + to.in_pascals()));
    let conductance = crate::physics::vacuum_flow::conductance(bore, length, mean);
    let step = Step::of(
        title,
        "{C} = 135·{d}⁴·{p̄}/{l} + 12.1·{d}³/{l}·(1 + 192·{d}·{p̄})/(1 + 237·{d}·{p̄}), L/s, cm, mbar",
    )
    .with("d", "figure-bore", bore)
    .with("l", "figure-tube-length", length)
    .with("p̄", "figure-mean-pressure", mean)
    .from(SourceId::VacuumConductance)
    .from(SourceId::Knudsen1909);
    let step = if title == "step-core-conductance" {
        step.from(SourceId::ValveCoreResistance)
    } else {
        step
    };
    let none = VolumeFlow::cubic_metres_per_second(0.0);
    step.gives("C", "figure-conductance", conductance.unwrap_or(none))
}

/// Speed that is left at the system.
fn speed_step(told: &Told<'_>, conductances: impl Iterator<Item = VolumeFlow>) -> Step {
    let (system, held_back) = (told.system, told.held_back);
    let step = if system.hoses.is_empty() {
        Step::of("step-effective-speed", "{Sₑ} = {S}·(1 − {p₀}/{pᵢ})")
    } else {
        let all = conductances.fold(VolumeFlow::cubic_metres_per_second(0.0), |sum, one| {
            sum + one
        });
        Step::of(
            "step-effective-speed",
            "1/{Sₑ} = 1/({S}·(1 − {p₀}/{pᵢ})) + 1/{C}",
        )
        .with("C", "figure-line-conductance", all)
    };
    step.with("S", "figure-pump-speed", system.speed)
        .with("p₀", "figure-ultimate-pressure", system.ultimate)
        .with("pᵢ", "figure-inlet-pressure", held_back.inlet_pressure)
        .from(SourceId::VacuumConductance)
        .gives("Sₑ", "figure-effective-speed", held_back.effective_speed)
}

/// The pressure at which the gauge stands still.
fn water_step(water: &WaterRemoval) -> Step {
    let boiling = &water.boiling;
    let source = match boiling.surface {
        Surface::Ice => SourceId::IapwsR14,
        Surface::Liquid => SourceId::IapwsR7,
    };
    let step = Step::of("step-water-stand", "{p} = pₛ({t})")
        .with("t", "figure-water-temperature", boiling.temperature)
        .from(source);
    let step = match boiling.depth {
        Some(_) => step
            .from(SourceId::WaterConductivity)
            .from(SourceId::AshraeFundamentals),
        None => step,
    };
    step.gives("p", "figure-vapour-pressure", boiling.pressure)
}

/// When the water is gone.
fn dry_step(system: &System, water: &WaterRemoval) -> Option<Step> {
    let boiling = &water.boiling;
    let step = Step::of(
        "step-water-gone",
        "{τ} = {V}·∫ dp₁/(Sₑ·p₁), p₁ the other gas, until {m} = {p}·{V}/(R·{t})·∫ dp₁/p₁",
    )
    .with("V", "figure-evacuated-volume", system.volume)
    .with("m", "figure-water-mass", water.mass)
    .with("p", "figure-vapour-pressure", boiling.pressure)
    .with("t", "figure-water-temperature", boiling.temperature);
    let is_assumed = system.water.is_some_and(|water| water.is_assumed);
    let step = if is_assumed {
        step.from(SourceId::DampSystem)
    } else {
        step
    };
    let time = boiling.dry_after?;
    Some(step.gives("τ", "figure-dry-after", time))
}

/// The time to the goal.
fn time_step(system: &System, goal: Goal) -> Step {
    let formula = "{τ} = {V}·∫ dp/(Sₑ·p), from {p₁} to {p₂}, and as long as water stands";
    Step::of("step-pump-down-time", formula)
        .with("V", "figure-evacuated-volume", system.volume)
        .with("p₁", "figure-starting-pressure", system.start)
        .with("p₂", "figure-target-pressure", goal.pressure)
        .from(SourceId::EvacuationTime)
        .gives("τ", "figure-pump-down-time", goal.time)
}

/// What the last break with nitrogen leaves of the first gas.
fn residual_step(evacuations: &[PlannedEvacuation]) -> Option<Step> {
    let mut latest = evacuations.iter().rev();
    let last = latest.next()?;
    let before = latest
        .next()
        .map_or(Ratio::of_one(1.0), |before| before.residual);
    let step = Step::of("step-residual", "{r} = {r₀}·{p₁}/{p₂}")
        .with("r₀", "figure-residual-before", before)
        .with("p₁", "figure-low-pressure", last.low_pressure)
        .with("p₂", "figure-break-pressure", last.break_pressure)
        .from(SourceId::VacuumPurging)
        .from(SourceId::EvacuationPractice);
    Some(step.gives("r", "figure-residual", last.residual))
}
