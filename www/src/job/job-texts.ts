// Keeps the texts of the fields on a job's screens in the job. A bare number goes in with the unit that stands
// beside it, so that it means the same on another phone and after a change of units.

import { keepJobTextsIn, settled } from "../parts/fields";
import { clearing, read, setting, type Change, type OpenJob } from "../store/jobs";
import { entryText, pathOf } from "./job-path";

export function keepTextsInJob(job: OpenJob | undefined): void {
  if (job === undefined) {
    keepJobTextsIn(undefined);
    return;
  }
  keepJobTextsIn({
    textOf: (path) => entryText(read(job.document, pathOf(path))),
    write: (texts, unit) => {
      job.apply(Object.entries(texts).map(([path, text]) => changeOf(path, text, unit)));
    },
  });
}

function changeOf(path: string, text: string, unit: string | undefined): Change {
  if (text === "") return clearing(pathOf(path));
  const isBare = settled(text, unit) !== text;
  return setting(pathOf(path), isBare && unit !== undefined ? { text, assume: unit } : text);
}
