// The shelf that the jobs of this phone stand on.

import { backupFile, readBackup, taken, type BackupChoice, type BackupChoices, type BackupJob, type BackupPreview } from "./backup";
import { changesOf, differences } from "./difference";
import type { StoredPhoto } from "./disk";
import { setting, clearing, type Change } from "./edits";
import type { Opened, OpenJob, Shelf } from "./jobs";
import { Keeper } from "./keeper";
import { KeptJob } from "./kept-job";
import { rawText } from "./raw-text";
import type { Safekeeping } from "./safekeeping";
import { summaryOf, type Summary } from "./summaries";
import { Timeline } from "./timeline";
import { isObject, member, isSame, newId, treeOf, type TreeObject } from "./tree";

/** A removed job can be restored for this long. */
const daysOfRemoved = 30;

export interface ShelfOptions {
  /** Name of the database. */
  readonly database?: string;
  readonly now?: () => Date;
}

/** Resolves as soon as the list is there, or it is known that this phone keeps none. Never rejects. */
export async function openShelf({ database = "coldwright jobs", now = () => new Date() }: ShelfOptions = {}): Promise<Shelf> {
  const shelf = new WholeShelf(database, now);
  await shelf.start();
  return shelf;
}

class WholeShelf implements Shelf {
  private readonly listeners = new Set<() => void>();
  private readonly keeper: Keeper;
  private readonly opening = new Map<string, Promise<Opened>>();
  private readonly ending = new AbortController();

  constructor(
    database: string,
    private readonly now: () => Date,
  ) {
    this.keeper = new Keeper(database, now, () => this.tell());
  }

  async start(): Promise<void> {
    const { signal } = this.ending;
    addEventListener("pagehide", () => this.keeper.flush(), { signal });
    // A page that was put aside may have missed what the others told.
    addEventListener("pageshow", ({ persisted }) => persisted && this.keeper.resume(), { signal });
    document.addEventListener("visibilitychange", () => (document.hidden ? this.keeper.flush() : this.keeper.resume()), { signal });
    await this.keeper.open();
    if ((await navigator.storage?.persisted?.().catch(() => false)) === true) this.keeper.persistence = "granted";
    this.purgeOld();
  }

