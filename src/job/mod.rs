//! The job: one document, and the assessment that says of every stage what is known, what is open and what is
//! wrong.

mod bring;
mod circuit;
mod clock;
mod document;
mod evacuation;
mod hold_clock;
mod instruments;
mod joint;
mod joint_state;
pub mod link;
mod order;
mod parts;
mod paths;
mod plan;
mod pressure_test;
mod recorded;
mod release;
mod run_check;
mod stage;

use serde::Serialize;

pub use bring::{BringItem, BringMatter};
pub use circuit::Circuit;
pub use clock::{Clock, ClockDoubt, Passed};
pub use document::{
    ClockChangeInput, DOCUMENT_VERSION, EvacuationInput, GaugeReadingInput, JobAccessoryInput,
    JobInput, JobLineInput, JobRoomInput, LinesInput, NoteInput, PackedInput, PhotoInput,
    PlateInput, PressureTestInput, ReleaseInput, RunCheckInput, SignOffInput, Stage, UnitPortInput,
    VacuumGaugeReadingInput,
};
pub use hold_clock::HoldClock;
pub use instruments::{
    CaliperInput, GaugeInput, InstrumentsInput, ScaleInput, ThermometerInput, WrenchInput,
};
pub use joint::{JointInput, JointKind, JointLine, JointOrder, JointPlace, LeakLook, RemadeInput};
pub use joint_state::{JointAssessment, JointState, JointStep};
pub use order::{Alarm, OrderRule, Override, OverrideInput};
pub use plan::PlanLimits;
pub use recorded::{RecordedMoment, RecordedPressure, RecordedVacuum};
pub use release::{AfterRelease, BeforeRelease};
pub use stage::{Fact, OpenItem, OpenMatter, StageAssessment, StageState};

use crate::calc::charge::ChargeAnswer;
use crate::calc::room_limit::RoomLimitAnswer;
use crate::calc::running::RunningAnswer;
use crate::calc::standing_test::StandingTestAnswer;
use crate::calc::vacuum_hold::VacuumHoldAnswer;
use crate::calc::{Field, Misfit, Part, Problem, Problems, Reading, input, optional, required};
use crate::quantity::{Entry, Moment};
use evacuation::Evacuation;
use joint_state::JointBasis;
use order::Overrides;
use parts::{Blank, Parts};
use plan::Plan;
use pressure_test::PressureTest;
use release::{Before, Release};
use stage::Draft;

input! {
    /// What [`assess`] asks for.
    pub struct AssessInput {
        /// The job, required.
        pub job: Part<JobInput>,
        /// What the device's clock shows, required.
        pub now: Entry<Moment>,
        /// The stage whose answers are wanted; those of every stage for the record, none if nothing is entered.
        pub stage: Entry<Stage>,
    }
}

/// How a job stands.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Assessment {
    /// The stages in the order of work.
    pub stages: Vec<StageAssessment>,
    /// The first stage that is not done.
    pub next: Option<Stage>,
    /// The joints in the order of work.
    pub joints: Vec<JointAssessment>,
    /// The way of the lines from unit to unit.
    pub circuit: Circuit,
    /// Clock of the pressure hold.
    pub pressure_clock: Option<HoldClock>,
    /// Clock of the pump.
    pub pump_clock: Option<HoldClock>,
    /// Clock of the vacuum hold.
    pub vacuum_clock: Option<HoldClock>,
    /// What has to be in the van.
    pub bring: Vec<BringItem>,
    /// The charge: of the stages plan, release and charge, record.
    pub charge: Option<ChargeAnswer>,
    /// The room: of the stages plan, record.
    pub room_limit: Option<RoomLimitAnswer>,
    /// How the lines keep to the plate: of the stages plan, record.
    pub plate_limits: Option<PlanLimits>,
    /// The pressure hold: of the stages pressure test, record.
    pub standing_test: Option<StandingTestAnswer>,
    /// Where the readings of the pressure hold stand in the document.
    pub pressure_hold_readings: Vec<usize>,
    /// The vacuum hold: of the stages evacuate, record.
    pub vacuum_hold: Option<VacuumHoldAnswer>,
    /// Where the readings of the vacuum hold stand in the document.
    pub vacuum_hold_readings: Vec<usize>,
    /// The readings of the pressure gauge as recorded: of the stage record.
    pub recorded_pressures: Vec<RecordedPressure>,
    /// The readings of the vacuum gauge as recorded: of the stage record.
    pub recorded_vacuums: Vec<RecordedVacuum>,
    /// What must be shown before the valves are opened.
    pub before_release: BeforeRelease,
    /// The pressure after release: of the stages release and charge, record.
    pub after_release: Option<AfterRelease>,
    /// The running unit: of the stages run check, record.
    pub running: Option<RunningAnswer>,
    /// What cannot be read, or does not serve, by where it stands in the document.
    pub problems: Problems,
}

