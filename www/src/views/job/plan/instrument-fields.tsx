// The instruments of the job: what is written on them, their step, how far they may be off, when they were calibrated.

import type { JSX } from "preact";
import { useJob } from "../../../job/job-context";
import { JobFields } from "../../../job/job-fields";
import { fieldName, textAt } from "../../../job/job-path";
import { dayText } from "../../../job/moment";
import { message } from "../../../locale";
import type { AnyField } from "../../../parts/card-fields";
import { Disclosure } from "../../../parts/disclosure";
import { lastName } from "../../../parts/fields";
import { vacuumUnit } from "../../../parts/vacuum-unit";
import type { QuantityKind } from "../../../core";
import { settings } from "../../../settings";
import { unitOf } from "../../../unit-choice";
import { DateField } from "./date-field";

const gaugeUnit = (): string => unitOf("gauge-pressure");
const fineMass = (): string => (settings().system === "metric" ? "g" : "oz");

function gauge(quantity: QuantityKind, unit?: () => string): readonly AnyField[] {
  const figure = { quantity, ...(unit && { unit }) };
  return [
    { name: "resolution", ...figure },
    { name: "uncertainty", ...figure },
  ];
}

const instruments: readonly (readonly [string, () => readonly AnyField[]])[] = [
  ["gauge", () => gauge("pressure-difference", gaugeUnit)],
  ["thermometer", () => gauge("temperature-difference")],
  ["vacuumGauge", () => gauge("pressure-difference", vacuumUnitOfDifference)],
  ["scale", () => gauge("mass", fineMass)],
  [
    "wrench",
    () => [
      { name: "wrenchRange", quantity: "torque", words: true },
      { name: "wrenchAccuracy", quantity: "ratio" },
      { name: "wrenchLength", quantity: "length" },
      { name: "adapterLength", quantity: "length" },
      { name: "adapterAngle", quantity: "angle" },
    ],
  ],
  ["caliper", () => [{ name: "uncertainty", quantity: "length" }]],
];

/** Torr is no unit of a difference. */
function vacuumUnitOfDifference(): string {
  const unit = vacuumUnit();
  return unit === "torr" ? "micron" : unit;
}

export function InstrumentFields(): JSX.Element {
  return (
    <>
      {instruments.map(([name, fields]) => (
        <Instrument key={name} name={name} fields={fields()} />
      ))}
    </>
  );
}

function Instrument({ name, fields }: { readonly name: string; readonly fields: readonly AnyField[] }): JSX.Element {
  const { document, problems } = useJob();
  const at = ["instruments", name];
  const told = [textAt(document, ...at, "name"), calibratedText(textAt(document, ...at, "calibrated"))].filter((text) => text !== "");
  const summary = (
    <span>
      {message(`field-${name}`)}
      {told.length > 0 && <small>{told.join(", ")}</small>}
    </span>
  );
  return (
    <Disclosure name="plan-instrument" summary={summary} mustShow={problems.some(({ field }) => field.startsWith(`${fieldName(...at)}.`))}>
      <JobFields at={at} fields={[{ name: "name", words: true }, ...fields.map((field) => ({ ...field, label: field.label ?? `field-${lastName(field.name)}` }))]} />
      <DateField name={fieldName(...at, "calibrated")} problems={problems} />
      <p class="hint">{message("plan-calibrated-hint")}</p>
    </Disclosure>
  );
}

function calibratedText(text: string): string {
  return text === "" ? "" : `${message("field-calibrated")} ${dayText(text)}`;
}
