// Before the test: the pressure, whose rule it comes from, the stages on the way, and the nitrogen for it.

import type { JSX } from "preact";
import type { NitrogenNeed, PressureTestGuidance, RatingCheck, StandingTestAnswer } from "../../core";
import { message } from "../../locale";
import { figureText, limitText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { SourceList } from "../../parts/sources";
import { VerdictLine, type MarkState } from "../../parts/verdict-line";
import { settings } from "../../settings";
import { timeText } from "../pump-down/fields";
import { gaugeUnit } from "./ask";

const states: Readonly<Record<RatingCheck, MarkState>> = { "within-rating": "in-band", "above-rating": "out-of-band", "rating-open": "open" };

export function GuidancePanel({ answer: { guidance, nitrogen } }: { readonly answer: StandingTestAnswer }): JSX.Element | null {
  if (!guidance) return null;
  const { rule, rating, hold, source, stepsSource } = guidance;
  return (
    <>
      <VerdictLine state={states[rating]} words={message(`choice-${rating}`)}>
        {guidance.ratingMargin != null && <span class="margin">{ratingText(guidance, guidance.ratingMargin)}</span>}
      </VerdictLine>
      <h3>{message("standing-test-stages")}</h3>
      <Stages guidance={guidance} />
      <Rows>
        <Row mark="hold" name={message("standing-test-hold")} figure={timeText(hold)} />
        <Row mark="rule" name={message("field-testRule")} figure={message(`choice-${rule}`)} />
        {nitrogen && <NitrogenRows need={nitrogen} />}
      </Rows>
      {nitrogen?.cylinder && <CylinderVerdict cylinder={nitrogen.cylinder} />}
      {!nitrogen && <p class="note">{message("standing-test-nitrogen-wants")}</p>}
      <SourceList ids={[...new Set([source, stepsSource])]} />
    </>
  );
}

function ratingText({ wantedTestPressure }: PressureTestGuidance, margin: number): string {
  return message(margin < 0 ? "standing-test-rating-below" : "standing-test-rating-above", {
    margin: difference(Math.abs(margin)),
    pressure: figureText("gauge-pressure", wantedTestPressure, "table"),
  });
}

function Stages({ guidance: { stages } }: { readonly guidance: PressureTestGuidance }): JSX.Element {
  return (
    <ol class="stages">
      {stages.map(({ gaugePressure, action }) => (
        <li key={gaugePressure} data-stage={action}>
          <b>{limitText("gauge-pressure", gaugePressure, "most")}</b> <span>{message(`choice-${action}`)}</span>
        </li>
      ))}
    </ol>
  );
}

function NitrogenRows({ need: { mass, freeGas, assumedTemperature } }: { readonly need: NitrogenNeed }): JSX.Element {
  const [massUnit, gasUnit] = settings().system === "metric" ? ["g", "L"] : ["oz", "ft³"];
  return (
    <Row
      mark="nitrogen"
      name={message("standing-test-nitrogen")}
      figure={figureText("mass", mass, "table", massUnit)}
      beneath={message("standing-test-free-gas", {
        volume: figureText("volume", freeGas, "instrument", gasUnit),
        temperature: figureText("temperature", assumedTemperature, "instrument"),
      })}
    />
  );
}

/** What the cylinder is left with: below the test pressure it cannot fill. */
function CylinderVerdict({ cylinder }: { readonly cylinder: NonNullable<NitrogenNeed["cylinder"]> }): JSX.Element {
  return (
    <div data-cylinder>
      <VerdictLine judged={cylinder} words={message(`standing-test-cylinder-${cylinder.verdict}`)}>
        <span class="margin">
          {message("standing-test-cylinder-left", {
            pressure: figureText("gauge-pressure", cylinder.figure),
            uncertainty: figureText("pressure-difference", cylinder.uncertainty, "instrument", gaugeUnit()),
            test: figureText("gauge-pressure", cylinder.limit),
          })}
        </span>
      </VerdictLine>
    </div>
  );
}

function difference(si: number): string {
  return figureText("pressure-difference", si, "table", gaugeUnit());
}
