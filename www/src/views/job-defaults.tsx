// What a new job begins with: the person and the instruments that go along from job to job.

import type { JSX } from "preact";
import { assess, type QuantityKind } from "../core";
import { momentNow } from "../job/moment";
import { message } from "../locale";
import { EntryField } from "../parts/entry-field";
import { entryOf } from "../parts/fields";
import { unitOf } from "../unit-choice";
import { fineUnit } from "./charge/ask";
import { gaugeUnit } from "./standing-test/ask";
import { stepUnit } from "./vacuum-hold/ask";

interface Default {
  /** As in the kit. */
  readonly name: string;
  readonly instrument: "gauge" | "thermometer" | "vacuumGauge" | "scale";
  readonly member: "resolution" | "uncertainty";
  readonly quantity: QuantityKind;
  readonly unit: () => string;
}

const defaults: readonly Default[] = [
  { name: "ownGaugeResolution", instrument: "gauge", member: "resolution", quantity: "pressure-difference", unit: gaugeUnit },
  { name: "ownGaugeUncertainty", instrument: "gauge", member: "uncertainty", quantity: "pressure-difference", unit: gaugeUnit },
  { name: "ownThermometerUncertainty", instrument: "thermometer", member: "uncertainty", quantity: "temperature-difference", unit: () => unitOf("temperature-difference") },
  { name: "ownVacuumGaugeResolution", instrument: "vacuumGauge", member: "resolution", quantity: "pressure-difference", unit: stepUnit },
  { name: "ownScaleResolution", instrument: "scale", member: "resolution", quantity: "mass", unit: fineUnit },
];

export function JobDefaults(): JSX.Element {
  const problems = defaults.flatMap((own) => {
    const { name, instrument, member, quantity, unit } = own;
    const instruments = { [instrument]: { [member]: entryOf(name, quantity, unit()) } };
    const reply = assess({ version: 1, instruments }, momentNow(), null);
    const found = "answer" in reply ? reply.answer.problems : [];
    return found.map((problem) => ({ ...problem, field: name }));
  });
  return (
    <section class="job-defaults">
      <h2>{message("defaults-heading")}</h2>
      <p class="note">{message("defaults-hint")}</p>
      <EntryField name="technician" problems={[]} words />
      <div class="fields">
        {defaults.map(({ name, unit }) => (
          <EntryField key={name} name={name} problems={problems} unit={unit()} />
        ))}
      </div>
    </section>
  );
}
