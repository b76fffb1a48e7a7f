"""Reference rows for the tests: random states straight from the library, none of them a fit's node."""

import csv
import random
from pathlib import Path

from library import BUBBLE, DEW, LIBRARY

HERE = Path(__file__).parent
SEED = 20_260_101
SATURATION, PRESSURE, SUPERHEAT, NITROGEN = 60, 40, 60, 100
EDGE = 1e-3  # K kept away from the ends of the range

SATURATION_COLUMNS = [
    "refrigerant", "temperature_K", "bubble_pressure_Pa", "dew_pressure_Pa",
    "liquid_density_kg_m3", "vapour_density_kg_m3", "liquid_enthalpy_J_kg", "vapour_enthalpy_J_kg",
    "liquid_heat_capacity_J_kgK", "vapour_heat_capacity_J_kgK", "liquid_viscosity_Pas", "vapour_viscosity_Pas",
]
PRESSURE_COLUMNS = [
    "refrigerant", "pressure_Pa", "bubble_temperature_K", "dew_temperature_K", "latent_heat_J_kg",
]
SUPERHEAT_COLUMNS = [
    "refrigerant", "dew_temperature_K", "superheat_K", "pressure_Pa", "density_kg_m3", "enthalpy_J_kg",
]
NITROGEN_COLUMNS = [
    "filled_pressure_Pa", "filled_temperature_K", "read_temperature_K", "read_pressure_Pa", "density_kg_m3",
    "filled_compressibility",
]


def draw_for(designation, subject):
    return random.Random(f"{SEED} {designation} {subject}")


def temperatures(model, count, draw):
    return [round(draw.uniform(model.lowest + EDGE, model.highest - EDGE), 3) for _ in range(count)]


def saturation(name, expansions):
    model, draw = expansions.model, draw_for(name, "saturation")
    for T in temperatures(model, SATURATION, draw):
        liquid, vapour = model.saturated(T, BUBBLE), model.saturated(T, DEW)
        yield [
            name, T, liquid.pressure, vapour.pressure, liquid.density, vapour.density,
            liquid.enthalpy, vapour.enthalpy, liquid.heat_capacity, vapour.heat_capacity,
            expansions.liquid_viscosity(liquid), expansions.vapour_viscosity(vapour),
        ]


def at_pressure(name, expansions):
    model, draw = expansions.model, draw_for(name, "pressure")
    low = model.saturated(model.lowest + EDGE, BUBBLE).pressure
    high = model.saturated(model.highest - EDGE, DEW).pressure
    for _ in range(PRESSURE):
        pressure = float(round(low * (high / low) ** draw.random()))
        liquid, vapour = (model.saturated_at_pressure(pressure, quality) for quality in (BUBBLE, DEW))
        yield [name, pressure, liquid.temperature, vapour.temperature, vapour.enthalpy - liquid.enthalpy]


def superheat(name, expansions):
    model, draw = expansions.model, draw_for(name, "superheat")
    for T in temperatures(model, SUPERHEAT, draw):
        above = round(draw.uniform(0, 40), 3)
        state = model.superheat_line(T, [above])[0]
        yield [name, T, above, state.pressure, state.density, state.enthalpy]


def shown(value):
    return value if isinstance(value, str) else f"{value:.10g}"


def write(file_name, title, columns, rows):
    with open(HERE / file_name, "w", newline="") as file:
        file.write(f"# {title}. Source: {LIBRARY}. Made by generate.py; see README.md.\n")
        file.write("# Enthalpy is 200 kJ/kg for saturated liquid at 0 °C. SI units.\n")
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(columns)
        for row in rows:
            writer.writerow([shown(value) for value in row])


def write_refrigerants(fitted):
    for file_name, title, columns, rows in (
        ("saturation.csv", "Bubble and dew states at random temperatures", SATURATION_COLUMNS, saturation),
        ("pressure.csv", "Bubble and dew temperatures at random pressures", PRESSURE_COLUMNS, at_pressure),
        ("superheat.csv", "Superheated vapour at its dew pressure", SUPERHEAT_COLUMNS, superheat),
    ):
        write(file_name, title, columns, (row for name, each in fitted.items() for row in rows(name, each)))
