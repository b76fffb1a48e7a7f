// The mark of a joint: its number in a shape and a fill that say how far it has come. Colour says nothing alone.

import type { JSX } from "preact";
import type { JointState } from "../core";
import { round, type Point } from "./dimension";

export function JointMark({ at, radius, state, number }: {
  readonly at: Point;
  readonly radius: number;
  readonly state: JointState;
  /** Nothing: the mark alone, for the key. */
  readonly number?: number | undefined;
}): JSX.Element {
  const { x, y } = at;
  return (
    <g class={`joint-mark ${state}`}>
      <Shape at={at} radius={radius} state={state} />
      {number !== undefined && (
        <text x={round(x)} y={round(y + radius * 0.36)} text-anchor="middle" font-size={round(radius * (number > 9 ? 0.92 : 1.05))}>
          {number}
        </text>
      )}
    </g>
  );
}

function Shape({ at: { x, y }, radius, state }: { readonly at: Point; readonly radius: number; readonly state: JointState }): JSX.Element {
  if (state === "leaking") {
    const reach = round(radius * 1.25);
    return <path class="shape" d={`M${round(x)} ${round(y - reach)}l${reach} ${reach}l${-reach} ${reach}l${-reach} ${-reach}z`} />;
  }
  if (state === "out-of-band") {
    const half = radius * 0.92;
    return <rect class="shape" x={round(x - half)} y={round(y - half)} width={round(half * 2)} height={round(half * 2)} />;
  }
  return (
    <>
      <circle class="shape" cx={round(x)} cy={round(y)} r={round(radius)} />
      {state === "tightened" && <circle class="ring" cx={round(x)} cy={round(y)} r={round(radius - 3.4)} />}
    </>
  );
}
