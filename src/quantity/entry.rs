//! One field of an input, as it arrived: an SI number, text with a unit, or nothing yet.

use super::{Arrived, Flaw, Quantity, QuantityKind, checked, example, read};

/// What can stand in a field of an input.
pub trait Enter: Sized {
    /// From a number, which is in SI.
    ///
    /// # Errors
    /// What is wrong with it.
    fn from_number(number: f64) -> Result<Self, Flaw>;

    /// From a text; a number without a unit takes the unit `assume`, if given.
    ///
    /// # Errors
    /// What is wrong with it.
    fn from_text(text: &str, assume: Option<&str>) -> Result<Self, Flaw>;

    /// From two limits; only bands have them.
    ///
    /// # Errors
    /// What is wrong with it.
    fn from_limits(_low: Self, _high: Self) -> Result<Self, Flaw> {
        Err(wrong_type::<Self>())
    }

    /// From yes or no; only [`bool`] is.
    ///
    /// # Errors
    /// What is wrong with it.
    fn from_truth(_truth: bool) -> Result<Self, Flaw> {
        Err(wrong_type::<Self>())
    }

    /// What would do, to show beside what did not.
    fn example() -> String;

    /// From whatever arrived in the field; `Ok(None)` for nothing.
    ///
    /// # Errors
    /// What is wrong with it.
    fn from_arrived(arrived: Arrived) -> Result<Option<Self>, Flaw> {
        match Plain::of(arrived) {
            Plain::Nothing => Ok(None),
            Plain::Number(number) => Self::from_number(number).map(Some),
            Plain::Truth(truth) => Self::from_truth(truth).map(Some),
            Plain::Text(text, assume) => Self::from_text(&text, assume.as_deref()).map(Some),
            Plain::Limits(low, high) => {
                match (Self::from_arrived(low)?, Self::from_arrived(high)?) {
                    (Some(low), Some(high)) => Self::from_limits(low, high).map(Some),
                    _ => Err(wrong_type::<Self>()),
                }
            }
            Plain::Other => Err(wrong_type::<Self>()),
        }
    }

    /// Name and JSON Schema of the field.
    #[cfg(feature = "terminal")]
    fn schema() -> (String, schemars::Schema);
}

fn wrong_type<T: Enter>() -> Flaw {
    Flaw::WrongType {
        example: T::example(),
    }
}

impl<Q: Quantity> Enter for Q {
    fn from_number(number: f64) -> Result<Self, Flaw> {
        checked(Q::KIND, number).map(Q::from_si)
    }

    fn from_text(text: &str, assume: Option<&str>) -> Result<Self, Flaw> {
        read(Q::KIND, text, assume).map(Q::from_si)
    }

    fn example() -> String {
        example(Q::KIND).into()
    }

    fn from_arrived(arrived: Arrived) -> Result<Option<Self>, Flaw> {
        si_number(Q::KIND, arrived).map(|si| si.map(Q::from_si))
    }

    #[cfg(feature = "terminal")]
    fn schema() -> (String, schemars::Schema) {
        super::schema::quantity_entry(Q::KIND)
    }
}

impl Enter for bool {
    fn from_number(_: f64) -> Result<Self, Flaw> {
        Err(wrong_type::<Self>())
    }

    fn from_text(text: &str, _: Option<&str>) -> Result<Self, Flaw> {
        match text {
            "true" => Ok(true),
            "false" => Ok(false),
            _ => Err(Flaw::NotAChoice {
                found: text.into(),
                accepted: vec!["true", "false"],
            }),
        }
    }

    fn from_truth(truth: bool) -> Result<Self, Flaw> {
        Ok(truth)
    }

    fn example() -> String {
        "true".into()
    }

    #[cfg(feature = "terminal")]
    fn schema() -> (String, schemars::Schema) {
        super::schema::yes_or_no_entry()
    }
}

