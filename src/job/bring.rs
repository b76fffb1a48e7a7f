//! What has to be in the van, from the plan.

use serde::Serialize;

use super::joint::JointKind;
use super::joint_state::{JointAssessment, JointState};
use super::parts::Parts;
use super::plan::Plan;
use super::pressure_test::PressureTest;
use super::stage::Fact;
use crate::calc::Reading;
use crate::calc::{Field, optional};
use crate::quantity::{Entry, Length, Quantity, choice};
use crate::tables::flare::FlareClass;
use crate::tables::refrigerants::{OilFamily, Refrigerant, SafetyClass};

choice! {
    /// A thing to bring. Where no figure of the plan stands behind it: common practice, no source.
    BringMatter {
        /// Torque wrench whose scale holds the settings.
        TorqueWrench = "torque-wrench",
        /// Open-ended attachment of a nut's size for the torque wrench, and a back-up wrench of the same size.
        NutWrench = "nut-wrench",
        /// Hex keys for the stems of the service valves, 4 and 5 mm (5/32 and 3/16 in).
        HexKeys = "hex-keys",
        /// Adapter from the hose to a service port of 5/16 in, as units for the higher pressure class have.
        ServicePortAdapter = "service-port-adapter",
        /// Flaring tool, cutter, deburrer.
        FlaringTool = "flaring-tool",
        /// Caliper, to measure the cones.
        Caliper = "caliper",
        /// Oil for threads and faces.
        Oil = "oil",
        /// Nitrogen.
        Nitrogen = "nitrogen",
        /// Pressure regulator with a relief valve for the nitrogen.
        Regulator = "regulator",
        /// Leak solution.
        LeakSolution = "leak-solution",
        /// Gauges, thermometer.
        Gauges = "gauges",
        /// Vacuum pump and vacuum gauge.
        VacuumPump = "vacuum-pump",
        /// Hoses of wide bore and tools to take out the valve cores.
        Hoses = "hoses",
        /// Refrigerant that goes in beyond the factory charge.
        RefrigerantCylinder = "refrigerant-cylinder",
        /// Scale.
        Scale = "scale",
        /// Recovery cylinder.
        RecoveryCylinder = "recovery-cylinder",
        /// Tube of a line.
        Tube = "tube",
        /// Insulation for a line.
        Insulation = "insulation",
        /// Brazing torch and filler, and nitrogen to flow while brazing.
        Brazing = "brazing",
        /// Eye protection and gloves.
        Protection = "protection",
        /// Fire extinguisher and a leak detector for flammable refrigerant.
        FlammableGear = "flammable-gear",
    }
}

/// A thing to bring.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct BringItem {
    /// Its key: what is packed is recorded by it.
    pub id: String,
    /// What it is.
    pub matter: BringMatter,
    /// Figures of the plan.
    pub figures: Vec<Fact>,
    /// Oils that go with the refrigerant.
    pub oils: &'static [OilFamily],
    /// Whether it is in the van.
    pub packed: bool,
}

fn fact<Q: Quantity>(meaning: &'static str, figure: Q) -> Fact {
    Fact {
        meaning,
        quantity: Q::KIND,
        si: figure.si(),
        uncertainty: None,
    }
}

fn item(matter: BringMatter, figures: Vec<Fact>) -> BringItem {
    let mut id = matter.word().to_owned();
    // One thing in several sizes has a key for each.
    if matches!(
        matter,
        BringMatter::NutWrench | BringMatter::Tube | BringMatter::Insulation
    ) && let Some(size) = figures.first()
    {
        id = format!("{id}-{:.1}", 1000.0 * size.si);
    }
    BringItem {
        id,
        matter,
        figures,
        oils: &[],
        packed: false,
    }
}

/// The list.
pub(super) fn list(
    reading: &mut Reading,
    parts: &Parts<'_>,
    joints: &[JointAssessment],
    plan: &Plan,
    pressure_test: &PressureTest,
) -> Vec<BringItem> {
    let mut items = for_joints(parts, joints);
    items.extend(for_proof(pressure_test));
    items.extend(for_charge(plan));
    let refrigerant = match parts.plate.refrigerant {
        Entry::Read(refrigerant) => Some(refrigerant),
        _ => None,
    };
    items.extend(refrigerant.into_iter().flat_map(for_refrigerant));
    items.push(item(BringMatter::Protection, Vec::new()));
    let packed: Vec<String> = reading.each(
        Field::named("packed"),
        &parts.job.packed,
        |reading, thing| {
            let is_packed = optional!(reading, thing.packed).unwrap_or(false);
            optional!(reading, thing.id).filter(|_| is_packed)
        },
    );
    for item in &mut items {
        item.packed = packed.contains(&item.id);
    }
    items
}

