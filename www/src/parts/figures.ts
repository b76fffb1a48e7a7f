// Figures as they are read: number and unit, in the person's unit unless another is named.

import { show, showBand, type Limits, type Precision, type QuantityKind } from "../core";
import { unitOf } from "../unit-choice";

/** Keeps a number and its unit on one line. */
const joint = "\u00a0";

/** A figure with its unit. */
export function figureText(
  quantity: QuantityKind,
  si: number,
  precision: Precision = "instrument",
  unit = unitOf(quantity),
): string {
  const shown = show(quantity, si, unit, precision);
  return withUnit(shown.number, shown.unit);
}

/** A band without its unit: one number where both limits are one. */
export function bandNumbers(quantity: QuantityKind, band: Limits, unit = unitOf(quantity)): string {
  const { low, high } = showBand(quantity, band, unit);
  return low === high ? low : `${low}–${high}`;
}

/** A band with its unit. */
export function bandText(quantity: QuantityKind, band: Limits, unit = unitOf(quantity)): string {
  return withUnit(bandNumbers(quantity, band, unit), unit);
}

/** The sign of a degree stands close. */
function withUnit(number: string, unit: string): string {
  return unit === "°" ? number + unit : number + joint + unit;
}
