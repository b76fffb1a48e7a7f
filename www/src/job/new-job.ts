// What a job begins with: nothing but the kit of the person; or the practice job.

import practice from "../../locales/en-practice-job.json";
import { message } from "../locale";
import { settings } from "../settings";
import { treeOf, type TreeObject } from "../store/jobs";
import { momentNow } from "./moment";

/** The wrench that goes with the person from job to job. */
function kitWrench(): TreeObject {
  const { kit } = settings();
  const names = ["wrenchLength", "wrenchRange", "wrenchAccuracy", "adapterLength", "adapterAngle"];
  return Object.fromEntries(names.flatMap((name) => (kit[name] === undefined ? [] : [[name, kit[name]]])));
}

export function newJob(): TreeObject {
  const { altitude } = settings().kit;
  return {
    version: 1,
    name: message("jobs-unnamed"),
    created: momentNow(),
    ...(altitude === undefined ? {} : { altitude }),
    instruments: { wrench: kitWrench(), caliper: {} },
  };
}

/** Complete, in a scenario of our own, with faults to be found. */
export function practiceJob(): TreeObject {
  const tree = treeOf(practice);
  if (typeof tree !== "object" || tree === null || Array.isArray(tree)) throw new Error("the practice job is no document");
  return tree as TreeObject;
}
