"""Fit, certify, and write the data files and the reference rows. Run: python generate.py"""

import subprocess
import sys
from pathlib import Path

import numpy as np

import certify
import nitrogen
import rows
from expansions import Expansions
from library import LIBRARY, SPECS, Model

TABLES = Path(__file__).resolve().parents[3] / "src" / "tables" / "fluids"
CERTIFY_SEED = 7_919

EQUATIONS = {
    "R-22": "Kamei, Beyerlein and Jacobsen, Int. J. Thermophys. 16 (1995)",
    "R-32": "Tillner-Roth and Yokozeki, J. Phys. Chem. Ref. Data 26 (1997)",
    "R-134a": "Tillner-Roth and Baehr, J. Phys. Chem. Ref. Data 23 (1994)",
    "R-290": "Lemmon, McLinden and Wagner, J. Chem. Eng. Data 54 (2009)",
    "R-600a": "Buecker and Wagner, J. Phys. Chem. Ref. Data 35 (2006)",
    "R-717": "Gao, Wu, Bell, Harvey and Lemmon, J. Phys. Chem. Ref. Data 52 (2023)",
    "R-744": "Span and Wagner, J. Phys. Chem. Ref. Data 25 (1996)",
    "R-1234yf": "Lemmon and Akasaka, Int. J. Thermophys. 43 (2022)",
    "R-1234ze(E)": "Thol and Lemmon, Int. J. Thermophys. 37 (2016)",
}
PSEUDO_PURE = "Lemmon, Int. J. Thermophys. 24 (2003), pseudo-pure"
MIXTURE = "mixture model, Bell (2022, 2023, 2025), Lemmon and Jacobsen (2004)"


def equation(spec):
    return EQUATIONS.get(spec.designation) or (PSEUDO_PURE if spec.kind == "pseudo-pure" else MIXTURE)


def stem(designation):
    return "r" + designation[2:].lower().replace("(", "").replace(")", "")


def literal(number):
    """Shortest text that reads back as the same 32-bit number."""
    text = np.format_float_positional(np.float32(number), unique=True, trim="0")
    whole, _, part = text.partition(".")
    sign, digits = ("-", whole[1:]) if whole.startswith("-") else ("", whole)
    groups = []
    while len(digits) > 3:
        groups.insert(0, digits[-3:])
        digits = digits[:-3]
    if len(part) > 3:
        part = "_".join(part[i : i + 3] for i in range(0, len(part), 3))
    return sign + "_".join([digits, *groups]) + "." + part


def array(numbers):
    return "&[" + ", ".join(literal(number) for number in numbers) + "]"


def surface(rows_of_y):
    return "&[" + ", ".join(array(row) for row in rows_of_y) + "]"


def limits(low, high):
    return f"Range {{ low: {float(low)!r}, high: {float(high)!r} }}"


def scale(low, high):
    return f"Scale::over({float(low)!r}, {float(high)!r})"


