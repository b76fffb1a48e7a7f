//! Heat from the air through the insulation of a tube: conduction in a cylinder, convection and
//! radiation at its outside.

use super::root::turning_point;
use crate::quantity::{
    AbsolutePressure, HeatFlowPerLength, HeatTransferCoefficient, Length, Ratio, Temperature,
    ThermalConductivity, Velocity,
};

/// Stefan-Boltzmann constant, W/(m²·K⁴). Exact, from the SI of 2019.
const STEFAN_BOLTZMANN: f64 = 5.670_374_419e-8;
/// Standard acceleration of free fall, m/s².
const GRAVITY: f64 = crate::quantity::factors::STANDARD_GRAVITY;
/// Gas constant of dry air, J/(kg·K). Source: U.S. Standard Atmosphere (1976).
const AIR_GAS_CONSTANT: f64 = 287.053;
/// Isobaric heat capacity of air, J/(kg·K): 1.4/0.4 gas constants.
const AIR_HEAT_CAPACITY: f64 = 3.5 * AIR_GAS_CONSTANT;

/// What the outside of a tube meets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surroundings {
    /// Temperature of the air and of the walls around.
    pub air: Temperature,
    /// Pressure of the air.
    pub pressure: AbsolutePressure,
    /// How heat gets from them to the surface.
    pub film: Film,
}

/// How heat gets from the surroundings to a surface.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Film {
    /// As the coefficient says, convection and radiation together.
    Given(HeatTransferCoefficient),
    /// By convection of the air and radiation of what is around.
    Worked {
        /// Of the surface.
        emissivity: Ratio,
        /// Of the air across the tube; none for still air.
        speed: Velocity,
        /// By how much more than the equations say heat is transferred, 1 for no more.
        factor: f64,
    },
}

impl Surroundings {
    /// Heat transfer coefficient at the outside of a horizontal cylinder, radiation folded in.
    ///
    /// # Method
    /// The larger of natural convection and of that of air blown across, with the properties of air
    /// half way between surface and air; and radiation between the surface and black surroundings as
    /// warm as the air.
    ///
    /// # References
    /// See [`natural_nusselt`] and [`crossflow_nusselt`]. Viscosity and conductivity of air:
    /// U.S. Standard Atmosphere (1976), equations 51 and 53, from memory.
    pub fn coefficient(&self, diameter: Length, surface: Temperature) -> HeatTransferCoefficient {
        let (emissivity, speed, factor) = match self.film {
            Film::Given(coefficient) => return coefficient,
            Film::Worked {
                emissivity,
                speed,
                factor,
            } => (emissivity.in_one(), speed.in_metres_per_second(), factor),
        };
        let (air, surface) = (self.air.in_kelvins(), surface.in_kelvins());
        let size = diameter.in_metres();
        let mean = 0.5 * (air + surface);
        let density = self.pressure.in_pascals() / (AIR_GAS_CONSTANT * mean);
        let viscosity = air_viscosity(mean) / density;
        let conductivity = air_conductivity(mean);
        let diffusivity = conductivity / (density * AIR_HEAT_CAPACITY);
        let prandtl = viscosity / diffusivity;
        let rayleigh =
            GRAVITY / mean * (air - surface).abs() * size * size * size / (viscosity * diffusivity);
        let natural = natural_nusselt(rayleigh, prandtl);
        let blown = crossflow_nusselt(speed * size / viscosity, prandtl);
        let convection = natural.max(blown) * conductivity / size;
        let radiation =
            emissivity * STEFAN_BOLTZMANN * (air * air + surface * surface) * (air + surface);
        HeatTransferCoefficient::watts_per_square_metre_kelvin(factor * (convection + radiation))
    }
}

/// Nusselt number of natural convection around a horizontal cylinder.
///
/// # Valid for
/// Rayleigh number to 1e12.
///
/// # Examples
/// ```
/// use coldwright::physics::tube_heat::natural_nusselt;
/// // Example 9.2 of the textbook: Gr 2.63e9, Pr 0.69.
/// assert!((natural_nusselt(2.63e9 * 0.69, 0.69) - 139.134_94).abs() < 1e-4);
/// ```
///
/// # References
/// Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1049. The example: Bergman, Lavine, Incropera and
/// DeWitt, Introduction to Heat Transfer, 6th edition, through the library ht.
pub fn natural_nusselt(rayleigh: f64, prandtl: f64) -> f64 {
    let sixth_root = libm::pow(rayleigh, 1.0 / 6.0);
    let damping = libm::pow(1.0 + libm::pow(0.559 / prandtl, 9.0 / 16.0), 8.0 / 27.0);
    let root = 0.60 + 0.387 * sixth_root / damping;
    root * root
}

