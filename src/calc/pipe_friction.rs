//! Friction of a flow in a round tube.

use serde::Serialize;

use super::count::Count;
use super::input::input;
use super::problem::{Field, Problem, Problems};
use super::reading::{Reading, filled, optional, required};
use super::working::{Step, Working};
use crate::physics::pipe_flow::{
    Bore, DENSITIES, DIAMETERS, DRAWN_TUBE_ROUGHNESS, Fitting, Flow, Fluid, LENGTHS, REYNOLDS,
    ROUGHEST, Regime, VISCOSITIES, flow,
};
use crate::quantity::{
    Density, DynamicViscosity, Entry, Length, MassFlow, PressureDifference, Quantity, Ratio,
    Velocity, VolumeFlow,
};
use crate::tables::SourceId;

input! {
    /// What [`pipe_friction`] asks for.
    pub struct PipeFrictionInput {
        /// Inside diameter of the tube, required: "13.4 mm".
        pub bore: Entry<Length>,
        /// Height of the wall's unevenness; that of drawn tube, 1.5 µm, if nothing is entered.
        pub roughness: Entry<Length>,
        /// Density of the fluid, required.
        pub density: Entry<Density>,
        /// Dynamic viscosity of the fluid, required.
        pub viscosity: Entry<DynamicViscosity>,
        /// Mean velocity; exactly one of this, `massFlow` and `volumeFlow`.
        pub velocity: Entry<Velocity>,
        /// Mass per time.
        pub mass_flow: Entry<MassFlow>,
        /// Volume per time.
        pub volume_flow: Entry<VolumeFlow>,
        /// Length of straight tube, for the pressure drop.
        pub length: Entry<Length>,
        /// Elbows of 90°.
        pub elbows_90: Entry<Count>,
        /// Elbows of 45°.
        pub elbows_45: Entry<Count>,
        /// Tees run straight through.
        pub tee_runs: Entry<Count>,
        /// Tees run through the branch.
        pub tee_branches: Entry<Count>,
    }
}

/// What [`pipe_friction`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct PipeFrictionAnswer {
    /// Mean velocity.
    pub velocity: Velocity,
    /// Mass per time.
    pub mass_flow: MassFlow,
    /// Volume per time.
    pub volume_flow: VolumeFlow,
    /// Reynolds number.
    pub reynolds: f64,
    /// How the fluid flows; in the transition the friction factor is uncertain.
    pub regime: Regime,
    /// Darcy friction factor, four times Fanning's.
    pub friction_factor: f64,
    /// Roughness taken.
    pub roughness: Length,
    /// Roughness over bore.
    pub relative_roughness: f64,
    /// Straight tube that has the friction of all fittings.
    pub fittings_length: Length,
    /// Straight tube and fittings together; absent without a length.
    pub equivalent_length: Option<Length>,
    /// Fall of pressure by friction over the equivalent length; absent without a length.
    pub pressure_drop: Option<PressureDifference>,
    /// The working.
    pub working: Working,
}

