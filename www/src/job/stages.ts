// The stages of a job in the order of work, the part of the page that shows each, and the place of a stage.

import { writePlace } from "../address";
import type { Stage } from "../core";

export const stages: readonly Stage[] = [
  "plan",
  "flare",
  "tighten",
  "pressure-test",
  "evacuate",
  "release-and-charge",
  "run-check",
  "record",
];

/** The stage that an address names. */
export function stageNamed(word: string): Stage | null {
  return stages.find((stage) => stage === word) ?? null;
}

/** The link to a job, or to a stage of it, or to a joint within that. */
export function jobPlace(id: string, stage?: Stage | null, joint?: string): string {
  return writePlace({ path: "job", entries: { id, ...(stage ? { stage } : {}), ...(joint === undefined ? {} : { joint }) } });
}
