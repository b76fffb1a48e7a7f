// The joints: cone and torque with their verdicts, the look for leaks.

import type { JSX } from "preact";
import { show, type JointAssessment, type Limits, type QuantityKind } from "../../../core";
import { presentJoints, useJob } from "../../../job/job-context";
import { jointText } from "../../../job/job-words";
import { shortMoment } from "../../../job/moment";
import { tubeText } from "../../../job/tube-words";
import { message } from "../../../locale";
import { bandNumbers } from "../../../parts/figures";
import { VerdictMark, type Judged } from "../../../parts/verdict-line";
import { unitOf } from "../../../unit-choice";

const columns = ["number", "joint", "tube", "cone", "torque", "leaks"] as const;

export function Joints(): JSX.Element | null {
  const { assessment } = useJob();
  const joints = presentJoints(assessment);
  if (joints.length === 0) return null;
  return (
    <section class="record-joints">
      <h3>{message("field-joints")}</h3>
      <table>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {message(`record-column-${column}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {joints.map((joint) => (
            <JointLine key={joint.id} joint={joint} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function JointLine({ joint }: { readonly joint: JointAssessment }): JSX.Element {
  const { number, tube, kind, cone, measuredCone, torque, tightened, tightenedAt } = joint;
  const name = (column: (typeof columns)[number]): string => message(`record-column-${column}`);
  return (
    <tr data-joint={joint.id} data-state={joint.state}>
      <th scope="row" data-name={name("number")}>{number}</th>
      <td data-name={name("joint")}>{jointText(joint)}</td>
      {tube == null ? none : <td data-name={name("tube")}>{tubeText(tube)}</td>}
      {kind === "flare" ? (
        <td data-name={name("cone")}>
          <JudgedFigure quantity="length" judged={measuredCone?.judgement} limits={cone ?? undefined} />
        </td>
      ) : (
        none
      )}
      <td data-name={kind === "flare" ? name("torque") : message(kind === "cap" ? "joint-kind-cap" : "joint-kind-brazed")}>
        {kind === "flare" ? (
          <JudgedFigure quantity="torque" judged={tightened ?? undefined} limits={torque ?? undefined} />
        ) : (
          tightenedAt == null ? notDone() : message(kind === "cap" ? "record-cap-on" : "joint-state-made")
        )}
      </td>
      <td data-name={name("leaks")}>{leaksText(joint)}</td>
    </tr>
  );
}

/** A cell that has nothing to say: on the screen, where each is a line, it is left out. */
const none = <td class="none">–</td>;

function JudgedFigure({ quantity, judged, limits }: {
  readonly quantity: QuantityKind;
  readonly judged: Judged | undefined;
  readonly limits: Limits | undefined;
}): JSX.Element {
  if (judged === undefined) return notDone();
  const { figure, uncertainty, verdict, margin } = judged;
  const unit = unitOf(quantity);
  const number = (si: number): string => show(quantity, si, unit, "table").number;
  const side = message(`record-margin-${verdict}`, { margin: number(Math.abs(margin)) });
  return (
    <>
      <b class={verdict === "out-of-band" ? "out" : undefined}>{number(figure)}</b> ± {number(uncertainty)}&nbsp;{unit} <VerdictMark judged={judged} limits={limits} />{" "}
      <small>
        {limits && `${bandNumbers(quantity, limits)}, `}
        {side}
      </small>
    </>
  );
}

function leaksText({ leakLook, lookedAt }: JointAssessment): JSX.Element | string {
  if (leakLook == null) return notDone();
  const word = message(`leak-look-${leakLook}`);
  const text = lookedAt == null ? word : `${word}, ${shortMoment(lookedAt)}`;
  return leakLook === "leak" ? <b class="out">{text}</b> : text;
}

function notDone(): JSX.Element {
  return <b class="out">{message("record-not-done")}</b>;
}
