//! A figure of the running system, what it should be, and how it stands to that.

use serde::Serialize;

use super::measured::{ErrorSource, Measured};
use crate::calc::verdict::{Judgement, Verdict, judge};
use crate::quantity::{Band, Quantity, TemperatureDifference, choice};
use crate::tables::SourceId;

choice! {
    /// Where a figure surely stands to its band.
    Deviation {
        /// Below it.
        Low = "low",
        /// In it.
        InBand = "in-band",
        /// Above it.
        High = "high",
    }
}

choice! {
    /// Why a band is the target.
    TargetBasis {
        /// It is the plate's own, or was entered.
        Plate = "plate",
        /// A metering valve whose maker gives no superheat.
        ValveRange = "valve-range",
        /// The rule for a fixed orifice, from indoor wet bulb and outdoor dry bulb.
        OrificeRule = "orifice-rule",
        /// What is usual in the trade.
        CommonPractice = "common-practice",
    }
}

choice! {
    /// Why a figure has no verdict.
    WhyOpen {
        /// Its readings are not all entered.
        NeedsReadings = "needs-readings",
        /// The plate's figure is not entered.
        NeedsPlate = "needs-plate",
        /// No target is entered.
        NeedsTarget = "needs-target",
        /// Neither the plate's figure nor the metering device is entered.
        NeedsDevice = "needs-device",
        /// Indoor wet bulb and outdoor dry bulb are not both entered.
        NeedsWetBulbAndOutdoor = "needs-wet-bulb-and-outdoor",
        /// The target superheat is under 5 °F: no valid test.
        TargetTooLow = "target-too-low",
        /// Under 55 °F outdoors: no valid test.
        OutdoorTooCold = "outdoor-too-cold",
        /// Wet bulb or outdoor temperature lies outside what the rule holds for.
        OutsideRule = "outside-rule",
        /// The system has not run for 15 minutes.
        NotSettled = "not-settled",
    }
}

/// What a figure should be.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Target {
    /// The band.
    pub band: Band<TemperatureDifference>,
    /// Why it holds.
    pub basis: TargetBasis,
    /// Where it, or its tolerance, comes from.
    pub source: SourceId,
    /// How far the band itself may be off, because it was found from readings.
    pub uncertainty: TemperatureDifference,
}

impl Target {
    pub(super) const fn of(
        band: Band<TemperatureDifference>,
        basis: TargetBasis,
        source: SourceId,
    ) -> Self {
        Self {
            band,
            basis,
            source,
            uncertainty: TemperatureDifference::kelvins(0.0),
        }
    }
}

/// A figure that was found, what it should be, and the verdict.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Check {
    /// The figure, absent if a reading is missing.
    pub figure: Option<TemperatureDifference>,
    /// How far it may be off, by instruments and refrigerant data.
    pub uncertainty: Option<TemperatureDifference>,
    /// What most of that comes from: a finer one of these would decide what cannot be told.
    pub largest_error: Option<ErrorSource>,
    /// What it should be.
    pub target: Option<Target>,
    /// How it stands to that; its uncertainty includes that of the target.
    pub judgement: Option<Judgement<TemperatureDifference, TemperatureDifference>>,
    /// Where it surely stands; absent if that cannot be told.
    pub deviation: Option<Deviation>,
    /// Why there is no verdict.
    pub open: Option<WhyOpen>,
}

impl Check {
    /// Judges what was measured; `blocked` says why nothing may be judged now.
    pub(super) fn of(
        measured: Option<&Measured>,
        target: Result<Target, WhyOpen>,
        blocked: Option<WhyOpen>,
    ) -> Self {
        let mut check = Self {
            figure: measured.map(|found| TemperatureDifference::kelvins(found.figure)),
            uncertainty: measured.map(|found| TemperatureDifference::kelvins(found.uncertainty())),
            largest_error: measured.and_then(Measured::largest),
            target: target.ok(),
            ..Self::default()
        };
        let open = blocked.or(target.err());
        check.open = open.or(measured.is_none().then_some(WhyOpen::NeedsReadings));
        if let (Some(figure), Some(own), Some(target), None) =
            (check.figure, check.uncertainty, check.target, check.open)
        {
            let uncertainty =
                own.si() * own.si() + target.uncertainty.si() * target.uncertainty.si();
            let uncertainty = TemperatureDifference::kelvins(uncertainty.sqrt());
            if target.uncertainty > own {
                check.largest_error = Some(ErrorSource::AirThermometers);
            }
            let judgement = judge(figure, uncertainty, target.band);
            check.deviation = match judgement.verdict {
                Verdict::InBand => Some(Deviation::InBand),
                Verdict::OutOfBand if figure < target.band.low => Some(Deviation::Low),
                Verdict::OutOfBand => Some(Deviation::High),
                Verdict::CannotTell => None,
            };
            check.judgement = Some(judgement);
        }
        check
    }

    /// Whether it is surely negative: a superheat of vapour with liquid in it, a subcooling of liquid with vapour in it.
    pub(super) fn is_surely_negative(&self) -> bool {
        let sum = self.figure.zip(self.uncertainty);
        sum.is_some_and(|(figure, uncertainty)| figure.si() < -uncertainty.si())
    }

    pub(super) fn verdict(&self) -> Option<Verdict> {
        self.judgement.map(|judgement| judgement.verdict)
    }
}
