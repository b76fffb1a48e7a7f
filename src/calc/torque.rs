//! Tightening torque of a flare nut, and what to set on the wrench.

use serde::Serialize;

use super::input::input;
use super::problem::{Field, Misfit, Problem, Problems};
use super::reading::{Reading, optional, required};
use super::verdict::{Judgement, Verdict, judge};
use super::working::{Step, Working};
use crate::quantity::{Angle, Band, Entry, Length, Quantity, Ratio, Torque, choice};
use crate::tables::SourceId;
use crate::tables::flare::flare_size_names;
use crate::tables::torque::{TorqueFamily, torque_bands};

input! {
    /// What [`torque`] asks for.
    pub struct TorqueInput {
        /// Outside diameter of the tube, required: "5/8", "15.88 mm".
        pub tube: Entry<Length>,
        /// Family of torque figures; by default what all families that have the size allow.
        pub family: Entry<TorqueFamily>,
        /// The plate's own figure or band, which outranks every family: "34-42 N·m", "38 ± 4 N·m", "38 N·m".
        pub plate_torque: Entry<Band<Torque>>,
        /// Offset adapter (crow foot): from the centre of the drive to the centre of the nut.
        pub adapter_length: Entry<Length>,
        /// Direction of the adapter: 0° straight out from the handle, 90° square to it, 180° pointing back; 0° if nothing is entered.
        pub adapter_angle: Entry<Angle>,
        /// Wrench: from the middle of the hand to the centre of the drive; needed with an adapter.
        pub wrench_length: Entry<Length>,
        /// Scale of the wrench, from its least to its largest torque: "20-100 N·m".
        pub wrench_range: Entry<Band<Torque>>,
        /// Accuracy of the wrench: "4 %"; if nothing is entered 4 % above 10 N·m, 6 % up to it.
        pub wrench_accuracy: Entry<Ratio>,
    }
}

/// What [`torque`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct TorqueAnswer {
    /// What every family says of this size.
    pub families: Vec<FamilyBand>,
    /// The band that holds at the nut.
    pub band: Band<Torque>,
    /// Why it holds.
    pub basis: TorqueBasis,
    /// The torque to aim at: the middle of the band.
    pub aim: Torque,
    /// Whether the families differ on this size.
    pub families_disagree: bool,
    /// What the figures take for granted.
    pub assumes: TorqueAssumption,
    /// What to set on the wrench with the adapter.
    pub setting: Option<Setting>,
    /// Whether the wrench suits.
    pub wrench: Option<WrenchFit>,
    /// Accuracy of the wrench: as entered, or that of one in order.
    pub accuracy: Ratio,
    /// The working.
    pub working: Working,
}

/// A family's band.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct FamilyBand {
    /// The family.
    pub family: TorqueFamily,
    /// Its band.
    pub band: Band<Torque>,
    /// Where it comes from.
    pub source: SourceId,
}

choice! {
    /// Why a band holds.
    TorqueBasis {
        /// It is the plate's own.
        Plate = "plate",
        /// It is the family's that was asked for.
        Family = "family",
        /// It is what all families that have the size allow.
        Overlap = "overlap",
    }
}

choice! {
    /// What torque figures take for granted.
    TorqueAssumption {
        /// Compatible oil on the thread and on both flare faces (Real Decreto 552/2019, IF-06 3.2.3.2).
        OilOnThreadAndFaces = "oil-on-thread-and-faces",
    }
}

/// What to set on a wrench with an offset adapter.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Setting {
    /// The band on the wrench's scale.
    pub band: Band<Torque>,
    /// The torque to set.
    pub aim: Torque,
    /// Torque at the nut over torque on the scale.
    pub gain: Ratio,
}

/// Whether a wrench suits.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct WrenchFit {
    /// The part of the scale that can be trusted.
    pub trusted: Band<Torque>,
    /// How the torque to set stands in it.
    pub on_scale: Judgement<Torque, Torque>,
    /// Whether the wrench, as far off as it may be, still hits the band at the nut; absent where the
    /// plate gives one figure with no tolerance.
    pub hits_band: Option<Judgement<Torque, Torque>>,
    /// Both together: suitable, not suitable, or nearer to a limit than can be told.
    pub verdict: Verdict,
}

