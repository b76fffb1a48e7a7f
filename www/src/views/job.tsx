// A job: the drawing of its circuit as the way in, its stages, and the stage that is open.

import type { FunctionComponent, JSX } from "preact";
import { useEffect, useLayoutEffect } from "preact/hooks";
import { place } from "../address";
import type { Stage } from "../core";
import { watchClock } from "../job/clock-watch";
import { glanceText } from "../job/glance";
import { JobContext, shownNow } from "../job/job-context";
import { keepTextsInJob } from "../job/job-texts";
import { useOpened, useShelf } from "../job/open-shelf";
import { useRunningClocks } from "../job/running-clocks";
import { stageNamed } from "../job/stages";
import { message } from "../locale";
import { problemText } from "../parts/fields";
import type { OpenJob, Shelf, Unreadable } from "../store/jobs";
import { DueRing } from "./job/holds/due-ring";
import { EvacuateStage } from "./job/evacuate-stage";
import { FlareStage } from "./job/flare-stage";
import { JobHead } from "./job/job-head";
import { JobOverview } from "./job/job-overview";
import { PlanStage } from "./job/plan-stage";
import { PressureTestStage } from "./job/pressure-test-stage";
import { RecordStage } from "./job/record-stage";
import { RefusedDocument } from "./job/refused-document";
import { ReleaseStage } from "./job/release-stage";
import { RunCheckStage } from "./job/run-check-stage";
import { StageFrame } from "./job/stage-frame";
import { TightenStage } from "./job/tighten-stage";

const stageViews: Readonly<Record<Stage, FunctionComponent>> = {
  plan: PlanStage,
  flare: FlareStage,
  tighten: TightenStage,
  "pressure-test": PressureTestStage,
  evacuate: EvacuateStage,
  "release-and-charge": ReleaseStage,
  "run-check": RunCheckStage,
  record: RecordStage,
};

export function Job(): JSX.Element {
  const { id = "", stage = "" } = place().entries;
  const shelf = useShelf();
  const opened = useOpened(shelf, id);
  if (shelf === undefined || opened === undefined) return <main class="job" />;
  if (opened.kind === "job") return <OpenedJob key={id} shelf={shelf} job={opened.job} stage={stageNamed(stage)} />;
  return (
    <main class="job">
      <h1>{message("title-job")}</h1>
      <p class="problem">{message(opened.kind === "absent" ? "job-absent" : `job-unreadable-${opened.reason satisfies Unreadable}`)}</p>
    </main>
  );
}

function OpenedJob({ shelf, job, stage }: { readonly shelf: Shelf; readonly job: OpenJob; readonly stage: Stage | null }): JSX.Element {
  // The fields below read their texts while they are drawn.
  keepTextsInJob(job);
  useEffect(() => () => keepTextsInJob(undefined), []);
  useLayoutEffect(() => scrollTo(0, 0), [stage]);
  const shown = shownNow(shelf, job, stage);
  const assessment = "assessment" in shown ? shown.assessment : undefined;
  // A document that is not taken, being of a later version, is not written to either.
  const isTaken = assessment !== undefined;
  useEffect(() => (isTaken ? watchClock(job) : undefined), [job, isTaken]);
  useRunningClocks(job, assessment);
  const glance = assessment && glanceText(job.document, assessment);
  useEffect(() => {
    if (glance !== undefined) job.setGlance(glance);
  }, [glance]);
  if (!("assessment" in shown)) return <RefusedDocument screen="job" title={message("title-job")} texts={shown.map((problem) => problemText(problem))} />;
  const View = stage && stageViews[stage];
  return (
    <JobContext.Provider value={shown}>
      <DueRing />
      <main class={stage === null ? "job" : `job stage ${stage}`}>
        <JobHead stage={stage} />
        {stage === null || View === null ? (
          <JobOverview />
        ) : (
          <StageFrame stage={stage}>
            <View key={stage} />
          </StageFrame>
        )}
      </main>
    </JobContext.Provider>
  );
}