/// How much pressure does friction cost in this tube?
///
/// # Method
/// Darcy and Weisbach, `Δp = f·(L/D)·ρ·v²/2`. Laminar to Re 2300: f = 64/Re; turbulent from 4000:
/// Colebrook and White; linear between them. Fittings as bores of straight tube.
///
/// # Valid for
/// One phase at one density, Re 1e-3 to 1e9, bore 0.1 mm to 10 m, roughness to a twentieth of the bore.
///
/// # Errors
/// A missing field; not exactly one flow; a figure outside these limits.
///
/// # Examples
/// ```
/// use coldwright::calc::pipe_friction::{PipeFrictionInput, pipe_friction};
/// use coldwright::quantity::{Density, DynamicViscosity, Length, Velocity};
/// let water = pipe_friction(&PipeFrictionInput {
///     bore: Length::millimetres(20.0).into(),
///     roughness: Length::metres(0.0).into(),
///     density: Density::kilograms_per_cubic_metre(1000.0).into(),
///     viscosity: DynamicViscosity::pascal_seconds(1e-3).into(),
///     velocity: Velocity::metres_per_second(0.1).into(),
///     length: Length::metres(1.0).into(),
///     ..PipeFrictionInput::default()
/// }).unwrap();
/// // Laminar at Re 2000: 32·µ·v·L/D² = 8 Pa.
/// assert!((water.pressure_drop.unwrap().in_pascals() - 8.0).abs() < 1e-9);
/// ```
///
/// # References
/// Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; Moody, Trans. ASME 66 (1944) 671 for roughness.
/// Equivalent lengths of fittings are from memory.
pub fn pipe_friction(input: &PipeFrictionInput) -> Result<PipeFrictionAnswer, Problems> {
    let mut reading = Reading::default();
    let tube = tube(input, &mut reading);
    let fluid = fluid(input, &mut reading);
    let velocities = tube
        .zip(fluid)
        .filter(|_| reading.is_sound())
        .map(|(tube, fluid)| velocities(tube, fluid));
    let velocity = optional!(reading, input.velocity);
    let mass_flow = optional!(reading, input.mass_flow);
    let volume_flow = optional!(reading, input.volume_flow);
    reading.exactly(
        1,
        &[
            filled!(input.velocity),
            filled!(input.mass_flow),
            filled!(input.volume_flow),
        ],
    );
    let length = optional!(reading, input.length, LENGTHS);
    let bores = bores([
        optional!(reading, input.elbows_90),
        optional!(reading, input.elbows_45),
        optional!(reading, input.tee_runs),
        optional!(reading, input.tee_branches),
    ]);
    let (Some(tube), Some(fluid), Some(velocities)) = (tube, fluid, velocities) else {
        return Err(reading.take());
    };
    let area = tube.diameter.circle();
    reading.within(Field::named("velocity"), velocity, velocities);
    let volumes = (velocities.0 * area, velocities.1 * area);
    reading.within(Field::named("volume_flow"), volume_flow, volumes);
    let masses = (fluid.density * volumes.0, fluid.density * volumes.1);
    reading.within(Field::named("mass_flow"), mass_flow, masses);
    reading.sound()?;
    let volume_flow = volume_flow.or(velocity.map(|velocity| velocity * area));
    let Some(mass_flow) = mass_flow.or(volume_flow.map(|volume| fluid.density * volume)) else {
        return Err(reading.take());
    };
    let fittings = tube.diameter * bores;
    let whole = length.map(|length| length + fittings);
    // Every argument has been checked, but a limit may be missed by a rounding error.
    let found = flow(mass_flow, tube, whole.unwrap_or(fittings), fluid);
    let found = found.map_err(|_| {
        vec![Problem::outside(
            Field::named("length"),
            LENGTHS.0,
            LENGTHS.1 - fittings,
        )]
    })?;
    Ok(answer(mass_flow, tube, fluid, &found, (fittings, whole)))
}

fn tube(input: &PipeFrictionInput, reading: &mut Reading) -> Option<Bore> {
    let diameter = required!(reading, input.bore, DIAMETERS);
    let roughness = optional!(reading, input.roughness);
    let bore = Bore {
        diameter: diameter?,
        roughness: roughness.unwrap_or(DRAWN_TUBE_ROUGHNESS),
    };
    let roughest = bore.diameter * ROUGHEST;
    let smoothest = Length::metres(0.0);
    reading.within(
        Field::named("roughness"),
        Some(bore.roughness),
        (smoothest, roughest),
    );
    Some(bore)
}

fn fluid(input: &PipeFrictionInput, reading: &mut Reading) -> Option<Fluid> {
    let density = required!(reading, input.density, DENSITIES);
    let viscosity = required!(reading, input.viscosity, VISCOSITIES);
    Some(Fluid {
        density: density?,
        viscosity: viscosity?,
    })
}

/// Straight tube that has the friction of all fittings, in bores: of counts in the order of
/// [`Fitting::ALL`].
pub(super) fn bores(counts: [Option<Count>; 4]) -> f64 {
    let bores = Fitting::ALL.iter().zip(counts).map(|(fitting, count)| {
        fitting.equivalent_bores() * f64::from(count.unwrap_or_default().number())
    });
    bores.sum()
}

