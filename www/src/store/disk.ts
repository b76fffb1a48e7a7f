// The database on this phone. A summary, a document and the edits after it are stored apart: the list reads no document,
// a letter typed writes no document.

import { openDB, type DBSchema, type IDBPDatabase, type IDBPObjectStore, type StoreNames } from "idb";
import type { Cut, Entry, StoredEntry } from "./entries";
import type { Summary } from "./summaries";
import type { Snapshot } from "./timeline";

/** Read back as `unknown`: anything may have happened to it. */
interface Stores extends DBSchema {
  summaries: { key: string; value: Summary };
  documents: { key: string; value: StoredDocument };
  edits: { key: number; value: StoredEntry | Cut; indexes: { job: string } };
  photos: { key: string; value: StoredPhoto; indexes: { jobs: string } };
  /** Whether the database holds all that there is: one that has just been made may have replaced a damaged one. */
  marks: { key: string; value: true };
}

interface StoredDocument extends Snapshot {
  readonly id: string;
  readonly schema: number;
}

export interface StoredPhoto {
  readonly id: string;
  readonly jobs: readonly string[];
  readonly type: string;
  /** Some browsers lose blobs that are stored as such. */
  readonly bytes: ArrayBuffer;
}

/** Form of the documents' records; a record with a higher one comes from a newer page. */
export const schema = 1;
/** Form of the whole database. */
const version = 2;

/** The browser need not wait for the disk itself: what a browser that is killed has been given, it has not lost. */
const quick = { durability: "relaxed" } as const;

/** What is written of a job at once. */
export interface Batch {
  readonly id: string;
  readonly entries: readonly Entry[];
  readonly summary: Summary;
  /** For a job that is not there yet. */
  readonly snapshot?: Snapshot;
  /** Entries after this number are given back. */
  readonly since: number;
}

export interface Written {
  /** Entries of all jobs that other windows stored before. */
  readonly since: readonly unknown[];
  readonly numbers: readonly number[];
  /** Whether the job was there. */
  readonly wasThere: boolean;
}

export interface Happenings {
  /** Another window holds an older database open. */
  blocked(): void;
  /** Another window wants to change the database (or take it away): it must be closed at once. */
  claimed(isNewer: boolean): void;
  /** The browser has closed the connection. */
  lost(): void;
}

export async function openDisk(name: string, happenings: Happenings): Promise<Disk> {
  const database = await openDB<Stores>(name, version, {
    upgrade: make,
    blocked: () => happenings.blocked(),
    blocking: (_, newer) => happenings.claimed(newer !== null),
    terminated: () => happenings.lost(),
  });
  return new Disk(database);
}

/** Makes what a database of an older version lacks. */
function make(database: IDBPDatabase<Stores>, older: number): void {
  if (older < 1) {
    database.createObjectStore("summaries", { keyPath: "id" });
    database.createObjectStore("documents", { keyPath: "id" });
    database.createObjectStore("edits", { keyPath: "number", autoIncrement: true }).createIndex("job", "job");
    database.createObjectStore("photos", { keyPath: "id" }).createIndex("jobs", "jobs", { multiEntry: true });
  }
  if (older < 2) database.createObjectStore("marks");
}

/** The database as a newer page has left it, for exporting what is in it. */
export async function openNewerDisk(name: string): Promise<Disk> {
  const database = await openDB<Stores>(name, undefined, { blocking: () => database.close() });
  return new Disk(database);
}

export class Disk {
  constructor(private readonly database: IDBPDatabase<Stores>) {}

  close(): void {
    this.database.close();
  }

  /** What the list needs: summaries, ids of the documents, and the number of the last entry. */
  async readList(): Promise<{ summaries: readonly unknown[]; documents: readonly string[]; number: number }> {
    // Each by itself: what one cannot give must not take the others along.
    const [summaries, documents, last] = await Promise.all([
      this.reading("summaries").getAll().catch(() => this.readSummariesOneByOne()),
      this.reading("documents").getAllKeys(),
      this.reading("edits").openKeyCursor(null, "prev"),
    ]);
    return { summaries, documents, number: last?.primaryKey ?? 0 };
  }

  /** One record that cannot be read must not hide the others. */
  private async readSummariesOneByOne(): Promise<readonly unknown[]> {
    const ids = await this.reading("summaries").getAllKeys();
    return Promise.all(ids.map((id) => this.readSummary(id).catch(() => ({ id }))));
  }

  readSummary(id: string): Promise<unknown> {
    return this.reading("summaries").get(id);
  }

  /** A job's record and its entries, in order. */
  async readJob(id: string): Promise<{ record: unknown; log: readonly unknown[] }> {
    const reading = this.database.transaction(["documents", "edits"]);
    const record = reading.objectStore("documents").get(id);
    const log = reading.objectStore("edits").index("job").getAll(id);
    const [found, entries] = await finished(reading, Promise.all([record, log]));
    return { record: found, log: entries };
  }

  readEntriesSince(number: number): Promise<readonly unknown[]> {
    return this.reading("edits").getAll(IDBKeyRange.lowerBound(number, true));
  }

  readPhoto(id: string): Promise<StoredPhoto | undefined> {
    return this.reading("photos").get(id);
  }

