//! What has to be known besides the figures, and what can hurt.

use super::RunningMode;
use super::check::Check;
use super::readings::Readings;
use crate::calc::problem::Field;
use crate::quantity::choice;
use crate::tables::refrigerants::{Refrigerant, SafetyClass};

choice! {
    /// What has to be known about the figures besides their verdicts.
    RunningNotice {
        /// The suction line is surely colder than dew: liquid in it, or a wrong reading or refrigerant.
        LiquidInSuction = "liquid-in-suction",
        /// The liquid line is surely warmer than its bubble temperature: vapour in it, or a wrong reading or refrigerant.
        VapourInLiquid = "vapour-in-liquid",
        /// Subcooling counts from the discharge pressure, which is above that of the liquid: it comes out too large.
        SubcoolingFromDischarge = "subcooling-from-discharge",
        /// Nothing says how long it has run; verdicts hold after 15 minutes only.
        SettlingNotEntered = "settling-not-entered",
        /// No outdoor temperature; the method asks for 55 °F or more.
        OutdoorNotEntered = "outdoor-not-entered",
        /// Colder than 55 °F outdoors: the charge cannot be judged by this method.
        OutdoorTooCold = "outdoor-too-cold",
        /// The air is changed the other way than the mode says.
        AirTheOtherWay = "air-the-other-way",
        /// Usual causes are known for cooling only.
        CausesInCoolingOnly = "causes-in-cooling-only",
    }
}

choice! {
    /// What can hurt beside a running system.
    RunningCaution {
        /// Covers are off and parts are under voltage.
        LiveParts = "live-parts",
        /// Fans and belts turn, and start by themselves.
        TurningParts = "turning-parts",
        /// Lines burn or freeze, hoses are under pressure.
        HotAndColdLines = "hot-and-cold-lines",
        /// The refrigerant burns.
        Burns = "refrigerant-burns",
        /// The refrigerant is toxic.
        Toxic = "refrigerant-toxic",
        /// The equipment's instructions, local code and licensed practice come first.
        CodeFirst = "instructions-and-code-first",
    }
}

pub(super) fn notices(readings: &Readings, checks: &[Check; 5]) -> Vec<RunningNotice> {
    use RunningNotice as N;
    let [superheat, subcooling, _, _, split] = checks;
    let judged = checks.iter().any(|check| check.judgement.is_some());
    let cooling = readings.coil.mode == RunningMode::Cooling;
    let from_discharge = readings
        .liquid
        .as_ref()
        .is_some_and(|liquid| liquid.origin.field == Field::named("discharge_gauge_pressure"));
    let notices = [
        (N::LiquidInSuction, superheat.is_surely_negative()),
        (N::VapourInLiquid, subcooling.is_surely_negative()),
        (
            N::SubcoolingFromDischarge,
            subcooling.figure.is_some() && from_discharge,
        ),
        (
            N::SettlingNotEntered,
            judged && readings.running_time.is_none(),
        ),
        (
            N::OutdoorNotEntered,
            judged && cooling && readings.outdoor.is_none(),
        ),
        (N::OutdoorTooCold, readings.is_cold()),
        (N::AirTheOtherWay, split.is_surely_negative()),
        (N::CausesInCoolingOnly, judged && !cooling),
    ];
    let told = notices.iter().filter(|(_, told)| *told);
    told.map(|(notice, _)| *notice).collect()
}

pub(super) fn cautions(refrigerant: Option<Refrigerant>) -> Vec<RunningCaution> {
    use RunningCaution as C;
    let class = refrigerant.map(|refrigerant| refrigerant.safety_class().figure);
    let cautions = [
        (C::LiveParts, true),
        (C::TurningParts, true),
        (C::HotAndColdLines, true),
        (C::Burns, !matches!(class, None | Some(SafetyClass::A1))),
        (C::Toxic, matches!(class, Some(SafetyClass::B2L))),
        (C::CodeFirst, true),
    ];
    let held = cautions.iter().filter(|(_, holds)| *holds);
    held.map(|(caution, _)| *caution).collect()
}
