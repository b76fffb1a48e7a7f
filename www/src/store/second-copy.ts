// A second copy of each job and photo, apart from the database: a browser that is killed between two writings may find its
// database damaged two starts later, and then throws it away whole, with everything that only stood there.
// It is kept where the page's own files are kept, in a cache of its own, and read only while the database is not whole.

import type { Disk, StoredPhoto } from "./disk";
import { summaryOf } from "./summaries";
import { isList, isObject, treeOf, type TreeObject } from "./tree";

/** An edit is in the copy after this time. */
const millisecondsOfWait = 200;

const jobs = "copy-of-a-job";
const photos = "copy-of-a-photo";

/** A job is written to two places in turn: what a kill makes of the one that is being written, the other still stands. */
type Place = 0 | 1;

interface Copied {
  /** Higher than in any copy before; clocks may be set back. */
  readonly turn: number;
  readonly document: TreeObject;
}

export class SecondCopy {
  private readonly waiting = new Map<string, TreeObject>();
  /** What has been written last, and where. */
  private readonly written = new Map<string, { readonly turn: number; readonly place: Place }>();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private last: Promise<void> = Promise.resolve();

  constructor(private readonly name: string) {}

  /** Keeps the job as it is now. */
  note(document: TreeObject): void {
    if (typeof document.id !== "string") return;
    this.waiting.set(document.id, document);
    this.timer ??= setTimeout(() => this.write(), millisecondsOfWait);
  }

  /** Writes what waits, after what is being written. */
  write(): void {
    clearTimeout(this.timer);
    this.timer = undefined;
    const documents = [...this.waiting];
    this.waiting.clear();
    if (documents.length === 0) return;
    this.change((cache) => Promise.all(documents.map(([id, document]) => this.put(cache, id, document))));
  }

  private async put(cache: Cache, id: string, document: TreeObject): Promise<void> {
    const before = this.written.get(id) ?? (await newest(cache, id));
    const turn = (before?.turn ?? 0) + 1;
    const place = before?.place === 0 ? 1 : 0;
    this.written.set(id, { turn, place });
    await cache.put(addressOf(jobs, id, place), new Response(JSON.stringify({ turn, document })));
  }

  notePhoto({ id, jobs: owners, type, bytes }: StoredPhoto): void {
    const about = { "x-about": encodeURIComponent(JSON.stringify({ owners, type })) };
    this.change((cache) => cache.put(addressOf(photos, id), new Response(bytes, { headers: about })));
  }

  /** Takes out a job, which the person wants gone; resolves when it is. */
  forget(id: string): Promise<void> {
    this.waiting.delete(id);
    this.written.delete(id);
    return this.change((cache) => Promise.all([cache.delete(addressOf(jobs, id, 0)), cache.delete(addressOf(jobs, id, 1))]));
  }

  forgetPhotos(ids: readonly string[]): Promise<void> {
    return this.change((cache) => Promise.all(ids.map((id) => cache.delete(addressOf(photos, id)))));
  }

  /**
   * Fills a database that is new, or that has not been filled to the end, with what it lacks; gives how many jobs came back,
   * undefined if there was no need. Without a cache there is nothing to come back.
   */
  async bringBack(disk: Disk): Promise<number | undefined> {
    if (await disk.isWhole()) return undefined;
    let count = 0;
    if (hasCaches()) {
      const cache = await caches.open(this.name);
      const found = (await cache.keys()).map(({ url }) => partsOf(url));
      const idsOf = (kind: string): readonly string[] => [...new Set(found.filter((parts) => parts.kind === kind).map(({ id }) => id))];
      for (const id of idsOf(jobs)) {
        const copied = await newest(cache, id);
        if (copied !== undefined && (await disk.bringBack({ number: 0, document: copied.document }, summaryOf(copied.document)))) count += 1;
      }
      const there = new Set(await disk.readPhotoIds());
      for (const id of idsOf(photos).filter((photo) => !there.has(photo))) {
        const photo = await photoOf(cache, id);
        if (photo !== undefined) await disk.writePhotos([photo]);
      }
    }
    await disk.markWhole();
    return count;
  }

  /** One change after the other; where there is no cache, or no space, the database alone has to do. */
  private change(act: (cache: Cache) => Promise<unknown>): Promise<void> {
    this.last = this.last.then(async () => {
      try {
        if (hasCaches()) await act(await caches.open(this.name));
      } catch {
        // What stands in the database is not touched by it.
      }
    });
    return this.last;
  }
}

/** A page that is a file has none: they take no addresses of files. */
function hasCaches(): boolean {
  return typeof caches !== "undefined" && location.protocol !== "file:";
}

/** The later of a job's two copies that can be read. */
async function newest(cache: Cache, id: string): Promise<(Copied & { readonly place: Place }) | undefined> {
  const [one, other] = await Promise.all(([0, 1] as const).map((place) => copyAt(cache, id, place)));
  return (one?.turn ?? 0) > (other?.turn ?? 0) ? one : other;
}

async function copyAt(cache: Cache, id: string, place: Place): Promise<(Copied & { readonly place: Place }) | undefined> {
  try {
    const reply = await cache.match(addressOf(jobs, id, place));
    const tree = treeOf(reply === undefined ? undefined : JSON.parse(await reply.text()));
    if (!isObject(tree) || typeof tree.turn !== "number" || !isObject(tree.document) || tree.document.id !== id) return undefined;
    return { turn: tree.turn, document: tree.document, place };
  } catch {
    return undefined;
  }
}

async function photoOf(cache: Cache, id: string): Promise<StoredPhoto | undefined> {
  try {
    const reply = await cache.match(addressOf(photos, id));
    const about = treeOf(JSON.parse(decodeURIComponent(reply?.headers.get("x-about") ?? "")));
    if (reply === undefined || !isObject(about) || typeof about.type !== "string" || !isList(about.owners)) return undefined;
    const owners = about.owners.filter((owner) => typeof owner === "string");
    return { id, jobs: owners, type: about.type, bytes: await reply.arrayBuffer() };
  } catch {
    return undefined;
  }
}

function addressOf(kind: string, id: string, place?: Place): string {
  return new URL([kind, encodeURIComponent(id), ...(place === undefined ? [] : [place])].join("/"), document.baseURI).href;
}

function partsOf(address: string): { readonly kind: string; readonly id: string } {
  const [, kind = "", id = ""] = /(copy-of-a-\w+)\/([^/]+)/.exec(address) ?? [];
  return { kind, id: decodeURIComponent(id) };
}
