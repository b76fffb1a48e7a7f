// What each change would save on the way to the lowest vacuum, the best first.

import type { JSX } from "preact";
import type { Change, PumpDownAnswer } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { vacuumText } from "../../parts/vacuum-unit";
import { pumpUnit, timeText } from "./fields";

export function Changes({ answer: { changes, goal } }: { readonly answer: PumpDownAnswer }): JSX.Element | null {
  const [best, ...others] = changes;
  if (best === undefined || goal == null) return null;
  return (
    <section>
      <h2>{message("pump-down-changes", { pressure: vacuumText(goal) })}</h2>
      <p class="best-change" data-best={best.change}>
        <b>{nameOf(best)}</b> {savingOf(best)}
      </p>
      <Rows>
        {others.map((change) => (
          <Row key={change.change} name={nameOf(change)} figure={message("pump-down-less", { time: timeText(change.saved) })} />
        ))}
      </Rows>
    </section>
  );
}

function savingOf({ saved, time }: Change): string {
  return message("pump-down-saves", { saved: timeText(saved), time: timeText(time) });
}

/** The change with the size that it was reckoned for. */
function nameOf({ change, bore, pumpSpeed }: Change): string {
  const name = message(`choice-${change}`);
  if (bore != null) return message("pump-down-sized", { name, size: figureText("length", bore, "instrument") });
  if (pumpSpeed != null) return message("pump-down-sized", { name, size: figureText("volume-flow", pumpSpeed, "significant", pumpUnit()) });
  return name;
}
