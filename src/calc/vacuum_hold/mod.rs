//! What a vacuum gauge tells after the pump is valved off: dry and tight, moisture, or a leak.

mod answer;
mod finding;
mod fit;
mod law;
mod pass_rule;
mod posterior;
mod prior;
mod record;
mod steps;

pub use answer::{ExpectedReading, GaugeReading, LeakFound, Level, Likelihoods, VacuumHoldAnswer};
pub use finding::{VacuumReason, VacuumVerdict};
pub use law::Fit;
pub use pass_rule::{PassCheck, PassRule};

use super::count::Count;
use super::input::input;
use super::nested::Entries;
use super::problem::{Cause as ProblemCause, Field, Misfit, Problem, Problems};
use super::reading::{Reading, optional, required};
use crate::physics::water::saturation_pressure;
use crate::quantity::factors::PASCAL_PER_MICRON as MICRON;
use crate::quantity::{
    AbsolutePressure, Entry, PressureDifference, Ratio, Temperature, Time, Volume, choice,
};
use pass_rule::Criteria;
use record::Record;

/// Pa/s in a micron a minute.
const MICRON_A_MINUTE: f64 = MICRON / 60.0;

input! {
    /// What [`vacuum_hold`] asks for.
    pub struct VacuumHoldInput {
        /// Readings of the vacuum gauge after the pump was valved off, in order of time.
        pub readings: Entries<VacuumReadingInput>,
        /// Temperature of the coldest part of the tubing, which bounds what moisture can do; 20 °C if nothing is entered.
        pub ambient_temperature: Entry<Temperature>,
        /// Last reading before the pump was valved off; the first of `readings` if nothing is entered. Only the pass rule asks for it.
        pub pump_end_pressure: Entry<AbsolutePressure>,
        /// Smallest step that the gauge shows: "1 micron"; found from the readings if nothing is entered.
        pub gauge_resolution: Entry<PressureDifference>,
        /// Scatter of the gauge from reading to reading (one standard deviation), as a part of the reading: "2 %"; found from the readings between 0.7 and 4 % if nothing is entered.
        pub gauge_noise: Entry<Ratio>,
        /// How far the gauge may be off, all readings alike; half its step if nothing is entered. Counts for the pass rule.
        pub gauge_uncertainty: Entry<PressureDifference>,
        /// Volume under vacuum, to tell how much gas a leak lets in.
        pub volume: Entry<Volume>,
        /// Highest pressure at which a system that levels off counts as dry; 750 micron if nothing is entered, never more than half of what water has at the ambient temperature.
        pub dry_pressure: Entry<AbsolutePressure>,
        /// Rule by which the hold passes; UFGS 15182 if nothing is entered, the plate if `passPressure` is.
        pub pass_rule: Entry<PassRule>,
        /// The plate's own: highest pressure at the end of the hold.
        pub pass_pressure: Entry<AbsolutePressure>,
        /// The plate's own: how long the pump stays valved off; 30 minutes if nothing is entered.
        pub pass_time: Entry<Time>,
        /// Points of the expected curve to plot, 2 to 64; none if nothing is entered.
        pub curve_points: Entry<Count>,
        /// Time after the first reading up to which the curve goes; half as long again as the readings last if nothing is entered.
        pub curve_until: Entry<Time>,
    }
}

input! {
    /// One reading.
    pub struct VacuumReadingInput {
        /// When, since the pump was valved off or any other zero common to all readings: "4 min".
        pub time: Entry<Time>,
        /// What the vacuum gauge showed, above vacuum: "500 micron".
        pub pressure: Entry<AbsolutePressure>,
    }
}

choice! {
    /// The laws that are fitted.
    Shape {
        /// An even rise.
        LinearRise = "linear-rise",
        /// A rise that levels off.
        Plateau = "plateau",
        /// Both together.
        PlateauAndLinearRise = "plateau-and-linear-rise",
    }
}

/// What a rise, or none, comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Cause {
    DryAndTight,
    Moisture,
    Leak,
    /// Faster than a tight system creeps, slower than what is called a leak.
    SlowRise,
    Falling,
    /// Even, but above what counts as dry.
    HighLevel,
}

