//! Fields with a fixed set of words to choose from.

use super::entry::Plain;
use super::{Arrived, Flaw, normalised};

/// Which of the words a text means; `r410a` means `R-410A`, for nobody hunts for a hyphen in gloves.
pub fn place_of_word(words: &[&str], text: &str) -> Option<usize> {
    let text = normalised(text);
    words.iter().position(|word| normalised(word) == text)
}

/// Where among the words whatever arrived in the field stands; `Ok(None)` for nothing. One piece of code for all choices.
///
/// # Errors
/// No text, or none of the words.
pub fn place_of_arrived(words: &[&'static str], arrived: Arrived) -> Result<Option<usize>, Flaw> {
    match Plain::of(arrived) {
        Plain::Nothing => Ok(None),
        Plain::Text(text, _) => match place_of_word(words, &text) {
            Some(place) => Ok(Some(place)),
            None => Err(Flaw::NotAChoice {
                found: text.chars().take(24).collect(),
                accepted: words.to_vec(),
            }),
        },
        _ => Err(Flaw::WrongType {
            example: words.first().copied().unwrap_or_default().into(),
        }),
    }
}

/// Defines an enum whose variants are entered and answered as words.
macro_rules! choice {
    (
        $(#[$doc:meta])*
        $name:ident { $($(#[$variant_doc:meta])* $variant:ident = $word:literal),* $(,)? }
    ) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
        #[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
        pub enum $name {
            $($(#[$variant_doc])* #[serde(rename = $word)] $variant),*
        }

        impl $name {
            /// Every choice, in the order in which it is offered.
            pub const ALL: &'static [Self] = &[$(Self::$variant),*];
            /// The words for them, in the same order.
            pub const WORDS: &'static [&'static str] = &[$($word),*];

            /// The word for this choice.
            pub const fn word(self) -> &'static str {
                match self { $(Self::$variant => $word),* }
            }
        }

        impl $crate::quantity::Enter for $name {
            fn from_number(_: f64) -> Result<Self, $crate::quantity::Flaw> {
                Err($crate::quantity::Flaw::WrongType { example: <Self as $crate::quantity::Enter>::example() })
            }

            fn from_text(text: &str, _: Option<&str>) -> Result<Self, $crate::quantity::Flaw> {
                let found = $crate::quantity::Arrived::Text(text.into());
                Self::from_arrived(found)?.ok_or_else(|| $crate::quantity::Flaw::WrongType {
                    example: <Self as $crate::quantity::Enter>::example(),
                })
            }

            fn from_arrived(arrived: $crate::quantity::Arrived) -> Result<Option<Self>, $crate::quantity::Flaw> {
                let place = $crate::quantity::place_of_arrived(Self::WORDS, arrived)?;
                Ok(place.and_then(|place| Self::ALL.get(place)).copied())
            }

            fn example() -> String {
                Self::WORDS.first().copied().unwrap_or_default().into()
            }

            #[cfg(feature = "terminal")]
            fn schema() -> (String, schemars::Schema) {
                $crate::quantity::choice_entry(stringify!($name), Self::WORDS)
            }
        }
    };
}

pub(crate) use choice;
