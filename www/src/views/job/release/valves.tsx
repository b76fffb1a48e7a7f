// The two service valves, the liquid one first: each opened with one tap, its moment kept.

import type { JSX } from "preact";
import { nowIn, useJob } from "../../../job/job-context";
import { textAt } from "../../../job/job-path";
import { momentText } from "../../../job/moment";
import { message } from "../../../locale";
import { clearing, setting } from "../../../store/jobs";
import { DoneAct } from "../joints/made-act";

const valves = ["liquid", "gas"] as const;

export function Valves(): JSX.Element {
  return (
    <section class="valves">
      <h2>{message("release-valves")}</h2>
      <p>{message("release-valves-how")}</p>
      {valves.map((valve) => (
        <Valve key={valve} valve={valve} />
      ))}
      <p class="note">{message("release-valves-note")}</p>
    </section>
  );
}

function Valve({ valve }: { readonly valve: (typeof valves)[number] }): JSX.Element {
  const { job, document } = useJob();
  const path = ["release", `${valve}ValveOpened`];
  const at = textAt(document, ...path);
  return (
    <DoneAct
      action={`open-${valve}-valve`}
      word={message(`release-open-${valve}`)}
      done={at === "" ? undefined : message(`release-opened-${valve}`, { at: momentText(at) })}
      onDo={() => job.apply(setting(path, nowIn(document)))}
      onTakeBack={() => job.apply(clearing(path))}
    />
  );
}
