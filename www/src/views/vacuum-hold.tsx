// The vacuum hold: what readings after the pump was valved off say of the system, and whether it passes by a rule.

import type { JSX } from "preact";
import type { VacuumHoldAnswer } from "../core";
import { ReadingPlot } from "../drawings/reading-plot";
import { message } from "../locale";
import { Card } from "../parts/card";
import { CardFields } from "../parts/card-fields";
import { Cautions } from "../parts/cautions";
import { Disclosure } from "../parts/disclosure";
import { EntryRows } from "../parts/entry-rows";
import { vacuumText, vacuumUnit, VacuumUnitChoice } from "../parts/vacuum-unit";
import { Working } from "../parts/working";
import { applyStyle } from "../style";
import style from "../styles/vacuum-hold.css";
import { ask, concern, example, gaugeFields, placeFields, rateUnit, readings, stepUnit, vacuumFields, volumeFields } from "./vacuum-hold/ask";
import { Causes } from "./vacuum-hold/causes";
import { ExpectedRows, FoundRows } from "./vacuum-hold/found-rows";
import { HoldFinding } from "./vacuum-hold/hold-finding";
import { RulePanel } from "./vacuum-hold/rule-panel";

applyStyle(style);

const cautions = ["vacuum-hold-caution-ice", "vacuum-hold-caution-hoses", "pump-down-caution-nitrogen", "torque-caution-code"];

export function VacuumHold(): JSX.Element {
  const asked = ask();
  const { hold, ruled, problems } = asked;
  return (
    <Card name="vacuum-hold" example={example}>
      <HoldFinding asked={asked} />
      {hold && <Course answer={hold} />}
      <EntryRows list={readings} problems={problems} legend={message("vacuum-hold-readings")} add={message("vacuum-hold-add")} hint={message("vacuum-hold-readings-hint")} />
      <VacuumUnitChoice fields={vacuumFields} />
      <CardFields fields={[...placeFields, ...volumeFields]} problems={problems} />
      <Disclosure name="gauge" summary={<span>{message("vacuum-hold-gauge")}</span>} mustShow={concern(gaugeFields, problems)}>
        <CardFields fields={gaugeFields} problems={problems} />
        <p class="note">{message("vacuum-hold-gauge-note")}</p>
      </Disclosure>
      {hold?.likelihoods && <Causes answer={hold} likelihoods={hold.likelihoods} />}
      {hold && <FoundRows answer={hold} />}
      <RulePanel pass={ruled?.pass} problems={problems} />
      <Cautions ids={cautions} />
      <Working
        steps={hold?.working ?? []}
        of={message("title-vacuum-hold")}
        units={{ "absolute-pressure": vacuumUnit(), "pressure-difference": stepUnit(), "pressure-rate": rateUnit(), time: "min" }}
      />
    </Card>
  );
}

/** The readings, the curve through them with its band, and where it leads. */
function Course({ answer }: { readonly answer: VacuumHoldAnswer }): JSX.Element {
  const { plotted, curve, dryPressure, latest, verdict } = answer;
  return (
    <section>
      <h2>{message("vacuum-hold-course")}</h2>
      <ReadingPlot
        quantity="absolute-pressure"
        unit={vacuumUnit()}
        scale="linear"
        readings={plotted.map(({ time, pressure }) => ({ time, value: pressure }))}
        expected={
          curve.length > 0
            ? {
                curve: curve.map(({ time, pressure, uncertainty }) => ({ time, value: pressure, low: Math.max(pressure - uncertainty, 0), high: pressure + uncertainty })),
                label: message("vacuum-hold-curve"),
              }
            : undefined
        }
        limit={{ value: dryPressure, label: message("vacuum-hold-dry-line") }}
        labels={{
          alternative: message("vacuum-hold-course-alternative", {
            count: plotted.length,
            pressure: vacuumText(latest.pressure),
            verdict: message(`vacuum-hold-${verdict}`),
          }),
          reading: message("vacuum-hold-reading"),
          leftOut: "",
        }}
      />
      <ExpectedRows answer={answer} />
    </section>
  );
}
