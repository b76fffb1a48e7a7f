"""Writes tests/reference/door/standing-test.csv: CoolProp for nitrogen and refrigerants, NumPy for the line."""

import csv
import json
import pathlib

import CoolProp.CoolProp as CP
import numpy as np

PSI = 6894.757293168361
AIR = 101325.0
NAME = "standing-test"
ROWS = []
COOLPROP = "CoolProp 8.0.0; Span et al. (2000)"


def row(inputs, at, expected, tolerance, origin, source):
    ROWS.append([NAME, json.dumps(inputs, ensure_ascii=False), at, expected, tolerance, origin, source])


def fahrenheit(number):
    return (number + 459.67) / 1.8


def reading(hours, pressure, temperature, **rest):
    return {"time": f"{hours} h", "gaugePressure": pressure, "temperature": temperature, **rest}


def density(pressure, kelvins):
    return CP.PropsSI("D", "P", pressure, "T", kelvins, "Nitrogen")


def held(gauge, first, second):
    """Gauge pressure after going from one temperature to the other at constant density, in the standard air."""
    return CP.PropsSI("P", "D", density(gauge + AIR, first), "T", second, "Nitrogen") - AIR


def two(first, second, hours=24, **rest):
    return {"readings": [reading(0, *first), reading(hours, *second)], **rest}


# What the gauge should show.
row(
    two(("500 psi", "70 °F"), ("506 psi", "76 °F"), gaugeResolution="1 psi"),
    "/hold/expectedGaugePressure", 506 * PSI, 0.5 * PSI, "published",
    "ASHRAE Journal, January 2021, p. 40: +6 °F gives +6 psi at 500 psig; half its last digit",
)
row(
    two(("500 psi", "70 °F"), ("506 psi", "76 °F"), gaugeResolution="1 psi"),
    "/verdict", "tight", "", "published", "ASHRAE Journal, January 2021, p. 40: that rise is the temperature's",
)
row(
    two(("144 psi", "70 °F"), ("144 psi", "71 °F")),
    "/hold/difference", -0.3 * PSI, 0.05 * PSI, "published",
    "UFGS 15182: correct by 0.3 psi for each °F, which is true near 144 psig; half its last digit",
)
for gauge, first, second in [(140, 70, 40), (600, 70, 40), (600, 40, 100), (450, 95, 75), (20, 60, 75)]:
    row(
        two((f"{gauge} psi", f"{first} °F"), (f"{gauge} psi", f"{second} °F")),
        "/hold/expectedGaugePressure",
        round(held(gauge * PSI, fahrenheit(first), fahrenheit(second)), 1), 10, "second-method", COOLPROP,
    )
row(
    {"readings": [reading(0, "40 bar", "20 °C", barometer="1000 mbar"), reading(24, "40.2 bar", "20 °C", barometer="980 mbar")]},
    "/hold/difference", 18000, 0.01, "hand-worked", "The gauge rises by what the air falls: 0.2 bar less 20 mbar",
)

# Loss by a line of equal weights: one temperature, gauge steps that do not matter.
hours = np.array([0.0, 3, 5, 9, 12, 20])
bars = np.array([40.0, 39.85, 39.73, 39.55, 39.41, 38.96])
lines = {"readings": [reading(h, f"{b} bar", "293.15 K") for h, b in zip(hours, bars)]}
amounts = density(bars * 1e5 + AIR, 293.15)
compensated = (40e5 + AIR) * amounts / amounts[0]
slope = np.polyfit(hours * 3600, compensated, 1)[0]
row(
    lines, "/hold/pressureLossRate", round(-slope, 7), round(3e-4 * -slope, 7), "second-method",
    "numpy.polyfit through the amounts by CoolProp 8.0.0, as pressure at the first temperature; weights are not quite equal",
)
row(lines, "/hold/duration", 72000, 1e-6, "hand-worked", "20 h")
row(lines, "/verdict", "losing-gas", "", "hand-worked", "1.04 bar in 20 h at one temperature")

