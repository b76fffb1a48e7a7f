//! The tube of a line: its bore, its length with fittings, what it bears, the ports joined into it.

use super::answer::{JoinedPorts, RefrigerantLine};
use super::input::{PortTubeInput, RefrigerantLineInput};
use crate::calc::pipe_friction::bores;
use crate::calc::problem::{Field, Misfit, Problem};
use crate::calc::reading::{Reading, filled, optional};
use crate::calc::tube::{Rating, TubeInput, tube};
use crate::calc::verdict::judge_at_least;
use crate::calc::working::{Step, Working};
use crate::physics::pipe_flow::{Bore, DRAWN_TUBE_ROUGHNESS};
use crate::quantity::{Area, Entry, GaugePressure, Length, Ratio, Temperature};
use crate::tables::SourceId;

/// Bores that are answered for.
pub const BORES: (Length, Length) = (Length::metres(1e-3), Length::metres(0.2));
/// How far a ratio of two bores' areas may be off, since walls of coils vary by a tenth either way and
/// a tenth of a wall is up to a fortieth of an area.
const AREA_RATIO_UNCERTAINTY: Ratio = Ratio::of_one(0.05);

/// A line as it was entered.
pub(super) struct Line {
    section: Section,
    pub length: Option<Length>,
    /// Straight tube that has the friction of all fittings, in bores.
    fitting_bores: f64,
    ports: Option<Area>,
}

/// A tube's cross section, the field that brought it, and what is known of the tube around it.
struct Section {
    field: &'static str,
    bore: Length,
    name: Option<&'static str>,
    outside_diameter: Option<Length>,
    rating: Option<Rating>,
    working: Working,
}

impl Line {
    /// Takes a line out of its fields, with its rating at a temperature.
    pub(super) fn read(
        reading: &mut Reading,
        input: &RefrigerantLineInput,
        temperature: Temperature,
        design_pressure: Option<GaugePressure>,
    ) -> Option<Self> {
        let as_port = PortTubeInput {
            tube: input.tube.clone(),
            tube_series: input.tube_series.clone(),
            wall: input.wall.clone(),
            bore: input.bore.clone(),
        };
        let section = Section::read(reading, &as_port, temperature, design_pressure);
        let length = optional!(reading, input.length);
        let fitting_bores = bores([
            optional!(reading, input.elbows_90),
            optional!(reading, input.elbows_45),
            optional!(reading, input.tee_runs),
            optional!(reading, input.tee_branches),
        ]);
        let ports = reading.list(Field::named("ports"), &input.ports, 0, |reading, port| {
            let section = Section::read(reading, port, temperature, None)?;
            Some(section.bore.circle())
        });
        let ports = ports.filter(|ports| !ports.is_empty()).map(|ports| {
            let none = Area::square_metres(0.0);
            ports.into_iter().fold(none, |sum, area| sum + area)
        });
        Some(Self {
            section: section?,
            length,
            fitting_bores,
            ports,
        })
    }

    /// The field of the line that says how wide it is.
    pub(super) fn width_field(&self) -> Field {
        Field::named(self.section.field)
    }

    /// The tube that refrigerant flows through.
    pub(super) fn tube(&self) -> Bore {
        Bore {
            diameter: self.section.bore,
            roughness: DRAWN_TUBE_ROUGHNESS,
        }
    }

    fn fittings_length(&self) -> Length {
        self.section.bore * self.fitting_bores
    }

    /// Straight tube and fittings together.
    pub(super) fn equivalent_length(&self) -> Option<Length> {
        self.length.map(|length| length + self.fittings_length())
    }

    /// What there is to say about it without a flow.
    pub(super) fn answer(self) -> RefrigerantLine {
        let fittings_length = self.fittings_length();
        let equivalent_length = self.equivalent_length();
        let length_step = self.length.zip(equivalent_length).map(|(length, whole)| {
            Step::of("step-equivalent-length", "{L} = {l} + {n}·{d}")
                .with("l", "figure-length", length)
                .with(
                    "n",
                    "figure-fitting-bores",
                    Ratio::of_one(self.fitting_bores),
                )
                .with("d", "figure-bore", self.section.bore)
                .from(SourceId::FittingLengths)
                .gives("L", "figure-equivalent-length", whole)
        });
        let ports = self.ports.map(|area| join(area, self.section.bore));
        let ports_step = ports.map(|ports| {
            Step::of("step-port-areas", "{r} = {A} / {Aₚ}")
                .with("A", "figure-bore-area", ports.line_area)
                .with("Aₚ", "figure-port-areas", ports.area)
                .from(SourceId::CommonPractice)
                .gives("r", "figure-area-ratio", ports.ratio.figure)
        });
        let section = self.section;
        let mut working = section.working;
        working.extend(length_step);
        working.extend(ports_step);
        RefrigerantLine {
            name: section.name,
            outside_diameter: section.outside_diameter,
            bore: section.bore,
            fittings_length,
            equivalent_length,
            rating: section.rating,
            ports,
            working,
        }
    }
}

fn join(area: Area, bore: Length) -> JoinedPorts {
    let line_area = bore.circle();
    let ratio = Ratio::of_one(line_area / area);
    JoinedPorts {
        area,
        line_area,
        ratio: judge_at_least(ratio, AREA_RATIO_UNCERTAINTY, Ratio::of_one(1.0)),
    }
}

impl Section {
    /// The cross section of a tube by its size or by its bore, exactly one of which must be there.
    fn read(
        reading: &mut Reading,
        input: &PortTubeInput,
        temperature: Temperature,
        design_pressure: Option<GaugePressure>,
    ) -> Option<Self> {
        let bore = optional!(reading, input.bore);
        let by_bore = filled!(input.bore);
        if !reading.exactly(1, &[filled!(input.tube), by_bore]) {
            return None;
        }
        let section = if by_bore.1 {
            for (name, is_filled) in [filled!(input.tube_series), filled!(input.wall)] {
                if is_filled {
                    let with = Field::named("bore");
                    let misfit = Misfit::Conflict { with };
                    reading.problem(Problem::misfit(Field::named(name), misfit));
                }
            }
            Self::of_bore(bore?)
        } else {
            Self::of_tube(reading, input, temperature, design_pressure)?
        };
        reading.within(Field::named(section.field), Some(section.bore), BORES);
        Some(section)
    }

    fn of_bore(bore: Length) -> Self {
        Self {
            field: "bore",
            bore,
            name: None,
            outside_diameter: None,
            rating: None,
            working: Working::new(),
        }
    }

    fn of_tube(
        reading: &mut Reading,
        input: &PortTubeInput,
        temperature: Temperature,
        design_pressure: Option<GaugePressure>,
    ) -> Option<Self> {
        let found = tube(&TubeInput {
            tube: input.tube.clone(),
            series: input.tube_series.clone(),
            wall: input.wall.clone(),
            temperature: temperature.into(),
            design_pressure: design_pressure.map_or(Entry::Absent, Entry::Read),
            ..TubeInput::default()
        });
        let found = found.map_err(|problems| {
            for mut problem in problems {
                if problem.field == Field::named("series") {
                    problem.field = Field::named("tube_series");
                }
                reading.problem(problem);
            }
        });
        let mut found = found.ok()?;
        found.working.retain(|step| step.title != "step-tube-mass");
        Some(Self {
            field: "tube",
            bore: found.bore,
            name: found.name,
            outside_diameter: Some(found.outside_diameter),
            rating: found.rating,
            working: found.working,
        })
    }
}