/// Nusselt number of a cylinder in air that blows across it.
///
/// # Examples
/// ```
/// use coldwright::physics::tube_heat::crossflow_nusselt;
/// // Example 7.3 of the textbook: Re 6071, Pr 0.7.
/// assert!((crossflow_nusselt(6071.0, 0.7) - 40.637_086).abs() < 1e-5);
/// ```
///
/// # References
/// Churchill and Bernstein, J. Heat Transfer 99 (1977) 300. The example: as for [`natural_nusselt`].
pub fn crossflow_nusselt(reynolds: f64, prandtl: f64) -> f64 {
    let damping = libm::pow(1.0 + libm::pow(0.4 / prandtl, 2.0 / 3.0), 0.25);
    let fast = libm::pow(1.0 + libm::pow(reynolds / 282_000.0, 5.0 / 8.0), 0.8);
    0.3 + 0.62 * reynolds.sqrt() * libm::cbrt(prandtl) / damping * fast
}

/// Dynamic viscosity of air, Pa·s (Sutherland).
fn air_viscosity(kelvins: f64) -> f64 {
    1.458e-6 * kelvins * kelvins.sqrt() / (kelvins + 110.4)
}

/// Thermal conductivity of air, W/(m·K).
fn air_conductivity(kelvins: f64) -> f64 {
    let bent = 245.4 * libm::pow(10.0, -12.0 / kelvins);
    2.646_38e-3 * kelvins * kelvins.sqrt() / (kelvins + bent)
}

/// A tube that is insulated or to be insulated.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tube {
    /// Outside diameter of the bare tube.
    pub diameter: Length,
    /// Temperature of its outside; its wall and what flows in it resist no heat.
    pub temperature: Temperature,
    /// Thermal conductivity of the insulation.
    pub conductivity: ThermalConductivity,
    /// What is around.
    pub surroundings: Surroundings,
}

impl Tube {
    /// Outside diameter with insulation of this thickness.
    pub fn outside(&self, thickness: Length) -> Length {
        self.diameter + thickness * 2.0
    }

    /// Whether more heat reaches a surface of this diameter and temperature than the insulation
    /// under it lets through: `h·D₂·ln(D₂/D)·(t − t_s) > 2·k·(t_s − t_l)`.
    fn gains(&self, outside: Length, surface: Temperature) -> bool {
        let coefficient = self.surroundings.coefficient(outside, surface);
        let reaches = coefficient.in_watts_per_square_metre_kelvin()
            * outside.in_metres()
            * libm::log(outside / self.diameter)
            * (self.surroundings.air - surface).in_kelvins();
        let passes = 2.0
            * self.conductivity.in_watts_per_metre_kelvin()
            * (surface - self.temperature).in_kelvins();
        reaches > passes
    }

    /// Temperature of the outside with insulation of this thickness.
    pub fn surface_temperature(&self, thickness: Length) -> Temperature {
        let (line, air) = (
            self.temperature.in_kelvins(),
            self.surroundings.air.in_kelvins(),
        );
        let outside = self.outside(thickness);
        Temperature::kelvins(turning_point(line.min(air), line.max(air), |kelvins| {
            self.gains(outside, Temperature::kelvins(kelvins))
        }))
    }

    /// The thickness, up to `thickest`, with which the outside of a cold tube is as warm as `surface`.
    pub fn thickness(&self, surface: Temperature, thickest: Length) -> Length {
        Length::metres(turning_point(0.0, thickest.in_metres(), |metres| {
            !self.gains(self.outside(Length::metres(metres)), surface)
        }))
    }

    /// Heat that a metre takes up where its outside has this diameter and temperature.
    pub fn heat_gain(&self, outside: Length, surface: Temperature) -> HeatFlowPerLength {
        let coefficient = self.surroundings.coefficient(outside, surface);
        HeatFlowPerLength::watts_per_metre(
            core::f64::consts::PI
                * outside.in_metres()
                * coefficient.in_watts_per_square_metre_kelvin()
                * (self.surroundings.air - surface).in_kelvins(),
        )
    }
}
