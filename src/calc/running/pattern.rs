//! What a pattern of deviations usually means, and what to look at next.

use serde::Serialize;

use super::check::Deviation;
use super::{MeteringDevice, RunningFigure};
use crate::quantity::choice;
use crate::tables::SourceId;

choice! {
    /// A usual cause of what is out of band.
    UsualCause {
        /// Too little air over the indoor coil: filter, coil, fan, registers, ducts, ice.
        LowIndoorAirflow = "low-indoor-airflow",
        /// Too little refrigerant in the circuit.
        Undercharge = "undercharge",
        /// Too much refrigerant in the circuit.
        Overcharge = "overcharge",
        /// Outdoor coil dirty, its fan weak, or its own warm air coming back.
        OutdoorCoil = "outdoor-coil",
        /// Air or nitrogen in the circuit.
        NonCondensables = "non-condensables",
        /// The metering device lets too little through.
        MeteringRestriction = "metering-restriction",
        /// Something blocks the liquid line.
        LiquidLineRestriction = "liquid-line-restriction",
        /// The metering device lets too much through.
        MeteringOverfeed = "metering-overfeed",
        /// The compressor, or the reversing valve, leaks from the high to the low side.
        WeakCompressor = "weak-compressor",
    }
}

choice! {
    /// What to look at next. Only [`NextCheck::FindLeakThenWeighIn`] leads to adding refrigerant.
    NextCheck {
        /// Filter, coil, fan speed and direction, registers, ducts, ice.
        IndoorAirflow = "check-indoor-airflow",
        /// Airflow first: until it is ruled out, the charge cannot be judged.
        RuleOutAirflow = "rule-out-airflow",
        /// Find and mend the leak, evacuate, weigh in what the plate says.
        FindLeakThenWeighIn = "find-leak-then-weigh-in",
        /// Compare what was charged with plate and line set; recover what is too much.
        CompareCharge = "compare-charge",
        /// Wash the coil, check fan, direction of rotation, clearances.
        OutdoorCoil = "check-outdoor-coil",
        /// Standing at one temperature, compare pressure and saturation.
        StandingPressure = "check-standing-pressure",
        /// Strainer, bulb, power head, coil and drive of the valve.
        MeteringDevice = "check-metering-device",
        /// A temperature drop along the liquid line: drier, kink, service valve.
        LiquidLine = "check-liquid-line",
        /// Bulb loose or uninsulated, orifice too large, valve that does not close.
        BulbAndOrifice = "check-bulb-and-orifice",
        /// Current against the plate, discharge temperature, reversing valve.
        Compressor = "check-compressor",
    }
}

choice! {
    /// What is known of the airflow over the indoor coil.
    IndoorAirflow {
        /// Too little has been ruled out.
        RuledOut = "airflow-ruled-out",
        /// It has not: check it first.
        NotRuledOut = "airflow-not-ruled-out",
        /// It was measured, and is surely too little.
        TooLittle = "airflow-too-little",
    }
}

/// A cause and how well it fits.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct RankedCause {
    /// The cause.
    pub cause: UsualCause,
    /// How many of the sure deviations it explains.
    pub explains: u8,
    /// What to look at next.
    pub next_check: NextCheck,
}

/// What the sure deviations usually mean.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Pattern {
    /// Where the table of signs comes from.
    pub source: SourceId,
    /// How many figures, a measured airflow included, are out of band by more than they may be off.
    pub deviations: u8,
    /// What is known of the airflow. Unless too little is ruled out, it is what to check first, and adding refrigerant is never advised.
    pub airflow: IndoorAirflow,
    /// Causes, the best fit first; none if nothing is surely out of band or nothing fits.
    pub causes: Vec<RankedCause>,
    /// Figures not known yet that would tell the best fits apart.
    pub would_decide: Vec<RunningFigure>,
}

/// A cause with the signs it shows with a fixed orifice and with a valve.
struct Row(UsualCause, &'static str, &'static str);

/// Signs of each cause in cooling. Common practice, no source.
///
/// Columns as in [`RunningFigure`]: superheat; subcooling; return air over evaporating (+ is a low
/// evaporating temperature); condensing over outdoor air; temperature split. `+` above the band, `-`
/// below, `0` in it, `?` either. A valve holds the superheat until it is fully open or closed.
const SIGNS: [Row; 9] = [
    Row(UsualCause::LowIndoorAirflow, "-?+?+", "0?+?+"),
    Row(UsualCause::Undercharge, "+-+--", "?-+--"),
    Row(UsualCause::Overcharge, "-+-+?", "0+?+?"),
    Row(UsualCause::OutdoorCoil, "-?-+-", "0??+?"),
    Row(UsualCause::NonCondensables, "?+?+?", "0+?+?"),
    Row(UsualCause::MeteringRestriction, "+++?-", "+++?-"),
    Row(UsualCause::LiquidLineRestriction, "+?+?-", "+?+?-"),
    Row(UsualCause::MeteringOverfeed, "---??", "---??"),
    Row(UsualCause::WeakCompressor, "??---", "??---"),
];

impl Row {
    /// Its sign for a figure; with an unknown device only where it holds for both.
    fn sign(&self, place: usize, device: Option<MeteringDevice>) -> u8 {
        let Self(_, orifice, valve) = self;
        let [orifice, valve] = [orifice, valve].map(|signs| signs.as_bytes().get(place));
        let sign = match device {
            Some(MeteringDevice::FixedOrifice) => orifice,
            Some(_) => valve,
            None => orifice.filter(|_| orifice == valve),
        };
        *sign.unwrap_or(&b'?')
    }

