"""One refrigerant as expansions: how they are fitted and how they are read back."""

import math

import numpy as np
from numpy.polynomial import chebyshev as C

import chebyshev
from blend_viscosity import BlendViscosity
from library import BUBBLE, DEW

NODES = 56
SURFACE_NODES = (36, 22)
LARGEST_SUPERHEAT = 40.0

# About a tenth of what must hold (acceptance in brackets).
TOLERANCE = {
    "ln_pressure": 1.0e-5,  # (0.02 %)
    "temperature": 4.0e-4,  # K (0.005 K)
    "liquid_density": 3.0e-5,  # relative (0.05 %)
    "ln_vapour_density": 6.0e-5,  # (0.1 %)
    "enthalpy": 1.5e-4,  # of the latent heat (0.2 % together)
    "heat_capacity": 2.0e-3,  # relative
    "ln_viscosity": 3.0e-3,
    "superheated_volume": 3.0e-4,  # relative (0.3 %)
    "superheated_enthalpy": 30.0,  # J/kg (0.3 kJ/kg)
}
# Azeotropes: bubble and dew nearly touch, so they are held closer than their distance.
TIGHT = {"R-507A": 2.0e-6, "R-513A": 1.0e-6, "R-410A": 4.0e-6}


# The twin of theta on the pressure side: phi = sqrt(ln(pc) + this - ln(p)). It halves the degrees.
LOG_PRESSURE_ROOM = 0.02


class Axis:
    """Maps a temperature range to -1..1 through theta = sqrt(1 - T/Tc)."""

    def __init__(self, critical_temperature, lowest, highest):
        self.critical_temperature = critical_temperature
        self.lowest, self.highest = lowest, highest
        self.cold, self.hot = self.theta(lowest), self.theta(highest)

    def theta(self, temperature):
        return math.sqrt(1 - temperature / self.critical_temperature)

    def scaled(self, temperature):
        """1 at the lowest temperature, -1 at the highest."""
        return (2 * self.theta(temperature) - self.cold - self.hot) / (self.cold - self.hot)

    def temperature(self, scaled):
        theta = 0.5 * (scaled * (self.cold - self.hot) + self.cold + self.hot)
        return self.critical_temperature * (1 - theta * theta)


# How far below the dew temperature an isobar would end, onset * (Tc - T_dew) * theta. A mean-field
# equation bends as (Tc - T)^1.5 there; the factor that takes the fewest numbers is chosen.
ONSETS = (0.5, 1.0, 1.5, 2.0, 3.0)


def superheat_scaled(superheat, onset):
    """-1 at none, 1 at the largest; `onset` in K sets how steep the start is."""
    root = math.sqrt(onset)
    span = math.sqrt(LARGEST_SUPERHEAT + onset) - root
    return 2 * (math.sqrt(superheat + onset) - root) / span - 1


def superheat_of(scaled, onset):
    root = math.sqrt(onset)
    span = math.sqrt(LARGEST_SUPERHEAT + onset) - root
    return (root + 0.5 * (scaled + 1) * span) ** 2 - onset


def clamp_inside(temperature, model):
    return min(max(temperature, model.lowest), model.highest)


