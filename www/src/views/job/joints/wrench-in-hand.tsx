// The wrench as it is in the hand: adapter on or off for this joint, its lever to scale, and whether it suits.

import type { JSX } from "preact";
import { calculate, type JointAssessment } from "../../../core";
import { JobFields } from "../../../job/job-fields";
import { useJob } from "../../../job/job-context";
import { record } from "../../../job/joint-records";
import { torqueQuestion } from "../../../job/torque-question";
import { isLearning } from "../../../learning";
import { message } from "../../../locale";
import type { AnyField } from "../../../parts/card-fields";
import { Disclosure } from "../../../parts/disclosure";
import { Tick } from "../../../parts/tick";
import { Working } from "../../../parts/working";
import { LeverDrawing, WrenchFit, settingStep } from "../../bench/wrench-panel";

const fields: readonly AnyField[] = [
  { name: "adapterLength", quantity: "length" },
  { name: "wrenchLength", quantity: "length" },
  { name: "adapterAngle", quantity: "angle" },
  { name: "wrenchRange", quantity: "torque", words: true },
  { name: "wrenchAccuracy", quantity: "ratio" },
];

export function WrenchInHand({ joint }: { readonly joint: JointAssessment }): JSX.Element {
  const { job } = useJob();
  const isLeverOpen = joint.torque != null && joint.setting == null;
  return (
    <>
      <Tick name="withAdapter" isOn={joint.withAdapter} onChange={(isOn) => record(job, joint.id, { withAdapter: isOn })}>
        {message("field-withAdapter")}
      </Tick>
      <Disclosure name="joint-more" summary={message("joints-wrench")} mustShow={isLeverOpen || isLearning()}>
        <Lever joint={joint} />
        <JobFields at={["instruments", "wrench"]} fields={fields} />
      </Disclosure>
    </>
  );
}

function Lever({ joint }: { readonly joint: JointAssessment }): JSX.Element | null {
  const { document } = useJob();
  const reply = joint.setting == null ? undefined : calculate("torque", torqueQuestion(document, joint));
  if (reply === undefined || "problems" in reply) return null;
  const step = settingStep(reply.answer);
  return (
    <>
      {step && <LeverDrawing step={step} nutAcrossFlats={joint.nutAcrossFlats} />}
      {step && <Working steps={[step]} of={message("figure-wrench-setting")} />}
      <WrenchFit answer={reply.answer} />
    </>
  );
}
