"""Writes ../door/running.csv: see README.md."""

import csv
import json
import math
import sys
from pathlib import Path

import psychrolib

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE.parent / "fluids"))
from library import BUBBLE, DEW, LIBRARY, SPECS, Model  # noqa: E402

PSI = 6894.757293168361
SEA_LEVEL = 101_325.0
TITLE_24 = "California Title 24 (2008), residential appendix "
PRACTICE = "common practice, no source: "
PSYCHROLIB = "PsychroLib 2.5.0, ASHRAE Fundamentals (2017) chapter 1; 0.2 %, its saturation equations"
TON, CFM = 3516.8528420667, 0.4719474432e-3
THERMOMETER = 1.4 / 1.8

psychrolib.SetUnitSystem(psychrolib.SI)
rows = []


def kelvins(fahrenheit):
    return (fahrenheit + 459.67) / 1.8


def row(given, at, expected, tolerance, origin, source):
    rows.append(["running", json.dumps(given, ensure_ascii=False), at, expected, tolerance, origin, source])


def standard_air(metres):
    return SEA_LEVEL * (1 - 0.0065 * metres / 288.15) ** 5.2558797


# -- published: the appendix ----------------------------------------------

RUNS = {
    "refrigerant": "R-410A", "suctionGaugePressure": "118 psi", "suctionLineTemperature": "52 °F",
    "liquidGaugePressure": "340 psi", "liquidLineTemperature": "95 °F", "outdoorDryBulb": "88 °F",
}
VALVE = RUNS | {"meteringDevice": "thermostatic-valve"}


def fahrenheit_band(given, at, low, high, source):
    row(given, f"{at}/target/band/low", low / 1.8, 1e-9, "published", TITLE_24 + source)
    row(given, f"{at}/target/band/high", high / 1.8, 1e-9, "published", TITLE_24 + source)


fahrenheit_band(VALVE, "/superheat", 4, 25, "RA3.2.2.6: 4 to 25 °F where the maker gives none")
fahrenheit_band(VALVE | {"meteringDevice": "electronic-valve"}, "/superheat", 4, 25, "RA3.2.2.6: metering valves")
fahrenheit_band(RUNS | {"plateSuperheat": "10 °F"}, "/superheat", 5, 15, "RA3.2.2.5: ± 5 °F, installer")
fahrenheit_band(RUNS | {"plateSubcooling": "10 °F"}, "/subcooling", 7, 13, "RA3.2.2.6: ± 3 °F, installer")
SPLIT = {"returnDryBulb": "75 °F", "supplyDryBulb": "56 °F", "targetSplit": "20 °F"}
fahrenheit_band(SPLIT, "/temperatureSplit", 17, 23, "RA3.2.2.7: ± 3 °F, installer")
for at, expected in (("suctionGauge", 3.5 * PSI), ("liquidGauge", 7 * PSI)):
    row(VALVE, f"/accuracy/{at}", expected, 1e-6, "published", TITLE_24 + "RA3.2.2.2: gauges")
row(VALVE, "/accuracy/thermometer", 1.4 / 1.8, 1e-9, "published", TITLE_24 + "RA3.2.2.2.1: 1.3 °F + 0.1 % of a reading of 100 °F")
AIR = {"airflow": "900 cfm", "plateCapacity": "3 ton"}
row(AIR, "/airflow/limit", 900 * CFM, 1e-7, "published", TITLE_24 + "RA3.2.2.7: 300 cfm for a ton")
for flow, verdict in (("900 cfm", "cannot-tell"), ("1001 cfm", "in-band"), ("817 cfm", "out-of-band")):
    row(AIR | {"airflow": flow}, "/airflow/verdict", verdict, 0, "hand-worked", TITLE_24 + "RA3.2.2.7, with 10 % on the airflow")

# Limits of validity, both sides.
for outdoor, answer in (("55 °F", "in-band"), ("54.9 °F", None)):
    given = VALVE | {"outdoorDryBulb": outdoor}
    source = TITLE_24 + "RA3.2.1: 55 °F or above"
    if answer:
        row(given, "/superheat/judgement/verdict", answer, 0, "published", source)
    else:
        row(given, "/superheat/open", "outdoor-too-cold", 0, "published", source)
        row(given, "/notices/0", "outdoor-too-cold", 0, "published", source)
