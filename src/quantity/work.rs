//! Force, torque, energy, power, heat. Torque and energy share a dimension and are not the same thing.

use super::define::{linear, product, quantity};
use super::factors::{
    JOULE_PER_BTU, JOULE_PER_CALORIE, KELVIN_PER_FAHRENHEIT, KILOGRAM_PER_POUND,
    NEWTON_METRE_PER_POUND_FORCE_FOOT, NEWTON_METRE_PER_POUND_FORCE_INCH, NEWTON_PER_POUND_FORCE,
    STANDARD_GRAVITY, WATT_PER_HORSEPOWER, WATT_PER_TON_OF_REFRIGERATION,
};
use super::unit::{customary, metric};
use super::{Mass, MassFlow, Time};

quantity! {
    /// A force.
    Force: "N", newtons, in_newtons, range 0.0, 1e7, units &[
        metric("N", &["newton", "newtons"], 1.0, 1.0, 0.1),
        metric("kN", &[], 1e3, 0.01, 0.001),
        metric("kgf", &["kp"], STANDARD_GRAVITY, 0.1, 0.01),
        customary("lbf", &["poundforce"], NEWTON_PER_POUND_FORCE, 1.0, 0.1),
    ]
}
linear!(Force);

quantity! {
    /// A turning moment, what a torque wrench is set to.
    ///
    /// ```
    /// use coldwright::quantity::{Quantity, Torque};
    /// let set = Torque::read("25 ft-lb").unwrap();
    /// assert!((set.in_newton_metres() - 33.895_448_708_285_01).abs() < 1e-12);
    /// ```
    /// Not an energy, although the units look alike:
    /// ```compile_fail
    /// # use coldwright::quantity::{Energy, Torque};
    /// let wrong: Energy = Torque::newton_metres(38.0);
    /// ```
    Torque: "N·m", newton_metres, in_newton_metres, range 0.0, 1e5, units &[
        metric("N·m", &["newtonmetro", "newtonmetros", "newtonmetre", "newtonmeter", "newtonmetres", "newtonmeters"], 1.0, 1.0, 0.1),
        metric("N·cm", &[], 0.01, 10.0, 1.0),
        metric("kgf·m", &["kgm", "kpm"], STANDARD_GRAVITY, 0.1, 0.01),
        metric("kgf·cm", &["kgcm", "kpcm"], STANDARD_GRAVITY / 100.0, 10.0, 1.0),
        customary(
            "ft·lbf",
            &["ftlb", "ftlbs", "lbft", "lbsft", "lbfft", "footpound", "footpounds", "poundfoot", "poundfeet", "lbpie", "lbspie", "lbfpie", "pielb", "pielbf", "librapie", "libraspie", "pielibra", "pielibras"],
            NEWTON_METRE_PER_POUND_FORCE_FOOT, 1.0, 0.1,
        ),
        customary(
            "in·lbf",
            &["inlb", "inlbs", "lbin", "lbsin", "lbfin", "inchpound", "inchpounds", "lbpulg", "lbspulg", "lbfpulg", "pulglb", "pulglbf", "librapulgada", "libraspulgada"],
            NEWTON_METRE_PER_POUND_FORCE_INCH, 10.0, 1.0,
        ),
    ]
}
linear!(Torque);

quantity! {
    /// Work or heat.
    Energy: "J", joules, in_joules, range -1e12, 1e12, units &[
        metric("kJ", &[], 1e3, 0.1, 0.01),
        metric("J", &["joule", "joules"], 1.0, 1.0, 0.1),
        metric("MJ", &[], 1e6, 0.01, 0.001),
        metric("kWh", &[], 3.6e6, 0.01, 0.001),
        metric("Wh", &[], 3600.0, 1.0, 0.1),
        metric("kcal", &[], 1e3 * JOULE_PER_CALORIE, 0.1, 0.01),
        customary("Btu", &["btus"], JOULE_PER_BTU, 1.0, 0.1),
    ]
}
linear!(Energy);

quantity! {
    /// Energy per time: capacity of a unit, input of a compressor.
    Power: "W", watts, in_watts, range -1e9, 1e9, units &[
        metric("kW", &["kilowatt", "kilowatts"], 1e3, 0.1, 0.01),
        metric("W", &["watt", "watts"], 1.0, 10.0, 1.0),
        metric("kcal/h", &["kcal/hr", "frig/h", "frigorías/h", "frigorias/h"], 1e3 * JOULE_PER_CALORIE / 3600.0, 10.0, 1.0),
        customary("Btu/h", &["btuh", "btu/hr", "btuhr"], JOULE_PER_BTU / 3600.0, 100.0, 1.0),
        customary("tonr", &["ton", "tons", "tr", "rt", "tonelada", "toneladas"], WATT_PER_TON_OF_REFRIGERATION, 0.1, 0.01),
        customary("hp", &["horsepower"], WATT_PER_HORSEPOWER, 0.1, 0.01),
    ]
}
linear!(Power);

quantity! {
    /// Heat content per mass, from the reference state that its source names.
    SpecificEnthalpy: "J/kg", joules_per_kilogram, in_joules_per_kilogram, range -1e7, 1e7, units &[
        metric("kJ/kg", &[], 1e3, 0.1, 0.01),
        metric("J/kg", &[], 1.0, 1.0, 0.1),
        customary("Btu/lb", &["btu/lbm"], JOULE_PER_BTU / KILOGRAM_PER_POUND, 0.1, 0.01),
    ]
}
linear!(SpecificEnthalpy);

quantity! {
    /// Heat per mass and temperature difference.
    SpecificHeatCapacity: "J/(kg·K)", joules_per_kilogram_kelvin, in_joules_per_kilogram_kelvin,
    range 0.0, 1e6, units &[
        metric("kJ/(kg·K)", &["kj/kgk"], 1e3, 0.01, 0.001),
        metric("J/(kg·K)", &["j/kgk"], 1.0, 1.0, 0.1),
        customary(
            "Btu/(lb·°F)", &["btu/lb°f", "btu/lbf"],
            JOULE_PER_BTU / KILOGRAM_PER_POUND / KELVIN_PER_FAHRENHEIT, 0.01, 0.001,
        ),
    ]
}
linear!(SpecificHeatCapacity);

product!(Power * Time = Energy);
product!(SpecificEnthalpy * Mass = Energy);
product!(SpecificEnthalpy * MassFlow = Power);
