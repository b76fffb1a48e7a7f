// The list of jobs: a few words of each, so that a thousand are listed without reading one document.

import type { Unreadable } from "./safekeeping";
import { isObject, member, treeOf, type TreeObject } from "./tree";

export interface Summary {
  readonly id: string;
  readonly name: string;
  /** Instant (ISO) of the last edit. */
  readonly edited: string;
  /** What the screens have put in. */
  readonly glance: string;
  /** Instant (ISO) of removal. */
  readonly removed?: string;
  /** Its record is broken: to be exported raw, or removed. */
  readonly unreadable?: Unreadable;
}

/** Longest text of a row in the list. */
const longest = 200;

export function summaryOf(document: TreeObject, glance = ""): Summary {
  return { id: textOf(document, "id"), name: textOf(document, "name"), edited: textOf(document, "edited"), glance: glance.slice(0, longest) };
}

/** Reads a stored summary; undefined if it is none. */
export function readSummary(found: unknown): Summary | undefined {
  const tree = treeOf(found);
  if (tree === undefined || !isObject(tree)) return undefined;
  const { id, name, edited, glance, removed, unreadable } = tree;
  const texts = [id, name, edited, glance, removed ?? "", unreadable ?? ""];
  // The members have just been looked at one by one.
  return id !== "" && texts.every((text) => typeof text === "string") ? (tree as unknown as Summary) : undefined;
}

function textOf(document: TreeObject, name: string): string {
  const found = member(document, name);
  return typeof found === "string" ? found.slice(0, longest) : "";
}

/** Letters without their accents and case, as the search compares them. */
function folded(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}

/** All summaries of the window, sorted when asked; the texts that are searched are folded once. */
export class Summaries {
  private readonly byId = new Map<string, { readonly summary: Summary; readonly searched: string }>();
  private sorted: readonly { readonly summary: Summary; readonly searched: string }[] | undefined;

  get(id: string): Summary | undefined {
    return this.byId.get(id)?.summary;
  }

  put(summary: Summary): void {
    this.byId.set(summary.id, { summary, searched: folded(`${summary.name}\n${summary.glance}`) });
    this.sorted = undefined;
  }

  delete(id: string): void {
    this.byId.delete(id);
    this.sorted = undefined;
  }

  all(): readonly Summary[] {
    return this.inOrder().map(({ summary }) => summary);
  }

  list(words: string): readonly Summary[] {
    const wanted = folded(words).split(/\s+/).filter((word) => word !== "");
    return this.inOrder()
      .filter(({ summary, searched }) => summary.removed === undefined && wanted.every((word) => searched.includes(word)))
      .map(({ summary }) => summary);
  }

  removed(): readonly Summary[] {
    return this.all()
      .filter(({ removed }) => removed !== undefined)
      .sort((one, other) => compare(other.removed ?? "", one.removed ?? ""));
  }

  private inOrder(): readonly { readonly summary: Summary; readonly searched: string }[] {
    this.sorted ??= [...this.byId.values()].sort((one, other) => compare(other.summary.edited, one.summary.edited));
    return this.sorted;
  }
}

function compare(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