/// Largest mass flow that is answered for.
const LARGEST_FLOW: MassFlow = MassFlow::kilograms_per_second(1e4);

/// Slowest and fastest flow in a tube that friction is known for. A hair inside, so that rounding
/// on the way to the Reynolds number does not leave its range.
fn velocities(tube: Bore, fluid: Fluid) -> (Velocity, Velocity) {
    let density = fluid.density.si();
    let of_one = fluid.viscosity.si() / (density * tube.diameter.si());
    let by_flow = LARGEST_FLOW.si() / (density * tube.diameter.circle().si());
    let fastest = by_flow.min(of_one * REYNOLDS.1);
    (
        Velocity::metres_per_second(of_one * REYNOLDS.0 * (1.0 + 1e-12)),
        Velocity::metres_per_second(fastest * (1.0 - 1e-12)),
    )
}

fn answer(
    mass_flow: MassFlow,
    tube: Bore,
    fluid: Fluid,
    found: &Flow,
    (fittings, whole): (Length, Option<Length>),
) -> PipeFrictionAnswer {
    let pressure_drop = whole.map(|_| found.pressure_drop);
    let working = steps(tube, fluid, found, whole);
    PipeFrictionAnswer {
        velocity: found.velocity,
        mass_flow,
        volume_flow: found.velocity * tube.diameter.circle(),
        reynolds: found.reynolds,
        regime: found.friction.regime,
        friction_factor: found.friction.factor,
        roughness: tube.roughness,
        relative_roughness: tube.roughness / tube.diameter,
        fittings_length: fittings,
        equivalent_length: whole,
        pressure_drop,
        working,
    }
}

/// The steps that find the friction, and the pressure drop where the `whole` length is known.
pub(super) fn steps(tube: Bore, fluid: Fluid, found: &Flow, whole: Option<Length>) -> Working {
    let reynolds = Ratio::of_one(found.reynolds);
    let friction = match found.friction.regime {
        Regime::Laminar => Step::of("step-friction-laminar", "{f} = 64/{Re}"),
        Regime::Transition => Step::of(
            "step-friction-transition",
            "{f} between 64/2300 and that of Re 4000, in step with {Re}",
        )
        .from(SourceId::CommonPractice),
        Regime::Turbulent => Step::of(
            "step-friction-turbulent",
            "1/√{f} = −2·lg({k}/3.7 + 2.51/({Re}·√{f}))",
        )
        .with(
            "k",
            "figure-relative-roughness",
            Ratio::of_one(tube.roughness / tube.diameter),
        )
        .from(SourceId::Colebrook1939)
        .from(SourceId::Moody1944),
    };
    let mut steps = vec![
        Step::of("step-reynolds", "{Re} = {ρ}·{v}·{D} / {µ}")
            .with("ρ", "figure-density", fluid.density)
            .with("v", "figure-velocity", found.velocity)
            .with("D", "figure-bore", tube.diameter)
            .with("µ", "figure-viscosity", fluid.viscosity)
            .gives("Re", "figure-reynolds", reynolds),
        friction.with("Re", "figure-reynolds", reynolds).gives(
            "f",
            "figure-friction-factor",
            Ratio::of_one(found.friction.factor),
        ),
    ];
    steps.extend(whole.map(|whole| drop_step(tube, fluid, found, whole)));
    steps
}

fn drop_step(tube: Bore, fluid: Fluid, found: &Flow, whole: Length) -> Step {
    Step::of("step-friction-drop", "{Δp} = {f}·({L}/{D})·{ρ}·{v}²/2")
        .with(
            "f",
            "figure-friction-factor",
            Ratio::of_one(found.friction.factor),
        )
        .with("L", "figure-equivalent-length", whole)
        .with("D", "figure-bore", tube.diameter)
        .with("ρ", "figure-density", fluid.density)
        .with("v", "figure-velocity", found.velocity)
        .from(SourceId::FittingLengths)
        .gives("Δp", "figure-pressure-drop", found.pressure_drop)
}
