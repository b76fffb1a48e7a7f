//! Air before or after the indoor coil.

use super::measured::{ErrorSource, Read};
use super::readings::Accuracy;
use crate::calc::problem::Problem;
use crate::calc::refusal::Origin;
use crate::physics::moist_air::{Known, MoistAir, state};
use crate::physics::{Argument, Beyond};
use crate::quantity::{AbsolutePressure, Quantity, QuantityKind, Ratio, Temperature};

/// Air so dry that it holds no heat in its moisture.
pub(super) const DRY: Known = Known::HumidityRatio(Ratio::of_one(1e-6));

/// Air at one side of the indoor coil, as far as it was measured.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stream {
    pub dry_bulb: Option<Temperature>,
    /// Wet bulb or relative humidity.
    pub humidity: Option<Known>,
}

/// The fields of a stream: dry bulb, wet bulb, relative humidity.
pub(super) type StreamFields = [&'static str; 3];

impl Stream {
    /// Both numbers of its state, if it was measured whole.
    pub fn numbers(self) -> Option<[f64; 2]> {
        Some([self.dry_bulb?.si(), humidity_number(self.humidity?)])
    }

    /// Its state, with other numbers for both readings.
    pub fn state_of(self, dry_bulb: f64, humidity: f64, p: AbsolutePressure) -> Option<MoistAir> {
        let humidity = match self.humidity? {
            Known::RelativeHumidity(_) => Known::RelativeHumidity(Ratio::of_one(humidity)),
            _ => Known::WetBulb(Temperature::from_si(humidity)),
        };
        state(Known::DryBulb(Temperature::from_si(dry_bulb)), humidity, p).ok()
    }

    /// Its wet bulb, with other numbers for both readings: the one entered, or that of the humidity.
    pub fn wet_bulb_of(self, dry_bulb: f64, humidity: f64, p: AbsolutePressure) -> Option<f64> {
        match self.humidity? {
            Known::WetBulb(_) => Some(humidity),
            _ => Some(self.state_of(dry_bulb, humidity, p)?.wet_bulb.si()),
        }
    }

    /// Dry bulb and humidity as readings with their errors; a dry bulb that is not needed is nothing.
    pub fn reads(self, accuracy: &Accuracy) -> Option<[Read; 2]> {
        let humidity = self.humidity?;
        let by_wet_bulb = matches!(humidity, Known::WetBulb(_));
        let dry_bulb = match self.dry_bulb {
            None if by_wet_bulb => Temperature::from_si(0.0),
            dry_bulb => dry_bulb?,
        };
        Some([
            accuracy.air(dry_bulb),
            if by_wet_bulb {
                accuracy.air(Temperature::from_si(humidity_number(humidity)))
            } else {
                Read {
                    si: humidity_number(humidity),
                    error: accuracy.relative_humidity.si(),
                    source: ErrorSource::Hygrometer,
                }
            },
        ])
    }

    /// Whether dry bulb and humidity can be together in this air, or the dry bulb alone if a
    /// capacity is asked for; where not, the problem names the field.
    pub fn checked(
        self,
        fields: StreamFields,
        p: AbsolutePressure,
        air: &'static str,
        capacity: bool,
    ) -> Result<(), Problem> {
        let humidity = self.humidity.or(capacity.then_some(DRY));
        let (Some(dry_bulb), Some(humidity)) = (self.dry_bulb, humidity) else {
            return Ok(());
        };
        let [dry_field, wet_field, humid_field] = fields;
        let (other, quantity) = match humidity {
            Known::RelativeHumidity(_) => (humid_field, QuantityKind::Ratio),
            _ => (wet_field, QuantityKind::Temperature),
        };
        let refused = |beyond: Beyond| match beyond {
            Beyond::TooLow {
                argument: Argument::Pressure,
                ..
            }
            | Beyond::TooHigh {
                argument: Argument::Pressure,
                ..
            } => Origin::of(air, QuantityKind::AbsolutePressure).refused(beyond, air),
            beyond => Origin::of(other, quantity).refused(beyond, dry_field),
        };
        state(Known::DryBulb(dry_bulb), humidity, p)
            .map(|_| ())
            .map_err(refused)
    }
}

fn humidity_number(humidity: Known) -> f64 {
    match humidity {
        Known::RelativeHumidity(ratio) => ratio.si(),
        Known::WetBulb(temperature) => temperature.si(),
        _ => 0.0,
    }
}