/// How does this job stand: what is known, what is open, what is wrong, and what comes next?
///
/// # Method
/// Each stage puts what the document holds into the calculation of its own name; what the plate, the lines, the
/// instruments and the place say is entered once and goes into all. A stage is in band when nothing is open and
/// every verdict is; a rule of the order of work that is broken makes it out of band until somebody answers for
/// it with a reason.
///
/// # Errors
/// No job, no time, or a document of a later version. What is wrong within the document withholds the answer
/// that needs it and is listed in `problems`.
///
/// # Examples
/// ```
/// use coldwright::job::{AssessInput, JobInput, PlateInput, Stage, StageState, assess};
/// use coldwright::quantity::{Enter, Moment};
/// use coldwright::tables::refrigerants::Refrigerant;
/// let plate = PlateInput { refrigerant: Refrigerant::R32.into(), ..PlateInput::default() };
/// let job = JobInput { plate: plate.into(), ..JobInput::default() };
/// let now = Moment::from_text("2026-11-25T20:34:21Z", None).unwrap();
/// let found = assess(&AssessInput { job: job.into(), now: now.into(), ..AssessInput::default() }).unwrap();
/// assert_eq!(found.next, Some(Stage::Plan));
/// assert_eq!(found.stages[0].state, StageState::UnderWay);
/// ```
///
/// # References
/// Those of the calculations. Order of joints, caps and valves: common practice, no source.
pub fn assess(input: &AssessInput) -> Result<Assessment, Problems> {
    let mut reading = Reading::default();
    let now = required!(reading, input.now);
    let wanted = optional!(reading, input.stage);
    let Some(job) = input.job.given() else {
        let example = "{\"version\": 1}".into();
        let misfit = Misfit::Missing { example };
        reading.problem(Problem::misfit(Field::named("job"), misfit));
        return Err(reading.take());
    };
    if let Entry::Read(version) = job.version
        && version.number() > DOCUMENT_VERSION
    {
        let misfit = Misfit::NewerVersion {
            known: usize::from(DOCUMENT_VERSION),
            found: usize::from(version.number()),
        };
        let field = Field::written("job.version".into());
        reading.problem(Problem::misfit(field, misfit));
    }
    reading.sound()?;
    let Some(now) = now else {
        return Err(reading.take());
    };
    reading.part(Field::named("job"), &input.job, |_, _| Some(()));
    Ok(of_job(job, now, wanted, reading))
}