/// Ambient temperature if none is entered.
pub const USUAL_AMBIENT: Temperature = Temperature::celsius(20.0);
/// Coldest and hottest tubing that is answered for.
pub const AMBIENT: (Temperature, Temperature) =
    (Temperature::celsius(-60.0), Temperature::celsius(90.0));
/// Highest reading: above it a leak no longer lets in gas at an even rate.
pub const PRESSURES: (AbsolutePressure, AbsolutePressure) = (
    AbsolutePressure::pascals(0.0),
    AbsolutePressure::pascals(50_000.0),
);
/// Highest level of a system that counts as dry. Common practice, no source: what stays below 500
/// micron is called dry, what levels off above 1000 micron moist; the line is drawn midway.
pub const DRY_PRESSURE: AbsolutePressure = AbsolutePressure::pascals(750.0 * MICRON);
/// Part of water's saturation pressure up to which a level can be a dry system's: ice or water would fill the rest.
const DRY_PART: f64 = 0.5;
/// By how much moisture may seem to exceed its saturation pressure, for gauges err.
const SATURATION_ERROR: f64 = 1.05;
/// Most scatter that a gauge is believed to have.
const NOISES: (Ratio, Ratio) = (Ratio::of_one(0.0), Ratio::of_one(0.2));
/// Scatters that are tried if none is entered.
const USUAL_NOISES: [f64; 5] = [0.007, 0.011, 0.017, 0.026, 0.04];
/// Coarsest step, and largest error, of a vacuum gauge.
const GAUGE_ERRORS: (PressureDifference, PressureDifference) = (
    PressureDifference::pascals(0.0),
    PressureDifference::pascals(1000.0 * MICRON),
);

/// How far the curve goes if nothing is entered, over the time that the readings last.
const CURVE_ON: f64 = 1.5;

/// Is the system dry and tight, is there moisture, or a leak?
///
/// # Method
/// Three laws are fitted to the readings `p` over the time `t` after the first: an even rise `p₀ + r·t`
/// (air through a leak), a rise that levels off `p∞ − (p∞ − p₀)·exp(−t/τ)` (moisture or gas from
/// oil and walls, which stops at its own pressure), and both together. Every cause is weighed by the
/// probability of the readings, averaged over all values that its unknowns may have (Bayes' theorem):
/// time constants from 1 to 60 minutes, mostly 2 to 45; leaks from 12 micron a minute; tight systems
/// that creep by up to 7; moisture between the dry limit and the saturation pressure of water at the
/// ambient temperature. Readings scatter by a part of their level and are rounded to the gauge's step.
/// A cause becomes the verdict if its probability is at least 0.75, for dry and tight only if that of
/// a leak is at most 0.03; moisture beside a leak is called a leak, which must be found first.
/// Uncertainties are two standard uncertainties.
///
/// # Valid for
/// Readings up to 50 kPa, a verdict from 4 readings over 2 minutes; tubing at -60 to 90 °C, all of
/// it at one temperature; the pump valved off all the time.
///
/// # Errors
/// No readings, readings out of order, above 50 kPa; a gauge or a temperature outside these limits;
/// the plate's rule without its pressure.
///
/// # Examples
/// ```
/// use coldwright::calc::vacuum_hold::{VacuumVerdict, VacuumHoldInput, VacuumReadingInput, vacuum_hold};
/// use coldwright::quantity::{AbsolutePressure, Quantity, Time};
/// // 300 micron, and 60 more each minute.
/// let reading = |minute: u32| VacuumReadingInput {
///     time: Time::seconds(60.0 * f64::from(minute)).into(),
///     pressure: AbsolutePressure::read(&format!("{} micron", 300 + 60 * minute)).unwrap().into(),
/// };
/// let hold = vacuum_hold(&VacuumHoldInput {
///     readings: (0..=15).map(reading).collect::<Vec<_>>().into(),
///     ..VacuumHoldInput::default()
/// }).unwrap();
/// assert_eq!(hold.verdict, VacuumVerdict::Leak);
/// let micron_a_minute = hold.leak.unwrap().rate.in_pascals_per_second() * 60.0 / 0.133_322;
/// assert!((micron_a_minute - 60.0).abs() < 2.0);
/// ```
///
/// # References
/// Jeffreys, Theory of Probability (1939), for the comparison; IAPWS R7-97 and R14-08 for water; UFGS
/// 15182, 3.3.3, and Real Decreto 552/2019, IF-09, 1.6.3, for the pass rules. The ranges are common
/// practice, no source.
pub fn vacuum_hold(input: &VacuumHoldInput) -> Result<VacuumHoldAnswer, Problems> {
    let mut reading = Reading::default();
    let readings = readings(&mut reading, &input.readings);
    let ambient = optional!(reading, input.ambient_temperature, AMBIENT);
    let pump_end = optional!(reading, input.pump_end_pressure, PRESSURES);
    let resolution = optional!(reading, input.gauge_resolution, GAUGE_ERRORS);
    let noise = optional!(reading, input.gauge_noise, NOISES);
    let uncertainty = optional!(reading, input.gauge_uncertainty, GAUGE_ERRORS);
    let volume = optional!(reading, input.volume);
    let dry = optional!(reading, input.dry_pressure, PRESSURES);
    let criteria = Criteria::read(input, &mut reading);
    let points = optional!(reading, input.curve_points)
        .map(|points| points.between(2, 64, "2…64"))
        .transpose();
    let points = reading.accept(points.map_err(|flaw| Problem {
        field: Field::named("curve_points"),
        cause: ProblemCause::Entry(flaw),
    }));
    let until = optional!(reading, input.curve_until);
    reading.sound()?;
    let (Some(readings), Some(criteria)) = (readings, criteria) else {
        return Err(reading.take());
    };

    let ambient = ambient.unwrap_or(USUAL_AMBIENT);
    let saturation = saturation_pressure(ambient).unwrap_or(PRESSURES.1);
    let record = Record::of(&readings, resolution.map(PressureDifference::in_pascals));
    let hold = Hold {
        ambient,
        ambient_assumed: matches!(input.ambient_temperature, Entry::Absent),
        saturation,
        dry_limit: dry
            .unwrap_or(DRY_PRESSURE)
            .in_pascals()
            .min(DRY_PART * saturation.in_pascals()),
        noises: noise.map_or(USUAL_NOISES.to_vec(), |noise| noises(noise.in_one())),
        uncertainty: uncertainty.map_or(0.5 * record.resolution, |u| u.in_pascals()),
        pump_end,
        volume,
        criteria,
        curve_points: points.flatten().map_or(0, Count::number),
        curve_until: until.map_or(CURVE_ON * record.held, Time::in_seconds),
        record,
    };
    Ok(hold.answer())
}