# Uncertainty of two readings: rounding r²/12 and half a step of misreading, a tenth of the gauge's uncertainty, the
# thermometer's, each twice; a fifth of the thermometer's twice; weather 500 Pa.
r, gauge_u, kelvin_u, pressure, kelvins = 1e4, 4e4, 0.5, 40e5 + AIR, 293.15
per_kelvin = pressure / kelvins
variance = 2 * ((r / 2) ** 2 + (gauge_u / 10) ** 2 + (per_kelvin * kelvin_u) ** 2)
variance += 2 * r**2 / 12 + 2 * (per_kelvin * kelvin_u / 5) ** 2 + 500**2
expanded = 3 * variance**0.5
even = two(("40 bar", "20 °C"), ("40 bar", "20 °C"), hours=48, gaugeUncertainty="0.4 bar")
WORKED = "By the method's own sum of variances, worked outside the core"
row(even, "/hold/differenceUncertainty", round(expanded, 3), 1, "hand-worked", WORKED)
row(even, "/hold/pressureLossRateUncertainty", round(expanded / 172800, 7), 1e-4, "hand-worked", WORKED)
row(even, "/hold/leastDetectable", round(2 * expanded / 172800, 7), 2e-4, "hand-worked", "Twice that")
row(even, "/hold/upperLimit", round(expanded / 172800, 7), 1e-4, "hand-worked", "No loss, and its uncertainty")
row(even, "/hold/leakToSee", round(0.02 * pressure / 86400, 7), 1e-6, "hand-worked", "2 % of the absolute pressure in 24 h")
row(
    even, "/hold/holdToSee", round(2 * expanded / (0.02 * pressure / 86400), 1), 20, "hand-worked",
    "Least detectable over leak to see, times the hold",
)
row(even, "/verdict", "tight", "", "hand-worked", "The upper limit is below the leak to see")
short = two(("40 bar", "20 °C"), ("40 bar", "20 °C"), hours=2, gaugeUncertainty="0.4 bar")
row(short, "/verdict", "cannot-tell", "", "hand-worked", "Uncertainty over 2 h is above the leak to see")
row(short, "/reason", "too-short-to-tell", "", "hand-worked", "Uncertainty over 2 h is above the leak to see")
for drop, verdict, reason in [
    (0.35, "tight", "loss-ruled-out"),
    (0.41, "cannot-tell", "near-leak-to-see"),
    (0.45, "losing-gas", "loss-beyond-uncertainty"),
]:
    dropped = two(("40 bar", "20 °C"), (f"{40 - drop} bar", "20 °C"))
    why = "Uncertain by 0.425 bar, in 24 h 0.82 bar to see: " + f"{drop} bar and that against it"
    row(dropped, "/verdict", verdict, "", "hand-worked", why)
    row(dropped, "/reason", reason, "", "hand-worked", why)

# Leak sizes: Q = V dp/dt, and laminar flow of refrigerant through the same channel.
for refrigerant, fluid in [("R-32", "R32"), ("R-410A", "R410A"), ("R-290", "Propane")]:
    loss = two(("40 bar", "20 °C"), ("39 bar", "20 °C"), volume="5 L", refrigerant=refrigerant)
    amounts = density(np.array([41.01325e5, 40.01325e5]), 293.15)
    rate = 41.01325e5 * (1 - amounts[1] / amounts[0]) / 86400
    throughput = rate * 0.005
    standing = CP.PropsSI("P", "T", 298.15, "Q", 1, fluid)
    vapour = CP.PropsSI("D", "T", 298.15, "Q", 1, fluid)
    viscosity = CP.PropsSI("V", "T", 298.15, "Q", 1, fluid)
    nitrogen = CP.PropsSI("V", "T", 298.15, "P", 1e5, "Nitrogen")
    driving = (standing**2 - AIR**2) / (41.01325e5**2 - AIR**2)
    mass = throughput * driving * nitrogen / viscosity * vapour / standing
    row(
        loss, "/hold/leak/refrigerant", float(f"{mass:.6g}"), float(f"{0.01 * mass:.3g}"), "second-method",
        "Laminar flow by hand; pressures, density and viscosities by CoolProp 8.0.0; viscosity within 1 %",
    )
row(loss, "/hold/leak/nitrogen", float(f"{throughput:.6g}"), 1e-8, "second-method", "V dp/dt with amounts by " + COOLPROP)

# Stages.
RULE = "Real Decreto 552/2019, IF-09: 1.1 PS, first 1.5 bar, then half, then tenths, at least 30 min"
design = {"designPressure": "40 bar", "lowestRating": "45 bar"}
row(design, "/guidance/testPressure", 44e5, 1, "published", RULE)
row(design, "/guidance/hold", 1800, 1e-9, "published", RULE)
row(design, "/guidance/rating", "within-rating", "", "hand-worked", "44 bar is below 45 bar")
for place, stage in enumerate([1.5, 22, 26.4, 30.8, 35.2, 39.6, 44]):
    row(design, f"/guidance/stages/{place}/gaugePressure", round(stage * 1e5, 3), 1, "published", RULE)
