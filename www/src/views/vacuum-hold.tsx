// The vacuum hold: what readings after the pump was valved off say of the system, and whether it passes by a rule.

import type { JSX } from "preact";
import { message } from "../locale";
import { Card } from "../parts/card";
import { CardFields } from "../parts/card-fields";
import { Cautions } from "../parts/cautions";
import { Disclosure } from "../parts/disclosure";
import { EntryRows } from "../parts/entry-rows";
import { vacuumUnit, VacuumUnitChoice } from "../parts/vacuum-unit";
import { Working } from "../parts/working";
import { applyStyle } from "../style";
import style from "../styles/vacuum-hold.css";
import { ask, concern, example, gaugeFields, placeFields, rateUnit, readings, stepUnit, vacuumFields, volumeFields } from "./vacuum-hold/ask";
import { Causes } from "./vacuum-hold/causes";
import { FoundRows } from "./vacuum-hold/found-rows";
import { HoldCourse } from "./vacuum-hold/hold-course";
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
      {hold && <HoldCourse answer={hold} />}
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
