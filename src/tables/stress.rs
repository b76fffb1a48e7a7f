//! What annealed copper is allowed to bear, over temperature.

use super::SourceId;
use crate::quantity::factors::PASCAL_PER_PSI;
use crate::quantity::{Stress, Temperature};

/// Allowable stress of annealed copper: °F, psi, as printed.
const ANNEALED_COPPER: &[(f64, f64)] = &[
    (100.0, 6000.0),
    (150.0, 5100.0),
    (200.0, 4900.0),
    (250.0, 4800.0),
    (300.0, 4700.0),
    (350.0, 4000.0),
    (400.0, 3000.0),
];

/// Where the table comes from.
pub const SOURCE: SourceId = SourceId::CopperTubeHandbookStress;

/// Hottest temperature of the table.
pub const HOTTEST: Temperature = Temperature::fahrenheit(400.0);

/// Coldest temperature that copper lines see; the table's first value holds down to it.
pub const COLDEST: Temperature = Temperature::celsius(-100.0);

/// Allowable stress at a temperature, and the printed temperature it was taken at.
///
/// The table is not interpolated: the value of the next hotter row holds, which is on the safe
/// side. `None` above the last row.
///
/// ```
/// use coldwright::quantity::{Quantity, Stress, Temperature};
/// use coldwright::tables::stress::allowable;
/// let (stress, row) = allowable(Temperature::fahrenheit(120.0)).unwrap();
/// assert_eq!(stress, Stress::read("5100 psi").unwrap());
/// assert_eq!(row, Temperature::fahrenheit(150.0));
/// assert!(allowable(Temperature::fahrenheit(401.0)).is_none());
/// ```
pub fn allowable(temperature: Temperature) -> Option<(Stress, Temperature)> {
    /// A printed temperature is met by its own conversion.
    const EDGE: f64 = 1e-9;
    ANNEALED_COPPER
        .iter()
        .map(|(fahrenheit, psi)| (Temperature::fahrenheit(*fahrenheit), *psi))
        .find(|(row, _)| temperature.in_kelvins() <= row.in_kelvins() + EDGE)
        .map(|(row, psi)| (Stress::pascals(psi * PASCAL_PER_PSI), row))
}
