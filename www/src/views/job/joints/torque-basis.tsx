// Whose band holds at this joint: the plate's own, else what the families allow; with the working of the aim.

import type { JSX } from "preact";
import { calculate, type JointAssessment } from "../../../core";
import { useJob } from "../../../job/job-context";
import { jointField } from "../../../job/joint-records";
import { torqueQuestion } from "../../../job/torque-question";
import { isLearning } from "../../../learning";
import { message } from "../../../locale";
import { Disclosure } from "../../../parts/disclosure";
import { EntryField } from "../../../parts/entry-field";
import { isMistake, problemOf } from "../../../parts/fields";
import { SourceList } from "../../../parts/sources";
import { Working } from "../../../parts/working";
import { unitOf } from "../../../unit-choice";
import { BandsOf } from "../../bench/torque-panel";

export function TorqueBasis({ joint }: { readonly joint: JointAssessment }): JSX.Element {
  const { document, problems } = useJob();
  const name = jointField(joint.id, "plateTorque");
  const { plateTorque = null } = torqueQuestion(document, joint);
  const reply = joint.tube == null ? undefined : calculate("torque", { tube: joint.tube, plateTorque });
  const answer = reply && "answer" in reply ? reply.answer : undefined;
  return (
    <Disclosure name="joint-more" summary={message("joints-whose-band")} mustShow={isMistake(problemOf(name, problems)) || isLearning()}>
      <EntryField name={name} problems={problems} unit={unitOf("torque")} words />
      <p class="note">{message("torque-plate-wins")}</p>
      {answer && answer.families.length > 0 && <BandsOf answer={answer} />}
      {answer && <SourceList ids={answer.families.map(({ source }) => source)} />}
      {answer && <Working steps={answer.working} of={message("figure-aim")} />}
    </Disclosure>
  );
}
