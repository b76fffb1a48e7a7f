//! How much a recovery cylinder may hold.

use serde::Serialize;

use super::super::problem::{Field, Misfit, Problem};
use super::super::reading::{filled, optional};
use super::super::saturation_point::from_equations;
use super::super::verdict::{Judgement, judge_at_least};
use super::super::working::{Step, Working};
use super::ChargeNotice;
use super::filling::{Filling, saturated};
use super::scale::Scale;
use super::sheet::{Sheet, any, limited};
use crate::physics::saturation::Phase;
use crate::quantity::factors::{CUBIC_METRE_PER_CUBIC_INCH, KILOGRAM_PER_POUND};
use crate::quantity::{Density, Mass, Ratio, Temperature, Volume, choice};
use crate::tables::SourceId;
use crate::tables::refrigerants::Refrigerant;

choice! {
    /// A way to read how full a cylinder may be.
    FillRule {
        /// Liquid takes no more than 80 % of the volume at the stated temperature.
        EightyPercentOfVolume = "eighty-percent-of-volume",
        /// 0.95 of the liquid's density at 50 °C, and not full of liquid at 60 °C.
        NeverFullWhenHot = "never-full-when-hot",
        /// 80 % of the water's weight, whatever the refrigerant. An old reading; it overfills with light refrigerants.
        EightyPercentOfWater = "eighty-percent-of-water",
    }
}

/// What one reading of the rule allows.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct FillReading {
    /// The rule.
    pub rule: FillRule,
    /// Most refrigerant by it.
    pub contents: Mass,
    /// Most on the scale by it: that and the tare.
    pub gross: Mass,
    /// Whether it allows more than the largest fill here: then it does not hold.
    pub beyond_limit: bool,
    /// Where the rule comes from.
    pub source: SourceId,
}

/// How much a recovery cylinder may hold.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct RecoveryFill {
    /// Inside volume.
    pub volume: Volume,
    /// Temperature of the 80 %.
    pub temperature: Temperature,
    /// Density of the liquid there.
    pub liquid_density: Density,
    /// What each reading of the rule allows.
    pub readings: Vec<FillReading>,
    /// The rule that holds: the stricter of the two that go by volume.
    pub limited_by: FillRule,
    /// Most refrigerant.
    pub largest_contents: Mass,
    /// Most on the scale: that and the tare. The cylinder's own mark outranks it if it is lower.
    pub largest_gross: Mass,
    /// Part of the volume that the most refrigerant takes as liquid at 55 °C (131 °F).
    pub part_full_when_hot: Ratio,
    /// What is in it now, if it was weighed.
    pub contents: Option<Mass>,
    /// Part of the volume that this takes as liquid at `temperature`.
    pub part_full: Option<Ratio>,
    /// Room that is left; in band if it is room for sure, out of band if the cylinder is overfilled.
    pub room: Option<Judgement<Mass, Mass>>,
}

/// Part of the volume that liquid may take. ARI Guideline K (2004), at second hand.
pub const LARGEST_PART: f64 = 0.8;
/// Temperature of that part if none is entered: 77 °F, of the specific gravities that the guideline goes with.
pub const USUAL_FILL_TEMPERATURE: Temperature = Temperature::celsius(25.0);
/// Density of water that a capacity is stamped with: a pound is 27.737 in³ at 60 °F.
pub const WATER_AT_60_FAHRENHEIT: Density =
    Density::kilograms_per_cubic_metre(KILOGRAM_PER_POUND / (27.737 * CUBIC_METRE_PER_CUBIC_INCH));

/// Temperatures and part of the density in packing instruction P200 (3)(c) of the UN Model Regulations.
const WARM: Temperature = Temperature::celsius(50.0);
const PART_OF_WARM_DENSITY: f64 = 0.95;
const HOT: Temperature = Temperature::celsius(60.0);
/// Up to here 49 CFR 173.304(b) wants the liquid not to fill the cylinder.
const HOT_IN_TRANSPORT: Temperature = Temperature::celsius(55.0);

const NO_MASS: Mass = Mass::kilograms(0.0);
const CAPACITIES: (Mass, Mass) = (Mass::kilograms(0.1), Mass::kilograms(10_000.0));
const VOLUMES: (Volume, Volume) = (Volume::cubic_metres(1e-4), Volume::cubic_metres(10.0));

