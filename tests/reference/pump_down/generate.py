"""Times of pump-downs by integrating the differential equations, for tests/pump_down.rs.

Random systems: a volume, a pump, hoses side by side with or without a valve core, water or none. The
state is stepped through time by scipy's solve_ivp; the flow through the hoses is found by nested
bracketing. None of this is how the core does it: there the time is one integral over pressure.

`seconds` is for laminar to molecular flow, as the core has it. `seconds_turbulent` lets each tube pass no more than
turbulent or choked isothermal flow would, for dry systems: what the core's assumption costs.
"""

import csv
import json
import math
import random
from pathlib import Path

from iapws._iapws import _Sublimation_Pressure
from iapws.iapws97 import _PSat_T
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

HERE = Path(__file__).parent
SYSTEMS = 50
TARGETS_MICRON = (5000, 1000, 500, 300)
MICRON = 0.133322387415
GAS = 287.05  # Air, J/(kg·K).
ROOM = 293.15
VISCOSITY = 18.2e-6
CORE = (2e-3, 10e-3)


def conductance(bore, length, mean):
    """m³/s, bore and length in m, mean pressure in Pa: 135 and 12.1 in cm, mbar, L/s turned to SI."""
    viscous = 135.0 * 1e-3 * 1e8 / 1e2 / 1e2 * bore**4 / length * mean
    molecular = 12.1 * 1e-3 * 1e6 / 1e2 * bore**3 / length
    reduced = bore * mean  # 1 cm·mbar is 1 m·Pa.
    return viscous + molecular * (1 + 192 * reduced) / (1 + 237 * reduced)


def laminar(bore, length, upper, lower):
    return conductance(bore, length, (upper + lower) / 2) * (upper - lower)


def turbulent(bore, length, upper, lower):
    """Throughput of isothermal turbulent flow with an entry loss, choked where it must be."""
    area = math.pi / 4 * bore**2
    flux = upper / math.sqrt(GAS * ROOM)
    for _ in range(30):
        reynolds = max(flux * bore / VISCOSITY, 1.0)
        drag = 0.316 / reynolds**0.25 * length / bore + 0.5
        choked = lambda p: p * p * (drag + 2 * math.log(upper / p)) - (upper**2 - p * p)
        exit_pressure = max(lower, brentq(choked, upper * 1e-6, upper * (1 - 1e-12)))
        exit_pressure = min(exit_pressure, upper * (1 - 1e-12))
        new = math.sqrt((upper**2 - exit_pressure**2) / (GAS * ROOM * (drag + 2 * math.log(upper / exit_pressure))))
        if abs(new - flux) < 1e-9 * new:
            break
        flux = new
    return flux * area * GAS * ROOM


def tube_flow(bore, length, upper, lower, rough):
    if upper <= lower:
        return 0.0
    flow = laminar(bore, length, upper, lower)
    if rough and upper > 100:
        flow = min(flow, turbulent(bore, length, upper, lower))
    return flow


def path_flow(hose, system, inlet, rough):
    def after(between):
        return tube_flow(hose["bore"], hose["length"], between, inlet, rough)

    if hose["core"] == "out":
        return hose["count"] * after(system)
    excess = lambda between: tube_flow(*CORE, system, between, rough) - after(between)
    between = brentq(excess, inlet, system, xtol=1e-13 * system, rtol=1e-13)
    return hose["count"] * after(between)


def throughput(case, system, rough):
    """Pa·m³/s out of the system at this pressure in it."""
    speed, ultimate = case["pumpSpeed"], case["ultimatePressure"]
    excess = lambda inlet: sum(path_flow(h, system, inlet, rough) for h in case["hoses"]) - speed * (inlet - ultimate)
    inlet = brentq(excess, ultimate, system, xtol=1e-13 * system, rtol=1e-13)
    return speed * (inlet - ultimate)


def saturation(kelvins):
    megapascals = _Sublimation_Pressure(kelvins) if kelvins < 273.16 else _PSat_T(kelvins)
    return megapascals * 1e6


