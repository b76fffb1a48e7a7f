"""Rows of ../door/vacuum-hold.csv: see README.md."""

import csv
import json
import math
import random
import sys

import numpy as np
from iapws import IAPWS97, _iapws
from scipy.optimize import curve_fit

MICRON = 0.133322387415
MINUTE = 60.0


def plateau(t, start, level, constant):
    return level - (level - start) * np.exp(-t / constant)


def rise(t, start, rate):
    return start + rate * t


def both(t, start, added, constant, rate):
    return start + added * (1 - np.exp(-t / constant)) + rate * t


def readings(seed, law, parameters, minutes, noise, step):
    """Times in s, pressures in micron as a gauge shows them."""
    chance = random.Random(seed)
    times = [MINUTE * m for m in minutes]
    true = law(np.array(times) / MINUTE, *parameters)
    shown = [round(p * (1 + noise * chance.gauss(0, 1)) / step) * step for p in true]
    return times, shown


def as_input(times, shown, **more):
    listed = [{"time": t, "pressure": f"{p} micron"} for t, p in zip(times, shown)]
    return {"readings": listed, **more}


rows = []


def row(entered, at, expected, tolerance, origin, source):
    rows.append(["vacuum-hold", json.dumps(entered, ensure_ascii=False), at, expected, tolerance, origin, source])


def fitted(entered, times, shown, law, first, noise, step, named):
    """Fits with curve_fit; `named` gives pointer and unit of each parameter."""
    t, p = np.array(times) / MINUTE, np.array(shown, dtype=float)
    sigma = np.sqrt((noise * p) ** 2 + step**2 / 12)
    for _ in range(3):
        found, covariance = curve_fit(law, t, p, p0=first, sigma=sigma, absolute_sigma=True, maxfev=20000)
        # Scatter goes with the pressure itself, not with the reading.
        sigma = np.sqrt((noise * law(t, *found)) ** 2 + step**2 / 12)
    spread = np.sqrt(np.diag(covariance))
    for value, error, (at, unit) in zip(found, spread, named):
        row(entered, at, f"{value * unit:.6g}", f"{0.5 * error * unit:.2g}", "second-method",
            "scipy.optimize.curve_fit; half its standard uncertainty")
    return found


PLATEAU = [("/fits/1/start", MICRON), ("/fits/1/plateau", MICRON), ("/fits/1/timeConstant", MINUTE)]
RISE = [("/fits/0/start", MICRON), ("/fits/0/rate", MICRON / MINUTE)]


def wet_holds():
    cases = [
        (1, (300, 2400, 9), range(16), 0.015, 10, {"ambientTemperature": "22 °C"}),
        (2, (150, 9000, 14), [i / 2 for i in range(31)], 0.02, 25, {}),
        (3, (420, 1500, 3), [0, 1, 2, 3, 4.5, 6, 8, 10, 12, 15], 0.01, 5, {"volume": "8 L"}),
    ]
    for seed, parameters, minutes, noise, step, more in cases:
        times, shown = readings(seed, plateau, parameters, minutes, noise, step)
        entered = as_input(times, shown, gaugeNoise=noise, gaugeResolution=f"{step} micron", **more)
        found = fitted(entered, times, shown, plateau, parameters, noise, step, PLATEAU)
        row(entered, "/verdict", "moisture", "", "hand-worked", "made as a rise that levels off")
        level = found[1] * MICRON
        kelvin = IAPWS97(P=level / 1e6, x=0).T if level > 611.657 else ice(level)
        row(entered, "/plateau/waterTemperature", f"{kelvin:.4f}", "0.3", "second-method",
            "library iapws at the plateau that curve_fit finds; the plateau's uncertainty decides")


def ice(pascals):
    """Temperature of ice under this vapour, by halving with the library's sublimation pressure."""
    low, high = 190.0, 273.16
    for _ in range(60):
        middle = 0.5 * (low + high)
        if _iapws._Sublimation_Pressure(middle) * 1e6 < pascals:
            low = middle
        else:
            high = middle
    return low


def leaks():
    cases = [
        (4, (250, 60), range(16), 0.02, 10, {}),
        (5, (400, 24), [i / 4 for i in range(61)], 0.015, 1, {}),
        (6, (120, 350), [0, 0.5, 1, 2, 3, 5, 7, 10, 15], 0.01, 50, {"volume": "6 L"}),
    ]
    for seed, parameters, minutes, noise, step, more in cases:
        times, shown = readings(seed, rise, parameters, minutes, noise, step)
        entered = as_input(times, shown, gaugeNoise=noise, gaugeResolution=f"{step} micron", **more)
        found = fitted(entered, times, shown, rise, parameters, noise, step, RISE)
        row(entered, "/verdict", "leak", "", "hand-worked", "made as an even rise")
        hour = (found[0] + 60 * found[1]) * MICRON
        row(entered, "/expected/2/pressure", f"{hour:.5g}", f"{0.05 * hour:.2g}", "second-method",
            "curve_fit's straight line at an hour; 5 %, for some gas given off is not ruled out")
        if "volume" in more:
            gas = found[1] * MICRON / MINUTE * 6e-3
            row(entered, "/leak/gas", f"{gas:.4g}", f"{0.03 * gas:.1g}", "second-method",
                "V·dp/dt with curve_fit's rate; 3 %, for some gas given off is not ruled out")


