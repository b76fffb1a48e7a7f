// The lists of readings that stand in a job, and what a reading is made of.

import type { QuantityKind } from "../core";
import { textOf } from "../parts/fields";
import type { TreeObject } from "../store/jobs";
import { itemsAt, textAt } from "./job-path";

export interface ReadingColumn {
  /** As in the job. */
  readonly name: string;
  /** Message id of the label. */
  readonly label: string;
  readonly quantity: QuantityKind;
  readonly unit: () => string;
  /** Where the job has the smallest step of the instrument. */
  readonly stepAt: readonly string[];
  /** How many of its steps the buttons go. */
  readonly counts: readonly number[];
}

export interface ReadingKind {
  /** Where the list stands in the job. */
  readonly path: readonly [string, string];
  readonly columns: readonly ReadingColumn[];
}

/** What stands ready for the next reading of a column: what was typed, else what was read last. */
export function nextText(document: TreeObject, { path }: ReadingKind, { name }: ReadingColumn): string {
  const typed = textOf(nextField(name));
  const last = itemsAt(document, ...path).at(-1);
  return typed !== "" || last === undefined ? typed.trim() : textAt(last, name);
}

/** Name of a text for the next reading: it stands in the address until it is taken. */
export function nextField(name: string): string {
  return `next_${name}`;
}

/** The id of the last item that is not after a moment, by what the clock showed; null before all. */
export function idBefore(items: readonly { readonly id: string; readonly wall: number }[], wall: number): string | null {
  return items.filter((item) => item.wall <= wall).at(-1)?.id ?? null;
}
