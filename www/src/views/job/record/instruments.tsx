// The instruments: what is written on them, how far they may be off, when they were calibrated.

import type { JSX } from "preact";
import { useJob } from "../../../job/job-context";
import { textAt } from "../../../job/job-path";
import { dayText } from "../../../job/moment";
import { message } from "../../../locale";
import type { TreeObject } from "../../../store/jobs";

const instruments = ["gauge", "thermometer", "vacuumGauge", "scale", "wrench", "caliper"] as const;
/** What may say how good one is. */
const qualities = ["resolution", "uncertainty", "wrenchRange", "wrenchAccuracy", "adapterLength"] as const;

export function Instruments(): JSX.Element | null {
  const { document } = useJob();
  const used = instruments.filter((name) => textOf(document, name) !== "");
  if (used.length === 0) return null;
  return (
    <section class="record-instruments">
      <h3>{message("field-instruments")}</h3>
      <dl>
        {used.map((name) => (
          <div key={name}>
            <dt>{message(`field-${name}`)}</dt>
            <dd>{textOf(document, name)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function textOf(document: TreeObject, instrument: string): string {
  const found = (name: string): string => textAt(document, "instruments", instrument, name);
  const calibrated = found("calibrated");
  const known = [found("name"), ...qualities.map((name) => (found(name) === "" ? "" : message(`record-${name}`, { figure: found(name) })))].filter((text) => text !== "");
  if (known.length === 0 && calibrated === "") return "";
  return [...known, calibrated === "" ? message("record-not-calibrated") : message("record-calibrated", { day: dayText(calibrated) })].join(", ");
}
