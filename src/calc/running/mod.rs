//! Is the running system as it should be: superheat, subcooling, air, and what the pattern usually means.

mod check;
mod circuit;
mod coil;
mod measured;
mod notices;
mod pattern;
mod readings;
mod stream;
mod targets;

use serde::Serialize;

pub use check::{Check, Deviation, Target, TargetBasis, WhyOpen};
pub use circuit::SideAnswer;
pub use coil::{Capacity, Uncertain};
pub use measured::ErrorSource;
pub use notices::{RunningCaution, RunningNotice};
pub use pattern::{IndoorAirflow, NextCheck, Pattern, RankedCause, UsualCause, usual_causes};
pub use readings::Accuracy;

use self::circuit::Circuit;
use self::measured::Measured;
use self::notices::{cautions, notices};
use self::readings::Readings;
use super::ambient::{Ambient, air_steps};
use super::input::input;
use super::problem::{Field, Misfit, Problem, Problems};
use super::reading::Reading;
use super::verdict::{Judgement, Verdict};
use super::working::Working;
use crate::quantity::{
    AbsolutePressure, Altitude, Band, Enter, Entry, GaugePressure, Power, PressureDifference,
    Ratio, Temperature, TemperatureDifference, Time, VolumeFlow, choice,
};
use crate::tables::refrigerants::Refrigerant;

choice! {
    /// What the system does.
    RunningMode {
        /// The indoor coil cools.
        Cooling = "cooling",
        /// The indoor coil heats.
        Heating = "heating",
    }
}

choice! {
    /// What lets the liquid into the evaporator.
    MeteringDevice {
        /// A thermostatic expansion valve.
        ThermostaticValve = "thermostatic-valve",
        /// An electronic expansion valve, as in most equipment of variable speed.
        ElectronicValve = "electronic-valve",
        /// A piston or a capillary tube.
        FixedOrifice = "fixed-orifice",
    }
}

choice! {
    /// The figures that deviations are looked for in, in the order of the table of signs.
    RunningFigure {
        /// Suction line over dew temperature.
        Superheat = "superheat",
        /// Bubble temperature over liquid line.
        Subcooling = "subcooling",
        /// Air that enters the evaporating coil over evaporating temperature.
        EvaporatingDifference = "evaporating-difference",
        /// Condensing temperature over air that enters the condensing coil.
        CondensingDifference = "condensing-difference",
        /// Return less supply air; in heating supply less return.
        TemperatureSplit = "temperature-split",
    }
}