def leak_with_gas():
    times, shown = readings(7, both, (300, 150, 3, 80), [i / 2 for i in range(61)], 0.01, 1)
    entered = as_input(times, shown, gaugeNoise=0.01, gaugeResolution="1 micron")
    t, p = np.array(times) / MINUTE, np.array(shown, dtype=float)
    sigma = 0.01 * p
    found, covariance = curve_fit(both, t, p, p0=(300, 150, 3, 80), sigma=sigma, absolute_sigma=True)
    error = math.sqrt(covariance[3][3])
    rate = MICRON / MINUTE
    row(entered, "/verdict", "leak", "", "hand-worked", "made as an even rise with gas given off")
    row(entered, "/fits/2/rate", f"{found[3] * rate:.5g}", f"{1.0 * error * rate:.2g}", "second-method",
        "scipy.optimize.curve_fit; its standard uncertainty, for the core tries a grid")


def flat(level, minutes, **more):
    times = [MINUTE * m for m in minutes]
    return as_input(times, [level] * len(times), gaugeResolution="1 micron", **more)


def dry():
    entered = flat(300, range(16))
    row(entered, "/verdict", "dry-and-tight", "", "hand-worked", "the reading never moves")
    row(entered, "/latest/pressure", f"{300 * MICRON:.6f}", "0.05", "hand-worked", "300 micron, 1/1000 mmHg each; the laws tried shift it by less than half a micron")
    row(entered, "/saturationPressure", f"{IAPWS97(T=293.15, x=0).P * 1e6:.3f}", "0.01", "second-method",
        "library iapws at 20 °C, which is assumed")
    row(entered, "/dryPressure", f"{750 * MICRON:.6f}", "1e-5", "hand-worked", "750 micron, the usual limit")
    entered = flat(100, range(16), ambientTemperature="-30 °C")
    pressure = _iapws._Sublimation_Pressure(243.15) * 1e6
    row(entered, "/saturationPressure", f"{pressure:.4f}", "0.001", "second-method", "library iapws, ice at -30 °C")
    row(entered, "/dryPressure", f"{0.5 * pressure:.4f}", "0.001", "second-method", "half of ice's pressure at -30 °C")
    row(entered, "/verdict", "dry-and-tight", "", "hand-worked", "well below half of ice's pressure")
    entered = flat(250, range(16), ambientTemperature="-30 °C")
    row(entered, "/verdict", "moisture", "", "hand-worked", "near ice's own pressure, 285 micron: frost holds it")


UFGS = "UFGS 15182, 3.3.3: 300 micron, an hour, at most 500 micron"
DECREE = "Real Decreto 552/2019, IF-09, 1.6.3: under 270 Pa, three hours, a rise of 2 Pa"


def rules():
    def hour(last, first=300, minutes=60, **more):
        return as_input([0, MINUTE * minutes], [first, last], gaugeResolution="1 micron", **more)

    for entered, verdict, why in [
        (hour(480), "in-band", "480 after an hour"),
        (hour(499), "in-band", "499 after an hour, gauge good to half a micron"),
        (hour(500), "cannot-tell", "500 after an hour, on the limit"),
        (hour(502), "out-of-band", "502 after an hour"),
        (hour(480, minutes=59), "cannot-tell", "480 after 59 minutes: not over yet"),
        (hour(520, minutes=10), "out-of-band", "520 after ten minutes already"),
        (hour(480, gaugeUncertainty="30 micron"), "cannot-tell", "480 with a gauge good to 30"),
        (hour(480, first=320), "out-of-band", "not evacuated to 300 micron"),
        (hour(480, first=310, pumpEndPressure="290 micron"), "in-band", "290 with the pump on"),
    ]:
        row(entered, "/pass/verdict", verdict, "", "published", f"{UFGS}; {why}")
    row(hour(480, minutes=20), "/pass/remaining", "2400", "1e-9", "published", f"{UFGS}; 20 minutes done")
    row(hour(480), "/verdict", "open", "", "hand-worked", "two readings tell no cause")

    def three_hours(last, hours=3):
        listed = [{"time": "0", "pressure": 200}, {"time": f"{hours} h", "pressure": last}]
        listed[0]["time"] = 0
        return {"readings": listed, "passRule": "real-decreto-552-2019", "gaugeResolution": 0.1}

    for entered, verdict, why in [
        (three_hours(201.8), "in-band", "rise of 1.8 Pa"),
        (three_hours(202.2), "out-of-band", "rise of 2.2 Pa"),
        (three_hours(201.8, 2.9), "cannot-tell", "not over yet"),
    ]:
        row(entered, "/pass/verdict", verdict, "", "published", f"{DECREE}; {why}")
    plate = hour(600, passRule="plate", passPressure="700 micron", passTime="45 min")
    row(plate, "/pass/verdict", "in-band", "", "hand-worked", "600 against the plate's 700 after its 45 minutes")
    plate = hour(600, minutes=29, passPressure="700 micron")
    row(plate, "/pass/remaining", "60", "1e-9", "hand-worked", "half an hour if the plate does not say")


