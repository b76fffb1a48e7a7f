// Photos are stored apart from the documents, which name them by their ids.

import type { Disk, StoredPhoto } from "./disk";
import type { SecondCopy } from "./second-copy";
import { newId } from "./tree";

export class Photos {
  /** Those that are not on this phone yet. */
  private readonly waiting = new Map<string, StoredPhoto>();

  constructor(
    private readonly disk: () => Disk | undefined,
    private readonly copy: SecondCopy,
    private readonly failed: (problem: unknown) => void,
  ) {}

  get unsaved(): number {
    return this.waiting.size;
  }

  async add(job: string, photo: Blob): Promise<string> {
    const id = newId();
    await this.put([{ id, jobs: [job], type: photo.type, bytes: await photo.arrayBuffer() }]);
    return id;
  }

  async put(photos: readonly StoredPhoto[]): Promise<void> {
    for (const photo of photos) this.waiting.set(photo.id, photo);
    await this.write();
  }

  /** Writes those that wait, each by itself: where the space ends, some have still been kept. Gives whether any were, and all. */
  async write(): Promise<boolean> {
    const disk = this.disk();
    if (disk === undefined || this.waiting.size === 0) return false;
    try {
      for (const [id, photo] of [...this.waiting]) {
        await disk.writePhotos([photo]);
        this.copy.notePhoto(photo);
        if (this.waiting.get(id) === photo) this.waiting.delete(id);
      }
      return true;
    } catch (problem) {
      this.failed(problem);
      return false;
    }
  }

  async read(id: string): Promise<StoredPhoto | undefined> {
    return this.waiting.get(id) ?? (await this.disk()?.readPhoto(id));
  }

  async ids(job?: string): Promise<readonly string[]> {
    const waiting = [...this.waiting.values()].filter(({ jobs }) => job === undefined || jobs.includes(job)).map(({ id }) => id);
    return [...new Set([...waiting, ...((await this.disk()?.readPhotoIds(job)) ?? [])])];
  }

  /** Photos that are named in a copy of a job belong to both. */
  async share(from: string, to: string, document: string): Promise<void> {
    const named = (await this.ids(from)).filter((id) => document.includes(id));
    for (const id of named) {
      const photo = await this.read(id);
      if (photo !== undefined) await this.put([{ ...photo, jobs: [...photo.jobs, to] }]);
    }
  }

  /** Lets go of those that only this job has and that are not stored. */
  forget(job: string): void {
    for (const [id, { jobs }] of this.waiting) if (jobs.every((other) => other === job)) this.waiting.delete(id);
  }
}
