//! What comes of a way of running once the lines are known.

use super::Lines;
use super::answer::{Duty, LineFlow};
use super::flow::{gas_flow, liquid_flow};
use super::impossible;
use super::oil_return::oil_return;
use super::running::{Running, Way};
use crate::calc::problem::{Field, Problem};
use crate::calc::saturation_point::from_equations;
use crate::calc::verdict::{Judgement, judge_at_least};
use crate::calc::working::{Step, Working};
use crate::physics::saturation::{self, Line};
use crate::physics::vapour::throttled;
use crate::quantity::factors::STANDARD_GRAVITY;
use crate::quantity::{Length, PressureDifference, Quantity, Ratio, TemperatureDifference};
use crate::tables::SourceId;
use crate::tables::refrigerants::Refrigerant;

/// How far friction may be off, relative. White, Fluid Mechanics, from memory: the chart of friction
/// factors holds within 15 %.
const FRICTION_UNCERTAINTY: f64 = 0.15;

/// What flows, line by line, and whether liquid, gas and oil arrive.
///
/// # Errors
/// A line too narrow for the flow, a climb too high for the pressure.
pub(super) fn duty(running: &Running, lines: &Lines) -> Result<Duty, Problem> {
    let refrigerant = lines.refrigerant;
    let liquid_line = liquid_flow(running, lines)?;
    let suction_line = gas_flow(running, lines)?;
    let mut working = vec![mass_flow_step(running, refrigerant)];
    let climb = lines.site.liquid_climb(running.way);
    let static_head = climb.map(|climb| static_head(running, climb, &mut working));
    let drop = liquid_line.as_ref().and_then(Drop::of);
    let flash_margin = match drop.zip(static_head) {
        Some((drop, head)) => flash_margin(running, refrigerant, drop, head, &mut working)?,
        None => None,
    };
    let oil = lines
        .suction
        .zip(suction_line.as_ref())
        .filter(|_| climb.is_some_and(|climb| climb < Length::metres(0.0)))
        .map(|(line, flow)| oil_return(running, lines.site, line, flow));
    let (oil_return, oil_step) = oil.unzip();
    working.extend(oil_step);
    let capacity_ratio = match suction_line.as_ref().and_then(Drop::of) {
        Some(drop) if running.way == Way::Cooling => {
            capacity_ratio(running, refrigerant, drop, &mut working)
        }
        _ => None,
    };
    Ok(Duty {
        capacity: running.capacity,
        effect: running.effect(),
        mass_flow: running.mass_flow,
        liquid_temperature: running.liquid.temperature,
        gas: running.gas,
        discharge_superheat: running.discharge_superheat,
        liquid_line,
        suction_line,
        static_head,
        flash_margin,
        oil_return,
        capacity_ratio,
        working,
    })
}

/// A drop by friction, as pressure and as kelvins.
#[derive(Clone, Copy)]
struct Drop {
    pressure: PressureDifference,
    shift: TemperatureDifference,
}

impl Drop {
    fn of(flow: &LineFlow) -> Option<Self> {
        Some(Self {
            pressure: flow.friction_drop?,
            shift: flow.saturation_drop?,
        })
    }
}

fn mass_flow_step(running: &Running, refrigerant: Refrigerant) -> Step {
    let step = Step::of("step-mass-flow", "{ṁ} = {Q} / ({h} − {h′})")
        .with("Q", "figure-capacity", running.capacity)
        .with("h", "figure-vapour-enthalpy", running.gas.enthalpy)
        .with("h′", "figure-liquid-enthalpy", running.liquid.enthalpy);
    let step = match running.discharge_superheat {
        Some(superheat) => step.from(superheat.source),
        None => step,
    };
    from_equations(step, refrigerant).gives("ṁ", "figure-mass-flow", running.mass_flow)
}

fn static_head(running: &Running, climb: Length, working: &mut Working) -> PressureDifference {
    let density = running.liquid.stream.fluid.density;
    let head = PressureDifference::pascals(density.si() * STANDARD_GRAVITY * climb.si());
    working.push(
        Step::of("step-static-head", "{Δpₕ} = {ρ}·g·{h}")
            .with("ρ", "figure-density", density)
            .with("h", "figure-climb", climb)
            .gives("Δpₕ", "figure-static-head", head),
    );
    head
}

fn flash_margin(
    running: &Running,
    refrigerant: Refrigerant,
    drop: Drop,
    head: PressureDifference,
    working: &mut Working,
) -> Result<Option<Judgement<TemperatureDifference, TemperatureDifference>>, Problem> {
    let liquid = &running.liquid;
    let pressure = liquid.stream.pressure - drop.pressure - head;
    if pressure.si() <= 0.0 {
        let lift = Field::named("lift");
        return Err(impossible(lift, running.way, "condensing_temperature"));
    }
    let Ok(bubble) = saturation::temperature(refrigerant, Line::Bubble, pressure) else {
        return Ok(None);
    };
    let left = bubble - liquid.temperature;
    let data = refrigerant.saturation_uncertainty();
    let friction = drop.shift * FRICTION_UNCERTAINTY;
    let data_error = data.figure.temperature.si();
    let uncertainty = (data_error * data_error + friction.si() * friction.si()).sqrt();
    let step = Step::of("step-flash-margin", "{Δt} = t′({p} − {Δp} − {Δpₕ}) − {t}")
        .with("p", "figure-absolute-pressure", liquid.stream.pressure)
        .with("Δp", "figure-pressure-drop", drop.pressure)
        .with("Δpₕ", "figure-static-head", head)
        .with("t", "figure-liquid-temperature", liquid.temperature)
        .from(data.source)
        .from(SourceId::FrictionUncertainty);
    working.push(step.gives("Δt", "figure-subcooling-left", left));
    let uncertainty = TemperatureDifference::kelvins(uncertainty);
    let none = TemperatureDifference::kelvins(0.0);
    Ok(Some(judge_at_least(left, uncertainty, none)))
}

/// Density of the gas at the compressor over that without a drop, if the data reach it.
fn capacity_ratio(
    running: &Running,
    refrigerant: Refrigerant,
    drop: Drop,
    working: &mut Working,
) -> Option<Ratio> {
    let gas = &running.gas;
    let inlet = throttled(refrigerant, gas, gas.pressure - drop.pressure).ok()?;
    let ratio = Ratio::of_one(inlet.density / gas.density);
    let step = Step::of("step-capacity-ratio", "{r} = {ρ₂} / {ρ₁}")
        .with("ρ₂", "figure-inlet-density", inlet.density)
        .with("ρ₁", "figure-outlet-density", gas.density);
    working.push(from_equations(step, refrigerant).gives("r", "figure-capacity-ratio", ratio));
    Some(ratio)
}
