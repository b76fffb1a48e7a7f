// What stayed open or is wrong, first of all.

import type { JSX } from "preact";
import type { StageAssessment } from "../../../core";
import { openText } from "../../../job/job-words";
import { useJob } from "../../../job/job-context";
import { message } from "../../../locale";

export function LeftOpen(): JSX.Element {
  const { assessment, problems } = useJob();
  const left = assessment.stages.map((stage) => ({ stage: stage.stage, texts: textsOf(stage) })).filter(({ texts }) => texts.length > 0);
  return (
    <section class="left-open" data-open={left.length}>
      <h3>{message(left.length === 0 ? "record-nothing-open" : "record-left-open", { count: left.length })}</h3>
      {left.length > 0 && (
        <ul>
          {left.map(({ stage, texts }) => (
            <li key={stage} data-open-stage={stage}>
              <b>{message(`stage-${stage}`)}</b>: {texts.join("; ")}
            </li>
          ))}
        </ul>
      )}
      {problems.length > 0 && <p>{message("record-problems", { count: problems.length })}</p>}
    </section>
  );
}

/** What is wrong comes before what is open; that other stages are open is said at each of them. */
function textsOf({ state, open, alarms }: StageAssessment): readonly string[] {
  const isWrong = state === "out-of-band" || state === "cannot-tell";
  return [
    ...(isWrong ? [message(`stage-state-${state}`)] : []),
    ...alarms.filter(({ overridden }) => overridden == null).map(({ rule }) => message("record-unanswered", { rule: message(`rule-${rule}`) })),
    ...open.filter(({ matter }) => matter !== "stages").map(openText),
  ];
}
