//! The quantities as data: for an edge that learns only at run time what it has before it.

use serde::Serialize;

use super::{
    AbsolutePressure, Altitude, Angle, Area, Density, DynamicViscosity, Energy, Force,
    GaugePressure, Length, Mass, MassFlow, MassPerLength, Power, PressureDifference, Quantity,
    Ratio, SpecificEnthalpy, SpecificHeatCapacity, Stress, System, Temperature,
    TemperatureDifference, Time, Torque, Unit, Vacuum, Velocity, Volume, VolumeFlow, normalised,
};
use super::{HeatFlowPerLength, HeatTransferCoefficient, ThermalConductivity};
use super::{LeakRate, PressureRate, YearlyLoss};

macro_rules! kinds {
    ($($name:ident $text:literal),* $(,)?) => {
        /// Which quantity a number is of.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
        #[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
        #[serde(rename_all = "kebab-case")]
        pub enum QuantityKind {
            $(#[doc = concat!("See [`", stringify!($name), "`].")] $name),*
        }

        impl QuantityKind {
            /// Every quantity, in the order in which a free text is tried.
            pub const ALL: &'static [(&'static str, Self)] = &[$(($text, Self::$name)),*];

            /// Its units, the usual metric one first.
            pub const fn units(self) -> &'static [Unit] {
                match self { $(Self::$name => $name::UNITS),* }
            }

            /// The range that an entry may have, in SI.
            pub const fn range(self) -> (f64, f64) {
                match self { $(Self::$name => $name::RANGE),* }
            }

            /// The SI unit.
            pub const fn si_symbol(self) -> &'static str {
                match self { $(Self::$name => $name::SI_SYMBOL),* }
            }
        }
    };
}

// The trade's meaning first: "140 psi" is a gauge reading, "500 micron" a pressure and not a length.
kinds! {
    GaugePressure "gauge-pressure",
    AbsolutePressure "absolute-pressure",
    Vacuum "vacuum",
    Torque "torque",
    Length "length",
    Temperature "temperature",
    Mass "mass",
    Power "power",
    VolumeFlow "volume-flow",
    Area "area",
    Volume "volume",
    MassPerLength "mass-per-length",
    Density "density",
    MassFlow "mass-flow",
    Force "force",
    Energy "energy",
    Velocity "velocity",
    SpecificEnthalpy "specific-enthalpy",
    SpecificHeatCapacity "specific-heat-capacity",
    DynamicViscosity "dynamic-viscosity",
    Time "time",
    Angle "angle",
    Ratio "ratio",
    TemperatureDifference "temperature-difference",
    PressureDifference "pressure-difference",
    Stress "stress",
    Altitude "altitude",
    ThermalConductivity "thermal-conductivity",
    HeatTransferCoefficient "heat-transfer-coefficient",
    HeatFlowPerLength "heat-flow-per-length",
    PressureRate "pressure-rate",
    LeakRate "leak-rate",
    YearlyLoss "yearly-loss",
}

impl QuantityKind {
    /// The unit that `spelled` means for this quantity, and the sign that its spelling brings:
    /// `inHg vac` turns a gauge pressure negative.
    pub fn unit(self, spelled: &str) -> Option<(&'static Unit, f64)> {
        let spelled = normalised(spelled);
        let found = |text: &str| self.units().iter().find(|unit| unit.is_spelled(text));
        let marked = |marks: &[&str]| {
            marks
                .iter()
                .find_map(|mark| spelled.strip_suffix(mark))
                .and_then(found)
        };
        match self {
            Self::GaugePressure => found(&spelled)
                .or_else(|| marked(GAUGE_MARKS))
                .map(|unit| (unit, 1.0))
                .or_else(|| marked(VACUUM_MARKS).map(|unit| (unit, -1.0))),
            Self::AbsolutePressure => found(&spelled)
                .or_else(|| marked(ABSOLUTE_MARKS))
                .map(|unit| (unit, 1.0)),
            // Without its mark a vacuum would be taken for a pressure.
            Self::Vacuum => marked(VACUUM_MARKS).map(|unit| (unit, 1.0)),
            _ => found(&spelled).map(|unit| (unit, 1.0)),
        }
    }

    /// The unit that is shown with `symbol`.
    pub fn unit_of_symbol(self, symbol: &str) -> Option<&'static Unit> {
        self.units().iter().find(|unit| unit.symbol == symbol)
    }

    /// The symbols of its units.
    pub fn symbols(self) -> Vec<&'static str> {
        self.units().iter().map(|unit| unit.symbol).collect()
    }

    /// The first unit of a system, or the first of all.
    pub fn usual_unit(self, system: System) -> Option<&'static Unit> {
        let units = self.units();
        units
            .iter()
            .find(|unit| unit.system == system)
            .or_else(|| units.first())
    }

    /// The quantity with this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL
            .iter()
            .find(|(known, _)| *known == name)
            .map(|(_, kind)| *kind)
    }

    /// Its name, as in JSON.
    pub fn name(self) -> &'static str {
        Self::ALL
            .iter()
            .find(|(_, kind)| *kind == self)
            .map_or("", |(name, _)| name)
    }

    /// Whether people write it in parts: feet and inches, pounds and ounces, hours and minutes.
    pub fn has_parts(self) -> bool {
        matches!(self, Self::Length | Self::Mass | Self::Time)
    }
}

// A mark that ends another one stands after it.
const GAUGE_MARKS: &[&str] = &["gauge", "gage", "g", "man", "rel", "manométrica"];
const ABSOLUTE_MARKS: &[&str] = &["absolute", "absoluta", "abs", "a"];
const VACUUM_MARKS: &[&str] = &["vacuum", "vac", "v", "devacío", "devacio", "vacío", "vacio"];