input! {
    /// What [`running`] asks for: as much as was measured; each part of the answer needs its own few fields.
    pub struct RunningInput {
        /// Refrigerant, needed with any refrigerant pressure: "R-410A".
        pub refrigerant: Entry<Refrigerant>,
        /// Cooling or heating; cooling if nothing is entered.
        pub mode: Entry<RunningMode>,
        /// What lets the liquid into the evaporator; decides the target superheat where the plate gives none.
        pub metering_device: Entry<MeteringDevice>,
        /// Gauge reading in the suction line, near the compressor: "118 psi".
        pub suction_gauge_pressure: Entry<GaugePressure>,
        /// Temperature of the suction line beside that gauge: "52 °F".
        pub suction_line_temperature: Entry<Temperature>,
        /// Gauge reading in the liquid line: "340 psi".
        pub liquid_gauge_pressure: Entry<GaugePressure>,
        /// Temperature of the liquid line beside that gauge.
        pub liquid_line_temperature: Entry<Temperature>,
        /// Gauge reading in the discharge line, for the compression ratio; stands in for the liquid pressure if that is not entered.
        pub discharge_gauge_pressure: Entry<GaugePressure>,
        /// The plate's superheat, one figure (then ± 5 °F) or a band: "10 °F", "8-12 °F".
        pub plate_superheat: Entry<Band<TemperatureDifference>>,
        /// The plate's subcooling, one figure (then ± 3 °F) or a band.
        pub plate_subcooling: Entry<Band<TemperatureDifference>>,
        /// Dry bulb of the air that returns to the indoor coil.
        pub return_dry_bulb: Entry<Temperature>,
        /// Wet bulb of the air that returns to the indoor coil (the indoor wet bulb); this or the relative humidity.
        pub return_wet_bulb: Entry<Temperature>,
        /// Relative humidity of the air that returns to the indoor coil, instead of its wet bulb.
        pub return_relative_humidity: Entry<Ratio>,
        /// Dry bulb of the air that leaves the indoor coil.
        pub supply_dry_bulb: Entry<Temperature>,
        /// Wet bulb of the air that leaves the indoor coil; this or the relative humidity.
        pub supply_wet_bulb: Entry<Temperature>,
        /// Relative humidity of the air that leaves the indoor coil, instead of its wet bulb.
        pub supply_relative_humidity: Entry<Ratio>,
        /// Dry bulb of the air that enters the outdoor coil.
        pub outdoor_dry_bulb: Entry<Temperature>,
        /// What return less supply dry bulb should be (in heating supply less return), one figure (then ± 3 °F) or a band; no verdict on it without.
        pub target_split: Entry<Band<TemperatureDifference>>,
        /// What the air entering the evaporating coil less the evaporating temperature should be; 25 to 40 °F in cooling, none with an electronic valve or in heating, if nothing is entered.
        pub evaporating_difference_band: Entry<Band<TemperatureDifference>>,
        /// What the condensing temperature less the air entering the condensing coil should be; 10 to 30 °F in cooling, none with an electronic valve or in heating, if nothing is entered.
        pub condensing_difference_band: Entry<Band<TemperatureDifference>>,
        /// Air over the indoor coil, as it is at the return: "1200 cfm".
        pub airflow: Entry<VolumeFlow>,
        /// Capacity by the plate in this mode: "3 ton", "10.5 kW".
        pub plate_capacity: Entry<Power>,
        /// Whether too little air over the indoor coil has been ruled out (filter, coil, fan, registers); not if nothing is entered.
        pub airflow_checked: Entry<bool>,
        /// How long the system has run without a stop; no verdicts before 15 minutes.
        pub running_time: Entry<Time>,
        /// How far the suction gauge may be off; 3.5 psi if nothing is entered.
        pub suction_gauge_uncertainty: Entry<PressureDifference>,
        /// How far the liquid and discharge gauge may be off; 7 psi if nothing is entered.
        pub liquid_gauge_uncertainty: Entry<PressureDifference>,
        /// How far a thermometer may be off, on lines and in the air, dry and wet; 1.4 °F if nothing is entered.
        pub thermometer_uncertainty: Entry<TemperatureDifference>,
        /// How far a relative humidity may be off, in parts of saturation; 3 % if nothing is entered.
        pub humidity_uncertainty: Entry<Ratio>,
        /// How far the airflow may be off, relative to itself; 10 % if nothing is entered.
        pub airflow_uncertainty: Entry<Ratio>,
        /// Altitude above sea level, for gauges and the air's density; sea level if neither it nor `barometer` is entered.
        pub altitude: Entry<Altitude>,
        /// Pressure of the air as a barometer at the place shows it, instead of the altitude.
        pub barometer: Entry<AbsolutePressure>,
    }
}

/// What [`running`] finds. What was not measured is absent, or says why it is open.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct RunningAnswer {
    /// What the system does.
    pub mode: RunningMode,
    /// The air that gauge pressures count from, at which the airflow was measured.
    pub ambient: Ambient,
    /// Out of band if anything judged is; in band if superheat is, subcooling is (needless with a fixed orifice), and nothing else judged is not; absent if nothing was judged.
    pub verdict: Option<Verdict>,
    /// Suction line temperature less dew temperature.
    pub superheat: Check,
    /// Bubble temperature less liquid line temperature.
    pub subcooling: Check,
    /// Return less supply dry bulb; in heating the rise, supply less return.
    pub temperature_split: Check,
    /// Air entering the evaporating coil (return; in heating outdoor) less evaporating temperature.
    pub evaporating_difference: Check,
    /// Condensing temperature less air entering the condensing coil (outdoor; in heating return).
    pub condensing_difference: Check,
    /// Suction side: pressure and evaporating temperature (dew).
    pub evaporating: Option<SideAnswer>,
    /// Liquid side: pressure and condensing temperature (bubble).
    pub condensing: Option<SideAnswer>,
    /// Discharge pressure, or else liquid pressure, over suction pressure, both absolute.
    pub compression_ratio: Option<Ratio>,
    /// What the indoor coil does to the air.
    pub capacity: Option<Capacity>,
    /// Airflow against the least at which a charge can be judged, 300 cfm for a ton of the plate's capacity; cooling only.
    pub airflow: Option<Judgement<VolumeFlow, VolumeFlow>>,
    /// What the deviations usually mean; absent where that cannot be said.
    pub pattern: Option<Pattern>,
    /// What else has to be known.
    pub notices: Vec<RunningNotice>,
    /// What can hurt where these readings are taken.
    pub cautions: Vec<RunningCaution>,
    /// Fields that would complete what was begun.
    pub missing: Vec<Field>,
    /// How far the instruments may be off, as taken here.
    pub accuracy: Accuracy,
    /// The working.
    pub working: Working,
}

