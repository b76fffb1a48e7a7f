// Bubble and dew at arm's length, the glide between them as on a dimension line, and how sure it is.

import type { JSX } from "preact";
import { show, type QuantityKind, type SaturationAnswer } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { otherUnitOf, unitOf } from "../../unit-choice";
import { isByTemperature } from "./ask";

interface Pair {
  readonly quantity: QuantityKind;
  readonly bubble: number;
  readonly dew: number;
}

/** The two figures that were not entered. */
function pairOf(answer: SaturationAnswer): Pair {
  return isByTemperature()
    ? { quantity: "gauge-pressure", bubble: answer.bubbleGaugePressure, dew: answer.dewGaugePressure }
    : { quantity: "temperature", bubble: answer.bubbleTemperature, dew: answer.dewTemperature };
}

export function HeadFigures({ answer, isMistaken }: {
  readonly answer: SaturationAnswer | undefined;
  readonly isMistaken: boolean;
}): JSX.Element {
  if (answer === undefined) {
    return (
      <>
        <p class="head-figure withheld">—</p>
        <p class="beneath">{message(isMistaken ? "saturation-withheld" : "saturation-empty")}</p>
      </>
    );
  }
  const pair = pairOf(answer);
  const isPure = answer.facts.composition.figure.length === 1;
  return (
    <>
      <div class="both-figures">
        {isPure ? (
          <Figure name="both" pair={pair} si={pair.dew} />
        ) : (
          <>
            <Figure name="bubble" pair={pair} si={pair.bubble} />
            <Figure name="dew" pair={pair} si={pair.dew} />
          </>
        )}
      </div>
      {!isPure && <Glide answer={answer} />}
      <p class="assumes" data-figure="uncertainty">
        {uncertaintyText(answer)}
      </p>
    </>
  );
}

/** The figure, and beneath it the same in the other system. */
function Figure({ name, pair: { quantity }, si }: {
  readonly name: "bubble" | "dew" | "both";
  readonly pair: Pair;
  readonly si: number;
}): JSX.Element {
  const { number, unit } = show(quantity, si, unitOf(quantity));
  return (
    <div class={name}>
      <h2>{message(`saturation-${name}`)}</h2>
      <p data-figure={name}>
        <b class="head-figure" style={{ "--characters": number.length }}>
          {number}
        </b>{" "}
        {unit}
      </p>
      <p class="counts">
        {figureText(quantity, si, "instrument", otherUnitOf(quantity))}
        <small>{message(`saturation-${name}-counts`)}</small>
      </p>
    </div>
  );
}

function Glide({ answer }: { readonly answer: SaturationAnswer }): JSX.Element | null {
  const { glide } = answer;
  if (glide === undefined || glide === null) return null;
  const id = isByTemperature() ? "saturation-glide-at-dew" : "saturation-glide";
  return (
    <p class="glide">
      <b data-figure="glide">{message(id, { glide: figureText("temperature-difference", glide) })}</b>
    </p>
  );
}

/** How far bubble and dew may be from the truth. */
export function uncertaintyText({ uncertainty: { figure, source } }: SaturationAnswer): string {
  return message(source === "mixture-model" ? "saturation-uncertainty-mixture" : "saturation-uncertainty", {
    temperature: figureText("temperature-difference", figure.temperature, "significant"),
    pressure: figureText("ratio", figure.pressure, "significant"),
  });
}
