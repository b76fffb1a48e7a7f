// The air over the indoor coil: its fields, temperature split, heat, and whether there is air enough.

import type { JSX } from "preact";
import type { Capacity, Problem, RunningAnswer } from "../../core";
import { message } from "../../locale";
import { CardFields } from "../../parts/card-fields";
import { figureText, limitText } from "../../parts/figures";
import { Row } from "../../parts/rows";
import { VerdictMark } from "../../parts/verdict-line";
import { airSideFields } from "./ask";
import { CheckRow } from "./check-row";

export function AirPanel({ answer, problems }: {
  readonly answer: RunningAnswer | undefined;
  readonly problems: readonly Problem[];
}): JSX.Element {
  return (
    <section>
      <h2>{message("running-air")}</h2>
      <CardFields fields={airSideFields} problems={problems} />
      <AirRows answer={answer} />
    </section>
  );
}

/** What the air over the coil comes to. */
export function AirRows({ answer }: { readonly answer: RunningAnswer | undefined }): JSX.Element {
  const airflow = answer?.airflow;
  const isHeating = answer?.mode === "heating";
  return (
    <>
      <dl class="rows judged">
        {answer && <CheckRow mark="split" name={message(isHeating ? "running-rise" : "running-split")} check={answer.temperatureSplit} />}
        {airflow && (
          <div class="row" data-verdict={airflow.verdict}>
            <dt>
              <VerdictMark judged={airflow} />
              <span>{message("running-airflow")}</span>
            </dt>
            <dd data-figure="airflow">
              {figureText("volume-flow", airflow.figure)} <small>± {figureText("volume-flow", airflow.uncertainty)}</small>
              <small class="standing">{message("running-airflow-least", { least: limitText("volume-flow", airflow.limit, "least") })}</small>
            </dd>
          </div>
        )}
        {answer?.capacity && <CapacityRows capacity={answer.capacity} isHeating={isHeating} />}
      </dl>
      {answer?.capacity?.takenAsDry === true && <p class="note">{message("running-taken-as-dry")}</p>}
      {answer?.capacity?.ofPlate && <p class="note">{message("running-plate-conditions")}</p>}
    </>
  );
}

function CapacityRows({ capacity, isHeating }: { readonly capacity: Capacity; readonly isHeating: boolean }): JSX.Element {
  const { sensible, latent, total, sensibleHeatRatio, ofPlate } = capacity;
  const heat = (mark: string, found: typeof total): JSX.Element | null =>
    found == null ? null : (
      <Row mark={mark} name={message(`running-${mark}`)} figure={figureText("power", found.figure, "table")} beneath={`± ${figureText("power", found.uncertainty)}`} />
    );
  return (
    <>
      {heat("total", total)}
      {!isHeating && heat("sensible", sensible)}
      {heat("latent", latent)}
      {sensibleHeatRatio != null && <Row mark="sensibleHeatRatio" name={message("running-sensible-heat-ratio")} figure={percent(sensibleHeatRatio)} />}
      {ofPlate && <Row mark="ofPlate" name={message("running-of-plate")} figure={percent(ofPlate.figure)} beneath={`± ${percent(ofPlate.uncertainty)}`} />}
    </>
  );
}

function percent(ratio: number): string {
  return figureText("ratio", ratio, "instrument", "%");
}
