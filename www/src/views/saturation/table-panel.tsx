// A table around the reading, to print and put in the bag: on paper it stands alone.

import type { JSX } from "preact";
import { show, type SaturationAnswer, type SaturationPoint } from "../../core";
import { message } from "../../locale";
import { airText } from "../../parts/air-fields";
import { ChoiceRow } from "../../parts/choice-row";
import { textOf, write } from "../../parts/fields";
import { SourceList } from "../../parts/sources";
import { unitOf } from "../../unit-choice";
import { askTable } from "./ask";
import { uncertaintyText } from "./head-figures";

const offered: Readonly<Record<string, readonly string[]>> = {
  K: ["0.5 K", "1 K", "2 K", "5 K"],
  "°F": ["1 °F", "2 °F", "5 °F", "10 °F"],
  rows: ["11", "21", "41"],
};

/** Drawn where there is a reading: whatever is wrong then is wrong with step or rows. */
export function TablePanel(): JSX.Element {
  const reply = askTable();
  const problems = "problems" in reply ? reply.problems : [];
  const choice = (name: string, texts: readonly string[]): JSX.Element => (
    <ChoiceRow
      name={name}
      legend={message(`field-${name}`)}
      beside
      problems={problems}
      chosen={textOf(name)}
      onChoose={(text) => write(name, text)}
      choices={texts.map((text) => ({ word: text, label: text }))}
    />
  );
  return (
    <section class="printed">
      <div class="unprinted narrow-choices">
        <h2>{message("table-heading")}</h2>
        {choice("tableStep", offered[unitOf("temperature-difference")] ?? [])}
        {choice("tableRows", offered.rows ?? [])}
      </div>
      {"answer" in reply && <Table answer={reply.answer} />}
      <button class="print unprinted" onClick={() => print()}>
        {message("table-print")}
      </button>
    </section>
  );
}

function Table({ answer }: { readonly answer: SaturationAnswer }): JSX.Element {
  const { refrigerant, table, facts, dewTemperature, bubbleTemperature } = answer;
  const isPure = facts.composition.figure.length === 1;
  const [temperature, pressure] = [unitOf("temperature"), unitOf("gauge-pressure")];
  const nearest = nearestRow(table, (bubbleTemperature + dewTemperature) / 2);
  const heads = isPure ? ["table-gauge"] : ["table-bubble", "table-dew"];
  return (
    <>
      <div class="table-frame" role="region" aria-label={message("table-heading")} tabIndex={0}>
        <table class="saturation-table">
          <caption>
            {message("table-caption", { refrigerant })}
            <small class="sentence">{airOfTable(answer)}</small>
            <small>{uncertaintyText(answer)}</small>
          </caption>
          <thead>
            <tr>
              <th scope="col">
                {message("field-temperature")} <small>{temperature}</small>
              </th>
              {heads.map((id) => (
                <th scope="col" key={id}>
                  {message(id)} <small>{message("table-gauge-unit", { unit: pressure })}</small>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.map((row) => (
              <tr key={row.dewTemperature} class={row === nearest ? "open" : undefined} aria-current={row === nearest ? "true" : undefined}>
                <th scope="row">{show("temperature", row.dewTemperature, temperature).number}</th>
                {!isPure && <td>{show("gauge-pressure", row.bubbleGaugePressure, pressure, "table").number}</td>}
                <td>{show("gauge-pressure", row.dewGaugePressure, pressure, "table").number}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <SourceList ids={[...answer.sources, answer.uncertainty.source]} />
    </>
  );
}

/** On paper the altitude must be said, since no field stands beside it. */
function airOfTable({ ambient }: SaturationAnswer): string {
  const air = airText(ambient);
  return ambient.basis === "altitude" ? message("table-altitude", { altitude: textOf("altitude"), air }) : air;
}

function nearestRow(table: readonly SaturationPoint[], temperature: number): SaturationPoint | undefined {
  const off = (row: SaturationPoint): number => Math.abs(row.dewTemperature - temperature);
  const [first, ...others] = table;
  return first && others.reduce((best, row) => (off(row) < off(best) ? row : best), first);
}
