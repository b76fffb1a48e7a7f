// What broke the order of work in a stage: loud until somebody answers for it with a reason, and shown even then.

import type { JSX } from "preact";
import type { Alarm, Stage } from "../../core";
import { JobFields } from "../../job/job-fields";
import { nowIn, stageOf, useJob } from "../../job/job-context";
import { itemsAt, textAt } from "../../job/job-path";
import { momentText } from "../../job/moment";
import { message } from "../../locale";
import { newId, puttingIn, takingOut } from "../../store/jobs";

export function StageAlarms({ stage }: { readonly stage: Stage }): JSX.Element | null {
  const { assessment } = useJob();
  const alarms = stageOf(assessment, stage)?.alarms ?? [];
  if (alarms.length === 0) return null;
  return (
    <div class="alarms">
      {alarms.map((alarm) => (
        <OneAlarm key={alarm.rule} alarm={alarm} />
      ))}
    </div>
  );
}

function OneAlarm({ alarm: { rule, overridden } }: { readonly alarm: Alarm }): JSX.Element {
  const { job, document } = useJob();
  const entered = itemsAt(document, "overrides").filter((item) => textAt(item, "rule") === rule);
  const item = entered[entered.length - 1];
  const answer = (): void => {
    job.apply(puttingIn(["overrides"], { id: newId(), rule, by: textAt(document, "technician"), at: nowIn(document) }));
  };
  return (
    <section class="alarm" data-rule={rule} data-answered={overridden != null}>
      <p role="alert">
        <b>{message(`rule-${rule}`)}</b>
      </p>
      {overridden != null && <p>{message("alarm-answered", { by: overridden.by, reason: overridden.reason, at: overridden.at == null ? "" : momentText(overridden.at) })}</p>}
      {item === undefined ? (
        <button class="framed" data-action="answer-for" onClick={answer}>
          {message("alarm-answer")}
        </button>
      ) : (
        <>
          <JobFields at={["overrides", `#${item.id}`]} fields={[{ name: "reason", words: true }, { name: "by", words: true }]} />
          <button data-action="take-back-answer" onClick={() => job.apply(takingOut(["overrides", `#${item.id}`]))}>
            {message("alarm-take-back")}
          </button>
        </>
      )}
    </section>
  );
}