  get safekeeping(): Safekeeping {
    return this.keeper.safekeeping;
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  private tell(): void {
    for (const listener of [...this.listeners]) listener();
  }

  list(words = ""): readonly Summary[] {
    return this.keeper.listing.summaries.list(words);
  }

  removed(): readonly Summary[] {
    return this.keeper.listing.summaries.removed();
  }

  async open(id: string): Promise<Opened> {
    const job = this.keeper.jobs.get(id);
    if (job !== undefined) {
      job.openings += 1;
      return { kind: "job", job };
    }
    const isFirst = !this.opening.has(id);
    const opening = this.opening.get(id) ?? this.read(id).finally(() => this.opening.delete(id));
    if (isFirst) this.opening.set(id, opening);
    const opened = await opening;
    if (opened.kind === "job" && !isFirst) return this.open(id);
    return opened;
  }

  private async read(id: string): Promise<Opened> {
    const { keeper } = this;
    const timeline = await keeper.read(id);
    if (timeline === "absent") return { kind: "absent" };
    if (timeline === undefined) return this.outOfReach(id);
    const summary = keeper.listing.summaries.get(id);
    if (timeline instanceof Timeline) {
      const job = new KeptJob(id, timeline, summary?.glance ?? "", true, keeper);
      keeper.jobs.set(id, job);
      if (summary === undefined || summary.unreadable !== undefined) void keeper.listing.write(summaryOf(job.document, job.glance));
      return { kind: "job", job };
    }
    keeper.listing.unreadable(id, timeline);
    return { kind: "unreadable", reason: timeline };
  }

  private outOfReach(id: string): Opened {
    const summary = this.keeper.listing.summaries.get(id);
    return summary === undefined ? { kind: "absent" } : { kind: "unreadable", reason: summary.unreadable ?? "out-of-reach" };
  }

  create(content: TreeObject): OpenJob {
    if (!isObject(treeOf(content))) throw new TypeError("a job is a tree of named members");
    return this.put({ ...content, id: newId(), edited: this.now().toISOString() });
  }

  private put(content: TreeObject): KeptJob {
    const document = treeOf(content);
    if (!isObject(document) || typeof document.id !== "string") throw new TypeError("a job is a tree of named members");
    const { keeper } = this;
    const job = new KeptJob(document.id, new Timeline(keeper.window, { number: 0, document }, [], 0), "", false, keeper);
    keeper.jobs.set(job.id, job);
    keeper.changed(job, true);
    void this.persist();
    return job;
  }

  /** Asks the browser not to throw the jobs away, once there is one. */
  private async persist(): Promise<void> {
    if (this.keeper.persistence !== "not asked") return;
    this.keeper.persistence = "refused";
    if ((await navigator.storage?.persist?.().catch(() => false)) === true) this.keeper.persistence = "granted";
    this.tell();
  }

  async duplicate(id: string, change: (document: TreeObject) => TreeObject): Promise<Opened> {
    const opened = await this.open(id);
    if (opened.kind !== "job") return opened;
    const job = this.create(change(opened.job.document));
    await this.keeper.photos.share(id, job.id, JSON.stringify(job.document));
    opened.job.close();
    return { kind: "job", job };
  }

  async remove(id: string): Promise<void> {
    const summary = this.keeper.listing.summaries.get(id);
    if (summary === undefined) return;
    await this.keeper.copy.forget(id);
    await this.keeper.listing.write({ ...summary, removed: this.now().toISOString() });
  }

  async restore(id: string): Promise<void> {
    const { removed: _, ...summary } = this.keeper.listing.summaries.get(id) ?? {};
    if (!("id" in summary)) return;
    await this.keeper.listing.write(summary);
    const document = await this.documentOf(id);
    if (document !== undefined) this.keeper.copy.note(document);
  }

  async purge(id: string): Promise<void> {
    await this.keeper.purge(id);
  }

  private purgeOld(): void {
    const oldest = new Date(this.now().getTime() - daysOfRemoved * 86_400_000).toISOString();
    // One that cannot be taken away now is so at the next start.
    for (const { id, removed = "" } of this.removed()) if (removed < oldest) this.purge(id).catch(() => {});
  }

  async exportRaw(id: string): Promise<string> {
    const disk = this.keeper.disk ?? this.keeper.newerDisk;
    const open = this.keeper.jobs.get(id);
    const broken = (problem: unknown): string => `unreadable: ${String(problem)}`;
    const [summary, job, photos] = await Promise.all([
      disk?.readSummary(id).catch(broken),
      disk?.readJob(id).catch(broken),
      disk?.readPhotoIds(id).catch(broken),
    ]);
    return rawText({ id, summary, job, photos, open: open && { document: open.document, unsaved: open.timeline.pending } });
  }

  addPhoto(jobId: string, photo: Blob): Promise<string> {
    return this.keeper.photos.add(jobId, photo);
  }

  async photo(id: string): Promise<Blob | undefined> {
    const photo = await this.keeper.photos.read(id);
    return photo && new Blob([photo.bytes], { type: photo.type });
  }

  async backup(): Promise<Blob> {
    const documents: TreeObject[] = [];
    const unreadable: string[] = [];
    for (const { id } of this.list()) {
      const document = await this.documentOf(id);
      if (document !== undefined) documents.push(document);
      else unreadable.push(await this.exportRaw(id));
    }
    return backupFile(this.now().toISOString(), documents, unreadable, this.allPhotos());
  }

  private async *allPhotos(): AsyncIterable<StoredPhoto> {
    for (const id of await this.keeper.photos.ids()) {
      const photo = await this.keeper.photos.read(id);
      if (photo !== undefined) yield photo;
    }
  }

  private async documentOf(id: string): Promise<TreeObject | undefined> {
    const timeline = this.keeper.jobs.get(id)?.timeline ?? (await this.keeper.read(id));
    return timeline instanceof Timeline ? timeline.document : undefined;
  }

  async previewBackup(file: Blob | string): Promise<BackupPreview> {
    return readBackup(typeof file === "string" ? file : await file.text(), (id) => this.documentOf(id));
  }

  async takeBackup(preview: BackupPreview, choices: BackupChoices = new Map()): Promise<void> {
    if (preview.kind !== "backup") return;
    /** The ids under which the jobs of the file are here. */
    const ids = new Map<string, string>();
    for (const job of preview.jobs) {
      const choice = choices.get(job.id);
      if (choice !== "leave") ids.set(job.id, await this.takeJob(job, choice));
    }
    const here = new Set(await this.keeper.photos.ids());
    const wanted = preview.photos.filter(({ id }) => !here.has(id)).map((photo) => ({ ...photo, jobs: photo.jobs.flatMap((job) => ids.get(job) ?? []) }));
    await this.keeper.photos.put(wanted.filter(({ jobs }) => jobs.length > 0));
  }

  private async takeJob(theirs: BackupJob, choice: Exclude<BackupChoice, "leave"> | undefined): Promise<string> {
    const opened = await this.open(theirs.id);
    if (opened.kind !== "job") {
      // What is broken here is not overwritten.
      const made = opened.kind === "absent" ? this.put(theirs.document) : this.create(theirs.document);
      made.close();
      return made.id;
    }
    const { job } = opened;
    const { document } = job;
    job.apply(choice === "take" ? allChanges(document, theirs.document) : changesOf(taken(differences(document, theirs.document), choice), theirs.document));
    if (this.keeper.listing.summaries.get(job.id)?.removed !== undefined) await this.restore(job.id);
    job.close();
    return job.id;
  }

  settled(): Promise<Safekeeping> {
    return new Promise((resolve) => {
      const look = (): void => {
        const { safekeeping } = this;
        if (safekeeping.unsaved > 0 && safekeeping.kept === "on this phone") return;
        stop();
        resolve(safekeeping);
      };
      const stop = this.subscribe(look);
      look();
    });
  }

  async close(): Promise<void> {
    await this.settled();
    this.ending.abort();
    this.keeper.close();
  }
}

/** Takes the other document over member by member, in its order. */
function allChanges(mine: TreeObject, theirs: TreeObject): readonly Change[] {
  const names = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])].filter((name) => name !== "id" && name !== "edited");
  return names
    .filter((name) => !isSame(member(mine, name), member(theirs, name)))
    .map((name) => {
      const to = member(theirs, name);
      return to === undefined ? clearing([name]) : setting([name], to);
    });
}
