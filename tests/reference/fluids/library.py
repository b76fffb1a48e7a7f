"""Saturation and superheat states of one refrigerant out of CoolProp.

Three kinds of model stand behind one interface: a pure fluid, a pseudo-pure
blend (Lemmon 2003, bubble and dew from its own pressure equations) and a true
mixture of pure fluids. Plain flashes of true mixtures fail in windows inside
the working range, so every mixture state is reached from a neighbour by
`update_with_guesses`.
"""

import bisect
import math
from dataclasses import dataclass

import CoolProp.CoolProp as CP
from CoolProp import AbstractState

BUBBLE, DEW = 0, 1
LIBRARY = "CoolProp 8.0.0"
REFERENCE_TEMPERATURE = 273.15
REFERENCE_ENTHALPY = 200e3


@dataclass(frozen=True)
class State:
    """One homogeneous state, SI units, enthalpy as the library gives it."""

    temperature: float
    pressure: float
    density: float
    enthalpy: float
    heat_capacity: float
    viscosity: float | None


@dataclass(frozen=True)
class Spec:
    """What to ask of the library for one refrigerant."""

    designation: str
    library_name: str
    kind: str
    lowest: float
    highest: float | None = None


SPECS = [
    Spec("R-22", "R22", "pure", 213.15),
    Spec("R-32", "R32", "pure", 213.15),
    Spec("R-134a", "R134a", "pure", 213.15),
    Spec("R-290", "Propane", "pure", 213.15),
    Spec("R-404A", "R404A", "pseudo-pure", 213.15),
    Spec("R-407C", "R407C", "pseudo-pure", 213.15, 351.15),
    Spec("R-410A", "R410A", "pseudo-pure", 213.15),
    Spec("R-448A", "R448A.mix", "mixture", 213.15),
    Spec("R-449A", "R449A.mix", "mixture", 213.15),
    Spec("R-452B", "R452B.mix", "mixture", 213.15),
    Spec("R-454B", "R454B.mix", "mixture", 213.15),
    Spec("R-507A", "R507A", "pseudo-pure", 213.15),
    Spec("R-513A", "R513A.mix", "mixture", 213.15),
    Spec("R-600a", "IsoButane", "pure", 213.15),
    Spec("R-717", "Ammonia", "pure", 213.15),
    Spec("R-744", "CarbonDioxide", "pure", 217.15),
    Spec("R-1234yf", "R1234yf", "pure", 213.15),
    Spec("R-1234ze(E)", "R1234ze(E)", "pure", 213.15),
]

# Kept below the critical temperature: here every acceptance limit still holds.
CRITICAL_MARGIN = 3.0
MIXTURE_STEP = 0.5


