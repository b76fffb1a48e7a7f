// What a joint's torque hangs on, as the calculation of its own asks for it: for its working and its drawings.

import type { Input, JointAssessment } from "../core";
import { read, type TreeObject } from "../store/jobs";
import { jointPath } from "./joint-records";

const lever = ["adapterLength", "adapterAngle"];
const others = ["wrenchLength", "wrenchRange", "wrenchAccuracy"];

/** Entries as they stand in the job; without the adapter where it is off the wrench. */
export function torqueQuestion(document: TreeObject, { id, tube, withAdapter }: JointAssessment): Input<"torque"> {
  const ofWrench = (withAdapter ? [...lever, ...others] : others).map((name) => [name, read(document, ["instruments", "wrench", name])] as const);
  const plateTorque = read(document, jointPath(id, "plateTorque"));
  return { tube, plateTorque, ...Object.fromEntries(ofWrench) } as Input<"torque">;
}