def refrigerant_file(expansions):
    model, spec = expansions.model, expansions.model.spec
    fields = [
        ("molar_mass", repr(model.molar_mass)),
        ("critical_temperature", repr(model.critical_temperature)),
        ("critical_pressure", repr(model.critical_pressure)),
        ("critical_density", repr(model.critical_density)),
        ("temperature", limits(model.lowest, model.highest)),
        ("theta", scale(expansions.axis.hot, expansions.axis.cold)),
        ("bubble_pressure", limits(*expansions.pressure_range["bubble"])),
        ("dew_pressure", limits(*expansions.pressure_range["dew"])),
        ("log_pressure_ceiling", repr(expansions.log_pressure_ceiling)),
        ("bubble_phi", scale(*expansions.phi_range("bubble"))),
        ("dew_phi", scale(*expansions.phi_range("dew"))),
    ]
    series = expansions.series
    for line in ("bubble", "dew"):
        for name in (f"ln_{line}_pressure", f"{line}_temperature"):
            fields.append((name, array(series.get(name, series[name.replace("dew", "bubble")]))))
    for name in (
        "liquid_density", "ln_vapour_density", "liquid_enthalpy", "vapour_enthalpy",
        "liquid_heat_capacity", "vapour_heat_capacity", "ln_liquid_viscosity", "ln_vapour_viscosity",
    ):
        fields.append((name, array(series[name])))
    fields += [
        ("superheat_onset", repr(expansions.onset)),
        ("superheated_volume", surface(expansions.superheated_volume)),
        ("superheated_enthalpy", surface(expansions.superheated_enthalpy)),
    ]
    body = "\n".join(f"    {name}: {value}," for name, value in fields)
    return (
        f"//! {spec.designation} as Chebyshev expansions. Written by tests/reference/fluids/generate.py.\n"
        f"//!\n//! Source: {LIBRARY}; {equation(spec)}.\n\n"
        "use super::{Expansions, Range, Scale};\n\n"
        f"pub(super) static {stem(spec.designation).upper()}: Expansions = Expansions {{\n{body}\n}};\n"
    )


def nitrogen_file(rows_of_pressure):
    return (
        "//! Compressibility factor of nitrogen. Written by tests/reference/fluids/generate.py.\n"
        f"//!\n//! Source: {LIBRARY}; Span et al., J. Phys. Chem. Ref. Data 29 (2000).\n\n"
        "use super::{Range, Scale};\n\n"
        "/// Temperatures that the expansion holds for, K.\n"
        f"pub(crate) const TEMPERATURE: Range = {limits(*nitrogen.TEMPERATURES)};\n\n"
        "/// How they map to -1..1.\n"
        "pub(crate) const TEMPERATURE_SCALE: Scale = Scale::over(TEMPERATURE.low, TEMPERATURE.high);\n\n"
        "/// Largest pressure that the expansion holds for, Pa.\n"
        f"pub(crate) const LARGEST_PRESSURE: f64 = {nitrogen.LARGEST_PRESSURE!r};\n\n"
        "/// (Z - 1) over the part of the largest pressure: one row for each degree in pressure,\n"
        "/// coefficients in temperature.\n"
        f"pub(crate) static DEPARTURE: &[&[f32]] = {surface(rows_of_pressure)};\n"
    )


def write_rust(path, text):
    path.write_text(text)
    subprocess.run(["rustfmt", "--edition", "2024", path], check=True)


def report(name, expansions):
    worst = certify.worst_errors(expansions, expansions.model.lowest, expansions.model.highest, CERTIFY_SEED)
    certify.assert_accepted(name, worst)
    line = "  ".join(f"{what} {error:.2g}" for what, error in worst.items())
    print(f"{name}: {expansions.numbers()} numbers; worst {line}")


def main():
    TABLES.mkdir(parents=True, exist_ok=True)
    fitted, numbers = {}, 0
    for spec in SPECS:
        expansions = Expansions(Model(spec))
        certify.assert_shape(expansions)
        report(spec.designation, expansions)
        write_rust(TABLES / f"{stem(spec.designation)}.rs", refrigerant_file(expansions))
        fitted[spec.designation] = expansions
        numbers += expansions.numbers()
    departure = nitrogen.fit()
    print(f"nitrogen: {sum(map(len, departure))} numbers, worst {nitrogen.worst_error(departure, CERTIFY_SEED):.2g}")
    write_rust(TABLES / "nitrogen.rs", nitrogen_file(departure))
    rows.write_refrigerants(fitted)
    rows.write(
        "nitrogen.csv", "Nitrogen at constant density", rows.NITROGEN_COLUMNS,
        nitrogen.hold_rows(rows.NITROGEN, rows.SEED),
    )
    print(f"all: {4 * (numbers + sum(map(len, departure)))} bytes of coefficients")


if __name__ == "__main__":
    sys.exit(main())
