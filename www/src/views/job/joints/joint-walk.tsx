// Walks a stage joint by joint, with one hand: by the buttons under the thumb, by a swipe, by the arrow keys.
// The joint that is shown stays until the person goes on, also when nothing is left to do at it.

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { enter, place } from "../../../address";
import type { JointAssessment, JointStep } from "../../../core";
import { presentJoints, useJob } from "../../../job/job-context";
import { jointText } from "../../../job/job-words";
import { message } from "../../../locale";
import { JointNumber } from "./joint-number";
import { tubeText } from "../../../job/tube-words";
import { useSwipe } from "./swipe";

/** What a stage does at which joints. */
export interface StageWork {
  readonly kinds: readonly JointAssessment["kind"][];
  /** The steps that belong to it. */
  readonly steps: readonly JointStep[];
}

type OfJoint = (props: { readonly joint: JointAssessment }) => JSX.Element | null;

export function JointWalk({ work, view: View, act: Act }: {
  readonly work: StageWork;
  /** What has to be known at a joint, and what is entered. */
  readonly view: OfJoint;
  /** What is done with one tap, above the ways to the neighbours. */
  readonly act: OfJoint;
}): JSX.Element {
  const { assessment } = useJob();
  const walk = presentJoints(assessment).filter(({ kind }) => work.kinds.includes(kind));
  const isOpen = ({ open }: JointAssessment): boolean => open.some((step) => work.steps.includes(step));
  const [first] = useState(() => (walk.find(isOpen) ?? walk[0])?.id);
  const shown = place().entries.joint ?? first;
  const joint = assessment.joints.find(({ id }) => id === shown) ?? walk[0];
  useTopOnChange(joint?.id);
  const { earlier, later } = neighbours(assessment.joints, walk, joint);
  const goTo = (next: JointAssessment | undefined): void => {
    if (next) enter("joint", next.id);
  };
  const swipe = useSwipe({ onLeft: () => goTo(later), onRight: () => goTo(earlier) });
  if (joint === undefined) return <p class="note">{message("joints-none")}</p>;
  return (
    <section class="joint-walk" data-joint={joint.id} {...swipe} onKeyDown={(event) => onArrow(event, () => goTo(earlier), () => goTo(later))}>
      <JointHead joint={joint} place={walk.indexOf(joint)} count={walk.length} done={walk.filter((one) => !isOpen(one)).length} />
      <View key={joint.id} joint={joint} />
      <div class="walk-foot">
        <Act joint={joint} />
        <div class="walk-ways">
          <Way name="earlier" to={earlier} onGo={goTo} />
          <Way name="later" to={later} onGo={goTo} />
        </div>
      </div>
    </section>
  );
}

/** Which joint, of how many, and where it is: said to those who hear the page at each step. */
function JointHead({ joint, place, count, done }: {
  readonly joint: JointAssessment;
  /** From 0; -1 for a joint at which this stage has nothing to do. */
  readonly place: number;
  readonly count: number;
  readonly done: number;
}): JSX.Element {
  return (
    <div class="joint-head" role="status">
      <p class="walk-progress" data-progress={`${place + 1}/${count}`}>
        {place < 0 ? message("joints-not-here") : message("joints-progress", { place: place + 1, count, done })}
      </p>
      <h2>
        <JointNumber joint={joint} />
        <span>{jointText(joint)}</span>
      </h2>
      <p class="joint-kind">
        {joint.tube == null ? message(`joint-kind-${joint.kind}`) : message("joint-kind-and-tube", { kind: message(`joint-kind-${joint.kind}`), tube: tubeText(joint.tube) })}
        <span>{message(`joint-state-${joint.state}`)}</span>
      </p>
    </div>
  );
}

/** A way to a neighbour stays where it is at the ends, so that the thumb and the focus do not lose it. */
function Way({ name, to, onGo }: {
  readonly name: "earlier" | "later";
  readonly to: JointAssessment | undefined;
  readonly onGo: (to: JointAssessment | undefined) => void;
}): JSX.Element {
  return (
    <button data-action={`joint-${name}`} aria-disabled={to === undefined} onClick={() => onGo(to)}>
      <b>{message(`joints-${name}`)}</b>
      <small>{to ? jointText(to) : message(`joints-no-${name}`)}</small>
    </button>
  );
}

/** The next ones in the walk, also from a joint outside of it. */
function neighbours(all: readonly JointAssessment[], walk: readonly JointAssessment[], joint: JointAssessment | undefined): {
  readonly earlier: JointAssessment | undefined;
  readonly later: JointAssessment | undefined;
} {
  const at = joint ? all.indexOf(joint) : -1;
  return {
    earlier: walk.filter((other) => all.indexOf(other) < at).at(-1),
    later: walk.find((other) => all.indexOf(other) > at),
  };
}

/** What is read from afar must be in view when another joint is shown. */
function useTopOnChange(id: string | undefined): void {
  const before = useRef(id);
  useEffect(() => {
    if (before.current !== id) scrollTo(0, 0);
    before.current = id;
  }, [id]);
}

/** The arrow keys, where they do not belong to a field. */
function onArrow(event: KeyboardEvent, toEarlier: () => void, toLater: () => void): void {
  const isOfField = event.target instanceof Element && event.target.matches("input, select, textarea");
  if (isOfField || event.altKey || event.ctrlKey || event.metaKey) return;
  if (event.key === "ArrowRight") toLater();
  else if (event.key === "ArrowLeft") toEarlier();
  else return;
  event.preventDefault();
}
