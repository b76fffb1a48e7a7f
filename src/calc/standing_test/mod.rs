//! The nitrogen pressure hold that proves tightness: how to carry it out, and what its readings show.

mod guidance;
mod hold;
mod instruments;
mod leak_size;
mod left_out;
mod line;
mod loss;
mod nitrogen_need;
mod outcome;
mod points;
mod reached;
mod readings;
mod steps;

use serde::Serialize;

pub use guidance::{PressureStage, PressureTestGuidance, RatingCheck, StageAction};
pub use hold::{HoldFigures, HoldPoint};
pub use instruments::{
    Instruments, USUAL_GAUGE_UNCERTAINTY, USUAL_RESOLUTION, USUAL_THERMOMETER_UNCERTAINTY,
};
pub use leak_size::{LeakSize, STANDING_TEMPERATURE};
pub use left_out::{LeftOut, LeftOutReason};
pub use nitrogen_need::{NitrogenNeed, VOLUMES};
pub use outcome::{HoldReason, HoldVerdict};
pub use readings::{HIGHEST_PRESSURE, HoldReadingInput, LOWEST_FIRST_PRESSURE};

use super::ambient::{Ambient, air_steps, ambient};
use super::input::input;
use super::nested::Entries;
use super::problem::{Field, Misfit, Problem, Problems};
use super::reading::{Reading, optional};
use super::verdict::{Judgement, Verdict};
use super::working::Working;
use crate::quantity::factors::SECONDS_PER_DAY;
use crate::quantity::{
    AbsolutePressure, Altitude, Entry, GaugePressure, PressureDifference, PressureRate, Quantity,
    TemperatureDifference, Time, Volume, choice,
};
use crate::tables::pressure_test::PressureTestRule;
use crate::tables::refrigerants::Refrigerant;
use hold::{Ends, Hold};
use leak_size::Passage;
use left_out::Sorted;
use loss::Loss;
use nitrogen_need::Cylinder;
use readings::HoldReading;

input! {
    /// What [`standing_test`] asks for. Nothing is required: what is entered is answered.
    pub struct StandingTestInput {
        /// Readings of the hold, in order of time, the first one after filling.
        pub readings: Entries<HoldReadingInput>,
        /// Altitude above sea level; sea level if neither it nor a barometer is entered.
        pub altitude: Entry<Altitude>,
        /// Pressure of the air as a barometer at the place shows it, instead of the altitude.
        pub barometer: Entry<AbsolutePressure>,
        /// Smallest step that can be read off the gauge: "1 psi"; 0.1 bar if nothing is entered.
        pub gauge_resolution: Entry<PressureDifference>,
        /// How far the gauge may be off; 1 % of its highest reading if nothing is entered. What it is
        /// off by at every reading alike does not count in a difference; a tenth of it counts.
        pub gauge_uncertainty: Entry<PressureDifference>,
        /// How far the thermometer may be off from one reading to the next, as a standard uncertainty; 0.5 K if nothing is entered.
        pub thermometer_uncertainty: Entry<TemperatureDifference>,
        /// Inner volume of all that is under test, for leak sizes and for the nitrogen needed: "4.2 L".
        pub volume: Entry<Volume>,
        /// Refrigerant of the circuit, for its loss in a year.
        pub refrigerant: Entry<Refrigerant>,
        /// Loss of pressure over time that matters, which the hold must be able to see: "1 psi/h"; 2 % of the
        /// absolute pressure in 24 hours if nothing is entered.
        pub leak_to_see: Entry<PressureRate>,
        /// Whose rule the test follows; if nothing is entered, the plate if `plateTestPressure` is, or
        /// else Real Decreto 552/2019 (EN 378-2) if `designPressure` is.
        pub test_rule: Entry<PressureTestRule>,
        /// Design pressure PS of the circuit, which the rules start from: "4.15 MPa".
        pub design_pressure: Entry<GaugePressure>,
        /// Test pressure by the equipment's own plate or instructions, which outrank every rule.
        pub plate_test_pressure: Entry<GaugePressure>,
        /// Rating of the lowest-rated part that the pressure reaches: the test never goes above it.
        pub lowest_rating: Entry<GaugePressure>,
        /// Inner (water) volume of the nitrogen cylinder, not the gas it gives off: "10 L".
        pub cylinder_volume: Entry<Volume>,
        /// Pressure in the nitrogen cylinder before the test: "150 bar".
        pub cylinder_pressure: Entry<GaugePressure>,
    }
}

