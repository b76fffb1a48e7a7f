// The log of a job: edits in the order in which they were stored, which is the same for every window.

import { editOf, type Edit } from "./edits";
import { isObject, isSamePath, treeOf } from "./tree";

export interface Entry {
  /** The window that made it, and its count there: an entry that was stored twice counts once. */
  readonly by: string;
  readonly turn: number;
  /** Edits of one step are undone together. */
  readonly step: string;
  /** Instant (ISO). */
  readonly at: string;
  /** Number of the last stored entry that its window knew of. */
  readonly seen: number;
  readonly edit: Edit;
  /** The step that it takes back, or does again. */
  readonly undoes?: string;
  readonly redoes?: string;
}

export interface StoredEntry extends Entry {
  /** Given by the database: higher than any before, of whichever job. */
  readonly number: number;
  readonly job: string;
}

/** Stands where older entries have been thrown away: a window that has not read those must read the job anew. */
export interface Cut {
  readonly number: number;
  readonly job: string;
  readonly cut: true;
}

/** Reads an entry or a cut; undefined if it is neither. */
export function entryOf(found: unknown): StoredEntry | Cut | undefined {
  const tree = treeOf(found);
  if (!isObject(tree) || typeof tree.number !== "number" || typeof tree.job !== "string") return undefined;
  const { number, job, cut, by, turn, step, at, seen, undoes = "", redoes = "" } = tree;
  if (cut === true) return { number, job, cut };
  const edit = editOf(tree.edit);
  const areTexts = [by, step, at, undoes, redoes].every((text) => typeof text === "string");
  if (edit === undefined || !areTexts || typeof turn !== "number" || typeof seen !== "number") return undefined;
  // The members have just been looked at one by one.
  return { ...(tree as unknown as StoredEntry), edit };
}

export interface Step {
  readonly id: string;
  /** Instant (ISO) of its last edit. */
  readonly at: string;
  readonly edits: readonly Edit[];
  readonly isUndone: boolean;
}

export interface Steps {
  readonly all: readonly Step[];
  /** What `undo` takes back, the next one last. */
  readonly done: readonly Step[];
  /** What `redo` does again, the next one last. */
  readonly undone: readonly Step[];
}

/** The steps of the log; each window finds the same. */
export function stepsOf(entries: readonly Entry[]): Steps {
  const steps = new Map<string, { id: string; at: string; edits: Edit[]; isUndone: boolean }>();
  let undone: string[] = [];
  for (const { step: id, at, edit, undoes, redoes } of entries) {
    const aim = steps.get(undoes ?? redoes ?? "");
    if (undoes === undefined && redoes === undefined) {
      undone = [];
      const step = steps.get(id);
      if (step === undefined) steps.set(id, { id, at, edits: [edit], isUndone: false });
      else Object.assign(step, { at, edits: withEdit(step.edits, edit) });
    } else if (aim !== undefined && aim.isUndone === (undoes === undefined)) {
      aim.isUndone = undoes !== undefined;
      if (aim.isUndone) undone.push(aim.id);
      else undone = undone.filter((other) => other !== aim.id);
    }
  }
  const all = [...steps.values()];
  return { all, done: all.filter(({ isUndone }) => !isUndone), undone: undone.flatMap((id) => steps.get(id) ?? []) };
}

/** Letters typed one after the other into the same place are one edit. */
export function withEdit(edits: readonly Edit[], edit: Edit): Edit[] {
  const last = edits[edits.length - 1];
  const isTypedOn = last?.kind === "set" && edit.kind === "set" && isSamePath(last.path, edit.path);
  if (!isTypedOn || last.to === undefined || edit.to === undefined) return [...edits, edit];
  return [...edits.slice(0, -1), { ...last, to: edit.to }];
}
