// The stages in the order of work: what is known of each, what is open, and its verdict.

import type { JSX } from "preact";
import type { StageAssessment, StageState } from "../../core";
import { factText, openText } from "../../job/job-words";
import { useJob } from "../../job/job-context";
import { jobPlace } from "../../job/stages";
import { message } from "../../locale";
import type { MarkState } from "../../parts/verdict-line";

/** The mark of a state on a dimension line. */
export const marks: Readonly<Record<StageState, MarkState>> = {
  "not-begun": "open",
  "under-way": "open",
  "in-band": "in-band",
  "cannot-tell": "cannot-tell",
  "out-of-band": "out-of-band",
  overridden: "out-of-band",
};

export function StageList(): JSX.Element {
  const { job, assessment } = useJob();
  return (
    <ol class="stage-list">
      {assessment.stages.map((stage) => (
        <li key={stage.stage} data-stage={stage.stage} data-state={stage.state}>
          <a href={jobPlace(job.id, stage.stage)} aria-current={assessment.next === stage.stage ? "step" : undefined}>
            <b>{message(`stage-${stage.stage}`)}</b>
            <span class="stage-state">{message(`stage-state-${stage.state}`)}</span>
            <span class="stage-known">{knownText(stage)}</span>
          </a>
        </li>
      ))}
    </ol>
  );
}

function knownText({ facts, open, alarms }: StageAssessment): string {
  return [...alarms.map(({ rule }) => message(`rule-${rule}`)), ...open.map(openText), ...facts.map(factText)].join("; ");
}
