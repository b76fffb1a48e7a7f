//! How a joint stands: its cone, its torque, the look for leaks.

use serde::Serialize;

use super::document::Stage;
use super::instruments::WrenchInput;
use super::joint::{Joint, JointInput, JointKind, JointLine, JointOrder, JointPlace, LeakLook};
use super::order::Overrides;
use super::parts::Parts;
use super::stage::{Draft, OpenMatter};
use crate::calc::flare::{FlareInput, MeasuredCone, flare};
use crate::calc::torque::{TorqueInput, torque};
use crate::calc::{Field, Input, Judgement, Problem, Problems, Reading, Verdict, judge, optional};
use crate::quantity::{Band, Entry, Length, Moment, Torque, choice};
use crate::tables::refrigerants::Refrigerant;

choice! {
    /// How far a joint has come.
    JointState {
        /// Nothing is done.
        Open = "open",
        /// Flared, or brazed.
        Made = "made",
        /// Tightened.
        Tightened = "tightened",
        /// Looked at under pressure: no leak.
        Proven = "proven",
        /// It leaks.
        Leaking = "leaking",
        /// Its cone or its torque is out of band.
        OutOfBand = "out-of-band",
        /// Taken out of the list.
        Removed = "removed",
    }
}

choice! {
    /// What is still to be done at a joint.
    JointStep {
        /// Flare, or braze.
        Make = "make",
        /// Measure the cone.
        MeasureCone = "measure-cone",
        /// Put oil on.
        Oil = "oil",
        /// Tighten.
        Tighten = "tighten",
        /// Look for leaks.
        LookForLeaks = "look-for-leaks",
        /// Make it anew.
        Remake = "remake",
    }
}

/// A joint as it stands.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct JointAssessment {
    /// Its id.
    pub id: String,
    /// Its number in the order of work, from 1; those taken out have none.
    pub number: Option<usize>,
    /// A name of its own.
    pub name: Option<String>,
    /// The line.
    pub line: JointLine,
    /// Where it is.
    pub place: JointPlace,
    /// Which of several there, from 1.
    pub count: Option<usize>,
    /// How it is made.
    pub kind: JointKind,
    /// Outside diameter of its tube.
    pub tube: Option<Length>,
    /// What to enter as its order to do it one joint earlier.
    pub earlier: Option<JointOrder>,
    /// What to enter as its order to do it one joint later.
    pub later: Option<JointOrder>,
    /// What to enter as the order of a joint that is to come right after it; the last one needs none.
    pub after: Option<JointOrder>,
    /// Band of its cone.
    pub cone: Option<Band<Length>>,
    /// Its nut across flats.
    pub nut_across_flats: Option<Length>,
    /// Its cone as measured.
    pub measured_cone: Option<MeasuredCone>,
    /// Band of its torque, at the nut.
    pub torque: Option<Band<Torque>>,
    /// What to aim at, at the nut.
    pub aim: Option<Torque>,
    /// Whether the offset adapter is on the wrench: as recorded, else if there is one.
    pub with_adapter: bool,
    /// What to set on the wrench: with the adapter if it is on; absent as long as its lever cannot be told.
    pub setting: Option<Torque>,
    /// Its torque at the nut, with the wrench's uncertainty.
    pub tightened: Option<Judgement<Torque, Torque>>,
    /// Whether oil is on it.
    pub oiled: bool,
    /// When it was flared or brazed, tightened, looked at.
    pub made_at: Option<Moment>,
    /// When it was tightened.
    pub tightened_at: Option<Moment>,
    /// When it was looked at.
    pub looked_at: Option<Moment>,
    /// What the look for leaks showed.
    pub leak_look: Option<LeakLook>,
    /// How often it was made anew.
    pub remade: usize,
    /// How far it has come.
    pub state: JointState,
    /// What is still to be done.
    pub open: Vec<JointStep>,
}

/// What the judgement of every joint rests on.
pub(super) struct JointBasis<'a> {
    pub refrigerant: Option<Refrigerant>,
    pub caliper: Entry<Length>,
    pub wrench: &'a WrenchInput,
}

impl<'a> JointBasis<'a> {
    pub fn of(parts: &Parts<'a>) -> Self {
        let refrigerant = match parts.plate.refrigerant {
            Entry::Read(refrigerant) => Some(refrigerant),
            _ => None,
        };
        Self {
            refrigerant,
            caliper: parts.caliper.uncertainty.clone(),
            wrench: parts.wrench,
        }
    }
}

/// The stage of the cones.
pub(super) fn flare_stage<'a>(overrides: &'a Overrides, joints: &[JointAssessment]) -> Draft<'a> {
    let mut draft = Draft::of(Stage::Flare, overrides);
    for joint in present(joints) {
        draft.begun(joint.is_made());
        if let Some(cone) = &joint.measured_cone {
            draft.verdict(cone.judgement.verdict);
        }
    }
    let count = |step| count_open(joints, step);
    draft.open_count(OpenMatter::JointsToMake, count(JointStep::Make));
    draft.open_count(OpenMatter::ConesToMeasure, count(JointStep::MeasureCone));
    draft
}

