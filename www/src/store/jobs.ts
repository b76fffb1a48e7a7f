// The jobs on this phone, as the screens see them. Import it late: nothing of it belongs to the first screen.
//
//   const shelf = await openShelf();
//   const job = shelf.create(document);
//   job.subscribe(draw);
//   job.apply(setting(["plate", "charge"], "1.2 kg"));
//   job.apply([puttingIn(["readings"], { id: newItemId([]), pressure: "40 bar" })]);
//   job.undo();

import type { Change } from "./edits";
import type { Path, TreeObject } from "./tree";
import type { Clash } from "./clashes";
import type { Step } from "./entries";
import type { BackupChoice, BackupChoices, BackupJob, BackupPreview } from "./backup";
import type { Safekeeping, Unreadable } from "./safekeeping";
import type { Summary } from "./summaries";

export { clearing, moving, puttingIn, setting, takingOut, type After, type Change, type Edit } from "./edits";
export { isSame, newId, newItemId, read, treeOf, type Item, type Path, type Tree, type TreeObject } from "./tree";
export { changesOf, type Difference } from "./difference";
export type { BackupChoice, BackupChoices, BackupJob, BackupPreview, Clash, Safekeeping, Step, Summary, Unreadable };
export { openShelf, type ShelfOptions } from "./shelf";

/** Calls the listener after each change until the function it gives is called. */
export type Subscribe = (listener: () => void) => () => void;

export interface Shelf {
  /** Where jobs are kept, and if not on this phone, why not. */
  readonly safekeeping: Safekeeping;
  /** Tells of changes of the list, of what is removed and of the safekeeping; a job tells of its own. */
  readonly subscribe: Subscribe;
  /** Jobs that are not removed and hold each of the words in their name or glance; the last edited first. */
  list(words?: string): readonly Summary[];
  /** Removed jobs that can still be restored, the last removed first. */
  removed(): readonly Summary[];
  /** A job that is open already is given again; each `open` wants a `close`. */
  open(id: string): Promise<Opened>;
  /** Makes a job of a document; it is given its id and time of edit. Throws a TypeError if it is no tree of named members. */
  create(document: TreeObject): OpenJob;
  /** Makes a copy of the job, changed: at least its name should be. */
  duplicate(id: string, change: (document: TreeObject) => TreeObject): Promise<Opened>;
  /** Takes a job out of the list; it can be restored for 30 days. An edit in another window restores it. */
  remove(id: string): Promise<void>;
  restore(id: string): Promise<void>;
  /** Takes a job and its photos off this phone for good, and makes space. */
  purge(id: string): Promise<void>;
  /** Everything stored of a job as text, however broken. */
  exportRaw(id: string): Promise<string>;
  /** Keeps a photo of a job and gives its id, to be written into the document. */
  addPhoto(jobId: string, photo: Blob): Promise<string>;
  /** Undefined if there is no such photo. */
  photo(id: string): Promise<Blob | undefined>;
  /** One JSON file of all jobs and photos, also of what is only in memory. */
  backup(): Promise<Blob>;
  /** What a backup would bring; nothing is written. */
  previewBackup(file: Blob | string): Promise<BackupPreview>;
  /** Takes from a backup what was chosen; changes of a job that is here are one step that can be undone. */
  takeBackup(preview: BackupPreview, choices?: BackupChoices): Promise<void>;
  /** Resolves once everything is on this phone or it is known that it cannot be: ask before a reload. */
  settled(): Promise<Safekeeping>;
  /** Writes what waits and lets go of the storage. */
  close(): Promise<void>;
}

export type Opened =
  | { readonly kind: "job"; readonly job: OpenJob }
  | { readonly kind: "unreadable"; readonly reason: Unreadable }
  | { readonly kind: "absent" };

export interface OpenJob {
  readonly id: string;
  /** Never changed in place: another object after each edit. */
  readonly document: TreeObject;
  /** Edits that are not on this phone yet. */
  readonly unsaved: number;
  /** Tells of each change, also one from another window. */
  readonly subscribe: Subscribe;
  /**
   * Applies all of the changes as one step, or none of them: false if one finds no place (its item is gone) or is no tree.
   * Typing on in the same place within a second and a half belongs to the step before.
   */
  apply(changes: Change | readonly Change[]): boolean;
  /** What `undo` takes back; undefined if there is nothing. */
  readonly undoStep: Step | undefined;
  /** What `redo` does again; undefined if there is nothing. */
  readonly redoStep: Step | undefined;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  undo(): void;
  redo(): void;
  /** The steps that are kept, the oldest first: the last two thousand edits or a little more. */
  history(): readonly Step[];
  /** Places that two windows have written to without knowing of each other; the later edit stands. */
  readonly clashes: readonly Clash[];
  /** Takes a clash off the list, once the person has seen it. */
  dismiss(path: Path): void;
  /** A short text for the list, such as what is open; kept with the job, found by the search. */
  setGlance(text: string): void;
  close(): void;
}
