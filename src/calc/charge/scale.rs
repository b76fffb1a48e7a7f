//! The cylinder on the scale: where to stop, what went in, what is left to go.

use serde::Serialize;

use super::super::problem::{Field, Misfit, Problem};
use super::super::reading::{Reading, filled};
use super::super::working::Step;
use super::ChargeNotice;
use super::sheet::{Sheet, any, largest, limited};
use super::total::ChargeTotal;
use crate::quantity::{Mass, choice};

choice! {
    /// Which way refrigerant goes on the scale.
    ScaleDirection {
        /// Out of the cylinder: its weight falls.
        OutOfCylinder = "out-of-cylinder",
        /// Into the cylinder, for the plate says to take some out of the circuit: its weight rises.
        IntoCylinder = "into-cylinder",
    }
}

choice! {
    /// How far charging is.
    ChargingState {
        /// More has to move.
        GoOn = "scale-go-on",
        /// Nearer to the mark than the scale can tell: stop.
        Stop = "scale-stop",
        /// More has moved than should have.
        TooMuch = "scale-too-much",
    }
}

/// The scale's part of the answer.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct ScaleAnswer {
    /// Which way refrigerant goes.
    pub direction: ScaleDirection,
    /// What has to move in all.
    pub target: Option<Mass>,
    /// The reading at which to close the valve, rounded to the scale's step towards moving less;
    /// absent if the cylinder does not hold enough.
    pub stop_mark: Option<Mass>,
    /// What has moved so far.
    pub charged_so_far: Option<Mass>,
    /// The target less that; negative if `state` is `scale-too-much`.
    pub remaining: Option<Mass>,
    /// How far a difference of two readings may be off.
    pub uncertainty: Mass,
    /// How far charging is.
    pub state: Option<ChargingState>,
    /// Refrigerant in the cylinder at the start, if its tare is known.
    pub in_cylinder: Option<Mass>,
    /// What the cylinder lacks: to be weighed in from another one.
    pub lacking: Mass,
}

/// How far one reading may be off if nothing is entered. Common practice, no source.
pub const USUAL_SCALE_UNCERTAINTY: Mass = Mass::grams(10.0);
/// Part of the amount to weigh from which on the scale's uncertainty is worth a word. Our own choice.
const COARSE: f64 = 0.1;

const NO_MASS: Mass = Mass::kilograms(0.0);
const HEAVIEST: Mass = Mass::kilograms(100_000.0);
const COARSEST_STEP: Mass = Mass::kilograms(1.0);
const WORST_UNCERTAINTY: Mass = Mass::kilograms(10.0);
/// Part of a step that two readings may miss a whole step by.
const EDGE: f64 = 1e-6;

/// What the scale itself can tell.
#[derive(Clone, Copy)]
pub(super) struct Scale {
    step: Mass,
    uncertainty: Mass,
}

impl Scale {
    pub fn read(sheet: &mut Sheet<'_>) -> Self {
        let input = sheet.input;
        let mut mass =
            |name, entry, most| limited(&mut sheet.reading, name, entry, false, (NO_MASS, most));
        let step = mass("scale_resolution", &input.scale_resolution, COARSEST_STEP);
        let uncertainty = &input.scale_uncertainty;
        let uncertainty = mass("scale_uncertainty", uncertainty, WORST_UNCERTAINTY);
        Self {
            step: step.unwrap_or(NO_MASS),
            uncertainty: uncertainty.unwrap_or(USUAL_SCALE_UNCERTAINTY),
        }
    }

    /// How far one reading may be off: the scale itself and half a step.
    pub fn of_a_reading(self) -> Mass {
        self.uncertainty + self.step / 2.0
    }

    /// A mark between `start` and what it is rounded from, at a whole step.
    fn rounded_towards(self, start: Mass, mark: Mass) -> Mass {
        if self.step <= NO_MASS {
            return mark;
        }
        let steps = mark / self.step;
        if start >= mark {
            let rounded = self.step * libm::ceil(steps - EDGE);
            if rounded > start { start } else { rounded }
        } else {
            largest(self.step * libm::floor(steps + EDGE), start)
        }
    }
}

/// The weights of the charging cylinder.
struct Weights {
    start: Mass,
    now: Option<Mass>,
    tare: Option<Mass>,
}

