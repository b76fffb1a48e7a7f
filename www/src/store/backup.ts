// All jobs and photos as one file, and what such a file would bring to this phone.

import { differences, type Difference } from "./difference";
import type { StoredPhoto } from "./disk";
import { isList, isObject, isSame, treeOf, type Path, type Tree, type TreeObject } from "./tree";

const format = "coldwright-backup";
const version = 1;

/** Nothing of a file is taken for sure until a person has seen this. */
export type BackupPreview =
  | {
      readonly kind: "backup";
      /** Instant (ISO). */
      readonly made: string;
      readonly jobs: readonly BackupJob[];
      readonly photos: readonly StoredPhoto[];
      /** How many jobs and photos of the file cannot be read; they are left alone. */
      readonly broken: number;
    }
  /** The file is none of ours, or is cut off. */
  | { readonly kind: "not-a-backup" }
  /** A newer version of this page has written it. */
  | { readonly kind: "newer" };

export interface BackupJob {
  readonly id: string;
  readonly name: string;
  readonly edited: string;
  readonly document: TreeObject;
  /** `new`: not on this phone. `differs`: both are there and say different things in `differences`. */
  readonly kind: "new" | "same" | "differs";
  readonly differences: readonly Difference[];
  /** Time of the last edit of the job on this phone. */
  readonly mineEdited?: string;
}

/**
 * What to do with a job of a backup:
 * - `leave`: nothing;
 * - `take`: as the backup has it, whatever is here;
 * - places: what the backup has at those, and also whatever is only in the backup.
 */
export type BackupChoice = "leave" | "take" | { readonly theirs: readonly Path[] };

/** By the ids of the jobs. Without a choice, new jobs come, and of others only what is not here; nothing here is overwritten. */
export type BackupChoices = ReadonlyMap<string, BackupChoice>;

/** The file, in parts that are never all in memory as one text. */
export async function backupFile(made: string, documents: readonly TreeObject[], unreadable: readonly string[], photos: AsyncIterable<StoredPhoto>): Promise<Blob> {
  const head = JSON.stringify({ format, version, made }).slice(0, -1);
  const parts: BlobPart[] = [head, `,"jobs":[`];
  documents.forEach((document, index) => parts.push(index === 0 ? "\n" : ",\n", JSON.stringify(document)));
  parts.push(`],\n"unreadable":${JSON.stringify(unreadable)},\n"photos":[`);
  let separator = "\n";
  for await (const { id, jobs, type, bytes } of photos) {
    parts.push(new Blob([separator, JSON.stringify({ id, jobs, type, bytes: base64(bytes) })]));
    separator = ",\n";
  }
  parts.push("]}\n");
  return new Blob(parts, { type: "application/json" });
}

/** Reads a file; `mine` gives the document of a job that is on this phone. */
export async function readBackup(text: string, mine: (id: string) => Promise<TreeObject | undefined>): Promise<BackupPreview> {
  const file = parsed(text);
  if (!isRecord(file) || file.format !== format || typeof file.made !== "string" || !Array.isArray(file.jobs)) return { kind: "not-a-backup" };
  if (typeof file.version !== "number" || file.version > version) return { kind: "newer" };
  const documents = byId(file.jobs.map(documentOf));
  const found: readonly unknown[] = Array.isArray(file.photos) ? file.photos : [];
  const photos = byId(found.map(photoOf));
  const jobs: BackupJob[] = [];
  for (const document of documents) jobs.push(compared(document, await mine(document.id)));
  return { kind: "backup", made: file.made, jobs, photos, broken: file.jobs.length + found.length - documents.length - photos.length };
}

function compared(document: NamedDocument, mine: TreeObject | undefined): BackupJob {
  const about = { id: document.id, name: textOf(document.name), edited: textOf(document.edited), document };
  if (mine === undefined) return { ...about, kind: "new", differences: [] };
  const found = differences(mine, document).filter(({ path }) => path.length !== 1 || path[0] !== "edited");
  return { ...about, kind: found.length === 0 ? "same" : "differs", differences: found, mineEdited: textOf(mine.edited) };
}

/** Of the differences those that are taken. */
export function taken(found: readonly Difference[], choice: Exclude<BackupChoice, "leave" | "take"> | undefined): readonly Difference[] {
  const isChosen = ({ path }: Difference): boolean => choice?.theirs.some((place) => isSame(place, path)) ?? false;
  return found.filter((difference) => difference.mine === undefined || isChosen(difference));
}

type NamedDocument = TreeObject & { readonly id: string };

function documentOf(found: unknown): NamedDocument | undefined {
  const tree = treeOf(found);
  return isObject(tree) && isId(tree.id) ? (tree as NamedDocument) : undefined;
}

function photoOf(found: unknown): StoredPhoto | undefined {
  if (!isRecord(found) || !isId(found.id) || typeof found.type !== "string" || typeof found.bytes !== "string") return undefined;
  const jobs = treeOf(found.jobs);
  const bytes = bytesOf(found.bytes);
  if (!isList(jobs) || !jobs.every(isId) || bytes === undefined) return undefined;
  return { id: found.id, jobs, type: found.type, bytes };
}

/** Of several with the same id, the last. */
function byId<Found extends { readonly id: string }>(found: readonly (Found | undefined)[]): readonly Found[] {
  return [...new Map(found.flatMap((one) => (one === undefined ? [] : [[one.id, one] as const]))).values()];
}

/** Long ids are none of ours. */
function isId(found: unknown): found is string {
  return typeof found === "string" && found !== "" && found.length <= 64;
}

function textOf(found: Tree | undefined): string {
  return typeof found === "string" ? found : "";
}

function isRecord(found: unknown): found is Record<string, unknown> {
  return typeof found === "object" && found !== null;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function base64(bytes: ArrayBuffer): string {
  const whole = new Uint8Array(bytes);
  const parts: string[] = [];
  // In pieces: arguments of a call are limited in number.
  for (let start = 0; start < whole.length; start += 0x8000) parts.push(String.fromCharCode(...whole.subarray(start, start + 0x8000)));
  return btoa(parts.join(""));
}

function bytesOf(text: string): ArrayBuffer | undefined {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)).buffer;
  } catch {
    return undefined;
  }
}
