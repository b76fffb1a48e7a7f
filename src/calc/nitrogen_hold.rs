//! What a gauge on held nitrogen shows when only the temperature has changed.

use serde::Serialize;

use super::ambient::{Ambient, Entered, ambient, by_barometer, entered, entered_steps};
use super::input::input;
use super::problem::{Field, Problem, Problems};
use super::reading::{Reading, filled, optional, required};
use super::working::{Step, Unfinished, Working};
use crate::physics::Beyond;
use crate::physics::nitrogen::{HIGHEST_PRESSURE, at_constant_density, compressibility};
use crate::quantity::{
    AbsolutePressure, Altitude, Entry, GaugePressure, PressureDifference, Quantity, Ratio,
    Temperature,
};
use crate::tables::SourceId;

input! {
    /// What [`nitrogen_hold`] asks for.
    pub struct NitrogenHoldInput {
        /// Gauge reading at the start: "140 psi"; exactly one of this and `firstAbsolutePressure`.
        pub first_gauge_pressure: Entry<GaugePressure>,
        /// Pressure above vacuum at the start.
        pub first_absolute_pressure: Entry<AbsolutePressure>,
        /// Temperature of the nitrogen at the start, required: "70 °F".
        pub first_temperature: Entry<Temperature>,
        /// Temperature of the nitrogen at the second reading, required.
        pub second_temperature: Entry<Temperature>,
        /// Gauge reading then, to compare with what is expected.
        pub second_gauge_pressure: Entry<GaugePressure>,
        /// Altitude above sea level; sea level if neither it nor `barometer` is entered.
        pub altitude: Entry<Altitude>,
        /// Pressure of the air at the start as a barometer at the place shows it, instead of the altitude.
        pub barometer: Entry<AbsolutePressure>,
        /// Pressure of the air at the second reading; the same as at the start if nothing is entered.
        pub second_barometer: Entry<AbsolutePressure>,
    }
}

/// What [`nitrogen_hold`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct NitrogenHoldAnswer {
    /// The air at the start.
    pub ambient: Ambient,
    /// The air at the second reading.
    pub second_ambient: Ambient,
    /// Pressure at the start.
    pub first_absolute_pressure: AbsolutePressure,
    /// Pressure to expect if nothing leaks.
    pub expected_absolute_pressure: AbsolutePressure,
    /// The same on a gauge.
    pub expected_gauge_pressure: GaugePressure,
    /// What an ideal gas would come to.
    pub ideal_absolute_pressure: AbsolutePressure,
    /// The same on a gauge.
    pub ideal_gauge_pressure: GaugePressure,
    /// Expected less ideal pressure.
    pub real_less_ideal: PressureDifference,
    /// Change of the gauge reading that temperature and air explain.
    pub expected_change: PressureDifference,
    /// Compressibility factor at the start.
    pub first_compressibility: Ratio,
    /// Compressibility factor at the second reading.
    pub second_compressibility: Ratio,
    /// Second gauge reading less the expected one: negative if less than temperature and air explain
    /// is left. Whether that is a leak depends on the instruments.
    pub measured_less_expected: Option<PressureDifference>,
    /// The working.
    pub working: Working,
}

/// Coldest and hottest nitrogen that is answered for.
pub const TEMPERATURES: (Temperature, Temperature) =
    (Temperature::kelvins(250.0), Temperature::kelvins(330.0));

/// Highest pressure at the start, gauge or absolute as it is entered, Pa.
pub const HIGHEST_FIRST_PRESSURE: f64 = 6e6;

/// What should the gauge show now that the nitrogen is warmer or colder?
///
/// # Method
/// `p₂ = p₁·(T₂/T₁)·Z(p₂, T₂)/Z(p₁, T₁)`, absolute, at constant density; the ideal gas has Z = 1.
///
/// # Valid for
/// 250 to 330 K, at the start up to 60 bar, afterwards up to 75 bar; all of the nitrogen at one temperature.
///
/// # Errors
/// A missing reading; a pressure or temperature outside these limits.
///
/// # Examples
/// ```
/// use coldwright::calc::nitrogen_hold::{NitrogenHoldInput, nitrogen_hold};
/// use coldwright::quantity::{GaugePressure, Quantity, Temperature};
/// let hold = nitrogen_hold(&NitrogenHoldInput {
///     first_gauge_pressure: GaugePressure::read("140 psi").unwrap().into(),
///     first_temperature: Temperature::fahrenheit(70.0).into(),
///     second_temperature: Temperature::fahrenheit(40.0).into(),
///     ..NitrogenHoldInput::default()
/// }).unwrap();
/// let psi = hold.expected_gauge_pressure.in_pascals() / 6894.757;
/// assert!((psi - 131.0).abs() < 0.05);
/// ```
///
/// # References
/// Span, Lemmon, Jacobsen, Wagner and Yokozeki, J. Phys. Chem. Ref. Data 29 (2000) 1361.
pub fn nitrogen_hold(input: &NitrogenHoldInput) -> Result<NitrogenHoldAnswer, Problems> {
    let mut reading = Reading::default();
    let gauge = optional!(reading, input.first_gauge_pressure);
    let absolute = optional!(reading, input.first_absolute_pressure);
    reading.exactly(
        1,
        &[
            filled!(input.first_gauge_pressure),
            filled!(input.first_absolute_pressure),
        ],
    );
    let first = required!(reading, input.first_temperature);
    let second = required!(reading, input.second_temperature);
    reading.within(Field::named("first_temperature"), first, TEMPERATURES);
    reading.within(Field::named("second_temperature"), second, TEMPERATURES);
    let measured = optional!(reading, input.second_gauge_pressure);
    let air = ambient(&mut reading, &input.altitude, &input.barometer);
    let later = optional!(reading, input.second_barometer).and_then(|pressure| {
        by_barometer(&mut reading, Field::named("second_barometer"), pressure)
    });
    let pressure = air.and_then(|air| {
        entered(
            ("first_gauge_pressure", gauge),
            ("first_absolute_pressure", absolute),
            air.pressure,
        )
    });
    let pressure = pressure.and_then(|pressure| reading.accept(valid(pressure)));
    reading.sound()?;
    let (Some(air), Some(pressure), Some(first), Some(second)) = (air, pressure, first, second)
    else {
        return Err(reading.take());
    };
    let hold = Hold::find(&pressure, first, second).map_err(|problem| vec![problem])?;
    let mut working = entered_steps(&pressure, &input.altitude, air);
    let later = later.unwrap_or(air);
    working.extend(hold.steps(later));
    Ok(hold.answer(&pressure, measured, air, later, working))
}

