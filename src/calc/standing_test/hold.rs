//! The figures of a hold: what the gauge should show now, what is lost, what could be seen.

use serde::Serialize;

use super::instruments::Instruments;
use super::leak_size::{LeakSize, Passage};
use super::left_out::{LeftOutReason, Sorted};
use super::loss::{BEYOND_CHANCE, Loss};
use super::points::Point;
use super::readings::HoldReading;
use crate::calc::problem::{Field, Problem};
use crate::calc::refusal::Origin;
use crate::physics::nitrogen::at_constant_density;
use crate::quantity::{
    AbsolutePressure, GaugePressure, PressureDifference, PressureRate, Quantity, QuantityKind,
    Temperature, Time,
};

/// What the readings that count come to.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct HoldFigures {
    /// Place in `readings` of the first reading that counts, from 0.
    pub first_place: usize,
    /// Place of the last one.
    pub last_place: usize,
    /// Time between the two.
    pub duration: Time,
    /// What the gauge should show at the last one if nothing had leaked since the first one.
    pub expected_gauge_pressure: GaugePressure,
    /// What it did show.
    pub measured_gauge_pressure: GaugePressure,
    /// Measured less expected: negative if less is left than temperature and air explain.
    pub difference: PressureDifference,
    /// How far the difference of these two readings may be off by gauge and thermometer: three standard uncertainties.
    pub difference_uncertainty: PressureDifference,
    /// Loss of pressure over time at constant temperature, by all readings that count; negative for a gain.
    pub pressure_loss_rate: PressureRate,
    /// How far that may be off: three standard uncertainties. The verdict goes by these two.
    pub pressure_loss_rate_uncertainty: PressureRate,
    /// No more than this is lost.
    pub upper_limit: PressureRate,
    /// The least loss that such a hold shows, in six of seven holds; one of twice this size shows practically always.
    /// Twice the uncertainty, or more where a loss that has ended looks much like one that goes on.
    pub least_detectable: PressureRate,
    /// The measured loss as a leak; needs `volume`.
    pub leak: Option<LeakSize>,
    /// The upper limit as a leak.
    pub upper_limit_leak: Option<LeakSize>,
    /// The least loss that such a hold shows, as a leak.
    pub least_detectable_leak: Option<LeakSize>,
    /// Loss that matters, as entered, or 2 % of the absolute pressure in 24 hours.
    pub leak_to_see: PressureRate,
    /// Loss that matters less the measured loss: negative if more is lost.
    pub margin: PressureRate,
    /// How long a hold read like this one must last, from its first reading, to show that loss.
    pub hold_to_see: Time,
    /// How much longer that is than it lasted; zero if it lasted long enough.
    pub longer: Time,
}

/// A point of the plot: a reading, or the mean of many.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct HoldPoint {
    /// When.
    pub time: Time,
    /// Gauge pressure.
    pub gauge_pressure: GaugePressure,
    /// What it should be if nothing had leaked since the first reading that counts.
    pub expected_gauge_pressure: GaugePressure,
    /// How far the two may be apart by gauge and thermometer: three standard uncertainties.
    pub uncertainty: PressureDifference,
    /// Whether they are further apart than that.
    pub is_beyond: bool,
    /// Why it is left out, if it is.
    pub left_out: Option<LeftOutReason>,
}

/// Everything that the figures are drawn from.
pub(super) struct Hold<'a> {
    pub sorted: &'a Sorted,
    pub instruments: &'a Instruments,
    pub leak_to_see: PressureRate,
    pub passage: Option<Passage>,
}

/// The first reading that counts and the last, with their places.
pub(super) struct Ends<'a> {
    pub places: (usize, usize),
    pub first: &'a HoldReading,
    pub last: &'a HoldReading,
}

impl<'a> Ends<'a> {
    pub fn of(readings: &'a [HoldReading], sorted: &Sorted) -> Option<Self> {
        let first = sorted.used().next()?.places.0;
        let last = sorted.used().last()?.places.1;
        Some(Self {
            places: (first, last),
            first: readings.get(first)?,
            last: readings.get(last)?,
        })
    }

