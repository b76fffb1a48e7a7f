//! The flare: how wide the cone, which nut and wrench, how far the tube stands above the bar.

use serde::Serialize;

use super::input::input;
use super::problem::{Field, Misfit, Problem, Problems};
use super::reading::{Reading, optional, required};
use super::verdict::{Judgement, Verdict, judge};
use super::working::{Step, Working};
use crate::quantity::{Angle, Band, Entry, Length, Quantity, choice};
use crate::tables::SourceId;
use crate::tables::flare::{
    CONE_HALF_ANGLE_DEGREES, CONE_SOURCE, CONE_TOLERANCE, CORNER_RADIUS, FlareClass, FlareSize,
    FlaringTool, LARGEST_FLARED_TUBE, THREAD_SOURCE, bar_projection, flare_size, flare_size_names,
};
use crate::tables::refrigerants::Refrigerant;

input! {
    /// What [`flare`] asks for.
    pub struct FlareInput {
        /// Outside diameter of the tube, required: "5/8", "15.88 mm".
        pub tube: Entry<Length>,
        /// Pressure class of the joint, required without `refrigerant`: class 2 for R-410A, R-32 and their like.
        pub flare_class: Entry<FlareClass>,
        /// Refrigerant in the tube, which gives the class: "R-410A".
        pub refrigerant: Entry<Refrigerant>,
        /// Flaring tool, for the tube above the bar.
        pub tool: Entry<FlaringTool>,
        /// Outside diameter of the finished cone, as measured.
        pub measured_cone: Entry<Length>,
        /// How far the caliper may be wrong; 0.05 mm if nothing is entered.
        pub caliper_uncertainty: Entry<Length>,
    }
}

/// What [`flare`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct FlareAnswer {
    /// Name of the size.
    pub name: &'static str,
    /// Outside diameter of the tube.
    pub tube: Length,
    /// Pressure class.
    pub flare_class: FlareClass,
    /// Outside diameter of the cone; absent where the series has no such size.
    pub cone: Option<Band<Length>>,
    /// Half the included angle of the cone.
    pub cone_half_angle: Band<Angle>,
    /// Radius at the foot of the cone.
    pub corner_radius: Band<Length>,
    /// Nut across flats, which is its wrench; absent where the series has no such size.
    pub nut_across_flats: Option<Length>,
    /// Thread of the nut.
    pub thread: Thread,
    /// Tube above the flaring bar, if a tool was named.
    pub bar_projection: Option<BarProjection>,
    /// Verdict on the measured cone.
    pub measured: Option<MeasuredCone>,
    /// What else has to be known.
    pub notices: Vec<FlareNotice>,
    /// Where cone, angle, radius and nut come from.
    pub source: SourceId,
    /// The working.
    pub working: Working,
}

/// A thread.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Thread {
    /// Designation, for example `7/8-14 UNF`.
    pub designation: &'static str,
    /// Major diameter.
    pub major_diameter: Length,
    /// Distance from thread to thread.
    pub pitch: Length,
    /// Where it comes from.
    pub source: SourceId,
}

/// How far the tube stands above the flaring bar.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct BarProjection {
    /// The tool.
    pub tool: FlaringTool,
    /// Least and most.
    pub band: Band<Length>,
    /// Where it comes from.
    pub source: SourceId,
}

/// A measured cone and what to do about it.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct MeasuredCone {
    /// The verdict.
    pub judgement: Judgement<Length, Length>,
    /// What to do.
    pub advice: ConeAdvice,
}

choice! {
    /// What to do about a measured cone.
    ConeAdvice {
        /// Use it.
        Keep = "keep",
        /// Measure again, with a finer caliper or at another place of the rim.
        MeasureAgain = "measure-again",
        /// Too small: cut off, flare anew with more tube above the bar.
        MoreAboveBar = "more-above-bar",
        /// Too large: cut off, flare anew with less tube above the bar.
        LessAboveBar = "less-above-bar",
    }
}

choice! {
    /// What else has to be known about a flare.
    FlareNotice {
        /// The series has no cone and nut for this size: take the equipment's instructions.
        NoConeInSeries = "no-cone-in-series",
        /// The largest tube that Real Decreto 552/2019 allows to be flared.
        LargestFlaredTube = "largest-flared-tube",
    }
}

