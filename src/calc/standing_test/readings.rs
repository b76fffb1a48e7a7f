//! The readings of a hold: taken one by one, with everything that is wrong with them.

use super::StandingTestInput;
use crate::calc::ambient::{Ambient, by_barometer};
use crate::calc::input::input;
use crate::calc::nitrogen_hold::{HIGHEST_FIRST_PRESSURE, TEMPERATURES};
use crate::calc::problem::{Field, Misfit, Problem};
use crate::calc::reading::{Reading, optional, required};
use crate::physics::nitrogen;
use crate::quantity::{AbsolutePressure, Entry, GaugePressure, Quantity, Temperature, Time};

input! {
    /// One reading of a pressure hold.
    pub struct HoldReadingInput {
        /// When it was read, required: the time since the first reading or any other common zero, "7 h 30 min".
        pub time: Entry<Time>,
        /// What the gauge showed, required: "598 psi".
        pub gauge_pressure: Entry<GaugePressure>,
        /// Temperature of the tube under test, which the nitrogen in it has, required: "68 °F".
        pub temperature: Entry<Temperature>,
        /// Temperature of the air around the tube; the further from the tube's, the less certain that is.
        pub ambient_temperature: Entry<Temperature>,
        /// Pressure of the air at this reading as a barometer at the place shows it; that of the whole
        /// hold if nothing is entered.
        pub barometer: Entry<AbsolutePressure>,
    }
}

/// Lowest gauge pressure that a hold can begin with; the later readings may be as low as zero.
pub const LOWEST_FIRST_PRESSURE: GaugePressure = GaugePressure::pascals(1e4);

/// Highest gauge pressure that is answered for.
pub const HIGHEST_PRESSURE: GaugePressure = GaugePressure::pascals(HIGHEST_FIRST_PRESSURE);

/// A reading.
#[derive(Clone, Copy)]
pub(super) struct HoldReading {
    pub time: Time,
    pub gauge: GaugePressure,
    pub air: AbsolutePressure,
    pub has_barometer: bool,
    pub temperature: Temperature,
    /// How far the air around is from the tube, K; nothing if it was not read.
    pub imbalance: f64,
    /// Amount of nitrogen in a volume, as p/(Z T).
    pub amount: f64,
}

impl HoldReading {
    pub fn absolute(&self) -> AbsolutePressure {
        self.gauge.to_absolute(self.air)
    }
}

/// The readings, if nothing is wrong with them.
pub(super) fn take(
    reading: &mut Reading,
    input: &StandingTestInput,
    air: Option<Ambient>,
) -> Option<Vec<HoldReading>> {
    let mut place = 0;
    let mut latest: Option<Time> = None;
    reading.list(
        Field::named("readings"),
        &input.readings,
        0,
        |reading, item| {
            let time = required!(reading, item.time);
            if let (Some(time), Some(before)) = (time, latest)
                && time < before
            {
                let above = Field::named("readings").with(&Field::item(place - 1));
                let with = above.with(&Field::named("time"));
                let misfit = Misfit::OutOfOrder { with };
                reading.problem(Problem::misfit(Field::named("time"), misfit));
            }
            latest = time.or(latest);
            place += 1;
            one(reading, item, time, air, place == 1)
        },
    )
}

fn one(
    reading: &mut Reading,
    item: &HoldReadingInput,
    time: Option<Time>,
    air: Option<Ambient>,
    is_first: bool,
) -> Option<HoldReading> {
    let gauge = required!(reading, item.gauge_pressure);
    let least = if is_first {
        LOWEST_FIRST_PRESSURE
    } else {
        GaugePressure::pascals(0.0)
    };
    reading.within(
        Field::named("gauge_pressure"),
        gauge,
        (least, HIGHEST_PRESSURE),
    );
    let temperature = required!(reading, item.temperature, TEMPERATURES);
    let around = optional!(reading, item.ambient_temperature);
    let own_air = optional!(reading, item.barometer)
        .and_then(|found| by_barometer(reading, Field::named("barometer"), found));
    let (time, gauge, temperature) = (time?, gauge?, temperature?);
    let air = own_air.or(air)?.pressure;
    let factor = nitrogen::compressibility(gauge.to_absolute(air), temperature).ok()?;
    Some(HoldReading {
        time,
        gauge,
        air,
        has_barometer: own_air.is_some(),
        temperature,
        imbalance: around.map_or(0.0, |around| (around - temperature).in_kelvins().abs()),
        amount: gauge.to_absolute(air).si() / (factor * temperature.si()),
    })
}