capped = {"designPressure": "40 bar", "lowestRating": "42 bar"}
row(capped, "/guidance/testPressure", 42e5, 1, "hand-worked", "Never above the lowest-rated part")
row(capped, "/guidance/wantedTestPressure", 44e5, 1, "published", RULE)
row(capped, "/guidance/stages/6/gaugePressure", 42e5, 1, "hand-worked", "Never above the lowest-rated part")
row(capped, "/warnings/0", "test-pressure-capped", "", "hand-worked", "44 bar is above 42 bar")
row({**design, "lowestRating": "44 bar"}, "/guidance/rating", "within-rating", "", "hand-worked", "At the rating itself")
row({"designPressure": "40 bar"}, "/guidance/rating", "rating-open", "", "hand-worked", "No rating was entered")
ufgs = {"designPressure": "550 psi", "testRule": "ufgs-15182"}
row(ufgs, "/guidance/stages/0/gaugePressure", round(10 * PSI, 3), 1, "published", "UFGS 15182: 10 psig with soap first")
row(ufgs, "/guidance/stages/0/action", "soap-joints", "", "published", "UFGS 15182: 10 psig with soap first")
row(ufgs, "/guidance/hold", 86400, 1e-6, "published", "UFGS 15182: hold 24 h")
plate = {"plateTestPressure": "4.15 MPa"}
row(plate, "/guidance/rule", "plate", "", "hand-worked", "The plate outranks every rule")
row(plate, "/guidance/testPressure", 4.15e6, 1, "hand-worked", "The plate's own test pressure")

# Nitrogen.
need = {"designPressure": "40 bar", "volume": "5 L", "cylinderVolume": "10 L", "cylinderPressure": "150 bar"}
mass = 0.005 * (density(44e5 + AIR, 293.15) - density(AIR, 293.15))
row(need, "/nitrogen/mass", round(mass, 7), round(1e-3 * mass, 7), "second-method", COOLPROP + ", within 0.1 %")
free = mass / density(AIR, 293.15)
row(need, "/nitrogen/freeGas", round(free, 6), round(1e-3 * free, 6), "second-method", COOLPROP + ", within 0.1 %")
left = CP.PropsSI("P", "D", density(150e5 + AIR, 293.15) - mass / 0.010, "T", 293.15, "Nitrogen") - AIR
row(need, "/nitrogen/cylinder/figure", round(left), round(2e-3 * left), "second-method", COOLPROP + ", within 0.2 %")
row(need, "/nitrogen/cylinder/verdict", "in-band", "", "second-method", COOLPROP)
low = {**need, "cylinderPressure": "50 bar"}
row(low, "/nitrogen/cylinder/verdict", "out-of-band", "", "second-method", "A cylinder at 50 bar cannot fill to 44 bar: " + COOLPROP)

# Both sides of the limits.
LIMITS = "Valid from 250 to 330 K, from 0.1 bar at the start up to 60 bar"
for kelvins, problem in [(250, None), (249.9, "temperature"), (330, None), (330.1, "temperature")]:
    one = {"readings": [reading(0, "10 bar", kelvins)]}
    at = "/problems/0/field" if problem else "/verdict"
    row(one, at, f"readings[0].{problem}" if problem else "open", "", "hand-worked", LIMITS)
for bar, problem in [(0.1, None), (0.09, True), (60, None), (60.1, True), (-0.2, True)]:
    one = {"readings": [reading(0, f"{bar} bar", "20 °C")]}
    at = "/problems/0/field" if problem else "/verdict"
    row(one, at, "readings[0].gaugePressure" if problem else "open", "", "hand-worked", LIMITS)
row(two(("10 bar", "20 °C"), ("0 bar", "20 °C")), "/reason", "large-loss", "", "hand-worked", "All of the gas is gone")
row(
    two(("10 bar", "20 °C"), ("-0.1 bar", "20 °C")), "/problems/0/field", "readings[1].gaugePressure", "",
    "hand-worked", "A hold under pressure does not fall below the air's",
)
row(
    two(("60 bar", "250 K"), ("60 bar", "330 K")), "/problems/0/field", "readings[0].gaugePressure", "", "hand-worked",
    "60 bar at 250 K is above 75 bar at 330 K: beyond the data",
)
for cylinder, problem in [(318, None), (321, "cylinderPressure")]:
    inputs = {**need, "cylinderPressure": f"{cylinder} bar"}
    at = "/problems/0/field" if problem else "/nitrogen/cylinder/verdict"
    row(inputs, at, problem or "in-band", "", "hand-worked", "Valid up to 320 bar, absolute")
row({"readings": [reading(5, "10 bar", "20 °C"), reading(4, "10 bar", "20 °C")]}, "/problems/0/code", "out-of-order", "", "hand-worked", "4 h comes before 5 h")
row({"readings": [{"time": "1 h", "gaugePressure": "10 bar"}]}, "/problems/0/field", "readings[0].temperature", "", "hand-worked", "Without a temperature the answer would be a guess")
row({"testRule": "ufgs-15182"}, "/problems/0/field", "designPressure", "", "hand-worked", "The rule starts from it")
row({}, "/verdict", "open", "", "hand-worked", "No readings")

path = pathlib.Path(__file__).resolve().parents[1] / "door" / f"{NAME}.csv"
with path.open("w", newline="", encoding="utf-8") as file:
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow(["calculation", "input", "at", "expected", "tolerance", "origin", "source"])
    writer.writerows(ROWS)
