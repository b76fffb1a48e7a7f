//! What can be wrong with something that was written where a quantity belongs.

use serde::Serialize;

use super::QuantityKind;

/// What is wrong with an entry, and what would do. Which field it concerns is known one room up.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(
    tag = "code",
    rename_all = "kebab-case",
    rename_all_fields = "camelCase"
)]
pub enum Flaw {
    /// No number stands where one must; `found` is what stands there, `at` its place, from 1.
    NotANumber {
        /// Place of the first character that does not fit, counted from 1.
        at: usize,
        /// What was found there.
        found: String,
        /// What would do.
        example: String,
    },
    /// A fraction with the denominator zero.
    DivisionByZero,
    /// A separator that one country reads as thousands and another as a decimal mark.
    AmbiguousNumber {
        /// The number as written.
        found: String,
        /// The same with a decimal point.
        decimal: String,
        /// The same as thousands.
        thousands: String,
    },
    /// Not a number, or infinite.
    NotFinite,
    /// A number without a unit, where the unit cannot be guessed.
    UnitMissing {
        /// Units that would do.
        accepted: Vec<&'static str>,
    },
    /// A unit nobody here knows.
    UnknownUnit {
        /// The unit as written.
        found: String,
        /// Units that would do.
        accepted: Vec<&'static str>,
    },
    /// A unit of another quantity, for example newton metres for a pressure.
    OtherQuantity {
        /// What the text is instead.
        found: QuantityKind,
        /// What is wanted.
        quantity: QuantityKind,
        /// Units that would do.
        accepted: Vec<&'static str>,
    },
    /// Parts that do not add up, for example inches before feet.
    PartsOutOfOrder {
        /// What would do.
        example: String,
    },
    /// Beyond what can be meant here.
    OutOfRange {
        /// What is measured.
        quantity: QuantityKind,
        /// Smallest that is accepted, SI.
        low: f64,
        /// Largest that is accepted, SI.
        high: f64,
    },
    /// Not one of the words to choose from.
    NotAChoice {
        /// The word as written.
        found: String,
        /// The words to choose from.
        accepted: Vec<&'static str>,
    },
    /// A kind of JSON value that has no meaning here, for example a list.
    WrongType {
        /// What would do.
        example: String,
    },
}
