"""Viscosity of blends from their pure components.

The library refuses or misjudges viscosities of true mixtures. Published rules:

Liquid: ln(mu) = sum x_i ln(mu_i), mole fractions, saturated components at the
same temperature (Arrhenius 1887; Grunberg and Nissan, Nature 164 (1949) 799,
without interaction). A component near or above its own critical temperature is
continued from 0.93 Tc with ln(mu) linear in 1/T (Andrade 1930).

Vapour: Wilke, J. Chem. Phys. 18 (1950) 517, with each component at the
temperature and the molar density of the blend.
"""

import math

import CoolProp.CoolProp as CP
from CoolProp import AbstractState

ANDRADE_FROM = 0.93


class BlendViscosity:
    def __init__(self, components, mole_fractions):
        self.fractions = mole_fractions
        self.states = [AbstractState("HEOS", name) for name in components]
        self.molar_masses = [state.molar_mass() for state in self.states]

    def liquid(self, temperature):
        return math.exp(sum(
            fraction * self._log_saturated_liquid(state, temperature)
            for fraction, state in zip(self.fractions, self.states)
        ))

    @staticmethod
    def _log_saturated_liquid(state, temperature):
        def log_viscosity(at):
            state.update(CP.QT_INPUTS, 0, at)
            return math.log(state.viscosity())

        highest = ANDRADE_FROM * state.T_critical()
        if temperature <= highest:
            return log_viscosity(temperature)
        below = highest - 2.0
        slope = (log_viscosity(highest) - log_viscosity(below)) / (1 / highest - 1 / below)
        return log_viscosity(highest) + slope * (1 / temperature - 1 / highest)

    def vapour(self, temperature, molar_density):
        viscosities = []
        for state in self.states:
            state.specify_phase(CP.iphase_gas)
            state.update(CP.DmolarT_INPUTS, molar_density, temperature)
            viscosities.append(state.viscosity())
            state.unspecify_phase()
        total = 0.0
        for i, fraction in enumerate(self.fractions):
            weight = 0.0
            for j, other in enumerate(self.fractions):
                ratio = math.sqrt(viscosities[i] / viscosities[j])
                masses = self.molar_masses[j] / self.molar_masses[i]
                phi = (1 + ratio * masses**0.25) ** 2 / math.sqrt(8 * (1 + 1 / masses))
                weight += other * phi
            total += fraction * viscosities[i] / weight
        return total
