// How likely each cause is: a mark from 0 to 100 %, with what a verdict needs, and how little of a leak lets
// a system be called tight. Behind it the three laws as fitted.

import type { JSX } from "preact";
import type { Fit, Likelihoods, VacuumHoldAnswer } from "../../core";
import { message } from "../../locale";
import { Disclosure } from "../../parts/disclosure";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { levelText, rateText, timeText } from "./texts";

export function Causes({ answer, likelihoods }: {
  readonly answer: VacuumHoldAnswer;
  readonly likelihoods: Likelihoods;
}): JSX.Element {
  const { verdict, needed, leakAllowed } = answer;
  const { dryAndTight, moisture, leak, other } = likelihoods;
  const causes = [
    { word: "dry-and-tight", share: dryAndTight, limits: [needed] },
    { word: "moisture", share: moisture, limits: [needed] },
    { word: "leak", share: leak, limits: [leakAllowed, needed] },
    { word: "other", share: other, limits: [needed] },
  ];
  return (
    <section>
      <h2>{message("vacuum-hold-causes")}</h2>
      <dl class="rows marked">
        {causes.map(({ word, share, limits }) => (
          <div key={word} class="row">
            <dt>
              <ShareMark share={share} limits={limits} state={word === verdict ? (word === "dry-and-tight" ? "in-band" : "out-of-band") : "cannot-tell"} />
              <span>{message(word === "other" ? "vacuum-hold-other" : `choice-${word}`)}</span>
            </dt>
            <dd data-likelihood={word}>{figureText("ratio", share, "table", "%")}</dd>
          </div>
        ))}
      </dl>
      <p class="note">{message("vacuum-hold-ticks", { needed: figureText("ratio", needed, "instrument", "%"), leak: figureText("ratio", leakAllowed, "instrument", "%") })}</p>
      {answer.fits.length > 0 && (
        <Disclosure name="laws" summary={<span>{message("vacuum-hold-laws")}</span>} mustShow={false}>
          <Rows>
            {answer.fits.map((fit) => (
              <Row key={fit.law} mark={`law-${fit.law}`} name={message(`choice-${fit.law}`)} figure={figureText("ratio", fit.probability, "table", "%")} beneath={lawText(fit)} />
            ))}
          </Rows>
        </Disclosure>
      )}
    </section>
  );
}

const [start, end] = [7, 65];

/** The share as a mark on a line from none to all; ticks stand at the limits. */
function ShareMark({ share, limits, state }: {
  readonly share: number;
  readonly limits: readonly number[];
  readonly state: "in-band" | "out-of-band" | "cannot-tell";
}): JSX.Element {
  const at = (part: number): number => start + (end - start) * part;
  const ticks = limits.map((limit) => `M${at(limit)} 3V17`).join("");
  return (
    <svg class="mark" viewBox="0 0 72 20" aria-hidden="true">
      <path class="line" d={`M${start} 10H${end}${ticks}`} />
      <circle class={state} cx={at(share)} cy="10" r="5.5" />
    </svg>
  );
}

function lawText({ start: first, plateau, timeConstant, rate, deviation }: Fit): string {
  return [
    message("vacuum-hold-law-start", { pressure: levelText(first) }),
    ...(plateau == null ? [] : [message("vacuum-hold-law-plateau", { pressure: levelText(plateau) })]),
    ...(timeConstant == null ? [] : [message("vacuum-hold-law-time", { time: timeText(timeConstant) })]),
    ...(rate == null ? [] : [message("vacuum-hold-law-rate", { rate: rateText(rate) })]),
    message("vacuum-hold-law-deviation", { deviation: Number(deviation.toPrecision(2)) }),
  ].join(", ");
}
