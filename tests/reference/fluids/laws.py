"""Reference rows for water, moist air and friction, from published equations in general-purpose libraries.

Run: python laws.py
"""

import random

import psychrolib
from fluids.friction import Colebrook
from iapws._iapws import _Sublimation_Pressure
from iapws.iapws97 import _PSat_T

from rows import HERE, SEED, shown

WATER, MOIST_AIR, FRICTION = 60, 120, 120


def write(file_name, title, columns, rows):
    with open(HERE / file_name, "w") as file:
        file.write(f"# {title}. Made by laws.py; see README.md.\n")
        file.write(",".join(columns) + "\n")
        for row in rows:
            file.write(",".join(shown(value) for value in row) + "\n")


def water():
    draw = random.Random(f"{SEED} water")
    for _ in range(WATER):
        # 1 Pa is 212.7 K.
        T = round(draw.uniform(212.7, 273.15), 3)
        yield "ice", T, _Sublimation_Pressure(T) * 1e6
    for _ in range(WATER):
        T = round(draw.uniform(273.16, 374.0), 3)
        yield "liquid", T, _PSat_T(T) * 1e6


def moist_air():
    psychrolib.SetUnitSystem(psychrolib.SI)
    draw = random.Random(f"{SEED} moist air")
    for _ in range(MOIST_AIR):
        p = round(draw.uniform(54e3, 107e3), 0)
        dry, humidity = round(draw.uniform(-20, 60), 2), round(draw.uniform(0.03, 0.99), 3)
        ratio = psychrolib.GetHumRatioFromRelHum(dry, humidity, p)
        yield (
            p, dry, humidity, ratio, psychrolib.GetMoistAirEnthalpy(dry, ratio),
            psychrolib.GetTDewPointFromRelHum(dry, humidity),
            psychrolib.GetTWetBulbFromHumRatio(dry, ratio, p),
            psychrolib.GetMoistAirDensity(dry, ratio, p),
        )


def friction():
    draw = random.Random(f"{SEED} friction")
    for _ in range(FRICTION):
        reynolds = round(4000 * (1e8 / 4000) ** draw.random(), 1)
        roughness = 0.0 if draw.random() < 0.1 else float(f"{1e-7 * (0.05 / 1e-7) ** draw.random():.4g}")
        # Zero asks for its exact solution.
        yield reynolds, roughness, Colebrook(reynolds, roughness, tol=0)


def main():
    write("water.csv", "Water over ice (IAPWS R14-08) and liquid (IAPWS R7-97), by iapws 1.5.5",
          ["surface", "temperature_K", "pressure_Pa"], water())
    write("moist_air.csv", "Moist air by PsychroLib 2.5.0",
          ["pressure_Pa", "dry_bulb_C", "relative_humidity", "humidity_ratio", "enthalpy_J_kg", "dew_point_C",
           "wet_bulb_C", "density_kg_m3"], moist_air())
    write("friction.csv", "Darcy friction factor of Colebrook (1939), by fluids 1.3.1",
          ["reynolds", "relative_roughness", "factor"], friction())


if __name__ == "__main__":
    main()