/// Part of a wrench's largest torque below which its scale is not to be trusted: the bottom fifth.
/// ISO 6789-1 tests from there (from memory).
pub const UNTRUSTED_PART_OF_SCALE: f64 = 0.2;

/// Accuracy of a wrench in order. ISO 6789-1 (from memory): 4 %, up to 10 N·m 6 %.
fn usual_accuracy(set: Torque) -> Ratio {
    Ratio::of_one(if set > Torque::newton_metres(10.0) {
        0.04
    } else {
        0.06
    })
}

/// Least part of the wrench's length that may be left as lever with an adapter pointing back.
const LEAST_LEVER: f64 = 0.1;

/// Least accuracy that makes sense of a wrench.
const WORST_ACCURACY: Ratio = Ratio::of_one(0.5);

/// How tight does this nut go, and what do I set on this wrench?
///
/// # Method
/// The plate's own band if there is one, else the family's that is asked for, else what all
/// families allow; aim at its middle. With an offset adapter `A` at an angle `θ` on a wrench of
/// length `L`: `set = T·L / (L + A·cos θ)`.
///
/// # Valid for
/// Flare nuts on annealed copper tube 1/4 to 3/4 in, oil on thread and faces.
///
/// # Errors
/// A size or family with no figure and no plate; an adapter without the wrench's length, or one that
/// points back so far that no lever is left.
///
/// # Examples
/// ```
/// use coldwright::calc::torque::{TorqueInput, torque};
/// use coldwright::quantity::{Length, Torque};
/// let answer = torque(&TorqueInput {
///     tube: Length::inches(0.375).into(),
///     adapter_length: Length::millimetres(40.0).into(),
///     wrench_length: Length::millimetres(280.0).into(),
///     ..TorqueInput::default()
/// }).unwrap();
/// assert_eq!(answer.aim, Torque::newton_metres(38.0));
/// assert_eq!(answer.setting.unwrap().aim, Torque::newton_metres(33.25));
/// ```
///
/// # References
/// EN 378-2, JIS B 8607 (from memory) and common practice for the bands; US Army TM
/// 1-1500-204-23-9 figure 8-16 and NAVEDTRA 14315 figure 3-44 for the adapter; ISO 6789-1 (from memory).
pub fn torque(input: &TorqueInput) -> Result<TorqueAnswer, Problems> {
    let mut reading = Reading::default();
    let tube = required!(reading, input.tube);
    let family = optional!(reading, input.family);
    let plate = optional!(reading, input.plate_torque);
    let wrench_range = optional!(reading, input.wrench_range);
    let accuracy = optional!(reading, input.wrench_accuracy);
    let lever = lever(input, &mut reading);

    if let Some(accuracy) = accuracy
        && !(Ratio::of_one(0.0)..=WORST_ACCURACY).contains(&accuracy)
    {
        let field = Field::named("wrench_accuracy");
        reading.problem(Problem::outside(field, Ratio::of_one(0.0), WORST_ACCURACY));
    }
    let families = tube.map(family_bands).unwrap_or_default();
    let choice = tube
        .filter(|_| reading.is_sound())
        .map(|_| Choice::make(&families, family, plate))
        .and_then(|choice| reading.accept(choice));
    reading.sound()?;
    let Some(choice) = choice else {
        return Err(reading.take());
    };
    Ok(answer(families, choice, lever, wrench_range, accuracy))
}

fn family_bands(tube: Length) -> Vec<FamilyBand> {
    torque_bands(tube)
        .into_iter()
        .map(|(family, low, high)| FamilyBand {
            family,
            band: Band { low, high },
            source: family.source(),
        })
        .collect()
}

