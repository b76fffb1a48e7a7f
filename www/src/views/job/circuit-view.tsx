// The circuit of the open job: the drawing with its key, and beneath it the joints as large targets where the marks
// of the drawing stand too close.

import type { JSX } from "preact";
import type { Circuit, JointAssessment, JointState, Stage } from "../../core";
import { CircuitDrawing, isTouchable, type CircuitLabels, type JointLink } from "../../drawings/circuit";
import { circuitLayout } from "../../drawings/circuit-layout";
import { JointMark } from "../../drawings/joint-mark";
import { useSheet } from "../../drawings/sheet";
import { presentJoints, useJob } from "../../job/job-context";
import { jointText } from "../../job/job-words";
import { jobPlace } from "../../job/stages";
import { tubeText } from "../../job/tube-words";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { runUnit } from "../../unit-choice";

/** In the order of the key. */
const states: readonly JointState[] = ["open", "made", "tightened", "proven", "out-of-band", "leaking"];

/** Where a joint is worked on next. */
const stageOfState: Readonly<Record<JointState, Stage>> = {
  open: "flare",
  made: "tighten",
  tightened: "pressure-test",
  proven: "pressure-test",
  leaking: "tighten",
  "out-of-band": "tighten",
  removed: "flare",
};

/** Nothing is flared at a cap: it is put on once the valves are open. */
function stageOf({ kind, state }: JointAssessment): Stage {
  return kind === "cap" ? "release-and-charge" : stageOfState[state];
}

export function CircuitView({ isOnPaper }: {
  /** Whether it is to be printed: nothing leads anywhere then. */
  readonly isOnPaper?: true;
}): JSX.Element {
  const { job, assessment } = useJob();
  const sheet = useSheet();
  const joints = presentJoints(assessment);
  const layout = circuitLayout(sheet, assessment.circuit, joints);
  const linkOf = (joint: JointAssessment): JointLink => ({
    href: jobPlace(job.id, stageOf(joint), joint.id),
    name: message("circuit-joint", { number: joint.number ?? 0, joint: jointText(joint), state: message(`joint-state-${joint.state}`) }),
  });
  return (
    <figure class="circuit-view">
      <CircuitDrawing sheet={sheet} layout={layout} labels={labelsOf(assessment.circuit, joints)} linkOf={isOnPaper ? undefined : linkOf} />
      <figcaption>
        {captionOf(assessment.circuit)}
        {!layout.isLiftToScale && ` ${message("circuit-not-to-scale")}`}
      </figcaption>
      <MarkKey joints={joints} />
      {isOnPaper !== true && !isTouchable(layout) && <JointStrip joints={joints} linkOf={linkOf} />}
    </figure>
  );
}

function runText(si: number): string {
  return figureText("length", si, "instrument", runUnit());
}

function labelsOf(circuit: Circuit, joints: readonly JointAssessment[]): CircuitLabels {
  const { lift, length, higherUnit } = circuit;
  const counts = states.map((state) => ({ state, count: joints.filter((joint) => joint.state === state).length }));
  const told = counts.filter(({ count }) => count > 0).map(({ state, count }) => message("circuit-count", { count, state: message(`joint-state-${state}`) }));
  return {
    indoor: message("choice-indoor"),
    outdoor: message("choice-outdoor"),
    lift: lift == null || lift === 0 || higherUnit == null ? undefined : runText(lift),
    length: length == null ? undefined : message("circuit-length", { length: runText(length) }),
    alternative: message("circuit-drawing", { caption: captionOf(circuit), joints: joints.length, states: told.join(", ") }),
  };
}

/** What is known of the run and the tubes, or that it is not. */
export function captionOf({ length, lift, higherUnit, liquidLine, gasLine }: Circuit): string {
  const isLevel = lift === 0;
  const parts = [
    length == null ? message("circuit-no-length") : message("circuit-length", { length: runText(length) }),
    lift == null || (higherUnit == null && !isLevel)
      ? message("circuit-no-lift")
      : message(isLevel ? "circuit-level" : `circuit-${higherUnit}-higher`, { lift: runText(lift) }),
    message("circuit-liquid", { tube: liquidLine == null ? "?" : tubeText(liquidLine) }),
    message("circuit-gas", { tube: gasLine == null ? "?" : tubeText(gasLine) }),
  ];
  return `${parts.join(", ")}.`;
}

/** The states that there are, each with its mark. */
function MarkKey({ joints }: { readonly joints: readonly JointAssessment[] }): JSX.Element {
  return (
    <ul class="mark-key">
      {states.filter((state) => joints.some((joint) => joint.state === state)).map((state) => (
        <li key={state}>
          <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true">
            <JointMark at={{ x: 11, y: 11 }} radius={7.5} state={state} />
          </svg>
          {message(`joint-state-${state}`)}
        </li>
      ))}
    </ul>
  );
}

function JointStrip({ joints, linkOf }: { readonly joints: readonly JointAssessment[]; readonly linkOf: (joint: JointAssessment) => JointLink }): JSX.Element {
  return (
    <ol class="joint-strip">
      {joints.map((joint) => {
        const { href, name } = linkOf(joint);
        return (
          <li key={joint.id}>
            <a href={href} aria-label={name} data-joint={joint.id} data-state={joint.state}>
              <svg width="2.25em" height="2.25em" viewBox="0 0 36 36" aria-hidden="true">
                <JointMark at={{ x: 18, y: 18 }} radius={13} state={joint.state} number={joint.number ?? undefined} />
              </svg>
            </a>
          </li>
        );
      })}
    </ol>
  );
}
