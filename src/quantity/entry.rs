//! One field of an input, as it arrived: an SI number, text with a unit, or nothing yet.

use core::fmt;

use serde::de::{Deserialize, Deserializer, IgnoredAny, MapAccess, SeqAccess, Visitor};

use super::{Flaw, Quantity, QuantityKind, checked, example, read};

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
        match arrived {
            Arrived::Nothing => Ok(None),
            Arrived::Number(number) => Self::from_number(number).map(Some),
            Arrived::Truth(truth) => Self::from_truth(truth).map(Some),
            Arrived::Text(text, _) if text.trim().is_empty() => Ok(None),
            Arrived::Text(text, assume) => {
                Self::from_text(text.trim(), assume.as_deref()).map(Some)
            }
            Arrived::Limits(limits) => {
                let (low, high) = *limits;
                match (Self::from_arrived(low)?, Self::from_arrived(high)?) {
                    (Some(low), Some(high)) => Self::from_limits(low, high).map(Some),
                    _ => Err(wrong_type::<Self>()),
                }
            }
            Arrived::Other => Err(wrong_type::<Self>()),
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

impl<'de, T: Enter> Deserialize<'de> for Entry<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let arrived = Arrived::deserialize(deserializer)?;
        Ok(match T::from_arrived(arrived) {
            Ok(None) => Self::Absent,
            Ok(Some(read)) => Self::Read(read),
            Err(flaw) => Self::Flawed(flaw),
        })
    }
}

/// The SI number of a quantity from whatever arrived; one piece of code for all quantities.
fn si_number(kind: QuantityKind, arrived: Arrived) -> Result<Option<f64>, Flaw> {
    match arrived {
        Arrived::Nothing => Ok(None),
        Arrived::Number(number) => checked(kind, number).map(Some),
        Arrived::Text(text, _) if text.trim().is_empty() => Ok(None),
        Arrived::Text(text, assume) => read(kind, &text, assume.as_deref()).map(Some),
        Arrived::Truth(_) | Arrived::Limits(_) | Arrived::Other => Err(Flaw::WrongType {
            example: example(kind).into(),
        }),
    }
}

/// What arrived in a field, before it is known what belongs there. One type for all fields: a
/// reader for each of them would make half of the page's module.
pub enum Arrived {
    /// Nothing.
    Nothing,
    /// A number, in SI.
    Number(f64),
    /// Yes or no.
    Truth(bool),
    /// A text, and the unit of a bare number in it.
    Text(String, Option<String>),
    /// Two limits.
    Limits(Box<(Arrived, Arrived)>),
    /// Anything else.
    Other,
}

impl<'de> Deserialize<'de> for Arrived {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(ArrivedVisitor)
    }
}

struct ArrivedVisitor;

impl<'de> Visitor<'de> for ArrivedVisitor {
    type Value = Arrived;

    fn expecting(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str("a number, a text or nothing")
    }

    fn visit_f64<E: serde::de::Error>(self, number: f64) -> Result<Arrived, E> {
        Ok(Arrived::Number(number))
    }

    fn visit_i64<E: serde::de::Error>(self, number: i64) -> Result<Arrived, E> {
        Ok(Arrived::Number(number as f64))
    }

    fn visit_u64<E: serde::de::Error>(self, number: u64) -> Result<Arrived, E> {
        Ok(Arrived::Number(number as f64))
    }

    fn visit_bool<E: serde::de::Error>(self, truth: bool) -> Result<Arrived, E> {
        Ok(Arrived::Truth(truth))
    }

    fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Arrived, E> {
        Ok(Arrived::Text(text.into(), None))
    }

    fn visit_unit<E: serde::de::Error>(self) -> Result<Arrived, E> {
        Ok(Arrived::Nothing)
    }

    fn visit_none<E: serde::de::Error>(self) -> Result<Arrived, E> {
        Ok(Arrived::Nothing)
    }

    fn visit_some<D: Deserializer<'de>>(self, inner: D) -> Result<Arrived, D::Error> {
        inner.deserialize_any(self)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut sequence: A) -> Result<Arrived, A::Error> {
        while sequence.next_element::<IgnoredAny>()?.is_some() {}
        Ok(Arrived::Other)
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Arrived, A::Error> {
        let (mut text, mut assume) = (Arrived::Nothing, Arrived::Nothing);
        let (mut low, mut high) = (Arrived::Nothing, Arrived::Nothing);
        let mut foreign = false;
        while let Some(key) = map.next_key::<String>()? {
            let member = match key.as_str() {
                "text" => &mut text,
                "assume" => &mut assume,
                "low" => &mut low,
                "high" => &mut high,
                _ => {
                    map.next_value::<IgnoredAny>()?;
                    foreign = true;
                    continue;
                }
            };
            *member = map.next_value()?;
        }
        Ok(match (text, assume, low, high) {
            _ if foreign => Arrived::Other,
            (
                Arrived::Text(text, None),
                Arrived::Text(unit, None),
                Arrived::Nothing,
                Arrived::Nothing,
            ) => Arrived::Text(text, Some(unit)),
            (Arrived::Text(text, None), Arrived::Nothing, Arrived::Nothing, Arrived::Nothing) => {
                Arrived::Text(text, None)
            }
            (Arrived::Nothing, Arrived::Nothing, low, high) => {
                Arrived::Limits(Box::new((low, high)))
            }
            _ => Arrived::Other,
        })
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