fn of_job(job: &JobInput, now: Moment, wanted: Option<Stage>, mut reading: Reading) -> Assessment {
    let blank = Blank::default();
    let parts = Parts::of(job, &blank, &mut reading);
    let clock = Clock::take(&mut reading, &job.clock_changes);
    let overrides = Overrides::take(&mut reading, &job.overrides);
    let times = (&clock, now);

    let mut of_plan = Plan::draft(&overrides);
    let plan = Plan::take(&mut of_plan, &mut reading, &parts);
    instruments::take(&mut of_plan, &mut reading, &parts, times);
    let joints = joint::joints(job, &mut reading);
    let basis = JointBasis::of(&parts);
    let joints = joint_state::assess(&mut reading, &joints, &basis);
    let of_flare = joint_state::flare_stage(&overrides, &joints);
    let of_tighten = joint_state::tighten_stage(&overrides, &joints);
    let mut of_pressure_test = PressureTest::draft(&overrides);
    let pressure_test =
        PressureTest::take(&mut of_pressure_test, &mut reading, &parts, &joints, times);
    let mut of_evacuation = Evacuation::draft(&overrides);
    let evacuation = Evacuation::take(
        &mut of_evacuation,
        &mut reading,
        &parts,
        &pressure_test,
        times,
    );
    let mut of_release = Release::draft(&overrides);
    let before = Before {
        plan: &plan,
        joints: &joints,
        pressure_test: &pressure_test,
        evacuation: &evacuation,
    };
    let release = Release::take(&mut of_release, &mut reading, &parts, &before, &clock);
    let mut of_run_check = run_check::draft(&overrides);
    let running = run_check::take(&mut of_run_check, &mut reading, &parts);
    let is_wanted = |stages: &[Stage]| {
        wanted.is_some_and(|wanted| wanted == Stage::Record || stages.contains(&wanted))
    };
    let bring = if is_wanted(&[Stage::Plan]) {
        bring::list(&mut reading, &parts, &joints, &plan, &pressure_test)
    } else {
        Vec::new()
    };

    let (pressures, vacuums) = match wanted {
        Some(Stage::Record) => (
            parts.pressure_test.readings.items(),
            parts.evacuation.readings.items(),
        ),
        _ => (&[][..], &[][..]),
    };

    let mut stages: Vec<StageAssessment> = [
        of_plan,
        of_flare,
        of_tighten,
        of_pressure_test,
        of_evacuation,
        of_release,
        of_run_check,
    ]
    .into_iter()
    .map(Draft::done)
    .collect();
    stages.push(record(&overrides, &stages, job));
    let is_done = |stage: &&StageAssessment| {
        stage.open.is_empty() && [StageState::InBand, StageState::Overridden].contains(&stage.state)
    };
    let next = stages.iter().find(|stage| !is_done(stage));
    Assessment {
        next: next.map(|stage| stage.stage),
        stages,
        circuit: Circuit::of(&parts),
        pressure_clock: pressure_test.clock,
        pump_clock: evacuation.pump,
        vacuum_clock: evacuation.clock,
        bring,
        charge: plan
            .charge
            .filter(|_| is_wanted(&[Stage::Plan, Stage::ReleaseAndCharge])),
        room_limit: plan.room_limit.filter(|_| is_wanted(&[Stage::Plan])),
        plate_limits: is_wanted(&[Stage::Plan]).then_some(plan.limits),
        standing_test: pressure_test
            .answer
            .filter(|_| is_wanted(&[Stage::PressureTest])),
        pressure_hold_readings: pressure_test.places,
        vacuum_hold: evacuation.answer.filter(|_| is_wanted(&[Stage::Evacuate])),
        vacuum_hold_readings: evacuation.places,
        recorded_pressures: recorded::pressures(&clock, pressures),
        recorded_vacuums: recorded::vacuums(&clock, vacuums),
        before_release: release.before,
        after_release: release
            .after
            .filter(|_| is_wanted(&[Stage::ReleaseAndCharge])),
        running: running.filter(|_| is_wanted(&[Stage::RunCheck])),
        problems: reading.take(),
        joints,
    }
}

/// The record is complete when a name stands under it and no stage is open.
fn record(overrides: &Overrides, stages: &[StageAssessment], job: &JobInput) -> StageAssessment {
    let mut draft = Draft::of(Stage::Record, overrides);
    let is_signed = job
        .sign_offs
        .items()
        .iter()
        .any(|sign_off| matches!(sign_off.name, Entry::Read(_)));
    draft.begun(is_signed);
    if !is_signed {
        draft.open(OpenMatter::SignOff);
    }
    let open = stages.iter().filter(|stage| !stage.open.is_empty()).count();
    draft.open_count(OpenMatter::Stages, open);
    draft.done()
}
