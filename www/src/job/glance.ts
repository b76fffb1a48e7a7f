// What the list says of a job: what is wrong, what comes next, where it is.

import { assess, type Assessment, type StageState } from "../core";
import { message } from "../locale";
import type { OpenJob, TreeObject } from "../store/jobs";
import { nowIn } from "./job-context";
import { textAt } from "./job-path";
import { openText } from "./job-words";

/** What must be seen in the list, the gravest first. */
const toBeSeen: readonly StageState[] = ["out-of-band", "cannot-tell", "overridden"];

export function glanceText(document: TreeObject, { stages, next }: Assessment): string {
  const state = toBeSeen.find((grave) => stages.some((stage) => stage.state === grave));
  const found = stages.find((stage) => stage.state === state);
  const following = stages.find(({ stage }) => stage === next);
  const [open] = following?.open ?? [];
  const stage = following && message(`stage-${following.stage}`);
  return [
    found && message("glance-stage", { stage: message(`stage-${found.stage}`), state: message(`stage-state-${found.state}`) }),
    stage === undefined ? message("glance-all-done") : message("glance-next", { stage }),
    found === undefined && open && openText(open),
    textAt(document, "site"),
    textAt(document, "customer"),
  ]
    .filter((text) => typeof text === "string" && text !== "")
    .join("; ");
}

/** Brings what the list says of a job up to date. */
export function keepGlance(job: OpenJob): void {
  const { document } = job;
  const reply = assess(document, nowIn(document), null);
  if ("answer" in reply) job.setGlance(glanceText(document, reply.answer));
}
