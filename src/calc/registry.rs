//! The one door: every calculation by name. Adding one is a line here.

use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::fields::fields_of;
use super::problem::{Field, Misfit, Problem, Problems};
use super::{
    convert, flare, moist_air, nitrogen_hold, pipe_friction, saturation, torque, tube, vapour,
    water_saturation,
};

macro_rules! calculations {
    ($($name:literal $function:path, $input:ty => $answer:ty;)*) => {
        /// The names of all calculations.
        pub const NAMES: &[&str] = &[$($name),*];

        /// Answers an input by a calculation's name; never fails but for the serializer's sake.
        ///
        /// The reply is `{"answer": …}` or `{"problems": […]}`. `door` gathers fields that no input
        /// has, where the format can tell.
        ///
        /// # Errors
        /// Only what the serializer itself cannot write.
        pub fn answer<'de, D: Deserializer<'de>, S: Serializer>(
            name: &str,
            input: D,
            door: impl Door<'de>,
            output: S,
        ) -> Result<S::Ok, S::Error> {
            match name {
                $($name => {
                    let reply: Reply<$answer> = reply(door, input, $function);
                    reply.serialize(output)
                })*
                _ => Reply::<()>::from(Err(unknown(name))).serialize(output),
            }
        }

        /// Name, input schema and answer schema of every calculation.
        #[cfg(feature = "terminal")]
        pub fn catalogue(generator: &mut schemars::SchemaGenerator) -> Vec<Entry> {
            vec![$(Entry {
                name: $name,
                input: generator.subschema_for::<$input>(),
                answer: generator.subschema_for::<$answer>(),
            }),*]
        }
    };
}

calculations! {
    "tube" tube::tube, tube::TubeInput => tube::TubeAnswer;
    "flare" flare::flare, flare::FlareInput => flare::FlareAnswer;
    "torque" torque::torque, torque::TorqueInput => torque::TorqueAnswer;
    "convert" convert::convert, convert::ConvertInput => convert::ConvertAnswer;
    "saturation" saturation::saturation, saturation::SaturationInput => saturation::SaturationAnswer;
    "vapour" vapour::vapour, vapour::VapourInput => vapour::VapourAnswer;
    "nitrogen-hold" nitrogen_hold::nitrogen_hold, nitrogen_hold::NitrogenHoldInput => nitrogen_hold::NitrogenHoldAnswer;
    "water-saturation" water_saturation::water_saturation, water_saturation::WaterSaturationInput => water_saturation::WaterSaturationAnswer;
    "moist-air" moist_air::moist_air, moist_air::MoistAirInput => moist_air::MoistAirAnswer;
    "pipe-friction" pipe_friction::pipe_friction, pipe_friction::PipeFrictionInput => pipe_friction::PipeFrictionAnswer;
}

/// How a door reads an input.
pub trait Door<'de> {
    /// Reads an input, and names the fields that arrived and that it does not have; `None` if what
    /// arrived is no input at all.
    fn read<I: Deserialize<'de>, D: Deserializer<'de>>(self, input: D) -> Option<(I, Vec<String>)>;
}

fn reply<'de, I: Deserialize<'de>, A, D: Deserializer<'de>>(
    door: impl Door<'de>,
    input: D,
    function: impl Fn(&I) -> Result<A, Problems>,
) -> Reply<A> {
    let Some((input, foreign)) = door.read::<I, D>(input) else {
        return Err(vec![Problem::misfit(
            Field::named("input"),
            Misfit::NotAnObject,
        )])
        .into();
    };
    let answer = function(&input);
    if foreign.is_empty() {
        return answer.into();
    }
    let accepted = fields_of::<I>();
    let unknown = |name: &String| {
        let misfit = Misfit::UnknownField {
            accepted: accepted.to_vec(),
        };
        Problem::misfit(Field::unknown(name), misfit)
    };
    let mut problems: Problems = foreign.iter().map(unknown).collect();
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
