// The head of a job: its name, where it is kept, undo and redo, clashes with another window.

import type { JSX } from "preact";
import type { Stage } from "../../core";
import { useJob } from "../../job/job-context";
import { textAt } from "../../job/job-path";
import { jobPlace } from "../../job/stages";
import { message } from "../../locale";
import { Clashes } from "./clashes";
import { JobNames } from "./job-names";
import { KeptState } from "./kept-state";
import { UndoRedo } from "./undo-redo";

export function JobHead({ stage }: { readonly stage: Stage | null }): JSX.Element {
  const { job, document } = useJob();
  const entered = textAt(document, "name");
  const name = entered.trim() === "" ? message("jobs-unnamed") : entered;
  return (
    <div class="job-head">
      <div class="job-line">
        {stage !== null && (
          <a class="job-name" href={jobPlace(job.id)}>
            {name}
          </a>
        )}
        <KeptState />
      </div>
      <div class="job-line">
        <h1>{stage === null ? name : message(`stage-${stage}`)}</h1>
        <UndoRedo />
      </div>
      <Clashes />
      {stage === null && <JobNames />}
    </div>
  );
}
