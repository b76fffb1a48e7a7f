//! Saturation temperatures in a loop, for `library.py` and `wasm-loop.mjs`: the same source as a
//! native library and as a WebAssembly module. Never part of the page.

use coldwright::physics::saturation::{self, Line};
use coldwright::quantity::AbsolutePressure;
use coldwright::tables::refrigerants::Refrigerant;

/// Sum of `calls` dew temperatures of a refrigerant, given by its place in `Refrigerant::ALL`, at
/// pressures that walk from `low` to `high` in Pa. NaN for a place or pressure that does not exist.
#[unsafe(no_mangle)]
pub extern "C" fn sum_of_dew_temperatures(place: u32, low: f64, high: f64, calls: u32) -> f64 {
    let Some(refrigerant) = Refrigerant::ALL.get(place as usize).copied() else {
        return f64::NAN;
    };
    let step = (high - low) / f64::from(calls);
    let temperature = |call: u32| {
        let pressure = AbsolutePressure::pascals(low + step * f64::from(call));
        saturation::temperature(refrigerant, Line::Dew, pressure)
            .map_or(f64::NAN, |found| found.in_kelvins())
    };
    (0..calls).map(temperature).sum()
}