/// Is the system running as it should?
///
/// # Method
/// Superheat = suction line less dew temperature; subcooling = bubble temperature less liquid line; each
/// off by gauge (through the slope of saturation), thermometer and refrigerant data, as the root of the sum
/// of squares. Targets: the plate's; else 4 to 25 °F with a metering valve; else, with a fixed orifice,
/// `(3·wet bulb − 80 − outdoor dry bulb) / 2` in °F, ± 5 °F. Air side: dry air flow times the
/// difference of enthalpies. Causes: a table of signs, matched with deviations that are surely
/// outside; adding refrigerant is not advised before airflow is ruled out.
///
/// # Valid for
/// After 15 minutes; tests of the charge in cooling at 55 °F and more outdoors; the rule for
/// targets of 5 °F and more, wet bulb 50 to 76 °F, outdoors 55 to 115 °F. The differences of evaporating and
/// condensing temperature to the air, and the causes, are common practice for equipment of one speed.
///
/// # Errors
/// Nothing to answer from; a pressure without a refrigerant, below the data or near and above the critical
/// point; a high side below the suction side; air that cannot be; uncertainties beyond any instrument.
///
/// # Examples
/// ```
/// use coldwright::calc::running::{MeteringDevice, RunningInput, running};
/// use coldwright::quantity::Temperature;
/// let answer = running(&RunningInput {
///     metering_device: MeteringDevice::FixedOrifice.into(),
///     return_wet_bulb: Temperature::fahrenheit(64.0).into(),
///     outdoor_dry_bulb: Temperature::fahrenheit(96.0).into(),
///     ..RunningInput::default()
/// }).unwrap();
/// let target = answer.superheat.target.unwrap().band.middle();
/// assert!((target.in_kelvins() * 1.8 - 8.0).abs() < 1e-9);
/// ```
///
/// # References
/// California Title 24 (2008), residential appendix RA3.2, for tolerances, validity and accuracies. The rule
/// for a fixed orifice, differences to the air and the table of signs: common practice, no source; the
/// rule lies within 1.5 °F of the appendix's table at 55 °F outdoors (table from memory).
pub fn running(input: &RunningInput) -> Result<RunningAnswer, Problems> {
    let mut reading = Reading::default();
    let readings = Readings::read(input, &mut reading);
    let circuit = readings
        .as_ref()
        .map(|readings| Circuit::find(readings, &mut reading));
    reading.sound()?;
    let (Some(readings), Some(circuit)) = (readings, circuit) else {
        return Err(reading.take());
    };
    let answer = answer(
        &readings,
        circuit,
        air_steps(&input.altitude, readings.air.pressure),
    );
    if is_empty(&answer) {
        return Err(vec![first_missing(readings.refrigerant)]);
    }
    Ok(answer)
}

/// What to enter first where there is nothing to answer from.
fn first_missing(refrigerant: Option<Refrigerant>) -> Problem {
    let (field, example) = match refrigerant {
        None => ("refrigerant", Refrigerant::example()),
        Some(_) => ("suction_gauge_pressure", GaugePressure::example()),
    };
    Problem::misfit(Field::named(field), Misfit::Missing { example })
}

fn is_empty(answer: &RunningAnswer) -> bool {
    answer.evaporating.is_none()
        && answer.condensing.is_none()
        && answer.temperature_split.figure.is_none()
        && answer.airflow.is_none()
        && answer.superheat.target.is_none()
}

