//! The two lines between the units: what they hold back, and whether liquid, gas and oil arrive.

mod answer;
mod duty;
mod flow;
mod input;
mod line;
mod oil_return;
mod plate;
mod running;

pub use answer::{
    Duty, JoinedPorts, LineFlow, LineSetAnswer, OilReturn, PlateLimits, RefrigerantLine,
};
pub use input::{
    CoolingDutyInput, HeatingDutyInput, HigherUnit, LineSetInput, PortTubeInput,
    RefrigerantLineInput,
};
pub use line::BORES;
pub use running::{CAPACITIES, DISCHARGE_SUPERHEATS, SUBCOOLINGS, SUPERHEATS};

use super::problem::{Field, Misfit, Problem, Problems};
use super::reading::{Reading, optional, required};
use crate::quantity::{Density, GaugePressure, Length, Ratio, Temperature, TemperatureDifference};
use crate::tables::refrigerants::Refrigerant;
use crate::tables::stress;
use duty::duty;
use line::Line;
use running::{Running, Way};

/// Longest lift that is answered for.
pub const LIFTS: (Length, Length) = (Length::metres(0.0), Length::metres(300.0));
/// Least capacity over the full one.
pub const LEAST_CAPACITIES: (Ratio, Ratio) = (Ratio::of_one(0.01), Ratio::of_one(1.0));
/// Densities of compressor oils, with room for the refrigerant that is dissolved in them.
pub const OIL_DENSITIES: (Density, Density) = (
    Density::kilograms_per_cubic_metre(700.0),
    Density::kilograms_per_cubic_metre(1300.0),
);
/// Density of the oil if none is entered. Common practice, from memory: polyolester at about 15 °C;
/// mineral oil is a twentieth lighter.
pub const USUAL_OIL_DENSITY: Density = Density::kilograms_per_cubic_metre(950.0);
/// Temperature of the tube if none is entered: 150 °F, which the lines of split systems are rated
/// for by common practice.
pub const USUAL_TUBE_TEMPERATURE: Temperature = Temperature::fahrenheit(150.0);
/// Superheat of the discharge gas in heating if none is entered. Common practice, no source: 20 K
/// with R-290 or R-1234yf, 40 K and more with R-32.
pub const USUAL_DISCHARGE_SUPERHEAT: TemperatureDifference = TemperatureDifference::kelvins(30.0);

/// Do these two lines carry what this unit moves, as liquid where it must be liquid, with the oil?
///
/// # Method
/// Mass flow from the capacity: cooling over `h(gas) − h(liquid)`, gas leaving the evaporator with
/// its superheat; heating over `h(discharge gas) − h(liquid)`. The evaporating temperature is that of
/// the dew line, the condensing temperature that of the bubble line. Friction by Darcy and Weisbach at
/// the state in which each line begins to count: liquid of its own temperature, suction gas as it
/// leaves the evaporator, discharge gas at condensing pressure; fittings as bores of straight tube. As
/// kelvins, the drop is the shift of the saturation temperature. The liquid is still liquid at the
/// expansion device if its bubble temperature, after friction and climb, stays above its own. Oil is
/// carried up a riser from `v = 0.723·√(g·D·(ρ_oil − ρ)/ρ)` on. At constant displacement the
/// compressor moves mass in step with the density at its inlet, gas throttled by the drop; the higher
/// pressure ratio's loss of volumetric efficiency and the gas column's weight are left out.
///
/// # Valid for
/// One phase in each line: the expansion device at the end of the liquid line, no heat taken up or
/// given off on the way. Gas that loses a tenth of its pressure by friction is told within 5 %, more than
/// 0.4 of it is refused. Superheat 0 to 30 K, discharge superheat and subcooling 0 to 40 K, bore 1 mm
/// to 200 mm, lift to 300 m, condensing below the critical point.
///
/// # Errors
/// A missing refrigerant; neither cooling nor heating; a field outside these limits; a tube in no
/// table; evaporating not below condensing; a line too narrow for the flow, or a climb too high for
/// the pressure.
///
/// # Examples
/// ```
/// use coldwright::calc::line_set::{
///     CoolingDutyInput, LineSetInput, RefrigerantLineInput, line_set,
/// };
/// use coldwright::quantity::{Length, Power, Temperature, TemperatureDifference};
/// use coldwright::tables::refrigerants::Refrigerant;
/// let answer = line_set(&LineSetInput {
///     refrigerant: Refrigerant::R22.into(),
///     cooling: CoolingDutyInput {
///         capacity: Power::watts(105e3).into(),
///         evaporating_temperature: Temperature::celsius(4.0).into(),
///         condensing_temperature: Temperature::celsius(40.0).into(),
///         superheat: TemperatureDifference::kelvins(0.0).into(),
///         subcooling: TemperatureDifference::kelvins(0.0).into(),
///     }.into(),
///     suction_line: RefrigerantLineInput {
///         bore: Length::inches(1.985).into(),
///         length: Length::metres(21.0).into(),
///         ..RefrigerantLineInput::default()
///     }.into(),
///     ..LineSetInput::default()
/// }).unwrap();
/// let suction = answer.cooling.unwrap().suction_line.unwrap();
/// // 0.63 K in the handbook, for 54 mm tube and 21 m with its elbows.
/// assert!((suction.saturation_drop.unwrap().in_kelvins() - 0.63).abs() < 0.04);
/// ```
///
/// # References
/// Colebrook (1939); lengths of fittings from memory; Jacobs, Scheideman, Kazem and Macken (1976) and
/// Wallis (1969) for the riser, from memory; ASHRAE Handbook, Refrigeration (2010), chapter 1, table 1
/// for gas velocities. Figure in the example: its suction line example, from memory.
pub fn line_set(input: &LineSetInput) -> Result<LineSetAnswer, Problems> {
    let mut reading = Reading::default();
    let refrigerant = required!(reading, input.refrigerant);
    let cooling = reading.part(Field::named("cooling"), &input.cooling, |reading, duty| {
        Running::cooling(reading, refrigerant, duty)
    });
    let heating = reading.part(Field::named("heating"), &input.heating, |reading, duty| {
        Running::heating(reading, refrigerant, duty)
    });
    if input.cooling.given().is_none() && input.heating.given().is_none() && reading.is_sound() {
        reading.exactly(1, &[("cooling", false), ("heating", false)]);
    }
    let site = Site::read(input, &mut reading);
    let liquid_line = reading.part(Field::named("liquid_line"), &input.liquid_line, Line::read);
    let suction_line = reading.part(
        Field::named("suction_line"),
        &input.suction_line,
        Line::read,
    );
    let limits = plate::limits(input, &mut reading, &liquid_line, &suction_line, site.lift);
    reading.sound()?;
    let Some(refrigerant) = refrigerant else {
        return Err(reading.take());
    };
    let lines = Lines {
        refrigerant,
        liquid: liquid_line.as_ref(),
        suction: suction_line.as_ref(),
        site: &site,
    };
    let hottest_gas = heating.as_ref().map(|running| running.gas.temperature);
    let mut of_line = |line: Option<&Line>, gas| {
        let found = line?.answer(site.metal(gas), site.design_pressure);
        reading.accept(found)
    };
    let lines_found = (
        of_line(lines.liquid, None),
        of_line(lines.suction, hottest_gas),
    );
    let mut of_duty = |running: Option<Running>| reading.accept(duty(&running?, &lines));
    let (cooling, heating) = (of_duty(cooling), of_duty(heating));
    reading.sound()?;
    Ok(LineSetAnswer {
        refrigerant,
        liquid_line: lines_found.0,
        suction_line: lines_found.1,
        cooling,
        heating,
        // In heating the liquid flows to the outdoor unit.
        rise: site.liquid_climb(Way::Heating),
        limits,
        sources: refrigerant.equations(),
    })
}

