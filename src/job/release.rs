//! Release and charge: the valves, the pressure after release, what goes in by the scale.

use serde::Serialize;

use super::clock::Clock;
use super::document::Stage;
use super::evacuation::Evacuation;
use super::joint::JointKind;
use super::joint_state::{JointAssessment, JointState, JointStep};
use super::order::{OrderRule, Overrides};
use super::parts::Parts;
use super::paths::Paths;
use super::plan::Plan;
use super::pressure_test::PressureTest;
use super::stage::{Draft, OpenMatter};
use crate::calc::charge::ChargingState;
use crate::calc::saturation::{SaturationAnswer, SaturationInput, saturation};
use crate::calc::{Field, Judgement, Problems, Reading, Verdict, judge};
use crate::quantity::{
    Band, Entry, GaugePressure, Moment, PressureDifference, Quantity, Temperature,
    TemperatureDifference, Time,
};

/// The pressure after release against what the refrigerant has at the temperature around.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct AfterRelease {
    /// Temperature around the units.
    pub ambient_temperature: Temperature,
    /// How far the thermometer may be off.
    pub temperature_uncertainty: TemperatureDifference,
    /// What the gauge should show: dew at the coldest to bubble at the warmest that a unit which has stood in this
    /// air may have, 2 K and the thermometer's uncertainty either way.
    pub expected: Band<GaugePressure>,
    /// What it does show.
    pub pressure: Option<Judgement<GaugePressure, PressureDifference>>,
}

/// What must be shown before the valves are opened.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct BeforeRelease {
    /// The reading of the pressure hold that proves the circuit tight, if one does.
    pub tight_since: Option<Moment>,
    /// The reading of the vacuum hold with which it passes, if it does.
    pub dry_since: Option<Moment>,
    /// Joints that leak, are out of band or were not looked at under pressure; caps come after the release.
    pub joints_not_proven: usize,
    /// Whether the charge is more than a room allows.
    pub is_above_room_limit: bool,
}

impl BeforeRelease {
    fn of(before: &Before<'_>) -> Self {
        let is_unproven = |joint: &&JointAssessment| {
            joint.kind != JointKind::Cap
                && ![JointState::Proven, JointState::Removed].contains(&joint.state)
        };
        Self {
            tight_since: before.pressure_test.tight_since,
            dry_since: before.evacuation.dry_since,
            joints_not_proven: before.joints.iter().filter(is_unproven).count(),
            is_above_room_limit: before.plan.is_above_room_limit,
        }
    }
}

/// What release and charge come to.
pub(super) struct Release {
    pub before: BeforeRelease,
    pub after: Option<AfterRelease>,
}

/// Thermometer and gauge where none is entered. California Title 24 (2008), RA3.2.2.2: as in the check of the
/// running unit.
const USUAL: crate::calc::running::Accuracy = crate::calc::running::Accuracy::USUAL;

/// How much warmer or colder than the air beside it a unit may be that has stood. Common practice, no source.
const UNEVEN: TemperatureDifference = TemperatureDifference::kelvins(2.0);

const SATURATION: Paths = Paths {
    shared: &[
        ("refrigerant", "plate.refrigerant"),
        ("altitude", "altitude"),
        ("barometer", "barometer"),
        ("temperature", "release.ambientTemperature"),
    ],
    own: "release",
};

/// What the stages before have shown.
pub(super) struct Before<'a> {
    pub plan: &'a Plan,
    pub joints: &'a [JointAssessment],
    pub pressure_test: &'a PressureTest,
    pub evacuation: &'a Evacuation,
}

impl Release {
    pub fn draft(overrides: &Overrides) -> Draft<'_> {
        Draft::of(Stage::ReleaseAndCharge, overrides)
    }

    pub fn take(
        draft: &mut Draft<'_>,
        reading: &mut Reading,
        parts: &Parts<'_>,
        before: &Before<'_>,
        clock: &Clock,
    ) -> Self {
        let release = parts.release;
        let moment = |reading: &mut Reading, path: &str, entry| {
            reading.optional(Field::written(path.into()), entry)
        };
        let liquid = moment(
            reading,
            "release.liquidValveOpened",
            &release.liquid_valve_opened,
        );
        let gas = moment(reading, "release.gasValveOpened", &release.gas_valve_opened);
        reading.optional(
            Field::written("release.gaugePressure".into()),
            &release.gauge_pressure,
        );
        reading.optional(
            Field::written("release.ambientTemperature".into()),
            &release.ambient_temperature,
        );
        let opened = earlier(clock, liquid, gas);
        draft.begun(opened.is_some());
        let shown = BeforeRelease::of(before);
        order(draft, clock, &shown, (liquid, gas), opened);
        if liquid.is_none() || gas.is_none() {
            draft.open(OpenMatter::OpenValves);
        }
        let caps = before.joints.iter().filter(|joint| {
            joint.kind == JointKind::Cap
                && joint.state != JointState::Removed
                && joint.open.contains(&JointStep::LookForLeaks)
        });
        draft.open_count(OpenMatter::CapsToLookAt, caps.count());
        charging(draft, before.plan, opened.is_some());
        let after = match after(parts) {
            None => None,
            Some(Ok(after)) => Some(after),
            Some(Err(problems)) => {
                let problems = SATURATION.place(problems, &[]);
                reading.take_over(draft.missing(problems));
                None
            }
        };
        match after.as_ref().and_then(|after| after.pressure) {
            Some(pressure) => {
                draft.verdict(pressure.verdict);
                let uncertainty = pressure.uncertainty.si();
                draft.uncertain("fact-pressure-after-release", pressure.figure, uncertainty);
            }
            None => draft.open(OpenMatter::PressureAfterRelease),
        }
        Self {
            before: shown,
            after,
        }
    }
}

