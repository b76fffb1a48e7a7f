// Brings what is done in this window to the disk, and what other windows have stored to this window.

import { Connection, type FirstRead } from "./connection";
import type { Disk } from "./disk";
import { entryOf, type Cut, type StoredEntry } from "./entries";
import type { KeptJob, Surroundings } from "./kept-job";
import { Listing } from "./listing";
import { Neighbours } from "./neighbours";
import { Photos } from "./photos";
import { isCut, isStored, readTimeline } from "./reading";
import type { Persistence, Reason, Safekeeping, Unreadable } from "./safekeeping";
import { SecondCopy } from "./second-copy";
import { summaryOf } from "./summaries";
import { Timeline } from "./timeline";
import { newId } from "./tree";

/** Entries after which the document is stored anew: so many are replayed when a job is opened. */
const entriesOfSnapshot = 200;
const shortestWait = 500;
const longestWait = 30_000;

export class Keeper implements Surroundings {
  readonly window = newId();
  readonly jobs = new Map<string, KeptJob>();
  readonly listing = new Listing(this);
  readonly copy: SecondCopy;
  readonly photos: Photos;
  disk: Disk | undefined;
  newerDisk: Disk | undefined;
  persistence: Persistence = "not asked";
  private reason: Reason | undefined;
  private readonly connection: Connection;
  readonly neighbours: Neighbours;
  /** Number of the last entry of any job that this window has read. */
  private seen: number | undefined;
  /** What arrives of jobs that are just being read. */
  private readonly arriving = new Map<string, Set<(StoredEntry | Cut)[]>>();
  private wait = shortestWait;
  private sending: ReturnType<typeof setTimeout> | undefined;
  private retrying: ReturnType<typeof setTimeout> | undefined;
  private heard: Set<string> | undefined;

  constructor(
    name: string,
    readonly now: () => Date,
    readonly tell: () => void,
  ) {
    this.connection = new Connection(name, {
      prepare: (disk) => this.prepare(disk),
      connected: (disk, first) => this.connected(disk, first),
      disconnected: (reason, newer) => this.disconnected(reason, newer),
      closing: () => this.flush(),
    });
    this.copy = new SecondCopy(`${name}, second copy`);
    this.photos = new Photos(() => this.disk, this.copy, (problem) => this.failed(problem, this.disk));
    this.neighbours = new Neighbours(name, (jobs) => void this.catchUp(jobs));
  }

  open(): Promise<void> {
    return this.connection.open();
  }

  get safekeeping(): Safekeeping {
    const { persistence, reason, broughtBack } = this;
    const unsaved = [...this.jobs.values()].reduce((sum, job) => sum + job.unsaved, this.photos.unsaved + this.listing.unsaved);
    return reason === undefined ? { kept: "on this phone", persistence, unsaved, broughtBack } : { kept: "in memory only", reason, persistence, unsaved, broughtBack };
  }

  /** Jobs that came back from the second copy, because the browser had thrown the database away. */
  private broughtBack = 0;

  private async prepare(disk: Disk): Promise<void> {
    // What cannot come back now does so at another start.
    const count = await this.copy.bringBack(disk).catch(() => undefined);
    this.broughtBack += count ?? 0;
    if (count !== undefined && this.seen !== undefined) this.emptied();
  }

  /** The database has lost everything under a window: what is open here is ahead of its copy. */
  private emptied(): void {
    for (const job of this.jobs.values()) job.startAnew();
    this.seen = 0;
  }

  private connected(disk: Disk, { summaries, documents, number }: FirstRead): void {
    this.disk = disk;
    this.reason = undefined;
    if (number < (this.seen ?? 0)) this.emptied();
    this.seen ??= number;
    this.listing.take(summaries, documents);
    this.retry();
    void this.catchUp([]);
    this.tell();
  }

  private disconnected(reason: Reason, newer?: { readonly disk: Disk; readonly first: FirstRead }): void {
    this.disk = undefined;
    this.reason = reason;
    this.newerDisk = newer?.disk;
    this.listing.takeNewer(newer?.first.summaries ?? []);
    this.tell();
  }

