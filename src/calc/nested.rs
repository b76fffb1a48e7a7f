//! Inputs within an input: a list of readings, a line with fields of its own.

use super::input::{Input, Members};
use super::problem::{Field, Misfit, Problem, Problems};
use crate::quantity::Arrived;

/// Most items of a list; more than a day of readings, one every five seconds.
pub const MOST_ITEMS: usize = 20_000;

/// A list in an input, each item an input of its own.
#[derive(Clone, Debug)]
pub struct Entries<T> {
    items: Vec<T>,
    problems: Problems,
}

/// An input that is one field of another.
#[derive(Clone, Debug)]
pub struct Part<T> {
    part: Option<T>,
    problems: Problems,
}

impl<T> Entries<T> {
    /// The items, in the order in which they arrived.
    pub fn items(&self) -> &[T] {
        &self.items
    }

    /// What is wrong with the list as such, or foreign in its items, by fields within the list `field`.
    pub(super) fn problems_in(&self, field: &Field) -> Problems {
        inside(&self.problems, field)
    }
}

impl<T> Part<T> {
    /// The input, if one arrived.
    pub fn given(&self) -> Option<&T> {
        self.part.as_ref()
    }

    /// What is wrong with it as such, or foreign in it, by fields within `field`.
    pub(super) fn problems_in(&self, field: &Field) -> Problems {
        inside(&self.problems, field)
    }
}

fn inside(problems: &[Problem], outer: &Field) -> Problems {
    let inside = |problem: &Problem| Problem {
        field: outer.with(&problem.field),
        cause: problem.cause.clone(),
    };
    problems.iter().map(inside).collect()
}

/// An item, and what is foreign in it.
fn read<T: Input>(arrived: Arrived) -> (Option<T>, Problems) {
    match Members::of(arrived) {
        Some(mut members) => (Some(T::read(&mut members)), members.problems(T::FIELDS)),
        None => (None, vec![not_an_object()]),
    }
}

fn not_an_object() -> Problem {
    Problem::misfit(Field::named(""), Misfit::NotAnObject)
}

impl<T: Input> From<Arrived> for Entries<T> {
    fn from(arrived: Arrived) -> Self {
        let arrived = match arrived {
            Arrived::Nothing => Vec::new(),
            Arrived::List(items) => items,
            _ => return Self::refused(Misfit::NotAList),
        };
        if arrived.len() > MOST_ITEMS {
            let found = arrived.len();
            return Self::refused(Misfit::TooMany {
                most: MOST_ITEMS,
                found,
            });
        }
        let mut list = Self {
            items: Vec::with_capacity(arrived.len()),
            problems: Problems::new(),
        };
        for (place, item) in arrived.into_iter().enumerate() {
            let (item, problems) = read(item);
            list.items.extend(item);
            if !problems.is_empty() {
                list.problems.extend(inside(&problems, &Field::item(place)));
            }
        }
        list
    }
}

impl<T> Entries<T> {
    fn refused(misfit: Misfit) -> Self {
        Self {
            items: Vec::new(),
            problems: vec![Problem::misfit(Field::named(""), misfit)],
        }
    }
}

impl<T: Input> From<Arrived> for Part<T> {
    fn from(arrived: Arrived) -> Self {
        if arrived == Arrived::Nothing {
            return Self::default();
        }
        let (part, problems) = read(arrived);
        Self { part, problems }
    }
}

impl<T> From<Vec<T>> for Entries<T> {
    fn from(items: Vec<T>) -> Self {
        Self {
            items,
            problems: Problems::new(),
        }
    }
}

impl<T> From<T> for Part<T> {
    fn from(part: T) -> Self {
        Self {
            part: Some(part),
            problems: Problems::new(),
        }
    }
}

impl<T> Default for Entries<T> {
    fn default() -> Self {
        Self::from(Vec::new())
    }
}

impl<T> Default for Part<T> {
    fn default() -> Self {
        Self {
            part: None,
            problems: Problems::new(),
        }
    }
}

#[cfg(feature = "terminal")]
impl<T: schemars::JsonSchema> schemars::JsonSchema for Entries<T> {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> std::borrow::Cow<'static, str> {
        format!("ListOf{}", T::schema_name()).into()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        let items = generator.subschema_for::<T>();
        schemars::json_schema!({ "type": "array", "items": items, "maxItems": MOST_ITEMS })
    }
}

#[cfg(feature = "terminal")]
impl<T: schemars::JsonSchema> schemars::JsonSchema for Part<T> {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> std::borrow::Cow<'static, str> {
        T::schema_name()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        generator.subschema_for::<T>()
    }
}
