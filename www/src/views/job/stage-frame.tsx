// Around every stage: its cautions, what broke the order of work, what is open; and the ways to the stages beside it.

import type { ComponentChildren, JSX } from "preact";
import type { Stage } from "../../core";
import { openText } from "../../job/job-words";
import { stageOf, useJob } from "../../job/job-context";
import { jobPlace, stages } from "../../job/stages";
import { message } from "../../locale";
import { Photos } from "./photos";
import { StageAlarms } from "./stage-alarms";

export function StageFrame({ stage, children }: { readonly stage: Stage; readonly children: ComponentChildren }): JSX.Element {
  const { job, assessment } = useJob();
  const found = stageOf(assessment, stage);
  const next = stages[stages.indexOf(stage) + 1];
  return (
    <>
      <StageAlarms stage={stage} />
      {children}
      {stage !== "record" && <Photos stage={stage} />}
      {found && found.open.length > 0 && (
        <ul class="open-items">
          {found.open.map((item) => (
            <li key={`${item.matter} ${item.field ?? ""}`}>{openText(item)}</li>
          ))}
        </ul>
      )}
      {next && (
        <a class="onward" href={jobPlace(job.id, next)}>
          {message("job-next", { stage: message(`stage-${next}`) })}
        </a>
      )}
    </>
  );
}
