//! What a system's evacuation comes to.

use super::answer::{
    Boiling, CurvePoint, HeldBack, IceRisk, LinePart, Milestone, PartShare, PlannedEvacuation,
    PumpDownAnswer, PumpDownNotice, WaterRemoval,
};
use super::changes::changes;
use super::input::{PumpDownInput, ValveCore};
use super::plan::{Break, plan, whole_time};
use super::steps::{Told, working};
use super::system::{System, Water};
use crate::physics::evacuation::{Evacuation, boiling};
use crate::physics::vacuum_line::VacuumLine;
use crate::physics::water::{Surface, saturation_pressure, surface};
use crate::quantity::{AbsolutePressure, Length, Mass, Power, Ratio, Time};

/// Depth of drops that stand for water of which no depth was entered. Common practice, no source.
const DROPS: Length = Length::millimetres(3.0);
/// Steps of the curve to draw.
const CURVE_STEPS: u16 = 24;
/// Bores that a tube must be long for its conductance to be that of a long tube.
const LEAST_BORES: f64 = 10.0;

/// A system with its line, whose evacuation can be reckoned.
pub(super) struct Found<'system> {
    pub system: &'system System,
    pub line: &'system VacuumLine,
    pub evacuation: Evacuation<'system>,
}

impl Found<'_> {
    /// The whole answer.
    pub fn answer(
        &self,
        input: &PumpDownInput,
        targets: &[AbsolutePressure],
        breaks: &[Break],
        share_pressure: Option<AbsolutePressure>,
    ) -> PumpDownAnswer {
        let system = self.system;
        let milestones: Vec<_> = targets
            .iter()
            .map(|pressure| Milestone {
                pressure: *pressure,
                time: self.evacuation.time_to(*pressure),
            })
            .collect();
        let goal = goal(&milestones, system.start);
        let at = share_pressure.or(goal.map(|goal| goal.pressure));
        let held_back = self.held_back(at.unwrap_or(system.start));
        let water = system.water.map(|water| self.water(water));
        let evacuations = plan(system, &self.evacuation, self.line, breaks);
        let changes = goal.map_or_else(Vec::new, |goal| changes(system, goal));
        PumpDownAnswer {
            ambient: system.air,
            starting_pressure: system.start,
            volume: system.volume,
            limit_pressure: system.ultimate,
            notices: self.notices(&milestones, water.as_ref(), &evacuations),
            working: working(&Told {
                input,
                system,
                line: self.line,
                held_back: &held_back,
                goal,
                water: water.as_ref(),
                evacuations: &evacuations,
            }),
            early_turbulence: goal.and_then(|goal| self.early_turbulence(goal)),
            curve: goal.map_or_else(Vec::new, |goal| self.curve(goal)),
            milestones,
            water,
            held_back,
            goal: goal.map(|goal| goal.pressure),
            best_change: changes.first().map(|best| best.change),
            changes,
            evacuations_time: whole_time(&evacuations),
            evacuations,
        }
    }

    fn curve(&self, goal: Goal) -> Vec<CurvePoint> {
        let course = self.evacuation.course(goal.pressure, CURVE_STEPS);
        let point = |(time, pressure)| CurvePoint { time, pressure };
        course.into_iter().map(point).collect()
    }

    /// By how much turbulent flow would delay a dry system's way to the goal.
    fn early_turbulence(&self, goal: Goal) -> Option<Time> {
        let turbulent = VacuumLine {
            turbulent: true,
            ..self.line.clone()
        };
        let time = |line| {
            let evacuation = Evacuation::new(line, self.system.volume, self.system.start, None);
            evacuation.ok()?.time_to(goal.pressure)
        };
        let hoses = &self.system.hoses;
        (!hoses.is_empty()).then_some(time(&turbulent)? - time(self.line)?)
    }

    fn held_back(&self, pressure: AbsolutePressure) -> HeldBack {
        let flow = self.line.flow(pressure);
        let pump = flow.inlet.in_pascals() / pressure.in_pascals();
        let mut parts = vec![PartShare {
            part: LinePart::Pump,
            hose: None,
            share: Ratio::of_one(pump),
        }];
        for ((number, path), hoses) in (1..).zip(&flow.paths).zip(&self.system.hoses) {
            let share = (1.0 - pump) * path.throughput_part;
            let mut add = |part, part_of_path| {
                parts.push(PartShare {
                    part,
                    hose: Some(number),
                    share: Ratio::of_one(share * part_of_path),
                });
            };
            add(LinePart::Hose, 1.0 - path.narrow_part);
            if hoses.core == ValveCore::In {
                add(LinePart::Core, path.narrow_part);
            }
        }
        HeldBack {
            pressure,
            inlet_pressure: flow.inlet,
            effective_speed: flow.effective_speed,
            speed_part: Ratio::of_one(flow.effective_speed / self.system.speed),
            parts,
        }
    }

    fn water(&self, water: Water) -> WaterRemoval {
        let boiling = self.boiling(water.mass, water.depth);
        let in_drops = water
            .depth
            .is_none()
            .then(|| self.boiling(water.mass, Some(DROPS)));
        let is_ice = |boiling: &Boiling| boiling.surface == Surface::Ice;
        let ice = if is_ice(&boiling) {
            IceRisk::Forms
        } else if in_drops.as_ref().is_some_and(is_ice) {
            IceRisk::Possible
        } else {
            IceRisk::NoIce
        };
        WaterRemoval {
            mass: water.mass,
            boiling,
            in_drops,
            ice,
        }
    }

    fn boiling(&self, mass: Mass, depth: Option<Length>) -> Boiling {
        let system = self.system;
        let temperature = system.water_temperature(self.line, mass, depth);
        let heat = boiling(self.line, temperature).map(|(_, heat)| heat);
        let pressure = saturation_pressure(temperature).unwrap_or(system.ultimate);
        let water = Some((mass, temperature));
        let evacuation = Evacuation::new(self.line, system.volume, system.start, water);
        Boiling {
            depth,
            temperature,
            pressure,
            surface: surface(pressure),
            heat: heat.unwrap_or(Power::watts(0.0)),
            dry_after: evacuation
                .ok()
                .and_then(|evacuation| evacuation.dry_after()),
        }
    }

    fn notices(
        &self,
        milestones: &[Milestone],
        water: Option<&WaterRemoval>,
        evacuations: &[PlannedEvacuation],
    ) -> Vec<PumpDownNotice> {
        let system = self.system;
        let hoses = &system.hoses;
        let first = evacuations.first().map(|first| first.time);
        let dry_after = water.map(|water| water.boiling.dry_after);
        let stays = dry_after == Some(None);
        let at_break = match (dry_after, first) {
            (Some(Some(dry)), Some(Some(first))) => first < dry,
            (Some(None), _) => true,
            _ => false,
        };
        let noticed = [
            (hoses.is_empty(), PumpDownNotice::NoHose),
            (
                hoses
                    .iter()
                    .any(|hose| hose.length < hose.bore * LEAST_BORES),
                PumpDownNotice::ShortHose,
            ),
            (system.has_cores(), PumpDownNotice::CoreAssumed),
            (
                milestones.iter().any(|milestone| milestone.time.is_none()),
                PumpDownNotice::TargetBelowUltimate,
            ),
            (stays, PumpDownNotice::WaterStays),
            (
                water.is_some() && !hoses.is_empty(),
                PumpDownNotice::VapourAsAir,
            ),
            (at_break, PumpDownNotice::WaterAtBreak),
            (!hoses.is_empty(), PumpDownNotice::LaminarAssumed),
            (true, PumpDownNotice::TightSystemAssumed),
        ];
        let noticed = noticed.into_iter().filter(|(holds, _)| *holds);
        noticed.map(|(_, notice)| notice).collect()
    }
}

/// A target that is reached, and when.
#[derive(Clone, Copy)]
pub(super) struct Goal {
    pub pressure: AbsolutePressure,
    pub time: Time,
}

/// The lowest target that is reached and that the system is not below already.
fn goal(milestones: &[Milestone], start: AbsolutePressure) -> Option<Goal> {
    let reached = milestones.iter().filter_map(|milestone| {
        let pressure = milestone.pressure;
        let time = milestone.time?;
        (pressure < start).then_some(Goal { pressure, time })
    });
    reached.reduce(|lowest, other| {
        if other.pressure < lowest.pressure {
            other
        } else {
            lowest
        }
    })
}
