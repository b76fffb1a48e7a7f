//! Copper tube: what it holds, weighs and bears.

use serde::Serialize;

use super::input::input;
use super::problem::{Field, Misfit, Problem, Problems};
use super::reading::{Reading, optional, required};
use super::verdict::{Judgement, judge_at_least};
use super::working::{Step, Working};
use crate::quantity::{
    Area, Density, Entry, GaugePressure, Length, Mass, MassPerLength, PressureDifference, Stress,
    Temperature, Volume,
};
use crate::tables::tube::{TubeSeries, size_names, sizes_of, worst_case};
use crate::tables::{SourceId, stress};

input! {
    /// What [`tube`] asks for.
    pub struct TubeInput {
        /// Outside diameter, required: a size such as "5/8" or "16 mm". Its wall comes from the table.
        pub tube: Entry<Length>,
        /// Series of sizes to look in; by default both.
        pub series: Entry<TubeSeries>,
        /// Wall, where it is not the table's or the size is not in the table.
        pub wall: Entry<Length>,
        /// Length of tube, for its mass and volume.
        pub length: Entry<Length>,
        /// Metal temperature at which the pressure rating is wanted.
        pub temperature: Entry<Temperature>,
        /// Design pressure (PS) of the system, gauge, to compare the rating with; needs the temperature.
        pub design_pressure: Entry<GaugePressure>,
    }
}

/// What [`tube`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct TubeAnswer {
    /// Name of the size; absent if it is in no table.
    pub name: Option<&'static str>,
    /// Series whose dimensions and tolerances hold.
    pub series: TubeSeries,
    /// Where the dimensions come from; absent if they were entered.
    pub source: Option<SourceId>,
    /// Outside diameter.
    pub outside_diameter: Length,
    /// Wall.
    pub wall: Length,
    /// Inside diameter.
    pub bore: Length,
    /// Area of the bore.
    pub bore_area: Area,
    /// Volume of a metre of bore.
    pub volume_per_metre: Volume,
    /// Mass of the tube per length, without what is in it.
    pub mass_per_length: MassPerLength,
    /// Volume of the whole length.
    pub volume: Option<Volume>,
    /// Mass of the whole length of tube.
    pub mass: Option<Mass>,
    /// Pressure rating at the temperature.
    pub rating: Option<Rating>,
    /// The working.
    pub working: Working,
}

/// What a tube bears at a temperature.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Rating {
    /// The temperature that was asked for.
    pub temperature: Temperature,
    /// The row of the stress table that holds: the next one not colder.
    pub table_temperature: Temperature,
    /// Allowable stress there.
    pub allowable_stress: Stress,
    /// Rated internal working pressure.
    pub rated_pressure: GaugePressure,
    /// How it stands to the design pressure: at least as high is in band. Its uncertainty is 0,
    /// since the rating already takes the least wall and the largest diameter.
    pub against_design_pressure: Option<Judgement<GaugePressure, PressureDifference>>,
}

/// Density of copper tube.
pub const COPPER_DENSITY: Density = Density::kilograms_per_cubic_metre(8940.0);

/// Thinnest wall that the tolerance leaves something of.
const THINNEST_WALL: Length = Length::metres(0.15e-3);

/// How wide is this tube inside, what does it hold and weigh, what pressure does it bear?
///
/// # Method
/// Bore `d = D - 2·t`. Mass from the ring of copper. Rated pressure
/// `P = 2·S·t_min / (D_max - 0.8·t_min)` with the least wall and the largest diameter that the
/// standard's tolerances allow and the allowable stress `S` of annealed copper; brazed drawn tube
/// takes the annealed figure.
///
/// # Valid for
/// Copper; wall at least 0.15 mm and less than half the diameter; -100 °C to 400 °F. Between rows of
/// the stress table the hotter row holds.
///
/// # Errors
/// A size in no table without a wall; a wall that leaves no bore; a design pressure without a temperature.
///
/// # Examples
/// ```
/// use coldwright::calc::tube::{TubeInput, tube};
/// use coldwright::quantity::{Length, Temperature};
/// let answer = tube(&TubeInput {
///     tube: Length::inches(0.25).into(),
///     temperature: Temperature::fahrenheit(150.0).into(),
///     ..TubeInput::default()
/// }).unwrap();
/// let rated = answer.rating.unwrap().rated_pressure.in_pascals() / 6894.757;
/// assert_eq!(rated.round(), 1195.0);
/// ```
///
/// # References
/// Copper Development Association, Copper Tube Handbook: rated internal pressure, table 3c.
/// ASTM B280; EN 12735-1.
pub fn tube(input: &TubeInput) -> Result<TubeAnswer, Problems> {
    let mut reading = Reading::default();
    let diameter = required!(reading, input.tube);
    let series = optional!(reading, input.series);
    let entered_wall = optional!(reading, input.wall);
    let length = optional!(reading, input.length);
    let temperature = optional!(reading, input.temperature);
    let design_pressure = optional!(reading, input.design_pressure);

    let section = diameter
        .filter(|_| reading.is_sound())
        .map(|diameter| Section::find(diameter, series, entered_wall))
        .and_then(|section| reading.accept(section));
    let rating_row = temperature
        .map(stress_row)
        .and_then(|row| reading.accept(row));
    if design_pressure.is_some() && matches!(input.temperature, Entry::Absent) {
        let example = crate::quantity::example(crate::quantity::QuantityKind::Temperature).into();
        let field = Field::named("temperature");
        reading.problem(Problem::misfit(field, Misfit::Missing { example }));
    }
    reading.sound()?;
    let Some(section) = section else {
        return Err(reading.take());
    };
    Ok(answer(&section, length, rating_row, design_pressure))
}

