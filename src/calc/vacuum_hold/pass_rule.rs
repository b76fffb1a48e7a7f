//! Published rules by which a vacuum hold passes, and the plate's own.

use serde::Serialize;

use super::answer::COVERAGE;
use super::finding::Finding;
use super::posterior::{Posterior, Which};
use super::{DRY_PRESSURE, Hold, MICRON, PRESSURES, VacuumHoldInput};
use crate::calc::problem::Field;
use crate::calc::reading::{Reading, optional, required};
use crate::calc::verdict::{Judgement, Verdict, judge_at_most};
use crate::quantity::{AbsolutePressure, Entry, PressureDifference, Time, choice};
use crate::tables::SourceId;

choice! {
    /// Whose rule holds.
    PassRule {
        /// UFGS 15182, 3.3.3: evacuated to 300 micron, valved off for an hour, not above 500 micron then.
        Ufgs15182 = "ufgs-15182",
        /// Real Decreto 552/2019, IF-09, 1.6.3, charges under 20 kg: under 270 Pa, three hours, a rise of no more than 2 Pa.
        RealDecreto552 = "real-decreto-552-2019",
        /// The plate's or the instructions' own.
        Plate = "plate",
    }
}

/// What a rule asks for.
#[derive(Clone, Copy, Debug)]
pub(super) struct Criteria {
    rule: PassRule,
    source: SourceId,
    /// Highest pressure at the start.
    start: Option<AbsolutePressure>,
    /// Highest pressure at the end.
    end: AbsolutePressure,
    /// Largest rise.
    rise: Option<PressureDifference>,
    /// How long the pump stays valved off.
    time: Time,
}

/// Time that a hold by the plate lasts if it does not say: common practice, half an hour to an hour.
const PLATE_TIME: Time = Time::seconds(1800.0);

impl Criteria {
    pub fn read(input: &VacuumHoldInput, reading: &mut Reading) -> Option<Self> {
        let rule = optional!(reading, input.pass_rule);
        let entered = !matches!(input.pass_pressure, Entry::Absent);
        let rule = rule.unwrap_or(if entered {
            PassRule::Plate
        } else {
            PassRule::Ufgs15182
        });
        let pressure = if rule == PassRule::Plate {
            required!(reading, input.pass_pressure)
        } else {
            optional!(reading, input.pass_pressure)
        };
        reading.within(Field::named("pass_pressure"), pressure, PRESSURES);
        let time = optional!(reading, input.pass_time);
        Some(match rule {
            PassRule::Ufgs15182 => Self {
                rule,
                source: SourceId::UfgsEvacuation,
                start: Some(AbsolutePressure::pascals(300.0 * MICRON)),
                end: AbsolutePressure::pascals(500.0 * MICRON),
                rise: None,
                time: Time::seconds(3600.0),
            },
            PassRule::RealDecreto552 => Self {
                rule,
                source: SourceId::RealDecreto552Evacuation,
                start: Some(AbsolutePressure::pascals(270.0)),
                end: AbsolutePressure::pascals(270.0),
                rise: Some(PressureDifference::pascals(2.0)),
                time: Time::seconds(3.0 * 3600.0),
            },
            PassRule::Plate => Self {
                rule,
                source: SourceId::PlateFigure,
                start: None,
                end: pressure.unwrap_or(DRY_PRESSURE),
                rise: None,
                time: time.unwrap_or(PLATE_TIME),
            },
        })
    }
}

/// Whether a hold passes by its rule.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct PassCheck {
    /// The rule.
    pub rule: PassRule,
    /// Where it stands.
    pub source: SourceId,
    /// Met, not met, or not to be told yet.
    pub verdict: Verdict,
    /// How long the rule wants the pump valved off.
    pub time: Time,
    /// How much of that is still to come.
    pub remaining: Time,
    /// Pressure at the start against the rule, where it asks for one.
    pub start: Option<Judgement<AbsolutePressure, PressureDifference>>,
    /// Pressure now, or at the end of the rule's time, against the rule.
    pub pressure: Judgement<AbsolutePressure, PressureDifference>,
    /// Rise till then against the rule, where it asks for one.
    pub rise: Option<Judgement<PressureDifference, PressureDifference>>,
    /// Pressure to expect at the end of the rule's time, while it is still to come and a law is known to hold.
    pub expected: Option<Judgement<AbsolutePressure, PressureDifference>>,
}

impl Hold {
    /// Judges the hold by its rule.
    pub fn pass_check(&self, posterior: &Posterior, finding: &Finding) -> PassCheck {
        let criteria = &self.criteria;
        let full = criteria.time.in_seconds();
        let remaining = (full - self.record.held).max(0.0);
        let (first, spread) = self.level(posterior, finding, 0.0);
        let first = match self.pump_end {
            Some(pressure) => (pressure.in_pascals(), 0.0),
            None => (first, spread),
        };
        let last = self.level(posterior, finding, full.min(self.record.held));
        let against = |(level, spread): (f64, f64), limit: AbsolutePressure| {
            let spread = COVERAGE * spread;
            let uncertainty = (spread * spread + self.uncertainty * self.uncertainty).sqrt();
            let uncertainty = PressureDifference::pascals(uncertainty);
            judge_at_most(AbsolutePressure::pascals(level), uncertainty, limit)
        };
        // What puts all readings off alike does not show in their difference.
        let rise = criteria.rise.map(|limit| {
            let spread = COVERAGE * (first.1 * first.1 + last.1 * last.1).sqrt();
            let rise = PressureDifference::pascals(last.0 - first.0);
            judge_at_most(rise, PressureDifference::pascals(spread), limit)
        });
        // The pump is valved off at what the gauge shows, be it right or not.
        let start = criteria.start.map(|limit| {
            let shown = self
                .pump_end
                .map_or(self.record.near(0.0), |p| p.in_pascals());
            let nothing = PressureDifference::pascals(0.0);
            judge_at_most(AbsolutePressure::pascals(shown), nothing, limit)
        });
        let pressure = against(last, criteria.end);
        let verdicts = [start.map(|s| s.verdict), rise.map(|r| r.verdict)];
        let all = verdicts.into_iter().flatten();
        let verdict = all.fold(pressure.verdict, Verdict::and);
        let is_to_come = remaining > 0.0 && finding.has_law();
        let expected = is_to_come.then(|| posterior.expected(full, Which::All));
        PassCheck {
            rule: criteria.rule,
            source: criteria.source,
            // Before its time is over a rule can be broken, but not met.
            verdict: if remaining > 0.0 && verdict == Verdict::InBand {
                Verdict::CannotTell
            } else {
                verdict
            },
            time: criteria.time,
            remaining: Time::seconds(remaining),
            start,
            pressure,
            rise,
            expected: expected.flatten().map(|level| against(level, criteria.end)),
        }
    }
}
