//! Fields with a fixed set of words to choose from.

use super::normalised;

/// Which of the words a text means; `r410a` means `R-410A`, for nobody hunts for a hyphen in gloves.
pub fn place_of_word(words: &[&str], text: &str) -> Option<usize> {
    let text = normalised(text);
    words.iter().position(|word| normalised(word) == text)
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
                let place = $crate::quantity::place_of_word(Self::WORDS, text);
                let choice = place.and_then(|place| Self::ALL.get(place));
                choice.copied().ok_or_else(|| $crate::quantity::Flaw::NotAChoice {
                    found: text.chars().take(24).collect(),
                    accepted: Self::WORDS.to_vec(),
                })
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
