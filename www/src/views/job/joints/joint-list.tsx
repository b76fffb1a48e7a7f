// All joints in the order of work: how far each has come, what is open at it, and the ways to change the list.

import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { place } from "../../../address";
import type { JointAssessment, Stage } from "../../../core";
import { presentJoints, useJob } from "../../../job/job-context";
import { addJoint, jointField } from "../../../job/joint-records";
import { jointText } from "../../../job/job-words";
import { jobPlace } from "../../../job/stages";
import { message } from "../../../locale";
import { Disclosure } from "../../../parts/disclosure";
import { JointEditor } from "./joint-editor";
import { JointNumber } from "./joint-number";
import { tubeText } from "../../../job/tube-words";

export function JointList({ stage }: { readonly stage: Stage }): JSX.Element {
  const { job, assessment } = useJob();
  const { joints } = assessment;
  const [added, setAdded] = useState<string>();
  useEffect(() => {
    if (added !== undefined) document.getElementById(`entry-${jointField(added, "name")}`)?.focus();
  }, [added]);
  const last = presentJoints(assessment).at(-1);
  const before = joints.find(({ id }) => id === place().entries.joint) ?? last;
  return (
    <section class="joint-list">
      <h2>{message("joints-list")}</h2>
      <ol>
        {joints.map((joint) => (
          <li key={joint.id} data-joint={joint.id} data-state={joint.state}>
            <JointLine joint={joint} place={jobPlace(job.id, stage, joint.id)} />
            <Disclosure name="joint-change" summary={<ChangeOf joint={joint} />} mustShow={joint.id === added}>
              <JointEditor joint={joint} />
            </Disclosure>
          </li>
        ))}
      </ol>
      <button class="do" data-action="add-joint" onClick={() => setAdded(addJoint(job, before))}>
        {before?.after == null ? message("joints-add") : message("joints-add-after", { joint: jointText(before) })}
      </button>
    </section>
  );
}

function JointLine({ joint, place: target }: { readonly joint: JointAssessment; readonly place: string }): JSX.Element {
  return (
    <a href={target} aria-current={place().entries.joint === joint.id ? "true" : undefined}>
      <JointNumber joint={joint} />
      <span>
        <b>{jointText(joint)}</b>
        <small>{stateText(joint)}</small>
      </span>
    </a>
  );
}

/** `3/8 · made · open: oil it, tighten it`. */
function stateText({ tube, kind, state, open, remade }: JointAssessment): string {
  const steps = open.map((step) => message(`joint-step-${step}`)).join(", ");
  return [
    tube == null ? message(`joint-kind-${kind}`) : tubeText(tube),
    message(`joint-state-${state}`),
    ...(remade > 0 ? [message("joints-remade", { count: remade })] : []),
    ...(steps === "" || state === "removed" ? [] : [message("joints-still", { steps })]),
  ].join(" · ");
}

function ChangeOf({ joint }: { readonly joint: JointAssessment }): JSX.Element {
  return (
    <>
      {message("joints-change")} <span class="heard">{jointText(joint)}</span>
    </>
  );
}
