// Where water boils or ice turns to vapour under a vacuum: what a vacuum gauge says about moisture.

import type { JSX } from "preact";
import { calculate, type WaterSaturationAnswer } from "../core";
import { message } from "../locale";
import { Chips } from "../parts/chips";
import { EntryField } from "../parts/entry-field";
import { entryOf, textOf } from "../parts/fields";
import { figureText } from "../parts/figures";
import { Row, Rows } from "../parts/rows";
import { vacuumText, vacuumUnit, VacuumUnitChoice, type VacuumUnit } from "../parts/vacuum-unit";
import { Working } from "../parts/working";
import { otherUnitOf } from "../unit-choice";

/** Readings that are worked towards. */
const usualReadings = {
  micron: ["300 micron", "500 micron", "1000 micron"],
  Pa: ["40 Pa", "67 Pa", "270 Pa"],
  mbar: ["0.4 mbar", "0.67 mbar", "2.7 mbar"],
  torr: ["0.3 torr", "0.5 torr", "1 torr"],
} as const satisfies Record<VacuumUnit, readonly string[]>;

export function Water(): JSX.Element {
  const unit = vacuumUnit();
  const reply = calculate("water-saturation", {
    absolutePressure: entryOf("absolutePressure", "absolute-pressure", unit),
    temperature: entryOf("temperature", "temperature"),
  });
  const answer = "answer" in reply ? reply.answer : undefined;
  const problems = "problems" in reply ? reply.problems.filter((problem) => !(problem.code === "wrong-count" && problem.found === 0)) : [];
  return (
    <main class="water">
      <section class="head">
        <h1>{message("water-heading")}</h1>
        <EntryField name="absolutePressure" label="water-pressure" problems={problems} unit={unit} instead={["temperature"]} />
        <Chips field="absolutePressure" label={message("water-usual")} texts={usualReadings[unit]} isInOneLine />
        <EntryField name="temperature" problems={problems} switches="temperature" signed instead={["absolutePressure"]} />
        <Head answer={answer} unit={unit} isMistaken={problems.length > 0} />
      </section>
      {answer && <States answer={answer} unit={unit} />}
      {answer && <Working steps={answer.working} of={message("title-water")} units={{ "absolute-pressure": unit }} />}
      <VacuumUnitChoice fields={["absolutePressure"]} />
      <p class="note">{message("water-note")}</p>
    </main>
  );
}

function isByTemperature(): boolean {
  return textOf("absolutePressure").trim() === "";
}

function Head({ answer, unit, isMistaken }: {
  readonly answer: WaterSaturationAnswer | undefined;
  readonly unit: VacuumUnit;
  readonly isMistaken: boolean;
}): JSX.Element {
  if (answer === undefined) {
    return (
      <>
        <p class="head-figure withheld">—</p>
        <p class="beneath">{message(isMistaken ? "saturation-withheld" : "water-empty")}</p>
      </>
    );
  }
  const byTemperature = isByTemperature();
  const text = byTemperature ? vacuumText(answer.absolutePressure, unit) : figureText("temperature", answer.temperature);
  return (
    <div class="both-figures">
      <div class="both">
        <h2>{message(`water-${answer.surface}${byTemperature ? "-pressure" : ""}`)}</h2>
        <p data-figure="water">
          <b class="head-figure" style={{ "--characters": text.length }}>
            {text}
          </b>
        </p>
        {!byTemperature && <p class="counts">{figureText("temperature", answer.temperature, "instrument", otherUnitOf("temperature"))}</p>}
      </div>
    </div>
  );
}

/** The other state, which the same gauge may mean: ice that has not formed, liquid that is not stable. */
function States({ answer, unit }: { readonly answer: WaterSaturationAnswer; readonly unit: VacuumUnit }): JSX.Element | null {
  const { surface, overLiquid } = answer;
  if (surface !== "ice" || overLiquid === undefined || overLiquid === null) return null;
  const figure = isByTemperature() ? vacuumText(overLiquid.pressure, unit) : figureText("temperature", overLiquid.temperature);
  return (
    <Rows>
      <Row mark="supercooled" name={message("water-supercooled")} figure={figure} />
    </Rows>
  );
}
