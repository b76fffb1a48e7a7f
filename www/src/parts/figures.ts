// Figures as they are read: number and unit, in the person's unit unless another is named.

import { show, showBand, type Limits, type Precision, type QuantityKind, type Shown } from "../core";
import { message } from "../locale";
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

/** A limit that must not be exceeded, or undercut, is rounded to the side on which it still holds. */
export type Bound = "most" | "least";

export function showLimit(quantity: QuantityKind, si: number, bound: Bound, unit = unitOf(quantity)): Shown {
  const band = bound === "most" ? { low: 0, high: si } : { low: si, high: 2 * si + 1 };
  const shown = showBand(quantity, band, unit);
  return { number: bound === "most" ? shown.high : shown.low, unit: shown.unit };
}

/** A limit with its unit. */
export function limitText(quantity: QuantityKind, si: number, bound: Bound, unit = unitOf(quantity)): string {
  const shown = showLimit(quantity, si, bound, unit);
  return withUnit(shown.number, shown.unit);
}

/** The sign of a degree stands close; a year is the one unit that is a word. */
function withUnit(number: string, unit: string): string {
  return unit === "°" ? number + unit : number + joint + unit.replace(/year$/, message("unit-year"));
}
