// In which unit a quantity is shown to this person.

import { units, type QuantityKind } from "./core";
import { settings } from "./settings";

/** The unit chosen for a quantity, else the usual one of the chosen system. */
export function unitOf(quantity: QuantityKind): string {
  const known = units(quantity);
  const chosen = settings().units[quantity];
  if (chosen !== undefined && known.some(({ symbol }) => symbol === chosen)) return chosen;
  return usualUnit(quantity, settings().system === "metric");
}

/** The usual unit of the other system than that of the chosen one, to show beside it. */
export function otherUnitOf(quantity: QuantityKind): string {
  const chosen = unitOf(quantity);
  const metric = units(quantity).find(({ symbol }) => symbol === chosen)?.metric ?? true;
  return usualUnit(quantity, !metric);
}

/** What lengths of line and room are measured in, where diameters are in mm or in. */
export function runUnit(): "m" | "ft" {
  return settings().system === "metric" ? "m" : "ft";
}

/** What floors are measured in, where bores are in mm² or in². */
export function floorUnit(): "m²" | "ft²" {
  return settings().system === "metric" ? "m²" : "ft²";
}

/** What rooms hold, where tubes hold litres. */
export function roomUnit(): "m³" | "ft³" {
  return settings().system === "metric" ? "m³" : "ft³";
}

function usualUnit(quantity: QuantityKind, metric: boolean): string {
  const known = units(quantity);
  return (known.find((unit) => unit.metric === metric) ?? known[0])?.symbol ?? "";
}
