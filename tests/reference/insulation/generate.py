"""Writes ../door/insulation.csv: see README.md."""

import csv
import json
import math
import pathlib

import psychrolib
from CoolProp.CoolProp import PropsSI
from ht.conv_external import Nu_cylinder_Churchill_Bernstein
from ht.conv_free_immersed import Nu_horizontal_cylinder_Churchill_Chu
from scipy.constants import g, sigma
from scipy.optimize import brentq

psychrolib.SetUnitSystem(psychrolib.SI)
ZERO_CELSIUS = 273.15
FILE = pathlib.Path(__file__).parent.parent / "door" / "insulation.csv"

BALANCE = "scipy brentq on the heat balance, PsychroLib 2.5.0 for the dew point"
WORKED = "ht 1.2.0 (Churchill and Chu; Churchill and Bernstein), CoolProp 8.0.0 for air, scipy brentq, PsychroLib 2.5.0"


def coefficient(diameter, surface, air, pressure, emissivity, speed):
    """W/(m²·K), temperatures in °C."""
    surface, air = surface + ZERO_CELSIUS, air + ZERO_CELSIUS
    mean = (surface + air) / 2
    def of(name):
        return PropsSI(name, "T", mean, "P", pressure, "Air")

    viscosity, conductivity = of("V") / of("D"), of("L")
    prandtl = of("V") * of("C") / conductivity
    grashof = g / mean * abs(air - surface) * diameter**3 / viscosity**2
    natural = Nu_horizontal_cylinder_Churchill_Chu(prandtl, grashof)
    blown = Nu_cylinder_Churchill_Bernstein(speed * diameter / viscosity, prandtl)
    radiation = emissivity * sigma * (air**2 + surface**2) * (air + surface)
    return max(natural, blown) * conductivity / diameter + radiation


class Case:
    """A line, temperatures in °C, diameter and thickness in mm."""

    def __init__(self, tube, line, air, humidity, conductivity=0.040, given=None, emissivity=0.9, speed=0.0,
                 altitude=None, margin=0.0, thickness=None):
        self.diameter, self.line, self.air = tube / 1000, line, air
        self.conductivity, self.given = conductivity, given
        self.emissivity, self.speed = emissivity, speed
        self.pressure = 101325.0 if altitude is None else psychrolib.GetStandardAtmPressure(altitude)
        self.dew = psychrolib.GetTDewPointFromRelHum(air, humidity)
        self.margin, self.thickness = margin, thickness
        self.input = {"tube": f"{tube} mm", "lineTemperature": f"{line} °C", "dryBulb": f"{air} °C",
                      "relativeHumidity": humidity}
        for name, value, usual in [("conductivity", conductivity, 0.040), ("surfaceCoefficient", given, None),
                                   ("emissivity", emissivity, 0.9), ("airSpeed", speed, 0.0),
                                   ("altitude", altitude, None), ("dewPointMargin", margin, 0.0)]:
            if value != usual:
                self.input[name] = value
        if thickness is not None:
            self.input["thickness"] = f"{thickness} mm"

    def h(self, outside, surface):
        if self.given is not None:
            return self.given
        return coefficient(outside, surface, self.air, self.pressure, self.emissivity, self.speed)

    def excess(self, outside, surface):
        """Heat that reaches the outside less what the insulation lets through, for a metre, over π."""
        reaches = self.h(outside, surface) * outside * (self.air - surface)
        return reaches - 2 * self.conductivity * (surface - self.line) / math.log(outside / self.diameter)

    def least(self):
        surface = self.dew + self.margin
        outside = brentq(lambda d: self.excess(d, surface), self.diameter * (1 + 1e-9), self.diameter + 0.4)
        return (outside - self.diameter) / 2

    def surface(self):
        outside = self.diameter + 2 * self.thickness / 1000
        surface = brentq(lambda t: self.excess(outside, t), self.line, self.air)
        return surface, math.pi * outside * self.h(outside, surface) * (self.air - surface)


def rows():
    # Coefficient given: the same equation, another solver. The dew points differ by what PsychroLib stops at.
    given = [
        Case(6.35, 5, 30, 0.80, 0.036, 9.0, thickness=9),
        Case(12.7, 2, 27, 0.60, 0.038, 8.0, thickness=13),
        Case(15.875, 5, 30, 0.80, 0.036, 9.0, thickness=19),
        Case(22, -10, 32, 0.85, 0.034, 10.0, thickness=25),
        Case(28.575, -30, 25, 0.70, 0.036, 9.0, thickness=32),
        Case(19.05, 7, 35, 0.90, 0.040, 6.0, thickness=13),
        Case(15.875, 5, 30, 0.80, 0.036, 9.0, margin=1.5),
        Case(16, 10, 24, 0.50, 0.033, 25.0, thickness=6),
        Case(6, -25, -5, 0.70, 0.036, 9.0, thickness=6),
    ]
    for case in given:
        yield case, "/dewPoint", case.dew + ZERO_CELSIUS, 0.002, BALANCE
        yield case, "/thickness", case.least(), 2e-5, BALANCE
        if case.thickness is not None:
            surface, gain = case.surface()
            yield case, "/entered/surfaceTemperature", surface + ZERO_CELSIUS, 1e-6, BALANCE
            yield case, "/entered/heatGain", gain, 1e-6, BALANCE
    # Coefficient worked out: air by another library too, which moves it by up to half a percent.
    worked = [
        Case(15.875, 5, 30, 0.80, thickness=19),
        Case(9.525, 8, 26, 0.60, thickness=9),
        Case(22, 0, 35, 0.85, thickness=32),
        Case(28.575, -30, 25, 0.75, 0.036, thickness=25),
        Case(15.875, 5, 30, 0.80, emissivity=0.1, thickness=19),
        Case(15.875, 5, 30, 0.80, speed=1.5, thickness=9),
        Case(15.875, 5, 30, 0.80, altitude=2000, thickness=19),
        Case(15.875, 5, 30, 0.80, speed=10.0, emissivity=0.2, thickness=6),
    ]
    for case in worked:
        outside = case.diameter + 2 * case.thickness / 1000
        surface, gain = case.surface()
        h = case.h(outside, surface)
        yield case, "/entered/surfaceCoefficient", h, 0.006 * h, WORKED
        yield case, "/entered/surfaceTemperature", surface + ZERO_CELSIUS, 0.02, WORKED
        yield case, "/entered/heatGain", gain, 0.003 * gain, WORKED
        thickness = case.least()
        yield case, "/thickness", thickness, 0.008 * thickness, WORKED


