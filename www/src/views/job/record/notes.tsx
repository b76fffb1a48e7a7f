// What was done against the order of work and why, doubts about the clock, and notes.

import type { JSX } from "preact";
import { useJob } from "../../../job/job-context";
import { itemsAt, textAt } from "../../../job/job-path";
import { shortMoment } from "../../../job/moment";
import { message } from "../../../locale";

export function Notes(): JSX.Element | null {
  const { assessment, document } = useJob();
  const overrides = assessment.stages.flatMap(({ alarms }) => alarms).flatMap(({ rule, overridden }) =>
    overridden == null
      ? []
      : [message("record-override", { rule: message(`rule-${rule}`), reason: overridden.reason, by: overridden.by, at: overridden.at == null ? "" : shortMoment(overridden.at) })],
  );
  const notes = itemsAt(document, "notes").map((note) => {
    const stage = textAt(note, "stage");
    return message("record-note", { stage: stage === "" ? "" : message(`stage-${stage}`), at: shortMoment(textAt(note, "at")), text: textAt(note, "text") });
  });
  const lines = [...overrides, ...clockDoubts(assessment), ...notes];
  if (lines.length === 0) return null;
  return (
    <section class="record-notes">
      <h3>{message("record-notes")}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

function clockDoubts({ pressureClock, pumpClock, vacuumClock }: ReturnType<typeof useJob>["assessment"]): readonly string[] {
  const clocks = [["pressure-test", pressureClock], ["evacuate", pumpClock], ["evacuate", vacuumClock]] as const;
  const doubts = clocks.flatMap(([stage, clock]) => (clock?.doubt == null ? [] : [`${message(`stage-${stage}`)}: ${message(`clock-doubt-${clock.doubt}`)}`]));
  return [...new Set(doubts)];
}