  readPhotoIds(job?: string): Promise<readonly string[]> {
    const photos = this.reading("photos");
    return job === undefined ? photos.getAllKeys() : photos.index("jobs").getAllKeys(job);
  }

  async isWhole(): Promise<boolean> {
    return (await this.reading("marks").get("whole")) === true;
  }

  async markWhole(): Promise<void> {
    const writing = this.database.transaction("marks", "readwrite", quick);
    await finished(writing, writing.store.put(true, "whole"));
  }

  /** Stores a job from its copy, if it is not there; gives whether it was not. */
  async bringBack(snapshot: Snapshot, summary: Summary): Promise<boolean> {
    const writing = this.database.transaction(["summaries", "documents"], "readwrite", quick);
    const documents = writing.objectStore("documents");
    const write = async (): Promise<boolean> => {
      if ((await documents.getKey(summary.id)) !== undefined) return false;
      await Promise.all([documents.put({ ...snapshot, id: summary.id, schema }), writing.objectStore("summaries").put(summary)]);
      return true;
    };
    return finished(writing, write());
  }

  /** A store to read one thing from. */
  private reading<Name extends StoreNames<Stores>>(name: Name): IDBPObjectStore<Stores, [Name], Name, "readonly"> {
    const reading = this.database.transaction(name);
    // What is asked for fails with it, and says so.
    reading.done.catch(() => {});
    return reading.store;
  }

  /**
   * Writes all or nothing. Everything is asked for in one go and needs no answer, so that it is written even if the page
   * closes at once.
   */
  async append({ id, entries, summary, snapshot, since }: Batch): Promise<Written> {
    const writing = this.database.transaction(["summaries", "documents", "edits"], "readwrite", quick);
    const edits = writing.objectStore("edits");
    const documents = writing.objectStore("documents");
    const asked = Promise.all([
      edits.getAll(IDBKeyRange.lowerBound(since, true)),
      documents.getKey(id),
      // The database gives the numbers.
      Promise.all(entries.map((entry) => edits.add({ ...entry, job: id } as StoredEntry))),
      writing.objectStore("summaries").put(summary),
      snapshot && documents.put({ ...snapshot, id, schema }),
    ]);
    writing.commit();
    const [stored, key, numbers] = await finished(writing, asked);
    return { since: stored, numbers, wasThere: key !== undefined };
  }

  /** Stores a document as of a later entry, and throws entries up to `cut` away; not if a later one is there. */
  async writeSnapshot(id: string, snapshot: Snapshot, cut?: number): Promise<boolean> {
    const writing = this.database.transaction(["documents", "edits"], "readwrite", quick);
    const documents = writing.objectStore("documents");
    const edits = writing.objectStore("edits");
    const write = async (): Promise<boolean> => {
      const there = await documents.get(id);
      if (there === undefined || there.number >= snapshot.number) return false;
      const numbers = cut === undefined ? [] : await edits.index("job").getAllKeys(id);
      await Promise.all([
        documents.put({ ...snapshot, id, schema }),
        ...numbers.filter((number) => number <= (cut ?? 0)).map((number) => edits.delete(number)),
      ]);
      if (cut !== undefined) await edits.put({ number: cut, cut: true, job: id });
      return true;
    };
    return finished(writing, write());
  }

  async writeSummary(summary: Summary): Promise<void> {
    const writing = this.database.transaction("summaries", "readwrite", quick);
    await finished(writing, writing.store.put(summary));
  }

  /** Takes a job off this phone, with the photos that no other job has, and gives the ids of those. */
  async purge(id: string): Promise<readonly string[]> {
    const writing = this.database.transaction(["summaries", "documents", "edits", "photos"], "readwrite", quick);
    const edits = writing.objectStore("edits");
    const photos = writing.objectStore("photos");
    const takePhotoOut = async (key: string): Promise<readonly string[]> => {
      const photo = await photos.get(key);
      const jobs = photo?.jobs.filter((job) => job !== id) ?? [];
      const isShared = photo !== undefined && jobs.length > 0;
      await (isShared ? photos.put({ ...photo, jobs }) : photos.delete(key));
      return isShared ? [] : [key];
    };
    const takeOut = async (): Promise<readonly string[]> => {
      const [numbers, keys] = await Promise.all([
        edits.index("job").getAllKeys(id),
        photos.index("jobs").getAllKeys(id),
        writing.objectStore("summaries").delete(id),
        writing.objectStore("documents").delete(id),
      ]);
      await Promise.all(numbers.map((number) => edits.delete(number)));
      return (await Promise.all(keys.map(takePhotoOut))).flat();
    };
    return finished(writing, takeOut());
  }

  async writePhotos(photos: readonly StoredPhoto[]): Promise<void> {
    const writing = this.database.transaction("photos", "readwrite", quick);
    await finished(writing, Promise.all(photos.map((photo) => writing.store.put(photo))));
  }
}

/** What was asked for, once all of it is done. Of a failure the transaction knows the reason, its requests only that there is one. */
async function finished<Asked>(transaction: { readonly done: Promise<void> }, asked: Promise<Asked>): Promise<Asked> {
  asked.catch(() => {});
  await transaction.done;
  return asked;
}
