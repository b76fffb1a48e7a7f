//! The joints of a circuit: which there are by the plan, and what is recorded of each.

use super::document::{JobInput, JobLineInput, UnitPortInput};
use crate::calc::{Count, Entries, Field, Reading, input, optional};
use crate::quantity::{Band, Enter, Entry, Flaw, Length, Moment, Torque, choice};

choice! {
    /// How a joint is made.
    JointKind {
        /// A flare and its nut.
        Flare = "flare",
        /// Brazed.
        Brazed = "brazed",
        /// A cap that seals: of a valve's stem or of a service port.
        Cap = "cap",
    }
}

choice! {
    /// The line that a joint is in.
    JointLine {
        /// The thinner one.
        LiquidLine = "liquid-line",
        /// The thicker one.
        GasLine = "gas-line",
    }
}

choice! {
    /// Where a joint is.
    JointPlace {
        /// Tube on a port of the indoor unit.
        IndoorPort = "indoor-port",
        /// Tube on an adapter that sits on a port of the indoor unit.
        IndoorAdapter = "indoor-adapter",
        /// Where the tubes of several ports of the indoor unit are joined into the line.
        IndoorJunction = "indoor-junction",
        /// A union along the line, its side towards the indoor unit.
        UnionIndoorSide = "union-indoor-side",
        /// The same union, its side towards the outdoor unit.
        UnionOutdoorSide = "union-outdoor-side",
        /// A brazed coupling along the line.
        Coupling = "coupling",
        /// Where the tubes of several ports of the outdoor unit are joined into the line.
        OutdoorJunction = "outdoor-junction",
        /// Tube on an adapter that sits on a port of the outdoor unit.
        OutdoorAdapter = "outdoor-adapter",
        /// Tube on a port of the outdoor unit.
        OutdoorPort = "outdoor-port",
        /// Cap over the stem of a service valve.
        ValveCap = "valve-cap",
        /// Cap of the service port.
        ServicePortCap = "service-port-cap",
        /// A joint that the plan does not have.
        Own = "own",
    }
}

choice! {
    /// What bubbles, or an instrument, showed at a joint under pressure.
    LeakLook {
        /// Nothing.
        Pass = "pass",
        /// A leak.
        Leak = "leak",
    }
}

input! {
    /// What is recorded of a joint: one of the plan by its id, or one of its own.
    pub struct JointInput {
        /// The id of a joint of the plan, or a short text that no other joint has.
        pub id: Entry<String>,
        /// A name of its own.
        pub name: Entry<String>,
        /// How it is made; a flare if nothing is entered and the plan does not have it.
        pub kind: Entry<JointKind>,
        /// The line it is in.
        pub line: Entry<JointLine>,
        /// Whether it was taken out of the list.
        pub removed: Entry<bool>,
        /// Where it comes in the order of work; the assessment gives what to enter to move it.
        pub order: Entry<JointOrder>,
        /// Outside diameter of its tube, where it is not the plan's.
        pub tube: Entry<Length>,
        /// The plate's own torque for it.
        pub plate_torque: Entry<Band<Torque>>,
        /// When it was flared, or brazed.
        pub made: Entry<Moment>,
        /// The cone as measured.
        pub measured_cone: Entry<Length>,
        /// Whether oil is on thread and faces.
        pub oiled: Entry<bool>,
        /// When it was tightened.
        pub tightened: Entry<Moment>,
        /// What the wrench's scale showed.
        pub scale_torque: Entry<Torque>,
        /// Whether the offset adapter was on the wrench.
        pub with_adapter: Entry<bool>,
        /// What the look for leaks showed.
        pub leak_look: Entry<LeakLook>,
        /// When it was looked at.
        pub looked: Entry<Moment>,
        /// Earlier attempts.
        pub remade: Entries<RemadeInput>,
        /// A note.
        pub note: Entry<String>,
    }
}

input! {
    /// An earlier attempt at a joint, as it was recorded.
    pub struct RemadeInput {
        /// A short text that no other attempt has.
        pub id: Entry<String>,
        /// When it was given up.
        pub at: Entry<Moment>,
        /// Why.
        pub reason: Entry<String>,
        /// The cone as measured then.
        pub measured_cone: Entry<Length>,
        /// What the wrench's scale showed then.
        pub scale_torque: Entry<Torque>,
        /// What the look for leaks showed then.
        pub leak_look: Entry<LeakLook>,
    }
}

/// A place in the order of work: any number, so that there is always room between two.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, serde::Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct JointOrder(f64);

impl JointOrder {
    /// Of the joint of the plan at this place, from 0.
    fn planned(place: usize) -> Self {
        Self((place + 1) as f64)
    }

