// What is wrong in the job and has no field on this screen: each with the way to the stage where it is entered.

import type { JSX } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { Problem, Stage } from "../../core";
import { useJob } from "../../job/job-context";
import { fieldPlaceText } from "../../job/job-words";
import { jobPlace } from "../../job/stages";
import { message } from "../../locale";
import { isMistake, jobPrefix, problemText } from "../../parts/fields";

/** Where the parts of a document are entered; what is not here belongs to the plan. */
const stageOfPart: Readonly<Record<string, Stage>> = {
  joints: "flare",
  pressureTest: "pressure-test",
  evacuation: "evacuate",
  release: "release-and-charge",
  runCheck: "run-check",
  signOffs: "record",
  photos: "record",
  name: "record",
  site: "record",
  customer: "record",
  technician: "record",
};

export function HiddenProblems(): JSX.Element {
  const { job, problems } = useJob();
  const list = useRef<HTMLDivElement>(null);
  const [shown, setShown] = useState("");
  // What the fields show is known only once they are drawn.
  useLayoutEffect(() => {
    const fields = document.querySelectorAll<HTMLElement>("main [data-problem-of]");
    const found = [...fields].filter((field) => list.current?.contains(field) !== true).map(({ dataset }) => dataset.problemOf ?? "");
    setShown([...new Set(found)].join("\n"));
  });
  const atFields = shown.split("\n");
  const hidden = unlike(problems.filter((problem) => isMistake(problem) && !atFields.includes(problem.field)));
  return (
    <div ref={list} class="hidden-problems">
      {hidden.map((problem) => (
        <p key={`${problem.field} ${problem.code}`} class="problem" data-problem-of={problem.field}>
          <a href={jobPlace(job.id, stageOf(problem))}>{`${fieldPlaceText(problem)}: ${problemText(problem)}`}</a>
        </p>
      ))}
      {hidden.length > 0 && <span class="heard">{message("job-problems-elsewhere")}</span>}
    </div>
  );
}

function unlike(problems: readonly Problem[]): readonly Problem[] {
  return problems.filter((problem, place) => problems.findIndex(({ field, code }) => field === problem.field && code === problem.code) === place);
}

function stageOf({ field }: Problem): Stage {
  const [part = ""] = field.slice(jobPrefix.length).split(".");
  return stageOfPart[part] ?? "plan";
}
