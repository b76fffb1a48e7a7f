// Fields of the open job, drawn like those of a card: their texts are kept in the job.
//
//   <JobFields at={["plate"]} fields={[{ name: "refrigerant", as: "refrigerant" }, { name: "plateCharge", quantity: "mass" }]} />

import type { JSX } from "preact";
import { CardFields, type AnyField } from "../parts/card-fields";
import { useJob } from "./job-context";
import { fieldName } from "./job-path";

export function JobFields({ at, fields }: {
  /** The steps to what the fields are in; none for the job itself. */
  readonly at: readonly string[];
  readonly fields: readonly AnyField[];
}): JSX.Element {
  const { problems } = useJob();
  return <CardFields fields={fields.map((field) => inJob(at, field))} problems={problems} />;
}

function inJob(at: readonly string[], field: AnyField): AnyField {
  const named = { ...field, name: fieldName(...at, field.name) };
  return "instead" in named && named.instead ? { ...named, instead: named.instead.map((other) => fieldName(...at, other)) } : named;
}
