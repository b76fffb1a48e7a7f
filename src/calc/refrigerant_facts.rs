//! What a refrigerant is and how it is handled, each fact with its source.

use serde::Serialize;

use crate::quantity::Density;
use crate::tables::flare::FlareClass;
use crate::tables::refrigerants::{Component, OilFamily, Refrigerant, SafetyClass, Sourced};
use crate::tables::substances::ClimateReport;

/// Facts about a refrigerant that hold at any pressure and temperature.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct RefrigerantFacts {
    /// What it is made of, by mass.
    pub composition: Sourced<Vec<Component>>,
    /// Safety class.
    pub safety_class: Sourced<SafetyClass>,
    /// Lower flammability limit, absent if it does not burn.
    pub lower_flammability_limit: Option<Sourced<Density>>,
    /// Refrigerant concentration limit (RCL), the practical limit: the most that air in an occupied room may hold.
    pub concentration_limit: Sourced<Density>,
    /// Warming over 100 years, in kilograms of carbon dioxide for a kilogram.
    pub global_warming_potential: WarmingPotentials,
    /// Oils that go with it; the equipment's own outranks them.
    pub oils: Sourced<&'static [OilFamily]>,
    /// Whether it leaves the cylinder as liquid.
    pub charged_as_liquid: Sourced<bool>,
    /// Pressure class of flare joints, absent where it is not run through flared copper tube.
    pub flare_class: Option<Sourced<FlareClass>>,
}

/// Global warming potential in three assessment reports of the IPCC.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct WarmingPotentials {
    /// Fourth report, 2007.
    pub ar4: Sourced<f64>,
    /// Fifth report, 2013.
    pub ar5: Sourced<f64>,
    /// Sixth report, 2021.
    pub ar6: Sourced<f64>,
}

/// The facts about a refrigerant.
pub fn refrigerant_facts(refrigerant: Refrigerant) -> RefrigerantFacts {
    RefrigerantFacts {
        composition: refrigerant.composition(),
        safety_class: refrigerant.safety_class(),
        lower_flammability_limit: refrigerant.lower_flammability_limit(),
        concentration_limit: refrigerant.concentration_limit(),
        global_warming_potential: WarmingPotentials {
            ar4: refrigerant.warming_potential(ClimateReport::Ar4),
            ar5: refrigerant.warming_potential(ClimateReport::Ar5),
            ar6: refrigerant.warming_potential(ClimateReport::Ar6),
        },
        oils: refrigerant.oils(),
        charged_as_liquid: refrigerant.charged_as_liquid(),
        flare_class: refrigerant.flare_class(),
    }
}
