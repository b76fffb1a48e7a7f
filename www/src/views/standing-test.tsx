// The nitrogen pressure hold: how to carry it out, and whether what the gauge shows is weather or a leak.

import type { JSX } from "preact";
import type { StandingTestAnswer } from "../core";
import { message } from "../locale";
import { AirFields } from "../parts/air-fields";
import { Card } from "../parts/card";
import { CardFields } from "../parts/card-fields";
import { Cautions } from "../parts/cautions";
import { Disclosure } from "../parts/disclosure";
import { EntryRows } from "../parts/entry-rows";
import { textOf } from "../parts/fields";
import { figureText, limitText } from "../parts/figures";
import { rowField, sentRows, type AnyRowList } from "../parts/row-list";
import { Working } from "../parts/working";
import { applyStyle } from "../style";
import style from "../styles/standing-test.css";
import { airField, ask, gaugeUnit, holdText, instrumentFields, isWrong, lossFields, nitrogenFields, readings, ruleFields, workingUnits } from "./standing-test/ask";
import { GuidancePanel } from "./standing-test/guidance-panel";
import { HoldCourse } from "./standing-test/hold-course";
import { HoldFinding } from "./standing-test/hold-finding";
import { LossRows } from "./standing-test/loss-rows";

applyStyle(style);

/** New lines to a bakery's store room, filled on a mild evening and read until a cold morning; one figure is misread. */
const example = {
  designPressure: "40 bar",
  lowestRating: "46 bar",
  volume: "3.2 L",
  cylinderVolume: "5 L",
  cylinderPressure: "120 bar",
  refrigerant: "R-32",
  gaugeResolution: "0.05 bar",
  gaugeUncertainty: "0.3 bar",
  thermometerUncertainty: "0.3 K",
  ...Object.fromEntries(
    [
      ["0 h", "43.9 bar", "22.4 °C"],
      ["1 h", "43.85 bar", "21.9 °C"],
      ["2.5 h", "43.5 bar", "20.3 °C"],
      ["4.5 h", "43.1 bar", "17.6 °C"],
      ["6 h", "41.8 bar", "15.8 °C"],
      ["8 h", "42.5 bar", "13.9 °C"],
      ["11 h", "42 bar", "11.2 °C"],
      ["13.5 h", "41.8 bar", "9.8 °C"],
      ["15 h", "41.85 bar", "10.4 °C"],
    ].flatMap(([time = "", pressure = "", temperature = ""], place) => [
      [`time${place + 1}`, time],
      [`gaugePressure${place + 1}`, pressure],
      [`temperature${place + 1}`, temperature],
    ]),
  ),
};

const cautions = [
  "standing-test-caution-regulator",
  "standing-test-caution-stages",
  "standing-test-caution-eyes",
  "standing-test-caution-release",
  "standing-test-caution-plate",
  "torque-caution-code",
];

export function StandingTest(): JSX.Element {
  const asked = ask();
  const { before, after, problems } = asked;
  const preparing = [...ruleFields(), ...nitrogenFields];
  return (
    <Card name="standing-test" example={example} fromKit={["refrigerant", "altitude"]}>
      <HoldFinding asked={asked} />
      <Disclosure name="prepare" summary={<h2><span>{prepareText(before)}</span></h2>} mustShow={sentRows(readings()).length === 0 || isWrong(preparing, problems)}>
        <CardFields fields={ruleFields()} problems={problems} />
        <CardFields fields={nitrogenFields} problems={problems} />
        {before && <GuidancePanel answer={before} />}
      </Disclosure>
      <EntryRows
        list={readings()}
        problems={problems}
        legend={message("standing-test-readings")}
        add={message("standing-test-add")}
        hint={message("standing-test-readings-hint")}
      />
      <CardFields fields={[airField()]} problems={problems} />
      {after && <HoldCourse answer={after} rowsText={rowsText} />}
      {after && <LossRows answer={after} refrigerant={textOf("refrigerant")} />}
      <CardFields fields={lossFields} problems={problems} />
      <Disclosure name="instruments" summary={<span>{instrumentsText(after)}</span>} mustShow={isWrong(instrumentFields, problems)}>
        <CardFields fields={instrumentFields} problems={problems} />
        <p class="note">{message("standing-test-instruments-note")}</p>
      </Disclosure>
      <Cautions ids={cautions} />
      <Working steps={(after ?? before)?.working ?? []} of={message("title-standing-test")} units={workingUnits()} />
      <AirFields problems={problems} />
    </Card>
  );
}

/** Which rows, as they are numbered above, and what was typed into a single one. */
function rowsText(first: number, last: number): string {
  const list: AnyRowList = readings();
  const rows = sentRows(list);
  const [from, to] = [rows[first] ?? first + 1, rows[last] ?? last + 1];
  if (from !== to) return message("standing-test-rows", { from, to });
  const [time = "", pressure = ""] = list.columns.map((column) => textOf(rowField(column, from)));
  return message("standing-test-row", { row: from, time, pressure });
}

function prepareText(answer: StandingTestAnswer | undefined): string {
  const guidance = answer?.guidance;
  if (!guidance) return message("standing-test-prepare");
  return message("standing-test-prepared", { pressure: limitText("gauge-pressure", guidance.testPressure, "most"), hold: holdText(guidance.hold) });
}

/** What the verdict goes by, entered or usual. */
function instrumentsText(answer: StandingTestAnswer | undefined): string {
  const instruments = answer?.instruments;
  if (!instruments) return message("standing-test-instruments");
  const difference = (si: number): string => figureText("pressure-difference", si, "table", gaugeUnit());
  return message("standing-test-instruments-by", {
    resolution: difference(instruments.gaugeResolution),
    gauge: difference(instruments.gaugeUncertainty),
    thermometer: figureText("temperature-difference", instruments.thermometerUncertainty, "table"),
  });
}
