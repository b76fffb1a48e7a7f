// Reads a stored job, whatever has happened to it.

import { schema } from "./disk";
import { entryOf, type Cut, type StoredEntry } from "./entries";
import type { Unreadable } from "./safekeeping";
import { Timeline } from "./timeline";
import { isObject, treeOf } from "./tree";

/** The job with its log, as it is for this window; or why it cannot be read. */
export function readTimeline(window: string, id: string, record: unknown, log: readonly unknown[]): Timeline | Unreadable {
  if (typeof record !== "object" || record === null) return "no-document";
  if ("schema" in record && typeof record.schema === "number" && record.schema > schema) return "newer";
  const number = "number" in record ? record.number : undefined;
  const document = "document" in record ? treeOf(record.document) : undefined;
  if (typeof number !== "number" || !isObject(document) || document.id !== id) return "not-a-document";
  const entries = log.map(entryOf);
  const cut = Math.max(0, ...entries.filter(isCut).map((entry) => entry.number));
  const stored = entries.filter(isStored);
  if (entries.includes(undefined) || cut > number) return "bad-edit";
  const timeline = new Timeline(window, { number, document }, stored, cut);
  return timeline.isBroken ? "bad-edit" : timeline;
}

export function isCut(entry: StoredEntry | Cut | undefined): entry is Cut {
  return entry !== undefined && "cut" in entry;
}

export function isStored(entry: StoredEntry | Cut | undefined): entry is StoredEntry {
  return entry !== undefined && !("cut" in entry);
}
