//! What keeps a calculation from answering: each problem names its field and what would do.

use serde::{Serialize, Serializer};

use crate::quantity::{Flaw, Quantity, QuantityKind};

/// The field of an input, by its Rust name; it is written as in JSON.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Field(std::borrow::Cow<'static, str>);

impl Field {
    /// A field by its Rust name, for example `wrench_length`.
    pub const fn named(name: &'static str) -> Self {
        Self(std::borrow::Cow::Borrowed(name))
    }

    /// A field that arrived and that no input has.
    pub fn unknown(name: &str) -> Self {
        Self(std::borrow::Cow::Owned(name.chars().take(40).collect()))
    }

    /// A field by where it is written in a document: `plate.designPressure`.
    pub fn written(path: String) -> Self {
        Self(path.into())
    }

    /// An item of a list, by its place from 0.
    pub fn item(place: usize) -> Self {
        Self(format!("[{place}]").into())
    }

    /// A field within this one: `readings` with `[2]` with `pressure` is `readings[2].pressure`.
    #[must_use]
    pub fn with(&self, inner: &Self) -> Self {
        let dot = if inner.0.is_empty() || inner.0.starts_with('[') || self.0.is_empty() {
            ""
        } else {
            "."
        };
        Self(format!("{}{dot}{}", self.0, inner.0).into())
    }

    /// Whether a name in JSON means this field, without writing it out.
    pub fn is_written(&self, json_name: &str) -> bool {
        let mut written = json_name.bytes();
        let mut raise = false;
        for byte in self.0.bytes() {
            if byte == b'_' {
                raise = true;
                continue;
            }
            let raised = core::mem::take(&mut raise);
            let own = if raised {
                byte.to_ascii_uppercase()
            } else {
                byte
            };
            if written.next() != Some(own) {
                return false;
            }
        }
        written.next().is_none()
    }

    /// The name as in JSON: `wrenchLength`.
    pub fn json_name(&self) -> String {
        let mut name = String::with_capacity(self.0.len());
        let mut raise = false;
        for character in self.0.chars() {
            match character {
                '_' => raise = true,
                letter if raise => {
                    name.push(letter.to_ascii_uppercase());
                    raise = false;
                }
                letter => name.push(letter),
            }
        }
        name
    }
}

impl Serialize for Field {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.json_name())
    }
}

#[cfg(feature = "terminal")]
impl schemars::JsonSchema for Field {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Field".into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({ "type": "string" })
    }
}

/// One thing that keeps a calculation from answering.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Problem {
    /// The field concerned.
    pub field: Field,
    /// What is wrong and what would do.
    #[serde(flatten)]
    pub cause: Cause,
}

/// What is wrong with a field, or with fields together.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum Cause {
    /// What was written cannot be read.
    Entry(Flaw),
    /// It can be read, but does not serve.
    Use(Misfit),
}

