// Joints that were made anew, why, and what was found before; notes on joints.

import type { JSX } from "preact";
import type { JointAssessment } from "../../../core";
import { attemptsOf } from "../../../job/csv-tables";
import { presentJoints, useJob } from "../../../job/job-context";
import { textAt } from "../../../job/job-path";
import { shortMoment } from "../../../job/moment";
import { message } from "../../../locale";
import type { TreeObject } from "../../../store/jobs";

export function Attempts(): JSX.Element | null {
  const { assessment, document } = useJob();
  const lines = presentJoints(assessment).flatMap((joint) => linesOf(joint, document));
  if (lines.length === 0) return null;
  return (
    <section class="record-attempts">
      <h3>{message("record-attempts")}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

function linesOf({ id, number }: JointAssessment, document: TreeObject): readonly string[] {
  const note = textAt(document, "joints", `#${id}`, "note");
  const attempts = attemptsOf(document, id).map((attempt) =>
    [
      message("record-attempt", { number: number ?? "–", at: shortMoment(textAt(attempt, "at")), reason: textAt(attempt, "reason") }),
      foundThen("joints-cone-then", "cone", textAt(attempt, "measuredCone")),
      foundThen("joints-torque-then", "torque", textAt(attempt, "scaleTorque")),
      textAt(attempt, "leakLook") === "leak" ? message("leak-look-leak") : "",
    ]
      .filter((text) => text !== "")
      .join("; "),
  );
  return [...attempts, ...(note === "" ? [] : [message("record-joint-note", { number: number ?? "–", note })])];
}

function foundThen(id: string, name: string, text: string): string {
  return text === "" ? "" : message(id, { [name]: text });
}
