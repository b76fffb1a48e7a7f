"""Writes ../door/charge.csv: each row an input, where to look in the reply, what must stand there, and why."""

import csv
import json
from math import pi
from pathlib import Path

from CoolProp.CoolProp import PropsSI

INCH, FOOT, OUNCE, POUND = 0.0254, 0.3048, 0.028349523125, 0.45359237
OUNCE_PER_FOOT = OUNCE / FOOT
WATER = POUND / (27.737 * INCH**3)
BORES = {"1/4": 0.190, "3/8": 0.311, "1/2": 0.436, "3/4": 0.680}

rows = []


def row(given, at, expected, tolerance, origin, source):
    rows.append(["charge", json.dumps(given, ensure_ascii=False), at, expected, tolerance, origin, source])


def problem(given, field, code, source, at=0):
    row(given, f"/problems/{at}/field", field, "", "hand-worked", source)
    row(given, f"/problems/{at}/code", code, "", "hand-worked", source)


def held(size, density):
    return density * pi / 4 * (BORES[size] * INCH) ** 2


def liquid(fluid, celsius):
    return PropsSI("D", "T", celsius + 273.15, "Q", 0, fluid)


# The liquid line from physics.
ENERGY_PLUS = "US Department of Energy, EnergyPlus property file: R-410A liquid {} kg/m³; bore 0.311 in of ASTM B280. 0.2 %: rounding and edition of the equation"
for celsius, density in [(24, 1063.9), (42, 963.08)]:
    given = {"refrigerant": "R-410A", "liquidTube": "3/8", "liquidTemperature": f"{celsius} °C"}
    expected = held("3/8", density)
    row(given, "/line/liquid/massPerLength", f"{expected:.6g}", f"{expected * 2e-3:.2g}", "published", ENERGY_PLUS.format(density))
DERIVED = "0.558 oz/ft at 25 °C, 0.514 at 40 °C from saturated liquid by CoolProp 8.0.0; half a last digit"
for celsius, ounces in [(25, 0.558), (40, 0.514)]:
    given = {"refrigerant": "R-410A", "liquidTube": "3/8", "liquidTemperature": f"{celsius} °C"}
    row(given, "/line/physicsAdder", f"{ounces * OUNCE_PER_FOOT:.6g}", f"{0.0005 * OUNCE_PER_FOOT:.2g}", "second-method", DERIVED)
for refrigerant, fluid, size, celsius in [
    ("R-32", "R32", "1/4", 25), ("R-32", "R32", "1/4", 40), ("R-22", "R22", "1/2", 30), ("R-134a", "R134a", "3/8", 45),
    ("R-290", "R290", "1/4", 35), ("R-1234yf", "R1234yf", "3/8", 40), ("R-407C", "R407C", "3/8", 40), ("R-404A", "R404A", "1/2", 30),
]:  # fmt: skip
    given = {"refrigerant": refrigerant, "liquidTube": size, "liquidTemperature": celsius + 273.15}
    expected = held(size, liquid(fluid, celsius))
    row(given, "/line/liquid/massPerLength", f"{expected:.7g}", f"{expected * 2e-4:.2g}", "second-method", "CoolProp 8.0.0, saturated liquid in the bore of ASTM B280")

# The vapour line from physics: 10 °C dew, 8 K superheat.
RULE = "CoolProp 8.0.0: R-410A vapour, 10 °C dew, 8 K superheat, in ASTM B280 bores, rounded to 0.01 g/m"
for size, grams in [("3/8", 1.93), ("1/2", 3.80), ("3/4", 9.25)]:
    given = {"refrigerant": "R-410A", "vapourTube": size}
    row(given, "/line/vapour/massPerLength", grams / 1000, "0.000006", "second-method", RULE)
given = {"refrigerant": "R-32", "liquidTube": "1/4", "vapourTube": "1/2", "vapourDewTemperature": "5 °C", "superheat": "5 K", "liquidTemperature": "35 °C", "length": "20 m"}
pressure = PropsSI("P", "T", 278.15, "Q", 1, "R32")
both = held("1/4", liquid("R32", 35)) + held("1/2", PropsSI("D", "T", 283.15, "P", pressure, "R32"))
row(given, "/line/physicsAdder", f"{both:.7g}", f"{both * 1e-3:.2g}", "second-method", "CoolProp 8.0.0: liquid at 35 °C in 0.190 in, vapour at 5 °C dew and 5 K in 0.436 in")
row(given, "/line/contents", f"{both * 20:.7g}", f"{both * 20 * 1e-3:.2g}", "second-method", "CoolProp 8.0.0: the same over 20 m")

