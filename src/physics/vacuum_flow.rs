//! Thin air through a hose: what a vacuum pump feels of it.
//!
//! Conductances of long round tubes for air at 20 °C. The constants are as printed in cm, mbar and
//! L/s; conversion is code.

use super::beyond::{Argument, Beyond, within};
use crate::quantity::{AbsolutePressure, Length, VolumeFlow};

/// Viscous flow: L/s for d⁴/l in cm³ and a mean pressure in mbar. Source: engineeringtoolbox.com,
/// checked against pi d⁴/(128 eta l) with 18.2e-6 Pa·s.
const VISCOUS: f64 = 135.0;
/// Molecular flow: L/s for d³/l in cm². Same source.
const MOLECULAR: f64 = 12.1;
/// Knudsen's transition, 1/(cm mbar): from memory.
const KNUDSEN: (f64, f64) = (192.0, 237.0);

/// Darcy friction factor in smooth tube near Re 12 000, by Blasius.
const TURBULENT_FRICTION: f64 = 0.03;
/// Root of R·T of air at 20 °C, m/s: 287.05 J/(kg·K) times 293.15 K.
const ISOTHERMAL_SOUND: f64 = 290.08;

const LITRE: f64 = 1e-3;
const CENTIMETRE: f64 = 1e-2;
const MILLIBAR: f64 = 100.0;

/// Bores that are answered for.
pub const BORES: (Length, Length) = (Length::metres(1e-4), Length::metres(1.0));
/// Lengths that are answered for.
pub const LENGTHS: (Length, Length) = (Length::metres(1e-3), Length::metres(1e3));
/// Pressures that are answered for.
pub const PRESSURES: (AbsolutePressure, AbsolutePressure) = (
    AbsolutePressure::pascals(0.0),
    AbsolutePressure::pascals(2e5),
);

/// Conductance in viscous flow, laminar: it falls with the pressure.
///
/// # Errors
/// [`Beyond`] on `Diameter`, `Length` or `Pressure`.
pub fn viscous_conductance(
    bore: Length,
    length: Length,
    mean_pressure: AbsolutePressure,
) -> Result<VolumeFlow, Beyond> {
    let millibars = valid(mean_pressure)?;
    let hose = Hose::new(bore, length)?;
    Ok(litres_per_second(hose.viscous * millibars))
}

/// Conductance in molecular flow, where molecules meet only walls: the pressure no longer matters.
///
/// # Errors
/// [`Beyond`] on `Diameter` or `Length`.
pub fn molecular_conductance(bore: Length, length: Length) -> Result<VolumeFlow, Beyond> {
    Hose::new(bore, length).map(|hose| litres_per_second(hose.molecular))
}

/// Conductance from viscous to molecular flow, by Knudsen's formula.
///
/// # Valid for
/// Tubes much longer than their bore, laminar flow, air at 20 °C.
///
/// # Errors
/// [`Beyond`] on `Diameter`, `Length` or `Pressure`.
///
/// # Examples
/// ```
/// use coldwright::physics::vacuum_flow::conductance;
/// use coldwright::quantity::{AbsolutePressure, Length, Quantity};
/// // A 1/4 in hose of 1.5 m, bore 5 mm, near 500 micron: a fraction of a litre a second.
/// let hose = conductance(
///     Length::millimetres(5.0), Length::metres(1.5), AbsolutePressure::read("500 micron").unwrap(),
/// ).unwrap();
/// assert!((hose.in_cubic_metres_per_second() * 1000.0 - 0.046).abs() < 0.005);
/// ```
pub fn conductance(
    bore: Length,
    length: Length,
    mean_pressure: AbsolutePressure,
) -> Result<VolumeFlow, Beyond> {
    let millibars = valid(mean_pressure)?;
    Ok(litres_per_second(
        Hose::new(bore, length)?.litres(millibars),
    ))
}

/// Pumping speed that is left at the far end of a conductance: 1/S = 1/S_pump + 1/C.
///
/// Zero if either is.
///
/// ```
/// use coldwright::physics::vacuum_flow::effective_speed;
/// use coldwright::quantity::VolumeFlow;
/// let speed = VolumeFlow::cubic_metres_per_second(2e-3);
/// assert_eq!(effective_speed(speed, speed), VolumeFlow::cubic_metres_per_second(1e-3));
/// ```
pub fn effective_speed(pump: VolumeFlow, conductance: VolumeFlow) -> VolumeFlow {
    let (speed, conductance) = (
        pump.in_cubic_metres_per_second(),
        conductance.in_cubic_metres_per_second(),
    );
    let both = speed + conductance;
    VolumeFlow::cubic_metres_per_second(if both > 0.0 {
        speed / both * conductance
    } else {
        0.0
    })
}

/// A tube whose conductance is asked for again and again: it is measured once. In the units of the
/// constants: cm, mbar, L/s.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hose {
    diameter: f64,
    length: f64,
    /// L/s for a mbar of mean pressure.
    viscous: f64,
    molecular: f64,
}

impl Hose {
    /// A tube by its inside diameter and length.
    ///
    /// # Errors
    /// [`Beyond`] on `Diameter` or `Length`.
    pub fn new(bore: Length, length: Length) -> Result<Self, Beyond> {
        let metres = |argument, length: Length, (low, high): (Length, Length)| {
            within(
                argument,
                length.in_metres(),
                low.in_metres(),
                high.in_metres(),
            )
        };
        let diameter = metres(Argument::Diameter, bore, BORES)? / CENTIMETRE;
        let length = metres(Argument::Length, length, LENGTHS)? / CENTIMETRE;
        let cubed = diameter * diameter * diameter;
        Ok(Self {
            diameter,
            length,
            viscous: VISCOUS * cubed * diameter / length,
            molecular: MOLECULAR * cubed / length,
        })
    }

    /// Conductance in m³/s at a mean pressure in Pa, by Knudsen's formula.
    pub(super) fn conductance(self, pascals: f64) -> f64 {
        self.litres(pascals / MILLIBAR) * LITRE
    }

    /// Conductance in m³/s, at most, of turbulent flow between two pressures in Pa: an estimate.
    ///
    /// # Method
    /// Isothermal flow of air at 20 °C, `G² = (p₁² − p₂²)/(R·T·(f·l/d + 2))`, where 2 stands for the entry
    /// and for the gas that gets faster, so that a short tube is choked at nearly its sonic flow.
    pub(super) fn turbulent_conductance(self, upper: f64, lower: f64) -> f64 {
        let area = Length::metres(self.diameter * CENTIMETRE).circle();
        let drag = TURBULENT_FRICTION * self.length / self.diameter + 2.0;
        let ratio = (upper + lower) / (upper - lower) / drag;
        area.in_square_metres() * ISOTHERMAL_SOUND * ratio.sqrt()
    }

    fn litres(self, millibars: f64) -> f64 {
        let (above, below) = KNUDSEN;
        let thickness = self.diameter * millibars;
        let transition = (1.0 + above * thickness) / (1.0 + below * thickness);
        self.viscous * millibars + self.molecular * transition
    }
}

/// A pressure that is answered for, in mbar.
fn valid(pressure: AbsolutePressure) -> Result<f64, Beyond> {
    let (low, high) = (PRESSURES.0.in_pascals(), PRESSURES.1.in_pascals());
    within(Argument::Pressure, pressure.in_pascals(), low, high).map(|pascals| pascals / MILLIBAR)
}

fn litres_per_second(number: f64) -> VolumeFlow {
    VolumeFlow::cubic_metres_per_second(number * LITRE)
}