/// A tube's cross section and where it comes from.
pub(super) struct Section {
    pub(super) name: Option<&'static str>,
    series: TubeSeries,
    source: Option<SourceId>,
    pub(super) outside_diameter: Length,
    wall: Length,
}

impl Section {
    /// The section of a size by its diameter, or of any diameter with a wall.
    pub(super) fn find(
        diameter: Length,
        series: Option<TubeSeries>,
        wall: Option<Length>,
    ) -> Result<Self, Problem> {
        let size = sizes_of(diameter, series).next();
        let outside_diameter = size.map_or(diameter, |size| size.outside_diameter());
        let from_table = wall.is_none();
        let Some(wall) = wall.or(size.map(|size| size.wall())) else {
            let misfit = Misfit::NotInTable {
                accepted: size_names(),
            };
            return Err(Problem::misfit(Field::named("tube"), misfit));
        };
        if wall < THINNEST_WALL || wall * 2.0 >= outside_diameter {
            let field = Field::named("wall");
            return Err(Problem::outside(
                field,
                THINNEST_WALL,
                outside_diameter / 2.0,
            ));
        }
        Ok(Self {
            name: size.map(|size| size.name),
            series: size
                .map(|size| size.series)
                .or(series)
                .unwrap_or(TubeSeries::En12735),
            source: size.filter(|_| from_table).map(|size| size.source),
            outside_diameter,
            wall,
        })
    }

    pub(super) fn bore(&self) -> Length {
        self.outside_diameter - self.wall * 2.0
    }

    fn copper_area(&self) -> Area {
        self.outside_diameter.circle() - self.bore().circle()
    }
}

/// The temperature asked for, the row that holds and its stress.
type StressRow = (Temperature, Temperature, Stress);

/// The row of the stress table that holds at a temperature.
pub(super) fn stress_row(temperature: Temperature) -> Result<StressRow, Problem> {
    let outside = || {
        Problem::outside(
            Field::named("temperature"),
            stress::COLDEST,
            stress::HOTTEST,
        )
    };
    if temperature < stress::COLDEST {
        return Err(outside());
    }
    let (allowable, row) = stress::allowable(temperature).ok_or_else(outside)?;
    Ok((temperature, row, allowable))
}

fn answer(
    section: &Section,
    length: Option<Length>,
    row: Option<StressRow>,
    design_pressure: Option<GaugePressure>,
) -> TubeAnswer {
    let bore = section.bore();
    let bore_area = bore.circle();
    let mass_per_length = COPPER_DENSITY * section.copper_area();
    let mut working = section_working(section);
    working.push(mass_step(section, mass_per_length));
    let rating = row.map(|row| rating(section, row, design_pressure, &mut working));
    TubeAnswer {
        name: section.name,
        series: section.series,
        source: section.source,
        outside_diameter: section.outside_diameter,
        wall: section.wall,
        bore,
        bore_area,
        volume_per_metre: Length::metres(1.0) * bore_area,
        mass_per_length,
        volume: length.map(|length| length * bore_area),
        mass: length.map(|length| mass_per_length * length),
        rating,
        working,
    }
}

/// The steps to the bore and its area.
pub(super) fn section_working(section: &Section) -> Working {
    let bore = section.bore();
    let mut bore_step = Step::of("step-bore", "{d} = {D} − 2·{t}")
        .with("D", "figure-outside-diameter", section.outside_diameter)
        .with("t", "figure-wall", section.wall);
    if let Some(source) = section.source {
        bore_step = bore_step.from(source);
    }
    vec![
        bore_step.gives("d", "figure-bore", bore),
        Step::of("step-bore-area", "{A} = π/4·{d}²")
            .with("d", "figure-bore", bore)
            .gives("A", "figure-bore-area", bore.circle()),
    ]
}

fn mass_step(section: &Section, mass_per_length: MassPerLength) -> Step {
    Step::of("step-tube-mass", "{m} = {ρ}·π/4·({D}² − {d}²)")
        .with("ρ", "figure-copper-density", COPPER_DENSITY)
        .with("D", "figure-outside-diameter", section.outside_diameter)
        .with("d", "figure-bore", section.bore())
        .from(SourceId::CopperDensity)
        .gives("m", "figure-mass-per-length", mass_per_length)
}

/// What a section bears at a temperature, and the step that finds it.
pub(super) fn rating(
    section: &Section,
    (temperature, table_temperature, allowable_stress): StressRow,
    design_pressure: Option<GaugePressure>,
    working: &mut Working,
) -> Rating {
    let (least_wall, largest_diameter, tolerance_source) =
        worst_case(section.series, section.outside_diameter, section.wall);
    let wall_over_diameter = least_wall / (largest_diameter - least_wall * 0.8);
    let rated_pressure =
        GaugePressure::pascals(2.0 * allowable_stress.in_pascals() * wall_over_diameter);
    working.push(
        Step::of(
            "step-rated-pressure",
            "{P} = 2·{S}·{tₘᵢₙ} / ({Dₘₐₓ} − 0.8·{tₘᵢₙ})",
        )
        .with("S", "figure-allowable-stress", allowable_stress)
        .with("tₘᵢₙ", "figure-least-wall", least_wall)
        .with("Dₘₐₓ", "figure-largest-diameter", largest_diameter)
        .from(SourceId::CopperTubeHandbookRating)
        .from(stress::SOURCE)
        .from(tolerance_source)
        .gives("P", "figure-rated-pressure", rated_pressure),
    );
    let none = PressureDifference::pascals(0.0);
    Rating {
        temperature,
        table_temperature,
        allowable_stress,
        rated_pressure,
        against_design_pressure: design_pressure
            .map(|design| judge_at_least(rated_pressure, none, design)),
    }
}
