//! Where a field of a calculation stands in the job document.

use crate::calc::{Field, Problem, Problems};

/// The fields of a calculation in the document.
pub(super) struct Paths {
    /// Fields that are entered elsewhere, and where.
    pub shared: &'static [(&'static str, &'static str)],
    /// Where the others are.
    pub own: &'static str,
}

impl Paths {
    /// The problems, each by its place in the document; `places` are those of the readings asked about.
    pub fn place(&self, problems: Problems, places: &[usize]) -> Problems {
        let each = problems.into_iter().map(|problem| Problem {
            field: self.field(&problem.field, places),
            cause: problem.cause,
        });
        each.collect()
    }

    pub fn field(&self, field: &Field, places: &[usize]) -> Field {
        let name = field.json_name();
        let end = name.find(['.', '[']).unwrap_or(name.len());
        let (first, rest) = name.split_at_checked(end).unwrap_or((&name, ""));
        let shared = self.shared.iter().find(|(own, _)| *own == first);
        Field::written(match shared {
            Some((_, path)) if first == "readings" => format!("{path}{}", moved(rest, places)),
            Some((_, path)) => format!("{path}{rest}"),
            None => format!("{}.{name}", self.own),
        })
    }
}

/// `[2].pressure` of the readings asked about, in the document's list.
fn moved(rest: &str, places: &[usize]) -> String {
    let parts = rest.strip_prefix('[').and_then(|rest| rest.split_once(']'));
    let place = parts.and_then(|(place, _)| place.parse::<usize>().ok());
    match (parts, place.and_then(|place| places.get(place))) {
        // What is a time since the first reading there is a moment here.
        (Some((_, ".time")), Some(place)) => format!("[{place}].at"),
        (Some((_, rest)), Some(place)) => format!("[{place}]{rest}"),
        _ => rest.to_owned(),
    }
}
