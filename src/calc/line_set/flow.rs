//! Flow of one phase through one of the lines.

use super::Lines;
use super::answer::LineFlow;
use super::impossible;
use super::line::Line;
use super::running::{Running, Way};
use crate::calc::pipe_friction::steps;
use crate::calc::problem::{Field, Problem};
use crate::calc::verdict::judge;
use crate::calc::working::Step;
use crate::physics::pipe_flow::{self, Flow, Fluid};
use crate::physics::saturation;
use crate::quantity::{
    AbsolutePressure, Band, MassFlow, PressureDifference, Quantity, TemperatureDifference, Velocity,
};
use crate::tables::SourceId;
use crate::tables::refrigerants::Refrigerant;

/// Velocity of suction gas that is recommended. ASHRAE Handbook, Refrigeration (2010), chapter 1, table 1.
const SUCTION_VELOCITIES: Band<Velocity> = Band {
    low: Velocity::metres_per_second(4.5),
    high: Velocity::metres_per_second(20.0),
};
/// How far a velocity may be off, relative: capacities are rated within 5 % (common practice, no source).
const VELOCITY_UNCERTAINTY: f64 = 0.05;

/// Part of its pressure that a gas may lose by friction for the formula to hold at all; up to a tenth
/// it holds within 5 %. From memory of handbooks of pipe flow.
const MOST_DROP: f64 = 0.4;

/// What flows: its state, and what the drop does to its saturation temperature.
pub(super) struct Stream {
    pub fluid: Fluid,
    /// Pressure at the condenser or the evaporator, from which the drop counts.
    pub pressure: AbsolutePressure,
    /// Line on which the drop is told in kelvins.
    pub line: saturation::Line,
    /// Whether that is the end of the line, before which the pressure is higher by the drop.
    pub is_known_at_the_end: bool,
}

impl Stream {
    /// Whether friction may take so much of the pressure: of a gas up to what the formula holds for.
    fn allows(&self, drop: PressureDifference) -> bool {
        let most = match self.line {
            saturation::Line::Bubble => 1.0,
            saturation::Line::Dew => MOST_DROP,
        };
        drop.si() < most * self.pressure.si()
    }

    /// The shift of the saturation temperature between the line's ends, if the data reach both.
    fn shift(
        &self,
        refrigerant: Refrigerant,
        drop: PressureDifference,
    ) -> Option<TemperatureDifference> {
        let (before, after) = if self.is_known_at_the_end {
            (self.pressure + drop, self.pressure)
        } else {
            (self.pressure, self.pressure - drop)
        };
        let temperature = |pressure| saturation::temperature(refrigerant, self.line, pressure).ok();
        Some(temperature(before)? - temperature(after)?)
    }

    fn shift_step(&self, drop: PressureDifference, shift: TemperatureDifference) -> Step {
        let formula = if self.is_known_at_the_end {
            "{Δt} = t({p} + {Δp}) − t({p})"
        } else {
            "{Δt} = t({p}) − t({p} − {Δp})"
        };
        Step::of("step-saturation-drop", formula)
            .with("p", "figure-absolute-pressure", self.pressure)
            .with("Δp", "figure-pressure-drop", drop)
            .gives("Δt", "figure-saturation-drop", shift)
    }
}

/// Flow of the liquid, if its line is known.
pub(super) fn liquid_flow(running: &Running, lines: &Lines) -> Result<Option<LineFlow>, Problem> {
    let stream = &running.liquid.stream;
    through(
        running,
        lines.refrigerant,
        ("liquid_line", lines.liquid),
        stream,
    )
}

/// Flow of the gas, if its line is known. Discharge gas is not judged by a recommendation: in a line that is
/// wide enough for suction it is slow.
pub(super) fn gas_flow(running: &Running, lines: &Lines) -> Result<Option<LineFlow>, Problem> {
    let stream = &running.gas_stream;
    let line = ("suction_line", lines.suction);
    let mut flow = through(running, lines.refrigerant, line, stream)?;
    if let Some(flow) = flow.as_mut().filter(|_| running.way == Way::Cooling) {
        let uncertainty = flow.velocity * VELOCITY_UNCERTAINTY;
        let judgement = judge(flow.velocity, uncertainty, SUCTION_VELOCITIES);
        flow.recommended_velocity = Some(judgement);
        if let Some(velocity_step) = flow.working.first_mut() {
            velocity_step.sources.push(SourceId::GasVelocities);
        }
    }
    Ok(flow)
}

fn through(
    running: &Running,
    refrigerant: Refrigerant,
    (name, line): (&'static str, Option<&Line>),
    stream: &Stream,
) -> Result<Option<LineFlow>, Problem> {
    let Some(line) = line else {
        return Ok(None);
    };
    let too_narrow = || {
        let width = Field::named(name).with(&line.width_field());
        impossible(width, running.way, "capacity")
    };
    let found = moved(running.mass_flow, line, stream).ok_or_else(too_narrow)?;
    let whole = line.equivalent_length();
    let mut working = vec![velocity_step(running.mass_flow, line, stream.fluid, &found)];
    working.extend(steps(line.tube(), stream.fluid, &found, whole));
    let friction_drop = whole.map(|_| found.pressure_drop);
    let shift = friction_drop.and_then(|drop| Some((drop, stream.shift(refrigerant, drop)?)));
    working.extend(shift.map(|(drop, shift)| stream.shift_step(drop, shift)));
    Ok(Some(LineFlow {
        density: stream.fluid.density,
        viscosity: stream.fluid.viscosity,
        velocity: found.velocity,
        recommended_velocity: None,
        reynolds: found.reynolds,
        regime: found.friction.regime,
        friction_drop,
        saturation_drop: shift.map(|(_, shift)| shift),
        working,
    }))
}

/// The flow, unless friction, or momentum as at the speed of sound, would take more than the pressure allows.
fn moved(mass_flow: MassFlow, line: &Line, stream: &Stream) -> Option<Flow> {
    let length = line.equivalent_length().unwrap_or(pipe_flow::LENGTHS.0);
    let found = pipe_flow::flow(mass_flow, line.tube(), length, stream.fluid).ok()?;
    let velocity = found.velocity.si();
    let momentum = stream.fluid.density.si() * velocity * velocity;
    (momentum < stream.pressure.si() && stream.allows(found.pressure_drop)).then_some(found)
}

fn velocity_step(mass_flow: MassFlow, line: &Line, fluid: Fluid, found: &Flow) -> Step {
    Step::of("step-velocity", "{v} = {ṁ} / ({ρ}·π/4·{d}²)")
        .with("ṁ", "figure-mass-flow", mass_flow)
        .with("ρ", "figure-density", fluid.density)
        .with("d", "figure-bore", line.tube().diameter)
        .gives("v", "figure-velocity", found.velocity)
}
