//! What the figures of a running system should be.

use super::check::{Target, TargetBasis, WhyOpen};
use super::measured::Measured;
use super::readings::Readings;
use super::{MeteringDevice, RunningMode};
use crate::calc::working::Step;
use crate::quantity::factors::{KELVIN_AT_ZERO_FAHRENHEIT, KELVIN_PER_FAHRENHEIT};
use crate::quantity::{Band, Quantity, Temperature, TemperatureDifference, Time};
use crate::tables::SourceId;

const fn fahrenheit(number: f64) -> TemperatureDifference {
    TemperatureDifference::kelvins(number * KELVIN_PER_FAHRENHEIT)
}

const fn band(low: f64, high: f64) -> Band<TemperatureDifference> {
    Band {
        low: fahrenheit(low),
        high: fahrenheit(high),
    }
}

/// What an installer's superheat may be off its target. Title 24 (2008) RA3.2.2.5.
const SUPERHEAT_TOLERANCE: TemperatureDifference = fahrenheit(5.0);
/// What an installer's subcooling may be off its target. Title 24 (2008) RA3.2.2.6.
const SUBCOOLING_TOLERANCE: TemperatureDifference = fahrenheit(3.0);
/// What a temperature split may be off its target. Title 24 (2008) RA3.2.2.7.
const SPLIT_TOLERANCE: TemperatureDifference = fahrenheit(3.0);
/// Superheat with a metering valve whose maker gives none. Title 24 (2008) RA3.2.2.6.
const VALVE_SUPERHEAT: Band<TemperatureDifference> = band(4.0, 25.0);
/// Least target superheat at which a test is valid. Title 24 (2008) RA3.2.2.5.
const LEAST_TARGET: f64 = 5.0;
/// Least outdoor temperature at which a test is valid. Title 24 (2008) RA3.2.1.
const LEAST_OUTDOOR: Temperature = Temperature::fahrenheit(55.0);
/// Hottest outdoor air and indoor wet bulbs, °F, of Title 24's table RA3.2-2 (from memory): beyond it the rule is not used.
const RULE: [(f64, f64); 2] = [(50.0, 76.0), (55.0, 115.0)];
/// Time in which a system settles. Title 24 (2008) RA3.2.2.5.
const SETTLING: Time = Time::seconds(15.0 * 60.0);
/// Return air over evaporating temperature in cooling at one speed. Common practice, no source.
const EVAPORATING: Band<TemperatureDifference> = band(25.0, 40.0);
/// Condensing temperature over outdoor air in cooling at one speed. Common practice, no source.
const CONDENSING: Band<TemperatureDifference> = band(10.0, 30.0);

fn in_fahrenheit(kelvins: f64) -> f64 {
    (kelvins - KELVIN_AT_ZERO_FAHRENHEIT) / KELVIN_PER_FAHRENHEIT
}

/// A band that was entered; one figure alone stands for itself and a tolerance.
fn entered(given: Band<TemperatureDifference>, tolerance: TemperatureDifference) -> Target {
    if given.low < given.high {
        return Target::of(given, TargetBasis::Plate, SourceId::PlateFigure);
    }
    let around = Band {
        low: given.low - tolerance,
        high: given.high + tolerance,
    };
    Target::of(around, TargetBasis::Plate, SourceId::Title24)
}

impl Readings {
    /// Why nothing may be judged now.
    pub fn blocked(&self) -> Option<WhyOpen> {
        let running = self.running_time?;
        (running < SETTLING).then_some(WhyOpen::NotSettled)
    }

    /// Whether it is too cold outdoors for a test in cooling.
    pub fn is_cold(&self) -> bool {
        let cooling = self.coil.mode == RunningMode::Cooling;
        cooling && self.outdoor.is_some_and(|outdoor| outdoor < LEAST_OUTDOOR)
    }

    /// A target of the method, which asks for warm air outdoors.
    fn if_warm(&self, target: Target) -> Result<Target, WhyOpen> {
        if self.is_cold() {
            return Err(WhyOpen::OutdoorTooCold);
        }
        Ok(target)
    }

    /// Superheat: the plate's, the valve's range, or the rule for a fixed orifice.
    pub fn superheat_target(&self, rule: Option<&OrificeRule>) -> Result<Target, WhyOpen> {
        if let Some(plate) = self.plate_superheat {
            return Ok(entered(plate, SUPERHEAT_TOLERANCE));
        }
        if self.coil.mode == RunningMode::Heating {
            return Err(WhyOpen::NeedsPlate);
        }
        match self.device {
            None => Err(WhyOpen::NeedsDevice),
            Some(MeteringDevice::FixedOrifice) => self.orifice_target(rule),
            Some(_) => {
                let basis = TargetBasis::ValveRange;
                self.if_warm(Target::of(VALVE_SUPERHEAT, basis, SourceId::Title24))
            }
        }
    }

