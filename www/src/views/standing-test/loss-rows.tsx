// What the hold comes to: the loss, the most and the least that it can speak of, each as pressure over time, as
// gas and as refrigerant, and how long to hold for the loss that matters.

import type { JSX } from "preact";
import type { HoldFigures, LeakSize, StandingTestAnswer } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { Row } from "../../parts/rows";
import { timeUnit } from "../pump-down/fields";
import { holdText, rateUnit } from "./ask";

export function LossRows({ answer: { hold, verdict }, refrigerant }: {
  readonly answer: StandingTestAnswer;
  readonly refrigerant: string;
}): JSX.Element | null {
  if (!hold) return null;
  const { pressureLossRate, pressureLossRateUncertainty, upperLimit, leastDetectable } = hold;
  const isSized = hold.leak?.refrigerant != null;
  return (
    <section>
      <h2>{message("standing-test-loss")}</h2>
      <dl class="rows marked">
        <LossRow mark="loss" name="standing-test-loss-row" rate={pressureLossRate} uncertainty={pressureLossRateUncertainty} leak={hold.leak} refrigerant={refrigerant} />
        <LossRow mark="upperLimit" name="standing-test-loss-most" rate={upperLimit} leak={hold.upperLimitLeak} refrigerant={refrigerant} />
        <LossRow mark="leastDetectable" name="standing-test-loss-least" rate={leastDetectable} leak={hold.leastDetectableLeak} refrigerant={refrigerant} />
        <HoldToSee hold={hold} isTight={verdict === "tight"} />
      </dl>
      <p class="note">{message(isSized ? "standing-test-sized" : "standing-test-unsized")}</p>
    </section>
  );
}

function LossRow({ mark, name, rate, uncertainty, leak, refrigerant }: {
  readonly mark: string;
  /** Message id. */
  readonly name: string;
  readonly rate: number;
  readonly uncertainty?: number;
  readonly leak: LeakSize | null | undefined;
  readonly refrigerant: string;
}): JSX.Element {
  return (
    <div class="row">
      <dt>{message(name)}</dt>
      <dd data-figure={mark}>
        {rateText(rate)}
        {uncertainty !== undefined && <small>{message("standing-test-plus-minus", { uncertainty: rateText(uncertainty) })}</small>}
        {leak && leak.nitrogen > 0 && <small data-leak="nitrogen">{message("standing-test-as-nitrogen", { leak: figureText("leak-rate", leak.nitrogen, "table", "mbar·L/s") })}</small>}
        {leak?.refrigerant != null && leak.refrigerant > 0 && (
          <small data-leak="refrigerant">
            {message("standing-test-as-refrigerant", { loss: figureText("yearly-loss", leak.refrigerant, "table"), refrigerant })}
          </small>
        )}
      </dd>
    </div>
  );
}

/** A hold may rule a loss out sooner than it must show it. */
function HoldToSee({ hold: { holdToSee, leakToSee, longer, duration }, isTight }: { readonly hold: HoldFigures; readonly isTight: boolean }): JSX.Element {
  const lasted = figureText("time", duration, "instrument", timeUnit(duration));
  const wait = longer > 0 ? message("standing-test-longer", { longer: holdText(longer) }) : message("standing-test-long-enough", { duration: lasted });
  return (
    <Row
      mark="holdToSee"
      name={message("standing-test-hold-to-see", { loss: rateText(leakToSee) })}
      figure={holdText(holdToSee)}
      beneath={isTight ? message("standing-test-ruled-out", { duration: lasted }) : wait}
    />
  );
}

function rateText(si: number): string {
  return figureText("pressure-rate", si, "table", rateUnit());
}
