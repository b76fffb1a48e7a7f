//! What pump-down finds.

use serde::Serialize;

use crate::calc::ambient::Ambient;
use crate::calc::working::Working;
use crate::physics::water::Surface;
use crate::quantity::{
    AbsolutePressure, Length, Mass, Power, Ratio, Temperature, Time, Volume, VolumeFlow, choice,
};

/// What [`pump_down`](super::pump_down) finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct PumpDownAnswer {
    /// The air around.
    pub ambient: Ambient,
    /// Pressure at the start.
    pub starting_pressure: AbsolutePressure,
    /// Volume that is emptied.
    pub volume: Volume,
    /// The pressure that is approached and never reached: the pump's ultimate one.
    pub limit_pressure: AbsolutePressure,
    /// Time to each target, in the order of the targets.
    pub milestones: Vec<Milestone>,
    /// The course of the pressure from the start to the goal, for a drawing; empty without a goal.
    pub curve: Vec<CurvePoint>,
    /// About how much longer each of these takes because gas near the pressure of the air does not flow
    /// smoothly but turbulent, or choked in a narrow core: a rough estimate, not in the times. Absent without hoses.
    pub early_turbulence: Option<Time>,
    /// The water; absent if the system is dry.
    pub water: Option<WaterRemoval>,
    /// What holds the pump back.
    pub held_back: HeldBack,
    /// The pressure for which the changes are reckoned: the lowest target that is reached.
    pub goal: Option<AbsolutePressure>,
    /// What a change would save on the way to the goal, the best first.
    pub changes: Vec<Change>,
    /// The change that saves most; absent if none saves anything.
    pub best_change: Option<LineChange>,
    /// Several evacuations with nitrogen between them.
    pub evacuations: Vec<PlannedEvacuation>,
    /// Pumping time of all of them; absent if one never gets there.
    pub evacuations_time: Option<Time>,
    /// What limits these figures.
    pub notices: Vec<PumpDownNotice>,
    /// The working.
    pub working: Working,
}

/// Time to a pressure.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Milestone {
    /// The pressure.
    pub pressure: AbsolutePressure,
    /// Time from the start, 0 if it is no lower than the start; absent if it is never reached.
    pub time: Option<Time>,
}

/// A point of the pressure's course.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct CurvePoint {
    /// Time from the start.
    pub time: Time,
    /// Pressure in the system.
    pub pressure: AbsolutePressure,
}

/// How the water goes.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct WaterRemoval {
    /// Mass of the water at the start.
    pub mass: Mass,
    /// How it boils away; the times of this answer hold for this.
    pub boiling: Boiling,
    /// The same if it stands in drops 3 mm deep, which get cold; absent if its depth was entered.
    pub in_drops: Option<Boiling>,
    /// Whether it freezes.
    pub ice: IceRisk,
}

/// Water boiling away under a pump.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Boiling {
    /// How deep it stands; absent for a film that keeps the ambient temperature.
    pub depth: Option<Length>,
    /// Its temperature while it boils.
    pub temperature: Temperature,
    /// Its saturation pressure, at which the vacuum gauge stands still until it is gone.
    pub pressure: AbsolutePressure,
    /// Whether it is liquid or ice at that pressure.
    pub surface: Surface,
    /// Heat that it takes from the tubes while it boils.
    pub heat: Power,
    /// Time from the start until it is gone; absent if the pump does not get it out.
    pub dry_after: Option<Time>,
}

choice! {
    /// Whether water freezes under the pump. Ice forms below 611.657 Pa, 4588 micron.
    IceRisk {
        /// It stays liquid.
        NoIce = "no-ice",
        /// A film stays liquid, drops 3 mm deep freeze.
        Possible = "ice-possible",
        /// It is ice, or becomes ice.
        Forms = "ice-forms",
    }
}

/// What holds the pump back at a pressure in the system.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct HeldBack {
    /// The pressure in the system.
    pub pressure: AbsolutePressure,
    /// The pressure at the pump.
    pub inlet_pressure: AbsolutePressure,
    /// Speed that is left at the system, 1/S = 1/S(pump) + 1/C.
    pub effective_speed: VolumeFlow,
    /// The same as a part of the pump's own speed.
    pub speed_part: Ratio,
    /// Shares of the resistance, which add up to 1: the pump first, then each hose with its core.
    pub parts: Vec<PartShare>,
}

/// One part's share of the resistance.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct PartShare {
    /// The part.
    pub part: LinePart,
    /// Place of the hose in the list, from 1; absent for the pump.
    pub hose: Option<u16>,
    /// Its share.
    pub share: Ratio,
}

choice! {
    /// A part of what lies between the system and the vacuum.
    LinePart {
        /// The pump.
        Pump = "pump",
        /// A hose.
        Hose = "hose",
        /// The valve core before a hose.
        Core = "valve-core",
    }
}

/// What a change would save.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Change {
    /// What is changed.
    pub change: LineChange,
    /// Bore of the larger hose.
    pub bore: Option<Length>,
    /// Speed of the larger pump.
    pub pump_speed: Option<VolumeFlow>,
    /// Time to the goal with the change.
    pub time: Time,
    /// Time that it saves.
    pub saved: Time,
}

choice! {
    /// Something to change, the rest staying as it is.
    LineChange {
        /// All valve cores taken out.
        CoresOut = "cores-out",
        /// Hoses of the next usual bore: 3/8, 1/2 or 3/4 in.
        LargerHose = "larger-hose",
        /// Hoses of half the length.
        ShorterHose = "shorter-hose",
        /// One more hose like the first, from another port.
        SecondHose = "second-hose",
        /// A pump of twice the speed.
        LargerPump = "larger-pump",
    }
}

/// One evacuation of several.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct PlannedEvacuation {
    /// Pressure to which the pump runs.
    pub low_pressure: AbsolutePressure,
    /// Pressure to which nitrogen then fills the system, above vacuum.
    pub break_pressure: AbsolutePressure,
    /// Pumping time of this evacuation; absent if it never gets there.
    pub time: Option<Time>,
    /// Part of the gas that is still the air and vapour of the beginning, once nitrogen has filled the
    /// system to the break pressure: the product of low over break pressure so far.
    pub residual: Ratio,
    /// Partial pressure of what is left of that air and vapour at the low pressure.
    pub residual_pressure: AbsolutePressure,
}

choice! {
    /// What limits the figures of a pump-down.
    PumpDownNotice {
        /// No hose was entered: the pump is taken to stand right at the system.
        NoHose = "no-hose-entered",
        /// A hose is shorter than ten bores: it resists more than the formula for long tubes says.
        ShortHose = "hose-short-for-its-bore",
        /// Valve cores resist as an assumed narrow tube; there is no source for it.
        CoreAssumed = "core-resistance-assumed",
        /// A target lies at or below the pump's ultimate pressure.
        TargetBelowUltimate = "target-below-ultimate",
        /// The pump does not get the water out: its vapour pressure is below the ultimate pressure.
        WaterStays = "water-stays",
        /// Water vapour is taken to flow through hoses like air, though it flows up to twice as easily.
        VapourAsAir = "vapour-taken-as-air",
        /// Nitrogen breaks while water is left do not thin it: the residual parts hold for gas alone.
        WaterAtBreak = "water-left-at-break",
        /// Hoses are taken as laminar; near the pressure of the air they are not, which costs seconds.
        LaminarAssumed = "laminar-flow-assumed",
        /// Gas from oil, leaks and the resistance of the system's own tubes are left out.
        TightSystemAssumed = "tight-system-assumed",
    }
}
