//! How thick the insulation of a cold line must be so that no water condenses on it.

mod conditions;
mod facts;
mod layer;

use serde::Serialize;

use super::ambient::{Ambient, air_steps};
use super::input::input;
use super::problem::{Field, Problems};
use super::reading::{Reading, optional};
use super::verdict::Verdict;
use super::working::{Step, Working};
use crate::physics::tube_heat::Tube;
use crate::quantity::{
    AbsolutePressure, Altitude, Entry, HeatTransferCoefficient, Length, Ratio, Temperature,
    TemperatureDifference, ThermalConductivity, Velocity, choice,
};
use crate::tables::refrigerants::Sourced;
use conditions::Conditions;
pub use layer::Layer;

input! {
    /// What [`insulation`] asks for.
    pub struct InsulationInput {
        /// Outside diameter of the bare tube, required: a size such as "5/8" or "16 mm".
        pub tube: Entry<Length>,
        /// Temperature of the line, required: the coldest that its refrigerant gets, "41 °F".
        pub line_temperature: Entry<Temperature>,
        /// Temperature of the air around, required: "86 °F".
        pub dry_bulb: Entry<Temperature>,
        /// Vapour pressure of that air over its saturation: "80 %"; exactly one of this, `wetBulb` and `dewPoint`.
        pub relative_humidity: Entry<Ratio>,
        /// What a wetted thermometer shows in that air.
        pub wet_bulb: Entry<Temperature>,
        /// Where the moisture of that air begins to condense.
        pub dew_point: Entry<Temperature>,
        /// Altitude above sea level; sea level if neither it nor `barometer` is entered.
        pub altitude: Entry<Altitude>,
        /// Pressure of the air as a barometer at the place shows it, instead of the altitude.
        pub barometer: Entry<AbsolutePressure>,
        /// Thermal conductivity of the insulation, from its data sheet; 0.040 W/(m·K) if nothing is entered.
        pub conductivity: Entry<ThermalConductivity>,
        /// Emissivity of the outside; 0.9 if nothing is entered: foam, tape, paint. A bright metal jacket has 0.1.
        pub emissivity: Entry<Ratio>,
        /// Speed of the air across the line; still air if nothing is entered, which needs most insulation.
        pub air_speed: Entry<Velocity>,
        /// Heat transfer coefficient at the outside, radiation included, instead of emissivity and air speed; worked out from them if nothing is entered.
        pub surface_coefficient: Entry<HeatTransferCoefficient>,
        /// How much warmer than the dew point the outside is to stay; 0 K if nothing is entered.
        pub dew_point_margin: Entry<TemperatureDifference>,
        /// Thickness of the insulation that is there or to be bought, one wall, to judge.
        pub thickness: Entry<Length>,
        /// How far off the temperatures may be; ±0.5 K if nothing is entered.
        pub thermometer_uncertainty: Entry<TemperatureDifference>,
        /// How far off the relative humidity may be, in points of it; ±3 % if nothing is entered.
        pub humidity_uncertainty: Entry<Ratio>,
    }
}

/// What [`insulation`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct InsulationAnswer {
    /// Pressure of the air.
    pub ambient: Ambient,
    /// Name of the tube's size; absent if it is in no table.
    pub name: Option<&'static str>,
    /// Outside diameter of the bare tube.
    pub outside_diameter: Length,
    /// Dew point of the air.
    pub dew_point: Temperature,
    /// Relative humidity of the air.
    pub relative_humidity: Ratio,
    /// How cold the outside may get: the dew point and the margin asked for.
    pub least_surface_temperature: Temperature,
    /// Whether any insulation is needed against condensation.
    pub is_needed: bool,
    /// Least thickness, one wall; 0 if none is needed.
    pub thickness: Length,
    /// The next thickness that is commonly sold; absent if none is needed or none is so thick.
    pub common_thickness: Option<Length>,
    /// The least thickness commonly sold that is in band, further above the dew point than the instruments and the
    /// coefficient may err; absent if none is needed or none is.
    pub sure_thickness: Option<Length>,
    /// The line with the least thickness: its outside is just as warm as it must be.
    pub least: Layer,
    /// The line without insulation.
    pub bare: Layer,
    /// The line with each thickness that is commonly sold.
    pub common: Vec<Layer>,
    /// The line with the thickness entered.
    pub entered: Option<Layer>,
    /// Thermal conductivity taken, and where it comes from.
    pub conductivity: Sourced<ThermalConductivity>,
    /// Where the coefficient at the outside comes from.
    pub coefficient_basis: CoefficientBasis,
    /// The working.
    pub working: Working,
}

choice! {
    /// Where the heat transfer coefficient at the outside comes from.
    CoefficientBasis {
        /// It was entered.
        Entered = "coefficient-entered",
        /// Natural convection of still air, and radiation.
        StillAir = "coefficient-still-air",
        /// Air that blows across, and radiation.
        MovingAir = "coefficient-moving-air",
    }
}

/// Thickest insulation that is answered for.
pub const THICKEST: Length = Length::metres(0.2);

/// Thicknesses of tube insulation that are commonly sold, in millimetres. Common practice, no source.
const COMMON_THICKNESSES: [f64; 6] = [6.0, 9.0, 13.0, 19.0, 25.0, 32.0];

