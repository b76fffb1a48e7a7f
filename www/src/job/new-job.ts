// What a job begins with: nothing but the kit of the person; or the practice job.

import { language, withDecimalMark } from "../locale";
import type { Language } from "../language";
import { settings } from "../settings";
import { treeOf, type Tree, type TreeObject } from "../store/jobs";
import { momentNow } from "./moment";

/** An instrument that goes with the person from job to job: its fields by the names that the kit has for them. */
function fromKit(fields: Readonly<Record<string, string>>): TreeObject {
  const { kit } = settings();
  return Object.fromEntries(Object.entries(fields).flatMap(([name, ofKit]) => (kit[ofKit] === undefined ? [] : [[name, kit[ofKit]]])));
}

/** The instruments as the settings have them. */
export function kitInstruments(): TreeObject {
  const wrench = ["wrenchLength", "wrenchRange", "wrenchAccuracy", "adapterLength", "adapterAngle"];
  return {
    gauge: fromKit({ resolution: "ownGaugeResolution", uncertainty: "ownGaugeUncertainty" }),
    thermometer: fromKit({ uncertainty: "ownThermometerUncertainty" }),
    vacuumGauge: fromKit({ resolution: "ownVacuumGaugeResolution" }),
    scale: fromKit({ resolution: "ownScaleResolution" }),
    wrench: fromKit(Object.fromEntries(wrench.map((name) => [name, name]))),
    caliper: fromKit({ uncertainty: "caliperUncertainty" }),
  };
}

/** It has no name yet. */
export function newJob(): TreeObject {
  return { version: 1, created: momentNow(), ...fromKit({ technician: "technician", altitude: "altitude" }), instruments: kitInstruments() };
}

const practiceJobs: Readonly<Record<Language, () => Promise<{ readonly default: unknown }>>> = {
  en: () => import("../../locales/en-practice-job.json"),
  es: () => import("../../locales/es-practice-job.json"),
};

/** Complete, in a scenario of our own, with faults to be found. */
export async function practiceJob(): Promise<TreeObject> {
  const tree = asWritten(treeOf((await practiceJobs[language]()).default) ?? null);
  if (typeof tree !== "object" || tree === null || Array.isArray(tree)) throw new Error("the practice job is no document");
  return tree as TreeObject;
}

/** With the decimal mark of the person who reads it. */
function asWritten(tree: Tree): Tree {
  if (typeof tree === "string") return withDecimalMark(tree);
  if (typeof tree !== "object" || tree === null) return tree;
  if (Array.isArray(tree)) return tree.map(asWritten);
  return Object.fromEntries(Object.entries(tree as TreeObject).map(([name, inner]) => [name, asWritten(inner)]));
}