/// A free text, never empty.
impl Enter for String {
    fn from_number(number: f64) -> Result<Self, Flaw> {
        Ok(format!("{number}"))
    }

    fn from_text(text: &str, _: Option<&str>) -> Result<Self, Flaw> {
        Ok(text.into())
    }

    fn example() -> String {
        "140 psi".into()
    }

    #[cfg(feature = "terminal")]
    fn schema() -> (String, schemars::Schema) {
        super::schema::text_entry()
    }
}

/// One field of an input.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Entry<T> {
    /// Nothing stands there.
    #[default]
    Absent,
    /// Something that could be read.
    Read(T),
    /// Something that could not.
    Flawed(Flaw),
}

impl<T> From<T> for Entry<T> {
    fn from(read: T) -> Self {
        Self::Read(read)
    }
}

impl<T: Enter> From<Arrived> for Entry<T> {
    fn from(arrived: Arrived) -> Self {
        match T::from_arrived(arrived) {
            Ok(None) => Self::Absent,
            Ok(Some(read)) => Self::Read(read),
            Err(flaw) => Self::Flawed(flaw),
        }
    }
}

/// The SI number of a quantity from whatever arrived; one piece of code for all quantities.
fn si_number(kind: QuantityKind, arrived: Arrived) -> Result<Option<f64>, Flaw> {
    match Plain::of(arrived) {
        Plain::Nothing => Ok(None),
        Plain::Number(number) => checked(kind, number).map(Some),
        Plain::Text(text, assume) => read(kind, &text, assume.as_deref()).map(Some),
        Plain::Truth(_) | Plain::Limits(..) | Plain::Other => Err(Flaw::WrongType {
            example: example(kind).into(),
        }),
    }
}

/// What one entry can be.
pub(super) enum Plain {
    Nothing,
    Number(f64),
    Truth(bool),
    /// A text without blanks around it, never empty, and the unit of a bare number in it.
    Text(String, Option<String>),
    Limits(Arrived, Arrived),
    Other,
}

impl Plain {
    pub(super) fn of(arrived: Arrived) -> Self {
        match arrived {
            Arrived::Nothing => Self::Nothing,
            Arrived::Number(number) => Self::Number(number),
            Arrived::Truth(truth) => Self::Truth(truth),
            Arrived::Text(text) => Self::text(text, None),
            Arrived::Object(members) => Self::of_members(members),
            Arrived::List(_) | Arrived::Other => Self::Other,
        }
    }

    fn text(text: String, assume: Option<String>) -> Self {
        match text.trim() {
            "" => Self::Nothing,
            written if written.len() == text.len() => Self::Text(text, assume),
            written => Self::Text(written.into(), assume),
        }
    }

    /// `{text}`, `{text, assume}` or `{low, high}`, in any order.
    fn of_members(members: Vec<(String, Arrived)>) -> Self {
        let count = members.len();
        let mut places = [
            Arrived::Nothing,
            Arrived::Nothing,
            Arrived::Nothing,
            Arrived::Nothing,
        ];
        for (name, member) in members {
            let known = ["text", "assume", "low", "high"]
                .iter()
                .position(|known| *known == name);
            match known.and_then(|place| places.get_mut(place)) {
                Some(place) => *place = member,
                None => return Self::Other,
            }
        }
        match (count, places) {
            (1 | 2, [Arrived::Text(text), Arrived::Text(unit), ..]) => Self::text(text, Some(unit)),
            (
                1 | 2,
                [
                    Arrived::Text(text),
                    Arrived::Nothing,
                    Arrived::Nothing,
                    Arrived::Nothing,
                ],
            ) => Self::text(text, None),
            (2, [Arrived::Nothing, Arrived::Nothing, low, high]) => Self::Limits(low, high),
            _ => Self::Other,
        }
    }
}

#[cfg(feature = "terminal")]
impl<T: Enter> schemars::JsonSchema for Entry<T> {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        T::schema().0.into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        T::schema().1
    }
}
