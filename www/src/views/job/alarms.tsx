// What broke the order of work, loud; and the way to answer for it: why, and who says so.

import type { JSX } from "preact";
import type { Alarm } from "../../core";
import { useJob } from "../../job/job-context";
import { fieldName, itemsAt, textAt } from "../../job/job-path";
import { JobFields } from "../../job/job-fields";
import { momentNow, momentText } from "../../job/moment";
import { message } from "../../locale";
import { newItemId, puttingIn, takingOut } from "../../store/jobs";

export function Alarms({ alarms }: { readonly alarms: readonly Alarm[] }): JSX.Element | null {
  if (alarms.length === 0) return null;
  return (
    <section class="alarms" aria-label={message("alarms")}>
      {alarms.map((alarm) => (
        <OneAlarm key={alarm.rule} alarm={alarm} />
      ))}
    </section>
  );
}

function OneAlarm({ alarm: { rule, overridden } }: { readonly alarm: Alarm }): JSX.Element {
  const { job, document } = useJob();
  const answers = itemsAt(document, "overrides").filter((item) => item.rule === rule);
  const last = answers[answers.length - 1];
  const answer = (): void => {
    const id = newItemId(itemsAt(document, "overrides"));
    const by = textAt(document, "technician");
    const at = momentNow(itemsAt(document, "clockChanges").length);
    job.apply(puttingIn(["overrides"], { id, rule, at, ...(by === "" ? {} : { by }) }));
    // The reason is asked for at once.
    requestAnimationFrame(() => window.document.getElementById(`entry-${fieldName("overrides", `#${id}`, "reason")}`)?.focus());
  };
  const withdraw = (): void => {
    job.apply(answers.map(({ id }) => takingOut(["overrides", `#${id}`])));
  };
  return (
    <div class="alarm" data-rule={rule} data-answered={overridden != null}>
      <h2>{message(`rule-${rule}`)}</h2>
      {overridden != null && (
        <p class="answered">{message("alarm-answered", { reason: overridden.reason, by: overridden.by, at: overridden.at == null ? "" : momentText(overridden.at) })}</p>
      )}
      {last === undefined ? (
        <button class="framed" data-action="answer-for" onClick={answer}>
          {message("alarm-answer")}
        </button>
      ) : (
        <>
          {overridden == null && <p class="hint">{message("alarm-hint")}</p>}
          <JobFields
            at={["overrides", `#${last.id}`]}
            fields={[
              { name: "reason", words: true },
              { name: "by", words: true },
            ]}
          />
          <button class="framed" data-action="withdraw" onClick={withdraw}>
            {message("alarm-withdraw")}
          </button>
        </>
      )}
    </div>
  );
}
