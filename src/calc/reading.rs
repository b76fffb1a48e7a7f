//! Takes the fields of an input one by one and gathers everything that is wrong with them.

use super::nested::{Entries, Part};
use super::problem::{Cause, Field, Misfit, Problem, Problems};
use crate::quantity::{Enter, Entry, Flaw, Quantity, QuantityKind};

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
                self.flawed(field, flaw);
                None
            }
        }
    }

    /// One piece of code for all fields.
    #[inline(never)]
    fn flawed(&mut self, field: Field, flaw: &Flaw) {
        let cause = Cause::Entry(flaw.clone());
        self.problem(Problem { field, cause });
    }

    /// One piece of code for all fields.
    #[inline(never)]
    fn missing(&mut self, field: Field, example: String) {
        self.problem(Problem::misfit(field, Misfit::Missing { example }));
    }

    /// The field, which must be there.
    pub fn required<T: Enter + Clone>(&mut self, field: Field, entry: &Entry<T>) -> Option<T> {
        if matches!(entry, Entry::Absent) {
            self.missing(field, T::example());
            return None;
        }
        self.optional(field, entry)
    }

    /// Every item of a list, which must have at least `least`, as `read` takes it; nothing if anything is wrong.
    /// What is wrong in an item bears its place: `readings[2].pressure`.
    pub fn list<T, R>(
        &mut self,
        field: Field,
        list: &Entries<T>,
        least: usize,
        mut read: impl FnMut(&mut Self, &T) -> Option<R>,
    ) -> Option<Vec<R>> {
        let before = self.problems.len();
        let found = list.items().len();
        let items = self.each(field.clone(), list, &mut read);
        if self.problems.len() == before && found < least {
            let needed = least;
            self.problem(Problem::misfit(field, Misfit::TooFew { needed, found }));
        }
        let is_sound = self.problems.len() == before && items.len() == found;
        is_sound.then_some(items)
    }

    /// What `read` takes out of the items of a list, whatever is wrong with others.
    pub fn each<'a, T, R>(
        &mut self,
        field: Field,
        list: &'a Entries<T>,
        mut read: impl FnMut(&mut Self, &'a T) -> Option<R>,
    ) -> Vec<R> {
        self.problems.extend(list.problems_in(&field));
        let mut items = Vec::with_capacity(list.items().len());
        for (place, item) in list.items().iter().enumerate() {
            let inner = self.problems.len();
            items.extend(read(self, item));
            if self.problems.len() > inner {
                self.move_into(&field.with(&Field::item(place)), inner);
            }
        }
        items
    }

    /// The input in a field, as `read` takes it, if it is there; what is wrong in it bears its name:
    /// `liquidLine.length`.
    pub fn part<T, R>(
        &mut self,
        field: Field,
        part: &Part<T>,
        read: impl FnOnce(&mut Self, &T) -> Option<R>,
    ) -> Option<R> {
        self.problems.extend(part.problems_in(&field));
        let inner = self.problems.len();
        let found = part.given().and_then(|given| read(self, given));
        self.move_into(&field, inner);
        found
    }

    /// What `read` finds wrong bears the name of the field around it.
    pub fn inside<R>(&mut self, outer: &Field, read: impl FnOnce(&mut Self) -> R) -> R {
        let inner = self.problems.len();
        let found = read(self);
        self.move_into(outer, inner);
        found
    }

    /// Adds what another calculation found wrong.
    pub fn take_over(&mut self, problems: Problems) {
        self.problems.extend(problems);
    }

    /// Turns the fields of all problems from place `from` on into fields within `outer`.
    fn move_into(&mut self, outer: &Field, from: usize) {
        for problem in self.problems.iter_mut().skip(from) {
            problem.field = outer.with(&problem.field);
        }
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
        let given = given.map(Quantity::si);
        self.within_si(field, given, (low.si(), high.si()), Q::KIND);
    }

    /// The field if it is there, refused outside its limits.
    pub fn optional_within<Q: Quantity>(
        &mut self,
        field: Field,
        entry: &Entry<Q>,
        limits: (Q, Q),
    ) -> Option<Q> {
        let given = self.optional(field.clone(), entry);
        self.within(field, given, limits);
        given
    }

    /// The field, which must be there, refused outside its limits.
    pub fn required_within<Q: Quantity>(
        &mut self,
        field: Field,
        entry: &Entry<Q>,
        limits: (Q, Q),
    ) -> Option<Q> {
        let given = self.required(field.clone(), entry);
        self.within(field, given, limits);
        given
    }

    /// One piece of code for all quantities.
    #[inline(never)]
    fn within_si(
        &mut self,
        field: Field,
        given: Option<f64>,
        (low, high): (f64, f64),
        quantity: QuantityKind,
    ) {
        if given.is_some_and(|given| given < low || given > high) {
            self.problem(Problem::misfit(
                field,
                Misfit::OutsideValidity {
                    quantity,
                    low,
                    high,
                },
            ));
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
///
/// `required!(reading, input.length, LENGTHS)`: refused outside its limits, both included.
macro_rules! required {
    ($reading:ident, $input:ident.$field:ident) => {
        $reading.required(
            $crate::calc::Field::named(stringify!($field)),
            &$input.$field,
        )
    };
    ($reading:ident, $input:ident.$field:ident, $limits:expr) => {
        $reading.required_within(
            $crate::calc::Field::named(stringify!($field)),
            &$input.$field,
            $limits,
        )
    };
}

/// `optional!(reading, input.length)`: the field, named after itself, if it is there.
///
/// `optional!(reading, input.length, LENGTHS)`: refused outside its limits, both included.
macro_rules! optional {
    ($reading:ident, $input:ident.$field:ident) => {
        $reading.optional(
            $crate::calc::Field::named(stringify!($field)),
            &$input.$field,
        )
    };
    ($reading:ident, $input:ident.$field:ident, $limits:expr) => {
        $reading.optional_within(
            $crate::calc::Field::named(stringify!($field)),
            &$input.$field,
            $limits,
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