/// What is entered of the cylinder.
struct Cylinder {
    volume: Volume,
    tare: Mass,
    gross: Option<Mass>,
}

impl Cylinder {
    fn read(sheet: &mut Sheet<'_>, scale: Scale) -> Option<Self> {
        let input = sheet.input;
        let capacities = [
            filled!(input.recovery_water_capacity),
            filled!(input.recovery_volume),
        ];
        let weights = [filled!(input.recovery_tare), filled!(input.recovery_gross)];
        let is_asked = any(&capacities) || any(&weights);
        if is_asked {
            sheet.needed();
            sheet.reading.exactly(1, &capacities);
        }
        let reading = &mut sheet.reading;
        let water = optional!(reading, input.recovery_water_capacity, CAPACITIES);
        let volume = optional!(reading, input.recovery_volume, VOLUMES);
        let limits = (NO_MASS, CAPACITIES.1);
        let tare = &input.recovery_tare;
        let tare = limited(reading, "recovery_tare", tare, is_asked, limits);
        let limits = (NO_MASS, CAPACITIES.1 * 3.0);
        let gross = optional!(reading, input.recovery_gross, limits);
        if tare
            .zip(gross)
            .is_some_and(|(tare, gross)| tare > gross + scale.of_a_reading())
        {
            let with = Field::named("recovery_gross");
            let field = Field::named("recovery_tare");
            reading.problem(Problem::misfit(field, Misfit::Impossible { with }));
        }
        let of_water = water.map(|water| {
            let volume = water / WATER_AT_60_FAHRENHEIT;
            sheet.working.push(
                Step::of("step-cylinder-volume", "{V} = {W} / {ρ}")
                    .with("W", "figure-water-capacity", water)
                    .with("ρ", "figure-water-density", WATER_AT_60_FAHRENHEIT)
                    .from(SourceId::WaterPound)
                    .gives("V", "figure-cylinder-volume", volume),
            );
            volume
        });
        Some(Self {
            volume: volume.or(of_water)?,
            tare: tare?,
            gross,
        })
    }
}

/// The limit of a recovery cylinder; nothing if none of it is entered.
pub(super) fn recovery(sheet: &mut Sheet<'_>, scale: Scale) -> Option<RecoveryFill> {
    let field = Field::named("recovery_temperature");
    let temperature = &sheet.input.recovery_temperature;
    let temperature = sheet.reading.optional(field, temperature);
    let temperature = temperature.unwrap_or(USUAL_FILL_TEMPERATURE);
    let cylinder = Cylinder::read(sheet, scale)?;
    let refrigerant = sheet.refrigerant?;
    let mut liquid =
        |field, at| saturated(&mut sheet.reading, refrigerant, Phase::Liquid, (field, at));
    let stated = liquid("recovery_temperature", temperature)?;
    // A refrigerant that is above its critical point there has no liquid to fill by.
    let hot = liquid("refrigerant", HOT)?;
    let warm = liquid("refrigerant", WARM)?;
    let in_transport = liquid("refrigerant", HOT_IN_TRANSPORT)?;
    let limits = Limits::of(&cylinder, stated, warm, hot);
    limits.steps(refrigerant, &cylinder, &mut sheet.working);
    let largest_contents = limits.largest();
    let largest_gross = cylinder.tare + largest_contents;
    if limits.by_water > largest_contents {
        sheet.notices.push(ChargeNotice::WaterRuleOverfills);
    }
    let contents = cylinder.gross.map(|gross| gross - cylinder.tare);
    let contents = contents.map(|mass| if mass > NO_MASS { mass } else { NO_MASS });
    let part = |contents: Mass, filling: Filling| {
        Ratio::of_one(contents / (filling.density() * cylinder.volume))
    };
    let part_full_when_hot = part(largest_contents, in_transport);
    let step = Step::of("step-part-full-when-hot", "{x} = {m} / ({V}·{ρ₅₅})")
        .with("m", "figure-most-contents", largest_contents)
        .with("V", "figure-cylinder-volume", cylinder.volume)
        .with("ρ₅₅", "figure-liquid-density-hot", in_transport.density())
        .from(SourceId::TransportOfCylinders);
    sheet
        .working
        .push(step.gives("x", "figure-part-full", part_full_when_hot));
    Some(RecoveryFill {
        volume: cylinder.volume,
        temperature,
        liquid_density: stated.density(),
        readings: limits.readings(cylinder.tare),
        limited_by: limits.rule(),
        largest_contents,
        largest_gross,
        part_full_when_hot,
        contents,
        part_full: contents.map(|contents| part(contents, stated)),
        room: cylinder
            .gross
            .map(|gross| judge_at_least(largest_gross - gross, scale.of_a_reading(), NO_MASS)),
    })
}