fn answer(readings: &Readings, circuit: Circuit, mut working: Working) -> RunningAnswer {
    let accuracy = readings.accuracy;
    let blocked = readings.blocked();
    let rule = readings.orifice_rule();
    let [evaporating_target, condensing_target] = readings.difference_targets();
    let (evaporating_air, condensing_air) = readings.coil_air();
    let over = |side: &Option<circuit::Side>, air: Option<Temperature>| {
        side.as_ref()?.beyond(accuracy.air(air?))
    };
    let evaporating = over(&circuit.suction, evaporating_air);
    let condensing = over(&circuit.liquid, condensing_air);
    let split = readings.coil.split(&accuracy);
    let check = |found: &Option<Measured>, target| Check::of(found.as_ref(), target, blocked);
    let checks = [
        check(&circuit.superheat, readings.superheat_target(rule.as_ref())),
        check(&circuit.subcooling, readings.subcooling_target()),
        check(&evaporating, evaporating_target),
        check(&condensing, condensing_target),
        check(&split, readings.split_target()),
    ];
    let capacity = readings.coil.capacity(&accuracy);
    let airflow = readings.coil.enough(&accuracy);
    working.extend(circuit.working.iter().cloned());
    working.extend(rule.map(|rule| rule.step()));
    working.extend(
        capacity
            .iter()
            .flat_map(|capacity| readings.coil.steps(capacity)),
    );
    let pattern = pattern(readings, &checks, airflow);
    let notices = notices(readings, &checks);
    let verdict = verdict(readings, &checks, airflow);
    let [
        superheat,
        subcooling,
        evaporating_difference,
        condensing_difference,
        temperature_split,
    ] = checks;
    RunningAnswer {
        mode: readings.coil.mode,
        ambient: readings.air,
        verdict,
        superheat,
        subcooling,
        temperature_split,
        evaporating_difference,
        condensing_difference,
        evaporating: circuit.suction.as_ref().map(circuit::Side::answer),
        condensing: circuit.liquid.as_ref().map(circuit::Side::answer),
        compression_ratio: circuit.compression_ratio,
        capacity,
        airflow,
        pattern,
        notices,
        cautions: cautions(readings.refrigerant),
        missing: readings.missing(),
        accuracy,
        working,
    }
}

type Airflow = Option<Judgement<VolumeFlow, VolumeFlow>>;

/// The verdict on the whole: see [`RunningAnswer::verdict`].
fn verdict(readings: &Readings, checks: &[Check; 5], airflow: Airflow) -> Option<Verdict> {
    let [superheat, subcooling, _, _, split] = checks;
    let orifice = readings.device == Some(MeteringDevice::FixedOrifice);
    let airflow = airflow.map(|judgement| judgement.verdict);
    let (charge, device) = (subcooling.verdict(), superheat.verdict());
    let mut judged = [device, charge, split.verdict(), airflow]
        .into_iter()
        .flatten();
    let first = judged.next()?;
    let all = judged.fold(first, Verdict::and);
    let complete = device.is_some() && (orifice || charge.is_some());
    Some(if complete {
        all
    } else {
        all.and(Verdict::CannotTell)
    })
}

fn pattern(readings: &Readings, checks: &[Check; 5], airflow: Airflow) -> Option<Pattern> {
    let heating = readings.coil.mode == RunningMode::Heating;
    if heating || readings.is_cold() || readings.blocked().is_some() {
        return None;
    }
    let mut seen = checks.each_ref().map(|check| check.deviation);
    // Liquid in vapour, or vapour in liquid, is too low whatever the target.
    for (seen, check) in seen.iter_mut().zip(checks).take(2) {
        if check.is_surely_negative() {
            *seen = Some(Deviation::Low);
        }
    }
    let airflow = match airflow.map(|judgement| judgement.verdict) {
        Some(Verdict::OutOfBand) => IndoorAirflow::TooLittle,
        // A measured airflow that may be too little outweighs the tick.
        Some(Verdict::CannotTell) => IndoorAirflow::NotRuledOut,
        _ if readings.airflow_checked => IndoorAirflow::RuledOut,
        _ => IndoorAirflow::NotRuledOut,
    };
    let known = seen.iter().any(Option::is_some) || airflow == IndoorAirflow::TooLittle;
    known.then(|| usual_causes(seen, readings.device, airflow))
}