/// The band that holds, and why.
struct Choice {
    band: Band<Torque>,
    basis: TorqueBasis,
    sources: Vec<SourceId>,
}

impl Choice {
    fn make(
        families: &[FamilyBand],
        family: Option<TorqueFamily>,
        plate: Option<Band<Torque>>,
    ) -> Result<Self, Problem> {
        if let Some(band) = plate {
            if band.low <= Torque::newton_metres(0.0) {
                let high = Torque::from_si(Torque::RANGE.1);
                let field = Field::named("plate_torque");
                return Err(Problem::outside(field, Torque::newton_metres(0.1), high));
            }
            return Ok(Self {
                band,
                basis: TorqueBasis::Plate,
                sources: vec![SourceId::PlateFigure],
            });
        }
        if families.is_empty() {
            let misfit = Misfit::NotInTable {
                accepted: flare_size_names(),
            };
            return Err(Problem::misfit(Field::named("tube"), misfit));
        }
        match family {
            Some(family) => Self::of_family(families, family),
            None => Self::overlap(families),
        }
    }

    fn of_family(families: &[FamilyBand], family: TorqueFamily) -> Result<Self, Problem> {
        let found = families
            .iter()
            .find(|row| row.family == family)
            .ok_or_else(|| {
                let accepted = families.iter().map(|row| row.family.word()).collect();
                Problem::misfit(Field::named("family"), Misfit::NotInTable { accepted })
            })?;
        Ok(Self {
            band: found.band,
            basis: TorqueBasis::Family,
            sources: vec![found.source],
        })
    }

    fn overlap(families: &[FamilyBand]) -> Result<Self, Problem> {
        let mut bands = families.iter().map(|row| row.band);
        let first = bands.next();
        let common = bands.fold(first, |common, band| common.and_then(|c| c.overlap(band)));
        let band = common.ok_or_else(|| {
            let accepted = families.iter().map(|row| row.family.word()).collect();
            Problem::misfit(Field::named("family"), Misfit::NotInTable { accepted })
        })?;
        let sources = families.iter().map(|row| row.source).collect();
        Ok(Self {
            band,
            basis: TorqueBasis::Overlap,
            sources,
        })
    }
}

/// Hand, drive and nut: what turns a scale's torque into the nut's.
#[derive(Clone, Copy)]
struct Lever {
    wrench: Length,
    adapter: Length,
    angle: Angle,
}

impl Lever {
    /// Torque at the nut over torque on the scale.
    fn gain(self) -> f64 {
        1.0 + (self.adapter / self.wrench) * self.angle.cosine()
    }
}

fn lever(input: &TorqueInput, reading: &mut Reading) -> Option<Lever> {
    let adapter = optional!(reading, input.adapter_length);
    let angle = optional!(reading, input.adapter_angle).unwrap_or(Angle::degrees(0.0));
    let adapter = adapter.or_else(|| {
        let angled = matches!(input.adapter_angle, Entry::Read(_));
        if angled && matches!(input.adapter_length, Entry::Absent) {
            required!(reading, input.adapter_length)
        } else {
            None
        }
    });
    let wrench = match adapter {
        Some(_) => required!(reading, input.wrench_length),
        None => optional!(reading, input.wrench_length),
    };
    if wrench.is_some_and(|wrench| wrench < SHORTEST_WRENCH || wrench > LONGEST_WRENCH) {
        let field = Field::named("wrench_length");
        reading.problem(Problem::outside(field, SHORTEST_WRENCH, LONGEST_WRENCH));
        return None;
    }
    let lever = Lever {
        wrench: wrench?,
        adapter: adapter?,
        angle,
    };
    if lever.adapter > LONGEST_WRENCH {
        let field = Field::named("adapter_length");
        reading.problem(Problem::outside(field, Length::metres(0.0), LONGEST_WRENCH));
        return None;
    }
    if lever.gain() < LEAST_LEVER {
        let misfit = Misfit::Impossible {
            with: Field::named("wrench_length"),
        };
        reading.problem(Problem::misfit(Field::named("adapter_length"), misfit));
        return None;
    }
    Some(lever)
}

