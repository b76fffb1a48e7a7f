//! The charge: how much refrigerant goes in, where the scale must stop, what cylinders may hold.

mod filling;
mod input;
mod line;
mod recovery;
mod scale;
mod sheet;
mod total;
mod warming;

use serde::Serialize;

use super::problem::{Field, Problems};
use super::reading::filled;
use super::working::Working;
use crate::physics::saturation::Phase;
use crate::quantity::{Length, Temperature, choice};
use crate::tables::refrigerants::{Refrigerant, SafetyClass, Sourced};
use filling::{Bore, Fillings, saturated};
use line::Line;
use scale::Scale;
use sheet::{Sheet, any, limited};

pub use filling::{Contents, USUAL_DEW_TEMPERATURE, USUAL_LIQUID_TEMPERATURE, USUAL_SUPERHEAT};
pub use input::{AccessoryInput, ChargeInput};
pub use line::{LONGEST_LINE, LineBasis, LineCharge};
pub use recovery::{FillReading, FillRule, RecoveryFill, USUAL_FILL_TEMPERATURE};
pub use scale::{ChargingState, ScaleAnswer, ScaleDirection, USUAL_SCALE_UNCERTAINTY};
pub use total::{AccessoryCharge, Arrival, ChargeTotal};
pub use warming::Warming;

/// What [`charge`] finds. Each part is there when its own fields are.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct ChargeAnswer {
    /// The refrigerant, if it is entered.
    pub refrigerant: Option<Refrigerant>,
    /// The line's part, by the plate and from physics.
    pub line: Option<LineCharge>,
    /// What each accessory takes.
    pub accessories: Vec<AccessoryCharge>,
    /// The whole charge and what is still to go in.
    pub charge: Option<ChargeTotal>,
    /// Where the scale must stop and how far it is.
    pub scale: Option<ScaleAnswer>,
    /// How much the recovery cylinder may hold.
    pub recovery: Option<RecoveryFill>,
    /// The charge as carbon dioxide.
    pub warming: Option<Warming>,
    /// What a hose lets into the air when it is taken off.
    pub hose: Option<Contents>,
    /// Whether the refrigerant must leave its cylinder as liquid, or its composition shifts.
    pub charged_as_liquid: Option<Sourced<bool>>,
    /// What the figures rest on and what stands out.
    pub notices: Vec<ChargeNotice>,
    /// What can hurt.
    pub cautions: Vec<ChargeCaution>,
    /// The working.
    pub working: Working,
}

choice! {
    /// What figures of a charge rest on, and what stands out.
    ChargeNotice {
        /// No line was entered: the factory charge is taken as it is.
        LineNotCounted = "line-not-counted",
        /// The plate gives no adder: physics takes its place.
        LineByPhysics = "line-by-physics",
        /// The adder from physics counts the liquid line alone.
        VapourLineNotCounted = "vapour-line-not-counted",
        /// Physics takes the liquid line full of liquid; where the expansion device stands outdoors it is not.
        LiquidLineTakenFull = "liquid-line-taken-full",
        /// Plate and physics differ by more than 30 %: look again at size and unit.
        PlateAndPhysicsApart = "plate-and-physics-apart",
        /// The line is shorter than the factory charge serves, and the plate says nothing of taking any out.
        NoReductionOnPlate = "no-reduction-on-plate",
        /// The cylinder does not hold enough.
        CylinderLacksRefrigerant = "cylinder-lacks-refrigerant",
        /// The scale is coarse for so little: its uncertainty is more than a tenth of it.
        ScaleTooCoarse = "scale-too-coarse",
        /// 80 % of the water's weight would overfill the cylinder with this refrigerant.
        WaterRuleOverfills = "water-rule-overfills",
    }
}

choice! {
    /// What can hurt where refrigerant is handled.
    ChargeCaution {
        /// It burns.
        Burns = "refrigerant-burns",
        /// It is toxic.
        Toxic = "refrigerant-toxic",
        /// Liquid freezes skin and eyes; vapour takes the air's place.
        Freezes = "refrigerant-freezes",
        /// The law of most places forbids letting it out.
        NeverVented = "refrigerant-never-vented",
        /// A zeotrope leaves the cylinder as liquid, throttled into the low side.
        LiquidOnly = "charge-liquid-only",
        /// A cylinder is never filled above 80 %.
        NeverAboveEighty = "cylinder-never-above-eighty",
    }
}