def limits():
    def problem(entered, place, field, code):
        row(entered, f"/problems/{place}/field", field, "", "hand-worked", "limit of the method")
        row(entered, f"/problems/{place}/code", code, "", "hand-worked", "limit of the method")

    one = [{"time": 0, "pressure": 40}]
    row({"readings": one}, "/verdict", "open", "", "hand-worked", "one reading")
    row({"readings": one}, "/reason", "too-few-readings", "", "hand-worked", "one reading")
    row({"readings": one}, "/holdLonger", "900", "1e-9", "hand-worked", "a usual hold of a quarter of an hour")
    problem({}, 0, "readings", "too-few")
    row({"readings": [{"time": 0, "pressure": 50000}]}, "/verdict", "open", "", "hand-worked", "highest pressure")
    problem({"readings": [{"time": 0, "pressure": 50000.1}]}, 0, "readings[0].pressure", "outside-validity")
    problem({"readings": [{"time": 60, "pressure": 40}, {"time": 0, "pressure": 40}]}, 0, "readings[1].time", "out-of-order")
    # All that is wrong comes at once.
    both = {"readings": [{"time": 60, "pressure": 60000}, {"time": 0, "pressure": 40}]}
    problem(both, 0, "readings[0].pressure", "outside-validity")
    problem(both, 1, "readings[1].time", "out-of-order")
    problem({"readings": [{"time": 0}]}, 0, "readings[0].pressure", "missing")
    for celsius, inside in [(-60, True), (-60.1, False), (90, True), (90.1, False)]:
        entered = {"readings": one, "ambientTemperature": f"{celsius} °C"}
        if inside:
            row(entered, "/verdict", "open", "", "hand-worked", "ambient limit")
        else:
            problem(entered, 0, "ambientTemperature", "outside-validity")
    for noise, inside in [("20 %", True), ("20.1 %", False)]:
        entered = {"readings": one, "gaugeNoise": noise}
        if inside:
            row(entered, "/verdict", "open", "", "hand-worked", "largest scatter")
        else:
            problem(entered, 0, "gaugeNoise", "outside-validity")
    problem({"readings": one, "passRule": "plate"}, 0, "passPressure", "missing")
    problem({"readings": one, "curvePoints": 1}, 0, "curvePoints", "not-a-choice")
    row(flat(300, [0, 0.5, 1, 1.9]), "/verdict", "open", "", "hand-worked", "four readings in under two minutes")
    row(flat(300, [0, 1, 2]), "/verdict", "open", "", "hand-worked", "three readings")
    row(flat(300, [0, 5, 10, 15]), "/verdict", "dry-and-tight", "", "hand-worked", "four readings, never moving")
    row(flat(3000, range(16)), "/reason", "level-too-high", "", "hand-worked", "never moving, far above what is dry")
    fall = as_input([60 * m for m in range(16)], [900 - 30 * m for m in range(16)], gaugeResolution="10 micron")
    row(fall, "/verdict", "cannot-tell", "", "hand-worked", "30 micron a minute less")
    row(fall, "/reason", "readings-fall", "", "hand-worked", "30 micron a minute less")
    slow = as_input([60 * m for m in range(61)], [300 + 9 * m for m in range(61)], gaugeResolution="1 micron")
    row(slow, "/reason", "slow-rise", "", "hand-worked", "9 micron a minute, between 7 and 12")
    jump = as_input([60 * m for m in range(16)], [300] * 8 + [5000] * 8, gaugeResolution="1 micron")
    row(jump, "/reason", "fits-no-law", "", "hand-worked", "a valve opened halfway")
    nothing = as_input([60 * m for m in range(16)], [0] * 16)
    row(nothing, "/reason", "gauge-shows-nothing", "", "hand-worked", "zeros")


for part in (wet_holds, leaks, leak_with_gas, dry, rules, limits):
    part()
writer = csv.writer(sys.stdout, lineterminator="\n")
writer.writerow(["calculation", "input", "at", "expected", "tolerance", "origin", "source"])
writer.writerows(rows)
