//! How a stage stands: what is open, what is wrong, the verdict.

use serde::Serialize;

use super::document::Stage;
use super::order::{Alarm, OrderRule, Overrides};
use crate::calc::{Field, Problem, Problems, Verdict};
use crate::quantity::{Quantity, QuantityKind, choice};

choice! {
    /// How a stage stands.
    StageState {
        /// Nothing is recorded.
        NotBegun = "not-begun",
        /// Something is recorded and something is open.
        UnderWay = "under-way",
        /// All is recorded and in band.
        InBand = "in-band",
        /// All is recorded; some figure is nearer to a limit than can be told.
        CannotTell = "cannot-tell",
        /// A figure is out of band, or the order of work was broken and nobody answers for it.
        OutOfBand = "out-of-band",
        /// The order of work was broken and somebody answers for it; all else is recorded.
        Overridden = "overridden",
    }
}

choice! {
    /// What is open.
    OpenMatter {
        /// A field of the document.
        Field = "field",
        /// A room that the circuit could leak into.
        Room = "room",
        /// Joints that are not made.
        JointsToMake = "joints-to-make",
        /// Joints whose cone is not measured.
        ConesToMeasure = "cones-to-measure",
        /// Joints to make anew.
        JointsToRemake = "joints-to-remake",
        /// Joints without oil.
        JointsToOil = "joints-to-oil",
        /// Joints that are not tightened.
        JointsToTighten = "joints-to-tighten",
        /// Joints that were tightened without a torque.
        TorquesToRecord = "torques-to-record",
        /// Joints that were not looked at under pressure.
        JointsToLookAt = "joints-to-look-at",
        /// A hold that has to go on.
        HoldOn = "hold-on",
        /// A hold that stood below the test pressure, and has to be begun anew at it.
        TestPressure = "test-pressure",
        /// Readings of a hold.
        Readings = "readings",
        /// The pump.
        PumpDown = "pump-down",
        /// The valves.
        OpenValves = "open-valves",
        /// Caps to be put on and looked at.
        CapsToLookAt = "caps-to-look-at",
        /// The pressure after release.
        PressureAfterRelease = "pressure-after-release",
        /// Refrigerant that has to go in or out.
        Charge = "charge",
        /// Readings of the running unit.
        RunReadings = "run-readings",
        /// An instrument whose calibration date is not entered or more than a year ago.
        Calibration = "calibration",
        /// A name under the record.
        SignOff = "sign-off",
        /// Stages.
        Stages = "stages",
    }
}

/// Something that is open.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct OpenItem {
    /// What it is.
    pub matter: OpenMatter,
    /// The field of the document, if it is one.
    pub field: Option<Field>,
    /// How many.
    pub count: Option<usize>,
}

/// A figure that a stage is known by.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Fact {
    /// What it is: a message id.
    pub meaning: &'static str,
    /// Which quantity it is of.
    pub quantity: QuantityKind,
    /// Its SI number.
    pub si: f64,
    /// The same for its uncertainty.
    pub uncertainty: Option<f64>,
}

/// A stage as it stands.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct StageAssessment {
    /// The stage.
    pub stage: Stage,
    /// How it stands.
    pub state: StageState,
    /// What is known.
    pub facts: Vec<Fact>,
    /// What is open.
    pub open: Vec<OpenItem>,
    /// The rules that were broken in it.
    pub alarms: Vec<Alarm>,
}

/// A stage while it is looked at.
#[derive(Debug)]
pub(super) struct Draft<'a> {
    stage: Stage,
    overrides: &'a Overrides,
    is_begun: bool,
    verdict: Verdict,
    facts: Vec<Fact>,
    open: Vec<OpenItem>,
    alarms: Vec<Alarm>,
}

impl<'a> Draft<'a> {
    pub fn of(stage: Stage, overrides: &'a Overrides) -> Self {
        Self {
            stage,
            overrides,
            is_begun: false,
            verdict: Verdict::InBand,
            facts: Vec::new(),
            open: Vec::new(),
            alarms: Vec::new(),
        }
    }

    /// Something of it is recorded.
    pub fn begun(&mut self, is_begun: bool) {
        self.is_begun |= is_begun;
    }

    pub fn open(&mut self, matter: OpenMatter) {
        self.item(matter, None, None);
    }

    /// So many of something are open, if any.
    pub fn open_count(&mut self, matter: OpenMatter, count: usize) {
        if count > 0 {
            self.item(matter, None, Some(count));
        }
    }

    pub fn open_field(&mut self, field: Field) {
        self.item(OpenMatter::Field, Some(field), None);
    }

    fn item(&mut self, matter: OpenMatter, field: Option<Field>, count: Option<usize>) {
        let item = OpenItem {
            matter,
            field,
            count,
        };
        if !self.open.contains(&item) {
            self.open.push(item);
        }
    }

    pub fn fact<Q: Quantity>(&mut self, meaning: &'static str, figure: Q) {
        self.facts.push(Fact {
            meaning,
            quantity: Q::KIND,
            si: figure.si(),
            uncertainty: None,
        });
    }

    pub fn uncertain<Q: Quantity>(&mut self, meaning: &'static str, figure: Q, uncertainty: f64) {
        self.fact(meaning, figure);
        if let Some(fact) = self.facts.last_mut() {
            fact.uncertainty = Some(uncertainty);
        }
    }

    pub fn verdict(&mut self, verdict: Verdict) {
        self.verdict = self.verdict.and(verdict);
    }

    /// A rule is broken, unless it is not.
    pub fn rule(&mut self, rule: OrderRule, is_broken: bool) {
        if is_broken {
            self.alarms.push(self.overrides.alarm(rule, self.stage));
        }
    }

    /// Divides what a calculation found wrong: what is only missing is open, the rest are problems.
    pub fn missing(&mut self, problems: Problems) -> Problems {
        let is_missing =
            |problem: &Problem| ["missing", "too-few", "wrong-count"].contains(&problem.code());
        let (missing, wrong): (Problems, Problems) = problems.into_iter().partition(is_missing);
        for problem in missing {
            self.open_field(problem.field);
        }
        wrong
    }

    pub fn done(self) -> StageAssessment {
        let is_answered_for = self.alarms.iter().all(|alarm| alarm.overridden.is_some());
        let state = if !is_answered_for || self.verdict == Verdict::OutOfBand {
            StageState::OutOfBand
        } else if !self.is_begun {
            StageState::NotBegun
        } else if !self.open.is_empty() {
            StageState::UnderWay
        } else if self.verdict == Verdict::CannotTell {
            StageState::CannotTell
        } else if !self.alarms.is_empty() {
            StageState::Overridden
        } else {
            StageState::InBand
        };
        StageAssessment {
            stage: self.stage,
            state,
            facts: self.facts,
            open: self.open,
            alarms: self.alarms,
        }
    }
}
