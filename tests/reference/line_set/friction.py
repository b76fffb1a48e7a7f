"""Random line sets by CoolProp and fluids, to hold the calculation `line-set` against.

Liquid is taken as the core takes it, saturated at its own temperature, and for the last column, mass flow
and all, truly compressed to condensing pressure; superheated vapour has the library's own viscosity. Friction and
fittings by fluids. Refrigerants whose viscosity the library has.

Run in an environment with CoolProp 8.0.0 and fluids 1.3.1: python friction.py > friction.csv
"""

import csv
import math
import random
import sys

import fluids
from CoolProp.CoolProp import PropsSI

CASES = 100
ROUGHNESS = 1.5e-6
# Bores in bores of straight tube: what the core takes, so that friction itself is compared.
FITTINGS = {"elbows90": 30.0, "elbows45": 16.0, "teeRuns": 20.0, "teeBranches": 60.0}
LIBRARY_NAMES = {
    "R-22": "R22",
    "R-32": "R32",
    "R-134a": "R134a",
    "R-290": "Propane",
    "R-404A": "R404A",
    "R-407C": "R407C",
    "R-410A": "R410A",
    "R-507A": "R507A",
    "R-600a": "IsoButane",
    "R-1234yf": "R1234yf",
    "R-1234ze(E)": "R1234ze(E)",
}
BORES = [4.0, 4.826, 6.0, 7.899, 8.0, 10.0, 11.074, 13.0, 14.0, 14.097, 16.0, 17.272, 19.939, 20.0, 26.035]
COLUMNS = [
    "refrigerant", "way", "capacity_W", "evaporating_C", "condensing_C", "superheat_K", "subcooling_K",
    "liquid_bore_mm", "suction_bore_mm", "length_m", *FITTINGS,
    "mass_flow_kg_s", "liquid_velocity_m_s", "gas_velocity_m_s", "liquid_drop_Pa", "gas_drop_Pa", "gas_viscosity_Pa_s", "compressed_liquid_drop_Pa",
]


def drop(mass_flow, density, viscosity, bore, length, fittings):
    """Velocity and pressure drop by fluids."""
    velocity = mass_flow / (density * math.pi / 4 * bore**2)
    reynolds = fluids.Reynolds(V=velocity, D=bore, rho=density, mu=viscosity)
    factor = fluids.friction_factor(Re=reynolds, eD=ROUGHNESS / bore)
    loss = fluids.K_from_f(fd=factor, L=length, D=bore)
    for name, count in fittings.items():
        loss += count * fluids.K_from_L_equiv(L_D=FITTINGS[name], fd=factor)
    return velocity, fluids.dP_from_K(K=loss, rho=density, V=velocity), reynolds


def fitting_bore(mass_flow, density, slowest, fastest, generator):
    """A bore in which the flow has a velocity between two limits, if there is one."""
    velocity = lambda bore: mass_flow / (density * math.pi / 4 * (bore / 1000) ** 2)
    bores = [bore for bore in BORES if slowest < velocity(bore) < fastest]
    return generator.choice(bores) if bores else None


def case(generator):
    """A random line set, or nothing where no tube suits it."""
    refrigerant, fluid = generator.choice(list(LIBRARY_NAMES.items()))
    way = generator.choice(["cooling", "heating"])
    capacity = round(math.exp(generator.uniform(math.log(1500), math.log(30000))), -1)
    evaporating = round(generator.uniform(-25, 15), 1)
    condensing = round(generator.uniform(max(25, evaporating + 15), 55), 1)
    superheat = round(generator.uniform(2, 15) if way == "cooling" else generator.uniform(15, 35), 1)
    subcooling = round(generator.uniform(0.5, 12), 1)
    bubble = PropsSI("P", "T", condensing + 273.15, "Q", 0, fluid)
    liquid_temperature = condensing - subcooling + 273.15
    if way == "cooling":
        pressure = PropsSI("P", "T", evaporating + 273.15, "Q", 1, fluid)
        dew = evaporating + 273.15
    else:
        pressure = bubble
        dew = PropsSI("T", "P", pressure, "Q", 1, fluid)
    gas_state = ("T", dew + superheat, "P", pressure, fluid)
    liquid = {name: PropsSI(name, "T", liquid_temperature, "Q", 0, fluid) for name in "DVH"}
    compressed = {name: PropsSI(name, "T", liquid_temperature, "P", bubble, fluid) for name in "DVH"}
    gas = {name: PropsSI(name, *gas_state) for name in "DVH"}
    mass_flow = capacity / (gas["H"] - liquid["H"])
    liquid_bore = fitting_bore(mass_flow, liquid["D"], 0.3, 2.0, generator)
    suction_bore = fitting_bore(mass_flow, gas["D"], 3.0, 16.0, generator)
    if liquid_bore is None or suction_bore is None:
        return None
    length = round(generator.uniform(3, 40), 1)
    fittings = dict(zip(FITTINGS, (generator.randint(0, 10), generator.randint(0, 4), generator.randint(0, 2), generator.randint(0, 1))))
    along = lambda mass_flow, state, bore: drop(mass_flow, state["D"], state["V"], bore / 1000, length, fittings)
    liquid_velocity, liquid_drop, liquid_reynolds = along(mass_flow, liquid, liquid_bore)
    _, compressed_drop, _ = along(capacity / (gas["H"] - compressed["H"]), compressed, liquid_bore)
    gas_velocity, gas_drop, _ = along(mass_flow, gas, suction_bore)
    if liquid_reynolds < 4000 or gas_drop > 0.15 * pressure or liquid_drop > 0.3 * pressure:
        return None
    return [
        refrigerant, way, capacity, evaporating, condensing, superheat, subcooling,
        liquid_bore, suction_bore, length, *fittings.values(),
        *(f"{figure:.8g}" for figure in (
            mass_flow, liquid_velocity, gas_velocity, liquid_drop, gas_drop, gas["V"], compressed_drop
        )),
    ]


def main():
    generator = random.Random(7)
    output = csv.writer(sys.stdout, lineterminator="\n")
    sys.stdout.write("# Line sets by CoolProp 8.0.0 and fluids 1.3.1. Made by friction.py; see README.md.\n")
    output.writerow(COLUMNS)
    rows = 0
    while rows < CASES:
        row = case(generator)
        if row:
            output.writerow(row)
            rows += 1


if __name__ == "__main__":
    main()
