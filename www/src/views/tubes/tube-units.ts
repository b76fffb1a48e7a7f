// A metre of tube holds little: volumes are shown in the small unit of the chosen system.

import { settings } from "../../settings";

export function perMetreUnits(): { readonly volume: string } {
  return { volume: settings().system === "metric" ? "mL" : "in³" };
}
