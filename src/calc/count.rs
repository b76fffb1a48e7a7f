//! A whole number of things: rows of a table, elbows in a line.

use crate::quantity::{Enter, Flaw};

/// A count from 0 to [`Count::MOST`], entered as a number or as digits.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Count(u16);

impl Count {
    /// Largest count.
    pub const MOST: u16 = 1000;

    /// A count; more than the largest becomes the largest.
    pub fn of(number: u16) -> Self {
        Self(number.min(Self::MOST))
    }

    /// As a number.
    pub const fn number(self) -> u16 {
        self.0
    }

    fn flaw(found: &str, accepted: &'static str) -> Flaw {
        Flaw::NotAChoice {
            found: found.chars().take(24).collect(),
            accepted: vec![accepted],
        }
    }

    /// What is wrong with this count where only those between two limits serve.
    pub fn between(self, least: u16, most: u16, accepted: &'static str) -> Result<Self, Flaw> {
        if (least..=most).contains(&self.0) {
            Ok(self)
        } else {
            Err(Self::flaw(&format!("{}", self.0), accepted))
        }
    }
}

impl Enter for Count {
    fn from_number(number: f64) -> Result<Self, Flaw> {
        let whole = libm::trunc(number);
        if (0.0..=f64::from(Self::MOST)).contains(&number) && whole >= number {
            Ok(Self(number as u16))
        } else {
            Err(Self::flaw(&format!("{number}"), "0…1000"))
        }
    }

    fn from_text(text: &str, _: Option<&str>) -> Result<Self, Flaw> {
        match text.parse::<u32>() {
            Ok(number) => Self::from_number(f64::from(number)),
            Err(_) => Err(Self::flaw(text, "0…1000")),
        }
    }

    fn example() -> String {
        "2".into()
    }

    #[cfg(feature = "terminal")]
    fn schema() -> (String, schemars::Schema) {
        let schema = schemars::json_schema!({
            "description": "a whole number",
            "anyOf": [
                { "type": "integer", "minimum": 0, "maximum": Self::MOST },
                { "type": "string" },
                { "type": "null" },
            ],
        });
        ("CountEntry".into(), schema)
    }
}
