// The look for leaks at each of some joints: none found, a leak, or not done yet.
//
//   <LeakLookRows joints={presentJoints(assessment).filter(({ kind }) => kind !== "cap")} />

import type { ComponentChildren, JSX } from "preact";
import type { JointAssessment } from "../../../core";
import { nowIn, useJob } from "../../../job/job-context";
import { jointField, record } from "../../../job/joint-records";
import { momentText } from "../../../job/moment";
import { jointText } from "../../../job/job-words";
import { jobPlace } from "../../../job/stages";
import { message } from "../../../locale";
import { ChoiceRow } from "../../../parts/choice-row";
import { JointNumber } from "./joint-number";

const looks = ["pass", "leak", ""] as const;

export function LeakLookRows({ joints, children }: {
  readonly joints: readonly JointAssessment[];
  /** What stands above the choice of each. */
  readonly children?: (joint: JointAssessment) => ComponentChildren;
}): JSX.Element {
  return (
    <ol class="leak-looks">
      {joints.map((joint) => (
        <li key={joint.id} data-joint={joint.id} data-look={joint.leakLook ?? "open"}>
          <LeakLookRow joint={joint}>{children?.(joint)}</LeakLookRow>
        </li>
      ))}
    </ol>
  );
}

/** The joint is named above. */
function ShortLegend({ joint }: { readonly joint: JointAssessment }): JSX.Element {
  return (
    <>
      {message("leak-look-short")} <span class="heard">{jointText(joint)}</span>
    </>
  );
}

function LeakLookRow({ joint, children }: { readonly joint: JointAssessment; readonly children?: ComponentChildren }): JSX.Element {
  const { job, document, problems } = useJob();
  const { id, kind, leakLook, lookedAt } = joint;
  const look = (word: string): void => record(job, id, word === "" ? { leakLook: undefined, looked: undefined } : { leakLook: word, looked: nowIn(document) });
  return (
    <>
      <JointNumber joint={joint} />
      <div>
        {children}
        <ChoiceRow
          name={jointField(id, "leakLook")}
          legend={children === undefined ? message("leak-look-of", { joint: jointText(joint) }) : <ShortLegend joint={joint} />}
          beside
          chosen={leakLook ?? ""}
          problems={problems}
          onChoose={look}
          choices={looks.map((word) => ({ word, label: message(word === "" ? "leak-look-open" : `leak-look-${word}`) }))}
        />
        {lookedAt != null && <p class="note">{message("leak-looked-at", { at: momentText(lookedAt) })}</p>}
        {leakLook === "leak" && (
          <p class="notice">
            {message(kind === "cap" ? "leak-cap" : "leak-remake")}{" "}
            {kind !== "cap" && <a href={jobPlace(job.id, "flare", id)}>{message("leak-to-joint")}</a>}
          </p>
        )}
      </div>
    </>
  );
}
