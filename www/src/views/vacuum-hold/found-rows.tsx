// The figures of the hold: what is to be expected, the level as water would hold it, the leak, the gauge.

import type { JSX } from "preact";
import type { Level, VacuumHoldAnswer } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { differenceText, levelText, rateText, timeText } from "./texts";

export function ExpectedRows({ answer: { expected } }: { readonly answer: VacuumHoldAnswer }): JSX.Element | null {
  if (expected.length === 0) return null;
  return (
    <>
      <h3>{message("vacuum-hold-expected")}</h3>
      <Rows>
        {expected.map(({ time, pressure, uncertainty }) => (
          <Row key={time} mark={`expected-${time}`} name={message("vacuum-hold-after", { time: timeText(time) })} figure={levelText(pressure)} beneath={`± ${differenceText(uncertainty)}`} />
        ))}
      </Rows>
    </>
  );
}

export function FoundRows({ answer }: { readonly answer: VacuumHoldAnswer }): JSX.Element {
  const { verdict, plateau, leak, latest, saturationPressure, ambientTemperature, ambientAssumed, dryPressure, gaugeNoise, gaugeResolution } = answer;
  const ambient = figureText("temperature", ambientTemperature);
  return (
    <section>
      <h2>{message("vacuum-hold-figures")}</h2>
      <Rows>
        {plateau && <Row mark="plateau-level" name={message(verdict === "leak" || verdict === "cannot-tell" ? "vacuum-hold-if-levels-off" : "vacuum-hold-levels-off")} figure={levelText(plateau.pressure)} beneath={`± ${differenceText(plateau.uncertainty)}`} />}
        {plateau && waterRow("plateau-water", "vacuum-hold-plateau-water", plateau)}
        {waterRow("latest-water", "vacuum-hold-latest-water", latest)}
        {leak && <Row mark="leak-rate" name={message(verdict === "leak" ? "vacuum-hold-rises" : "vacuum-hold-if-rises")} figure={rateText(leak.rate)} beneath={`± ${rateText(leak.uncertainty)}`} />}
        {leak?.gas != null && <Row mark="leak-gas" name={message("step-leak-gas")} figure={figureText("leak-rate", leak.gas, "table")} />}
        <Row
          mark="saturation"
          name={message("vacuum-hold-saturation", { temperature: ambient })}
          figure={levelText(saturationPressure)}
          beneath={ambientAssumed ? message("vacuum-hold-assumed") : undefined}
        />
        <Row mark="dry" name={message("field-dryPressure")} figure={levelText(dryPressure)} />
        {gaugeNoise != null && <Row mark="noise" name={message("field-gaugeNoise")} figure={figureText("ratio", gaugeNoise, "table", "%")} />}
        <Row mark="step" name={message("field-gaugeResolution")} figure={gaugeResolution === 0 ? message("vacuum-hold-no-step") : differenceText(gaugeResolution)} />
      </Rows>
    </section>
  );
}

/** The temperature at which water would hold a level. */
function waterRow(mark: string, name: string, { waterTemperature, surface }: Level): JSX.Element | null {
  if (waterTemperature == null) return null;
  return <Row mark={mark} name={message(name)} figure={figureText("temperature", waterTemperature, "table")} beneath={message(`vacuum-hold-as-${surface}`)} />;
}
