//! Time, velocity, volume flow, viscosity.

use super::define::{linear, product, quantity};
use super::factors::{
    CUBIC_METRE_PER_CUBIC_FOOT, CUBIC_METRE_PER_GALLON, KILOGRAM_PER_POUND, METRE_PER_FOOT,
};
use super::unit::{customary, metric};
use super::{Area, Length, Volume};

quantity! {
    /// A span of time.
    Time: "s", seconds, in_seconds, range 0.0, 1e10, units &[
        metric("min", &["minute", "minutes", "mins", "minuto", "minutos"], 60.0, 1.0, 0.1),
        metric("s", &["sec", "second", "seconds", "seg", "segundo", "segundos"], 1.0, 1.0, 0.1),
        metric("h", &["hr", "hrs", "hour", "hours", "hora", "horas"], 3600.0, 0.1, 0.01),
        metric("d", &["day", "days", "día", "días", "dia", "dias"], 86_400.0, 0.1, 0.01),
    ]
}
linear!(Time);

quantity! {
    /// Length per time.
    Velocity: "m/s", metres_per_second, in_metres_per_second, range 0.0, 1e4, units &[
        metric("m/s", &[], 1.0, 0.1, 0.01),
        customary("ft/s", &["fps"], METRE_PER_FOOT, 0.1, 0.01),
        customary("ft/min", &["fpm"], METRE_PER_FOOT / 60.0, 10.0, 1.0),
    ]
}
linear!(Velocity);

quantity! {
    /// Volume per time: of air over a coil, of a vacuum pump.
    VolumeFlow: "m³/s", cubic_metres_per_second, in_cubic_metres_per_second, range 0.0, 1e4, units &[
        metric("m³/h", &["cmh"], 1.0 / 3600.0, 1.0, 0.1),
        metric("L/s", &[], 1e-3, 1.0, 0.01),
        metric("L/min", &["lpm"], 1e-3 / 60.0, 1.0, 0.1),
        metric("m³/min", &["cmm"], 1.0 / 60.0, 0.1, 0.01),
        metric("m³/s", &[], 1.0, 0.001, 0.0001),
        customary("cfm", &["ft3/min", "cuft/min", "pcm", "pie3/min", "pies3/min"], CUBIC_METRE_PER_CUBIC_FOOT / 60.0, 1.0, 0.1),
        customary("gpm", &["gal/min"], CUBIC_METRE_PER_GALLON / 60.0, 0.1, 0.01),
    ]
}
linear!(VolumeFlow);

quantity! {
    /// Dynamic viscosity.
    DynamicViscosity: "Pa·s", pascal_seconds, in_pascal_seconds, range 0.0, 1e3, units &[
        metric("mPa·s", &["cp", "centipoise"], 1e-3, 0.01, 0.0001),
        metric("µPa·s", &[], 1e-6, 0.1, 0.01),
        metric("Pa·s", &[], 1.0, 1e-5, 1e-7),
        customary("lb/(ft·h)", &["lb/fth"], KILOGRAM_PER_POUND / METRE_PER_FOOT / 3600.0, 0.01, 0.0001),
    ]
}
linear!(DynamicViscosity);

product!(Velocity * Time = Length);
product!(VolumeFlow * Time = Volume);
product!(Velocity * Area = VolumeFlow);
