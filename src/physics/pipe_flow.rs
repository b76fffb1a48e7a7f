//! Flow in a round tube: friction from laminar to rough, fittings, pressure drop.

use serde::Serialize;

use super::beyond::{Argument, Beyond, within};
use crate::quantity::choice;
use crate::quantity::{
    Density, DynamicViscosity, Length, MassFlow, PressureDifference, Quantity, Velocity,
};

choice! {
    /// How the fluid flows.
    Regime {
        /// In layers: friction does not feel the wall's roughness.
        Laminar = "laminar",
        /// Now one, now the other; friction is uncertain.
        Transition = "transition",
        /// Stirred through.
        Turbulent = "turbulent",
    }
}

/// End of laminar flow, Reynolds number. Common practice.
const LAMINAR_UP_TO: f64 = 2300.0;
/// Begin of turbulent flow, Reynolds number. Common practice.
const TURBULENT_FROM: f64 = 4000.0;
/// Reynolds numbers that are answered for.
pub const REYNOLDS: (f64, f64) = (1e-3, 1e9);
/// Roughest wall that is answered for, in bores: the end of Colebrook's own data.
pub const ROUGHEST: f64 = 0.05;
/// Bores that are answered for.
pub const DIAMETERS: (Length, Length) = (Length::metres(1e-4), Length::metres(10.0));
/// Lengths of tube that are answered for.
pub const LENGTHS: (Length, Length) = (Length::metres(0.0), Length::metres(1e5));
/// Densities that are answered for.
pub const DENSITIES: (Density, Density) = (
    Density::kilograms_per_cubic_metre(1e-6),
    Density::kilograms_per_cubic_metre(3e4),
);
/// Viscosities that are answered for.
pub const VISCOSITIES: (DynamicViscosity, DynamicViscosity) = (
    DynamicViscosity::pascal_seconds(1e-7),
    DynamicViscosity::pascal_seconds(1e3),
);
/// Flows that are answered for.
const FLOWS: (MassFlow, MassFlow) = (
    MassFlow::kilograms_per_second(0.0),
    MassFlow::kilograms_per_second(1e4),
);
/// Newton's method gains twice the digits a step; from Haaland's start three suffice.
const STEPS: usize = 4;

/// Roughness of drawn copper tube. Source: Moody, Trans. ASME 66 (1944), drawn tubing 0.000 005 ft; from memory.
pub const DRAWN_TUBE_ROUGHNESS: Length = Length::metres(1.5e-6);

/// A friction factor and how the fluid flows.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Friction {
    /// Darcy's, four times Fanning's.
    pub factor: f64,
    /// How the fluid flows.
    pub regime: Regime,
}

/// Darcy friction factor from the Reynolds number and roughness over bore.
///
/// # Method
/// Laminar to 2300: 64/Re. Turbulent from 4000: the equation of Colebrook and White, solved by
/// Newton's method from Haaland's formula. Between, linear in Re from one to the other: common
/// practice, no source; the true factor is uncertain there.
///
/// # Valid for
/// Reynolds 1e-3 to 1e9, relative roughness 0 to 0.05.
///
/// # Errors
/// [`Beyond`] on `Reynolds` or `RelativeRoughness`.
///
/// # Examples
/// ```
/// use coldwright::physics::pipe_flow::friction;
/// let rough = friction(1e5, 1e-4).unwrap();
/// assert!((rough.factor - 0.018_513_9).abs() < 1e-6);
/// assert!((friction(1000.0, 0.0).unwrap().factor - 0.064).abs() < 1e-15);
/// ```
///
/// # References
/// Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; Haaland, J. Fluids Eng. 105 (1983) 89.
pub fn friction(reynolds: f64, relative_roughness: f64) -> Result<Friction, Beyond> {
    let reynolds = within(Argument::Reynolds, reynolds, REYNOLDS.0, REYNOLDS.1)?;
    let roughness = within(
        Argument::RelativeRoughness,
        relative_roughness,
        0.0,
        ROUGHEST,
    )?;
    Ok(if reynolds <= LAMINAR_UP_TO {
        Friction {
            factor: 64.0 / reynolds,
            regime: Regime::Laminar,
        }
    } else if reynolds < TURBULENT_FROM {
        let part = (reynolds - LAMINAR_UP_TO) / (TURBULENT_FROM - LAMINAR_UP_TO);
        let laminar = 64.0 / LAMINAR_UP_TO;
        let factor = laminar + part * (colebrook(TURBULENT_FROM, roughness) - laminar);
        Friction {
            factor,
            regime: Regime::Transition,
        }
    } else {
        Friction {
            factor: colebrook(reynolds, roughness),
            regime: Regime::Turbulent,
        }
    })
}

