//! Takes the fields of an input one by one and gathers everything that is wrong with them.

use super::problem::{Cause, Field, Misfit, Problem, Problems};
use crate::quantity::{Enter, Entry, Quantity};

/// Gathers the problems of an input.
#[derive(Debug, Default)]
pub struct Reading {
    problems: Problems,
}

impl Reading {
    /// The field if it is there; a field that cannot be read is a problem.
    pub fn optional<T: Clone>(&mut self, field: Field, entry: &Entry<T>) -> Option<T> {
        match entry {
            Entry::Absent => None,
            Entry::Read(read) => Some(read.clone()),
            Entry::Flawed(flaw) => {
                self.problem(Problem {
                    field,
                    cause: Cause::Entry(flaw.clone()),
                });
                None
            }
        }
    }

    /// The field, which must be there.
    pub fn required<T: Enter + Clone>(&mut self, field: Field, entry: &Entry<T>) -> Option<T> {
        if matches!(entry, Entry::Absent) {
            self.problem(Problem::misfit(
                field,
                Misfit::Missing {
                    example: T::example(),
                },
            ));
            return None;
        }
        self.optional(field, entry)
    }

    /// Whether exactly `needed` of some fields are filled, each given with whether it is. If too few
    /// are, the first empty one is the problem; if too many, each that is one too much.
    pub fn exactly(&mut self, needed: usize, fields: &[(&'static str, bool)]) -> bool {
        let found = fields.iter().filter(|(_, filled)| *filled).count();
        if found == needed {
            return true;
        }
        let concerned = fields
            .iter()
            .filter(|(_, filled)| *filled == (found > needed));
        let (skipped, most) = if found > needed {
            (needed, found)
        } else {
            (0, 1)
        };
        for (name, _) in concerned.skip(skipped).take(most) {
            let accepted = fields.iter().map(|(name, _)| Field::named(name)).collect();
            let misfit = Misfit::WrongCount {
                needed,
                found,
                accepted,
            };
            self.problem(Problem::misfit(Field::named(name), misfit));
        }
        false
    }

    /// Refuses a quantity outside what the method is valid for, both limits included.
    pub fn within<Q: Quantity>(&mut self, field: Field, given: Option<Q>, (low, high): (Q, Q)) {
        if given.is_some_and(|given| given < low || given > high) {
            self.problem(Problem::outside(field, low, high));
        }
    }

    /// Adds a problem that shows only when fields are seen together.
    pub fn problem(&mut self, problem: Problem) {
        self.problems.push(problem);
    }

    /// The result, or the problem added to the others.
    pub fn accept<T>(&mut self, result: Result<T, Problem>) -> Option<T> {
        result.map_err(|problem| self.problem(problem)).ok()
    }

    /// Whether nothing is wrong so far.
    pub fn is_sound(&self) -> bool {
        self.problems.is_empty()
    }

    /// The problems, as an error, if there are any.
    ///
    /// # Errors
    /// All problems that were gathered.
    pub fn sound(&mut self) -> Result<(), Problems> {
        if self.problems.is_empty() {
            Ok(())
        } else {
            Err(self.take())
        }
    }

    /// The problems that were gathered.
    pub fn take(&mut self) -> Problems {
        core::mem::take(&mut self.problems)
    }
}

/// `required!(reading, input.tube)`: the field, named after itself.
macro_rules! required {
    ($reading:ident, $input:ident.$field:ident) => {
        $reading.required(
            $crate::calc::Field::named(stringify!($field)),
            &$input.$field,
        )
    };
}

/// `optional!(reading, input.length)`: the field, named after itself, if it is there.
macro_rules! optional {
    ($reading:ident, $input:ident.$field:ident) => {
        $reading.optional(
            $crate::calc::Field::named(stringify!($field)),
            &$input.$field,
        )
    };
}

/// `filled!(input.length)`: the name of the field, and whether anything stands there.
macro_rules! filled {
    ($input:ident.$field:ident) => {
        (
            stringify!($field),
            !matches!($input.$field, $crate::quantity::Entry::Absent),
        )
    };
}

pub(crate) use {filled, optional, required};
