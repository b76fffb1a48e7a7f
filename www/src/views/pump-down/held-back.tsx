// What holds the pump back: each part's share of the resistance as a bar, to scale.

import type { JSX } from "preact";
import type { PartShare, PumpDownAnswer } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { vacuumText } from "../../parts/vacuum-unit";

export function HeldBack({ answer: { heldBack } }: { readonly answer: PumpDownAnswer }): JSX.Element {
  const { pressure, inletPressure, speedPart, parts } = heldBack;
  return (
    <section>
      <h2>{message("pump-down-held-back", { pressure: vacuumText(pressure) })}</h2>
      <dl class="shares">
        {parts.map((part) => (
          <div key={`${part.part} ${part.hose}`}>
            <dt>{partName(part, parts)}</dt>
            <dd data-share={part.part}>
              <span class="share" aria-hidden="true" style={{ "--share": part.share }} />
              {figureText("ratio", part.share, "instrument", "%")}
            </dd>
          </div>
        ))}
      </dl>
      <p class="note">
        {message("pump-down-speed-left", {
          part: figureText("ratio", speedPart, "table", "%"),
          pressure: vacuumText(inletPressure),
        })}
      </p>
    </section>
  );
}

/** Hoses bear their number only where there are several. */
function partName({ part, hose }: PartShare, all: readonly PartShare[]): string {
  const name = message(`choice-${part}`);
  const areSeveral = all.some((other) => other.hose === 2);
  return hose != null && areSeveral ? message("pump-down-numbered", { part: name, number: hose }) : name;
}
