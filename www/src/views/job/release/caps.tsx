// Caps seal: each is put back on once the valves are open, and looked at.

import type { JSX } from "preact";
import { presentJoints, useJob } from "../../../job/job-context";
import { jointText } from "../../../job/job-words";
import { message } from "../../../locale";
import { LeakLookRows } from "../joints/leak-look";
import { TightenedAct } from "../joints/tightened-act";

export function Caps(): JSX.Element | null {
  const { assessment } = useJob();
  const caps = presentJoints(assessment).filter(({ kind }) => kind === "cap");
  if (caps.length === 0) return null;
  return (
    <section class="caps">
      <h2>{message("release-caps")}</h2>
      <p>{message("release-caps-how")}</p>
      <LeakLookRows joints={caps}>
        {(cap) => (
          <div data-cap={cap.id}>
            <h3>{jointText(cap)}</h3>
            <TightenedAct joint={cap} />
          </div>
        )}
      </LeakLookRows>
    </section>
  );
}