# Plate, line, accessories.
plate = {"plateCharge": "6 lb 4 oz", "prechargedLength": "15 ft", "length": "45 ft", "plateAdder": "0.6 oz/ft"}
PLATE = "0.6 oz/ft (common practice for 3/8) over 30 ft is 18 oz; 6 lb 4 oz and 18 oz are 7 lb 6 oz"
row(plate, "/charge/toAdd", f"{18 * OUNCE:.10g}", "1e-9", "hand-worked", PLATE)
row(plate, "/charge/total", f"{118 * OUNCE:.10g}", "1e-9", "hand-worked", PLATE)
row(plate, "/charge/basis", "line-by-plate", "", "hand-worked", PLATE)
row(plate | {"arrives": "empty"}, "/charge/toAdd", f"{118 * OUNCE:.10g}", "1e-9", "hand-worked", PLATE)
line = plate | {"refrigerant": "R-410A", "liquidTube": "3/8", "liquidTemperature": "25 °C"}
DIFFERENCE = "0.6 less 0.558 oz/ft (CoolProp 8.0.0), and that over 30 ft; half a last digit"
row(line, "/line/adderDifference", f"{0.042 * OUNCE_PER_FOOT:.5g}", f"{0.0005 * OUNCE_PER_FOOT:.2g}", "second-method", DIFFERENCE)
row(line, "/line/extraDifference", f"{0.042 * 30 * OUNCE:.5g}", f"{0.0005 * 30 * OUNCE:.2g}", "second-method", DIFFERENCE)
metric = {"plateCharge": "1.2 kg", "prechargedLength": "7.5 m", "length": "19 m", "plateAdder": "20 g/m"}
row(metric, "/charge/total", 1.43, "1e-9", "hand-worked", "20 g/m over 11.5 m is 0.230 kg")
accessories = metric | {"refrigerant": "R-32", "accessories": [{"name": "branch", "mass": "0.15 kg"}, {"volume": "0.5 L", "phase": "liquid"}]}
row(accessories, "/charge/accessories", f"{0.15 + 0.5e-3 * liquid('R32', 40):.7g}", "0.0001", "second-method", "0.15 kg and half a litre of R-32 liquid at 40 °C (CoolProp 8.0.0)")
by_physics = {"refrigerant": "R-410A", "plateCharge": "2 kg", "prechargedLength": "5 m", "length": "15 m", "liquidTube": "3/8"}
row(by_physics, "/charge/basis", "line-from-physics", "", "hand-worked", "no adder on the plate")
row(by_physics, "/charge/toAdd", f"{10 * held('3/8', liquid('R410A', 40)):.6g}", "0.0002", "second-method", "CoolProp 8.0.0: 10 m of 3/8 full of liquid at 40 °C")
SHORT = "3 m short of 5 m: the plate's words alone count"
short = {"plateCharge": "2 kg", "prechargedLength": "5 m", "length": "2 m", "plateAdder": "20 g/m"}
row(short, "/charge/total", 2, "1e-9", "hand-worked", SHORT)
row(short, "/charge/toTakeOut", 0, "1e-9", "hand-worked", SHORT)
row(short, "/notices/0", "no-reduction-on-plate", "", "hand-worked", SHORT)
row(short | {"plateReduction": "15 g/m"}, "/charge/toTakeOut", 0.045, "1e-9", "hand-worked", SHORT + ": 15 g/m over 3 m")
row(short | {"plateReduction": "15 g/m", "cylinderStart": "10 kg"}, "/scale/stopMark", 10.045, "1e-9", "hand-worked", "taken out into the cylinder on the scale: its weight rises")
row(short | {"length": 0}, "/line/shortBy", 5, "1e-9", "hand-worked", "no line at all is 5 m short of 5 m")
row({"plateCharge": "2 kg"}, "/notices/0", "line-not-counted", "", "hand-worked", "no line entered")

