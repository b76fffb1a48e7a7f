// The stages in the order of work: what is known of each, what is open, and its verdict.

import type { JSX } from "preact";
import type { StageAssessment, StageState } from "../../core";
import { factText, openText } from "../../job/job-words";
import { useJob } from "../../job/job-context";
import { jobPlace } from "../../job/stages";
import { message } from "../../locale";
import { VerdictMark, type MarkState } from "../../parts/verdict-line";

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
      {assessment.stages.map((stage) => {
        const isNext = assessment.next === stage.stage;
        return (
          <li key={stage.stage} data-stage={stage.stage} data-state={stage.state}>
            <a href={jobPlace(job.id, stage.stage)} aria-current={isNext ? "step" : undefined}>
              <VerdictMark state={marks[stage.state]} />
              <span class="stage-title">
                <b>{message(`stage-${stage.stage}`)}</b>
                <span class="stage-state">{message(`stage-short-${stage.state}`)}</span>
                {isNext && <em>{message("stage-next")}</em>}
              </span>
              <Known stage={stage} />
            </a>
          </li>
        );
      })}
    </ol>
  );
}

/** Most of a kind that a row says; the stage says all. */
const most = 2;

function Known({ stage: { facts, open, alarms } }: { readonly stage: StageAssessment }): JSX.Element {
  const told = [shortened(open.map(openText)), shortened(facts.map(factText))].filter((text) => text !== "");
  return (
    <span class="stage-known">
      {alarms.map(({ rule, overridden }) => (
        <strong key={rule} class={overridden == null ? "alarmed" : undefined}>
          {message(`rule-${rule}`)}
          {overridden != null && ` (${message("alarm-answered-for", { by: overridden.by })})`}
        </strong>
      ))}
      {told.length > 0 && <span>{told.join(" · ")}</span>}
    </span>
  );
}

function shortened(texts: readonly string[]): string {
  const rest = texts.length - most;
  return [...texts.slice(0, most), ...(rest > 0 ? [message("stage-more", { count: rest })] : [])].join("; ");
}
