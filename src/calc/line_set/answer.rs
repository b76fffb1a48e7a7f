//! What is found of the two lines.

use serde::Serialize;

use crate::calc::tube::Rating;
use crate::calc::verdict::Judgement;
use crate::calc::working::Working;
use crate::physics::pipe_flow::Regime;
use crate::physics::vapour::Vapour;
use crate::quantity::{
    Area, Density, DynamicViscosity, Length, MassFlow, Power, PressureDifference, Ratio,
    SpecificEnthalpy, Temperature, TemperatureDifference, Velocity,
};
use crate::tables::SourceId;
use crate::tables::refrigerants::{Refrigerant, Sourced};

/// What [`line_set`](super::line_set) finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct LineSetAnswer {
    /// The refrigerant.
    pub refrigerant: Refrigerant,
    /// The liquid line's tube; absent if it was not entered.
    pub liquid_line: Option<RefrigerantLine>,
    /// The gas line's tube; absent if it was not entered.
    pub suction_line: Option<RefrigerantLine>,
    /// What flows in cooling; absent if `cooling` was not entered.
    pub cooling: Option<Duty>,
    /// What flows in heating; absent if `heating` was not entered.
    pub heating: Option<Duty>,
    /// Height of the outdoor unit above the indoor one, negative below it; absent without a lift and the
    /// higher unit.
    pub rise: Option<Length>,
    /// The plate's limits.
    pub limits: PlateLimits,
    /// Where the refrigerant's properties come from.
    pub sources: &'static [SourceId],
}

/// The tube of a line.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct RefrigerantLine {
    /// Name of the size; absent if it is in no table or a bore was entered.
    pub name: Option<&'static str>,
    /// Outside diameter; absent if a bore was entered.
    pub outside_diameter: Option<Length>,
    /// Inside diameter.
    pub bore: Length,
    /// Its length without fittings, as entered.
    pub length: Option<Length>,
    /// Straight tube that has the friction of all fittings.
    pub fittings_length: Length,
    /// Straight tube and fittings together; absent without a length.
    pub equivalent_length: Option<Length>,
    /// What the tube bears, against the design pressure if one was entered; absent if a bore was entered.
    pub rating: Option<Rating>,
    /// The ports joined into it; absent if there are none.
    pub ports: Option<JoinedPorts>,
    /// The working.
    pub working: Working,
}

/// Smaller tubes joined into one line.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct JoinedPorts {
    /// Area of all their bores.
    pub area: Area,
    /// Area of the line's bore.
    pub line_area: Area,
    /// The line's area over theirs: at least 1 is in band (common practice, no source). The uncertainty
    /// is what the walls' tolerance does to areas.
    pub ratio: Judgement<Ratio, Ratio>,
}

/// What flows in one way of running, at full capacity.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Duty {
    /// The capacity entered.
    pub capacity: Power,
    /// Refrigerating effect in cooling, heating effect in heating: heat that a kilogram takes up in the
    /// evaporator or gives off in the condenser.
    pub effect: SpecificEnthalpy,
    /// Mass flow.
    pub mass_flow: MassFlow,
    /// Temperature of the liquid.
    pub liquid_temperature: Temperature,
    /// The gas: in cooling as it leaves the evaporator, in heating as it arrives at the condenser.
    pub gas: Vapour,
    /// Superheat taken for the discharge gas, and whether it was entered; absent in cooling.
    pub discharge_superheat: Option<Sourced<TemperatureDifference>>,
    /// Flow in the liquid line; absent without that line.
    pub liquid_line: Option<LineFlow>,
    /// Flow in the gas line: suction gas in cooling, discharge gas in heating; absent without that line.
    pub suction_line: Option<LineFlow>,
    /// Pressure that the liquid loses by climbing, negative where it gains by falling; absent without a
    /// lift and the higher unit.
    pub static_head: Option<PressureDifference>,
    /// Subcooling left at the expansion device, at the end of the liquid line: at least 0 is in band.
    /// Absent where the static head or the line's friction is not known, or the data do not reach.
    pub flash_margin: Option<Judgement<TemperatureDifference, TemperatureDifference>>,
    /// Whether oil climbs with the gas; absent where the gas line does not rise, or it is not known.
    pub oil_return: Option<OilReturn>,
    /// Capacity with the suction line's friction over that without, at constant displacement. Absent
    /// in heating, where the suction line stays inside the outdoor unit.
    pub capacity_ratio: Option<Ratio>,
    /// The working, besides that of each line.
    pub working: Working,
}

/// Flow in a line.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct LineFlow {
    /// Density.
    pub density: Density,
    /// Viscosity.
    pub viscosity: DynamicViscosity,
    /// Velocity.
    pub velocity: Velocity,
    /// How the velocity stands to what is recommended for suction gas, 4.5 to 20 m/s; absent for liquid and
    /// in heating.
    pub recommended_velocity: Option<Judgement<Velocity, Velocity>>,
    /// Reynolds number.
    pub reynolds: f64,
    /// How the refrigerant flows.
    pub regime: Regime,
    /// Fall of pressure by friction; absent without a length.
    pub friction_drop: Option<PressureDifference>,
    /// The same as kelvins of saturation temperature; absent without a length, or where the data do not reach.
    pub saturation_drop: Option<TemperatureDifference>,
    /// The working.
    pub working: Working,
}

/// Oil in a riser of the gas line.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct OilReturn {
    /// Least velocity of the gas that carries oil up, from memory of the literature.
    pub least_velocity: Velocity,
    /// The same as a mass flow.
    pub least_mass_flow: MassFlow,
    /// Capacity at which the gas has that velocity.
    pub least_capacity: Power,
    /// Velocity at full capacity: at least the least velocity is in band.
    pub at_full_capacity: Judgement<Velocity, Velocity>,
    /// Velocity at the least capacity; absent if none was entered.
    pub at_least_capacity: Option<Judgement<Velocity, Velocity>>,
    /// Density taken for the oil, and whether it was entered.
    pub oil_density: Sourced<Density>,
}

/// How the lines stand to the plate's limits: below the limit is in band. Each is absent unless both the
/// figure and the limit were entered. What was measured is taken as exact.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct PlateLimits {
    /// Length of the longer line, without fittings.
    pub length: Option<Judgement<Length, Length>>,
    /// Lift.
    pub lift: Option<Judgement<Length, Length>>,
    /// Length of the longer line against what the factory charge is enough for; beyond it, refrigerant is added.
    pub precharged_length: Option<Judgement<Length, Length>>,
}
