//! What is asked for of the two lines.

use crate::calc::count::Count;
use crate::calc::input::input;
use crate::calc::nested::{Entries, Part};
use crate::quantity::{
    Density, Entry, GaugePressure, Length, Power, Ratio, Temperature, TemperatureDifference, choice,
};
use crate::tables::refrigerants::Refrigerant;
use crate::tables::tube::TubeSeries;

choice! {
    /// Which of the two units stands higher.
    HigherUnit {
        /// The indoor unit.
        Indoor = "indoor",
        /// The outdoor unit.
        Outdoor = "outdoor",
    }
}

input! {
    /// What [`line_set`](super::line_set) asks for. At least one of `cooling` and `heating` is required.
    pub struct LineSetInput {
        /// Refrigerant, required: "R-32".
        pub refrigerant: Entry<Refrigerant>,
        /// The unit cooling the rooms: the gas line is the suction line.
        pub cooling: Part<CoolingDutyInput>,
        /// The unit heating the rooms: the gas line carries discharge gas to the indoor unit.
        pub heating: Part<HeatingDutyInput>,
        /// The line that carries liquid: the thinner one.
        pub liquid_line: Part<RefrigerantLineInput>,
        /// The line that carries gas: the thicker one, the suction line in cooling.
        pub suction_line: Part<RefrigerantLineInput>,
        /// Height of one unit above the other, 0 if they stand level; without it nothing is said of static
        /// head, flash margin and oil return.
        pub lift: Entry<Length>,
        /// Which unit stands higher: "indoor" or "outdoor"; needed unless the lift is 0.
        pub higher_unit: Entry<HigherUnit>,
        /// Least capacity that the unit runs at, as a part of the full one: "30 %"; for the oil at part load.
        pub least_capacity: Entry<Ratio>,
        /// Density of the oil in a riser; 950 kg/m³ if nothing is entered.
        pub oil_density: Entry<Density>,
        /// Longest line that the plate allows, one way, without fittings.
        pub longest_length: Entry<Length>,
        /// Largest lift that the plate allows.
        pub longest_lift: Entry<Length>,
        /// Length of line that the factory charge is enough for.
        pub precharged_length: Entry<Length>,
        /// Design pressure (PS) of the system, gauge, to compare the tubes' rated pressure with.
        pub design_pressure: Entry<GaugePressure>,
        /// Temperature of the tubes for their rated pressure; 150 °F (65.6 °C) if nothing is entered, or in
        /// the gas line that of hotter discharge gas.
        pub tube_temperature: Entry<Temperature>,
    }
}

input! {
    /// The unit cooling.
    pub struct CoolingDutyInput {
        /// Cooling capacity, required: "5 kW".
        pub capacity: Entry<Power>,
        /// Evaporating temperature, required: that of the dew line at the evaporator's outlet.
        pub evaporating_temperature: Entry<Temperature>,
        /// Condensing temperature, required: that of the bubble line, from which subcooling counts.
        pub condensing_temperature: Entry<Temperature>,
        /// Superheat of the gas that leaves the evaporator, required, 0 to 30 K.
        pub superheat: Entry<TemperatureDifference>,
        /// Subcooling of the liquid that leaves the condenser, required, 0 to 40 K.
        pub subcooling: Entry<TemperatureDifference>,
    }
}

input! {
    /// The unit heating.
    pub struct HeatingDutyInput {
        /// Heating capacity, required: "6 kW".
        pub capacity: Entry<Power>,
        /// Condensing temperature, required: that of the bubble line, from which subcooling counts.
        pub condensing_temperature: Entry<Temperature>,
        /// Subcooling of the liquid that leaves the condenser, required, 0 to 40 K.
        pub subcooling: Entry<TemperatureDifference>,
        /// Superheat of the discharge gas over the dew temperature, 0 to 40 K; 30 K, common practice, if
        /// nothing is entered.
        pub discharge_superheat: Entry<TemperatureDifference>,
    }
}

input! {
    /// One of the two lines. Exactly one of `tube` and `bore` is required.
    pub struct RefrigerantLineInput {
        /// Outside diameter: a size such as "5/8" or "16 mm". Its wall comes from the table.
        pub tube: Entry<Length>,
        /// Series of sizes to look in; by default both.
        pub tube_series: Entry<TubeSeries>,
        /// Wall, where it is not the table's or the size is not in the table.
        pub wall: Entry<Length>,
        /// Inside diameter, instead of the tube; then nothing is said of the rated pressure.
        pub bore: Entry<Length>,
        /// Length of the line, one way, without fittings; without it nothing is said of pressure drops.
        pub length: Entry<Length>,
        /// Elbows of 90°; none if nothing is entered, as of all fittings.
        pub elbows_90: Entry<Count>,
        /// Elbows of 45°.
        pub elbows_45: Entry<Count>,
        /// Tees run straight through.
        pub tee_runs: Entry<Count>,
        /// Tees run through the branch.
        pub tee_branches: Entry<Count>,
        /// The tubes of a unit's smaller ports that are joined into this line, one entry a port.
        pub ports: Entries<PortTubeInput>,
    }
}

input! {
    /// The tube of a port. Exactly one of `tube` and `bore` is required.
    pub struct PortTubeInput {
        /// Outside diameter: a size such as "3/8". Its wall comes from the table.
        pub tube: Entry<Length>,
        /// Series of sizes to look in; by default both.
        pub tube_series: Entry<TubeSeries>,
        /// Wall, where it is not the table's or the size is not in the table.
        pub wall: Entry<Length>,
        /// Inside diameter, instead of the tube.
        pub bore: Entry<Length>,
    }
}
