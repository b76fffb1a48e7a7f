//! Inputs of calculations: named entries, read from whatever arrived.

use super::problem::{Field, Misfit, Problem, Problems};
use crate::quantity::Arrived;

/// What a calculation asks for.
pub trait Input: Sized {
    /// The fields, by their Rust names.
    const FIELDS: &'static [&'static str];

    /// Takes each field out of what arrived; what is left over is foreign.
    fn read(members: &mut Members) -> Self;
}

/// The members of an object that arrived.
#[derive(Debug)]
pub struct Members(Vec<(String, Arrived)>);

impl Members {
    /// The members, if what arrived is an object.
    pub fn of(arrived: Arrived) -> Option<Self> {
        match arrived {
            Arrived::Object(members) => Some(Self(members)),
            _ => None,
        }
    }

    /// Takes out the member that is named as this field.
    pub fn take(&mut self, field: &'static str) -> Arrived {
        let place = self
            .0
            .iter()
            .position(|(name, _)| Field::named(field).is_written(name));
        place.map_or(Arrived::Nothing, |place| self.0.swap_remove(place).1)
    }

    /// A problem for each member that is left and is no field.
    pub fn problems(&self, fields: &'static [&'static str]) -> Problems {
        let problem = |(name, _): &(String, Arrived)| {
            let accepted = fields.iter().map(|field| Field::named(field)).collect();
            Problem::misfit(Field::unknown(name), Misfit::UnknownField { accepted })
        };
        self.0.iter().map(problem).collect()
    }
}

/// Defines an input: a struct of entries that can be read, and its schema.
macro_rules! input {
    (
        $(#[$doc:meta])*
        pub struct $name:ident { $($(#[$field_doc:meta])* pub $field:ident: $type:ty),* $(,)? }
    ) => {
        $(#[$doc])*
        #[derive(Clone, Debug, Default)]
        #[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
        #[cfg_attr(feature = "terminal", schemars(rename_all = "camelCase", default))]
        pub struct $name { $($(#[$field_doc])* pub $field: $type),* }

        impl $crate::calc::Input for $name {
            const FIELDS: &'static [&'static str] = &[$(stringify!($field)),*];

            fn read(members: &mut $crate::calc::Members) -> Self {
                Self { $($field: members.take(stringify!($field)).into()),* }
            }
        }
    };
}

pub(crate) use input;
