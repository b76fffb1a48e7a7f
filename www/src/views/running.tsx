// The run check: superheat, subcooling and the air against what they should be, and what a pattern usually means.

import type { JSX } from "preact";
import { message } from "../locale";
import { AirFields } from "../parts/air-fields";
import { Card } from "../parts/card";
import { CardFields } from "../parts/card-fields";
import { Disclosure } from "../parts/disclosure";
import { Working } from "../parts/working";
import "./running/style";
import { AirPanel } from "./running/air-panel";
import { airflowFields, ask, circuitFields, concern, otherFields, shownAt, systemFields } from "./running/ask";
import { Causes } from "./running/causes";
import { CircuitRows } from "./running/circuit-rows";
import { RunningFinding } from "./running/running-finding";

/** A small office on a warm day: little superheat is left to give, little liquid stands in the condenser. */
const example = {
  refrigerant: "R-410A",
  meteringDevice: "fixed-orifice",
  suctionGaugePressure: "6.7 bar",
  suctionLineTemperature: "13 °C",
  liquidGaugePressure: "21.8 bar",
  liquidLineTemperature: "36.5 °C",
  plateSubcooling: "6 K",
  outdoorDryBulb: "31 °C",
  runningTime: "25 min",
  returnDryBulb: "24 °C",
  returnWetBulb: "17.2 °C",
  supplyDryBulb: "16 °C",
  supplyWetBulb: "13.5 °C",
  targetSplit: "11 K",
  airflow: "1150 m³/h",
  plateCapacity: "6.8 kW",
};

export function Running(): JSX.Element {
  const asked = ask();
  const { circuit, air, problems } = asked;
  const answer = circuit ?? air;
  return (
    <Card name="running" example={example} fromKit={["refrigerant", "altitude"]}>
      <RunningFinding asked={asked} shownAt={shownAt} />
      {answer && (
        <Causes pattern={answer.pattern ?? undefined}>
          {(answer.pattern != null || concern(airflowFields, problems)) && <CardFields fields={airflowFields} problems={problems} />}
        </Causes>
      )}
      <h2>{message("running-circuit")}</h2>
      <CardFields fields={systemFields} problems={problems} />
      <CardFields fields={circuitFields} problems={problems} />
      {circuit && <CircuitRows answer={circuit} />}
      <AirPanel answer={air} problems={problems} />
      <Working steps={answer?.working ?? []} of={message("title-running")} />
      <Disclosure name="running-others" summary={<span>{message("running-others")}</span>} mustShow={concern(otherFields, problems)}>
        <CardFields fields={otherFields} problems={problems} />
        <p class="note">{message("running-others-note")}</p>
      </Disclosure>
      <AirFields problems={problems} />
    </Card>
  );
}