# The scale.
scale = metric | {"cylinderStart": "11.5 kg", "cylinderTare": "3 kg"}
row(scale, "/scale/stopMark", 11.27, "1e-9", "hand-worked", "11.5 less 0.230 kg")
row(scale | {"scaleResolution": "50 g"}, "/scale/stopMark", 11.3, "1e-9", "hand-worked", "11.27 rounded to 50 g, towards moving less")
row(scale | {"cylinderNow": "11.4 kg"}, "/scale/chargedSoFar", 0.1, "1e-9", "hand-worked", "11.5 less 11.4 kg")
row(scale | {"cylinderNow": "11.4 kg"}, "/scale/remaining", 0.13, "1e-9", "hand-worked", "0.230 less 0.1 kg")
row(scale | {"cylinderNow": "11.4 kg"}, "/scale/state", "scale-go-on", "", "hand-worked", "0.13 kg is more than twice 10 g")
row(scale | {"cylinderNow": "11.28 kg"}, "/scale/state", "scale-stop", "", "hand-worked", "10 g is within twice 10 g of the mark")
row(scale | {"cylinderNow": "11.2 kg"}, "/scale/state", "scale-too-much", "", "hand-worked", "70 g beyond the mark")
row(scale | {"cylinderNow": "11.515 kg"}, "/scale/chargedSoFar", 0, "1e-9", "hand-worked", "15 g heavier than at the start is within twice 10 g: nothing has gone")
row(scale | {"cylinderTare": "11.4 kg"}, "/scale/lacking", 0.13, "1e-9", "hand-worked", "0.1 kg in the cylinder, 0.230 kg to go")
row({"chargeToAdd": "1 lb", "cylinderStart": "30 lb", "cylinderNow": "29.6 lb"}, "/scale/remaining", f"{0.6 * POUND:.8g}", "1e-8", "hand-worked", "30 lb less 29.6 lb is 0.4 lb of 1 lb")

# Recovery cylinders.
GUIDELINE = "ARI Guideline K (2004), worked in a trade journal: 0.8 × 1000 lb × 1.197 = 957.60 lb, with the tare of 380 lb 1337.60 lb; 0.4 %: the printed specific gravity of R-22"
thousand = {"refrigerant": "R-22", "recoveryWaterCapacity": "1000 lb", "recoveryTare": "380 lb"}
row(thousand, "/recovery/readings/0/contents", f"{957.6 * POUND:.7g}", f"{957.6 * POUND * 4e-3:.2g}", "published", GUIDELINE)
row(thousand, "/recovery/largestGross", f"{1337.6 * POUND:.7g}", f"{957.6 * POUND * 4e-3:.2g}", "published", GUIDELINE)
row(thousand, "/recovery/readings/2/contents", f"{800 * POUND:.10g}", "1e-6", "published", "ARI Guideline K before 2004, in a trade journal: 800 lb in a cylinder of 1000 lb")
AMMONIA = "49 CFR 173.304a (a)(2): ammonia, filling density 54 % of the water's weight; half a last digit"
row({"refrigerant": "R-717", "recoveryWaterCapacity": "100 kg", "recoveryTare": "50 kg"}, "/recovery/readings/1/contents", 54, 0.5, "published", AMMONIA)
CARBON = "CoolProp 8.0.0: the lesser of 0.8 of the density at 25 °C, 0.95 of it at 50 °C, and it at 60 °C, in 20 L"
for refrigerant, fluid, rule in [
    ("R-32", "R32", "eighty-percent-of-volume"), ("R-410A", "R410A", "never-full-when-hot"), ("R-134a", "R134a", "eighty-percent-of-volume"),
    ("R-290", "R290", "eighty-percent-of-volume"), ("R-404A", "R404A", "never-full-when-hot"), ("R-507A", "R507A", "never-full-when-hot"),
]:  # fmt: skip
    given = {"refrigerant": refrigerant, "recoveryVolume": "20 L", "recoveryTare": "12 kg", "recoveryGross": "20 kg"}
    stated, warm, hot = (liquid(fluid, celsius) for celsius in (25, 50, 60))
    most = 0.02 * min(0.8 * stated, 0.95 * warm, hot)
    row(given, "/recovery/largestGross", f"{12 + most:.7g}", f"{most * 1e-3:.2g}", "second-method", CARBON)
    row(given, "/recovery/limitedBy", rule, "", "second-method", CARBON)
    row(given, "/recovery/room/figure", f"{most - 8:.6g}", f"{most * 1e-3:.2g}", "second-method", CARBON + ", less 8 kg in it")
    row(given, "/recovery/partFull", f"{8 / (0.02 * stated):.6g}", "0.0005", "second-method", "CoolProp 8.0.0: 8 kg as liquid at 25 °C in 20 L")
