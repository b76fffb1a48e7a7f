//! Heat on its way: through a material, from a surface, into a length of line.

use super::define::{linear, quantity};
use super::factors::{JOULE_PER_BTU, KELVIN_PER_FAHRENHEIT, METRE_PER_FOOT, METRE_PER_INCH};
use super::unit::{customary, metric};

/// Watt per British thermal unit an hour.
const WATT_PER_BTU_AN_HOUR: f64 = JOULE_PER_BTU / 3600.0;

quantity! {
    /// Heat that a material lets through: power per length and temperature difference.
    ThermalConductivity: "W/(m·K)", watts_per_metre_kelvin, in_watts_per_metre_kelvin,
    range 0.0, 1e4, units &[
        metric("W/(m·K)", &[], 1.0, 0.001, 0.0001),
        metric("mW/(m·K)", &[], 1e-3, 1.0, 0.1),
        customary(
            "Btu·in/(h·ft²·°F)", &["btuin/hft2f", "btuin/hrft2°f", "btuin/hrft2f"],
            WATT_PER_BTU_AN_HOUR * METRE_PER_INCH / (METRE_PER_FOOT * METRE_PER_FOOT * KELVIN_PER_FAHRENHEIT),
            0.01, 0.001,
        ),
    ]
}
linear!(ThermalConductivity);

quantity! {
    /// Heat that a surface takes up or gives off: power per area and temperature difference.
    HeatTransferCoefficient: "W/(m²·K)", watts_per_square_metre_kelvin, in_watts_per_square_metre_kelvin,
    range 0.0, 1e6, units &[
        metric("W/(m²·K)", &[], 1.0, 0.1, 0.01),
        customary(
            "Btu/(h·ft²·°F)", &["btu/hft2f", "btu/hrft2°f", "btu/hrft2f"],
            WATT_PER_BTU_AN_HOUR / (METRE_PER_FOOT * METRE_PER_FOOT * KELVIN_PER_FAHRENHEIT),
            0.01, 0.001,
        ),
    ]
}
linear!(HeatTransferCoefficient);

quantity! {
    /// Heat that a length of line takes up: power per length.
    HeatFlowPerLength: "W/m", watts_per_metre, in_watts_per_metre, range -1e6, 1e6, units &[
        metric("W/m", &[], 1.0, 0.1, 0.01),
        customary("Btu/(h·ft)", &["btu/hrft"], WATT_PER_BTU_AN_HOUR / METRE_PER_FOOT, 0.1, 0.01),
    ]
}
linear!(HeatFlowPerLength);
