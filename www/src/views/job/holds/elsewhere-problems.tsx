// What is wrong with figures that this stage takes from another one, with the way there.

import type { JSX } from "preact";
import { useJob } from "../../../job/job-context";
import { jobPlace } from "../../../job/stages";
import { message } from "../../../locale";
import { isMistake, jobPrefix, lastName, problemText } from "../../../parts/fields";

export function ElsewhereProblems({ of }: {
  /** Starts of the places: `plate.`. */
  readonly of: readonly string[];
}): JSX.Element {
  const { job, problems } = useJob();
  const concerned = problems.filter((problem) => isMistake(problem) && of.some((start) => problem.field.startsWith(jobPrefix + start)));
  return (
    <>
      {concerned.map((problem) => (
        <p key={`${problem.field} ${problem.code}`} class="problem" data-problem-of={problem.field}>
          {message(`field-${lastName(problem.field)}`)}: {problemText(problem)} <a href={jobPlace(job.id, "plan")}>{message("stage-plan")}</a>
        </p>
      ))}
    </>
  );
}
