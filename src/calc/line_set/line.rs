//! A line: its bore, its length with fittings, what it bears, the ports joined into it.

use super::answer::{JoinedPorts, RefrigerantLine};
use super::input::RefrigerantLineInput;
use crate::calc::pipe_friction::bores;
use crate::calc::problem::{Field, Misfit, Problem};
use crate::calc::reading::{Reading, optional};
use crate::calc::tube::{Section, rating, section_working, stress_row};
use crate::calc::verdict::judge_at_least;
use crate::calc::working::{Step, Working};
use crate::physics::pipe_flow::{Bore, DRAWN_TUBE_ROUGHNESS};
use crate::quantity::{Area, Entry, GaugePressure, Length, Ratio, Temperature};
use crate::tables::SourceId;
use crate::tables::tube::TubeSeries;

/// Bores that are answered for.
pub const BORES: (Length, Length) = (Length::metres(1e-3), Length::metres(0.2));
/// How far a ratio of two bores' areas may be off: the walls' tolerance of ASTM B280 moves the area of
/// 1/2 by 3 %, of 1/4 by 6 %.
const AREA_RATIO_UNCERTAINTY: Ratio = Ratio::of_one(0.05);

/// A line as it was entered.
pub(super) struct Line {
    width: Width,
    pub length: Option<Length>,
    /// Straight tube that has the friction of all fittings, in bores.
    fitting_bores: f64,
    /// Area of all ports; zero if there are none.
    ports: Area,
}

/// How wide a line or a port is.
enum Width {
    Bore(Length),
    Tube(Section),
}

/// The fields that say how wide a line or a port is.
struct WidthFields<'a> {
    tube: &'a Entry<Length>,
    series: &'a Entry<TubeSeries>,
    wall: &'a Entry<Length>,
    bore: &'a Entry<Length>,
}

impl Line {
    /// Takes a line out of its fields.
    pub(super) fn read(reading: &mut Reading, input: &RefrigerantLineInput) -> Option<Self> {
        let fields = WidthFields {
            tube: &input.tube,
            series: &input.tube_series,
            wall: &input.wall,
            bore: &input.bore,
        };
        let width = Width::read(reading, &fields);
        let length = optional!(reading, input.length);
        let fitting_bores = bores([
            optional!(reading, input.elbows_90),
            optional!(reading, input.elbows_45),
            optional!(reading, input.tee_runs),
            optional!(reading, input.tee_branches),
        ]);
        let mut ports = Area::square_metres(0.0);
        reading.list(Field::named("ports"), &input.ports, 0, |reading, port| {
            let fields = WidthFields {
                tube: &port.tube,
                series: &port.tube_series,
                wall: &port.wall,
                bore: &port.bore,
            };
            ports = ports + Width::read(reading, &fields)?.bore().circle();
            Some(())
        });
        Some(Self {
            width: width?,
            length,
            fitting_bores,
            ports,
        })
    }

    /// The field of the line that says how wide it is.
    pub(super) fn width_field(&self) -> Field {
        Field::named(self.width.field())
    }

    /// The tube that refrigerant flows through.
    pub(super) fn tube(&self) -> Bore {
        Bore {
            diameter: self.width.bore(),
            roughness: DRAWN_TUBE_ROUGHNESS,
        }
    }

    fn fittings_length(&self) -> Length {
        self.width.bore() * self.fitting_bores
    }

    /// Straight tube and fittings together.
    pub(super) fn equivalent_length(&self) -> Option<Length> {
        self.length.map(|length| length + self.fittings_length())
    }

    /// What there is to say about it without a flow, its metal at a temperature.
    pub(super) fn answer(
        &self,
        metal: Temperature,
        design_pressure: Option<GaugePressure>,
    ) -> Result<RefrigerantLine, Problem> {
        let (mut name, mut outside_diameter, mut borne) = (None, None, None);
        let mut working = Working::new();
        if let Width::Tube(section) = &self.width {
            (name, outside_diameter) = (section.name, Some(section.outside_diameter));
            working = section_working(section);
            let row = stress_row(metal)?;
            borne = Some(rating(section, row, design_pressure, &mut working));
        }
        working.extend(self.length_step());
        Ok(RefrigerantLine {
            name,
            outside_diameter,
            bore: self.width.bore(),
            length: self.length,
            fittings_length: self.fittings_length(),
            equivalent_length: self.equivalent_length(),
            rating: borne,
            ports: self.join(&mut working),
            working,
        })
    }

    fn length_step(&self) -> Option<Step> {
        let step = Step::of("step-equivalent-length", "{L} = {l} + {n}·{d}")
            .with("l", "figure-length", self.length?)
            .with(
                "n",
                "figure-fitting-bores",
                Ratio::of_one(self.fitting_bores),
            )
            .with("d", "figure-bore", self.width.bore())
            .from(SourceId::FittingLengths);
        Some(step.gives("L", "figure-equivalent-length", self.equivalent_length()?))
    }

    /// The line's area over that of the ports, if there are any.
    fn join(&self, working: &mut Working) -> Option<JoinedPorts> {
        let line_area = self.width.bore().circle();
        if self.ports <= Area::square_metres(0.0) {
            return None;
        }
        let ratio = Ratio::of_one(line_area / self.ports);
        working.push(
            Step::of("step-port-areas", "{r} = {A} / {Aₚ}")
                .with("A", "figure-bore-area", line_area)
                .with("Aₚ", "figure-port-areas", self.ports)
                .from(SourceId::CommonPractice)
                .gives("r", "figure-area-ratio", ratio),
        );
        Some(JoinedPorts {
            area: self.ports,
            line_area,
            ratio: judge_at_least(ratio, AREA_RATIO_UNCERTAINTY, Ratio::of_one(1.0)),
        })
    }
}

impl Width {
    /// A tube by its size or by its bore, exactly one of which must be there.
    fn read(reading: &mut Reading, fields: &WidthFields) -> Option<Self> {
        let bore = reading.optional(Field::named("bore"), fields.bore);
        let diameter = reading.optional(Field::named("tube"), fields.tube);
        let series = reading.optional(Field::named("tube_series"), fields.series);
        let wall = reading.optional(Field::named("wall"), fields.wall);
        let is_filled = |entry: &Entry<Length>| !matches!(entry, Entry::Absent);
        let filled = [
            ("tube", is_filled(fields.tube)),
            ("bore", is_filled(fields.bore)),
        ];
        if !reading.exactly(1, &filled) {
            return None;
        }
        let width = match bore {
            Some(bore) => {
                if is_filled(fields.wall) {
                    let with = Field::named("bore");
                    let misfit = Misfit::Conflict { with };
                    reading.problem(Problem::misfit(Field::named("wall"), misfit));
                }
                Self::Bore(bore)
            }
            None => Self::Tube(reading.accept(Section::find(diameter?, series, wall))?),
        };
        reading.within(Field::named(width.field()), Some(width.bore()), BORES);
        Some(width)
    }

    /// The field that it was entered in.
    const fn field(&self) -> &'static str {
        match self {
            Self::Bore(_) => "bore",
            Self::Tube(_) => "tube",
        }
    }

    /// Inside diameter.
    fn bore(&self) -> Length {
        match self {
            Self::Bore(bore) => *bore,
            Self::Tube(section) => section.bore(),
        }
    }
}
