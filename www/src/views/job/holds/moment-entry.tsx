// A moment of the job, to be put right: day and time where the phone is.

import type { JSX } from "preact";
import { useJob } from "../../../job/job-context";
import { fieldName, textAt } from "../../../job/job-path";
import { localTime, momentOfLocal } from "../../../job/local-time";
import { message } from "../../../locale";
import { ProblemLine } from "../../../parts/entry-field";
import { isMistake, problemOf } from "../../../parts/fields";
import { setting, type Change, type Path } from "../../../store/jobs";

export function MomentEntry({ path, label, also = () => [] }: {
  readonly path: Path;
  readonly label: string;
  /** Further changes of the same step. */
  readonly also?: (moment: string) => readonly Change[];
}): JSX.Element {
  const { job, document, problems } = useJob();
  const name = fieldName(...path);
  const problem = problemOf(name, problems);
  const standing = textAt(document, ...path);
  const write = (local: string): void => {
    const moment = momentOfLocal(local, standing);
    // A field that is being emptied or filled keeps what stood there until it is whole again.
    if (moment !== undefined) job.apply([setting(path, moment), ...also(moment)]);
  };
  return (
    <div class="entry">
      <label for={`entry-${name}`}>{label}</label>
      <div class="entry-line">
        <input
          id={`entry-${name}`}
          name={name}
          type="datetime-local"
          step="1"
          value={localTime(standing)}
          aria-invalid={isMistake(problem)}
          aria-describedby={problem && `problem-of-${name}`}
          onChange={(event) => write(event.currentTarget.value)}
        />
      </div>
      <ProblemLine name={name} problem={problem} of={message("field-at")} />
    </div>
  );
}
