//! The working of an answer: formula, figures put in, result, sources, step by step. This is how an
//! apprentice learns and a lead checks.

use serde::Serialize;

use crate::quantity::{Quantity, QuantityKind};
use crate::tables::SourceId;

/// The steps of a calculation, in order.
pub type Working = Vec<Step>;

/// One step.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Step {
    /// What the step finds: a message id.
    pub title: &'static str,
    /// The formula; each symbol that stands for a figure is in braces: `{A} = π/4·{d}²`.
    pub formula: &'static str,
    /// The figures put in.
    pub figures: Vec<Figure>,
    /// What comes out.
    pub result: Figure,
    /// Where the formula and its constants come from.
    pub sources: Vec<SourceId>,
}

/// A figure in a step.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Figure {
    /// Its symbol in the formula.
    pub symbol: &'static str,
    /// What it is: a message id.
    pub meaning: &'static str,
    /// Which quantity it is of.
    pub quantity: QuantityKind,
    /// Its SI number.
    pub si: f64,
}

/// A step being written down; boxed, since it is handed on figure by figure.
#[derive(Debug)]
pub struct Unfinished(Box<Step>);

impl Step {
    /// Begins a step with the message id of its title and its formula.
    pub fn of(title: &'static str, formula: &'static str) -> Unfinished {
        let nothing_yet = Figure {
            symbol: "",
            meaning: "",
            quantity: QuantityKind::Ratio,
            si: 0.0,
        };
        Unfinished(Box::new(Self {
            title,
            formula,
            figures: Vec::new(),
            result: nothing_yet,
            sources: Vec::new(),
        }))
    }
}

impl Unfinished {
    /// Puts a figure in.
    pub fn with<Q: Quantity>(
        self,
        symbol: &'static str,
        meaning: &'static str,
        quantity: Q,
    ) -> Self {
        self.put(symbol, meaning, Q::KIND, quantity.si())
    }

    /// Not one copy for each quantity.
    fn put(
        mut self,
        symbol: &'static str,
        meaning: &'static str,
        quantity: QuantityKind,
        si: f64,
    ) -> Self {
        self.0.figures.push(Figure {
            symbol,
            meaning,
            quantity,
            si,
        });
        self
    }

    /// Names a source.
    pub fn from(mut self, source: SourceId) -> Self {
        self.0.sources.push(source);
        self
    }

    /// Ends the step with its result.
    pub fn gives<Q: Quantity>(
        self,
        symbol: &'static str,
        meaning: &'static str,
        quantity: Q,
    ) -> Step {
        self.end(symbol, meaning, Q::KIND, quantity.si())
    }

    /// The last figure put in is the result.
    fn end(
        self,
        symbol: &'static str,
        meaning: &'static str,
        quantity: QuantityKind,
        si: f64,
    ) -> Step {
        let mut step = *self.0;
        step.result = Figure {
            symbol,
            meaning,
            quantity,
            si,
        };
        step
    }
}