def dry_times(case, start, targets, rough):
    """Seconds from a pressure to each of the targets, which fall."""
    volume = case["volume"]
    slope = lambda _, state: [-throughput(case, math.exp(state[0]), rough) / (volume * math.exp(state[0]))]
    events = []
    for target in targets:
        event = lambda _, state, target=target: state[0] - math.log(target)
        event.terminal = target == targets[-1]
        events.append(event)
    tolerance = 1e-6 if rough else 1e-9
    run = solve_ivp(slope, (0, 1e8), [math.log(start)], method="LSODA", events=events, rtol=tolerance, atol=tolerance)
    return [float(times[0]) for times in run.t_events]


def times(case, rough=False):
    start, targets = case["startingPressure"], [micron * MICRON for micron in TARGETS_MICRON]
    if not case.get("water"):
        return dry_times(case, start, targets, rough)
    volume, temperature = case["volume"], case["ambientTemperature"]
    vapour = saturation(temperature)
    specific = 8.314462618 / 0.018015268

    def slope(_, state):
        other = math.exp(state[0])
        pressure = vapour + other
        flow = throughput(case, pressure, rough)
        return [-flow / (pressure * volume), -flow * vapour / (pressure * specific * temperature)]

    gone = lambda _, state: state[1]
    gone.terminal = True
    wet_targets = [target for target in targets if target > vapour]
    events = [gone]
    for target in wet_targets:
        events.append(lambda _, state, target=target: vapour + math.exp(state[0]) - target)
    run = solve_ivp(slope, (0, 1e8), [math.log(start - vapour), case["water"]], method="LSODA", events=events, rtol=1e-9, atol=1e-12)
    found = {target: float(hit[0]) for target, hit in zip(wet_targets, run.t_events[1:]) if len(hit)}
    left = [target for target in targets if target not in found]
    dry_after = float(run.t_events[0][0])
    pressure = vapour + math.exp(run.y_events[0][0][0])
    for target, time in zip(left, dry_times(case, pressure, left, rough) if left else []):
        found[target] = dry_after + time
    return [found[target] for target in targets]


def system(random):
    hose = lambda: {
        "bore": round(random.uniform(3e-3, 13e-3), 4),
        "length": round(random.uniform(0.3, 3.0), 2),
        "core": random.choice(["in", "out"]),
        "count": random.choice([1, 1, 1, 2]),
    }
    case = {
        "pumpSpeed": round(random.uniform(0.3e-3, 6e-3), 6),
        "ultimatePressure": round(random.uniform(5, 100) * MICRON, 3),
        "volume": round(math.exp(random.uniform(math.log(0.5e-3), math.log(40e-3))), 6),
        "startingPressure": round(random.uniform(70e3, 106e3)),
        "hoses": [hose() for _ in range(random.choice([1, 1, 2, 3]))],
    }
    if random.random() < 0.4:
        case["water"] = round(math.exp(random.uniform(math.log(0.1e-3), math.log(20e-3))), 6)
        case["ambientTemperature"] = round(random.uniform(258, 313), 1)
    return case


def main():
    chance = random.Random(20)
    with open(HERE / "times.csv", "w", newline="") as file:
        rows = csv.writer(file, lineterminator="\n")
        rows.writerow(["input", "target_Pa", "seconds", "seconds_turbulent"])
        for _ in range(SYSTEMS):
            case = system(chance)
            rough = [None] * len(TARGETS_MICRON) if case.get("water") else times(case, rough=True)
            for micron, seconds, turbulent_seconds in zip(TARGETS_MICRON, times(case), rough):
                slow = "" if turbulent_seconds is None else f"{turbulent_seconds:.6g}"
                rows.writerow([json.dumps(case), f"{micron * MICRON:.10g}", f"{seconds:.10g}", slow])
            file.flush()


if __name__ == "__main__":
    main()
