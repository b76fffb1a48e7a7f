//! Saturated liquid and saturated vapour.

use super::limits::{into_range, scaled_theta};
use super::{Line, temperature};
use crate::physics::{Beyond, chebyshev};
use crate::quantity::choice;
use crate::quantity::{
    AbsolutePressure, Density, DynamicViscosity, SpecificEnthalpy, SpecificHeatCapacity,
    Temperature,
};
use crate::tables::fluids::{Expansions, expansions};
use crate::tables::refrigerants::Refrigerant;

choice! {
    /// Which of the two saturated phases: liquid lies on the bubble line, vapour on the dew line.
    Phase {
        /// Saturated liquid.
        Liquid = "liquid",
        /// Saturated vapour.
        Vapour = "vapour",
    }
}

/// Density of a saturated phase at its temperature.
///
/// # Errors
/// [`Beyond`] on `Temperature`.
///
/// # Examples
/// ```
/// use coldwright::physics::saturation::{self, Phase};
/// use coldwright::quantity::Temperature;
/// use coldwright::tables::refrigerants::Refrigerant;
/// let liquid = saturation::density(Refrigerant::R410A, Phase::Liquid, Temperature::celsius(24.0));
/// // 1063.9 kg/m³ in the source.
/// assert!((liquid.unwrap().in_kilograms_per_cubic_metre() / 1063.9 - 1.0).abs() < 2e-3);
/// ```
///
/// # References
/// Figure in the example: US Department of Energy, EnergyPlus property data.
pub fn density(
    refrigerant: Refrigerant,
    phase: Phase,
    temperature: Temperature,
) -> Result<Density, Beyond> {
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, temperature)?;
    Ok(Density::kilograms_per_cubic_metre(match phase {
        Phase::Liquid => chebyshev::sum(fluid.liquid_density, at),
        Phase::Vapour => vapour_density(fluid, at),
    }))
}

/// Enthalpy of a saturated phase at its temperature; 200 kJ/kg for saturated liquid at 0 °C.
///
/// # Errors
/// [`Beyond`] on `Temperature`.
pub fn enthalpy(
    refrigerant: Refrigerant,
    phase: Phase,
    temperature: Temperature,
) -> Result<SpecificEnthalpy, Beyond> {
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, temperature)?;
    Ok(SpecificEnthalpy::joules_per_kilogram(match phase {
        Phase::Liquid => chebyshev::sum(fluid.liquid_enthalpy, at),
        Phase::Vapour => vapour_enthalpy(fluid, at),
    }))
}

/// Heat that evaporates a kilogram at constant pressure, from the bubble to the dew line.
///
/// # Errors
/// [`Beyond`] on `Pressure`, if either line does not reach it.
///
/// # Examples
/// ```
/// use coldwright::physics::saturation;
/// use coldwright::quantity::AbsolutePressure;
/// use coldwright::tables::refrigerants::Refrigerant;
/// let latent = saturation::latent_heat(Refrigerant::R134a, AbsolutePressure::pascals(5e5)).unwrap();
/// assert!((latent.in_joules_per_kilogram() / 185_970.0 - 1.0).abs() < 1e-4);
/// ```
///
/// # References
/// Figure in the example: Tillner-Roth and Baehr (1994), by CoolProp 8.0.0.
pub fn latent_heat(
    refrigerant: Refrigerant,
    pressure: AbsolutePressure,
) -> Result<SpecificEnthalpy, Beyond> {
    let dew = temperature(refrigerant, Line::Dew, pressure)?;
    let bubble = temperature(refrigerant, Line::Bubble, pressure)?;
    let vapour = enthalpy(refrigerant, Phase::Vapour, into_range(refrigerant, dew))?;
    Ok(vapour - enthalpy(refrigerant, Phase::Liquid, into_range(refrigerant, bubble))?)
}

/// Isobaric heat capacity of a saturated phase at its temperature.
///
/// # Errors
/// [`Beyond`] on `Temperature`.
///
/// # Examples
/// ```
/// use coldwright::physics::saturation::{self, Phase};
/// use coldwright::quantity::Temperature;
/// use coldwright::tables::refrigerants::Refrigerant;
/// let at = Temperature::celsius(25.0);
/// let capacity = saturation::heat_capacity(Refrigerant::R134a, Phase::Liquid, at).unwrap();
/// assert!((capacity.in_joules_per_kilogram_kelvin() / 1424.6 - 1.0).abs() < 1e-3);
/// ```
///
/// # References
/// Figure in the example: Tillner-Roth and Baehr (1994), by CoolProp 8.0.0.
pub fn heat_capacity(
    refrigerant: Refrigerant,
    phase: Phase,
    temperature: Temperature,
) -> Result<SpecificHeatCapacity, Beyond> {
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, temperature)?;
    let coefficients = match phase {
        Phase::Liquid => fluid.liquid_heat_capacity,
        Phase::Vapour => fluid.vapour_heat_capacity,
    };
    let theta_squared = 1.0 - temperature.in_kelvins() / fluid.critical_temperature;
    Ok(SpecificHeatCapacity::joules_per_kilogram_kelvin(
        chebyshev::sum(coefficients, at) / theta_squared,
    ))
}

/// Viscosity of a saturated phase at its temperature.
///
/// For R-448A, R-449A, R-452B, R-454B and R-513A it is mixed from the pure components: liquid by mole
/// fractions of the logarithms (Arrhenius), within about 10 %, at the cold end up to 22 %; vapour by
/// Wilke (1950), within about 9 %. For the rest it is the library's, within about 5 %.
///
/// # Errors
/// [`Beyond`] on `Temperature`.
///
/// # Examples
/// ```
/// use coldwright::physics::saturation::{self, Phase};
/// use coldwright::quantity::Temperature;
/// use coldwright::tables::refrigerants::Refrigerant;
/// let at = Temperature::celsius(25.0);
/// let viscosity = saturation::viscosity(Refrigerant::R134a, Phase::Liquid, at).unwrap();
/// assert!((viscosity.in_pascal_seconds() / 194.9e-6 - 1.0).abs() < 1e-3);
/// ```
///
/// # References
/// Figure in the example: Huber, Laesecke and Perkins (2003), by CoolProp 8.0.0.
pub fn viscosity(
    refrigerant: Refrigerant,
    phase: Phase,
    temperature: Temperature,
) -> Result<DynamicViscosity, Beyond> {
    let fluid = expansions(refrigerant);
    let at = scaled_theta(fluid, temperature)?;
    let coefficients = match phase {
        Phase::Liquid => fluid.ln_liquid_viscosity,
        Phase::Vapour => fluid.ln_vapour_viscosity,
    };
    Ok(DynamicViscosity::pascal_seconds(libm::exp(chebyshev::sum(
        coefficients,
        at,
    ))))
}

pub(in crate::physics) fn vapour_density(fluid: &Expansions, scaled_theta: f64) -> f64 {
    libm::exp(chebyshev::sum(fluid.ln_vapour_density, scaled_theta))
}

pub(in crate::physics) fn vapour_enthalpy(fluid: &Expansions, scaled_theta: f64) -> f64 {
    chebyshev::sum(fluid.vapour_enthalpy, scaled_theta)
}
