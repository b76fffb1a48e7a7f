// Before the test: the pressure, whose rule it comes from, the stages on the way, and the nitrogen for it.

import type { JSX } from "preact";
import type { NitrogenNeed, PressureStage, PressureTestGuidance, RatingCheck, StandingTestAnswer } from "../../core";
import { message } from "../../locale";
import { figureText, limitText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { SourceList } from "../../parts/sources";
import { VerdictLine, type MarkState } from "../../parts/verdict-line";
import { settings } from "../../settings";
import { gaugeUnit, holdText } from "./ask";

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
        <Row name={message("standing-test-hold")} figure={holdText(hold)} />
        <Row name={message("field-testRule")} figure={message(`choice-${rule}`)} />
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
    margin: figureText("pressure-difference", Math.abs(margin), "table", gaugeUnit()),
    pressure: figureText("gauge-pressure", wantedTestPressure),
  });
}

/** Stages next to each other at which the same is done are one line. A stage is never rounded up. */
function Stages({ guidance: { stages } }: { readonly guidance: PressureTestGuidance }): JSX.Element {
  return (
    <ol class="stages">
      {sameAction(stages).map((same) => (
        <li key={same[0]?.gaugePressure}>
          <b>
            {same.map(({ gaugePressure, action }) => (
              <span key={gaugePressure} data-stage={action}>
                {limitText("gauge-pressure", gaugePressure, "most")}
              </span>
            ))}
          </b>
          <span>
            {same.length > 1 && `${message("standing-test-at-each")} `}
            {message(`choice-${same[0]?.action}`)}
          </span>
        </li>
      ))}
    </ol>
  );
}

function sameAction(stages: readonly PressureStage[]): readonly (readonly PressureStage[])[] {
  return stages.reduce<readonly (readonly PressureStage[])[]>((runs, stage) => {
    const run = runs[runs.length - 1];
    return run?.[0]?.action === stage.action ? [...runs.slice(0, -1), [...run, stage]] : [...runs, [stage]];
  }, []);
}

function NitrogenRows({ need: { mass, freeGas, assumedTemperature } }: { readonly need: NitrogenNeed }): JSX.Element {
  const [massUnit, gasUnit] = settings().system === "metric" ? ["g", "L"] : ["oz", "ft³"];
  return (
    <Row
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
