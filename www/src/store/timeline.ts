// A job as its log tells it: what is stored, in the order of the log, and on top what this window has not stored yet.
// Every window replays the same log in the same order, so that all of them end with the same document.

import { clashOf, withClash, withoutClash, type Clash } from "./clashes";
import { applied, editOfChange, inverse, isIdle, type Change, type Edit } from "./edits";
import { stepsOf, type Entry, type StoredEntry, type Steps } from "./entries";
import { isObject, isSamePath, type Path, type Tree, type TreeObject } from "./tree";

/** How many entries are kept for undoing, at least. */
export const historyLength = 2000;

/** Typing on in the same place within this time belongs to the step before. */
const millisecondsOfStep = 1500;

export interface Snapshot {
  /** Number of the last entry that is in the document. */
  readonly number: number;
  readonly document: TreeObject;
}

export class Timeline {
  document: TreeObject;
  clashes: readonly Clash[] = [];
  pending: readonly Entry[] = [];
  private stored: TreeObject;
  private entries: StoredEntry[] = [];
  private latest: number;
  private readonly turns = new Map<string, number>();
  private known: Steps | undefined;
  private turn = 0;

  /** `cut` is the number up to which the log is gone. */
  constructor(
    private readonly window: string,
    snapshot: Snapshot,
    log: readonly StoredEntry[],
    private cut: number,
  ) {
    this.stored = snapshot.document;
    this.latest = snapshot.number;
    for (const entry of log) this.take(entry);
    this.document = this.stored;
  }

  /** Whether an entry found no place, and no other window's edit explains why: what is stored is broken. */
  isBroken = false;

  /** Number of the last stored entry that is known here. */
  get number(): number {
    return this.latest;
  }

  /** The document without what is not stored yet. */
  get snapshot(): Snapshot {
    return { number: this.latest, document: this.stored };
  }

  get steps(): Steps {
    this.known ??= stepsOf([...this.entries, ...this.pending]);
    return this.known;
  }

  /** The changes as edits, each of the document after the one before; undefined if one of them does not apply. */
  edits(changes: readonly Change[]): readonly Edit[] | undefined {
    const edits: Edit[] = [];
    let document: Tree = this.document;
    for (const change of changes) {
      const edit = editOfChange(document, change);
      if (edit === undefined) return undefined;
      if (isIdle(edit)) continue;
      document = applied(document, edit) ?? document;
      edits.push(edit);
    }
    return edits;
  }

  /** Puts edits of this window on top. */
  add(edits: readonly Edit[], about: Pick<Entry, "step" | "at" | "undoes" | "redoes">): void {
    const entries = edits.map((edit) => ({ ...about, edit, by: this.window, turn: ++this.turn, seen: this.latest }));
    this.pending = [...this.pending, ...entries];
    this.document = entries.reduce(after, this.document);
    this.known = undefined;
  }

  /** The step that an edit made now goes on with, if it is of the same place and follows at once. */
  stepToGoOn(edits: readonly Edit[], at: Date): string | undefined {
    const [edit] = edits;
    const last = this.pending[this.pending.length - 1] ?? this.entries[this.entries.length - 1];
    if (edits.length !== 1 || edit?.kind !== "set" || last?.edit.kind !== "set" || last.by !== this.window) return undefined;
    const isTypedOn = last.undoes === undefined && last.redoes === undefined && isSamePath(last.edit.path, edit.path);
    const since = at.getTime() - Date.parse(last.at);
    return isTypedOn && since >= 0 && since < millisecondsOfStep ? last.step : undefined;
  }

  /** What takes back the last step, or does the last step again that was taken back. */
  wayBack(): { readonly id: string; readonly edits: readonly Edit[] } | undefined {
    return this.firstThatApplies(this.steps.done, (edits) => edits.map(inverse).reverse());
  }

  wayOn(): { readonly id: string; readonly edits: readonly Edit[] } | undefined {
    return this.firstThatApplies(this.steps.undone, (edits) => edits);
  }

