//! Why a law gives no number.

use serde::Serialize;

/// Which argument of a law is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Argument {
    /// A temperature, K.
    Temperature,
    /// An absolute pressure, Pa.
    Pressure,
    /// Temperature above the dew point of the same pressure, K.
    Superheat,
    /// Temperature of the air, K.
    DryBulb,
    /// Temperature of a wetted thermometer in moving air, K.
    WetBulb,
    /// Temperature at which the air's moisture begins to condense, K.
    DewPoint,
    /// Vapour pressure over its saturation, of 1.
    RelativeHumidity,
    /// Mass of water over mass of dry air, of 1.
    HumidityRatio,
    /// Specific enthalpy, J/kg.
    Enthalpy,
    /// Reynolds number.
    Reynolds,
    /// Roughness over bore.
    RelativeRoughness,
    /// A bore, m.
    Diameter,
    /// A length, m.
    Length,
    /// A density, kg/m³.
    Density,
    /// A viscosity, Pa·s.
    Viscosity,
    /// A flow or pumping speed.
    Flow,
}

/// Why a law gives no number. Limits are in the SI unit of the argument.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(
    tag = "kind",
    rename_all = "kebab-case",
    rename_all_fields = "camelCase"
)]
pub enum Beyond {
    /// Not a number, or infinite.
    NotFinite {
        /// The argument.
        argument: Argument,
    },
    /// Below what the law holds for.
    TooLow {
        /// The argument.
        argument: Argument,
        /// Lowest value that is accepted.
        limit: f64,
    },
    /// Above what the law holds for.
    TooHigh {
        /// The argument.
        argument: Argument,
        /// Highest value that is accepted.
        limit: f64,
    },
    /// So close to the critical point that the data do not hold.
    NearCritical {
        /// The argument.
        argument: Argument,
        /// Highest value that is accepted.
        limit: f64,
        /// Its value at the critical point.
        critical: f64,
    },
    /// At or above the critical point: there is no saturation.
    AboveCritical {
        /// The argument.
        argument: Argument,
        /// Its value at the critical point.
        critical: f64,
    },
    /// Colder than its dew point: not all of it is vapour.
    Wet {
        /// Dew temperature at the pressure, K.
        dew_temperature: f64,
    },
    /// The two facts say the same, so that they do not fix a state.
    Dependent {
        /// One of the two.
        first: Argument,
        /// The other.
        second: Argument,
    },
    /// The two facts contradict each other.
    Contradiction {
        /// One of the two.
        first: Argument,
        /// The other.
        second: Argument,
    },
}

/// `number`, if it is finite and within both limits.
pub(super) fn within(argument: Argument, number: f64, low: f64, high: f64) -> Result<f64, Beyond> {
    if !number.is_finite() {
        Err(Beyond::NotFinite { argument })
    } else if number < low {
        Err(Beyond::TooLow {
            argument,
            limit: low,
        })
    } else if number > high {
        Err(Beyond::TooHigh {
            argument,
            limit: high,
        })
    } else {
        Ok(number)
    }
}
