// Stand-in until the bench is drawn.

import type { JSX } from "preact";
import { enter, place } from "../address";
import { calculate, showBand } from "../core";
import { message } from "../locale";
import { unitOf } from "../unit-choice";

export function Bench(): JSX.Element {
  const tube = place().entries.tube ?? "5/8";
  const reply = calculate("torque", { tube });
  const unit = unitOf("torque");
  const shown = "answer" in reply ? showBand("torque", reply.answer.band, unit) : undefined;
  return (
    <main>
      <h1>{message("title-bench")}</h1>
      {["3/8", "5/8"].map((size) => (
        <button data-tube={size} onClick={() => enter("tube", size)}>
          {size}
        </button>
      ))}
      <input name="tube" aria-label="tube" value={tube} onInput={(event) => enter("tube", event.currentTarget.value)} />
      <output data-figure="torque">{shown && `${shown.low}–${shown.high} ${shown.unit}`}</output>
    </main>
  );
}
