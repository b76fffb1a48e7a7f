//! The plan: is enough known, does the charge suit the room, do the lines keep to the plate's limits?

use serde::Serialize;

use super::document::{JobAccessoryInput, JobLineInput, Stage};
use super::order::Overrides;
use super::parts::Parts;
use super::paths::Paths;
use super::stage::{Draft, OpenMatter};
use crate::calc::charge::{ChargeAnswer, ChargeInput, charge};
use crate::calc::room_limit::{OccupiedRoomInput, RoomLimitAnswer, RoomLimitInput, room_limit};
use crate::calc::tube::{TubeInput, tube};
use crate::calc::{Field, Judgement, Reading, Verdict, judge_at_most};
use crate::quantity::{Entry, GaugePressure, Length, PressureDifference, Temperature};

/// How the lines keep to what the plate allows; absent where the plate or the line is not entered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct PlanLimits {
    /// Length against the longest allowed.
    pub length: Option<Judgement<Length, Length>>,
    /// Lift against the largest allowed.
    pub lift: Option<Judgement<Length, Length>>,
    /// What the tube of the liquid line bears, against the design pressure.
    pub liquid_line: Option<Judgement<GaugePressure, PressureDifference>>,
    /// What the tube of the gas line bears, against the design pressure.
    pub gas_line: Option<Judgement<GaugePressure, PressureDifference>>,
}

/// What the plan comes to.
pub(super) struct Plan {
    pub charge: Option<ChargeAnswer>,
    pub room_limit: Option<RoomLimitAnswer>,
    pub limits: PlanLimits,
    /// Whether the charge is more than a room allows.
    pub is_above_room_limit: bool,
}

const CHARGE: Paths = Paths {
    shared: &[
        ("refrigerant", "plate.refrigerant"),
        ("plateCharge", "plate.plateCharge"),
        ("prechargedLength", "plate.prechargedLength"),
        ("plateAdder", "plate.plateAdder"),
        ("plateReduction", "plate.plateReduction"),
        ("arrives", "plate.arrives"),
        ("length", "lines.length"),
        ("accessories", "lines.accessories"),
        ("liquidTube", "lines.liquidLine.tube"),
        ("vapourTube", "lines.gasLine.tube"),
        ("scaleResolution", "instruments.scale.resolution"),
        ("scaleUncertainty", "instruments.scale.uncertainty"),
    ],
    own: "release.charge",
};

const ROOM: Paths = Paths {
    shared: &[
        ("refrigerant", "plate.refrigerant"),
        ("charge", "plate.plateCharge"),
        ("chargeUncertainty", "instruments.scale.uncertainty"),
        ("rooms", "rooms"),
        ("rule", "roomRule"),
    ],
    own: "rooms",
};

const LIQUID_TUBE: Paths = Paths {
    shared: &[
        ("designPressure", "plate.designPressure"),
        ("series", "lines.liquidLine.tubeSeries"),
    ],
    own: "lines.liquidLine",
};

const GAS_TUBE: Paths = Paths {
    shared: &[
        ("designPressure", "plate.designPressure"),
        ("series", "lines.gasLine.tubeSeries"),
    ],
    own: "lines.gasLine",
};

/// Metal temperature at which the tubes' rating is compared with the design pressure, as in the calculation
/// of the line set: 150 °F.
const TUBE_TEMPERATURE: Temperature = Temperature::fahrenheit(150.0);

/// Fields without which nothing can be planned.
fn needed(parts: &Parts<'_>) -> [(&'static str, bool); 5] {
    [
        ("plate.refrigerant", is_absent(&parts.plate.refrigerant)),
        ("plate.plateCharge", is_absent(&parts.plate.plate_charge)),
        ("lines.liquidLine.tube", is_absent(&parts.liquid_line.tube)),
        ("lines.gasLine.tube", is_absent(&parts.gas_line.tube)),
        ("lines.length", is_absent(&parts.lines.length)),
    ]
}

fn is_absent<T>(entry: &Entry<T>) -> bool {
    matches!(entry, Entry::Absent)
}

impl Plan {
    pub fn take(draft: &mut Draft<'_>, reading: &mut Reading, parts: &Parts<'_>) -> Self {
        for (field, is_open) in needed(parts) {
            draft.begun(!is_open);
            if is_open {
                draft.open_field(Field::written(field.into()));
            }
        }
        let charge = charge_of(draft, reading, parts);
        let room_limit = room_limit_of(draft, reading, parts, charge.as_ref());
        let (lines, plate) = (parts.lines, parts.plate);
        let limits = PlanLimits {
            length: run(
                draft,
                reading,
                "fact-length",
                ("lines.length", &lines.length),
                ("plate.longestLength", &plate.longest_length),
            ),
            lift: run(
                draft,
                reading,
                "fact-lift",
                ("lines.lift", &lines.lift),
                ("plate.longestLift", &plate.longest_lift),
            ),
            liquid_line: rating(draft, reading, parts, (parts.liquid_line, &LIQUID_TUBE)),
            gas_line: rating(draft, reading, parts, (parts.gas_line, &GAS_TUBE)),
        };
        let of_room = room_limit.as_ref().and_then(|limit| limit.charge);
        Self {
            charge,
            is_above_room_limit: of_room.is_some_and(|of| of.verdict == Verdict::OutOfBand),
            room_limit,
            limits,
        }
    }

