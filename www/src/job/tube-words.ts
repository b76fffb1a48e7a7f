// A size of tube as people call it.

import { tubeSizes } from "../core";
import { figureText } from "../parts/figures";

/** Printed diameters are rounded: 9.52 mm is 3/8 in. No two sizes are as near to each other. */
const rounding = 2e-5;

/** `3/8 in` or `16 mm`; of no known size, its diameter. */
export function tubeText(diameter: number): string {
  const size = tubeSizes().find(({ wall, flaredDiameter }) => wall == null && flaredDiameter != null && Math.abs(flaredDiameter - diameter) < rounding);
  if (size === undefined) return figureText("length", diameter, "table");
  return `${size.name}\u00a0${size.series === "en-12735-1" ? "mm" : "in"}`;
}
