// A joint's number in the order of work; its shape and fill say how far it has come.

import type { JSX } from "preact";
import type { JointAssessment } from "../../../core";

export function JointNumber({ joint: { number, state } }: { readonly joint: JointAssessment }): JSX.Element {
  return (
    <span class="joint-number" data-state={state}>
      {number ?? "–"}
    </span>
  );
}