    pub fn draft(overrides: &Overrides) -> Draft<'_> {
        Draft::of(Stage::Plan, overrides)
    }
}

fn charge_of(
    draft: &mut Draft<'_>,
    reading: &mut Reading,
    parts: &Parts<'_>,
) -> Option<ChargeAnswer> {
    let accessories = parts.lines.accessories.items().iter();
    let accessories: Vec<_> = accessories.map(JobAccessoryInput::as_asked).collect();
    let answer = charge(&ChargeInput {
        refrigerant: parts.plate.refrigerant.clone(),
        plate_charge: parts.plate.plate_charge.clone(),
        precharged_length: parts.plate.precharged_length.clone(),
        length: parts.lines.length.clone(),
        plate_adder: parts.plate.plate_adder.clone(),
        plate_reduction: parts.plate.plate_reduction.clone(),
        arrives: parts.plate.arrives.clone(),
        accessories: accessories.into(),
        liquid_tube: parts.liquid_line.tube.clone(),
        vapour_tube: parts.gas_line.tube.clone(),
        scale_resolution: parts.scale.resolution.clone(),
        scale_uncertainty: parts.scale.uncertainty.clone(),
        ..parts.charge.clone()
    });
    match answer {
        Ok(answer) => {
            if let Some(total) = answer.charge.as_ref().and_then(|charge| charge.total) {
                draft.fact("fact-total-charge", total);
            }
            Some(answer)
        }
        Err(problems) => {
            reading.take_over(draft.missing(CHARGE.place(problems, &[])));
            None
        }
    }
}

fn room_limit_of(
    draft: &mut Draft<'_>,
    reading: &mut Reading,
    parts: &Parts<'_>,
    charge: Option<&ChargeAnswer>,
) -> Option<RoomLimitAnswer> {
    let rooms: Vec<OccupiedRoomInput> = parts
        .job
        .rooms
        .items()
        .iter()
        .map(|room| OccupiedRoomInput {
            name: room.name.clone(),
            area: room.area.clone(),
            height: room.height.clone(),
            mounting: room.mounting.clone(),
            release_height: room.release_height.clone(),
        })
        .collect();
    if rooms.is_empty() {
        draft.open(OpenMatter::Room);
        return None;
    }
    let total = charge.and_then(|charge| charge.charge.as_ref()?.total)?;
    let answer = room_limit(&RoomLimitInput {
        refrigerant: parts.plate.refrigerant.clone(),
        rule: parts.job.room_rule.clone(),
        charge: total.into(),
        charge_uncertainty: parts.scale.uncertainty.clone(),
        rooms: rooms.into(),
        ..RoomLimitInput::default()
    });
    match answer {
        Ok(answer) => {
            if let Some(largest) = answer.largest_charge {
                draft.fact("fact-largest-charge", largest);
            }
            if let Some(of_room) = answer.charge {
                draft.verdict(of_room.verdict);
            }
            Some(answer)
        }
        Err(problems) => {
            reading.take_over(draft.missing(ROOM.place(problems, &[])));
            None
        }
    }
}

/// A length of the lines, against the plate's limit of it, each with its place in the document.
fn run(
    draft: &mut Draft<'_>,
    reading: &mut Reading,
    meaning: &'static str,
    (path, length): (&'static str, &Entry<Length>),
    (limit_path, limit): (&'static str, &Entry<Length>),
) -> Option<Judgement<Length, Length>> {
    let length = reading.optional(Field::written(path.into()), length);
    let limit = reading.optional(Field::written(limit_path.into()), limit);
    let length = length?;
    draft.fact(meaning, length);
    let judged = judge_at_most(length, Length::metres(0.0), limit?);
    draft.verdict(judged.verdict);
    Some(judged)
}

/// What the tube of a line bears, against the design pressure.
fn rating(
    draft: &mut Draft<'_>,
    reading: &mut Reading,
    parts: &Parts<'_>,
    (line, paths): (&JobLineInput, &Paths),
) -> Option<Judgement<GaugePressure, PressureDifference>> {
    if is_absent(&parts.plate.design_pressure) || is_absent(&line.tube) {
        return None;
    }
    let answer = tube(&TubeInput {
        tube: line.tube.clone(),
        series: line.tube_series.clone(),
        wall: line.wall.clone(),
        temperature: TUBE_TEMPERATURE.into(),
        design_pressure: parts.plate.design_pressure.clone(),
        ..TubeInput::default()
    });
    match answer {
        Ok(answer) => {
            let against = answer.rating?.against_design_pressure?;
            draft.verdict(against.verdict);
            Some(against)
        }
        Err(problems) => {
            reading.take_over(draft.missing(paths.place(problems, &[])));
            None
        }
    }
}