fn for_joints(parts: &Parts<'_>, joints: &[JointAssessment]) -> Vec<BringItem> {
    let present = joints
        .iter()
        .filter(|joint| joint.state != JointState::Removed);
    let flares: Vec<_> = present
        .clone()
        .filter(|joint| joint.kind == JointKind::Flare)
        .collect();
    let mut items = Vec::new();
    let bands = flares.iter().filter_map(|joint| joint.torque);
    let low = bands.clone().map(|band| band.low.si()).reduce(f64::min);
    let high = bands.map(|band| band.high.si()).reduce(f64::max);
    if let (Some(low), Some(high)) = (low, high) {
        let torque = crate::quantity::Torque::from_si;
        items.push(item(
            BringMatter::TorqueWrench,
            vec![
                fact("fact-least-torque", torque(low)),
                fact("fact-most-torque", torque(high)),
            ],
        ));
    }
    let mut nuts: Vec<f64> = flares
        .iter()
        .filter_map(|joint| joint.nut_across_flats.map(Quantity::si))
        .collect();
    nuts.sort_by(f64::total_cmp);
    nuts.dedup();
    for nut in nuts {
        let nut = Length::from_si(nut);
        items.push(item(BringMatter::NutWrench, vec![fact("fact-nut", nut)]));
    }
    if !flares.is_empty() {
        items.push(item(BringMatter::FlaringTool, Vec::new()));
        items.push(item(BringMatter::Caliper, Vec::new()));
    }
    if present.clone().any(|joint| joint.kind == JointKind::Brazed) {
        items.push(item(BringMatter::Brazing, Vec::new()));
    }
    items.push(item(BringMatter::HexKeys, Vec::new()));
    items.extend(for_lines(parts));
    items
}

fn for_lines(parts: &Parts<'_>) -> Vec<BringItem> {
    let mut items = Vec::new();
    for line in [parts.liquid_line, parts.gas_line] {
        let Entry::Read(tube) = line.tube else {
            continue;
        };
        let mut figures = vec![fact("fact-tube", tube)];
        if let Entry::Read(length) = parts.lines.length {
            figures.push(fact("fact-length", length));
        }
        items.push(item(BringMatter::Tube, figures.clone()));
        items.push(item(BringMatter::Insulation, figures));
    }
    items
}

fn for_proof(pressure_test: &PressureTest) -> Vec<BringItem> {
    let nitrogen = pressure_test
        .answer
        .as_ref()
        .and_then(|answer| answer.nitrogen);
    let figures = nitrogen.map_or(Vec::new(), |need| {
        let mut figures = vec![
            fact("fact-nitrogen-mass", need.mass),
            fact("fact-nitrogen-free-gas", need.free_gas),
        ];
        figures.extend(
            need.cylinder
                .map(|left| fact("fact-cylinder-left", left.figure)),
        );
        figures
    });
    let plain = [
        BringMatter::Regulator,
        BringMatter::LeakSolution,
        BringMatter::Gauges,
        BringMatter::VacuumPump,
        BringMatter::Hoses,
        BringMatter::Scale,
    ];
    let nitrogen = item(BringMatter::Nitrogen, figures);
    let plain = plain.map(|matter| item(matter, Vec::new()));
    [nitrogen].into_iter().chain(plain).collect()
}

fn for_charge(plan: &Plan) -> Vec<BringItem> {
    let charge = plan
        .charge
        .as_ref()
        .and_then(|answer| answer.charge.as_ref());
    let Some(charge) = charge else {
        return Vec::new();
    };
    let mut items = Vec::new();
    if charge.to_add.si() > 0.0 {
        let figures = vec![fact("fact-to-add", charge.to_add)];
        items.push(item(BringMatter::RefrigerantCylinder, figures));
    }
    if charge.to_take_out.si() > 0.0 {
        let figures = vec![fact("fact-to-take-out", charge.to_take_out)];
        items.push(item(BringMatter::RecoveryCylinder, figures));
    }
    items
}

fn for_refrigerant(refrigerant: Refrigerant) -> Vec<BringItem> {
    let mut oil = item(BringMatter::Oil, Vec::new());
    oil.oils = refrigerant.oils().figure;
    let mut items = vec![oil];
    let class = refrigerant.flare_class().map(|class| class.figure);
    if class == Some(FlareClass::Class2) {
        items.push(item(BringMatter::ServicePortAdapter, Vec::new()));
    }
    let burns = matches!(
        refrigerant.safety_class().figure,
        SafetyClass::A2L | SafetyClass::A3 | SafetyClass::B2L
    );
    if burns {
        items.push(item(BringMatter::FlammableGear, Vec::new()));
    }
    items
}
