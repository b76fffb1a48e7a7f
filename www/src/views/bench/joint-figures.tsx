// Cone and nut, side by side: what is needed before the tool is in the hand.

import type { JSX } from "preact";
import { calculate, show } from "../../core";
import { message } from "../../locale";
import { textOf } from "../../parts/fields";
import { bandNumbers, bandText } from "../../parts/figures";
import { otherUnitOf, unitOf } from "../../unit-choice";
import { flareInput } from "./joint";

export function JointFigures(): JSX.Element | null {
  // A tool that cannot be read must not withhold the cone.
  const { tool: _, ...joint } = flareInput();
  const reply = calculate("flare", joint);
  if ("problems" in reply) return null;
  const { cone, nutAcrossFlats, thread } = reply.answer;
  const flareClass = message(`class-short-${textOf("flareClass")}`);
  return (
    <dl class="pair">
      <div>
        <dt>{message("flare-cone-of-class", { class: flareClass })}</dt>
        {cone ? (
          <dd data-figure="cone">
            {bandNumbers("length", cone)}
            <i>{unitOf("length")}</i>
            <small>{bandText("length", cone, otherUnitOf("length"))}</small>
          </dd>
        ) : (
          <dd class="absent">{message("flare-no-cone")}</dd>
        )}
      </div>
      <div>
        <dt>{message("flare-nut")}</dt>
        {nutAcrossFlats ? (
          <dd data-figure="nut">
            {show("length", nutAcrossFlats, "mm", "significant").number}
            <i>mm</i>
            <small>{thread.designation}</small>
          </dd>
        ) : (
          <dd class="absent">
            {message("flare-no-cone")}
            <small>{thread.designation}</small>
          </dd>
        )}
      </div>
    </dl>
  );
}
