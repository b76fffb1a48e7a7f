// Keeps the texts of the fields on a job's screens in the job. A bare number goes in with the unit that stands
// beside it, so that it means the same on another phone and after a change of units.

import { keepJobTextsIn, settled } from "../parts/fields";
import { clearing, read, setting, type Change, type OpenJob } from "../store/jobs";
import { entryText, pathOf } from "./job-path";
import { bringingRecord } from "./joint-records";

export function keepTextsInJob(job: OpenJob | undefined): void {
  if (job === undefined) {
    keepJobTextsIn(undefined);
    return;
  }
  keepJobTextsIn({
    textOf: (path) => entryText(read(job.document, pathOf(path))),
    write: (texts, unit) => {
      const changes = Object.entries(texts).map(([path, text]) => changeOf(path, text, unit));
      job.apply([...bringingRecords(job, Object.keys(texts)), ...changes]);
    },
  });
}

/** A joint of the plan has a record only once something is typed of it. */
function bringingRecords(job: OpenJob, paths: readonly string[]): readonly Change[] {
  const joints = paths.map(pathOf).flatMap(([list, joint]) => (list === "joints" && joint?.startsWith("#") ? [joint.slice(1)] : []));
  return [...new Set(joints)].flatMap((id) => bringingRecord(job.document, id));
}

function changeOf(path: string, text: string, unit: string | undefined): Change {
  if (text === "") return clearing(pathOf(path));
  const isBare = settled(text, unit) !== text;
  return setting(pathOf(path), isBare && unit !== undefined ? { text, assume: unit } : text);
}
