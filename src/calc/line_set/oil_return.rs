//! Oil that gas must carry up a riser.

use super::answer::{LineFlow, OilReturn};
use super::line::Line;
use super::running::Running;
use super::{Site, USUAL_OIL_DENSITY};
use crate::calc::verdict::{Judgement, judge_at_least};
use crate::calc::working::Step;
use crate::quantity::factors::STANDARD_GRAVITY;
use crate::quantity::{Quantity, Velocity};
use crate::tables::SourceId;
use crate::tables::refrigerants::Sourced;

/// Factor of the flooding form: 0.85², from memory of Jacobs and others (1976).
const FLOODING: f64 = 0.723;
/// How far the least velocity may be off, relative: our estimate, no source. Oils and what is dissolved in
/// them differ.
const UNCERTAINTY: f64 = 0.2;

/// Whether gas with this flow carries oil up the line, with the step that finds it.
pub(super) fn oil_return(
    running: &Running,
    site: &Site,
    line: &Line,
    flow: &LineFlow,
) -> (OilReturn, Step) {
    let oil_density = Sourced::entered_or(site.oil_density, USUAL_OIL_DENSITY);
    let bore = line.tube().diameter;
    let heavier = (oil_density.figure - flow.density) / flow.density;
    let least = FLOODING * (STANDARD_GRAVITY * bore.si() * heavier).sqrt();
    let least_velocity = Velocity::metres_per_second(least);
    let part = least_velocity / flow.velocity;
    let judged = |velocity| -> Judgement<Velocity, Velocity> {
        judge_at_least(velocity, least_velocity * UNCERTAINTY, least_velocity)
    };
    let step = Step::of("step-oil-return", "{v} = 0.723·√(g·{d}·({ρₒ} − {ρ})/{ρ})")
        .with("d", "figure-bore", bore)
        .with("ρₒ", "figure-oil-density", oil_density.figure)
        .with("ρ", "figure-density", flow.density)
        .from(SourceId::OilRiser)
        .from(oil_density.source)
        .gives("v", "figure-least-velocity", least_velocity);
    let found = OilReturn {
        least_velocity,
        least_mass_flow: running.mass_flow * part,
        least_capacity: running.capacity * part,
        at_full_capacity: judged(flow.velocity),
        at_least_capacity: site
            .least_capacity
            .map(|least| judged(flow.velocity * least.in_one())),
        oil_density,
    };
    (found, step)
}
