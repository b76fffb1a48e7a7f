//! The one door: every calculation by name, and the assessment of a job. Adding one is a line here.

use serde::{Serialize, Serializer};

use crate::calc::{Field, Input, Members, Misfit, Problem, Problems, flare, torque, tube};
#[cfg(feature = "further")]
use crate::calc::{
    charge, convert, insulation, line_set, moist_air, nitrogen_hold, pipe_friction, pump_down,
    room_limit, running, saturation, standing_test, vacuum_hold, vapour, water_saturation,
};
#[cfg(feature = "further")]
use crate::job;
use crate::quantity::Arrived;

/// Those above `further` answer the page's first screen and make up the module it starts with.
macro_rules! calculations {
    (
        $($name:literal $function:path, $input:ty => $answer:ty;)*
        further:
        $($further_name:literal $further:path, $further_input:ty => $further_answer:ty;)*
    ) => {
        /// The names of all calculations.
        pub const NAMES: &[&str] = &[
            $($name,)*
            $(#[cfg(feature = "further")] $further_name,)*
        ];

        /// Answers an input by a calculation's name; never fails but for the serializer's sake.
        ///
        /// The reply is `{"answer": …}` or `{"problems": […]}`. Fields that the input does not have
        /// are problems.
        ///
        /// # Errors
        /// Only what the serializer itself cannot write.
        pub fn answer<S: Serializer>(
            name: &str,
            input: Arrived,
            output: S,
        ) -> Result<S::Ok, S::Error> {
            match name {
                $($name => replied::<_, $answer, _>(input, $function, output),)*
                $(#[cfg(feature = "further")]
                $further_name => replied::<_, $further_answer, _>(input, $further, output),)*
                _ => Reply::<()>::from(Err(unknown(name))).serialize(output),
            }
        }

        /// Name, input schema and answer schema of every calculation.
        #[cfg(feature = "terminal")]
        pub fn catalogue(generator: &mut schemars::SchemaGenerator) -> Vec<Entry> {
            vec![
                $(entry::<$input, $answer>($name, generator),)*
                $(entry::<$further_input, $further_answer>($further_name, generator),)*
            ]
        }
    };
}

calculations! {
    "tube" tube::tube, tube::TubeInput => tube::TubeAnswer;
    "flare" flare::flare, flare::FlareInput => flare::FlareAnswer;
    "torque" torque::torque, torque::TorqueInput => torque::TorqueAnswer;
    further:
    "convert" convert::convert, convert::ConvertInput => convert::ConvertAnswer;
    "saturation" saturation::saturation, saturation::SaturationInput => saturation::SaturationAnswer;
    "vapour" vapour::vapour, vapour::VapourInput => vapour::VapourAnswer;
    "standing-test" standing_test::standing_test, standing_test::StandingTestInput => standing_test::StandingTestAnswer;
    "nitrogen-hold" nitrogen_hold::nitrogen_hold, nitrogen_hold::NitrogenHoldInput => nitrogen_hold::NitrogenHoldAnswer;
    "water-saturation" water_saturation::water_saturation, water_saturation::WaterSaturationInput => water_saturation::WaterSaturationAnswer;
    "moist-air" moist_air::moist_air, moist_air::MoistAirInput => moist_air::MoistAirAnswer;
    "pipe-friction" pipe_friction::pipe_friction, pipe_friction::PipeFrictionInput => pipe_friction::PipeFrictionAnswer;
    "line-set" line_set::line_set, line_set::LineSetInput => line_set::LineSetAnswer;
    "charge" charge::charge, charge::ChargeInput => charge::ChargeAnswer;
    "room-limit" room_limit::room_limit, room_limit::RoomLimitInput => room_limit::RoomLimitAnswer;
    "insulation" insulation::insulation, insulation::InsulationInput => insulation::InsulationAnswer;
    "running" running::running, running::RunningInput => running::RunningAnswer;
    "pump-down" pump_down::pump_down, pump_down::PumpDownInput => pump_down::PumpDownAnswer;
    "job" job::assess, job::AssessInput => job::Assessment;
    "vacuum-hold" vacuum_hold::vacuum_hold, vacuum_hold::VacuumHoldInput => vacuum_hold::VacuumHoldAnswer;
}

/// A piece of code for each calculation: a browser compiles a function when it is first called, and were all in one,
/// each would wait for all.
#[inline(never)]
fn replied<I: Input, A: Serialize, S: Serializer>(
    input: Arrived,
    function: impl Fn(&I) -> Result<A, Problems>,
    output: S,
) -> Result<S::Ok, S::Error> {
    reply(input, function).serialize(output)
}

fn reply<I: Input, A>(input: Arrived, function: impl Fn(&I) -> Result<A, Problems>) -> Reply<A> {
    let Some(mut members) = Members::of(input) else {
        let field = Field::named("input");
        return Err(vec![Problem::misfit(field, Misfit::NotAnObject)]).into();
    };
    let answer = function(&I::read(&mut members));
    let mut problems = members.problems(I::FIELDS);
    if problems.is_empty() {
        return answer.into();
    }
    problems.extend(answer.err().into_iter().flatten());
    Err(problems).into()
}

/// One calculation in the catalogue.
#[cfg(feature = "terminal")]
#[derive(Clone, Debug)]
pub struct Entry {
    /// Its name.
    pub name: &'static str,
    /// JSON Schema of its input.
    pub input: schemars::Schema,
    /// JSON Schema of its answer.
    pub answer: schemars::Schema,
}

#[cfg(feature = "terminal")]
fn entry<I: schemars::JsonSchema, A: schemars::JsonSchema>(
    name: &'static str,
    generator: &mut schemars::SchemaGenerator,
) -> Entry {
    Entry {
        name,
        input: generator.subschema_for::<I>(),
        answer: generator.subschema_for::<A>(),
    }
}

/// What comes back through the door.
#[derive(Serialize)]
#[serde(untagged)]
enum Reply<A> {
    Answer { answer: A },
    Problems { problems: Problems },
}

impl<A> From<Result<A, Problems>> for Reply<A> {
    fn from(result: Result<A, Problems>) -> Self {
        match result {
            Ok(answer) => Self::Answer { answer },
            Err(problems) => Self::Problems { problems },
        }
    }
}

fn unknown(name: &str) -> Problems {
    let found = name.chars().take(40).collect();
    let misfit = Misfit::UnknownCalculation {
        found,
        accepted: NAMES.to_vec(),
    };
    vec![Problem::misfit(Field::named("calculation"), misfit)]
}