for time, at, answer in (
    ("15 min", "/superheat/judgement/verdict", "in-band"),
    ("14.9 min", "/superheat/open", "not-settled"),
):
    row(VALVE | {"runningTime": time}, at, answer, 0, "published", TITLE_24 + "RA3.2.2.5: 15 minutes to stabilize")
# A target of exactly 5 °F: (3·60 - 80 - 90) / 2.
ORIFICE = {"meteringDevice": "fixed-orifice"}
for outdoor, at, answer in (
    ("90 °F", "/superheat/target/basis", "orifice-rule"),
    ("90.1 °F", "/superheat/open", "target-too-low"),
):
    given = RUNS | ORIFICE | {"returnWetBulb": "60 °F", "outdoorDryBulb": outdoor}
    row(given, at, answer, 0, "published", TITLE_24 + "RA3.2.2.5: under 5 °F no valid test")
for wet_bulb, outdoor, at, answer in (
    ("76 °F", "55 °F", "/superheat/target/basis", "orifice-rule"),
    ("76.1 °F", "80 °F", "/superheat/open", "outside-rule"),
    ("50 °F", "55 °F", "/superheat/target/basis", "orifice-rule"),
    ("49.9 °F", "55 °F", "/superheat/open", "outside-rule"),
    ("76 °F", "115 °F", "/superheat/target/basis", "orifice-rule"),
    ("76 °F", "115.1 °F", "/superheat/open", "outside-rule"),
):
    given = RUNS | ORIFICE | {"returnWetBulb": wet_bulb, "outdoorDryBulb": outdoor}
    row(given, at, answer, 0, "published", TITLE_24 + "extent of table RA3.2-2, from memory")

# The rule for a fixed orifice.
for wet_bulb, outdoor in ((64, 96), (66, 90), (70, 85), (60, 75), (72, 110)):
    given = ORIFICE | {"returnWetBulb": f"{wet_bulb} °F", "outdoorDryBulb": f"{outdoor} °F"}
    target = (3 * wet_bulb - 80 - outdoor) / 2
    for side, off in (("low", -5), ("high", 5)):
        row(given, f"/superheat/target/band/{side}", (target + off) / 1.8, 1e-9, "hand-worked", PRACTICE + "(3·WB − 80 − DB)/2 °F, ± 5 °F")
    error = math.hypot(1.5 * 1.4, 0.5 * 1.4) / 1.8
    row(given, "/superheat/target/uncertainty", error, 1e-9, "hand-worked", "1.5 and 0.5 times the thermometer's 1.4 °F, root of the sum of squares")
TABLE = dict(zip(range(50, 77), (
    8.8, 10.1, 11.5, 12.8, 14.2, 15.6, 17.1, 18.5, 20.0, 21.5, 23.1, 24.6, 26.2, 27.8, 29.4, 31.0, 32.4, 33.8, 35.1,
    36.4, 37.7, 39.0, 40.2, 41.5, 42.7, 43.9, 45.0,
)))
for wet_bulb in (50, 54, 58, 62, 66, 70, 73, 76):
    given = ORIFICE | {"returnWetBulb": f"{wet_bulb} °F", "outdoorDryBulb": "55 °F"}
    row(given, "/superheat/target/band/high", (TABLE[wet_bulb] + 5) / 1.8, 1.55 / 1.8, "published", TITLE_24 + "table RA3.2-2 at 55 °F, from memory; the rule lies within 1.55 °F of it")
# The wet bulb out of dry bulb and relative humidity.
wet_bulb = psychrolib.GetTWetBulbFromRelHum(24.0, 0.5, SEA_LEVEL) * 1.8 + 32
given = ORIFICE | {"returnDryBulb": "24 °C", "returnRelativeHumidity": "50 %", "outdoorDryBulb": "85 °F"}
row(given, "/superheat/target/band/low", ((3 * wet_bulb - 80 - 85) / 2 - 5) / 1.8, 0.01, "second-method", "wet bulb by PsychroLib 2.5.0; the rule by hand")

