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

impl Figure {
    fn new<Q: Quantity>(symbol: &'static str, meaning: &'static str, quantity: Q) -> Self {
        Self {
            symbol,
            meaning,
            quantity: Q::KIND,
            si: quantity.si(),
        }
    }
}

/// A step being written down.
#[derive(Debug)]
pub struct Unfinished {
    title: &'static str,
    formula: &'static str,
    figures: Vec<Figure>,
    sources: Vec<SourceId>,
}

impl Step {
    /// Begins a step with the message id of its title and its formula.
    pub fn of(title: &'static str, formula: &'static str) -> Unfinished {
        Unfinished {
            title,
            formula,
            figures: Vec::new(),
            sources: Vec::new(),
        }
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
        self.with_figure(Figure::new(symbol, meaning, quantity))
    }

    /// One piece of code for all quantities.
    #[inline(never)]
    fn with_figure(mut self, figure: Figure) -> Self {
        self.figures.push(figure);
        self
    }

    /// Names a source.
    #[inline(never)]
    pub fn from(mut self, source: SourceId) -> Self {
        self.sources.push(source);
        self
    }

    /// Ends the step with its result.
    pub fn gives<Q: Quantity>(
        self,
        symbol: &'static str,
        meaning: &'static str,
        quantity: Q,
    ) -> Step {
        self.ended(Figure::new(symbol, meaning, quantity))
    }

    /// One piece of code for all quantities.
    #[inline(never)]
    fn ended(self, result: Figure) -> Step {
        let Self {
            title,
            formula,
            figures,
            sources,
        } = self;
        Step {
            title,
            formula,
            figures,
            result,
            sources,
        }
    }
}