/// What [`standing_test`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct StandingTestAnswer {
    /// The air around.
    pub ambient: Ambient,
    /// How to carry out the test, if a rule, a design pressure or the plate's test pressure was entered.
    pub guidance: Option<PressureTestGuidance>,
    /// Nitrogen for the test pressure; needs `volume` and guidance.
    pub nitrogen: Option<NitrogenNeed>,
    /// Instruments as entered or assumed, once a pressure is known.
    pub instruments: Option<Instruments>,
    /// How long a hold of two readings with these instruments must last to show the leak to see, once
    /// there is a reading.
    pub hold_of_two_readings: Option<Time>,
    /// How the highest reading that counts stands to the pressure that the rule wants; needs guidance and a
    /// reading.
    pub reached: Option<Judgement<GaugePressure, PressureDifference>>,
    /// The verdict on the readings.
    pub verdict: HoldVerdict,
    /// Why it is so.
    pub reason: HoldReason,
    /// What must not be missed besides.
    pub warnings: Vec<HoldWarning>,
    /// What the readings come to, once two that count are there.
    pub hold: Option<HoldFigures>,
    /// Readings that do not count towards the loss, and why.
    pub left_out: Vec<LeftOut>,
    /// Readings for a plot, more than 48 gathered over slices of time.
    pub points: Vec<HoldPoint>,
    /// The working.
    pub working: Working,
}

choice! {
    /// What must not be missed in a hold.
    HoldWarning {
        /// A reading stands above the rating of the lowest-rated part: let the pressure down.
        AboveLowestRating = "above-lowest-rating",
        /// The rule wants more than the lowest-rated part bears.
        TestPressureCapped = "test-pressure-capped",
    }
}

/// Loss that matters if none is entered, as a part of the absolute pressure in a day. Common practice, no source.
pub const LEAK_TO_SEE_A_DAY: f64 = 0.02;

/// Smallest and largest loss that can be asked for.
const LEAKS_TO_SEE: (PressureRate, PressureRate) = (
    PressureRate::pascals_per_second(1e-6),
    PressureRate::pascals_per_second(1e4),
);

