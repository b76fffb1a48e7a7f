// The cards: one question each, in the order of work. A card is one line here, one in the file of cards
// that is fetched (views/job-cards.ts), and its view; its place, title and link follow from the line.

import type { FunctionComponent } from "preact";
import { fluidCard, Glossary, jobCard } from "./fetched";

/** The headings of the list, in the order of work. */
export const groups = ["plan", "prove", "dry", "charge", "run", "look-up"] as const;

export interface Card {
  /** Its place; messages `title-<path>` and `card-<path>` name it and say what it answers. */
  readonly path: string;
  readonly group: (typeof groups)[number];
  readonly View: FunctionComponent;
}

/** Within a group in the order in which they are offered. */
export const cards: readonly Card[] = [
  { path: "line-set", group: "plan", View: jobCard("LineSet") },
  { path: "standing-test", group: "prove", View: jobCard("StandingTest") },
  { path: "pump-down", group: "dry", View: jobCard("PumpDown") },
  { path: "vacuum-hold", group: "dry", View: jobCard("VacuumHold") },
  { path: "charge", group: "charge", View: jobCard("Charge") },
  { path: "running", group: "run", View: jobCard("Running") },
  { path: "room-limit", group: "plan", View: jobCard("RoomLimit") },
  { path: "insulation", group: "plan", View: jobCard("Insulation") },
  { path: "saturation", group: "look-up", View: fluidCard("Saturation") },
  { path: "moist-air", group: "look-up", View: fluidCard("MoistAir") },
  { path: "water", group: "look-up", View: fluidCard("Water") },
  { path: "pipe-friction", group: "look-up", View: jobCard("PipeFriction") },
  { path: "terms", group: "look-up", View: Glossary },
];
