// Jobs as files: one job by itself, as its document in JSON, or all of them with their photos as a backup.
//
//   saveFile(jobFile(document), fileNameOf(document));
//   const preview = await readJobFile(shelf, file);      shown by <MergePreview>, nothing is written yet

import { assess, type Problem } from "../core";
import { newId, read, treeOf, type BackupPreview, type Shelf, type TreeObject } from "../store/jobs";
import { textAt } from "./job-path";
import { momentNow } from "./moment";
import { fileName } from "./save-file";

/** The document of one job, to be read by people too. Its photos are in the backup alone. */
export function jobFile(document: TreeObject): Blob {
  return new Blob([JSON.stringify(document, null, 1), "\n"], { type: "application/json" });
}

/** `2026-03-02 Mill house.json`. */
export function fileNameOf(document: TreeObject, ending = "json"): string {
  return fileName(textAt(document, "edited"), textAt(document, "name") || "job", ending);
}

/** What a file would bring: a backup, or the document of a job. */
export async function readJobFile(shelf: Shelf, file: Blob): Promise<BackupPreview> {
  const text = await file.text();
  const document = documentIn(text);
  return document === undefined ? shelf.previewBackup(text) : previewOf(shelf, document);
}

/** What the document of one job would bring. */
export function previewOf(shelf: Shelf, document: TreeObject): Promise<BackupPreview> {
  return shelf.previewBackup(JSON.stringify({ ...backupHead, made: momentNow(), jobs: [document] }));
}

const backupHead = { format: "coldwright-backup", version: 1 } as const;

/** The job that a file is; undefined if it is none, or a backup. */
function documentIn(text: string): TreeObject | undefined {
  const tree = parsed(text);
  const isJob = typeof tree === "object" && tree !== null && !("format" in tree) && typeof read(tree, ["version"]) === "number";
  // One that somebody has written may have no id yet.
  return isJob ? { id: newId(), ...(tree as TreeObject) } : undefined;
}

function parsed(text: string): ReturnType<typeof treeOf> {
  try {
    return treeOf(JSON.parse(text));
  } catch {
    return undefined;
  }
}

/** What keeps this page from taking a document in, such as that a later version has written it. */
export function refusals(document: TreeObject): readonly Problem[] {
  const reply = assess(document, momentNow(), null);
  return "problems" in reply ? reply.problems : [];
}
