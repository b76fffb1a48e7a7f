//! What fills lines, accessories and hoses: how dense it is.

use serde::Serialize;

use super::super::problem::{Field, Misfit, Problem};
use super::super::reading::{Reading, optional};
use super::super::refusal::Origin;
use super::super::saturation_point::from_equations;
use super::super::vapour::MOST_SUPERHEAT;
use super::super::working::{Step, Working};
use super::sheet::Sheet;
use crate::physics::saturation::{Phase, density};
use crate::physics::{Beyond, vapour};
use crate::quantity::{
    Density, Length, Mass, MassPerLength, QuantityKind, Temperature, TemperatureDifference,
};
use crate::tables::SourceId;
use crate::tables::refrigerants::Refrigerant;
use crate::tables::tube::{size_names, sizes_of};

/// Temperature of the liquid line if none is entered: a condenser on a warm day. Common practice, no source.
pub const USUAL_LIQUID_TEMPERATURE: Temperature = Temperature::celsius(40.0);
/// Dew temperature in the vapour line if none is entered. Common practice, no source.
pub const USUAL_DEW_TEMPERATURE: Temperature = Temperature::celsius(10.0);
/// Superheat in the vapour line if none is entered. Common practice, no source.
pub const USUAL_SUPERHEAT: TemperatureDifference = TemperatureDifference::kelvins(8.0);

/// Narrowest and widest bore that refrigerant is charged through.
const BORES: (Length, Length) = (Length::millimetres(0.5), Length::millimetres(300.0));

/// What a line or a hose holds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Contents {
    /// Inside diameter.
    pub bore: Length,
    /// What is in it.
    pub phase: Phase,
    /// How warm that is.
    pub temperature: Temperature,
    /// Its density.
    pub density: Density,
    /// Mass in each length.
    pub mass_per_length: MassPerLength,
    /// Mass in the whole length, if that is entered.
    pub mass: Option<Mass>,
}

/// A phase at its temperature, with the field that says how warm it is.
#[derive(Clone, Copy)]
pub(super) struct Filling {
    phase: Phase,
    temperature: Temperature,
    density: Density,
}

/// The states of both lines.
pub(super) struct Fillings {
    liquid_temperature: Temperature,
    dew_temperature: Temperature,
    superheat: TemperatureDifference,
}

impl Fillings {
    pub fn read(sheet: &mut Sheet<'_>) -> Self {
        let (input, reading) = (sheet.input, &mut sheet.reading);
        let liquid = optional!(reading, input.liquid_temperature);
        let dew = optional!(reading, input.vapour_dew_temperature);
        let superheat = optional!(reading, input.superheat);
        let none = TemperatureDifference::kelvins(0.0);
        let limits = (none, MOST_SUPERHEAT);
        reading.within(Field::named("superheat"), superheat, limits);
        let superheat = superheat.filter(|given| (none..=MOST_SUPERHEAT).contains(given));
        Self {
            liquid_temperature: liquid.unwrap_or(USUAL_LIQUID_TEMPERATURE),
            dew_temperature: dew.unwrap_or(USUAL_DEW_TEMPERATURE),
            superheat: superheat.unwrap_or(USUAL_SUPERHEAT),
        }
    }

    /// What fills the line of a phase.
    pub fn of(
        &self,
        reading: &mut Reading,
        refrigerant: Refrigerant,
        phase: Phase,
    ) -> Option<Filling> {
        match phase {
            Phase::Liquid => {
                let at = self.liquid_temperature;
                saturated(reading, refrigerant, phase, ("liquid_temperature", at))
            }
            Phase::Vapour => {
                let state = vapour::superheated(refrigerant, self.dew_temperature, self.superheat);
                let state = accepted(reading, "vapour_dew_temperature", state)?;
                Some(Filling {
                    phase,
                    temperature: state.temperature,
                    density: state.density,
                })
            }
        }
    }
}

impl Filling {
    pub fn density(self) -> Density {
        self.density
    }
}

/// A saturated phase at the temperature that a field gives.
pub(super) fn saturated(
    reading: &mut Reading,
    refrigerant: Refrigerant,
    phase: Phase,
    (field, temperature): (&'static str, Temperature),
) -> Option<Filling> {
    let density = density(refrigerant, phase, temperature);
    Some(Filling {
        phase,
        temperature,
        density: accepted(reading, field, density)?,
    })
}

fn accepted<T>(reading: &mut Reading, field: &'static str, found: Result<T, Beyond>) -> Option<T> {
    let origin = Origin::of(field, QuantityKind::Temperature);
    reading.accept(found.map_err(|beyond| origin.refused(beyond, "refrigerant")))
}

/// A bore and the table it comes from.
#[derive(Clone, Copy)]
pub(super) struct Bore {
    diameter: Length,
    source: Option<SourceId>,
}

impl Bore {
    /// The bore entered, or that of the size entered; at most one of both.
    pub fn read(
        reading: &mut Reading,
        (tube_field, tube): (&'static str, Option<Length>),
        (bore_field, bore): (&'static str, Option<Length>),
    ) -> Option<Self> {
        reading.within(Field::named(bore_field), bore, BORES);
        if tube.is_some() && bore.is_some() {
            let with = Field::named(tube_field);
            reading.problem(Problem::misfit(
                Field::named(bore_field),
                Misfit::Conflict { with },
            ));
        }
        let Some(tube) = tube else {
            return bore.map(Self::measured);
        };
        let size = sizes_of(tube, None).next().ok_or_else(|| {
            let accepted = size_names();
            Problem::misfit(Field::named(tube_field), Misfit::NotInTable { accepted })
        });
        let size = reading.accept(size)?;
        Some(Self {
            diameter: size.outside_diameter() - size.wall() * 2.0,
            source: Some(size.source),
        })
    }

    /// A bore as measured.
    pub fn measured(diameter: Length) -> Self {
        Self {
            diameter,
            source: None,
        }
    }

    /// What it holds.
    pub fn filled(
        self,
        refrigerant: Refrigerant,
        filling: Filling,
        length: Option<Length>,
        working: &mut Working,
    ) -> Contents {
        let mass_per_length = filling.density * self.diameter.circle();
        let (title, formula, symbol) = match filling.phase {
            Phase::Liquid => ("step-liquid-contents", "{q′} = {ρ}·π/4·{d}²", "q′"),
            Phase::Vapour => ("step-vapour-contents", "{q″} = {ρ}·π/4·{d}²", "q″"),
        };
        let step = Step::of(title, formula)
            .with("ρ", "figure-density", filling.density)
            .with("d", "figure-bore", self.diameter);
        let step = self.source.into_iter().fold(step, |step, id| step.from(id));
        working.push(from_equations(step, refrigerant).gives(
            symbol,
            "figure-contents-per-length",
            mass_per_length,
        ));
        Contents {
            bore: self.diameter,
            phase: filling.phase,
            temperature: filling.temperature,
            density: filling.density,
            mass_per_length,
            mass: length.map(|length| mass_per_length * length),
        }
    }
}
