// Where something stands in a job: `plate.refrigerant` and `joints.#gas-line-indoor-port.scaleTorque` as the names
// of fields have it, the steps that the store takes, and the places that the core names.

import type { Problem } from "../core";
import { jobPrefix } from "../parts/fields";
import { read, type Path, type Tree, type TreeObject } from "../store/jobs";

export { entryText, itemsAt, textAt } from "./document-text";

export function pathOf(name: string): Path {
  return name.split(".");
}

/** The name of the field at a place of the job. */
export function fieldName(...steps: readonly string[]): string {
  return jobPrefix + steps.join(".");
}

/** The problems, each by the name of its field on the screen: `job:joints.#ab12.scaleTorque` for `joints[2].scaleTorque`. */
export function problemsOfFields(document: TreeObject, problems: readonly Problem[]): readonly Problem[] {
  return problems.map((problem) => ({ ...problem, field: nameOf(document, problem.field) }));
}

export function nameOf(document: TreeObject, place: string): string {
  const steps: string[] = [];
  for (const part of place.replace(/\[(\d+)\]/g, ".[$1]").split(".")) {
    const index = /^\[(\d+)\]$/.exec(part)?.[1];
    if (index === undefined) {
      steps.push(part);
      continue;
    }
    const list = read(document, steps);
    const item = Array.isArray(list) ? (list as readonly Tree[])[Number(index)] : undefined;
    const id = typeof item === "object" && item !== null && "id" in item ? String(item.id) : part;
    steps.push(`#${id}`);
  }
  return fieldName(...steps);
}
