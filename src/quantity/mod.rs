//! Typed quantities: SI inside, a distinct type for each thing that people confuse; reading what
//! people write and showing figures in a chosen unit.

mod arrived;
mod band;
mod choice;
mod decimal;
mod define;
mod entry;
mod extent;
pub mod factors;
mod flaw;
mod flow;
mod heat;
mod instant;
mod kind;
mod leak;
mod mass;
mod number;
mod plain_figure;
mod pressure;
mod ratio;
mod read;
#[cfg(feature = "terminal")]
mod schema;
mod show;
mod steps;
mod temperature;
mod unit;
mod work;

pub use arrived::{Arrived, DEEPEST_INPUT};
pub use band::Band;
pub(crate) use choice::choice;
pub use choice::{place_of_arrived, place_of_word};
pub use entry::{Enter, Entry};
pub use extent::{Altitude, Angle, Area, Length, Volume};
pub use flaw::Flaw;
pub use flow::{DynamicViscosity, Time, Velocity, VolumeFlow};
pub use heat::{HeatFlowPerLength, HeatTransferCoefficient, ThermalConductivity};
pub use instant::Moment;
pub use kind::QuantityKind;
pub use leak::{LeakRate, PressureRate, YearlyLoss};
pub use mass::{Density, Mass, MassFlow, MassPerLength};
pub use pressure::{
    AbsolutePressure, GaugePressure, PressureDifference, STANDARD_ATMOSPHERE, Stress, Vacuum,
};
pub use ratio::Ratio;
pub use read::{checked, example, read};
#[cfg(feature = "terminal")]
pub use schema::choice_entry;
pub use show::{
    InchFraction, Notation, Precision, Shown, ShownBand, nearest_sixty_fourth, show, show_band,
};
pub use steps::{Stepped, steps};
pub use temperature::{Temperature, TemperatureDifference};
pub use unit::{System, Unit, normalised};
pub use work::{Energy, Force, Power, SpecificEnthalpy, SpecificHeatCapacity, Torque};

/// What every quantity type offers.
pub trait Quantity: Copy + PartialEq + PartialOrd + core::fmt::Debug + 'static {
    /// Which quantity it is.
    const KIND: QuantityKind;
    /// The SI unit of its number.
    const SI_SYMBOL: &'static str;
    /// Its units, the usual metric one first.
    const UNITS: &'static [Unit];
    /// The range that an entry may have, in SI.
    const RANGE: (f64, f64);

    /// From the SI number.
    fn from_si(si: f64) -> Self;

    /// The SI number.
    fn si(self) -> f64;

    /// Reads what people write.
    ///
    /// # Errors
    /// See [`read`].
    fn read(text: &str) -> Result<Self, Flaw> {
        read(Self::KIND, text, None).map(Self::from_si)
    }
}

/// The JSON Schema of a quantity in an answer: an SI number whose unit is said.
#[cfg(feature = "terminal")]
fn answer_schema<Q: Quantity>() -> schemars::Schema {
    schemars::json_schema!({
        "type": "number",
        "description": format!("{} in {}", Q::KIND.name(), Q::SI_SYMBOL),
        "x-quantity": Q::KIND.name(),
        "x-unit": Q::SI_SYMBOL,
        "tsType": format!("number & {{ readonly quantity?: \"{}\" }}", Q::KIND.name()),
    })
}
