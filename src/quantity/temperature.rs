//! Temperature and temperature difference, which are not the same thing: 10 °C is 50 °F, but a
//! difference of 10 °C is one of 18 °F.

use super::define::{linear, quantity};
use super::factors::{KELVIN_AT_ZERO_CELSIUS, KELVIN_AT_ZERO_FAHRENHEIT, KELVIN_PER_FAHRENHEIT};
use super::unit::{System, Unit, customary, metric};

quantity! {
    /// A temperature on the thermodynamic scale.
    ///
    /// ```
    /// use coldwright::quantity::{Quantity, Temperature};
    /// let [fahrenheit, celsius] = ["-40 °F", "-40 °C"].map(|text| Temperature::read(text).unwrap());
    /// assert!((fahrenheit - celsius).in_kelvins().abs() < 1e-12);
    /// ```
    /// ```compile_fail
    /// # use coldwright::quantity::{Temperature, TemperatureDifference};
    /// let wrong: Temperature = TemperatureDifference::kelvins(5.0);
    /// ```
    /// ```compile_fail
    /// # use coldwright::quantity::Temperature;
    /// let wrong = Temperature::kelvins(300.0) + Temperature::kelvins(300.0);
    /// ```
    Temperature: "K", kelvins, in_kelvins, range 0.0, 2000.0, units &[
        Unit {
            symbol: "°C",
            spellings: &["c", "degc", "celsius"],
            scale: 1.0,
            zero: KELVIN_AT_ZERO_CELSIUS,
            step: 0.1,
            table_step: 0.1,
            system: System::Metric,
        },
        metric("K", &["kelvin"], 1.0, 0.1, 0.1),
        Unit {
            symbol: "°F",
            spellings: &["f", "degf", "fahrenheit"],
            scale: KELVIN_PER_FAHRENHEIT,
            zero: KELVIN_AT_ZERO_FAHRENHEIT,
            step: 0.1,
            table_step: 0.1,
            system: System::Customary,
        },
        customary("°R", &["r", "degr", "rankine"], KELVIN_PER_FAHRENHEIT, 0.1, 0.1),
    ]
}

quantity! {
    /// A difference of two temperatures: superheat, subcooling, glide, a split.
    TemperatureDifference: "K", kelvins, in_kelvins, range -2000.0, 2000.0, units &[
        metric("K", &["°c", "c", "degc", "kelvin", "c°"], 1.0, 0.1, 0.01),
        customary("°F", &["f", "degf", "f°", "°r", "r"], KELVIN_PER_FAHRENHEIT, 0.1, 0.01),
    ]
}
linear!(TemperatureDifference);

impl Temperature {
    /// From a number of degrees Celsius.
    pub const fn celsius(number: f64) -> Self {
        Self(number + KELVIN_AT_ZERO_CELSIUS)
    }

    /// From a number of degrees Fahrenheit.
    pub const fn fahrenheit(number: f64) -> Self {
        Self(KELVIN_AT_ZERO_FAHRENHEIT + number * KELVIN_PER_FAHRENHEIT)
    }
}

impl core::ops::Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference(self.0 - other.0)
    }
}

impl core::ops::Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, difference: TemperatureDifference) -> Self {
        Self(self.0 + difference.0)
    }
}

impl core::ops::Sub<TemperatureDifference> for Temperature {
    type Output = Self;
    fn sub(self, difference: TemperatureDifference) -> Self {
        Self(self.0 - difference.0)
    }
}