/// How thick must the insulation of this cold line be so that no water condenses on it?
///
/// # Method
/// Heat that reaches the outside equals heat that the insulation lets through:
/// `h·D₂·ln(D₂/D)·(t - t_s) = 2·k·(t_s - t_l)`, solved for `D₂` with the outside at the dew point (and
/// the margin), for `t_s` with a thickness. The coefficient `h` is worked out for the diameter and
/// temperatures at hand, radiation folded in, unless it is entered. The tube's wall and the fluid in it
/// are taken to resist no heat, and steps, joints and hangers not to be there.
///
/// # Valid for
/// Horizontal lines of 3 mm to 1 m, -100 to 100 °C, walls to 200 mm. Air as in
/// [`moist_air`](super::moist_air::moist_air), with speeds to 30 m/s.
///
/// # Errors
/// A fact missing; not exactly one fact about the moisture; a figure outside these limits; a coefficient beside an
/// emissivity or air speed; air so moist, or a margin so large, that no thickness will do.
///
/// # Examples
/// ```
/// use coldwright::calc::insulation::{InsulationInput, insulation};
/// use coldwright::quantity::{HeatTransferCoefficient, Length, Quantity, Ratio, Temperature, ThermalConductivity};
/// let answer = insulation(&InsulationInput {
///     tube: Length::millimetres(15.875).into(),
///     line_temperature: Temperature::celsius(5.0).into(),
///     dry_bulb: Temperature::celsius(30.0).into(),
///     relative_humidity: Ratio::of_one(0.8).into(),
///     conductivity: ThermalConductivity::watts_per_metre_kelvin(0.036).into(),
///     surface_coefficient: HeatTransferCoefficient::watts_per_square_metre_kelvin(9.0).into(),
///     ..InsulationInput::default()
/// }).unwrap();
/// // h·D₂·ln(D₂/D)·(t - t_s) = 2·k·(t_s - t_l) at the dew point, 26.2 °C.
/// let (outside, dew) = (answer.least.outside_diameter.in_metres(), answer.dew_point.in_kelvins());
/// let reaches = 9.0 * outside * (outside / 0.015_875).ln() * (303.15 - dew);
/// assert!((reaches / (2.0 * 0.036 * (dew - 278.15)) - 1.0).abs() < 1e-9);
/// ```
///
/// # References
/// Conduction in a cylinder: any textbook of heat transfer. Coefficient: Churchill and Chu (1975), Churchill and
/// Bernstein (1977). Conductivity: the most that ASTM C534 allows at 75 °F, from memory.
pub fn insulation(input: &InsulationInput) -> Result<InsulationAnswer, Problems> {
    let mut reading = Reading::default();
    let thickness = optional!(reading, input.thickness);
    let none = Length::metres(0.0);
    reading.within(Field::named("thickness"), thickness, (none, THICKEST));
    let conditions = Conditions::read(input, &mut reading);
    reading.sound()?;
    let Some(conditions) = conditions else {
        return Err(reading.take());
    };
    let is_needed = conditions.is_cold();
    let least = if is_needed {
        let thickest = conditions.tube().surface_temperature(THICKEST);
        if conditions.least_surface() > thickest {
            return Err(vec![conditions.too_moist(thickest)]);
        }
        conditions
            .tube()
            .thickness(conditions.least_surface(), THICKEST)
    } else {
        none
    };
    Ok(answer(&conditions, is_needed, least, thickness, input))
}

fn answer(
    conditions: &Conditions,
    is_needed: bool,
    thickness: Length,
    entered: Option<Length>,
    input: &InsulationInput,
) -> InsulationAnswer {
    let common: Vec<_> = COMMON_THICKNESSES
        .iter()
        .map(|millimetres| conditions.layer(Length::millimetres(*millimetres)))
        .collect();
    let next = common.iter().find(|layer| layer.thickness >= thickness);
    let common_thickness = next.filter(|_| is_needed).map(|layer| layer.thickness);
    let sure = common
        .iter()
        .find(|layer| layer.against_dew_point.verdict == Verdict::InBand);
    let sure_thickness = sure.filter(|_| is_needed).map(|layer| layer.thickness);
    let least = conditions.layer(thickness);
    let entered = entered.map(|entered| conditions.layer(entered));
    let mut working = air_steps(&input.altitude, conditions.facts.ambient.pressure);
    working.push(conditions.dew_point_step());
    if is_needed {
        working.extend(conditions.coefficient_step(&least));
        working.push(thickness_step(conditions.tube(), &least));
    }
    if let Some(entered) = &entered {
        working.extend(entered.steps(conditions.tube()));
    }
    InsulationAnswer {
        ambient: conditions.facts.ambient,
        name: conditions.facts.name,
        outside_diameter: conditions.tube().diameter,
        dew_point: conditions.air().dew_point,
        relative_humidity: conditions.air().relative_humidity,
        least_surface_temperature: conditions.least_surface(),
        is_needed,
        thickness,
        common_thickness,
        sure_thickness,
        bare: conditions.layer(Length::metres(0.0)),
        least,
        common,
        entered,
        conductivity: conditions.facts.conductivity,
        coefficient_basis: conditions.facts.coefficient_basis,
        working,
    }
}

fn thickness_step(tube: &Tube, least: &Layer) -> Step {
    Step::of(
        "step-insulation-thickness",
        "{h}·{D₂}·ln({D₂}/{D})·({t} − {t_s}) = 2·{k}·({t_s} − {t_l}), {D₂} = {D} + 2·{s}",
    )
    .with("D", "figure-outside-diameter", tube.diameter)
    .with("D₂", "figure-insulated-diameter", least.outside_diameter)
    .with("h", "figure-surface-coefficient", least.surface_coefficient)
    .with("k", "figure-conductivity", tube.conductivity)
    .with("t", "figure-dry-bulb", tube.surroundings.air)
    .with(
        "t_s",
        "figure-least-surface-temperature",
        least.surface_temperature,
    )
    .with("t_l", "figure-line-temperature", tube.temperature)
    .gives("s", "figure-insulation-thickness", least.thickness)
}