# -- saturation: tables and CoolProp --------------------------------------

def gauge(pascals, air=SEA_LEVEL):
    return {"text": repr((pascals - air) / 1e3), "assume": "kPa"}


MORAN = "Moran and Shapiro, Fundamentals of Engineering Thermodynamics, "
ENERGYPLUS = "US Department of Energy, EnergyPlus property data of R-410A, dew line"
for refrigerant, pressure, saturation, side, source in (
    ("R-22", 498_110, 273.15, "suction", MORAN + "table A-7, 0 °C"),
    ("R-22", 245_340, 253.15, "suction", MORAN + "table A-7, -20 °C"),
    ("R-134a", 1_000_000, 312.52, "liquid", MORAN + "table of R-134a, 1000 kPa"),
    ("R-410A", 798_080, 273.15, "suction", ENERGYPLUS),
    ("R-410A", 1_608_600, 297.15, "suction", ENERGYPLUS),
):
    off = 8 if side == "suction" else -8
    given = {"refrigerant": refrigerant, f"{side}GaugePressure": gauge(pressure), f"{side}LineTemperature": saturation + off}
    at = "/superheat/figure" if side == "suction" else "/subcooling/figure"
    row(given, at, 8, 0.03, "published", source + "; 0.03 K, the age of the source")

UNCERTAINTY = {"pure": 0.05, "pseudo-pure": 0.2, "mixture": 0.4}
CASES = {
    "R-22": (5, 45), "R-32": (4, 42), "R-134a": (2, 50), "R-290": (-5, 40), "R-407C": (5, 45), "R-410A": (4, 42),
    "R-452B": (3, 41), "R-454B": (4, 42), "R-513A": (0, 45), "R-1234yf": (2, 48), "R-744": (-10, 20), "R-600a": (-15, 40),
}
specs = {spec.designation: spec for spec in SPECS}
for index, (refrigerant, (evaporating, condensing)) in enumerate(CASES.items()):
    model = Model(specs[refrigerant])
    metres = (0, 0, 300, 1500)[index % 4]
    air = standard_air(metres)
    low = round(model.saturated(evaporating + 273.15, DEW).pressure, -2)
    high = round(model.saturated(condensing + 273.15, BUBBLE).pressure, -2)
    given = {
        "refrigerant": refrigerant, "suctionGaugePressure": gauge(low, air), "suctionLineTemperature": f"{evaporating + 7} °C",
        "liquidGaugePressure": gauge(high, air), "liquidLineTemperature": f"{condensing - 6} °C", "altitude": f"{metres} m",
    }

    def saturation(pressure, quality):
        return model.saturated_at_pressure(pressure, quality).temperature

    dew, bubble = saturation(low, DEW), saturation(high, BUBBLE)
    row(given, "/superheat/figure", evaporating + 280.15 - dew, 2e-3, "second-method", f"{LIBRARY}; 2 mK, the fit and the air's pressure")
    row(given, "/subcooling/figure", bubble - condensing - 267.15, 2e-3, "second-method", f"{LIBRARY}; 2 mK, the fit and the air's pressure")
    for at, pressure, error, quality in (("superheat", low, 3.5 * PSI, DEW), ("subcooling", high, 7 * PSI, BUBBLE)):
        slope = (saturation(pressure + 1e3, quality) - saturation(pressure - 1e3, quality)) / 2e3
        total = math.hypot(error * slope, THERMOMETER, UNCERTAINTY[specs[refrigerant].kind])
        row(given, f"/{at}/uncertainty", total, 0.02 * total, "second-method", f"{LIBRARY}, slope over ± 1 kPa; 2 %, the curve within the gauge's error")
    row(given, "/compressionRatio", high / low, 2e-5 * high / low, "hand-worked", "ratio of the absolute pressures")

# -- air side -------------------------------------------------------------

