//! A charge as carbon dioxide.

use serde::Serialize;

use super::super::refrigerant_facts::WarmingPotentials;
use super::super::working::{Step, Working};
use crate::quantity::{Mass, Ratio};
use crate::tables::refrigerants::{Refrigerant, Sourced};
use crate::tables::substances::ClimateReport;

/// The mass of carbon dioxide that warms as much over 100 years, by three assessment reports of the IPCC.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Warming {
    /// The refrigerant it is reckoned for: the whole charge, or what goes in where the factory charge is not entered.
    pub charge: Mass,
    /// By the fourth report, 2007, with which most laws count.
    pub ar4: Mass,
    /// By the fifth report, 2013.
    pub ar5: Mass,
    /// By the sixth report, 2021.
    pub ar6: Mass,
    /// The potentials behind them.
    pub potentials: WarmingPotentials,
}

/// A charge as carbon dioxide.
pub(super) fn warming(refrigerant: Refrigerant, charge: Mass, working: &mut Working) -> Warming {
    let mut by = |report, title| {
        let potential = refrigerant.warming_potential(report);
        let equivalent = charge * potential.figure;
        working.push(
            Step::of(title, "{E} = {m}·{GWP}")
                .with("m", "figure-charge", charge)
                .with(
                    "GWP",
                    "figure-warming-potential",
                    Ratio::of_one(potential.figure),
                )
                .from(potential.source)
                .gives("E", "figure-carbon-dioxide", equivalent),
        );
        (equivalent, potential)
    };
    let (ar4, ar4_potential): (Mass, Sourced<f64>) = by(ClimateReport::Ar4, "step-warming-ar4");
    let (ar5, ar5_potential) = by(ClimateReport::Ar5, "step-warming-ar5");
    let (ar6, ar6_potential) = by(ClimateReport::Ar6, "step-warming-ar6");
    Warming {
        charge,
        ar4,
        ar5,
        ar6,
        potentials: WarmingPotentials {
            ar4: ar4_potential,
            ar5: ar5_potential,
            ar6: ar6_potential,
        },
    }
}
