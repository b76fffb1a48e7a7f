// What the vacuum gauge in the bag is marked in. It goes with the person from card to card.
//
// `vacuumUnit()` is the unit for `entryOf(name, "absolute-pressure", vacuumUnit())` and beside the fields;
// `vacuumText(si)` writes a pressure in it; `<VacuumUnitChoice fields={["absolutePressure"]} />` lets the
// person choose, and means the figures in those fields in the newly chosen unit.

import type { JSX } from "preact";
import type { Precision } from "../core";
import { message } from "../locale";
import { ChoiceRow } from "./choice-row";
import { changeUnits, textOf, write } from "./fields";
import { figureText } from "./figures";

export const vacuumUnits = ["micron", "Pa", "mbar", "torr"] as const;
export type VacuumUnit = (typeof vacuumUnits)[number];

export function vacuumUnit(): VacuumUnit {
  return vacuumUnits.find((unit) => unit === textOf("vacuumUnit")) ?? "micron";
}

/** Vacuum gauges show whole microns and pascals; the instrument's step of a gauge under pressure would hide them. */
export function vacuumPrecision(unit = vacuumUnit()): Precision {
  return unit === "micron" ? "table" : "significant";
}

export function vacuumText(si: number, unit = vacuumUnit()): string {
  return figureText("absolute-pressure", si, vacuumPrecision(unit), unit);
}

export function VacuumUnitChoice({ fields = [] }: {
  /** Fields whose figures are meant in the new unit; without them, what is entered keeps its unit. */
  readonly fields?: readonly string[];
}): JSX.Element {
  const unit = vacuumUnit();
  const change = (to: string): void => {
    changeUnits(fields, unit, to);
    write("vacuumUnit", to);
  };
  return (
    <ChoiceRow
      name="vacuumUnit"
      legend={message("water-unit")}
      beside
      chosen={unit}
      onChoose={change}
      choices={vacuumUnits.map((word) => ({ word, label: word }))}
    />
  );
}