AIR_CASES = [
    # return dry bulb °C, wet bulb °C or relative humidity, supply likewise, airflow m³/h, altitude m
    (24.0, 17.5, 13.0, 12.2, 2000, 0),
    (26.7, 19.4, 14.0, 13.3, 1950, 0),
    (25.0, "50 %", 12.0, "92 %", 1000, 0),
    (27.0, "45 %", 14.0, "88 %", 700, 1600),
    (22.0, 14.0, 11.5, 10.0, 1500, 2500),
]
for dry_in, humid_in, dry_out, humid_out, flow, metres in AIR_CASES:
    air = standard_air(metres)

    def ratio(dry, humid):
        if isinstance(humid, str):
            return psychrolib.GetHumRatioFromRelHum(dry, float(humid[:-1]) / 100, air)
        return psychrolib.GetHumRatioFromTWetBulb(dry, humid, air)

    def humidity(side, humid):
        if isinstance(humid, str):
            return {f"{side}RelativeHumidity": humid}
        return {f"{side}WetBulb": f"{humid} °C"}

    before, after = ratio(dry_in, humid_in), ratio(dry_out, humid_out)
    dry_air = flow / 3600 / psychrolib.GetMoistAirVolume(dry_in, before, air)
    total = dry_air * (psychrolib.GetMoistAirEnthalpy(dry_in, before) - psychrolib.GetMoistAirEnthalpy(dry_out, after))
    sensible = dry_air * (psychrolib.GetMoistAirEnthalpy(dry_in, after) - psychrolib.GetMoistAirEnthalpy(dry_out, after))
    given = {
        "returnDryBulb": f"{dry_in} °C", "supplyDryBulb": f"{dry_out} °C", "airflow": f"{flow} m³/h", "altitude": f"{metres} m",
        "plateCapacity": "5 kW",
    } | humidity("return", humid_in) | humidity("supply", humid_out)
    for at, expected, size in (
        ("/capacity/dryAirFlow", dry_air, dry_air), ("/capacity/sensible/figure", sensible, total),
        ("/capacity/latent/figure", total - sensible, total), ("/capacity/total/figure", total, total),
        ("/capacity/ofPlate/figure", total / 5000, total / 5000), ("/capacity/sensibleHeatRatio", sensible / total, 1),
    ):
        row(given, at, expected, 2e-3 * size, "second-method", PSYCHROLIB)
# Heating, with the moisture unknown: within 1 % of what any usual moisture gives.
given = {"mode": "heating", "returnDryBulb": "20 °C", "supplyDryBulb": "42 °C", "airflow": "900 m³/h", "plateCapacity": "6 kW"}
moisture = psychrolib.GetHumRatioFromRelHum(20, 0.4, SEA_LEVEL)
dry_air = 0.25 / psychrolib.GetMoistAirVolume(20, moisture, SEA_LEVEL)
heat = dry_air * (psychrolib.GetMoistAirEnthalpy(42, moisture) - psychrolib.GetMoistAirEnthalpy(20, moisture))
row(given, "/capacity/total/figure", heat, 0.01 * heat, "second-method", "PsychroLib 2.5.0 at 40 % relative humidity, which is not entered; 1 %")
row(given, "/temperatureSplit/figure", 22, 1e-9, "hand-worked", "supply less return in heating")
row(given | {"returnRelativeHumidity": "40 %"}, "/capacity/total/figure", heat, 2e-3 * heat, "second-method", PSYCHROLIB)

# -- patterns: the table of signs, read by hand ---------------------------

