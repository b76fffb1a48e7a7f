// The nut across flats: the wrench to take.

import type { JSX } from "preact";
import { show, type JointAssessment } from "../../../core";
import { message } from "../../../locale";

export function NutFigure({ joint: { nutAcrossFlats } }: { readonly joint: JointAssessment }): JSX.Element {
  return (
    <div>
      <dt>{message("flare-nut")}</dt>
      {nutAcrossFlats == null ? (
        <dd class="absent">{message("joints-not-told")}</dd>
      ) : (
        <dd data-figure="nut">
          {show("length", nutAcrossFlats, "mm", "significant").number}
          <i>mm</i>
        </dd>
      )}
    </div>
  );
}
