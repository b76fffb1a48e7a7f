// What is recorded of a joint. A joint of the plan has a record in the job only once something is recorded of it.

import type { JointAssessment } from "../core";
import { clearing, newItemId, puttingIn, read, setting, type Change, type Item, type OpenJob, type Path, type Tree, type TreeObject } from "../store/jobs";
import { fieldName, itemsAt } from "./job-path";

/** The steps to what is recorded of a joint. */
export function jointPath(id: string, ...steps: readonly string[]): Path {
  return ["joints", `#${id}`, ...steps];
}

/** The name of a joint's field on the screen. */
export function jointField(id: string, name: string): string {
  return fieldName(...jointPath(id, name));
}

/** What brings a record for the joint, if it has none yet. */
export function bringingRecord(document: TreeObject, id: string): readonly Change[] {
  return read(document, jointPath(id)) === undefined ? [puttingIn(["joints"], { id })] : [];
}

/** Writes members of a joint's record as one step; `undefined` takes a member out. */
export function record(job: OpenJob, id: string, members: Readonly<Record<string, Tree | undefined>>): void {
  const changes = Object.entries(members).map(([name, to]) => (to === undefined ? clearing(jointPath(id, name)) : setting(jointPath(id, name), to)));
  job.apply([...bringingRecord(job.document, id), ...changes]);
}

/** What belongs to one attempt at a joint and ends with it. */
const ofAttempt = ["made", "measuredCone", "oiled", "tightened", "scaleTorque", "leakLook", "looked"];
const keptOfAttempt = ["measuredCone", "scaleTorque", "leakLook"];

/** The joint is to be made anew: what was found stays as an earlier attempt, and the joint is open again. */
export function remake(job: OpenJob, id: string, { at, reason }: { readonly at: string; readonly reason: string }): boolean {
  const found = keptOfAttempt.flatMap((name) => {
    const entry = read(job.document, jointPath(id, name));
    return entry === undefined ? [] : [[name, entry] as const];
  });
  const attempt: Item = { id: newItemId(itemsAt(job.document, ...jointPath(id, "remade"))), at, reason, ...Object.fromEntries(found) };
  return job.apply([
    ...bringingRecord(job.document, id),
    puttingIn(jointPath(id, "remade"), attempt),
    ...ofAttempt.map((name) => clearing(jointPath(id, name))),
  ]);
}

/** Adds a flare joint right after another, in the same line; gives its id. */
export function addJoint(job: OpenJob, before: JointAssessment | undefined): string {
  const id = newItemId(itemsAt(job.document, "joints"));
  const order = before?.after;
  job.apply(puttingIn(["joints"], { id, kind: "flare", line: before?.line ?? "gas-line", ...(order == null ? {} : { order }) }));
  return id;
}