  private firstThatApplies(
    steps: Steps["all"],
    turned: (edits: readonly Edit[]) => readonly Edit[],
  ): { readonly id: string; readonly edits: readonly Edit[] } | undefined {
    for (let index = steps.length - 1; index >= 0; index--) {
      const step = steps[index];
      const edits: Edit[] = [];
      let document: Tree = this.document;
      for (const edit of step === undefined ? [] : turned(step.edits)) {
        const next = applied(document, edit);
        // Another window has taken its item out.
        if (next === undefined) continue;
        document = next;
        edits.push(edit);
      }
      if (step !== undefined && edits.length > 0) return { id: step.id, edits };
    }
    return undefined;
  }

  /** Takes in what has been stored, of this window and others, in order; gives whether the document has changed. */
  receive(entries: readonly StoredEntry[]): boolean {
    let isForeign = false;
    for (const entry of entries) {
      if (entry.number <= this.latest) continue;
      isForeign ||= entry.by !== this.window;
      this.take(entry);
    }
    this.known = undefined;
    const turn = this.turns.get(this.window) ?? 0;
    this.pending = this.pending.filter((entry) => entry.turn > turn);
    if (isForeign) this.document = this.pending.reduce(after, this.stored);
    // Both say the same now: kept once.
    else if (this.pending.length === 0) this.stored = this.document;
    return isForeign;
  }

  private take(entry: StoredEntry): void {
    const isNew = entry.number > this.latest;
    if (isNew) this.latest = entry.number;
    if (entry.turn <= (this.turns.get(entry.by) ?? 0)) return;
    this.turns.set(entry.by, entry.turn);
    if (isNew) {
      const next = applied(this.stored, entry.edit);
      if (next === undefined && !this.isExplained(entry)) this.isBroken = true;
      this.stored = withTime(next ?? this.stored, entry);
      this.compare(entry);
    }
    this.entries.push(entry);
  }

  /** Entries of other windows that the one which made this entry did not know of. */
  private unseenBy({ by, seen }: StoredEntry): readonly StoredEntry[] {
    const unseen: StoredEntry[] = [];
    for (let index = this.entries.length - 1; index >= 0; index--) {
      const other = this.entries[index];
      if (other === undefined || other.number <= seen) break;
      if (other.by !== by) unseen.push(other);
    }
    return unseen;
  }

  private isExplained(entry: StoredEntry): boolean {
    return entry.seen < this.cut || this.unseenBy(entry).length > 0;
  }

  private compare(entry: StoredEntry): void {
    for (const other of this.unseenBy(entry)) {
      const isMine = entry.by === this.window;
      if (!isMine && other.by !== this.window) continue;
      const clash = isMine ? clashOf(entry.edit, other.edit) : clashOf(other.edit, entry.edit);
      if (clash !== undefined) this.clashes = withClash(this.clashes, clash);
    }
  }

  dismiss(path: Path): void {
    this.clashes = withoutClash(this.clashes, path);
  }

  /** The number up to which the log can be thrown away, a whole step at a time; undefined while it is short. */
  superfluous(): number | undefined {
    if (this.entries.length <= historyLength) return undefined;
    let index = this.entries.length - historyLength;
    while (index > 0 && this.entries[index - 1]?.step === this.entries[index]?.step) index -= 1;
    return this.entries[index - 1]?.number;
  }

  forget(number: number): void {
    this.entries = this.entries.filter((entry) => entry.number > number);
    this.cut = Math.max(this.cut, number);
    this.known = undefined;
  }

  /** Everything stored is gone: what is here starts a log of its own. */
  startAnew(): void {
    this.entries = [];
    this.latest = 0;
    this.cut = 0;
    this.known = undefined;
    this.pending = this.pending.map((entry) => ({ ...entry, seen: 0 }));
  }

  /** What is not stored yet goes on top of a job that has been read anew. */
  adopt({ pending, turn, clashes }: Timeline): void {
    this.turn = turn;
    this.clashes = clashes;
    const stored = this.turns.get(this.window) ?? 0;
    this.pending = pending.filter((entry) => entry.turn > stored);
    this.document = this.pending.reduce(after, this.stored);
  }
}

function after(document: TreeObject, entry: Entry): TreeObject {
  return withTime(applied(document, entry.edit) ?? document, entry);
}

/** Every edit, also one that is taken back, moves the time of the last edit. */
function withTime(tree: Tree, { at }: Entry): TreeObject {
  return isObject(tree) ? { ...tree, edited: at } : { edited: at };
}