/// Is the system tight, or is it losing gas, and how must the test be carried out?
///
/// # Method
/// Each reading gives the amount of nitrogen, `p/(Z·T)`, as the pressure that it would have at the first
/// reading's temperature. Readings are left out, with the reason, that stray between neighbours that
/// agree (six standard deviations), whose temperature changes so fast that a nitrogen following by five
/// minutes is 3 K behind, or that lie on the far side of a sudden or settling change (a line with a
/// step fits better than a line by 3.5 standard deviations, and the step is less than a fifth of the
/// pressure). The rest, more than 48 gathered over slices of time, gives a loss rate by a weighted
/// line. Its uncertainty holds what differs from reading to reading (rounding, half a step of misreading, a tenth
/// of the gauge's uncertainty, all of the thermometer's), enlarged where the points scatter more or
/// neighbours stray alike; and what no number of readings averages out (rounding and a fifth of the
/// thermometer's uncertainty between both ends, 5 mbar of weather without a barometer, the gauge's
/// whole uncertainty times the relative change of temperature). What the gauge is off by at every reading alike cancels.
///
/// Losing gas: the loss exceeds three standard uncertainties, and four or more points follow a line better
/// than a loss that has ended would (a single step, or a decay of up to 20 minutes or a fifth of the
/// hold); or more than a fifth of the gas is gone. Tight: loss and three standard uncertainties together
/// are less than the leak to see, and the highest reading that counts is not below the test pressure by
/// more than the gauge may be off: what holds 5 bar proves nothing about 45. Otherwise it cannot tell. The least detectable loss is six standard
/// uncertainties, more where a loss that has ended looks much like a line. In simulated holds
/// (tests/standing_test.rs) fewer than one tight system in 300 is called losing gas, and 99.6 % of leaks of
/// twice the least detectable are found.
///
/// # Valid for
/// 250 to 330 K, up to 60 bar on the gauge; losses small against the pressure, which are linear in time. Refrigerant a
/// year: laminar flow through a fine channel, which holds for leaks above about 1e-5 mbar·L/s.
///
/// # Errors
/// A reading without time, pressure or temperature, outside these limits, or earlier than the one
/// above it; a rule without the pressure it starts from; half a cylinder.
///
/// # Examples
/// ```
/// use coldwright::calc::standing_test::{
///     HoldReadingInput, HoldVerdict, StandingTestInput, standing_test,
/// };
/// use coldwright::quantity::{GaugePressure, PressureDifference, Quantity, Temperature, Time};
/// let reading = |hours: f64, pressure: &str, fahrenheit: f64| HoldReadingInput {
///     time: Time::seconds(3600.0 * hours).into(),
///     gauge_pressure: GaugePressure::read(pressure).unwrap().into(),
///     temperature: Temperature::fahrenheit(fahrenheit).into(),
///     ..HoldReadingInput::default()
/// };
/// // Overnight 30 °F colder: 562 psi is what tight nitrogen shows.
/// let hold = |morning| {
///     standing_test(&StandingTestInput {
///         readings: vec![reading(0.0, "600 psi", 70.0), reading(24.0, morning, 40.0)].into(),
///         gauge_resolution: PressureDifference::read("1 psi").unwrap().into(),
///         ..StandingTestInput::default()
///     }).unwrap()
/// };
/// assert_eq!(hold("562 psi").verdict, HoldVerdict::Tight);
/// assert_eq!(hold("535 psi").verdict, HoldVerdict::LosingGas);
/// ```
///
/// # References
/// Span, Lemmon, Jacobsen, Wagner and Yokozeki, J. Phys. Chem. Ref. Data 29 (2000) 1361. JCGM 100:2008. Real
/// Decreto 552/2019, IF-09. UFGS 15182.
pub fn standing_test(input: &StandingTestInput) -> Result<StandingTestAnswer, Problems> {
    let mut reading = Reading::default();
    let air = ambient(&mut reading, &input.altitude, &input.barometer);
    let readings = readings::take(&mut reading, input, air);
    let instruments = instruments::Entered::take(&mut reading, input);
    let volume = nitrogen_need::volume(&mut reading, input);
    let refrigerant = optional!(reading, input.refrigerant);
    let leak_to_see = optional!(reading, input.leak_to_see, LEAKS_TO_SEE);
    let guidance = guidance::take(&mut reading, input);
    let cylinder = Cylinder::take(&mut reading, input);
    reading.sound()?;
    let (Some(air), Some(readings)) = (air, readings) else {
        return Err(reading.take());
    };
    if guidance.is_none() && readings.is_empty() {
        let misfit = Misfit::TooFew {
            needed: 1,
            found: 0,
        };
        return Err(vec![Problem::misfit(Field::named("readings"), misfit)]);
    }
    let warnings = warnings(&readings, guidance.as_ref(), &input.lowest_rating);
    let mut answer = StandingTestAnswer {
        ambient: air,
        guidance: None,
        nitrogen: None,
        instruments: None,
        hold_of_two_readings: None,
        reached: None,
        verdict: HoldVerdict::Open,
        reason: HoldReason::TooFewReadings,
        warnings,
        hold: None,
        left_out: Vec::new(),
        points: Vec::new(),
        working: air_steps(&input.altitude, air.pressure),
    };
    if let Some(guidance) = guidance {
        answer.advise(guidance, volume, cylinder, air);
    }
    let Some(first) = readings.first() else {
        return Ok(answer);
    };
    let usual = LEAK_TO_SEE_A_DAY * first.absolute().si() / SECONDS_PER_DAY;
    let leak_to_see = leak_to_see.unwrap_or(PressureRate::pascals_per_second(usual));
    let highest = readings.iter().map(|reading| reading.gauge.si());
    let instruments = instruments.complete(highest.fold(0.0, f64::max));
    let passage = volume.map(|volume| Passage::of(volume, first, refrigerant));
    answer.hold_of_two_readings = Some(loss::two_readings_to_see(leak_to_see, first, &instruments));
    answer.instruments = Some(instruments);
    answer
        .judge(&readings, &instruments, leak_to_see, passage)
        .map_err(|problem| vec![problem])?;
    Ok(answer)
}