/// Shortest wrench a hand can pull.
const SHORTEST_WRENCH: Length = Length::metres(0.02);
/// Longest wrench in a van.
const LONGEST_WRENCH: Length = Length::metres(3.0);

fn answer(
    families: Vec<FamilyBand>,
    choice: Choice,
    lever: Option<Lever>,
    wrench_range: Option<Band<Torque>>,
    accuracy: Option<Ratio>,
) -> TorqueAnswer {
    let aim = choice.band.middle();
    let setting = lever.map(|lever| setting(choice.band, aim, lever));
    let set = setting.as_ref().map_or(aim, |setting| setting.aim);
    let gain = setting
        .as_ref()
        .map_or(1.0, |setting| setting.gain.in_one());
    let accuracy = accuracy.unwrap_or(usual_accuracy(set));
    let families_disagree = families
        .windows(2)
        .any(|pair| matches!(pair, [one, other] if one.band != other.band));
    let mut working = vec![aim_step(&choice, aim)];
    working.extend(lever.map(|lever| setting_step(aim, lever, set)));
    TorqueAnswer {
        families,
        band: choice.band,
        basis: choice.basis,
        aim,
        families_disagree,
        assumes: TorqueAssumption::OilOnThreadAndFaces,
        setting,
        accuracy,
        wrench: wrench_range.map(|range| wrench_fit(range, choice.band, set, gain, accuracy)),
        working,
    }
}

fn setting(band: Band<Torque>, aim: Torque, lever: Lever) -> Setting {
    let gain = lever.gain();
    Setting {
        band: Band {
            low: band.low / gain,
            high: band.high / gain,
        },
        aim: aim / gain,
        gain: Ratio::of_one(gain),
    }
}

fn wrench_fit(
    range: Band<Torque>,
    band: Band<Torque>,
    set: Torque,
    gain: f64,
    accuracy: Ratio,
) -> WrenchFit {
    let fifth = range.high * UNTRUSTED_PART_OF_SCALE;
    let low = if range.low > fifth { range.low } else { fifth };
    let trusted = Band {
        low,
        high: range.high,
    };
    // The scale's own step decides nothing here: a wrench is set to a mark, not measured.
    let on_scale = judge(set, Torque::newton_metres(0.0), trusted);
    let at_nut = set * gain;
    let hits_band = (band.low < band.high).then(|| judge(at_nut, at_nut * accuracy.in_one(), band));
    let at_nut = hits_band.map_or(Verdict::InBand, |judgement| judgement.verdict);
    let verdict = on_scale.verdict.and(at_nut);
    WrenchFit {
        trusted,
        on_scale,
        hits_band,
        verdict,
    }
}

fn aim_step(choice: &Choice, aim: Torque) -> Step {
    let title = match choice.basis {
        TorqueBasis::Plate => "step-aim-plate",
        TorqueBasis::Family => "step-aim-family",
        TorqueBasis::Overlap => "step-aim-overlap",
    };
    let step = Step::of(title, "{T} = ({T₁} + {T₂}) / 2")
        .with("T₁", "figure-least-torque", choice.band.low)
        .with("T₂", "figure-most-torque", choice.band.high);
    let step = choice
        .sources
        .iter()
        .fold(step, |step, source| step.from(*source));
    step.gives("T", "figure-aim", aim)
}

fn setting_step(aim: Torque, lever: Lever, set: Torque) -> Step {
    Step::of(
        "step-wrench-setting",
        "{Tₛ} = {T}·{L} / ({L} + {A}·cos {θ})",
    )
    .with("T", "figure-aim", aim)
    .with("L", "figure-wrench-length", lever.wrench)
    .with("A", "figure-adapter-length", lever.adapter)
    .with("θ", "figure-adapter-angle", lever.angle)
    .from(SourceId::ArmyAviationTools)
    .from(SourceId::NavyHandTools)
    .gives("Tₛ", "figure-wrench-setting", set)
}
