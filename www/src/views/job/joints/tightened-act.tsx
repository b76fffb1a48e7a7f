// That a nut was tightened, or a cap put on: one tap, with the torque on the scale as it is set or as it was typed.

import type { JSX } from "preact";
import { show, type JointAssessment } from "../../../core";
import { nowIn, useJob } from "../../../job/job-context";
import { textAt } from "../../../job/job-path";
import { jointPath, record } from "../../../job/joint-records";
import { momentText } from "../../../job/moment";
import { asEntered, message } from "../../../locale";
import { unitOf } from "../../../unit-choice";
import { DoneAct } from "./made-act";

export function TightenedAct({ joint }: { readonly joint: JointAssessment }): JSX.Element | null {
  if (joint.kind === "brazed") return null;
  return joint.kind === "cap" ? <CapAct joint={joint} /> : <NutAct joint={joint} />;
}

function NutAct({ joint: { id, setting, tightenedAt, withAdapter } }: { readonly joint: JointAssessment }): JSX.Element {
  const { job, document } = useJob();
  const typed = textAt(document, ...jointPath(id, "scaleTorque"));
  const torque = typed === "" ? asSet(setting) : typed;
  const tighten = (): void => {
    const scale = typed === "" && torque !== "" ? { scaleTorque: torque } : {};
    record(job, id, { tightened: nowIn(document), withAdapter, ...scale });
  };
  const at = tightenedAt == null ? "" : momentText(tightenedAt);
  return (
    <DoneAct
      action="tightened"
      word={torque === "" ? message("joints-act-tightened") : message("joints-act-tightened-to", { torque })}
      done={tightenedAt == null ? undefined : message("joints-tightened-at", { at })}
      onDo={tighten}
      onTakeBack={() => record(job, id, { tightened: undefined, scaleTorque: undefined })}
    />
  );
}

/** As it is read on the wrench. */
function asSet(setting: number | null | undefined): string {
  if (setting == null) return "";
  const { number, unit } = show("torque", setting, unitOf("torque"));
  return `${asEntered(number)} ${unit}`;
}

function CapAct({ joint: { id, tightenedAt } }: { readonly joint: JointAssessment }): JSX.Element {
  const { job, document } = useJob();
  return (
    <DoneAct
      action="tightened"
      word={message("joints-act-cap-on")}
      done={tightenedAt == null ? undefined : message("joints-cap-on-at", { at: momentText(tightenedAt) })}
      onDo={() => record(job, id, { tightened: nowIn(document) })}
      onTakeBack={() => record(job, id, { tightened: undefined })}
    />
  );
}