fn warnings(
    readings: &[HoldReading],
    guidance: Option<&PressureTestGuidance>,
    lowest_rating: &Entry<GaugePressure>,
) -> Vec<HoldWarning> {
    let mut warnings = Vec::new();
    if let Entry::Read(rating) = lowest_rating
        && readings.iter().any(|reading| reading.gauge > *rating)
    {
        warnings.push(HoldWarning::AboveLowestRating);
    }
    if guidance.is_some_and(|guidance| guidance.rating == RatingCheck::AboveRating) {
        warnings.push(HoldWarning::TestPressureCapped);
    }
    warnings
}

impl StandingTestAnswer {
    fn advise(
        &mut self,
        guidance: PressureTestGuidance,
        volume: Option<Volume>,
        cylinder: Option<Cylinder>,
        air: Ambient,
    ) {
        self.working.push(guidance::step(&guidance));
        let need = volume.and_then(|volume| nitrogen_need::need(&guidance, volume, cylinder, air));
        if let Some((need, step)) = need {
            self.nitrogen = Some(need);
            self.working.push(step);
        }
        self.guidance = Some(guidance);
    }

    fn judge(
        &mut self,
        readings: &[HoldReading],
        instruments: &Instruments,
        leak_to_see: PressureRate,
        passage: Option<Passage>,
    ) -> Result<(), super::Problem> {
        let pressures = points::compensated(readings);
        let sorted = Sorted::of(readings, &pressures, instruments);
        let ends = Ends::of(readings, &sorted);
        let loss = ends
            .as_ref()
            .and_then(|ends| Loss::find(&sorted, ends.first, instruments));
        (self.verdict, self.reason) =
            outcome::judge(readings, &sorted, loss.as_ref(), leak_to_see.si());
        self.left_out = sorted.left_out();
        self.reached = self
            .guidance
            .as_ref()
            .and_then(|guidance| reached::judge(readings, &self.left_out, instruments, guidance));
        let falls_short = self
            .reached
            .is_some_and(|reached| reached.verdict == Verdict::OutOfBand);
        if falls_short && self.verdict != HoldVerdict::LosingGas {
            (self.verdict, self.reason) =
                (HoldVerdict::CannotTell, HoldReason::TestPressureNotReached);
        }
        let hold = Hold {
            sorted: &sorted,
            instruments,
            leak_to_see,
            passage,
        };
        if let (Some(loss), Some(ends)) = (loss, ends) {
            let expected = ends.expected()?;
            let figures = hold.figures(&loss, &ends, expected);
            self.working
                .extend(steps::expected(&ends, expected, &figures));
            self.working
                .extend(steps::loss(&loss, instruments, &figures));
            let size = passage.iter();
            self.working
                .extend(size.flat_map(|passage| passage.steps(figures.pressure_loss_rate)));
            self.hold = Some(figures);
        }
        self.points = hold.plot();
        Ok(())
    }
}