    /// Between two, before the first or after the last; nothing where there is nobody to pass.
    pub(super) fn between(earlier: Option<Self>, later: Option<Self>) -> Option<Self> {
        match (earlier, later) {
            (Some(earlier), Some(later)) => Some(Self((earlier.0 + later.0) / 2.0)),
            (Some(earlier), None) => Some(Self(earlier.0 + 1.0)),
            (None, Some(later)) => Some(Self(later.0 - 1.0)),
            (None, None) => None,
        }
    }

    pub(super) fn compare(self, other: Self) -> core::cmp::Ordering {
        self.0.total_cmp(&other.0)
    }
}

/// Orders beyond this lose the room between them.
const LARGEST_ORDER: f64 = 1e9;

/// Of a joint that nobody has given a place: after all others.
const UNPLACED: JointOrder = JointOrder(f64::INFINITY);

impl Enter for JointOrder {
    fn from_number(number: f64) -> Result<Self, Flaw> {
        if number.abs() <= LARGEST_ORDER {
            Ok(Self(number))
        } else {
            Err(Flaw::WrongType {
                example: Self::example(),
            })
        }
    }

    fn from_text(_: &str, _: Option<&str>) -> Result<Self, Flaw> {
        Err(Flaw::WrongType {
            example: Self::example(),
        })
    }

    fn example() -> String {
        "2.5".into()
    }

    #[cfg(feature = "terminal")]
    fn schema() -> (String, schemars::Schema) {
        let schema =
            schemars::json_schema!({ "anyOf": [{ "type": "number" }, { "type": "null" }] });
        ("JointOrderEntry".into(), schema)
    }
}

/// A joint as planned, or as added.
#[derive(Clone, Debug)]
pub(super) struct Joint<'a> {
    pub id: String,
    pub line: JointLine,
    pub place: JointPlace,
    /// Which of several at such a place, from 1.
    pub count: Option<usize>,
    pub kind: JointKind,
    pub tube: Option<Length>,
    pub order: JointOrder,
    /// What is recorded of it, and where in the document's list.
    pub record: Option<(usize, &'a JointInput)>,
}

/// Most unions or couplings of a line, and ports of an end, that are listed.
const MOST_OF_A_KIND: usize = 50;

