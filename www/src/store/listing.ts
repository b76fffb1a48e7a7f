// The list of this window and the summaries on the disk.

import type { Keeper } from "./keeper";
import type { Unreadable } from "./safekeeping";
import { readSummary, Summaries, summaryOf, type Summary } from "./summaries";
import { Timeline } from "./timeline";

export class Listing {
  readonly summaries = new Summaries();
  /** Summaries that could not be written. */
  private readonly unwritten = new Set<string>();

  constructor(private readonly keeper: Keeper) {}

  get unsaved(): number {
    return this.unwritten.size;
  }

  /** Takes the stored list in; what has no summary is looked at by itself. */
  take(found: readonly unknown[], documents: readonly string[]): void {
    const { jobs } = this.keeper;
    const unlisted = new Set(documents);
    const summaries = found.map(readSummary);
    for (const { id } of this.summaries.all()) if (!jobs.has(id) && !this.unwritten.has(id)) this.summaries.delete(id);
    for (const summary of summaries) {
      if (summary === undefined || jobs.has(summary.id) || this.unwritten.has(summary.id)) continue;
      const isThere = unlisted.delete(summary.id);
      this.summaries.put(isThere ? summary : { ...summary, unreadable: "no-document" });
    }
    for (const id of unlisted) if (!jobs.has(id)) void this.listUnlisted(id);
  }

  /** What a newer page has stored can only be exported. */
  takeNewer(found: readonly unknown[]): void {
    for (const summary of found.map(readSummary)) {
      if (summary !== undefined) this.summaries.put({ ...summary, unreadable: "newer" });
    }
  }

  private async listUnlisted(id: string): Promise<void> {
    const timeline = await this.keeper.read(id);
    if (timeline === "absent" || timeline === undefined) return;
    if (timeline instanceof Timeline) await this.write(summaryOf(timeline.document));
    else this.unreadable(id, timeline);
  }

  unreadable(id: string, unreadable: Unreadable): void {
    const summary = this.summaries.get(id) ?? { id, name: "", edited: "", glance: "" };
    if (summary.unreadable !== unreadable) void this.write({ ...summary, unreadable });
  }

  async write(summary: Summary): Promise<void> {
    const { disk, neighbours, tell } = this.keeper;
    this.summaries.put(summary);
    this.unwritten.add(summary.id);
    tell();
    try {
      await disk?.writeSummary(summary);
      if (disk !== undefined) this.unwritten.delete(summary.id);
      neighbours.tell([summary.id]);
    } catch (problem) {
      this.keeper.failed(problem, disk);
    }
    tell();
  }

  forget(id: string): void {
    this.summaries.delete(id);
    this.unwritten.delete(id);
  }

  /** Writes what could not be written. */
  retry(): void {
    for (const id of this.unwritten) {
      const summary = this.summaries.get(id);
      if (summary !== undefined) void this.write(summary);
    }
  }

  /** Another window has written it. */
  async readAnew(id: string): Promise<void> {
    const { disk, jobs } = this.keeper;
    const summary = readSummary(await disk?.readSummary(id));
    // What waits here is newer.
    if (disk === undefined || jobs.get(id)?.needsWriting === true) return;
    if (summary !== undefined) this.summaries.put(summary);
    else if (!jobs.has(id)) this.summaries.delete(id);
  }
}