class Model:
    def __init__(self, spec: Spec):
        self.spec = spec
        self.state = AbstractState("HEOS", spec.library_name)
        self.molar_mass = self.state.molar_mass()
        if spec.kind == "mixture":
            stable = [c for c in self.state.all_critical_points() if c.stable]
            self.critical_temperature = stable[0].T
            self.critical_pressure = stable[0].p
            self.critical_density = stable[0].rhomolar * self.molar_mass
            self.components = self.state.fluid_names()
            self.mole_fractions = self.state.get_mole_fractions()
        else:
            self.critical_temperature = self.state.T_critical()
            self.critical_pressure = self.state.p_critical()
            self.critical_density = self.state.rhomass_critical()
            self.components = [spec.library_name]
            self.mole_fractions = [1.0]
        self.lowest = spec.lowest
        self.highest = spec.highest or self.critical_temperature - CRITICAL_MARGIN
        self.neighbours = {}
        if spec.kind == "mixture":
            for quality in (BUBBLE, DEW):
                self.neighbours[quality] = self._trace(quality)
        self.enthalpy_offset = 0.0
        at_reference = self.saturated(REFERENCE_TEMPERATURE, BUBBLE)
        self.enthalpy_offset = REFERENCE_ENTHALPY - at_reference.enthalpy

    # -- mixtures ---------------------------------------------------------

    def _remember(self, quality):
        state = self.state
        guess = CP.PyGuessesStructure()
        guess.T = state.T()
        guess.p = state.p()
        guess.rhomolar_liq = state.saturated_liquid_keyed_output(CP.iDmolar)
        guess.rhomolar_vap = state.saturated_vapor_keyed_output(CP.iDmolar)
        guess.x = list(state.mole_fractions_liquid())
        guess.y = list(state.mole_fractions_vapor())
        return guess

    def _trace(self, quality):
        """Walk up and down the line from 0 °C, each state seeding the next."""
        self.state.update(CP.QT_INPUTS, quality, REFERENCE_TEMPERATURE)
        start = self._remember(quality)
        line = [start]
        for direction, end in ((1, self.highest), (-1, self.lowest)):
            guess, temperature = start, REFERENCE_TEMPERATURE
            while direction * (end - temperature) > 0:
                temperature += direction * min(MIXTURE_STEP, abs(end - temperature))
                self.state.update_with_guesses(CP.QT_INPUTS, quality, temperature, guess)
                guess = self._remember(quality)
                line.append(guess)
        line.sort(key=lambda each: each.T)
        pressures = [each.p for each in line]
        if any(b <= a for a, b in zip(pressures, pressures[1:])):
            raise RuntimeError(f"{self.spec.designation}: pressure does not rise along the line")
        return line

    def _nearest(self, quality, key, wanted):
        line = self.neighbours[quality]
        at = bisect.bisect_left(line, wanted, key=lambda each: getattr(each, key))
        at = min(max(at, 1), len(line) - 1)
        below, above = line[at - 1], line[at]
        return below if abs(getattr(below, key) - wanted) < abs(getattr(above, key) - wanted) else above

    # -- states -----------------------------------------------------------

    def _read(self):
        state = self.state
        viscosity = None
        if self.spec.kind != "mixture":
            try:
                viscosity = state.viscosity()
            except ValueError:
                viscosity = None
        return State(
            state.T(), state.p(), state.rhomass(), state.hmass() + self.enthalpy_offset,
            state.cpmass(), viscosity,
        )

    def saturated(self, temperature, quality):
        """Saturated liquid (quality 0, bubble) or vapour (1, dew) at a temperature in K."""
        self.state.unspecify_phase()
        if self.spec.kind == "mixture":
            guess = self._nearest(quality, "T", temperature)
            self.state.update_with_guesses(CP.QT_INPUTS, quality, temperature, guess)
        else:
            self.state.update(CP.QT_INPUTS, quality, temperature)
        return self._single_phase(temperature)

    def saturated_at_pressure(self, pressure, quality):
        """The same at a pressure in Pa."""
        self.state.unspecify_phase()
        if self.spec.kind == "mixture":
            guess = self._nearest(quality, "p", pressure)
            self.state.update_with_guesses(CP.PQ_INPUTS, pressure, quality, guess)
        else:
            self.state.update(CP.PQ_INPUTS, pressure, quality)
        return self._single_phase(self.state.T())

    def _single_phase(self, temperature):
        """Evaluate the equation of state once more at the density found, as one phase.

        Two-phase states refuse heat capacity; the density is what counts.
        """
        pressure, density = self.state.p(), self.state.rhomolar()
        found = self.at_density(temperature, density)
        if abs(found.pressure / pressure - 1) > 1e-4:
            raise RuntimeError(f"{self.spec.designation} {temperature} K: {found.pressure} for {pressure}")
        return State(temperature, pressure, found.density, found.enthalpy, found.heat_capacity, found.viscosity)

    def at_density(self, temperature, molar_density):
        self.state.specify_phase(CP.iphase_gas)
        self.state.update(CP.DmolarT_INPUTS, molar_density, temperature)
        found = self._read()
        self.state.unspecify_phase()
        return found

    def superheated(self, temperature, pressure, molar_density):
        """Gas at temperature and pressure; Newton in density from a denser neighbour."""
        self.state.specify_phase(CP.iphase_gas)
        density = molar_density
        for _ in range(60):
            self.state.update(CP.DmolarT_INPUTS, density, temperature)
            slope = self.state.first_partial_deriv(CP.iP, CP.iDmolar, CP.iT)
            step = (self.state.p() - pressure) / slope
            density -= max(min(step, 0.2 * density), -0.2 * density)
            if abs(step) < 1e-11 * density:
                break
        else:
            raise RuntimeError(f"{self.spec.designation}: no gas density at {temperature} K, {pressure} Pa")
        self.state.update(CP.DmolarT_INPUTS, density, temperature)
        found = self._read()
        self.state.unspecify_phase()
        return found

    def superheat_line(self, dew_temperature, superheats):
        """Gas at the dew pressure, at rising superheats in K, from the dew line outwards.

        Reached in steps of at most 2 K, so that Newton stays on the gas branch near critical.
        """
        state = self.saturated(dew_temperature, DEW)
        pressure, reached, line = state.pressure, 0.0, []
        for superheat in superheats:
            steps = math.ceil((superheat - reached) / 2.0)
            for step in range(1, steps + 1):
                temperature = dew_temperature + reached + (superheat - reached) * step / steps
                state = self.superheated(temperature, pressure, state.density / self.molar_mass)
            reached = superheat
            line.append(state)
        return line


def load():
    return {spec.designation: Model(spec) for spec in SPECS}
