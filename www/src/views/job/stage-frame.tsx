// Around every stage: what broke the order of work, its cautions, what is open, what is wrong elsewhere, its notes and photos; and
// the ways to the stages beside it.

import type { ComponentChildren, JSX } from "preact";
import { place } from "../../address";
import type { OpenItem, Stage } from "../../core";
import { openText } from "../../job/job-words";
import { stageOf, useJob } from "../../job/job-context";
import { jobPlace, stages } from "../../job/stages";
import { message } from "../../locale";
import { Alarms } from "./alarms";
import { HiddenProblems } from "./hidden-problems";
import { Photos } from "./photos";
import { StageCautions } from "./stage-cautions";
import { StageNotes } from "./stage-notes";

export function StageFrame({ stage, children }: { readonly stage: Stage; readonly children: ComponentChildren }): JSX.Element {
  const { job, assessment } = useJob();
  const found = stageOf(assessment, stage);
  return (
    <>
      <Alarms alarms={found?.alarms ?? []} />
      {/* At the next joint they have been read, and the figures come first. */}
      <StageCautions key={`${stage} ${place().entries.joint ?? ""}`} stage={stage} job={job.id} isBegun={found?.state !== "not-begun"} />
      {children}
      <OpenItems items={found?.open ?? []} />
      <HiddenProblems />
      <StageNotes key={stage} stage={stage} />
      {stage !== "record" && <Photos stage={stage} />}
      <Ways stage={stage} />
    </>
  );
}

function OpenItems({ items }: { readonly items: readonly OpenItem[] }): JSX.Element | null {
  if (items.length === 0) return null;
  return (
    <section class="still-open">
      <h2>{message("still-open")}</h2>
      <ul class="open-items">
        {items.map((item) => (
          <li key={`${item.matter} ${item.field ?? ""}`}>{openText(item)}</li>
        ))}
      </ul>
    </section>
  );
}

function Ways({ stage }: { readonly stage: Stage }): JSX.Element {
  const { job } = useJob();
  const at = stages.indexOf(stage);
  const [previous, next] = [stages[at - 1], stages[at + 1]];
  return (
    <div class="stage-ways">
      {previous && (
        <a class="onward back" href={jobPlace(job.id, previous)}>
          {message("job-previous", { stage: message(`stage-${previous}`) })}
        </a>
      )}
      {next && (
        <a class="onward" href={jobPlace(job.id, next)}>
          {message("job-next", { stage: message(`stage-${next}`) })}
        </a>
      )}
    </div>
  );
}
