//! How much nitrogen a test takes, and what is left in the cylinder.

use serde::Serialize;

use super::StandingTestInput;
use super::guidance::PressureTestGuidance;
use crate::calc::ambient::Ambient;
use crate::calc::problem::Field;
use crate::calc::reading::{Reading, filled, optional, required};
use crate::calc::verdict::{Judgement, judge_at_least};
use crate::calc::working::Step;
use crate::physics::nitrogen::{
    CYLINDER_TEMPERATURE, HIGHEST_CYLINDER_PRESSURE, cylinder_density, cylinder_pressure,
};
use crate::quantity::{
    AbsolutePressure, Density, Entry, GaugePressure, Mass, PressureDifference, Quantity,
    STANDARD_ATMOSPHERE, Temperature, Volume,
};
use crate::tables::SourceId;

/// Nitrogen that a test takes.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct NitrogenNeed {
    /// What must flow in to bring `volume` from the pressure of the air to the test pressure, once.
    pub mass: Mass,
    /// The same as free gas at 20 °C and 1 atm.
    pub free_gas: Volume,
    /// Temperature of line and cylinder that is taken for granted.
    pub assumed_temperature: Temperature,
    /// The cylinder's pressure afterwards, against the test pressure, below which it cannot fill.
    pub cylinder: Option<Judgement<GaugePressure, PressureDifference>>,
}

/// Volumes that are answered for, of a circuit or a cylinder.
pub const VOLUMES: (Volume, Volume) = (Volume::cubic_metres(1e-6), Volume::cubic_metres(100.0));

/// How far the cylinder's pressure may be off for its temperature, as a part: 20 K of 293 K. Derived.
const CYLINDER_UNCERTAINTY: f64 = 0.07;

/// A cylinder: what it holds, and at what pressure.
#[derive(Clone, Copy)]
pub(super) struct Cylinder {
    volume: Volume,
    pressure: GaugePressure,
}

impl Cylinder {
    pub fn take(reading: &mut Reading, input: &StandingTestInput) -> Option<Self> {
        let fields = [
            filled!(input.cylinder_volume),
            filled!(input.cylinder_pressure),
        ];
        if fields.iter().all(|(_, filled)| !filled) {
            return None;
        }
        // What a cylinder is left with depends on what it has to fill.
        if matches!(input.volume, Entry::Absent) {
            required!(reading, input.volume);
        }
        let volume = required!(reading, input.cylinder_volume, VOLUMES);
        let pressure = required!(reading, input.cylinder_pressure);
        let most = HIGHEST_CYLINDER_PRESSURE.to_gauge(STANDARD_ATMOSPHERE);
        let limits = (GaugePressure::pascals(0.0), most);
        reading.within(Field::named("cylinder_pressure"), pressure, limits);
        Some(Self {
            volume: volume?,
            pressure: pressure?,
        })
    }
}

/// The volume under test.
pub(super) fn volume(reading: &mut Reading, input: &StandingTestInput) -> Option<Volume> {
    optional!(reading, input.volume, VOLUMES)
}

/// The nitrogen for a test, and the step that finds it; nothing beyond the pressures of the data.
pub(super) fn need(
    guidance: &PressureTestGuidance,
    volume: Volume,
    cylinder: Option<Cylinder>,
    air: Ambient,
) -> Option<(NitrogenNeed, Step)> {
    let full = guidance.test_pressure.to_absolute(air.pressure);
    let density = |pressure: AbsolutePressure| cylinder_density(pressure).ok();
    let (before, after) = (density(air.pressure)?, density(full)?);
    let mass = (after - before) * volume;
    let need = NitrogenNeed {
        mass,
        free_gas: mass / density(STANDARD_ATMOSPHERE)?,
        assumed_temperature: CYLINDER_TEMPERATURE,
        cylinder: cylinder.and_then(|cylinder| left(cylinder, mass, guidance, air)),
    };
    let step = Step::of("step-nitrogen-need", "{m} = {V}·({ρ₂} − {ρ₁})")
        .with("V", "figure-volume", volume)
        .with("ρ₂", "figure-nitrogen-density", after)
        .with("ρ₁", "figure-nitrogen-density-before", before)
        .from(SourceId::CoolProp)
        .from(SourceId::Span2000)
        .gives("m", "figure-nitrogen-mass", mass);
    Some((need, step))
}

fn left(
    cylinder: Cylinder,
    taken: Mass,
    guidance: &PressureTestGuidance,
    air: Ambient,
) -> Option<Judgement<GaugePressure, PressureDifference>> {
    let full = cylinder_density(cylinder.pressure.to_absolute(air.pressure)).ok()?;
    let left = full.si() - taken.si() / cylinder.volume.si();
    let pressure = cylinder_pressure(Density::from_si(left.max(0.0))).ok()?;
    let gauge = pressure.to_gauge(air.pressure);
    let uncertainty = PressureDifference::pascals(CYLINDER_UNCERTAINTY * gauge.si().max(0.0));
    Some(judge_at_least(gauge, uncertainty, guidance.test_pressure))
}
