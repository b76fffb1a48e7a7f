// The pressure once both valves are open and the unit has stood: what the refrigerant has in this air, and what the gauge shows.

import type { JSX } from "preact";
import type { AfterRelease as Answer } from "../../../core";
import { JobFields } from "../../../job/job-fields";
import { useJob } from "../../../job/job-context";
import { message } from "../../../locale";
import type { AnyField } from "../../../parts/card-fields";
import { bandText, figureText } from "../../../parts/figures";
import { Finding, type FoundFigure, type FoundVerdict } from "../../../parts/finding";
import { unitOf } from "../../../unit-choice";

const fields: readonly AnyField[] = [
  { name: "ambientTemperature", label: "release-ambient", quantity: "temperature", signed: true },
  { name: "gaugePressure", label: "release-gauge", quantity: "gauge-pressure" },
];

export function AfterRelease(): JSX.Element {
  const { assessment, problems } = useJob();
  const answer = assessment.afterRelease ?? undefined;
  return (
    <section class="after-release">
      <h2>{message("release-after")}</h2>
      <Finding
        figures={answer ? figuresOf(answer) : []}
        verdict={answer && verdictOf(answer)}
        sentence={answer && sentenceOf(answer)}
        problems={problems}
        empty={message("release-after-empty")}
      />
      <JobFields at={["release"]} fields={fields} />
    </section>
  );
}

function figuresOf({ expected, pressure }: Answer): readonly FoundFigure[] {
  if (pressure != null) return [{ mark: "afterRelease", name: message("release-reads"), quantity: "gauge-pressure", si: pressure.figure }];
  return [
    { mark: "expectedLow", name: message("release-from"), quantity: "gauge-pressure", si: expected.low },
    { mark: "expectedHigh", name: message("release-to"), quantity: "gauge-pressure", si: expected.high },
  ];
}

function verdictOf({ expected, pressure }: Answer): FoundVerdict {
  if (pressure == null) return { state: "open", word: message("release-not-read") };
  return { state: pressure.verdict, word: message(`verdict-${pressure.verdict}`), judged: pressure, limits: expected, quantity: "pressure-difference", unit: unitOf("gauge-pressure") };
}

/** What the gauge should show, and what a reading outside that usually means. */
function sentenceOf({ ambientTemperature, expected, pressure }: Answer): string {
  const should = message("release-expected", {
    band: bandText("gauge-pressure", expected),
    temperature: figureText("temperature", ambientTemperature),
  });
  if (pressure?.verdict !== "out-of-band") return should;
  return `${should} ${message(pressure.limit === expected.low ? "release-too-low" : "release-too-high")}`;
}
