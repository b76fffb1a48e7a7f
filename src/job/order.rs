//! What must not be done before something else, and what was done all the same, by whom and why.

use serde::Serialize;

use super::document::Stage;
use crate::calc::{Entries, Field, Misfit, Problem, Reading, input, optional};
use crate::quantity::{Entry, Moment, choice};

choice! {
    /// A rule of the order of work, or of safety, that was broken.
    OrderRule {
        /// The circuit was put under test pressure with a joint that is not tightened.
        PressureBeforeTightened = "pressure-before-tightened",
        /// A reading stands above the rating of the lowest-rated part.
        AboveLowestRating = "above-lowest-rating",
        /// The pump ran before the hold proved the circuit tight.
        PumpBeforeTight = "pump-before-tight",
        /// Refrigerant was released before the hold proved the circuit tight.
        ReleaseBeforeTight = "release-before-tight",
        /// Refrigerant was released before the vacuum hold passed.
        ReleaseBeforeDry = "release-before-dry",
        /// Refrigerant was released with a joint that leaks, is out of band or was not looked at.
        ReleaseBeforeLook = "release-before-look",
        /// The charge is more than a room allows.
        ChargeAboveRoomLimit = "charge-above-room-limit",
        /// The gas valve was opened before the liquid valve.
        GasValveFirst = "gas-valve-first",
    }
}

input! {
    /// Why a rule was broken, said by somebody.
    pub struct OverrideInput {
        /// A short text that no other override has.
        pub id: Entry<String>,
        /// The rule.
        pub rule: Entry<OrderRule>,
        /// Why.
        pub reason: Entry<String>,
        /// Who says so.
        pub by: Entry<String>,
        /// When.
        pub at: Entry<Moment>,
    }
}

/// Why a rule was broken.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Override {
    /// Why.
    pub reason: String,
    /// Who says so.
    pub by: String,
    /// When.
    pub at: Option<Moment>,
}

/// A rule that was broken.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Alarm {
    /// The rule.
    pub rule: OrderRule,
    /// The stage in which it was.
    pub stage: Stage,
    /// Why, if somebody answers for it.
    pub overridden: Option<Override>,
}

/// Shortest reason that is one.
const SHORTEST_REASON: usize = 4;

/// The overrides that say why and who; of two for a rule the later one holds.
#[derive(Clone, Debug, Default)]
pub(super) struct Overrides(Vec<(OrderRule, Override)>);

impl Overrides {
    pub fn take(reading: &mut Reading, entered: &Entries<OverrideInput>) -> Self {
        let field = Field::named("overrides");
        Self(reading.each(field, entered, |reading, item| {
            let rule = optional!(reading, item.rule);
            let reason = optional!(reading, item.reason);
            let by = optional!(reading, item.by);
            let at = optional!(reading, item.at);
            let is_short = |reason: &String| reason.chars().count() < SHORTEST_REASON;
            for (name, missing) in [
                ("rule", rule.is_none()),
                ("reason", reason.as_ref().is_none_or(is_short)),
                ("by", by.is_none()),
            ] {
                if missing {
                    let example = String::new();
                    let misfit = Misfit::Missing { example };
                    reading.problem(Problem::misfit(Field::named(name), misfit));
                }
            }
            let reason = reason.filter(|reason| !is_short(reason))?;
            Some((
                rule?,
                Override {
                    reason,
                    by: by?,
                    at,
                },
            ))
        }))
    }

    pub fn alarm(&self, rule: OrderRule, stage: Stage) -> Alarm {
        let said = self
            .0
            .iter()
            .rev()
            .find(|(overridden, _)| *overridden == rule);
        Alarm {
            rule,
            stage,
            overridden: said.map(|(_, said)| said.clone()),
        }
    }
}
