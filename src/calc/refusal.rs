//! What a law refuses, told of the field that brought it there.

use super::problem::{Cause, Field, Misfit, Problem};
use crate::physics::Beyond;
use crate::quantity::{Flaw, QuantityKind};

/// Where a law's argument was entered.
#[derive(Clone, Debug)]
pub struct Origin {
    /// The field.
    pub field: Field,
    /// What is entered there.
    pub quantity: QuantityKind,
    /// The law's number less the entered one: the air's pressure for a gauge reading, otherwise zero.
    pub shift: f64,
}

impl Origin {
    /// A field whose number the law takes as it is.
    pub fn of(field: &'static str, quantity: QuantityKind) -> Self {
        Self {
            field: Field::named(field),
            quantity,
            shift: 0.0,
        }
    }

    /// The problem that a law's refusal is here. What two arguments contradict is told of `with`.
    pub fn refused(&self, beyond: Beyond, with: &'static str) -> Problem {
        let quantity = self.quantity;
        let with = Field::named(with);
        let entered = |number: f64| number - self.shift;
        let misfit = match beyond {
            Beyond::NotFinite { .. } => {
                return Problem {
                    field: self.field.clone(),
                    cause: Cause::Entry(Flaw::NotFinite),
                };
            }
            Beyond::TooLow { limit, .. } => Misfit::TooLow {
                quantity,
                limit: entered(limit),
            },
            Beyond::TooHigh { limit, .. } => Misfit::TooHigh {
                quantity,
                limit: entered(limit),
            },
            Beyond::NearCritical {
                limit, critical, ..
            } => Misfit::NearCritical {
                quantity,
                limit: entered(limit),
                critical: entered(critical),
            },
            Beyond::AboveCritical { critical, .. } => Misfit::AboveCritical {
                quantity,
                critical: entered(critical),
            },
            Beyond::Wet { dew_temperature } => Misfit::NotVapour {
                quantity: QuantityKind::Temperature,
                limit: dew_temperature,
            },
            Beyond::Dependent { .. } => Misfit::Dependent { with },
            Beyond::Contradiction { .. } => Misfit::Impossible { with },
        };
        Problem::misfit(self.field.clone(), misfit)
    }
}