/// How far an ordinary caliper on a soft cone may be wrong. Common practice, no source.
pub const CALIPER_UNCERTAINTY: Length = Length::metres(0.05e-3);

/// Coarsest caliper that is of any use on a band of 0.4 mm.
const COARSEST_CALIPER: Length = Length::metres(2e-3);

/// How wide must this cone be, which nut and wrench, and is the cone I measured good?
///
/// # Method
/// Table look-up by size and class; the cone's band is its largest diameter with 0 / -0.4 mm. A
/// measured cone is in band if it lies inside by more than the caliper may err.
///
/// # Valid for
/// Annealed copper tube 1/4 to 3/4 in.
///
/// # Errors
/// A size that is not flared; a refrigerant that is not run through flared tube, or whose class is not
/// the one entered; a measured cone for a size that the series does not have; a cone
/// narrower than the tube.
///
/// # Examples
/// ```
/// use coldwright::calc::flare::{ConeAdvice, FlareInput, flare};
/// use coldwright::quantity::Length;
/// use coldwright::tables::flare::FlareClass;
/// let answer = flare(&FlareInput {
///     tube: Length::inches(0.625).into(),
///     flare_class: FlareClass::Class2.into(),
///     measured_cone: Length::millimetres(18.9).into(),
///     ..FlareInput::default()
/// }).unwrap();
/// assert_eq!(answer.nut_across_flats, Some(Length::millimetres(29.0)));
/// assert_eq!(answer.measured.unwrap().advice, ConeAdvice::MoreAboveBar);
/// ```
///
/// # References
/// JIS B 8607 (from memory); SAE J513 for threads; Real Decreto 552/2019, IF-06 3.2.3.2.
pub fn flare(input: &FlareInput) -> Result<FlareAnswer, Problems> {
    let mut reading = Reading::default();
    let tube = required!(reading, input.tube);
    let class = class(input, &mut reading);
    let tool = optional!(reading, input.tool);
    let measured_cone = optional!(reading, input.measured_cone);
    let caliper = optional!(reading, input.caliper_uncertainty).unwrap_or(CALIPER_UNCERTAINTY);

    let size = tube.map(size_of).and_then(|size| reading.accept(size));
    if caliper > COARSEST_CALIPER {
        let field = Field::named("caliper_uncertainty");
        reading.problem(Problem::outside(
            field,
            Length::metres(0.0),
            COARSEST_CALIPER,
        ));
    }
    if let (Some(size), Some(class), Some(cone)) = (size, class, measured_cone) {
        reading.accept(measurable(size, class, cone));
    }
    reading.sound()?;
    let (Some(size), Some(class)) = (size, class) else {
        return Err(reading.take());
    };
    Ok(answer(size, class, tool, measured_cone, caliper))
}

/// The class entered, or that of the refrigerant entered, which must not differ.
fn class(input: &FlareInput, reading: &mut Reading) -> Option<FlareClass> {
    if matches!(input.refrigerant, Entry::Absent) {
        return required!(reading, input.flare_class);
    }
    let entered = optional!(reading, input.flare_class);
    let refrigerant = optional!(reading, input.refrigerant)?;
    let class = reading.accept(class_of(refrigerant))?;
    if entered.is_some_and(|entered| entered != class) {
        let with = Field::named("refrigerant");
        let field = Field::named("flare_class");
        reading.problem(Problem::misfit(field, Misfit::Conflict { with }));
    }
    Some(class)
}

/// Pressure class of flare joints for a refrigerant.
fn class_of(refrigerant: Refrigerant) -> Result<FlareClass, Problem> {
    let class = refrigerant.flare_class().map(|class| class.figure);
    class.ok_or_else(|| {
        let all = Refrigerant::ALL.iter();
        let flared = all.filter(|other| other.flare_class().is_some());
        let misfit = Misfit::NotInTable {
            accepted: flared.map(|other| other.word()).collect(),
        };
        Problem::misfit(Field::named("refrigerant"), misfit)
    })
}

fn size_of(tube: Length) -> Result<&'static FlareSize, Problem> {
    flare_size(tube).ok_or_else(|| {
        let misfit = Misfit::NotInTable {
            accepted: flare_size_names(),
        };
        Problem::misfit(Field::named("tube"), misfit)
    })
}

