//! What a change to hoses, cores or pump would save.

use super::answer::{Change, LineChange};
use super::found::Goal;
use super::input::ValveCore;
use super::system::System;
use crate::physics::vacuum_flow::LENGTHS;
use crate::quantity::Length;

/// Bores of vacuum hoses of which the next larger one is weighed: 3/8, 1/2 and 3/4 in. Common practice, no source.
const USUAL_BORES: [Length; 3] = [
    Length::inches(0.375),
    Length::inches(0.5),
    Length::inches(0.75),
];
/// A bore is larger only if it is by a tenth: a hose of 9 mm is one of 3/8 in.
const LARGER: f64 = 1.1;
/// How many times as fast the larger pump is. Our own choice.
const FASTER: f64 = 2.0;
/// Part of the time that a change must save to be named. Our own choice.
const WORTH_NAMING: f64 = 0.01;

/// Every change that can be made and saves time to the goal, the best first.
pub(super) fn changes(system: &System, goal: Goal) -> Vec<Change> {
    let mut changes = Vec::with_capacity(LineChange::ALL.len());
    for change in LineChange::ALL {
        let weighed = weigh(system, *change, goal);
        let Some(weighed) = weighed.filter(|weighed| weighed.saved > goal.time * WORTH_NAMING)
        else {
            continue;
        };
        let is_slower = |other: &Change| other.time > weighed.time;
        let place = changes.iter().position(is_slower);
        changes.insert(place.unwrap_or(changes.len()), weighed);
    }
    changes
}

/// What a change saves, if it can be made.
fn weigh(system: &System, change: LineChange, goal: Goal) -> Option<Change> {
    let mut changed = system.clone();
    let (mut bore, mut pump_speed) = (None, None);
    match change {
        LineChange::CoresOut if !system.has_cores() => return None,
        LineChange::CoresOut => {
            for hose in &mut changed.hoses {
                hose.core = ValveCore::Out;
            }
        }
        LineChange::LargerHose => {
            let larger = larger_bore(system)?;
            bore = Some(larger);
            for hose in &mut changed.hoses {
                hose.bore = if hose.bore < larger {
                    larger
                } else {
                    hose.bore
                };
            }
        }
        LineChange::ShorterHose => {
            for hose in &mut changed.hoses {
                let half = hose.length / 2.0;
                hose.length = if half < LENGTHS.0 { LENGTHS.0 } else { half };
            }
        }
        LineChange::SecondHose => changed.hoses.first_mut()?.count += 1,
        LineChange::LargerPump => {
            changed.speed = system.speed * FASTER;
            pump_speed = Some(changed.speed);
        }
    }
    let time = changed.time_to(goal.pressure)?;
    Some(Change {
        change,
        bore,
        pump_speed,
        time,
        saved: goal.time - time,
    })
}

/// The next usual bore above that of the thinnest hose.
fn larger_bore(system: &System) -> Option<Length> {
    let bores = system.hoses.iter().map(|hose| hose.bore);
    let thinnest = bores.reduce(|thin, bore| if bore < thin { bore } else { thin })?;
    USUAL_BORES
        .into_iter()
        .find(|bore| *bore > thinnest * LARGER)
}
