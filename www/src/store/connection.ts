// The way to the database: it may be refused, blocked or slow, be taken away later, and come back.

import { openDisk, openNewerDisk, type Disk } from "./disk";
import { reasonOf, type Reason } from "./safekeeping";

/** A database that has not answered by then is taken for one that will not, until it does. */
const millisecondsOfPatience = 3000;
const millisecondsUntilAnew = 1000;

export interface FirstRead {
  readonly summaries: readonly unknown[];
  readonly documents: readonly string[];
  /** Number of the last entry. */
  readonly number: number;
}

export interface ConnectionListener {
  /** The database has answered, but has not been read: it may be filled with what it has lost. */
  prepare(disk: Disk): Promise<void>;
  /** From here on it may be written to. */
  connected(disk: Disk, first: FirstRead): void;
  /** It is to be done without, for now or for good. `newer` is what a newer page has stored, to be read only. */
  disconnected(reason: Reason, newer?: { readonly disk: Disk; readonly first: FirstRead }): void;
  /** The last moment to write before it is closed. */
  closing(): void;
}

export class Connection {
  private disk: Disk | undefined;
  private isClosed = false;

  constructor(
    private readonly name: string,
    private readonly listener: ConnectionListener,
  ) {}

  /** Resolves as soon as it is known whether there is a database, which may still come later. */
  open(): Promise<void> {
    return new Promise((known) => {
      const doWithout = (reason: Reason): void => {
        clearTimeout(patience);
        if (this.disk === undefined) this.listener.disconnected(reason);
        known();
      };
      const patience = setTimeout(() => doWithout("slow"), millisecondsOfPatience);
      const connecting = this.connect(() => doWithout("blocked")).catch((problem) => this.refused(problem));
      void connecting.finally(() => clearTimeout(patience)).finally(known);
    });
  }

  private async connect(blocked: () => void): Promise<void> {
    // Reading the name may be refused, too.
    if (typeof indexedDB === "undefined") return this.listener.disconnected("refused");
    const disk = await openDisk(this.name, {
      blocked,
      claimed: (isNewer) => this.claimed(isNewer),
      lost: () => this.openAnew("failed"),
    });
    await this.listener.prepare(disk);
    const first = await disk.readList();
    if (this.isClosed) return disk.close();
    this.disk = disk;
    this.listener.connected(disk, first);
  }

  private async refused(problem: unknown): Promise<void> {
    const reason = reasonOf(problem);
    if (reason === "full" || reason === "failed") return this.openAnew(reason);
    if (reason !== "newer") return this.listener.disconnected(reason);
    const disk = await openNewerDisk(this.name).catch(() => undefined);
    const first = await disk?.readList().catch(() => undefined);
    this.listener.disconnected(reason, disk && first && { disk, first });
  }

  private claimed(isNewer: boolean): void {
    this.listener.closing();
    if (!isNewer) return this.openAnew("failed");
    this.disk?.close();
    this.disk = undefined;
    this.isClosed = true;
    this.listener.disconnected("newer");
  }

  /** The browser has closed the database, somebody empties it, or there was no space for it. */
  private openAnew(reason: Reason): void {
    this.disk?.close();
    this.disk = undefined;
    if (this.isClosed) return;
    this.listener.disconnected(reason);
    setTimeout(() => void this.open(), millisecondsUntilAnew);
  }

  close(): void {
    this.isClosed = true;
    this.disk?.close();
    this.disk = undefined;
  }
}