/// Whether a measured cone can be judged: the series has the size, and it is a cone on this tube.
fn measurable(size: &FlareSize, class: FlareClass, cone: Length) -> Result<(), Problem> {
    let field = Field::named("measured_cone");
    if size.cone(class).is_none() {
        let with_cone = crate::tables::flare::FLARE_SIZES.iter();
        let accepted = with_cone
            .filter(|size| size.cone(class).is_some())
            .map(|size| size.name)
            .collect();
        return Err(Problem::misfit(
            Field::named("tube"),
            Misfit::NotInTable { accepted },
        ));
    }
    if cone < size.tube() || cone > size.tube() * 2.0 {
        return Err(Problem::outside(field, size.tube(), size.tube() * 2.0));
    }
    Ok(())
}

fn answer(
    size: &FlareSize,
    class: FlareClass,
    tool: Option<FlaringTool>,
    measured_cone: Option<Length>,
    caliper: Length,
) -> FlareAnswer {
    let cone = size.cone(class).map(|(low, high)| Band { low, high });
    let (angle, tolerance) = CONE_HALF_ANGLE_DEGREES;
    let (least_radius, most_radius) = CORNER_RADIUS;
    FlareAnswer {
        name: size.name,
        tube: size.tube(),
        flare_class: class,
        cone,
        cone_half_angle: Band {
            low: Angle::degrees(angle - tolerance),
            high: Angle::degrees(angle + tolerance),
        },
        corner_radius: Band {
            low: Length::millimetres(least_radius),
            high: Length::millimetres(most_radius),
        },
        nut_across_flats: size.nut(class),
        thread: thread(size),
        bar_projection: tool.map(|tool| projection(tool, size.tube())),
        measured: cone
            .zip(measured_cone)
            .map(|(band, measured)| judge_cone(measured, caliper, band)),
        notices: notices(size, cone),
        source: CONE_SOURCE,
        working: working(size, cone),
    }
}

fn thread(size: &FlareSize) -> Thread {
    Thread {
        designation: size.thread,
        major_diameter: Length::inches(size.thread_inches),
        pitch: Length::inches(1.0 / size.threads_per_inch),
        source: THREAD_SOURCE,
    }
}

fn projection(tool: FlaringTool, tube: Length) -> BarProjection {
    let (low, high) = bar_projection(tool, tube);
    BarProjection {
        tool,
        band: Band { low, high },
        source: SourceId::CommonPractice,
    }
}

fn judge_cone(measured: Length, caliper: Length, band: Band<Length>) -> MeasuredCone {
    let judgement = judge(measured, caliper, band);
    let advice = match judgement.verdict {
        Verdict::InBand => ConeAdvice::Keep,
        Verdict::CannotTell => ConeAdvice::MeasureAgain,
        Verdict::OutOfBand if measured < band.low => ConeAdvice::MoreAboveBar,
        Verdict::OutOfBand => ConeAdvice::LessAboveBar,
    };
    MeasuredCone { judgement, advice }
}

fn notices(size: &FlareSize, cone: Option<Band<Length>>) -> Vec<FlareNotice> {
    let mut notices = Vec::new();
    if cone.is_none() {
        notices.push(FlareNotice::NoConeInSeries);
    }
    if size.tube().si() >= LARGEST_FLARED_TUBE.si() {
        notices.push(FlareNotice::LargestFlaredTube);
    }
    notices
}

fn working(size: &FlareSize, cone: Option<Band<Length>>) -> Working {
    let mut working = Working::new();
    if let Some(cone) = cone {
        working.push(
            Step::of("step-least-cone", "{A₀} = {A} − {Δ}")
                .with("A", "figure-largest-cone", cone.high)
                .with("Δ", "figure-cone-tolerance", CONE_TOLERANCE)
                .from(CONE_SOURCE)
                .gives("A₀", "figure-least-cone", cone.low),
        );
    }
    working.push(
        Step::of("step-thread-pitch", "{P} = 1 in / {n}")
            .with(
                "n",
                "figure-threads-per-inch",
                crate::quantity::Ratio::of_one(size.threads_per_inch),
            )
            .from(THREAD_SOURCE)
            .gives(
                "P",
                "figure-thread-pitch",
                Length::inches(1.0 / size.threads_per_inch),
            ),
    );
    working
}
