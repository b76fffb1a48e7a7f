// A second copy of each job, apart from the database: a browser that finds its database damaged when it starts, as after
// two crashes at bad moments, throws it away whole, and with it everything that only stood there.
// It is kept where the page's own files are kept, in a cache of its own, and read only when the database is empty.

import { isObject, treeOf, type TreeObject } from "./tree";

/** An edit is in the copy after this time. */
const millisecondsOfWait = 200;

export class SecondCopy {
  private readonly waiting = new Map<string, TreeObject>();
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
    this.change(async (cache) => {
      await Promise.all(documents.map(([id, document]) => cache.put(addressOf(id), new Response(JSON.stringify(document)))));
    });
  }

  /** Takes a job out, which the person wants gone. */
  forget(id: string): void {
    this.waiting.delete(id);
    this.change(async (cache) => {
      await cache.delete(addressOf(id));
    });
  }

  /** Every job in the copy that can be read. */
  async all(): Promise<readonly TreeObject[]> {
    const cache = await this.open();
    const replies = (await cache?.matchAll().catch(() => [])) ?? [];
    const texts = await Promise.all(replies.map((reply) => reply.text().catch(() => "")));
    return texts.map(documentOf).filter((document) => document !== undefined);
  }

  /** One change after the other; where there is no cache, or no space, the database alone has to do. */
  private change(act: (cache: Cache) => Promise<void>): void {
    this.last = this.last.then(async () => {
      const cache = await this.open();
      if (cache !== undefined) await act(cache).catch(() => {});
    });
  }

  private async open(): Promise<Cache | undefined> {
    return typeof caches === "undefined" ? undefined : caches.open(this.name).catch(() => undefined);
  }
}

function addressOf(id: string): string {
  return new URL(`copy-of-a-job/${encodeURIComponent(id)}`, document.baseURI).href;
}

function documentOf(text: string): TreeObject | undefined {
  try {
    const tree = treeOf(JSON.parse(text));
    return isObject(tree) && typeof tree.id === "string" ? tree : undefined;
  } catch {
    return undefined;
  }
}
