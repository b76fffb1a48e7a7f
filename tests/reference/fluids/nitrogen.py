"""Compressibility factor of nitrogen, Z = 1 + p * Q(p, T), from Span et al. (2000) by CoolProp."""

import random

import CoolProp.CoolProp as CP
import numpy as np
from CoolProp import AbstractState

import chebyshev

TEMPERATURES = (233.15, 343.15)
LARGEST_PRESSURE = 7.5e6
# What must hold is 2e-4 of a pressure.
TOLERANCE = 6e-6


def compressibility(state, temperature, pressure):
    state.update(CP.PT_INPUTS, pressure, temperature)
    return state.compressibility_factor()


def fit():
    state = AbstractState("HEOS", "Nitrogen")
    low, high = TEMPERATURES
    x, y = chebyshev.nodes(24), chebyshev.nodes(16)
    temperatures = 0.5 * (low + high) + 0.5 * (high - low) * x
    pressures = 0.5 * LARGEST_PRESSURE * (y + 1)
    # Per scaled pressure: the sum below is 1 + part * Q, part from 0 to 1.
    part = 0.5 * (y + 1)
    samples = np.array([
        [(compressibility(state, T, p) - 1) / f for p, f in zip(pressures, part)] for T in temperatures
    ])
    weight = np.broadcast_to(part, samples.shape)
    return chebyshev.fit_surface(samples, TOLERANCE, weight=weight, extra=1)


def evaluate(rows, temperature, pressure):
    low, high = TEMPERATURES
    x = (2 * temperature - low - high) / (high - low)
    part = pressure / LARGEST_PRESSURE
    return 1 + part * chebyshev.evaluate_surface(rows, x, 2 * part - 1)


def worst_error(rows, seed):
    state, draw = AbstractState("HEOS", "Nitrogen"), random.Random(seed)
    worst = 0.0
    for _ in range(2000):
        T, p = draw.uniform(*TEMPERATURES), draw.uniform(1e3, LARGEST_PRESSURE)
        worst = max(worst, abs(evaluate(rows, T, p) / compressibility(state, T, p) - 1))
    return worst


def hold_rows(count, seed):
    """A vessel of constant density: filled at (p1, T1), read at T2."""
    state, draw = AbstractState("HEOS", "Nitrogen"), random.Random(seed)
    rows = []
    for _ in range(count):
        T1, T2 = round(draw.uniform(250, 330), 3), round(draw.uniform(250, 330), 3)
        p1 = round(draw.uniform(1.1e5, 6.5e6), 0)
        state.update(CP.PT_INPUTS, p1, T1)
        density, z = state.rhomass(), state.compressibility_factor()
        state.update(CP.DmassT_INPUTS, density, T2)
        # Kept within the pressures that the expansion is for.
        if state.p() <= 7.2e6:
            rows.append((p1, T1, T2, state.p(), density, z))
    return rows