/// The joints of the plan, in the order in which they can be reached: the indoor ends first, for they are
/// covered up first; then what lies along the lines; then the outdoor ends; caps last. Common practice, no source.
pub(super) fn planned<'a>(job: &JobInput, reading: &mut Reading) -> Vec<Joint<'a>> {
    let Some(lines) = job.lines.given() else {
        return Vec::new();
    };
    let run = |reading: &mut Reading, line, name, part| {
        reading
            .part(
                Field::named("lines").with(&Field::named(name)),
                part,
                |reading, line_input| Some(Run::take(reading, line, line_input)),
            )
            .unwrap_or_else(|| Run::unknown(line))
    };
    let runs = [
        run(
            reading,
            JointLine::LiquidLine,
            "liquid_line",
            &lines.liquid_line,
        ),
        run(reading, JointLine::GasLine, "gas_line", &lines.gas_line),
    ];
    let parts: [fn(&Run) -> Vec<Joint<'a>>; 4] =
        [Run::indoors, Run::along, Run::outdoors, Run::caps];
    let mut joints: Vec<Joint<'a>> = parts
        .iter()
        .flat_map(|part| runs.iter().flat_map(part))
        .collect();
    for (place, joint) in joints.iter_mut().enumerate() {
        joint.order = JointOrder::planned(place);
    }
    joints
}

/// A line with what joints need to know of it.
struct Run {
    line: JointLine,
    tube: Option<Length>,
    unions: usize,
    couplings: usize,
    indoor_ports: Vec<Option<Length>>,
    outdoor_ports: Vec<Option<Length>>,
}

impl Run {
    fn unknown(line: JointLine) -> Self {
        Self {
            line,
            tube: None,
            unions: 0,
            couplings: 0,
            indoor_ports: Vec::new(),
            outdoor_ports: Vec::new(),
        }
    }

    fn take(reading: &mut Reading, line: JointLine, input: &JobLineInput) -> Self {
        let number =
            |count: Option<Count>| usize::from(count.map_or(0, Count::number)).min(MOST_OF_A_KIND);
        let ports = |reading: &mut Reading, name, list: &Entries<UnitPortInput>| {
            let mut ports = reading.each(Field::named(name), list, |reading, port| {
                Some(optional!(reading, port.tube))
            });
            ports.truncate(MOST_OF_A_KIND);
            ports
        };
        Self {
            line,
            tube: optional!(reading, input.tube),
            unions: number(optional!(reading, input.unions)),
            couplings: number(optional!(reading, input.brazed_couplings)),
            indoor_ports: ports(reading, "indoor_ports", &input.indoor_ports),
            outdoor_ports: ports(reading, "outdoor_ports", &input.outdoor_ports),
        }
    }

    fn joint<'a>(
        &self,
        place: JointPlace,
        count: Option<usize>,
        tube: Option<Length>,
    ) -> Joint<'a> {
        let number = count.map_or(String::new(), |count| format!("-{count}"));
        let kind = match place {
            JointPlace::IndoorJunction | JointPlace::OutdoorJunction | JointPlace::Coupling => {
                JointKind::Brazed
            }
            JointPlace::ValveCap | JointPlace::ServicePortCap => JointKind::Cap,
            _ => JointKind::Flare,
        };
        Joint {
            id: format!("{}-{}{number}", self.line.word(), place.word()),
            line: self.line,
            place,
            count,
            kind,
            tube,
            order: JointOrder::planned(0),
            record: None,
        }
    }

    fn indoors<'a>(&self) -> Vec<Joint<'a>> {
        self.end(
            &self.indoor_ports,
            JointPlace::IndoorPort,
            JointPlace::IndoorAdapter,
            JointPlace::IndoorJunction,
        )
    }

    fn outdoors<'a>(&self) -> Vec<Joint<'a>> {
        self.end(
            &self.outdoor_ports,
            JointPlace::OutdoorPort,
            JointPlace::OutdoorAdapter,
            JointPlace::OutdoorJunction,
        )
    }

    /// The line's own size on the port; or the port's size and an adapter; or several ports and a junction.
    fn end<'a>(
        &self,
        ports: &[Option<Length>],
        port: JointPlace,
        adapter: JointPlace,
        junction: JointPlace,
    ) -> Vec<Joint<'a>> {
        match ports {
            [] => vec![self.joint(port, None, self.tube)],
            [tube] => vec![
                self.joint(port, None, *tube),
                self.joint(adapter, None, self.tube),
            ],
            several => {
                let each = several.iter().enumerate();
                let mut joints: Vec<Joint<'a>> = each
                    .map(|(place, tube)| self.joint(port, Some(place + 1), *tube))
                    .collect();
                joints.push(self.joint(junction, None, self.tube));
                joints
            }
        }
    }

    fn along<'a>(&self) -> Vec<Joint<'a>> {
        let sides = [JointPlace::UnionIndoorSide, JointPlace::UnionOutdoorSide];
        let unions = (1..=self.unions)
            .flat_map(|count| sides.map(|side| self.joint(side, Some(count), self.tube)));
        let couplings = (1..=self.couplings)
            .map(|count| self.joint(JointPlace::Coupling, Some(count), self.tube));
        unions.chain(couplings).collect()
    }

    /// A valve on each line, the service port on that of the gas line. Common practice, no source.
    fn caps<'a>(&self) -> Vec<Joint<'a>> {
        let mut caps = vec![self.joint(JointPlace::ValveCap, None, None)];
        if self.line == JointLine::GasLine {
            caps.push(self.joint(JointPlace::ServicePortCap, None, None));
        }
        caps
    }
}

/// The joints of the plan with what is recorded of them, and those that were added, in the order of work.
pub(super) fn joints<'a>(job: &'a JobInput, reading: &mut Reading) -> Vec<Joint<'a>> {
    let mut joints = planned(job, reading);
    let mut place = 0;
    let added = reading.each(Field::named("joints"), &job.joints, |reading, record| {
        let at = place;
        place += 1;
        let id = optional!(reading, record.id).unwrap_or_default();
        let order = optional!(reading, record.order);
        let tube = optional!(reading, record.tube);
        if let Some(joint) = joints.iter_mut().find(|joint| joint.id == id) {
            joint.record = Some((at, record));
            joint.tube = tube.or(joint.tube);
            joint.order = order.unwrap_or(joint.order);
            return None;
        }
        Some(Joint {
            id,
            line: optional!(reading, record.line).unwrap_or(JointLine::GasLine),
            place: JointPlace::Own,
            count: None,
            kind: optional!(reading, record.kind).unwrap_or(JointKind::Flare),
            tube,
            order: order.unwrap_or(UNPLACED),
            record: Some((at, record)),
        })
    });
    joints.extend(added);
    let mut last = joints
        .iter()
        .filter(|joint| joint.order != UNPLACED)
        .map(|joint| joint.order.0)
        .fold(0.0, f64::max);
    for joint in joints.iter_mut().filter(|joint| joint.order == UNPLACED) {
        last += 1.0;
        joint.order = JointOrder(last);
    }
    joints.sort_by(|one, other| one.order.compare(other.order));
    joints
}
