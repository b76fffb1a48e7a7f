// The verdicts as a list: what is judged, the figure, the mark, how far from the limit. What is not inside
// stands in the open; the rest is one line until somebody asks.

import type { JSX } from "preact";
import { units, type Precision } from "../../core";
import { message } from "../../locale";
import { Disclosure } from "../../parts/disclosure";
import { figureText } from "../../parts/figures";
import { VerdictLine } from "../../parts/verdict-line";
import { unitOf } from "../../unit-choice";
import { isInside, nameOf, type Check } from "./checks";

export function CheckList({ checks }: { readonly checks: readonly Check[] }): JSX.Element | null {
  if (checks.length === 0) return null;
  const inside = checks.filter(isInside);
  return (
    <>
      <Checks checks={checks.filter((check) => !isInside(check))} />
      {inside.length > 0 && (
        <Disclosure name="checks-inside" summary={<span>{message("line-set-inside", { count: inside.length })}</span>} mustShow={false}>
          <Checks checks={inside} />
        </Disclosure>
      )}
    </>
  );
}

function Checks({ checks }: { readonly checks: readonly Check[] }): JSX.Element | null {
  if (checks.length === 0) return null;
  return (
    <ul class="checks">
      {checks.map((check) => (
        <li key={`${check.kind} ${check.of}`} data-check={check.of === undefined ? check.kind : `${check.kind}-${check.of}`}>
          <p>
            <span>{nameOf(check)}</span> <b>{figureText(check.quantity, check.judged.figure, precisionOf(check), check.unit)}</b>
          </p>
          <VerdictLine judged={check.judged} words={message(`line-set-${check.kind}-${check.judged.verdict}`)}>
            <span class="margin">{marginText(check)}</span>
          </VerdictLine>
        </li>
      ))}
    </ul>
  );
}

/** A ratio of areas differs by less than whole percents. */
function precisionOf({ quantity }: Check): Precision {
  return quantity === "ratio" ? "table" : "instrument";
}

/** The limit, how far from it, and how surely: these figures are reckoned, not measured. */
function marginText(check: Check): string {
  const { judged, quantity, differences = quantity, unit = unitOf(quantity) } = check;
  // A difference is told in the figure's own unit where it has that.
  const told = units(differences).some(({ symbol }) => symbol === unit) ? unit : unitOf(differences);
  const difference = (si: number): string => figureText(differences, si, precisionOf(check), told);
  return message(judged.uncertainty === 0 ? "line-set-margin-exact" : "line-set-margin", {
    side: judged.margin < 0 ? "beyond" : "inside",
    limit: figureText(quantity, judged.limit, precisionOf(check), unit),
    margin: difference(Math.abs(judged.margin)),
    uncertainty: difference(judged.uncertainty),
  });
}
