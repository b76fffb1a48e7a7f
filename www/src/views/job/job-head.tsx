// The head of a job: its name, where it is kept, undo and redo, clashes with another window.

import type { JSX } from "preact";
import type { Stage } from "../../core";
import { useJob } from "../../job/job-context";
import { textAt } from "../../job/job-path";
import { jobPlace } from "../../job/stages";
import { message } from "../../locale";

export function JobHead({ stage }: { readonly stage: Stage | null }): JSX.Element {
  const { job, document } = useJob();
  const name = textAt(document, "name");
  return (
    <div class="job-head">
      {stage === null ? (
        <h1>{name}</h1>
      ) : (
        <>
          <a class="job-name" href={jobPlace(job.id)}>
            {name}
          </a>
          <h1>{message(`stage-${stage}`)}</h1>
        </>
      )}
      <div class="undo-redo">
        <button data-action="undo" disabled={!job.canUndo} onClick={() => job.undo()}>
          {message("job-undo")}
        </button>
        <button data-action="redo" disabled={!job.canRedo} onClick={() => job.redo()}>
          {message("job-redo")}
        </button>
      </div>
    </div>
  );
}