    /// Pressure at the last one if nothing had leaked since the first.
    pub fn expected(&self) -> Result<AbsolutePressure, Problem> {
        let pressure = self.first.absolute();
        let expected = at_constant_density(pressure, self.first.temperature, self.last.temperature);
        expected.map_err(|beyond| {
            let field = Field::named("readings").with(&Field::item(self.places.0));
            let origin = Origin {
                field: field.with(&Field::named("gauge_pressure")),
                quantity: QuantityKind::GaugePressure,
                shift: self.first.air.si(),
            };
            origin.refused(beyond, "temperature")
        })
    }
}

impl Hold<'_> {
    pub fn figures(&self, loss: &Loss, ends: &Ends<'_>, expected: AbsolutePressure) -> HoldFigures {
        let rate = PressureRate::pascals_per_second;
        let expected = expected.to_gauge(ends.last.air);
        let (loss_rate, upper) = (rate(loss.rate), rate(loss.upper_limit()));
        let detectable = rate(loss.least_detectable());
        let duration = Time::seconds(loss.duration);
        let hold_to_see = loss.hold_to_see(self.leak_to_see);
        let longer = Time::seconds((hold_to_see - duration).in_seconds().max(0.0));
        let size = |rate| self.passage.map(|passage| passage.size(rate));
        HoldFigures {
            first_place: ends.places.0,
            last_place: ends.places.1,
            duration,
            expected_gauge_pressure: expected,
            measured_gauge_pressure: ends.last.gauge,
            difference: ends.last.gauge - expected,
            difference_uncertainty: self.difference_uncertainty(ends),
            pressure_loss_rate: loss_rate,
            pressure_loss_rate_uncertainty: rate(BEYOND_CHANCE * loss.uncertainty),
            upper_limit: upper,
            least_detectable: detectable,
            leak: size(loss_rate),
            upper_limit_leak: size(upper),
            least_detectable_leak: size(detectable),
            leak_to_see: self.leak_to_see,
            margin: self.leak_to_see - loss_rate,
            hold_to_see,
            longer,
        }
    }

    fn difference_uncertainty(&self, ends: &Ends<'_>) -> PressureDifference {
        let scatter = |reading: &HoldReading| {
            let per_kelvin = reading.absolute().si() / reading.temperature.si();
            self.instruments.scatter(per_kelvin)
        };
        let change = (ends.last.temperature - ends.first.temperature).in_kelvins();
        let has_barometer = ends.first.has_barometer && ends.last.has_barometer;
        let between = self
            .instruments
            .between_ends(ends.first, change, has_barometer);
        let variance = scatter(ends.first) + scatter(ends.last) + between;
        PressureDifference::pascals(BEYOND_CHANCE * variance.sqrt())
    }

    /// The points of the plot.
    pub fn plot(&self) -> Vec<HoldPoint> {
        let Some(from) = self.sorted.used().next() else {
            return Vec::new();
        };
        let points = self.sorted.points.iter();
        points
            .filter_map(|point| self.plotted(point, from))
            .collect()
    }

    fn plotted(&self, point: &Point, from: &Point) -> Option<HoldPoint> {
        let kelvins = Temperature::kelvins;
        let full = AbsolutePressure::pascals(from.gauge + from.air);
        let expected =
            at_constant_density(full, kelvins(from.temperature), kelvins(point.temperature));
        let change = point.temperature - from.temperature;
        let by_change = self
            .instruments
            .by_change(full.si(), from.temperature, change);
        let variance = point.variance + from.variance + by_change;
        let gauge_pressure = GaugePressure::pascals(point.gauge);
        let expected_gauge_pressure = expected
            .ok()?
            .to_gauge(AbsolutePressure::pascals(point.air));
        let uncertainty = PressureDifference::pascals(BEYOND_CHANCE * variance.sqrt());
        let apart = gauge_pressure - expected_gauge_pressure;
        Some(HoldPoint {
            time: Time::seconds(point.time),
            gauge_pressure,
            expected_gauge_pressure,
            uncertainty,
            is_beyond: apart.si().abs() > uncertainty.si(),
            left_out: point.left_out,
        })
    }
}
