// A job that is open in this window.

import type { Clash } from "./clashes";
import type { Change, Edit } from "./edits";
import type { Entry, Step, StoredEntry } from "./entries";
import type { OpenJob } from "./jobs";
import type { Timeline } from "./timeline";
import { newId, type Path, type TreeObject } from "./tree";

/** What a job needs of the shelf it stands on. */
export interface Surroundings {
  readonly now: () => Date;
  /** The person has changed the job, or only what the list shows of it. */
  changed(job: KeptJob, isEdit: boolean): void;
  closed(job: KeptJob): void;
}

export class KeptJob implements OpenJob {
  /** How many screens have it open. */
  openings = 1;
  /** How many writings are on their way. */
  sending = 0;
  /** Whether what the list shows of it must be written. */
  isSummaryStale = false;
  /** Whether what is stored is just being read anew. */
  isBeingRead = false;
  /** Entries since the stored document was last written. */
  sinceSnapshot = 0;
  private readonly listeners = new Set<() => void>();

  constructor(
    readonly id: string,
    public timeline: Timeline,
    public glance: string,
    public isStored: boolean,
    private readonly surroundings: Surroundings,
  ) {}

  get document(): TreeObject {
    return this.timeline.document;
  }

  get unsaved(): number {
    return this.timeline.pending.length + (this.isStored ? 0 : 1);
  }

  get needsWriting(): boolean {
    return this.unsaved > 0 || this.isSummaryStale;
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  tell(): void {
    for (const listener of [...this.listeners]) listener();
  }

  apply(changes: Change | readonly Change[]): boolean {
    const list: readonly Change[] = "kind" in changes ? [changes] : changes;
    const edits = this.timeline.edits(list);
    if (edits === undefined) return false;
    if (edits.length === 0) return true;
    const at = this.surroundings.now();
    this.add(edits, { at: at.toISOString(), step: this.timeline.stepToGoOn(edits, at) ?? newId() });
    return true;
  }

  get undoStep(): Step | undefined {
    return this.step(this.timeline.wayBack()?.id);
  }

  get redoStep(): Step | undefined {
    return this.step(this.timeline.wayOn()?.id);
  }

  private step(id: string | undefined): Step | undefined {
    return this.timeline.steps.all.find((step) => step.id === id);
  }

  get canUndo(): boolean {
    return this.undoStep !== undefined;
  }

  get canRedo(): boolean {
    return this.redoStep !== undefined;
  }

  undo(): void {
    const back = this.timeline.wayBack();
    if (back !== undefined) this.add(back.edits, { at: this.surroundings.now().toISOString(), step: newId(), undoes: back.id });
  }

  redo(): void {
    const on = this.timeline.wayOn();
    if (on !== undefined) this.add(on.edits, { at: this.surroundings.now().toISOString(), step: newId(), redoes: on.id });
  }

  private add(edits: readonly Edit[], about: Pick<Entry, "step" | "at" | "undoes" | "redoes">): void {
    this.timeline.add(edits, about);
    this.surroundings.changed(this, true);
    this.tell();
  }

  history(): readonly Step[] {
    return this.timeline.steps.all;
  }

  get clashes(): readonly Clash[] {
    return this.timeline.clashes;
  }

  dismiss(path: Path): void {
    this.timeline.dismiss(path);
    this.tell();
  }

  setGlance(text: string): void {
    if (text === this.glance) return;
    this.glance = text;
    this.surroundings.changed(this, false);
  }

  /** Takes in what has been stored. */
  receive(entries: readonly StoredEntry[]): void {
    this.sinceSnapshot += entries.length;
    if (this.timeline.receive(entries)) this.tell();
  }

  /** Goes on from what has been read anew. */
  replace(timeline: Timeline): void {
    timeline.adopt(this.timeline);
    this.timeline = timeline;
    this.tell();
  }

  /** Nothing of it is stored any more. */
  startAnew(): void {
    this.timeline.startAnew();
    this.isStored = false;
  }

  close(): void {
    this.openings -= 1;
    if (this.openings === 0) this.surroundings.closed(this);
  }
}
