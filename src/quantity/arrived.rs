//! What arrives at a door, before it is known what belongs where: the same tree from JSON and from the page.

/// Something that arrived, in no particular type.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Arrived {
    /// Nothing.
    #[default]
    Nothing,
    /// A number, in SI.
    Number(f64),
    /// Yes or no.
    Truth(bool),
    /// A text as typed.
    Text(String),
    /// A list.
    List(Vec<Arrived>),
    /// Named members, each name once.
    Object(Vec<(String, Arrived)>),
    /// Something that no entry can be, for example a function.
    Other,
}

/// How deep an input may be nested; what lies deeper arrives as [`Arrived::Other`].
pub const DEEPEST_INPUT: usize = 8;

/// As JSON has it; what no entry can be is written as nothing.
impl serde::Serialize for Arrived {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Nothing | Self::Other => serializer.serialize_unit(),
            Self::Number(number) => serializer.serialize_f64(*number),
            Self::Truth(truth) => serializer.serialize_bool(*truth),
            Self::Text(text) => serializer.serialize_str(text),
            Self::List(items) => serializer.collect_seq(items),
            Self::Object(members) => {
                serializer.collect_map(members.iter().map(|(name, member)| (name, member)))
            }
        }
    }
}
