// A job that somebody handed on by a link: read, looked at and compared; nothing is stored before the person says so.

import { assess, readJobLink, type LinkProblem, type Problem } from "../core";
import { message } from "../locale";
import { newId, treeOf, type BackupPreview, type OpenJob, type Shelf, type TreeObject } from "../store/jobs";
import { nowIn, type JobShown } from "./job-context";
import { previewOf } from "./job-file";
import { problemsOfFields } from "./job-path";

/** Longest id that the store takes. */
const longestId = 64;

/** The document of a link, with an id; or a sentence that says what is wrong with the link. */
export type Handed = { readonly document: HandedDocument } | { readonly problem: string };
export type HandedDocument = TreeObject & { readonly id: string };

export function readHanded(text: string): Handed {
  const reply = readJobLink(text);
  if ("problem" in reply) return { problem: linkProblemText(reply.problem) };
  const document = treeOf(reply.document);
  if (typeof document !== "object" || document === null || Array.isArray(document)) return { problem: linkProblemText({ kind: "not-a-document" }) };
  return { document: named(document as TreeObject) };
}

/** One that somebody wrote by hand may have no id. */
function named(document: TreeObject): HandedDocument {
  const { id } = document;
  return { ...document, id: typeof id === "string" && id !== "" && id.length <= longestId ? id : newId() };
}

export function linkProblemText({ kind, ...figures }: LinkProblem): string {
  return message(`link-problem-${kind}`, figures as Record<string, number>);
}

/** The job as it stands, for reading alone: no change of it goes anywhere. */
export function shownHanded(shelf: Shelf, document: HandedDocument): JobShown | readonly Problem[] {
  const reply = assess(document, nowIn(document), "record");
  if ("problems" in reply) return reply.problems;
  return { shelf, job: unchangeable(document), document, assessment: reply.answer, problems: problemsOfFields(document, reply.answer.problems) };
}

function unchangeable(document: HandedDocument): OpenJob {
  const nothing = (): void => {};
  return {
    id: document.id,
    document,
    unsaved: 0,
    subscribe: () => nothing,
    apply: () => false,
    undoStep: undefined,
    redoStep: undefined,
    canUndo: false,
    canRedo: false,
    undo: nothing,
    redo: nothing,
    history: () => [],
    clashes: [],
    dismiss: nothing,
    setGlance: nothing,
    close: nothing,
  };
}

/** What the handed job would bring to a job that is here; a link carries no photos, so that those here stay. */
export async function previewInto(shelf: Shelf, document: HandedDocument, id: string): Promise<BackupPreview> {
  const opened = await shelf.open(id);
  if (opened.kind !== "job") return previewOf(shelf, { ...document, id });
  const { photos } = opened.job.document;
  opened.job.close();
  return previewOf(shelf, { ...document, id, ...(photos !== undefined && { photos }) });
}