/// What the rules allow in a cylinder.
struct Limits {
    stated: Density,
    warm: Density,
    hot: Density,
    by_volume: Mass,
    when_hot: Mass,
    by_water: Mass,
}

impl Limits {
    fn of(cylinder: &Cylinder, stated: Filling, warm: Filling, hot: Filling) -> Self {
        let [stated, warm, hot] = [stated, warm, hot].map(Filling::density);
        let warm_part = warm * PART_OF_WARM_DENSITY;
        let when_hot = if warm_part < hot { warm_part } else { hot };
        Self {
            stated,
            warm,
            hot,
            by_volume: stated * cylinder.volume * LARGEST_PART,
            when_hot: when_hot * cylinder.volume,
            by_water: WATER_AT_60_FAHRENHEIT * cylinder.volume * LARGEST_PART,
        }
    }

    fn rule(&self) -> FillRule {
        if self.by_volume <= self.when_hot {
            FillRule::EightyPercentOfVolume
        } else {
            FillRule::NeverFullWhenHot
        }
    }

    fn largest(&self) -> Mass {
        match self.rule() {
            FillRule::NeverFullWhenHot => self.when_hot,
            _ => self.by_volume,
        }
    }

    fn readings(&self, tare: Mass) -> Vec<FillReading> {
        let largest = self.largest();
        let rules = [
            (
                FillRule::EightyPercentOfVolume,
                self.by_volume,
                SourceId::GuidelineK,
            ),
            (
                FillRule::NeverFullWhenHot,
                self.when_hot,
                SourceId::UnModelRegulations,
            ),
            (
                FillRule::EightyPercentOfWater,
                self.by_water,
                SourceId::GuidelineK,
            ),
        ];
        let reading = |(rule, contents, source)| FillReading {
            rule,
            contents,
            gross: tare + contents,
            beyond_limit: contents > largest,
            source,
        };
        rules.map(reading).into()
    }

    fn steps(&self, refrigerant: Refrigerant, cylinder: &Cylinder, working: &mut Working) {
        let volume = cylinder.volume;
        let by_volume = Step::of("step-fill-by-volume", "{m₁} = 0.8·{V}·{ρ}")
            .with("V", "figure-cylinder-volume", volume)
            .with("ρ", "figure-liquid-density", self.stated)
            .from(SourceId::GuidelineK);
        let by_volume = from_equations(by_volume, refrigerant);
        working.push(by_volume.gives("m₁", "figure-most-contents", self.by_volume));
        let when_hot = Step::of("step-fill-when-hot", "{m₂} = {V}·min(0.95·{ρ₅₀}, {ρ₆₀})")
            .with("V", "figure-cylinder-volume", volume)
            .with("ρ₅₀", "figure-liquid-density-warm", self.warm)
            .with("ρ₆₀", "figure-liquid-density-hot", self.hot)
            .from(SourceId::UnModelRegulations);
        let when_hot = from_equations(when_hot, refrigerant);
        working.push(when_hot.gives("m₂", "figure-most-contents", self.when_hot));
        working.push(
            Step::of("step-largest-gross", "{w} = {T} + min({m₁}, {m₂})")
                .with("T", "figure-cylinder-tare", cylinder.tare)
                .with("m₁", "figure-most-contents", self.by_volume)
                .with("m₂", "figure-most-contents", self.when_hot)
                .gives("w", "figure-largest-gross", cylinder.tare + self.largest()),
        );
    }
}