    /// How well it fits: by its signs, or because that airflow itself was measured as too little.
    fn fit_with(
        &self,
        seen: &[Option<Deviation>],
        device: Option<MeteringDevice>,
        airflow: IndoorAirflow,
    ) -> Option<Fit> {
        let fit = self.fit(seen, device);
        if self.0 != UsualCause::LowIndoorAirflow || airflow != IndoorAirflow::TooLittle {
            return fit;
        }
        Some(Fit {
            score: MEASURED,
            explains: 1 + fit.map_or(0, |fit| fit.explains),
        })
    }

    /// How well its signs fit, and how many deviations they explain; `None` if one points the other way.
    fn fit(&self, seen: &[Option<Deviation>], device: Option<MeteringDevice>) -> Option<Fit> {
        let mut fit = Fit {
            score: 0,
            explains: 0,
        };
        for (place, seen) in seen.iter().enumerate() {
            match (self.sign(place, device), seen) {
                (b'+', Some(Deviation::High)) | (b'-', Some(Deviation::Low)) => {
                    fit.score += MATCH;
                    fit.explains += 1;
                }
                (b'+', Some(Deviation::Low)) | (b'-', Some(Deviation::High)) => return None,
                (b'+' | b'-', Some(Deviation::InBand))
                | (b'0', Some(Deviation::Low | Deviation::High)) => {
                    fit.score -= MISS;
                }
                _ => {}
            }
        }
        (fit.score > 0).then_some(fit)
    }
}

/// What a deviation in the expected direction counts for.
const MATCH: i8 = 2;
/// What an expected deviation that is surely absent, or an unexpected one, counts against.
const MISS: i8 = 1;

/// What a cause that was itself measured counts for: more than five matches.
const MEASURED: i8 = 5 * MATCH + 1;

struct Fit {
    score: i8,
    explains: u8,
}

/// What do these deviations usually mean? Given for each of [`RunningFigure::ALL`], `None` where it is not
/// known or too near a limit to tell.
///
/// ```
/// use coldwright::calc::running::{Deviation, IndoorAirflow, NextCheck, UsualCause, usual_causes};
/// use Deviation::{High, Low};
/// let seen = [Some(High), Some(Low), Some(High), Some(Low), None];
/// let pattern = usual_causes(seen, None, IndoorAirflow::NotRuledOut);
/// assert_eq!(pattern.causes[0].cause, UsualCause::Undercharge);
/// assert_eq!(pattern.causes[0].next_check, NextCheck::RuleOutAirflow);
/// ```
pub fn usual_causes(
    seen: [Option<Deviation>; 5],
    device: Option<MeteringDevice>,
    airflow: IndoorAirflow,
) -> Pattern {
    let fits = SIGNS
        .each_ref()
        .map(|row| row.fit_with(&seen, device, airflow));
    let mut causes = Vec::new();
    let mut best: Vec<&Row> = Vec::new();
    // Equal fits stay in the order of the table: airflow first.
    for score in (1..=MEASURED).rev() {
        let is_best = causes.is_empty();
        for (row, fit) in SIGNS.iter().zip(&fits) {
            let Some(fit) = fit.as_ref().filter(|fit| fit.score == score) else {
                continue;
            };
            if is_best {
                best.push(row);
            }
            causes.push(RankedCause {
                cause: row.0,
                explains: fit.explains,
                next_check: next_check(row.0, airflow),
            });
        }
    }
    let differs = |place| {
        let mut signs = best.iter().map(|row| row.sign(place, device));
        let first = signs.next();
        signs.any(|sign| Some(sign) != first)
    };
    let mut would_decide = Vec::new();
    let mut deviations = u8::from(airflow == IndoorAirflow::TooLittle);
    for (place, (figure, seen)) in RunningFigure::ALL.iter().zip(seen).enumerate() {
        match seen {
            None if differs(place) => would_decide.push(*figure),
            Some(Deviation::Low | Deviation::High) => deviations += 1,
            _ => {}
        }
    }
    Pattern {
        source: SourceId::CommonPractice,
        deviations,
        airflow,
        causes,
        would_decide,
    }
}

/// What to look at for a cause. Adding refrigerant waits until airflow is ruled out.
fn next_check(cause: UsualCause, airflow: IndoorAirflow) -> NextCheck {
    match cause {
        UsualCause::LowIndoorAirflow => NextCheck::IndoorAirflow,
        UsualCause::Undercharge if airflow == IndoorAirflow::RuledOut => {
            NextCheck::FindLeakThenWeighIn
        }
        UsualCause::Undercharge => NextCheck::RuleOutAirflow,
        UsualCause::Overcharge => NextCheck::CompareCharge,
        UsualCause::OutdoorCoil => NextCheck::OutdoorCoil,
        UsualCause::NonCondensables => NextCheck::StandingPressure,
        UsualCause::MeteringRestriction => NextCheck::MeteringDevice,
        UsualCause::LiquidLineRestriction => NextCheck::LiquidLine,
        UsualCause::MeteringOverfeed => NextCheck::BulbAndOrifice,
        UsualCause::WeakCompressor => NextCheck::Compressor,
    }
}
