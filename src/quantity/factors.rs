//! Conversion factors, each written once, built from exact definitions.
//!
//! Source of every factor unless it says otherwise: NIST Special Publication 811, 2008 edition,
//! Guide for the Use of the International System of Units, appendix B.8 and the definitions it cites.

/// Metre per international inch, exact.
pub const METRE_PER_INCH: f64 = 0.025_4;
/// Metre per international foot, exact.
pub const METRE_PER_FOOT: f64 = 12.0 * METRE_PER_INCH;
/// Kilogram per avoirdupois pound, exact.
pub const KILOGRAM_PER_POUND: f64 = 0.453_592_37;
/// Kilogram per avoirdupois ounce, exact.
pub const KILOGRAM_PER_OUNCE: f64 = KILOGRAM_PER_POUND / 16.0;
/// Standard acceleration of free fall in metre per second squared, exact.
pub const STANDARD_GRAVITY: f64 = 9.806_65;
/// Newton per pound-force, exact.
pub const NEWTON_PER_POUND_FORCE: f64 = KILOGRAM_PER_POUND * STANDARD_GRAVITY;
/// Pascal per pound-force per square inch, exact.
pub const PASCAL_PER_PSI: f64 = NEWTON_PER_POUND_FORCE / (METRE_PER_INCH * METRE_PER_INCH);
/// Pascal per standard atmosphere, exact.
pub const PASCAL_PER_ATMOSPHERE: f64 = 101_325.0;
/// Pascal per torr, exact.
pub const PASCAL_PER_TORR: f64 = PASCAL_PER_ATMOSPHERE / 760.0;
/// Pascal per conventional millimetre of mercury (13 595.1 kg/m³ under standard gravity).
pub const PASCAL_PER_MILLIMETRE_OF_MERCURY: f64 = 13.595_1 * STANDARD_GRAVITY;
/// Pascal per conventional inch of mercury.
pub const PASCAL_PER_INCH_OF_MERCURY: f64 = 25.4 * PASCAL_PER_MILLIMETRE_OF_MERCURY;
/// Pascal per micron of mercury, the vacuum gauge's unit: a thousandth of a millimetre of mercury.
pub const PASCAL_PER_MICRON: f64 = PASCAL_PER_MILLIMETRE_OF_MERCURY / 1000.0;
/// Pascal per kilogram-force per square centimetre (technical atmosphere), exact.
pub const PASCAL_PER_TECHNICAL_ATMOSPHERE: f64 = STANDARD_GRAVITY * 1e4;
/// Newton metre per pound-force foot, exact.
pub const NEWTON_METRE_PER_POUND_FORCE_FOOT: f64 = NEWTON_PER_POUND_FORCE * METRE_PER_FOOT;
/// Newton metre per pound-force inch, exact.
pub const NEWTON_METRE_PER_POUND_FORCE_INCH: f64 = NEWTON_PER_POUND_FORCE * METRE_PER_INCH;
/// Joule per international-table British thermal unit, exact: 4.1868 J/(g K) times a pound and a degree.
pub const JOULE_PER_BTU: f64 = 4186.8 * KILOGRAM_PER_POUND / 1.8;
/// Joule per international-table calorie, exact.
pub const JOULE_PER_CALORIE: f64 = 4.186_8;
/// Watt per ton of refrigeration: 12 000 British thermal units an hour.
pub const WATT_PER_TON_OF_REFRIGERATION: f64 = 12_000.0 * JOULE_PER_BTU / 3600.0;
/// Watt per mechanical horsepower (550 foot pound-force per second), exact.
pub const WATT_PER_HORSEPOWER: f64 = 550.0 * NEWTON_METRE_PER_POUND_FORCE_FOOT;
/// Cubic metre per cubic foot, exact.
pub const CUBIC_METRE_PER_CUBIC_FOOT: f64 = METRE_PER_FOOT * METRE_PER_FOOT * METRE_PER_FOOT;
/// Cubic metre per cubic inch, exact.
pub const CUBIC_METRE_PER_CUBIC_INCH: f64 = METRE_PER_INCH * METRE_PER_INCH * METRE_PER_INCH;
/// Cubic metre per United States gallon, exact: 231 cubic inches.
pub const CUBIC_METRE_PER_GALLON: f64 = 231.0 * CUBIC_METRE_PER_CUBIC_INCH;
/// Kelvin per degree Fahrenheit or Rankine, exact.
pub const KELVIN_PER_FAHRENHEIT: f64 = 1.0 / 1.8;
/// Kelvin at 0 °C, exact.
pub const KELVIN_AT_ZERO_CELSIUS: f64 = 273.15;
/// Kelvin at 0 °F, exact: 459.67 °R.
pub const KELVIN_AT_ZERO_FAHRENHEIT: f64 = 459.67 / 1.8;
/// Seconds in an hour, exact.
pub const SECONDS_PER_HOUR: f64 = 3600.0;
/// Seconds in a day, exact.
pub const SECONDS_PER_DAY: f64 = 24.0 * SECONDS_PER_HOUR;
/// Seconds in a year of 365 days, exact.
pub const SECONDS_PER_YEAR: f64 = 365.0 * SECONDS_PER_DAY;
/// Radian per degree of arc.
pub const RADIAN_PER_DEGREE: f64 = core::f64::consts::PI / 180.0;
