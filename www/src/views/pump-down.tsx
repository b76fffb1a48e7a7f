// Pump-down: the time to each vacuum, what holds the pump back, what a change would save, ice, and
// evacuations with nitrogen between them.

import type { JSX } from "preact";
import { calculate, type PumpDownAnswer } from "../core";
import { ReadingPlot } from "../drawings/reading-plot";
import { message } from "../locale";
import { AirFields, airInput } from "../parts/air-fields";
import { answerOf, Card, problemsOf } from "../parts/card";
import { CardFields, inputOf } from "../parts/card-fields";
import { Cautions } from "../parts/cautions";
import { Disclosure } from "../parts/disclosure";
import { EntryRows } from "../parts/entry-rows";
import { rowsOf } from "../parts/row-list";
import { vacuumText, vacuumUnit, VacuumUnitChoice } from "../parts/vacuum-unit";
import { Working } from "../parts/working";
import { applyStyle } from "../style";
import style from "../styles/pump-down.css";
import { Changes } from "./pump-down/changes";
import { DownFinding } from "./pump-down/down-finding";
import { allFields, breaks, finerFields, hoses, pumpFields, pumpUnit, systemFields, targets, tubes, waterFields } from "./pump-down/fields";
import { HeldBack } from "./pump-down/held-back";
import { NitrogenBreaks } from "./pump-down/nitrogen-breaks";

applyStyle(style);

/** A small split whose lines stood open on a damp day, evacuated on a cold one through a hose with the core in. */
const example = {
  pumpSpeed: "140 L/min",
  ultimatePressure: "40 micron",
  bore1: "9 mm",
  length1: "1.5 m",
  core1: "in",
  tube1: "3/8",
  tubeLength1: "12 m",
  tube2: "5/8",
  tubeLength2: "12 m",
  coilVolume: "1.6 L",
  water: "6 g",
  ambientTemperature: "4 °C",
};

const cautions = ["pump-down-caution-empty", "pump-down-caution-mist", "pump-down-caution-nitrogen", "torque-caution-code"];

/** Fields in the vacuum gauge's unit. */
const vacuumFields = ["ultimatePressure", "startingPressure", "sharePressure", ...[1, 2, 3, 4, 5, 6].map((row) => `target${row}`)];

export function PumpDown(): JSX.Element {
  const reply = calculate("pump-down", {
    ...inputOf<"pump-down">(allFields()),
    ...airInput(),
    hoses: rowsOf(hoses),
    tubes: rowsOf(tubes),
    targets: rowsOf(targets),
    evacuations: rowsOf(breaks),
  });
  const [answer, problems] = [answerOf(reply), problemsOf(reply)];
  const isFiner = (field: string): boolean => /^(targets|evacuations|startingPressure|sharePressure|core[BL])/.test(field);
  return (
    <Card name="pump-down" example={example}>
      <DownFinding answer={answer} problems={problems} />
      <CardFields fields={pumpFields} problems={problems} />
      <EntryRows list={hoses} problems={problems} legend={message("pump-down-hoses")} add={message("pump-down-add-hose")} hint={message("pump-down-hoses-hint")} />
      <CardFields fields={systemFields} problems={problems} />
      <EntryRows list={tubes} problems={problems} legend={message("pump-down-tubes")} add={message("pump-down-add-tube")} />
      <CardFields fields={waterFields()} problems={problems} />
      {answer && <Course answer={answer} />}
      {answer && <HeldBack answer={answer} />}
      {answer && <Changes answer={answer} />}
      {answer && <NitrogenBreaks answer={answer} />}
      <Disclosure name="finer" summary={<span>{message("pump-down-finer")}</span>} mustShow={problems.some(({ field }) => isFiner(field))}>
        <VacuumUnitChoice fields={vacuumFields} />
        <EntryRows list={targets} problems={problems} legend={message("pump-down-targets")} />
        <EntryRows list={breaks} problems={problems} legend={message("pump-down-breaks")} />
        <CardFields fields={finerFields} problems={problems} />
      </Disclosure>
      <Cautions ids={[...noticesOf(answer), ...cautions]} />
      {answer && <Working steps={answer.working} of={message("title-pump-down")} units={{ "absolute-pressure": vacuumUnit(), "volume-flow": pumpUnit(), mass: "g", ratio: "ppm" }} />}
      <AirFields problems={problems} />
    </Card>
  );
}

/** The pressure over time, with the milestones on it. */
function Course({ answer: { curve, milestones, goal } }: { readonly answer: PumpDownAnswer }): JSX.Element | null {
  if (goal === undefined || goal === null) return null;
  const reached = milestones.flatMap(({ time, pressure }) => (time == null || time === 0 ? [] : [{ time, value: pressure }]));
  return (
    <section>
      <h2>{message("pump-down-course")}</h2>
      <ReadingPlot
        quantity="absolute-pressure"
        unit={vacuumUnit()}
        scale="logarithmic"
        readings={reached}
        expected={{ curve: curve.map(({ time, pressure }) => ({ time, value: pressure })), label: message("pump-down-curve") }}
        labels={{
          alternative: message("pump-down-curve-alternative", { pressure: vacuumText(goal) }),
          reading: message("pump-down-milestone"),
          leftOut: "",
        }}
      />
    </section>
  );
}

/** What limits the figures. */
function noticesOf(answer: PumpDownAnswer | undefined): readonly string[] {
  return answer?.notices.map((notice) => `choice-${notice}`) ?? [];
}