/// A hold with everything that is known about it.
struct Hold {
    record: Record,
    ambient: Temperature,
    ambient_assumed: bool,
    /// Pressure of water at the ambient temperature.
    saturation: AbsolutePressure,
    /// Highest level of a dry system, Pa.
    dry_limit: f64,
    /// Scatters to try.
    noises: Vec<f64>,
    /// By how much all readings may be off, Pa.
    uncertainty: f64,
    pump_end: Option<AbsolutePressure>,
    volume: Option<Volume>,
    criteria: Criteria,
    curve_points: u16,
    curve_until: f64,
}

/// Scatters to try around the one entered, for nobody knows it exactly.
fn noises(entered: f64) -> Vec<f64> {
    const LEAST: f64 = 0.003;
    [0.7, 1.0, 1.5]
        .map(|factor| (factor * entered).max(LEAST))
        .to_vec()
}

/// Time in s and pressure in Pa of each reading, if nothing is wrong with any.
fn readings(reading: &mut Reading, list: &Entries<VacuumReadingInput>) -> Option<Vec<(f64, f64)>> {
    let field = Field::named("readings");
    let mut place = 0;
    let mut latest: Option<(usize, Time)> = None;
    reading.list(field.clone(), list, 1, |reading, item| {
        let time = required!(reading, item.time);
        if let (Some(time), Some((row, before))) = (time, latest)
            && time < before
        {
            let with = field.with(&Field::item(row)).with(&Field::named("time"));
            let misfit = Misfit::OutOfOrder { with };
            reading.problem(Problem::misfit(Field::named("time"), misfit));
        }
        latest = time.map(|time| (place, time)).or(latest);
        place += 1;
        let pressure = required!(reading, item.pressure, PRESSURES);
        Some((time?.in_seconds(), pressure?.in_pascals()))
    })
}
