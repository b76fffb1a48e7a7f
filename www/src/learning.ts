// Whether the page is read to learn: workings stand open, each step with a question that opens into its answer. By a
// link (`#/torque?learn=yes`), which changes no choice of the person, or by the person's own choice.

import { enter, place } from "./address";
import { choose, settings } from "./settings";

/** The entry of an address that says it. */
export const learnEntry = "learn";

export function isLearning(): boolean {
  return settings().learn || place().entries[learnEntry] === "yes";
}

export function setLearning(learn: boolean): void {
  choose({ learn });
  if (!learn) enter(learnEntry, "");
}
