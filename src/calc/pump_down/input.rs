//! What pump-down asks for.

use crate::calc::count::Count;
use crate::calc::input::input;
use crate::calc::nested::Entries;
use crate::quantity::{
    AbsolutePressure, Altitude, Entry, GaugePressure, Length, Mass, Temperature, Volume,
    VolumeFlow, choice,
};
use crate::tables::tube::TubeSeries;

input! {
    /// What [`pump_down`](super::pump_down) asks for.
    pub struct PumpDownInput {
        /// Free-air speed of the vacuum pump, required: "6 cfm", "142 L/min".
        pub pump_speed: Entry<VolumeFlow>,
        /// Lowest pressure that the pump reaches, blanked off: "50 micron"; 50 micron if nothing is entered.
        pub ultimate_pressure: Entry<AbsolutePressure>,
        /// The hoses, side by side, each from the system to the pump; none: the pump stands right at the system.
        pub hoses: Entries<VacuumHoseInput>,
        /// All of the volume to empty; exactly one of this and `tubes`.
        pub volume: Entry<Volume>,
        /// The tubes to empty, whose volumes are added up.
        pub tubes: Entries<EvacuatedTubeInput>,
        /// What is emptied besides the `tubes`: coils, receivers. Not together with `volume`.
        pub coil_volume: Entry<Volume>,
        /// How wet the system is; dry if neither this nor `water` is entered.
        pub moisture: Entry<Moisture>,
        /// Liquid water, or ice, in the system: "10 g". 5 g if the system is damp and nothing is entered.
        pub water: Entry<Mass>,
        /// How deep the water stands, for the cold that its evaporation makes: "3 mm". If nothing is
        /// entered it is a film that keeps the ambient temperature, the fastest case.
        pub water_depth: Entry<Length>,
        /// Temperature of the tubes and the air around; 20 °C if nothing is entered. Matters to water only.
        pub ambient_temperature: Entry<Temperature>,
        /// Pressure in the system at the start, above vacuum; that of the air if nothing is entered.
        pub starting_pressure: Entry<AbsolutePressure>,
        /// Altitude above sea level; sea level if neither it nor `barometer` is entered.
        pub altitude: Entry<Altitude>,
        /// Pressure of the air as a barometer at the place shows it, instead of the altitude.
        pub barometer: Entry<AbsolutePressure>,
        /// Pressures whose times are wanted; 5000, 1000, 500 and 300 micron if nothing is entered.
        pub targets: Entries<VacuumTargetInput>,
        /// Pressure in the system at which the shares of the resistance are wanted; the lowest target
        /// that is reached if nothing is entered.
        pub share_pressure: Entry<AbsolutePressure>,
        /// Evacuations one after the other, each but the last broken with dry nitrogen. If nothing is
        /// entered: to 1500, 1500 and 500 micron, broken to the pressure of the air.
        pub evacuations: Entries<NitrogenBreakInput>,
        /// Bore of a tube that resists as a valve core does; 2 mm if nothing is entered.
        pub core_bore: Entry<Length>,
        /// Length of that tube; 10 mm if nothing is entered.
        pub core_length: Entry<Length>,
    }
}

input! {
    /// A hose, or several alike, from the system to the pump.
    pub struct VacuumHoseInput {
        /// Inside diameter, required: "5 mm". Not the size of its fittings: a hose with 1/4 in fittings
        /// is about 5 mm inside, one with 3/8 in fittings about 9 mm.
        pub bore: Entry<Length>,
        /// Length, required.
        pub length: Entry<Length>,
        /// Whether the valve core at the system's port is in the way; in if nothing is entered.
        pub core: Entry<ValveCore>,
        /// How many such hoses run side by side, each from a port of its own, 1 to 8; 1 if nothing is entered.
        pub count: Entry<Count>,
    }
}

input! {
    /// A length of tube that is emptied.
    pub struct EvacuatedTubeInput {
        /// Outside diameter, required: a size such as "5/8" or "16 mm".
        pub tube: Entry<Length>,
        /// Series of sizes to look in; by default both.
        pub tube_series: Entry<TubeSeries>,
        /// Length, required.
        pub length: Entry<Length>,
    }
}

input! {
    /// A pressure to reach.
    pub struct VacuumTargetInput {
        /// Pressure above vacuum, required: "500 micron".
        pub pressure: Entry<AbsolutePressure>,
    }
}

input! {
    /// One evacuation of several, and the nitrogen that follows it.
    pub struct NitrogenBreakInput {
        /// Pressure to which the pump runs, required: "1500 micron".
        pub low_pressure: Entry<AbsolutePressure>,
        /// Gauge pressure to which dry nitrogen then fills the system: "2 psi"; 0, the pressure of the
        /// air, if nothing is entered.
        pub break_pressure: Entry<GaugePressure>,
    }
}

choice! {
    /// Whether a valve core is in the way.
    ValveCore {
        /// The core is in its port, pressed open by the hose.
        In = "in",
        /// The core is taken out through a core tool.
        Out = "out",
    }
}

choice! {
    /// How wet a system is.
    Moisture {
        /// No liquid water.
        Dry = "dry",
        /// A little liquid water, 5 g unless the mass is entered.
        Damp = "damp",
    }
}