SIGNS = "table of signs in src/calc/running/pattern.rs, common practice, no source"
FINE = {"suctionGaugeUncertainty": "0.2 psi", "liquidGaugeUncertainty": "0.2 psi", "thermometerUncertainty": "0.2 °F"}
TUNED = FINE | {"refrigerant": "R-410A", "plateSubcooling": "10 °F", "targetSplit": "20 °F", "outdoorDryBulb": "95 °F", "returnDryBulb": "75 °F"}
# Saturation of R-410A near these readings, by the rows above: 118 psi 39.8 °F, 365 psi 109 °F.
PATTERNS = [
    # device, suction, line, liquid, line, supply, cause
    ("fixed-orifice", "85 psi", "60 °F", "300 psi", "94 °F", "62 °F", "undercharge", "rule-out-airflow"),
    ("thermostatic-valve", "90 psi", "40 °F", "365 psi", "99 °F", "47 °F", "low-indoor-airflow", "check-indoor-airflow"),
    ("thermostatic-valve", "118 psi", "50 °F", "480 psi", "105 °F", "55 °F", "overcharge", "compare-charge"),
    ("thermostatic-valve", "85 psi", "62 °F", "365 psi", "88 °F", "63 °F", "metering-restriction", "check-metering-device"),
    ("thermostatic-valve", "150 psi", "54 °F", "345 psi", "101 °F", "62 °F", "metering-overfeed", "check-bulb-and-orifice"),
]
for device, suction, suction_line, liquid, liquid_line, supply, cause, check in PATTERNS:
    given = TUNED | {
        "meteringDevice": device, "suctionGaugePressure": suction, "suctionLineTemperature": suction_line,
        "liquidGaugePressure": liquid, "liquidLineTemperature": liquid_line, "supplyDryBulb": supply,
    }
    if device == "fixed-orifice":
        given["plateSuperheat"] = "10 °F"
    row(given, "/pattern/causes/0/cause", cause, 0, "hand-worked", SIGNS)
    if cause == "undercharge":
        row(given, "/pattern/causes/0/nextCheck", "rule-out-airflow", 0, "hand-worked", SIGNS)
        given = given | {"airflowChecked": True}
        row(given, "/pattern/causes/0/nextCheck", "find-leak-then-weigh-in", 0, "hand-worked", SIGNS)
        given = given | {"airflow": "800 cfm", "plateCapacity": "3 ton"}
        row(given, "/pattern/causes/0/cause", "low-indoor-airflow", 0, "hand-worked", SIGNS + "; airflow measured as too little")
        row(given, "/pattern/causes/1/nextCheck", "rule-out-airflow", 0, "hand-worked", SIGNS)

# -- what cannot be -------------------------------------------------------

KIND = "kind of the problem, by reading the contract of the calculation"
for given, field, code in (
    ({}, "refrigerant", "missing"),
    ({"refrigerant": "R-32"}, "suctionGaugePressure", "missing"),
    ({"suctionGaugePressure": "118 psi"}, "refrigerant", "missing"),
    ({"refrigerant": "R-744", "liquidGaugePressure": "95 bar"}, "liquidGaugePressure", "above-critical"),
    ({"refrigerant": "R-410A", "suctionGaugePressure": "-1.1 bar"}, "suctionGaugePressure", "too-low"),
    ({"refrigerant": "R-410A", "suctionGaugePressure": "340 psi", "liquidGaugePressure": "118 psi"}, "liquidGaugePressure", "impossible"),
    (RUNS | {"suctionLineTemperature": "800 °F"}, "suctionLineTemperature", "outside-validity"),
    (SPLIT | {"returnWetBulb": "80 °F"}, "returnWetBulb", "impossible"),
    (SPLIT | {"returnWetBulb": "60 °F", "returnRelativeHumidity": "50 %"}, "returnRelativeHumidity", "conflict"),
    (VALVE | {"suctionGaugeUncertainty": "-1 psi"}, "suctionGaugeUncertainty", "outside-validity"),
):
    row(given, "/problems/0/field", field, 0, "hand-worked", KIND)
    row(given, "/problems/0/code", code, 0, "hand-worked", KIND)
wet = RUNS | {"suctionLineTemperature": "30 °F"}
row(wet, "/notices/0", "liquid-in-suction", 0, "hand-worked", "a line colder than its dew temperature of 39.8 °F holds liquid")

with open(HERE.parent / "door" / "running.csv", "w", newline="") as file:
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow(["calculation", "input", "at", "expected", "tolerance", "origin", "source"])
    writer.writerows(rows)
print(len(rows), "rows")
