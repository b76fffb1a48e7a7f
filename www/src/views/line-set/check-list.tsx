// The verdicts as a list: what is judged, the figure, the mark, how far from the limit.

import type { JSX } from "preact";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { VerdictLine } from "../../parts/verdict-line";
import { nameOf, type Check } from "./checks";

export function CheckList({ checks }: { readonly checks: readonly Check[] }): JSX.Element | null {
  if (checks.length === 0) return null;
  return (
    <ul class="checks">
      {checks.map((check) => (
        <li key={`${check.kind} ${check.of}`} data-check={check.of === undefined ? check.kind : `${check.kind}-${check.of}`}>
          <p>
            <span>{nameOf(check)}</span> <b>{figureText(check.quantity, check.judged.figure, "table", check.unit)}</b>
          </p>
          <VerdictLine judged={check.judged} words={message(`line-set-${check.kind}-${check.judged.verdict}`)}>
            <span class="margin">{marginText(check)}</span>
          </VerdictLine>
        </li>
      ))}
    </ul>
  );
}

/** The limit, how far from it, and how surely: these figures are reckoned, not measured. */
function marginText({ judged, quantity, differences = quantity, unit }: Check): string {
  const [limit, margin, uncertainty] = [
    figureText(quantity, judged.limit, "table", unit),
    figureText(differences, Math.abs(judged.margin), "table", differences === quantity ? unit : undefined),
    figureText(differences, judged.uncertainty, "table", differences === quantity ? unit : undefined),
  ];
  const exact = judged.uncertainty === 0 ? "-exact" : "";
  return message(`line-set-margin${exact}`, { side: judged.margin < 0 ? "beyond" : "inside", limit, margin, uncertainty });
}