/// How much refrigerant goes in, where must the scale stop, and what may the cylinders hold?
///
/// # Method
/// Charge `m = m₀ + q·(L − L₀) + accessories`, with the plate's adder `q`; physics beside it:
/// `q = π/4·d²·ρ` of a liquid line full of saturated liquid and of a vapour line of superheated
/// vapour. A shorter line takes out only what the plate says. The scale stops at its reading at the
/// start less what goes in. A recovery cylinder takes the lesser of 80 % of its volume as liquid at
/// 25 °C, and 0.95 of the liquid's density at 50 °C but not full at 60 °C. Carbon dioxide: mass times
/// warming potential.
///
/// # Valid for
/// Lines up to 1 000 m, charges up to 10 t; liquid from the data's cold end to 3 K below the critical
/// point, superheat 0 to 40 K; recovery cylinders for refrigerants that are liquid at 60 °C, so not R-744.
///
/// # Errors
/// A field that a part needs and that is missing: no adder for a longer line, no refrigerant for
/// densities, no tare or capacity for a recovery cylinder. A tare above the weight; a cylinder that is
/// heavier than at the start; a size in no table.
///
/// # Examples
/// ```
/// use coldwright::calc::charge::{ChargeInput, charge};
/// use coldwright::quantity::{Length, Mass, Quantity, MassPerLength};
/// let answer = charge(&ChargeInput {
///     plate_charge: Mass::kilograms(2.0).into(),
///     precharged_length: Length::metres(5.0).into(),
///     length: Length::metres(12.0).into(),
///     plate_adder: MassPerLength::read("20 g/m").unwrap().into(),
///     cylinder_start: Mass::kilograms(11.5).into(),
///     ..ChargeInput::default()
/// }).unwrap();
/// let charge = answer.charge.unwrap();
/// assert!((charge.to_add.in_kilograms() - 0.140).abs() < 1e-12);
/// assert!((charge.total.unwrap().in_kilograms() - 2.140).abs() < 1e-12);
/// assert!((answer.scale.unwrap().stop_mark.unwrap().in_kilograms() - 11.36).abs() < 1e-12);
/// ```
///
/// # References
/// Densities: CoolProp 8.0.0 and the equations of state in it. Adder: the plate. Fill: ARI Guideline K
/// (2004), at second hand; UN Model Regulations, packing instruction P200 (3)(c); 49 CFR 173.304(b).
/// Warming potentials: IPCC assessment reports 4, 5, 6.
pub fn charge(input: &ChargeInput) -> Result<ChargeAnswer, Problems> {
    let mut sheet = Sheet::new(input);
    let fillings = Fillings::read(&mut sheet);
    let entered = Line::read(&mut sheet);
    let line = entered.charge(&mut sheet, &fillings);
    let part = entered.part(&mut sheet, line.as_ref());
    let accessories = total::accessories(&mut sheet, &fillings);
    let charge = total::total(&mut sheet, part, &accessories);
    let own = Scale::read(&mut sheet);
    let scale = scale::scale(&mut sheet, own, charge.as_ref());
    let recovery = recovery::recovery(&mut sheet, own);
    let hose = hose(&mut sheet);
    let is_answered = line.is_some() || charge.is_some() || scale.is_some();
    if !is_answered && recovery.is_none() && hose.is_none() {
        sheet.needed();
    }
    sheet.reading.sound()?;
    let refrigerant = sheet.refrigerant;
    let warming = charge.as_ref().zip(refrigerant);
    let warming = warming.map(|(charge, refrigerant)| {
        let mass = charge.total.unwrap_or(charge.to_add);
        warming::warming(refrigerant, mass, &mut sheet.working)
    });
    let is_filled = recovery.is_some() || charge.as_ref().is_some_and(ChargeTotal::takes_out);
    Ok(ChargeAnswer {
        refrigerant,
        line,
        accessories,
        charge,
        scale,
        recovery,
        warming,
        hose,
        charged_as_liquid: refrigerant.map(Refrigerant::charged_as_liquid),
        notices: sheet.notices,
        cautions: cautions(refrigerant, is_filled),
        working: sheet.working,
    })
}

/// Temperature of a hose if none is entered. Common practice, no source.
const USUAL_HOSE_TEMPERATURE: Temperature = Temperature::celsius(25.0);
const LONGEST_HOSE: Length = Length::metres(100.0);
const WIDEST_HOSE: Length = Length::millimetres(100.0);

/// What the hose holds.
fn hose(sheet: &mut Sheet<'_>) -> Option<Contents> {
    let input = sheet.input;
    let is_asked = any(&[filled!(input.hose_bore), filled!(input.hose_length)]);
    if is_asked {
        sheet.needed();
    }
    let reading = &mut sheet.reading;
    let none = Length::metres(0.0);
    let bore = &input.hose_bore;
    let bore = limited(reading, "hose_bore", bore, is_asked, (none, WIDEST_HOSE));
    let length = &input.hose_length;
    let length = limited(
        reading,
        "hose_length",
        length,
        is_asked,
        (none, LONGEST_HOSE),
    );
    let phase = reading.optional(Field::named("hose_phase"), &input.hose_phase);
    let field = Field::named("hose_temperature");
    let temperature = reading.optional(field, &input.hose_temperature);
    let temperature = temperature.unwrap_or(USUAL_HOSE_TEMPERATURE);
    let (bore, length, refrigerant) = (bore?, length?, sheet.refrigerant?);
    let phase = phase.unwrap_or(Phase::Liquid);
    let at = ("hose_temperature", temperature);
    let filling = saturated(reading, refrigerant, phase, at)?;
    Some(Bore::measured(bore).filled(refrigerant, filling, Some(length), &mut sheet.working))
}

fn cautions(refrigerant: Option<Refrigerant>, is_filled: bool) -> Vec<ChargeCaution> {
    use ChargeCaution as C;
    let class = refrigerant.map(|refrigerant| refrigerant.safety_class().figure);
    let as_liquid = refrigerant.is_some_and(|refrigerant| refrigerant.charged_as_liquid().figure);
    let burns = matches!(
        class,
        Some(SafetyClass::A2L | SafetyClass::A3 | SafetyClass::B2L)
    );
    let all = [
        (C::Burns, burns),
        (C::Toxic, matches!(class, Some(SafetyClass::B2L))),
        (C::LiquidOnly, as_liquid),
        (C::NeverAboveEighty, is_filled),
        (C::Freezes, true),
        (C::NeverVented, true),
    ];
    let held = all.into_iter().filter(|(_, holds)| *holds);
    held.map(|(caution, _)| caution).collect()
}