full = {"refrigerant": "R-32", "recoveryVolume": "20 L", "recoveryTare": "12 kg", "recoveryGross": "27.5 kg"}
row(full, "/recovery/room/verdict", "out-of-band", "", "hand-worked", "15.5 kg is more than 0.8 × 961 kg/m³ × 20 L = 15.38 kg by more than 10 g")
row(full | {"recoveryGross": "27.375 kg"}, "/recovery/room/verdict", "cannot-tell", "", "hand-worked", "15.375 kg against 15.376 kg, weighed to 10 g")
row(full | {"recoveryTemperature": "-20 °C"}, "/recovery/limitedBy", "never-full-when-hot", "", "second-method", "CoolProp 8.0.0: cold liquid is denser; then the hot limit holds")
row(full, "/notices/0", "water-rule-overfills", "", "hand-worked", "0.8 × 0.998 kg/L is more than 0.8 × 0.961 kg/L")
WATER_RULE = "0.8 × 47.6 lb = 38.08 lb, with 27.5 lb 65.58 lb: the arithmetic of the old reading"
row({"refrigerant": "R-22", "recoveryWaterCapacity": "47.6 lb", "recoveryTare": "27.5 lb"}, "/recovery/readings/2/gross", f"{65.58 * POUND:.10g}", "1e-6", "hand-worked", WATER_RULE)
row({"refrigerant": "R-22", "recoveryWaterCapacity": "47.6 lb", "recoveryTare": "27.5 lb"}, "/recovery/volume", f"{47.6 * POUND / WATER:.7g}", "1e-8", "hand-worked", "Washington Administrative Code 296-307-40029: a pound of water is 27.737 in³ at 60 °F")

# Hose and carbon dioxide.
hose = {"refrigerant": "R-410A", "hoseBore": "5 mm", "hoseLength": "1.5 m"}
row(hose, "/hose/mass", f"{liquid('R410A', 25) * pi / 4 * 0.005**2 * 1.5:.6g}", "0.00001", "second-method", "CoolProp 8.0.0: liquid at 25 °C in 1.5 m of 5 mm")
vapour = PropsSI("D", "T", 273.15, "Q", 1, "R410A") * pi / 4 * 0.005**2 * 1.5
row(hose | {"hosePhase": "vapour", "hoseTemperature": "0 °C"}, "/hose/mass", f"{vapour:.6g}", "0.000002", "second-method", "CoolProp 8.0.0: saturated vapour at 0 °C in 1.5 m of 5 mm; 0.2 %")
REPORTS = "IPCC assessment reports through the data package globalwarmingpotentials, by mass fraction as in the worked example of Regulation (EC) 842/2006 Annex I part 2"
for refrigerant, figures in [("R-410A", (2087.5, 1923.5, 2255.5)), ("R-407C", (1773.85, 1624.21, 1907.93)), ("R-404A", (3921.6, 3942.8, 4728)), ("R-32", (675, 677, 771))]:
    for report, potential in zip(("ar4", "ar5", "ar6"), figures):
        row({"refrigerant": refrigerant, "plateCharge": "2 kg"}, f"/warming/{report}", f"{2 * potential:.8g}", "1e-6", "published", REPORTS)

# Both sides of each limit.
EDGE = "limit of the method"
row({"plateCharge": "1 kg", "prechargedLength": 0, "length": "1000 m", "plateAdder": "1 g/m"}, "/charge/toAdd", 1, "1e-9", "hand-worked", EDGE)
problem({"plateCharge": "1 kg", "prechargedLength": 0, "length": "1000.1 m", "plateAdder": "1 g/m"}, "length", "outside-validity", EDGE)
row({"refrigerant": "R-410A", "vapourTube": "3/4", "superheat": "40 K"}, "/line/vapour/temperature", 323.15, "1e-9", "hand-worked", EDGE)
problem({"refrigerant": "R-410A", "vapourTube": "3/4", "superheat": "40.1 K"}, "superheat", "outside-validity", EDGE)
row({"refrigerant": "R-410A", "liquidTube": "3/8", "liquidTemperature": "68 °C"}, "/line/liquid/phase", "liquid", "", "hand-worked", EDGE)
problem({"refrigerant": "R-410A", "liquidTube": "3/8", "liquidTemperature": "69 °C"}, "liquidTemperature", "near-critical", EDGE)
problem({"refrigerant": "R-410A", "liquidTube": "3/8", "liquidTemperature": "72 °C"}, "liquidTemperature", "above-critical", EDGE)
problem({"refrigerant": "R-410A", "liquidTube": "3/8", "liquidTemperature": "-61 °C"}, "liquidTemperature", "too-low", EDGE)
row({"refrigerant": "R-32", "liquidBore": "0.5 mm"}, "/line/liquid/bore", 0.0005, "1e-12", "hand-worked", EDGE)
problem({"refrigerant": "R-32", "liquidBore": "0.49 mm"}, "liquidBore", "outside-validity", EDGE)
row({"refrigerant": "R-32", "recoveryVolume": "0.1 L", "recoveryTare": "1 kg"}, "/recovery/volume", 0.0001, "1e-12", "hand-worked", EDGE)
problem({"refrigerant": "R-32", "recoveryVolume": 0, "recoveryTare": "1 kg"}, "recoveryVolume", "outside-validity", EDGE)

