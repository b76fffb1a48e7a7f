// The check of the running unit: its readings, what they come to, and what deviations usually mean.

import type { JSX } from "preact";
import { fieldsInJob, JobFields } from "../../job/job-fields";
import { nowIn, useJob } from "../../job/job-context";
import { textAt } from "../../job/job-path";
import { momentText } from "../../job/moment";
import { message } from "../../locale";
import { Disclosure } from "../../parts/disclosure";
import { Working } from "../../parts/working";
import { clearing, setting } from "../../store/jobs";
import { AirRows } from "../running/air-panel";
import { airflowFields, airSideFields, circuitFields, concern, insteadFields, runningFields, usualFields } from "../running/ask";
import { Causes } from "../running/causes";
import { CircuitRows } from "../running/circuit-rows";
import { RunningFinding } from "../running/running-finding";
import "../running/style";
import { DoneAct } from "./joints/made-act";
import { cautionsTold } from "./stage-cautions";

const at = ["runCheck", "readings"];
const moreFields = [...insteadFields, ...usualFields];

export function RunCheckStage(): JSX.Element {
  const { assessment, problems } = useJob();
  const answer = assessment.running ?? undefined;
  const mustShow = concern(fieldsInJob(at, moreFields), problems);
  return (
    <div class="running">
      <RunningFinding asked={{ circuit: answer, air: answer, problems }} told={cautionsTold["run-check"]} />
      {answer && (
        <Causes pattern={answer.pattern ?? undefined}>
          <JobFields at={at} fields={airflowFields} />
        </Causes>
      )}
      <section>
        <h2>{message("run-check-readings")}</h2>
        <ReadAct />
        <JobFields at={at} fields={runningFields} />
        <JobFields at={at} fields={circuitFields} />
        {answer && <CircuitRows answer={answer} />}
      </section>
      <section>
        <h2>{message("running-air")}</h2>
        <JobFields at={at} fields={airSideFields} />
        <AirRows answer={answer} />
      </section>
      <Working steps={answer?.working ?? []} of={message("stage-run-check")} isNamed />
      <Disclosure name="running-others" summary={<span>{message("run-check-more")}</span>} mustShow={mustShow}>
        <JobFields at={at} fields={moreFields} />
        <p class="note">{message("run-check-more-note")}</p>
      </Disclosure>
    </div>
  );
}

/** That the readings were taken now: one tap. */
function ReadAct(): JSX.Element {
  const { job, document } = useJob();
  const path = ["runCheck", "at"];
  const moment = textAt(document, ...path);
  return (
    <DoneAct
      action="run-check-read"
      word={message("run-check-read")}
      done={moment === "" ? undefined : message("run-check-read-at", { at: momentText(moment) })}
      onDo={() => job.apply(setting(path, nowIn(document)))}
      onTakeBack={() => job.apply(clearing(path))}
    />
  );
}