  /** A job as it is stored; undefined if the database does not give it. */
  async read(id: string): Promise<Timeline | Unreadable | "absent" | undefined> {
    const { disk } = this;
    const arrived: (StoredEntry | Cut)[] = [];
    const listening = this.arriving.get(id) ?? new Set();
    this.arriving.set(id, listening.add(arrived));
    try {
      if (disk === undefined) return undefined;
      const { record, log } = await disk.readJob(id);
      if (record === undefined && log.length === 0 && this.listing.summaries.get(id) === undefined) return "absent";
      const timeline = readTimeline(this.window, id, record, log);
      if (timeline instanceof Timeline) timeline.receive(arrived.filter(isStored));
      return timeline;
    } catch {
      return undefined;
    } finally {
      listening.delete(arrived);
      if (listening.size === 0) this.arriving.delete(id);
    }
  }

  changed(job: KeptJob, isEdit: boolean): void {
    const removed = isEdit ? undefined : this.listing.summaries.get(job.id)?.removed;
    this.listing.summaries.put({ ...summaryOf(job.document, job.glance), ...(removed !== undefined && { removed }) });
    job.isSummaryStale = true;
    this.jobs.set(job.id, job);
    if (removed === undefined) this.copy.note(job.document);
    // Once the edit has been drawn; a hidden page draws nothing, and its timers are slow.
    if (document.hidden) void this.send(job);
    else this.sending ??= setTimeout(() => this.sendAll());
    this.tell();
  }

  private sendAll(): void {
    this.sending = undefined;
    for (const job of this.jobs.values()) void this.send(job);
  }

  closed(job: KeptJob): void {
    if (job.needsWriting) return;
    this.jobs.delete(job.id);
    if (job.sinceSnapshot > 0) void this.writeSnapshot(job);
  }

  /** Writes what waits. One writing at a time, each with all that has come meanwhile, unless the page may be gone at once. */
  private async send(job: KeptJob, isUrgent = false): Promise<void> {
    const { disk } = this;
    const summary = this.listing.summaries.get(job.id);
    if (disk === undefined || summary === undefined || !job.needsWriting || job.isBeingRead) return;
    if (job.sending > 0 && !isUrgent) return;
    const entries = job.timeline.pending;
    const snapshot = job.isStored ? undefined : job.timeline.snapshot;
    job.sending += 1;
    job.isSummaryStale = false;
    try {
      const written = await disk.append({ id: job.id, entries, summary, since: this.seen ?? 0, ...(snapshot && { snapshot }) });
      // Another window has taken the job off this phone, or the browser the database, which then counts anew.
      if (!written.wasThere && snapshot === undefined) {
        if ((written.numbers[0] ?? 0) <= (this.seen ?? 0)) this.seen = 0;
        job.startAnew();
      } else job.isStored = true;
      const numbered = entries.map((entry, index) => ({ ...entry, job: job.id, number: written.numbers[index] ?? 0 }));
      this.take([...written.since, ...numbered]);
    } catch (problem) {
      job.isSummaryStale = true;
      return this.failed(problem, disk);
    } finally {
      job.sending -= 1;
    }
    this.succeeded(disk);
    this.neighbours.tell([job.id]);
    if (job.needsWriting && (entries.length === 0 || job.timeline.pending[0] !== entries[0])) void this.send(job);
    else if (job.openings === 0) this.closed(job);
    else if (job.sinceSnapshot >= entriesOfSnapshot) void this.writeSnapshot(job);
  }

  private async writeSnapshot(job: KeptJob): Promise<void> {
    const { snapshot } = job.timeline;
    const cut = job.timeline.superfluous();
    job.sinceSnapshot = 0;
    // Without it nothing is lost: the entries stay, and the next one comes.
    const isWritten = (await this.disk?.writeSnapshot(job.id, snapshot, cut).catch(() => false)) ?? false;
    if (isWritten && cut !== undefined) job.timeline.forget(cut);
  }