/// Why something that can be read does not serve.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(
    tag = "code",
    rename_all = "kebab-case",
    rename_all_fields = "camelCase"
)]
pub enum Misfit {
    /// The field is empty, and the answer would be a guess without it.
    Missing {
        /// What would do.
        example: String,
    },
    /// Outside what the method is valid for.
    OutsideValidity {
        /// What is measured.
        quantity: QuantityKind,
        /// Smallest valid, SI.
        low: f64,
        /// Largest valid, SI.
        high: f64,
    },
    /// Below what the method is valid for.
    TooLow {
        /// What is measured.
        quantity: QuantityKind,
        /// Smallest valid, SI.
        limit: f64,
    },
    /// Above what the method is valid for.
    TooHigh {
        /// What is measured.
        quantity: QuantityKind,
        /// Largest valid, SI.
        limit: f64,
    },
    /// So close to the critical point that the data do not hold.
    NearCritical {
        /// What is measured.
        quantity: QuantityKind,
        /// Largest valid, SI.
        limit: f64,
        /// Its value at the critical point, SI.
        critical: f64,
    },
    /// At or above the critical point, where nothing boils or condenses.
    AboveCritical {
        /// What is measured.
        quantity: QuantityKind,
        /// Its value at the critical point, SI.
        critical: f64,
    },
    /// Colder than its dew temperature: not all of it is vapour.
    NotVapour {
        /// What is measured.
        quantity: QuantityKind,
        /// Dew temperature at the pressure, SI.
        limit: f64,
    },
    /// So many of these fields must be filled, no fewer and no more.
    WrongCount {
        /// How many.
        needed: usize,
        /// How many are.
        found: usize,
        /// The fields to choose from.
        accepted: Vec<Field>,
    },
    /// It says the same as another field, or nearly, and fixes nothing together with it.
    Dependent {
        /// The other field.
        with: Field,
    },
    /// Not in the table, which must not be interpolated.
    NotInTable {
        /// The entries it has.
        accepted: Vec<&'static str>,
    },
    /// It contradicts another field.
    Conflict {
        /// The other field.
        with: Field,
    },
    /// Together with another field it describes something that cannot be.
    Impossible {
        /// The other field.
        with: Field,
    },
    /// Written by a later version of this program.
    NewerVersion {
        /// The latest version that is known.
        known: usize,
        /// The one found.
        found: usize,
    },
    /// No input of this calculation has such a field.
    UnknownField {
        /// The fields it has.
        accepted: Vec<Field>,
    },
    /// The input as a whole, or an item of a list, is not an object.
    NotAnObject,
    /// The field is no list.
    NotAList,
    /// A list has fewer items than the answer needs.
    TooFew {
        /// How many are needed.
        needed: usize,
        /// How many there are.
        found: usize,
    },
    /// A list has more items than are read.
    TooMany {
        /// How many are read.
        most: usize,
        /// How many there are.
        found: usize,
    },
    /// An item of a list comes before the one above it.
    OutOfOrder {
        /// The field of the item above it.
        with: Field,
    },
    /// No calculation has this name.
    UnknownCalculation {
        /// The name that was asked for.
        found: String,
        /// The names there are.
        accepted: Vec<&'static str>,
    },
    /// The line is not JSON.
    NotJson {
        /// Column of the first character that does not fit, from 1.
        at: usize,
    },
    /// The line is longer than any input.
    TooLong {
        /// Most bytes that are read.
        most: usize,
    },
}

impl Problem {
    /// A field that can be read, but does not serve.
    pub fn misfit(field: Field, misfit: Misfit) -> Self {
        Self {
            field,
            cause: Cause::Use(misfit),
        }
    }

    /// A value outside what the method is valid for.
    pub fn outside<Q: Quantity>(field: Field, low: Q, high: Q) -> Self {
        let (low, high) = (low.si(), high.si());
        Self::misfit(
            field,
            Misfit::OutsideValidity {
                quantity: Q::KIND,
                low,
                high,
            },
        )
    }

    /// The code, as in JSON.
    pub fn code(&self) -> &'static str {
        match &self.cause {
            Cause::Entry(flaw) => match flaw {
                Flaw::NotANumber { .. } => "not-a-number",
                Flaw::DivisionByZero => "division-by-zero",
                Flaw::AmbiguousNumber { .. } => "ambiguous-number",
                Flaw::NotFinite => "not-finite",
                Flaw::UnitMissing { .. } => "unit-missing",
                Flaw::UnknownUnit { .. } => "unknown-unit",
                Flaw::OtherQuantity { .. } => "other-quantity",
                Flaw::PartsOutOfOrder { .. } => "parts-out-of-order",
                Flaw::OutOfRange { .. } => "out-of-range",
                Flaw::NotAChoice { .. } => "not-a-choice",
                Flaw::WrongType { .. } => "wrong-type",
            },
            Cause::Use(misfit) => match misfit {
                Misfit::Missing { .. } => "missing",
                Misfit::OutsideValidity { .. } => "outside-validity",
                Misfit::TooLow { .. } => "too-low",
                Misfit::TooHigh { .. } => "too-high",
                Misfit::NearCritical { .. } => "near-critical",
                Misfit::AboveCritical { .. } => "above-critical",
                Misfit::NotVapour { .. } => "not-vapour",
                Misfit::WrongCount { .. } => "wrong-count",
                Misfit::Dependent { .. } => "dependent",
                Misfit::NotInTable { .. } => "not-in-table",
                Misfit::Conflict { .. } => "conflict",
                Misfit::Impossible { .. } => "impossible",
                Misfit::NewerVersion { .. } => "newer-version",
                Misfit::UnknownField { .. } => "unknown-field",
                Misfit::NotAnObject => "not-an-object",
                Misfit::NotAList => "not-a-list",
                Misfit::TooFew { .. } => "too-few",
                Misfit::TooMany { .. } => "too-many",
                Misfit::OutOfOrder { .. } => "out-of-order",
                Misfit::UnknownCalculation { .. } => "unknown-calculation",
                Misfit::NotJson { .. } => "not-json",
                Misfit::TooLong { .. } => "too-long",
            },
        }
    }
}

/// All problems of an input, at least one.
pub type Problems = Vec<Problem>;
