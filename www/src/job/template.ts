// A job as the template of another: what was planned and with what, without anything that was done.

import type { Tree, TreeObject } from "../store/jobs";
import { itemsAt } from "./job-path";
import { momentNow } from "./moment";

const planned = ["version", "site", "customer", "technician", "practice", "altitude", "plate", "lines", "rooms", "roomRule", "instruments"];
const plannedOfJoint = ["id", "name", "kind", "line", "removed", "order", "tube", "plateTorque"];

/** The document of the new job. */
export function fromTemplate(document: TreeObject, name: string): TreeObject {
  const joints = itemsAt(document, "joints")
    .map((joint) => members(joint, plannedOfJoint))
    .filter((joint) => Object.keys(joint).length > 1);
  return { ...members(document, planned), name, created: momentNow(), ...(joints.length > 0 && { joints }) };
}

function members(tree: TreeObject, names: readonly string[]): TreeObject {
  return Object.fromEntries(names.flatMap((name): [string, Tree][] => (tree[name] === undefined ? [] : [[name, tree[name]]])));
}
