// To make a joint anew: why, and what was found before, which stays.

import type { JSX } from "preact";
import { enter } from "../../../address";
import type { JointAssessment } from "../../../core";
import { nowIn, useJob } from "../../../job/job-context";
import { itemsAt, textAt } from "../../../job/job-path";
import { jointPath, remake } from "../../../job/joint-records";
import { momentText } from "../../../job/moment";
import { message } from "../../../locale";
import { Chips } from "../../../parts/chips";
import { Disclosure } from "../../../parts/disclosure";
import { EntryField } from "../../../parts/entry-field";
import { textOf } from "../../../parts/fields";

/** The field lies in the address, one for each joint, so that neither a reload nor a look at another joint loses what was begun. */
const reasonField = (id: string): string => `remakeReason_${id.replace(/[^a-zA-Z0-9]/g, "_")}`;
const usualReasons = ["narrow", "wide", "cracked", "scored", "leaks", "over-torque"] as const;

export function Remaking({ joint }: { readonly joint: JointAssessment }): JSX.Element | null {
  const isBegun = joint.madeAt != null || joint.measuredCone != null || joint.tightenedAt != null || joint.leakLook != null;
  if (!isBegun && joint.remade === 0) return null;
  const mustRemake = joint.open.includes("remake");
  return (
    <>
      {isBegun && (
        <Disclosure name="joint-more remaking" summary={message(mustRemake ? "joints-must-remake" : "joints-remake")} mustShow={mustRemake || textOf(reasonField(joint.id)) !== ""}>
          <RemakeForm joint={joint} />
        </Disclosure>
      )}
      <Attempts joint={joint} />
    </>
  );
}

function RemakeForm({ joint: { id } }: { readonly joint: JointAssessment }): JSX.Element {
  const { job, document } = useJob();
  const field = reasonField(id);
  const reason = textOf(field).trim();
  const begin = (): void => {
    if (reason === "") globalThis.document.getElementById(`entry-${field}`)?.focus();
    else if (remake(job, id, { at: nowIn(document), reason })) enter(field, "");
  };
  return (
    <>
      <EntryField name={field} label="field-reason" problems={[]} words />
      <Chips field={field} label={message("joints-usual-reasons")} texts={usualReasons.map((word) => message(`joints-reason-${word}`))} />
      <p class="note">{message("joints-remake-keeps")}</p>
      <button class="do" data-action="remake" aria-disabled={reason === ""} onClick={begin}>
        {message("joints-act-remake")}
      </button>
    </>
  );
}

/** Earlier attempts, as they were recorded. */
function Attempts({ joint: { id } }: { readonly joint: JointAssessment }): JSX.Element | null {
  const { document } = useJob();
  const attempts = itemsAt(document, ...jointPath(id, "remade"));
  if (attempts.length === 0) return null;
  return (
    <div class="attempts">
      <h3>{message("joints-attempts")}</h3>
      <ol>
        {attempts.map((attempt) => (
          <li key={attempt.id}>
            <b>{textAt(attempt, "reason")}</b>
            <small>{[momentText(textAt(attempt, "at")), ...foundThen(attempt)].join(" · ")}</small>
          </li>
        ))}
      </ol>
    </div>
  );
}

function foundThen(attempt: Parameters<typeof textAt>[0]): readonly string[] {
  const [cone, torque, look] = ["measuredCone", "scaleTorque", "leakLook"].map((name) => textAt(attempt, name));
  return [
    cone && message("joints-cone-then", { cone }),
    torque && message("joints-torque-then", { torque }),
    look === "pass" || look === "leak" ? message(`leak-look-${look}`) : "",
  ].filter((text): text is string => text !== undefined && text !== "");
}
