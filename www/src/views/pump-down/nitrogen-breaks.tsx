// Evacuations one after the other, broken with nitrogen: time of each, and what is left of the first gas.

import type { JSX } from "preact";
import type { PumpDownAnswer } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { vacuumText } from "../../parts/vacuum-unit";
import { partText, timeText } from "./fields";

export function NitrogenBreaks({ answer: { evacuations, evacuationsTime } }: { readonly answer: PumpDownAnswer }): JSX.Element {
  return (
    <section>
      <h2>{message("pump-down-triple", { count: evacuations.length })}</h2>
      <Rows>
        {evacuations.map(({ lowPressure, breakPressure, time, residual }, place) => {
          const isLast = place + 1 === evacuations.length;
          const left = message(isLast ? "pump-down-left-last" : "pump-down-left", {
            part: partText(residual),
            pressure: figureText("absolute-pressure", breakPressure, "table"),
          });
          return (
            <Row
              key={place}
              mark={`evacuation-${place + 1}`}
              name={message("pump-down-evacuation", { number: place + 1, pressure: vacuumText(lowPressure) })}
              figure={time == null ? message("pump-down-never") : timeText(time)}
              beneath={left}
            />
          );
        })}
        {evacuationsTime != null && <Row mark="evacuations-time" name={message("pump-down-together")} figure={timeText(evacuationsTime)} />}
      </Rows>
    </section>
  );
}