  private succeeded(disk: Disk | undefined): void {
    // A database that was closed meanwhile has taken what was on its way, and takes nothing more.
    if (disk !== this.disk || disk === undefined) return this.tell();
    this.wait = shortestWait;
    const waits = [...this.jobs.values()].some((job) => job.needsWriting && job.sending === 0);
    if (!waits && this.photos.unsaved + this.listing.unsaved === 0) this.reason = undefined;
    this.tell();
  }

  failed(problem: unknown, disk: Disk | undefined): void {
    if (disk !== this.disk || disk === undefined) return;
    this.reason = problem instanceof DOMException && problem.name === "QuotaExceededError" ? "full" : "failed";
    if (this.retrying === undefined) {
      this.retrying = setTimeout(() => this.retry(), this.wait);
      this.wait = Math.min(longestWait, this.wait * 2);
    }
    this.tell();
  }

  /** Tries to write what waits. */
  retry(): void {
    clearTimeout(this.retrying);
    this.retrying = undefined;
    this.sendAll();
    this.listing.retry();
    const { disk } = this;
    void this.photos.write().then((isWritten) => isWritten && this.succeeded(disk));
  }

  /** Writes what waits without awaiting what is on its way: the page may be gone at once. */
  flush(): void {
    this.copy.write();
    for (const job of this.jobs.values()) void this.send(job, true);
    void this.photos.write();
  }

  /** The page is looked at again, or is back from where the browser had put it aside. */
  resume(): void {
    void this.catchUp([...this.jobs.keys()]);
    if (this.safekeeping.unsaved > 0) this.retry();
  }

  async purge(id: string): Promise<void> {
    await this.copy.forget(id);
    const photos = await this.disk?.purge(id);
    void this.copy.forgetPhotos(photos ?? []);
    this.jobs.delete(id);
    this.listing.forget(id);
    this.photos.forget(id);
    this.neighbours.tell([id]);
    this.retry();
    this.tell();
  }

  /** Reads what other windows have stored; what they tell of meanwhile is read thereafter. */
  async catchUp(jobs: readonly string[]): Promise<void> {
    const isReading = this.heard !== undefined;
    const heard = (this.heard ??= new Set());
    for (const id of jobs) heard.add(id);
    heard.add("");
    if (isReading) return;
    try {
      while (heard.size > 0) {
        const ids = [...heard].filter((id) => id !== "");
        heard.clear();
        this.take((await this.disk?.readEntriesSince(this.seen ?? 0)) ?? []);
        for (const id of ids) await this.listing.readAnew(id);
        this.tell();
      }
    } catch {
      // The database is gone; when it is back, all is read.
    } finally {
      this.heard = undefined;
    }
  }

  /** Hands entries out to the jobs they belong to. */
  private take(found: readonly unknown[]): void {
    const byJob = new Map<string, (StoredEntry | Cut)[]>();
    for (const entry of found.map(entryOf)) {
      if (entry === undefined) continue;
      this.seen = Math.max(this.seen ?? 0, entry.number);
      const entries = byJob.get(entry.job) ?? [];
      byJob.set(entry.job, entries);
      entries.push(entry);
    }
    for (const [id, entries] of byJob) {
      for (const arrived of this.arriving.get(id) ?? []) arrived.push(...entries);
      const job = this.jobs.get(id);
      if (job === undefined) continue;
      if (entries.some((entry) => isCut(entry) && entry.number > job.timeline.number)) void this.readAnew(job);
      else job.receive(entries.filter(isStored));
    }
  }

  /** Other windows have gone on so far that what this one has missed is no longer kept. */
  private async readAnew(job: KeptJob): Promise<void> {
    job.isBeingRead = true;
    const timeline = await this.read(job.id);
    job.isBeingRead = false;
    if (timeline instanceof Timeline) job.replace(timeline);
    this.tell();
    void this.send(job);
  }

  close(): void {
    this.flush();
    clearTimeout(this.retrying);
    clearTimeout(this.sending);
    this.connection.close();
    this.neighbours.close();
    this.newerDisk?.close();
  }
}