/// The stage of the nuts.
pub(super) fn tighten_stage<'a>(overrides: &'a Overrides, joints: &[JointAssessment]) -> Draft<'a> {
    let mut draft = Draft::of(Stage::Tighten, overrides);
    let mut without_torque = 0;
    for joint in present(joints).filter(|joint| joint.kind == JointKind::Flare) {
        draft.begun(joint.is_tightened());
        match joint.tightened {
            Some(tightened) => draft.verdict(tightened.verdict),
            None if joint.is_tightened() => without_torque += 1,
            None => {}
        }
    }
    let flares = present(joints).filter(|joint| joint.kind == JointKind::Flare);
    let to_tighten = flares.filter(|joint| joint.open.contains(&JointStep::Tighten));
    draft.open_count(OpenMatter::JointsToOil, count_open(joints, JointStep::Oil));
    draft.open_count(OpenMatter::JointsToTighten, to_tighten.count());
    draft.open_count(OpenMatter::TorquesToRecord, without_torque);
    draft
}

fn present(joints: &[JointAssessment]) -> impl Iterator<Item = &JointAssessment> {
    joints
        .iter()
        .filter(|joint| joint.state != JointState::Removed)
}

fn count_open(joints: &[JointAssessment], step: JointStep) -> usize {
    present(joints)
        .filter(|joint| joint.open.contains(&step))
        .count()
}

/// The problems with these fields.
fn of_fields(problems: Problems, fields: &'static [&'static str]) -> Problems {
    let is_one = |problem: &Problem| {
        fields
            .iter()
            .any(|field| problem.field == Field::named(field))
    };
    problems.into_iter().filter(is_one).collect()
}

/// The joints as they stand, numbered.
pub(super) fn assess(
    reading: &mut Reading,
    joints: &[Joint<'_>],
    basis: &JointBasis<'_>,
) -> Vec<JointAssessment> {
    let mut number = 0;
    let orders: Vec<JointOrder> = joints.iter().map(|joint| joint.order).collect();
    let order = |place: Option<usize>| place.and_then(|place| orders.get(place)).copied();
    let each = joints.iter().enumerate().map(|(place, joint)| {
        let mut assessed = of_joint(reading, joint, basis);
        if assessed.state != JointState::Removed {
            number += 1;
            assessed.number = Some(number);
        }
        if place > 0 {
            let before = order(Some(place - 1));
            assessed.earlier = JointOrder::between(order(place.checked_sub(2)), before);
        }
        if let Some(after) = order(Some(place + 1)) {
            assessed.later = JointOrder::between(Some(after), order(Some(place + 2)));
            assessed.after = JointOrder::between(order(Some(place)), Some(after));
        }
        assessed
    });
    each.collect()
}

fn of_joint(reading: &mut Reading, joint: &Joint<'_>, basis: &JointBasis<'_>) -> JointAssessment {
    let mut assessed = JointAssessment {
        id: joint.id.clone(),
        number: None,
        name: None,
        line: joint.line,
        place: joint.place,
        count: joint.count,
        kind: joint.kind,
        tube: joint.tube,
        earlier: None,
        later: None,
        after: None,
        cone: None,
        nut_across_flats: None,
        measured_cone: None,
        torque: None,
        aim: None,
        with_adapter: false,
        setting: None,
        tightened: None,
        oiled: false,
        made_at: None,
        tightened_at: None,
        looked_at: None,
        leak_look: None,
        remade: 0,
        state: JointState::Open,
        open: Vec::new(),
    };
    // A joint of which nothing is recorded has what is wrong with it from its line.
    let field = match joint.record {
        Some((place, _)) => Field::named("joints").with(&Field::item(place)),
        None => Field::written(line_path(joint.line).into()),
    };
    reading.inside(&field, |reading| assessed.take(reading, joint, basis));
    assessed.conclude();
    assessed
}

/// Where a line is in the document.
fn line_path(line: JointLine) -> &'static str {
    match line {
        JointLine::LiquidLine => "lines.liquidLine",
        JointLine::GasLine => "lines.gasLine",
    }
}

impl JointAssessment {
    fn take(&mut self, reading: &mut Reading, joint: &Joint<'_>, basis: &JointBasis<'_>) {
        let record = joint.record.map(|(_, record)| record);
        if let Some(record) = record {
            self.name = optional!(reading, record.name);
            self.made_at = optional!(reading, record.made);
            self.oiled = optional!(reading, record.oiled).unwrap_or(false);
            self.tightened_at = optional!(reading, record.tightened);
            self.leak_look = optional!(reading, record.leak_look);
            self.looked_at = optional!(reading, record.looked);
            self.remade = record.remade.items().len();
            if optional!(reading, record.removed).unwrap_or(false) {
                self.state = JointState::Removed;
            }
        }
        if self.kind != JointKind::Flare {
            return;
        }
        let Some(tube) = self.tube else { return };
        let cone = record.map_or(Entry::Absent, |record| record.measured_cone.clone());
        self.take_cone(reading, tube, cone, basis);
        let with_adapter = record.and_then(|record| optional!(reading, record.with_adapter));
        let scale = record.and_then(|record| optional!(reading, record.scale_torque));
        let plate = record.map_or(Entry::Absent, |record| record.plate_torque.clone());
        self.take_torque(reading, tube, plate, scale, with_adapter, basis);
    }