impl Weights {
    fn read(sheet: &mut Sheet<'_>, scale: Scale) -> Option<Self> {
        let (input, reading) = (sheet.input, &mut sheet.reading);
        let others = [filled!(input.cylinder_now), filled!(input.cylinder_tare)];
        let mut weight =
            |name, entry, needed| limited(reading, name, entry, needed, (NO_MASS, HEAVIEST));
        let start = weight("cylinder_start", &input.cylinder_start, any(&others));
        let now = weight("cylinder_now", &input.cylinder_now, false);
        let tare = weight("cylinder_tare", &input.cylinder_tare, false);
        let weights = Self {
            start: start?,
            now,
            tare,
        };
        let lightest = tare.map(|tare| tare - scale.of_a_reading());
        if lightest.is_some_and(|lightest| lightest > weights.start) {
            impossible(reading, "cylinder_tare", "cylinder_start");
        }
        if lightest
            .zip(now)
            .is_some_and(|(lightest, now)| lightest > now)
        {
            impossible(reading, "cylinder_tare", "cylinder_now");
        }
        Some(weights)
    }
}

fn impossible(reading: &mut Reading, field: &'static str, with: &'static str) {
    let with = Field::named(with);
    reading.problem(Problem::misfit(
        Field::named(field),
        Misfit::Impossible { with },
    ));
}

/// Where to stop and how far it is.
pub(super) fn scale(
    sheet: &mut Sheet<'_>,
    scale: Scale,
    charge: Option<&ChargeTotal>,
) -> Option<ScaleAnswer> {
    let weights = Weights::read(sheet, scale)?;
    let taken_out = charge.map(|charge| charge.to_take_out);
    let taken_out = taken_out.filter(|mass| *mass > NO_MASS);
    let (direction, sign) = match taken_out {
        Some(_) => (ScaleDirection::IntoCylinder, -1.0),
        None => (ScaleDirection::OutOfCylinder, 1.0),
    };
    let target = taken_out.or(charge.map(|charge| charge.to_add));
    let uncertainty = scale.of_a_reading() * 2.0;
    let start = weights.start;
    let moved = weights.now.map(|now| (start - now) * sign);
    if moved.is_some_and(|moved| moved < NO_MASS - uncertainty) {
        impossible(&mut sheet.reading, "cylinder_now", "cylinder_start");
    }
    let charged_so_far = moved.map(|moved| largest(moved, NO_MASS));
    let in_cylinder = weights.tare.map(|tare| largest(start - tare, NO_MASS));
    let lacking = match (direction, target) {
        (ScaleDirection::OutOfCylinder, Some(target)) => {
            largest(target - in_cylinder.unwrap_or(start), NO_MASS)
        }
        _ => NO_MASS,
    };
    let mark = target.filter(|_| lacking <= NO_MASS);
    let mark = mark.map(|target| start - target * sign);
    let remaining = target
        .zip(charged_so_far)
        .map(|(target, so_far)| target - so_far);
    if lacking > NO_MASS {
        sheet.notices.push(ChargeNotice::CylinderLacksRefrigerant);
    }
    if target.is_some_and(|target| target > NO_MASS && target * COARSE < uncertainty) {
        sheet.notices.push(ChargeNotice::ScaleTooCoarse);
    }
    let formulas = match direction {
        ScaleDirection::OutOfCylinder => ("{w} = {w₀} − {m}", "{c} = {w₀} − {wₙ}"),
        ScaleDirection::IntoCylinder => ("{w} = {w₀} + {m}", "{c} = {wₙ} − {w₀}"),
    };
    if let Some((target, mark)) = target.zip(mark) {
        sheet.working.push(
            Step::of("step-stop-mark", formulas.0)
                .with("w₀", "figure-cylinder-start", start)
                .with("m", "figure-to-weigh", target)
                .gives("w", "figure-stop-mark", mark),
        );
    }
    if let Some((now, moved)) = weights.now.zip(charged_so_far) {
        sheet.working.push(
            Step::of("step-charged-so-far", formulas.1)
                .with("w₀", "figure-cylinder-start", start)
                .with("wₙ", "figure-cylinder-now", now)
                .gives("c", "figure-charged-so-far", moved),
        );
    }
    Some(ScaleAnswer {
        direction,
        target,
        stop_mark: mark.map(|mark| scale.rounded_towards(start, mark)),
        charged_so_far,
        remaining,
        uncertainty,
        state: remaining.map(|remaining| state(remaining, uncertainty)),
        in_cylinder,
        lacking,
    })
}

fn state(remaining: Mass, uncertainty: Mass) -> ChargingState {
    if remaining > uncertainty {
        ChargingState::GoOn
    } else if remaining < NO_MASS - uncertainty {
        ChargingState::TooMuch
    } else {
        ChargingState::Stop
    }
}
