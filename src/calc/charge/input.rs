//! What the charge calculation asks for.

use super::super::input::input;
use super::super::nested::Entries;
use super::total::Arrival;
use crate::physics::saturation::Phase;
use crate::quantity::{
    Entry, Length, Mass, MassPerLength, Temperature, TemperatureDifference, Volume,
};
use crate::tables::refrigerants::Refrigerant;

input! {
    /// What [`charge`](super::charge) asks for. Each part of the answer appears when its own fields are there.
    pub struct ChargeInput {
        /// Refrigerant: "R-410A". Needed for all but the plate's arithmetic and the scale's.
        pub refrigerant: Entry<Refrigerant>,
        /// Factory charge on the plate, which serves a line up to `prechargedLength`.
        pub plate_charge: Entry<Mass>,
        /// Length of line, one way, that the factory charge already serves; 0 if the plate adds from the first metre.
        pub precharged_length: Entry<Length>,
        /// Length of the line as it is run, one way.
        pub length: Entry<Length>,
        /// The plate's own adder for each length of line beyond `prechargedLength`: "0.6 oz/ft", "20 g/m".
        pub plate_adder: Entry<MassPerLength>,
        /// What the plate says to take out for each length of line short of `prechargedLength`; nothing is taken out without it.
        pub plate_reduction: Entry<MassPerLength>,
        /// Whether the equipment arrives with its factory charge in it; charged if nothing is entered.
        pub arrives: Entry<Arrival>,
        /// What accessories take beyond that: filters, receivers, branches.
        pub accessories: Entries<AccessoryInput>,
        /// What is to be weighed in, where that is known already; outranks what is worked out from the line and the accessories.
        pub charge_to_add: Entry<Mass>,
        /// Liquid line, outside diameter: a size such as "3/8" or "10 mm", whose bore comes from the table.
        pub liquid_tube: Entry<Length>,
        /// Liquid line, inside diameter, instead of `liquidTube`.
        pub liquid_bore: Entry<Length>,
        /// Temperature of the liquid that fills the liquid line (and accessories); 40 °C if nothing is entered.
        pub liquid_temperature: Entry<Temperature>,
        /// Vapour line, outside diameter: a size such as "3/4".
        pub vapour_tube: Entry<Length>,
        /// Vapour line, inside diameter, instead of `vapourTube`.
        pub vapour_bore: Entry<Length>,
        /// Dew temperature in the vapour line: what a gauge's temperature scale shows; 10 °C if nothing is entered.
        pub vapour_dew_temperature: Entry<Temperature>,
        /// Superheat in the vapour line, 0 to 40 K; 8 K if nothing is entered.
        pub superheat: Entry<TemperatureDifference>,
        /// Charging cylinder on the scale before any refrigerant moves, gross.
        pub cylinder_start: Entry<Mass>,
        /// The same scale's reading now.
        pub cylinder_now: Entry<Mass>,
        /// The charging cylinder empty, as stamped on it (TW), to see whether enough is in it.
        pub cylinder_tare: Entry<Mass>,
        /// Smallest step of the scale: the stop mark is rounded to it, towards moving less.
        pub scale_resolution: Entry<Mass>,
        /// How far one reading of the scale may be off; 10 g if nothing is entered.
        pub scale_uncertainty: Entry<Mass>,
        /// Recovery cylinder: the water it holds, as stamped on it (WC): "47.6 lb"; exactly one of this and `recoveryVolume`.
        pub recovery_water_capacity: Entry<Mass>,
        /// Recovery cylinder: its inside volume: "21.6 L".
        pub recovery_volume: Entry<Volume>,
        /// Recovery cylinder empty, as stamped on it (TW); needed for its limit.
        pub recovery_tare: Entry<Mass>,
        /// Recovery cylinder with what is in it, as weighed now.
        pub recovery_gross: Entry<Mass>,
        /// Temperature at which the liquid may take 80 % of the cylinder; 25 °C (77 °F) if nothing is entered.
        pub recovery_temperature: Entry<Temperature>,
        /// Charging hose, inside diameter.
        pub hose_bore: Entry<Length>,
        /// Charging hose, length that is emptied into the air when it is taken off.
        pub hose_length: Entry<Length>,
        /// What stands in the hose; liquid if nothing is entered.
        pub hose_phase: Entry<Phase>,
        /// Temperature of the hose; 25 °C if nothing is entered.
        pub hose_temperature: Entry<Temperature>,
    }
}

input! {
    /// An accessory in the circuit that takes refrigerant of its own.
    pub struct AccessoryInput {
        /// What it is.
        pub name: Entry<String>,
        /// Refrigerant that it takes; exactly one of this and `volume`.
        pub mass: Entry<Mass>,
        /// Its inside volume, filled with `phase` in the state of the lines.
        pub volume: Entry<Volume>,
        /// What fills the volume: liquid or vapour; needed with `volume`.
        pub phase: Entry<Phase>,
    }
}
