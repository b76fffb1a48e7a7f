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

const LITRE: f64 = 1e-3;
const CENTIMETRE: f64 = 1e-2;
const MILLIBAR: f64 = 100.0;

/// Bores that are answered for, m.
const DIAMETER: (f64, f64) = (1e-4, 1.0);
/// Lengths that are answered for, m.
const LENGTH: (f64, f64) = (1e-3, 1e3);
/// Pressures that are answered for, Pa.
const PRESSURE: (f64, f64) = (0.0, 2e5);

/// Conductance in viscous flow, laminar: it falls with the pressure.
///
/// # Errors
/// [`Beyond`] on `Diameter`, `Length` or `Pressure`.
pub fn viscous_conductance(
    bore: Length,
    length: Length,
    mean_pressure: AbsolutePressure,
) -> Result<VolumeFlow, Beyond> {
    let hose = hose(bore, length, mean_pressure)?;
    Ok(litres_per_second(viscous(hose)))
}

/// Conductance in molecular flow, where molecules meet only walls: the pressure no longer matters.
///
/// # Errors
/// [`Beyond`] on `Diameter` or `Length`.
pub fn molecular_conductance(bore: Length, length: Length) -> Result<VolumeFlow, Beyond> {
    let hose = hose(bore, length, AbsolutePressure::pascals(0.0))?;
    Ok(litres_per_second(molecular(hose)))
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
    let hose = hose(bore, length, mean_pressure)?;
    let (above, below) = KNUDSEN;
    let thickness = hose.diameter * hose.pressure;
    let transition = (1.0 + above * thickness) / (1.0 + below * thickness);
    Ok(litres_per_second(
        viscous(hose) + molecular(hose) * transition,
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

/// A tube in the units of the constants: cm, cm, mbar.
#[derive(Clone, Copy)]
struct Hose {
    diameter: f64,
    length: f64,
    pressure: f64,
}

fn hose(bore: Length, length: Length, pressure: AbsolutePressure) -> Result<Hose, Beyond> {
    let diameter = within(Argument::Diameter, bore.in_metres(), DIAMETER.0, DIAMETER.1)?;
    let metres = within(Argument::Length, length.in_metres(), LENGTH.0, LENGTH.1)?;
    let pascals = within(
        Argument::Pressure,
        pressure.in_pascals(),
        PRESSURE.0,
        PRESSURE.1,
    )?;
    Ok(Hose {
        diameter: diameter / CENTIMETRE,
        length: metres / CENTIMETRE,
        pressure: pascals / MILLIBAR,
    })
}

fn viscous(hose: Hose) -> f64 {
    let squared = hose.diameter * hose.diameter;
    VISCOUS * squared * squared / hose.length * hose.pressure
}

fn molecular(hose: Hose) -> f64 {
    MOLECULAR * hose.diameter * hose.diameter * hose.diameter / hose.length
}

fn litres_per_second(number: f64) -> VolumeFlow {
    VolumeFlow::cubic_metres_per_second(number * LITRE)
}