class Expansions:
    def __init__(self, model):
        self.model = model
        self.axis = Axis(model.critical_temperature, model.lowest, model.highest)
        self.blend = None
        if model.spec.kind == "mixture":
            self.blend = BlendViscosity(model.components, model.mole_fractions)
        self.series = {}
        self.pressure_range = {}
        self.log_pressure_ceiling = math.log(model.critical_pressure) + LOG_PRESSURE_ROOM
        self._fit_saturation()
        self._fit_temperatures()
        self._part_bubble_and_dew()
        self._fit_superheat()

    # -- fitting ----------------------------------------------------------

    def _fit_saturation(self):
        temperatures = [clamp_inside(self.axis.temperature(x), self.model) for x in chebyshev.nodes(NODES)]
        theta = np.array([self.axis.theta(T) for T in temperatures])
        liquid = [self.model.saturated(T, BUBBLE) for T in temperatures]
        vapour = [self.model.saturated(T, DEW) for T in temperatures]
        column = lambda states, name: np.array([getattr(s, name) for s in states])
        latent = column(vapour, "enthalpy") - column(liquid, "enthalpy")
        tight = TIGHT.get(self.model.spec.designation, TOLERANCE["ln_pressure"])
        fit = chebyshev.fit
        self.series["ln_bubble_pressure"] = fit(np.log(column(liquid, "pressure")), tight)
        if self.model.spec.kind != "pure":
            self.series["ln_dew_pressure"] = fit(np.log(column(vapour, "pressure")), tight)
        density = column(liquid, "density")
        self.series["liquid_density"] = fit(density, TOLERANCE["liquid_density"], weight=1 / density)
        self.series["ln_vapour_density"] = fit(np.log(column(vapour, "density")), TOLERANCE["ln_vapour_density"])
        for name, states in (("liquid_enthalpy", liquid), ("vapour_enthalpy", vapour)):
            self.series[name] = fit(column(states, "enthalpy"), TOLERANCE["enthalpy"], weight=1 / latent)
        for name, states in (("liquid_heat_capacity", liquid), ("vapour_heat_capacity", vapour)):
            capacity = column(states, "heat_capacity")
            self.series[name] = fit(
                capacity * theta**2, TOLERANCE["heat_capacity"], weight=1 / (capacity * theta**2)
            )
        mu = [self.liquid_viscosity(s) for s in liquid]
        self.series["ln_liquid_viscosity"] = fit(np.log(mu), TOLERANCE["ln_viscosity"])
        mu = [self.vapour_viscosity(s) for s in vapour]
        self.series["ln_vapour_viscosity"] = fit(np.log(mu), TOLERANCE["ln_viscosity"])

    def liquid_viscosity(self, state):
        return self.blend.liquid(state.temperature) if self.blend else state.viscosity

    def vapour_viscosity(self, state):
        if self.blend:
            return self.blend.vapour(state.temperature, state.density / self.model.molar_mass)
        return state.viscosity

    def _fit_temperatures(self):
        lines = [("bubble", BUBBLE)] if self.model.spec.kind == "pure" else [("bubble", BUBBLE), ("dew", DEW)]
        for line, quality in lines:
            low = self.model.saturated(self.model.lowest, quality).pressure
            high = self.model.saturated(self.model.highest, quality).pressure
            self.pressure_range[line] = (low, high)
            found = []
            for x in chebyshev.nodes(NODES):
                pressure = min(max(math.exp(self.log_pressure(x, line)), low), high)
                found.append(self.model.saturated_at_pressure(pressure, quality).temperature)
            tight = TIGHT.get(self.model.spec.designation)
            tolerance = 25.0 * tight if tight else TOLERANCE["temperature"]
            self.series[f"{line}_temperature"] = chebyshev.fit(np.array(found), tolerance)
        if self.model.spec.kind == "pure":
            self.pressure_range["dew"] = self.pressure_range["bubble"]

    def phi(self, log_pressure):
        return np.sqrt(self.log_pressure_ceiling - log_pressure)

    def phi_range(self, line):
        low, high = self.pressure_range[line]
        return self.phi(math.log(high)), self.phi(math.log(low))

    def log_pressure(self, scaled, line):
        low, high = self.phi_range(line)
        return self.log_pressure_ceiling - (0.5 * (low + high + scaled * (high - low))) ** 2

    def _part_bubble_and_dew(self):
        """Shift dew by the residual crossing, so that bubble pressure is nowhere below dew pressure."""
        self.parted = 0.0
        if self.model.spec.kind == "pure":
            return
        grid = np.linspace(-1, 1, 20001)
        gap = C.chebval(grid, self.series["ln_bubble_pressure"]) - C.chebval(grid, self.series["ln_dew_pressure"])
        if gap.min() <= 0:
            self.parted = 2.0 ** math.ceil(math.log2(1.1e-7 - 1.2 * gap.min()))
            self._shift("ln_dew_pressure", -self.parted)
        low = max(self.pressure_range[line][0] for line in ("bubble", "dew"))
        high = min(self.pressure_range[line][1] for line in ("bubble", "dew"))
        log_p = np.linspace(math.log(low), math.log(high), 20001)
        gap = self.temperature_at(log_p, "dew") - self.temperature_at(log_p, "bubble")
        if gap.min() <= 0:
            self._shift("dew_temperature", 2.0 ** math.ceil(math.log2(3.2e-5 - 1.2 * gap.min())))

    def _shift(self, name, amount):
        series = self.series[name]
        series[0] = float(np.float32(series[0] + amount))

    def _fit_superheat(self):
        found = [(onset, *self._superheat_surfaces(onset)) for onset in ONSETS]
        self.onset, self.superheated_volume, self.superheated_enthalpy = min(
            found, key=lambda each: sum(len(row) for surface in each[1:] for row in surface)
        )

    def onset_at(self, dew, factor):
        return factor * (self.model.critical_temperature - dew) * self.axis.theta(dew)

    def _superheat_surfaces(self, factor):
        nx, ny = SURFACE_NODES
        xs, ys = chebyshev.nodes(nx), chebyshev.nodes(ny)
        volume, enthalpy, ratio = (np.empty((nx, ny)) for _ in range(3))
        for i, x in enumerate(xs):
            dew = clamp_inside(self.axis.temperature(x), self.model)
            onset = self.onset_at(dew, factor)
            saturated = self.model.saturated(dew, DEW)
            line = self.model.superheat_line(dew, [superheat_of(y, onset) for y in ys])
            for j, state in enumerate(line):
                part = 0.5 * (ys[j] + 1)
                ratio[i, j] = state.density / saturated.density
                volume[i, j] = (1 / ratio[i, j] - 1) / part
                enthalpy[i, j] = (state.enthalpy - saturated.enthalpy) / part
        part = np.broadcast_to(0.5 * (ys + 1), (nx, ny))
        return (
            chebyshev.fit_surface(volume, TOLERANCE["superheated_volume"], weight=part * ratio),
            chebyshev.fit_surface(enthalpy, TOLERANCE["superheated_enthalpy"], weight=part),
        )

    # -- reading back -----------------------------------------------------

    def at(self, name, temperature):
        if name == "ln_dew_pressure" and name not in self.series:
            name = "ln_bubble_pressure"
        return C.chebval(self.axis.scaled(temperature), self.series[name])

    def temperature_at(self, log_pressure, line):
        low, high = self.phi_range(line)
        name = f"{line}_temperature"
        if name not in self.series:
            name = "bubble_temperature"
        return C.chebval((2 * self.phi(log_pressure) - low - high) / (high - low), self.series[name])

    def heat_capacity(self, name, temperature):
        return self.at(name, temperature) / self.axis.theta(temperature) ** 2

    def superheated(self, dew, superheat):
        """Density and enthalpy."""
        y = superheat_scaled(superheat, self.onset_at(dew, self.onset))
        x, part = self.axis.scaled(dew), 0.5 * (y + 1)
        volume = 1 + part * chebyshev.evaluate_surface(self.superheated_volume, x, y)
        density = math.exp(self.at("ln_vapour_density", dew)) / volume
        enthalpy = self.at("vapour_enthalpy", dew)
        enthalpy += part * chebyshev.evaluate_surface(self.superheated_enthalpy, x, y)
        return density, enthalpy

    def numbers(self):
        count = sum(len(series) for series in self.series.values())
        for surface in (self.superheated_volume, self.superheated_enthalpy):
            count += sum(len(row) for row in surface)
        return count