    fn orifice_target(&self, rule: Option<&OrificeRule>) -> Result<Target, WhyOpen> {
        let rule = rule.ok_or(WhyOpen::NeedsWetBulbAndOutdoor)?;
        let middle = TemperatureDifference::kelvins(rule.found.figure);
        let around = Band {
            low: middle - SUPERHEAT_TOLERANCE,
            high: middle + SUPERHEAT_TOLERANCE,
        };
        let target = self.if_warm(Target {
            uncertainty: TemperatureDifference::kelvins(rule.found.uncertainty()),
            ..Target::of(around, TargetBasis::OrificeRule, SourceId::CommonPractice)
        })?;
        let readings = [rule.wet_bulb, rule.outdoor].map(|read| in_fahrenheit(read.si()));
        let mut pairs = readings.iter().zip(RULE);
        if pairs.any(|(read, (low, high))| *read < low - EDGE || *read > high + EDGE) {
            return Err(WhyOpen::OutsideRule);
        }
        if middle.si() / KELVIN_PER_FAHRENHEIT < LEAST_TARGET - EDGE {
            return Err(WhyOpen::TargetTooLow);
        }
        Ok(target)
    }

    /// The rule for a fixed orifice, if wet bulb and outdoor temperature are known.
    pub fn orifice_rule(&self) -> Option<OrificeRule> {
        if self.device != Some(MeteringDevice::FixedOrifice)
            || self.coil.mode == RunningMode::Heating
        {
            return None;
        }
        let (indoor, outdoor) = (self.coil.entering, self.outdoor?);
        let [dry_bulb, humidity] = indoor.reads(&self.accuracy)?;
        let wet_bulb =
            |dry_bulb, humidity| indoor.wet_bulb_of(dry_bulb, humidity, self.air.pressure);
        let readings = [dry_bulb, humidity, self.accuracy.air(outdoor)];
        let found = Measured::by(&readings, &|numbers| {
            let [dry_bulb, humidity, outdoor] = *numbers else {
                return None;
            };
            let wet_bulb = in_fahrenheit(wet_bulb(dry_bulb, humidity)?);
            Some((3.0 * wet_bulb - 80.0 - in_fahrenheit(outdoor)) / 2.0 * KELVIN_PER_FAHRENHEIT)
        })?;
        let wet_bulb = Temperature::from_si(wet_bulb(dry_bulb.si, humidity.si)?);
        Some(OrificeRule {
            wet_bulb,
            outdoor,
            found,
        })
    }

    /// Subcooling: the plate's.
    pub fn subcooling_target(&self) -> Result<Target, WhyOpen> {
        let plate = self.plate_subcooling.ok_or(WhyOpen::NeedsPlate)?;
        Ok(entered(plate, SUBCOOLING_TOLERANCE))
    }

    /// Temperature split, or rise: what was entered.
    pub fn split_target(&self) -> Result<Target, WhyOpen> {
        let target = self.target_split.ok_or(WhyOpen::NeedsTarget)?;
        Ok(entered(target, SPLIT_TOLERANCE))
    }

    /// Air over evaporating and condensing over air: what was entered, or what is usual in cooling
    /// at one speed; electronic valves mostly run at many.
    pub fn difference_targets(&self) -> [Result<Target, WhyOpen>; 2] {
        let steady = self.device != Some(MeteringDevice::ElectronicValve);
        let usual = steady && self.coil.mode == RunningMode::Cooling;
        let target = |given: Option<Band<TemperatureDifference>>, common| match given {
            Some(given) => Ok(entered(given, SPLIT_TOLERANCE)),
            None if usual => {
                let basis = TargetBasis::CommonPractice;
                self.if_warm(Target::of(common, basis, SourceId::CommonPractice))
            }
            None => Err(WhyOpen::NeedsTarget),
        };
        [
            target(self.evaporating_band, EVAPORATING),
            target(self.condensing_band, CONDENSING),
        ]
    }
}

/// °F by which a limit may be missed through rounding.
const EDGE: f64 = 1e-9;

/// The rule for a fixed orifice, with what went into it.
pub(super) struct OrificeRule {
    wet_bulb: Temperature,
    outdoor: Temperature,
    found: Measured,
}

impl OrificeRule {
    /// The step that finds the superheat.
    pub fn step(&self) -> Step {
        let found = TemperatureDifference::kelvins(self.found.figure);
        Step::of(
            "step-orifice-rule",
            "{Δt} = (3·{t_w} − 80 − {t_o}) / 2, in °F",
        )
        .with("t_w", "figure-return-wet-bulb", self.wet_bulb)
        .with("t_o", "figure-outdoor-dry-bulb", self.outdoor)
        .from(SourceId::CommonPractice)
        .gives("Δt", "figure-target-superheat", found)
    }
}
