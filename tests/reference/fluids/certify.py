"""Compare expansions with the library at random points that chose nothing, and test their shape."""

import math
import random

import numpy as np
from numpy.polynomial import chebyshev as C

from expansions import LARGEST_SUPERHEAT
from library import BUBBLE, DEW

ACCEPTED = {
    "pressure %": 0.02, "temperature mK": 5.0, "round trip mK": 2.0, "liquid density %": 0.05,
    "vapour density %": 0.1, "latent heat %": 0.2, "gas density %": 0.3, "gas enthalpy kJ/kg": 0.3,
}
SATURATION_POINTS = 300
SUPERHEAT_POINTS = 200
GRID = 20001


def worst_errors(expansions, lowest, highest, seed):
    """Largest deviation of each quantity between two temperatures in K."""
    model, draw = expansions.model, random.Random(seed)
    worst = {}

    def note(name, error):
        worst[name] = max(worst.get(name, 0.0), abs(error))

    for _ in range(SATURATION_POINTS):
        T = draw.uniform(lowest, highest)
        liquid, vapour = model.saturated(T, BUBBLE), model.saturated(T, DEW)
        for line, state in (("bubble", liquid), ("dew", vapour)):
            note("pressure %", 100 * (math.exp(expansions.at(f"ln_{line}_pressure", T)) / state.pressure - 1))
            note("temperature mK", 1e3 * (expansions.temperature_at(math.log(state.pressure), line) - T))
            back = expansions.temperature_at(float(expansions.at(f"ln_{line}_pressure", T)), line)
            note("round trip mK", 1e3 * (back - T))
        note("liquid density %", 100 * (expansions.at("liquid_density", T) / liquid.density - 1))
        note("vapour density %", 100 * (math.exp(expansions.at("ln_vapour_density", T)) / vapour.density - 1))
        latent = vapour.enthalpy - liquid.enthalpy
        found = expansions.at("vapour_enthalpy", T) - expansions.at("liquid_enthalpy", T)
        note("latent heat %", 100 * (found / latent - 1))
        for name, state in (("liquid", liquid), ("vapour", vapour)):
            found = expansions.heat_capacity(f"{name}_heat_capacity", T)
            note(f"{name} cp %", 100 * (found / state.heat_capacity - 1))
        mu = math.exp(expansions.at("ln_liquid_viscosity", T))
        note("liquid viscosity %", 100 * (mu / expansions.liquid_viscosity(liquid) - 1))
        mu = math.exp(expansions.at("ln_vapour_viscosity", T))
        note("vapour viscosity %", 100 * (mu / expansions.vapour_viscosity(vapour) - 1))
    for _ in range(SUPERHEAT_POINTS):
        dew, superheat = draw.uniform(lowest, highest), draw.uniform(0, LARGEST_SUPERHEAT)
        state = model.superheat_line(dew, [superheat])[0]
        density, enthalpy = expansions.superheated(dew, superheat)
        note("gas density %", 100 * (density / state.density - 1))
        note("gas enthalpy kJ/kg", 1e-3 * (enthalpy - state.enthalpy))
    return worst


def assert_accepted(name, worst):
    for what, limit in ACCEPTED.items():
        assert worst[what] <= limit, f"{name}: {what} {worst[what]} above {limit}"


def assert_shape(expansions):
    """Monotone pressures, temperatures and densities; bubble pressure never below dew pressure."""
    grid = np.linspace(-1, 1, GRID)
    name = expansions.model.spec.designation
    falls_with_theta = ["ln_bubble_pressure", "ln_dew_pressure", "ln_vapour_density", "liquid_enthalpy"]
    falls_with_theta += ["bubble_temperature", "dew_temperature"]
    for series, sign in [(each, -1) for each in falls_with_theta] + [("liquid_density", 1)]:
        if series in expansions.series:
            slope = C.chebval(grid, C.chebder(expansions.series[series]))
            assert (sign * slope > 0).all(), f"{name}: {series} is not monotone"
    if "ln_dew_pressure" in expansions.series:
        bubble = C.chebval(grid, expansions.series["ln_bubble_pressure"])
        dew = C.chebval(grid, expansions.series["ln_dew_pressure"])
        assert (bubble >= dew).all(), f"{name}: bubble pressure below dew pressure"