fn earlier(clock: &Clock, one: Option<Moment>, other: Option<Moment>) -> Option<Moment> {
    match (one, other) {
        (Some(one), Some(other)) if is_before(clock, other, one) => Some(other),
        (Some(one), _) => Some(one),
        (None, other) => other,
    }
}

fn is_before(clock: &Clock, one: Moment, other: Moment) -> bool {
    clock.between(one, other).time > Time::seconds(0.0)
}

/// What should have come before.
fn order(
    draft: &mut Draft<'_>,
    clock: &Clock,
    before: &BeforeRelease,
    (liquid, gas): (Option<Moment>, Option<Moment>),
    opened: Option<Moment>,
) {
    let Some(opened) = opened else { return };
    let was_shown =
        |shown: Option<Moment>| shown.is_some_and(|shown| !is_before(clock, opened, shown));
    draft.rule(
        OrderRule::ReleaseBeforeTight,
        !was_shown(before.tight_since),
    );
    draft.rule(OrderRule::ReleaseBeforeDry, !was_shown(before.dry_since));
    draft.rule(OrderRule::ReleaseBeforeLook, before.joints_not_proven > 0);
    draft.rule(OrderRule::ChargeAboveRoomLimit, before.is_above_room_limit);
    let gas_first = match (liquid, gas) {
        (Some(liquid), Some(gas)) => is_before(clock, gas, liquid),
        (None, Some(_)) => true,
        _ => false,
    };
    draft.rule(OrderRule::GasValveFirst, gas_first);
}

/// What goes in, and how far it is.
fn charging(draft: &mut Draft<'_>, plan: &Plan, is_released: bool) {
    let Some(answer) = &plan.charge else { return };
    let to_move = answer
        .charge
        .as_ref()
        .is_some_and(|charge| charge.to_add.si() > 0.0 || charge.to_take_out.si() > 0.0);
    let scale = answer.scale.as_ref();
    let state = scale.and_then(|scale| scale.state);
    if let Some(so_far) = scale.and_then(|scale| scale.charged_so_far) {
        let uncertainty = scale.map_or(0.0, |scale| scale.uncertainty.si());
        draft.begun(true);
        draft.uncertain("fact-charged-so-far", so_far, uncertainty);
    }
    match state {
        Some(ChargingState::Stop) => draft.verdict(Verdict::InBand),
        Some(ChargingState::TooMuch) => draft.verdict(Verdict::OutOfBand),
        Some(ChargingState::GoOn) => draft.open(OpenMatter::Charge),
        None if to_move => draft.open(OpenMatter::Charge),
        None => {}
    }
    let has_moved = scale.is_some_and(|scale| scale.charged_so_far.is_some_and(|so| so.si() > 0.0));
    // Valves that are shut keep the factory charge; what the scale lost is in the circuit all the same.
    draft.rule(
        OrderRule::ChargeAboveRoomLimit,
        has_moved && !is_released && plan.is_above_room_limit,
    );
}

/// The pressure after release, once the temperature around is entered.
fn after(parts: &Parts<'_>) -> Option<Result<AfterRelease, Problems>> {
    let Entry::Read(temperature) = parts.release.ambient_temperature else {
        return None;
    };
    let uncertainty = match parts.thermometer.uncertainty {
        Entry::Read(uncertainty) => uncertainty,
        _ => USUAL.thermometer,
    };
    let at = |temperature: Temperature| -> Result<SaturationAnswer, Problems> {
        saturation(&SaturationInput {
            refrigerant: parts.plate.refrigerant.clone(),
            temperature: temperature.into(),
            altitude: parts.job.altitude.clone(),
            barometer: parts.job.barometer.clone(),
            ..SaturationInput::default()
        })
    };
    let off = uncertainty + UNEVEN;
    let both = at(temperature - off).and_then(|cold| Ok((cold, at(temperature + off)?)));
    Some(both.map(|(cold, warm)| {
        let expected = Band::new(cold.dew_gauge_pressure, warm.bubble_gauge_pressure);
        let pressure = match parts.release.gauge_pressure {
            Entry::Read(pressure) => Some(judge(pressure, gauge(parts), expected)),
            _ => None,
        };
        AfterRelease {
            ambient_temperature: temperature,
            temperature_uncertainty: uncertainty,
            expected,
            pressure,
        }
    }))
}

fn gauge(parts: &Parts<'_>) -> PressureDifference {
    match parts.gauge.uncertainty {
        Entry::Read(uncertainty) => uncertainty,
        _ => USUAL.liquid_gauge,
    }
}