    fn take_cone(
        &mut self,
        reading: &mut Reading,
        tube: Length,
        measured_cone: Entry<Length>,
        basis: &JointBasis<'_>,
    ) {
        let Some(refrigerant) = basis.refrigerant else {
            reading.optional(Field::named("measured_cone"), &measured_cone);
            return;
        };
        let answer = flare(&FlareInput {
            tube: tube.into(),
            refrigerant: refrigerant.into(),
            measured_cone,
            caliper_uncertainty: basis.caliper.clone(),
            ..FlareInput::default()
        });
        match answer {
            Ok(answer) => {
                self.cone = answer.cone;
                self.nut_across_flats = answer.nut_across_flats;
                self.measured_cone = answer.measured;
            }
            Err(problems) => reading.take_over(of_fields(problems, JointInput::FIELDS)),
        }
    }

    fn take_torque(
        &mut self,
        reading: &mut Reading,
        tube: Length,
        plate_torque: Entry<Band<Torque>>,
        scale: Option<Torque>,
        with_adapter: Option<bool>,
        basis: &JointBasis<'_>,
    ) {
        let mut wrench = basis.wrench.clone();
        let is_adapter_known = !matches!(wrench.adapter_length, Entry::Absent);
        self.with_adapter = with_adapter.unwrap_or(is_adapter_known);
        let at_nut = TorqueInput {
            tube: tube.into(),
            plate_torque,
            ..TorqueInput::default()
        };
        match torque(&at_nut) {
            Ok(answer) => (self.torque, self.aim) = (Some(answer.band), Some(answer.aim)),
            Err(problems) => return reading.take_over(of_fields(problems, JointInput::FIELDS)),
        }
        if !self.with_adapter {
            (wrench.adapter_length, wrench.adapter_angle) = (Entry::Absent, Entry::Absent);
        } else if !is_adapter_known {
            return;
        }
        // What is wrong with the wrench is said once, where it is entered.
        let Ok(answer) = torque(&TorqueInput {
            adapter_length: wrench.adapter_length,
            adapter_angle: wrench.adapter_angle,
            wrench_length: wrench.wrench_length,
            wrench_accuracy: wrench.wrench_accuracy,
            ..at_nut
        }) else {
            return;
        };
        let setting = answer.setting.as_ref();
        let gain = setting.map_or(1.0, |setting| setting.gain.in_one());
        self.setting = Some(setting.map_or(answer.aim, |setting| setting.aim));
        let accuracy = answer.accuracy.in_one();
        self.tightened = scale.map(|scale| {
            let at_nut = scale * gain;
            judge(at_nut, at_nut * accuracy, answer.band)
        });
    }

    fn conclude(&mut self) {
        if self.state == JointState::Removed {
            return;
        }
        self.open = self.steps();
        let cone = self
            .measured_cone
            .as_ref()
            .map(|cone| cone.judgement.verdict);
        let torque = self.tightened.map(|tightened| tightened.verdict);
        self.state = if self.leak_look == Some(LeakLook::Leak) {
            JointState::Leaking
        } else if [cone, torque].contains(&Some(Verdict::OutOfBand)) {
            JointState::OutOfBand
        } else if self.leak_look.is_some() {
            JointState::Proven
        } else if self.is_tightened() {
            JointState::Tightened
        } else if self.is_made() {
            JointState::Made
        } else {
            JointState::Open
        };
    }

    fn is_made(&self) -> bool {
        self.made_at.is_some() || self.measured_cone.is_some()
    }

    fn is_tightened(&self) -> bool {
        match self.kind {
            JointKind::Brazed => self.is_made(),
            JointKind::Flare | JointKind::Cap => {
                self.tightened_at.is_some() || self.tightened.is_some()
            }
        }
    }

    fn steps(&self) -> Vec<JointStep> {
        let is_flare = self.kind == JointKind::Flare;
        let cone = self
            .measured_cone
            .as_ref()
            .map(|cone| cone.judgement.verdict);
        let torque = self.tightened.map(|tightened| tightened.verdict);
        let is_out = [cone, torque].contains(&Some(Verdict::OutOfBand));
        let all = [
            (
                JointStep::Make,
                self.kind != JointKind::Cap && !self.is_made(),
            ),
            (
                JointStep::MeasureCone,
                is_flare && self.cone.is_some() && self.is_made() && cone.is_none(),
            ),
            (JointStep::Oil, is_flare && !self.oiled),
            (JointStep::Tighten, !self.is_tightened()),
            (JointStep::LookForLeaks, self.leak_look.is_none()),
            (
                JointStep::Remake,
                is_out || self.leak_look == Some(LeakLook::Leak),
            ),
        ];
        let open = all.into_iter().filter(|(_, is_open)| *is_open);
        open.map(|(step, _)| step).collect()
    }
}