fn valid(pressure: Entered) -> Result<Entered, Problem> {
    let entered = if pressure.by_gauge {
        pressure.gauge.in_pascals()
    } else {
        pressure.absolute.in_pascals()
    };
    if pressure.absolute.in_pascals() >= 0.0 && entered <= HIGHEST_FIRST_PRESSURE {
        return Ok(pressure);
    }
    let (origin, high) = (&pressure.origin, HIGHEST_FIRST_PRESSURE);
    let low = -origin.shift;
    Err(if pressure.by_gauge {
        let limit = GaugePressure::pascals;
        Problem::outside(origin.field.clone(), limit(low), limit(high))
    } else {
        let limit = AbsolutePressure::pascals;
        Problem::outside(origin.field.clone(), limit(low), limit(high))
    })
}

/// Nitrogen at two temperatures and one density.
#[derive(Clone, Copy)]
struct Hold {
    first: Temperature,
    second: Temperature,
    filled: AbsolutePressure,
    expected: AbsolutePressure,
    factors: (f64, f64),
}

impl Hold {
    fn find(pressure: &Entered, first: Temperature, second: Temperature) -> Result<Self, Problem> {
        let filled = pressure.absolute;
        let found = at_constant_density(filled, first, second).and_then(|expected| {
            let factors = (
                compressibility(filled, first)?,
                compressibility(expected, second)?,
            );
            Ok(Self {
                first,
                second,
                filled,
                expected,
                factors,
            })
        });
        found.map_err(|beyond| {
            // What leads above the highest pressure is too much at the start.
            let most = at_constant_density(HIGHEST_PRESSURE, second, first);
            let high = most.unwrap_or(AbsolutePressure::pascals(HIGHEST_FIRST_PRESSURE));
            let beyond = match beyond {
                Beyond::TooHigh { argument, .. } => Beyond::TooHigh {
                    argument,
                    limit: high.si(),
                },
                other => other,
            };
            pressure.origin.refused(beyond, "second_temperature")
        })
    }

    fn ideal(self) -> AbsolutePressure {
        let ratio = self.second.in_kelvins() / self.first.in_kelvins();
        AbsolutePressure::pascals(self.filled.in_pascals() * ratio)
    }

    fn steps(self, later: Ambient) -> [Step; 3] {
        let temperatures = |step: Unfinished| {
            step.with("p₁", "figure-first-pressure", self.filled)
                .with("T₁", "figure-first-temperature", self.first)
                .with("T₂", "figure-second-temperature", self.second)
        };
        let gauge = self.expected.to_gauge(later.pressure);
        let real = Step::of("step-real-gas-hold", "{p₂} = {p₁}·{T₂}/{T₁}·{Z₂}/{Z₁}");
        [
            temperatures(Step::of("step-ideal-gas-hold", "{p} = {p₁}·{T₂}/{T₁}")).gives(
                "p",
                "figure-ideal-pressure",
                self.ideal(),
            ),
            temperatures(real)
                .with(
                    "Z₁",
                    "figure-compressibility",
                    Ratio::of_one(self.factors.0),
                )
                .with(
                    "Z₂",
                    "figure-compressibility",
                    Ratio::of_one(self.factors.1),
                )
                .from(SourceId::CoolProp)
                .from(SourceId::Span2000)
                .gives("p₂", "figure-expected-pressure", self.expected),
            Step::of("step-absolute-to-gauge", "{pₑ} = {p₂} − {pₐ}")
                .with("p₂", "figure-expected-pressure", self.expected)
                .with("pₐ", "figure-air-pressure", later.pressure)
                .gives("pₑ", "figure-gauge-pressure", gauge),
        ]
    }

    fn answer(
        self,
        pressure: &Entered,
        measured: Option<GaugePressure>,
        air: Ambient,
        later: Ambient,
        working: Working,
    ) -> NitrogenHoldAnswer {
        let expected = self.expected.to_gauge(later.pressure);
        NitrogenHoldAnswer {
            ambient: air,
            second_ambient: later,
            first_absolute_pressure: self.filled,
            expected_absolute_pressure: self.expected,
            expected_gauge_pressure: expected,
            ideal_absolute_pressure: self.ideal(),
            ideal_gauge_pressure: self.ideal().to_gauge(later.pressure),
            real_less_ideal: self.expected - self.ideal(),
            expected_change: expected - pressure.gauge,
            first_compressibility: Ratio::of_one(self.factors.0),
            second_compressibility: Ratio::of_one(self.factors.1),
            measured_less_expected: measured.map(|measured| measured - expected),
            working,
        }
    }
}