/// x = -2 lg(roughness/3.7 + 2.51 x / Re) with x = 1/sqrt(f).
fn colebrook(reynolds: f64, roughness: f64) -> f64 {
    let (rough, smooth) = (roughness / 3.7, 2.51 / reynolds);
    let mut x = -1.8 * libm::log10(libm::pow(rough, 1.11) + 6.9 / reynolds);
    for _ in 0..STEPS {
        let inside = rough + smooth * x;
        let residual = x + 2.0 * libm::log10(inside);
        let slope = 1.0 + 2.0 * smooth / (inside * core::f64::consts::LN_10);
        x -= residual / slope;
    }
    1.0 / (x * x)
}

choice! {
    /// A fitting in a line.
    Fitting {
        /// Elbow of 90°.
        Elbow90 = "elbow-90",
        /// Elbow of 45°.
        Elbow45 = "elbow-45",
        /// Straight through a tee.
        TeeRun = "tee-run",
        /// Through the branch of a tee.
        TeeBranch = "tee-branch",
    }
}

impl Fitting {
    /// Length of straight tube with the same pressure drop, in bores.
    ///
    /// Source: from memory, the L/D ratios of handbooks for turbulent flow; a long-radius bend has less.
    pub const fn equivalent_bores(self) -> f64 {
        match self {
            Self::Elbow90 => 30.0,
            Self::Elbow45 => 16.0,
            Self::TeeRun => 20.0,
            Self::TeeBranch => 60.0,
        }
    }

    /// The same for a bore.
    pub fn equivalent_length(self, bore: Length) -> Length {
        bore * self.equivalent_bores()
    }
}

/// A round tube.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bore {
    /// Inside diameter.
    pub diameter: Length,
    /// Height of the wall's unevenness.
    pub roughness: Length,
}

/// A single-phase fluid at its mean state in a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fluid {
    /// Its density.
    pub density: Density,
    /// Its viscosity.
    pub viscosity: DynamicViscosity,
}

/// Flow through a tube.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Flow {
    /// Mean velocity.
    pub velocity: Velocity,
    /// Reynolds number.
    pub reynolds: f64,
    /// Darcy friction factor and regime.
    pub friction: Friction,
    /// Fall of pressure by friction over the length.
    pub pressure_drop: PressureDifference,
}

/// Velocity and pressure drop of a mass flow through a tube of a length, fittings included in it.
///
/// # Method
/// Darcy and Weisbach: f (L/D) rho v²/2.
///
/// # Errors
/// [`Beyond`] on `Diameter`, `Length`, `Density`, `Viscosity`, `Flow`, `Reynolds` or
/// `RelativeRoughness`.
///
/// # Examples
/// ```
/// use coldwright::physics::pipe_flow::{self, Bore, Fluid};
/// use coldwright::quantity::{Density, DynamicViscosity, Length, MassFlow};
/// let bore = Bore { diameter: Length::metres(0.01), roughness: Length::metres(0.0) };
/// let water = Fluid {
///     density: Density::kilograms_per_cubic_metre(1000.0),
///     viscosity: DynamicViscosity::pascal_seconds(1e-3),
/// };
/// // Laminar, so Hagen and Poiseuille: 128 mu L Q / (pi D^4).
/// let flow = pipe_flow::flow(MassFlow::kilograms_per_second(0.01), bore, Length::metres(1.0), water).unwrap();
/// let exact = 128.0 * 1e-3 * 1e-5 / (core::f64::consts::PI * 1e-8);
/// assert!((flow.pressure_drop.in_pascals() / exact - 1.0).abs() < 1e-12);
/// ```
pub fn flow(mass_flow: MassFlow, bore: Bore, length: Length, fluid: Fluid) -> Result<Flow, Beyond> {
    let diameter = quantity_within(Argument::Diameter, bore.diameter, DIAMETERS)?;
    let metres = quantity_within(Argument::Length, length, LENGTHS)?;
    let density = quantity_within(Argument::Density, fluid.density, DENSITIES)?;
    let viscosity = quantity_within(Argument::Viscosity, fluid.viscosity, VISCOSITIES)?;
    let kilograms = quantity_within(Argument::Flow, mass_flow, FLOWS)?;
    let velocity = kilograms / (density * bore.diameter.circle().in_square_metres());
    let reynolds = density * velocity * diameter / viscosity;
    let friction = friction(reynolds, bore.roughness.in_metres() / diameter)?;
    let drop = friction.factor * metres / diameter * 0.5 * density * velocity * velocity;
    Ok(Flow {
        velocity: Velocity::metres_per_second(velocity),
        reynolds,
        friction,
        pressure_drop: PressureDifference::pascals(drop),
    })
}

fn quantity_within<Q: Quantity>(
    argument: Argument,
    quantity: Q,
    (low, high): (Q, Q),
) -> Result<f64, Beyond> {
    within(argument, quantity.si(), low.si(), high.si())
}