# What cannot be.
problem({}, "refrigerant", "missing", "nothing is entered")
problem({"refrigerant": "R-744", "recoveryVolume": "20 L", "recoveryTare": "12 kg"}, "refrigerant", "above-critical", "R-744 is above its critical point at 60 °C: no liquid to fill by")
problem({"refrigerant": "R-32", "recoveryVolume": "20 L"}, "recoveryTare", "missing", "no limit on the scale without a tare")
problem({"refrigerant": "R-32", "recoveryTare": "12 kg"}, "recoveryWaterCapacity", "wrong-count", "no limit without a capacity")
problem({"refrigerant": "R-32", "recoveryTare": "12 kg", "recoveryVolume": "20 L", "recoveryWaterCapacity": "20 kg"}, "recoveryVolume", "wrong-count", "one capacity too many")
problem({"recoveryVolume": "20 L", "recoveryTare": "12 kg"}, "refrigerant", "missing", "no density without a refrigerant")
problem({"refrigerant": "R-32", "recoveryVolume": "20 L", "recoveryTare": "12 kg", "recoveryGross": "11 kg"}, "recoveryTare", "impossible", "lighter than empty")
problem({"chargeToAdd": "1 kg", "cylinderStart": "10 kg", "cylinderTare": "11 kg"}, "cylinderTare", "impossible", "lighter than empty")
problem({"chargeToAdd": "1 kg", "cylinderStart": "10 kg", "cylinderNow": "10.1 kg"}, "cylinderNow", "impossible", "heavier than at the start: somebody refilled it")
problem({"chargeToAdd": "1 kg", "cylinderNow": "10.1 kg"}, "cylinderStart", "missing", "a reading now says nothing without one at the start")
problem({"plateCharge": "1 kg", "prechargedLength": "5 m", "length": "10 m"}, "plateAdder", "missing", "a longer line without an adder or a liquid line")
problem({"plateCharge": "1 kg", "length": "10 m", "plateAdder": "20 g/m"}, "prechargedLength", "missing", "what the factory charge serves is not a guess")
problem({"plateCharge": "0.1 kg", "prechargedLength": "50 m", "length": "1 m", "plateReduction": "20 g/m"}, "plateReduction", "impossible", "0.98 kg cannot be taken off 0.1 kg")
problem({"arrives": "empty", "prechargedLength": "5 m", "length": "10 m", "plateAdder": "20 g/m"}, "plateCharge", "missing", "an empty circuit takes the factory charge too")
problem({"refrigerant": "R-32", "liquidTube": "9 mm"}, "liquidTube", "not-in-table", "no such size")
problem({"refrigerant": "R-32", "liquidTube": "3/8", "liquidBore": "8 mm"}, "liquidBore", "conflict", "bore and size at once")
problem({"refrigerant": "R-32", "accessories": [{"volume": "1 L"}]}, "accessories[0].phase", "missing", "full of what")
problem({"refrigerant": "R-32", "accessories": [{"mass": "1 kg", "volume": "1 L", "phase": "liquid"}]}, "accessories[0].volume", "wrong-count", "mass or volume")

target = Path(__file__).parent.parent / "door" / "charge.csv"
with target.open("w", newline="", encoding="utf-8") as file:
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow(["calculation", "input", "at", "expected", "tolerance", "origin", "source"])
    writer.writerows(rows)
print(len(rows), "rows")