def by_hand():
    """Input, pointer, expected, tolerance, origin, source."""
    textbook = ("hand-worked",
                "R = 1/(π·D₂·h) + ln(D₂/D)/(2π·k): cold tube of 10 mm, k 0.055, h 5, as in Incropera and others, Introduction "
                "to Heat Transfer, example of a critical radius k/h = 11 mm, recalled from memory")
    tube = {"tube": "10 mm", "lineTemperature": "5 °C", "dryBulb": "25 °C", "relativeHumidity": 0.5,
            "conductivity": 0.055, "surfaceCoefficient": 5}
    yield tube, "/bare/heatGain", 3.141593, 1e-5, *textbook
    # 1/(π·0.022·5) + ln(2.2)/(2π·0.055) = 2.893726 + 2.281580 m·K/W, least of all thicknesses
    yield {**tube, "thickness": "6 mm"}, "/entered/heatGain", 3.864506, 1e-5, *textbook
    # 1/(π·0.020·5) + ln 2/(2π·0.055) = 3.183099 + 2.005778 m·K/W
    yield {**tube, "thickness": "5 mm"}, "/entered/heatGain", 3.854399, 1e-5, *textbook
    frozen = ("hand-worked", "line warmer than the dew point: PsychroLib 2.5.0 gives 9.3 °C for 20 °C and 50 %")
    dry = {"tube": "5/8", "lineTemperature": "12 °C", "dryBulb": "20 °C", "relativeHumidity": "50 %"}
    yield dry, "/thickness", 0.0, 0.0, *frozen
    yield dry, "/bare/againstDewPoint/verdict", "in-band", 0, *frozen
    edge = ("hand-worked", "limits that the documentation names")
    line = {"tube": "5/8", "lineTemperature": "5 °C", "dryBulb": "30 °C", "relativeHumidity": "80 %"}
    yield {**line, "relativeHumidity": "100 %"}, "/problems/0/code", "too-high", 0, *edge
    yield {**line, "relativeHumidity": "100 %"}, "/problems/0/field", "relativeHumidity", 0, *edge
    yield {**line, "relativeHumidity": "98.7 %"}, "/coefficientBasis", "coefficient-still-air", 0, *edge
    yield {**line, "dewPointMargin": "3.8 K"}, "/problems/0/field", "dewPointMargin", 0, *edge
    for name, at, beyond in [("tube", "3 mm", "2.9 mm"), ("tube", "1 m", "1.1 m"),
                             ("lineTemperature", "-100 °C", "-101 °C"), ("conductivity", 0.005, 0.0049),
                             ("conductivity", 1, 1.01), ("surfaceCoefficient", 0.5, 0.49),
                             ("surfaceCoefficient", 500, 501), ("emissivity", 0.01, 0.009), ("emissivity", 1, 1.01),
                             ("airSpeed", "30 m/s", "31 m/s"), ("thickness", "200 mm", "201 mm"),
                             ("thickness", "0 mm", "-1 mm"), ("humidityUncertainty", 0, -0.01),
                             ("dewPointMargin", 0, "-0.1 K")]:
        # Dry enough that some thickness always does.
        dry = {**line, "relativeHumidity": "30 %"}
        yield {**dry, name: at}, "/ambient/basis", "assumed-sea-level", 0, *edge
        yield {**dry, name: beyond}, "/problems/0/field", name, 0, *edge
    yield {**line, "surfaceCoefficient": 9, "emissivity": 0.9}, "/problems/0/code", "conflict", 0, *edge
    yield {**line, "dewPoint": "20 °C"}, "/problems/0/code", "wrong-count", 0, *edge
    yield {"tube": "5/8", "lineTemperature": "5 °C", "dryBulb": "30 °C"}, "/problems/0/code", "wrong-count", 0, *edge
    yield {"relativeHumidity": "80 %"}, "/problems/2/field", "dryBulb", 0, *edge


def main():
    with FILE.open("w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(["calculation", "input", "at", "expected", "tolerance", "origin", "source"])
        for case, at, expected, tolerance, source in rows():
            text = json.dumps(case.input, ensure_ascii=False)
            writer.writerow(["insulation", text, at, f"{expected:.10g}", f"{tolerance:.3g}", "second-method", source])
        for given, at, expected, tolerance, origin, source in by_hand():
            text = json.dumps(given, ensure_ascii=False)
            writer.writerow(["insulation", text, at, expected, tolerance, origin, source])


main()