/// Both lines, and what holds for either way of running.
struct Lines<'a> {
    refrigerant: Refrigerant,
    liquid: Option<&'a Line>,
    suction: Option<&'a Line>,
    site: &'a Site,
}

/// What the place and the plate say.
struct Site {
    lift: Option<Length>,
    higher_unit: Option<HigherUnit>,
    least_capacity: Option<Ratio>,
    oil_density: Option<Density>,
    tube_temperature: Option<Temperature>,
    design_pressure: Option<GaugePressure>,
}

impl Site {
    fn read(input: &LineSetInput, reading: &mut Reading) -> Self {
        let lift = optional!(reading, input.lift, LIFTS);
        let least_capacity = optional!(reading, input.least_capacity, LEAST_CAPACITIES);
        let oil_density = optional!(reading, input.oil_density, OIL_DENSITIES);
        let tube_temperature = optional!(
            reading,
            input.tube_temperature,
            (stress::COLDEST, stress::HOTTEST)
        );
        Self {
            lift,
            higher_unit: optional!(reading, input.higher_unit),
            least_capacity,
            oil_density,
            tube_temperature,
            design_pressure: optional!(reading, input.design_pressure),
        }
    }

    /// Temperature of a line's metal: as entered, else the usual one, or that of hotter gas in it.
    fn metal(&self, gas: Option<Temperature>) -> Temperature {
        self.tube_temperature.unwrap_or(match gas {
            Some(gas) if gas > USUAL_TUBE_TEMPERATURE => gas,
            _ => USUAL_TUBE_TEMPERATURE,
        })
    }

    /// How far the liquid climbs on its way, negative downwards; known if the lift is, and, unless
    /// it is zero, which unit stands higher.
    fn liquid_climb(&self, way: Way) -> Option<Length> {
        let lift = self.lift?;
        if lift <= LIFTS.0 {
            return Some(lift);
        }
        let to_the_higher = match way {
            Way::Cooling => HigherUnit::Indoor,
            Way::Heating => HigherUnit::Outdoor,
        };
        Some(if self.higher_unit? == to_the_higher {
            lift
        } else {
            lift * -1.0
        })
    }
}

/// A line or a climb with which a duty cannot be.
fn impossible(field: Field, way: Way, with: &'static str) -> Problem {
    let with = Field::named(way.field()).with(&Field::named(with));
    Problem::misfit(field, Misfit::Impossible { with })
}
