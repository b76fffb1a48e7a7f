//! The field names of an input, as its derived reader knows them.

use serde::de::{Deserialize, Deserializer, Error, Visitor, value};
use serde::forward_to_deserialize_any;

/// The names of the fields of a struct, as in JSON.
///
/// The derived reader of a struct hands its field names to the format; this format keeps them and
/// reads nothing.
pub fn fields_of<'de, T: Deserialize<'de>>() -> &'static [&'static str] {
    let mut fields: &'static [&'static str] = &[];
    // The error is the format's way to say that it has read nothing.
    let _ = T::deserialize(FieldNames(&mut fields));
    fields
}

struct FieldNames<'a>(&'a mut &'static [&'static str]);

impl<'de> Deserializer<'de> for FieldNames<'_> {
    type Error = value::Error;

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        fields: &'static [&'static str],
        _: V,
    ) -> Result<V::Value, Self::Error> {
        *self.0 = fields;
        Err(Error::custom("names only"))
    }

    fn deserialize_any<V: Visitor<'de>>(self, _: V) -> Result<V::Value, Self::Error> {
        Err(Error::custom("names only"))
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf option
        unit unit_struct newtype_struct seq tuple tuple_struct map enum identifier ignored_any
    }
}
