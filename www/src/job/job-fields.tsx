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
  return <CardFields fields={fieldsInJob(at, fields)} problems={problems} />;
}

/** The same fields under the names that they have on a job's screen. */
export function fieldsInJob(at: readonly string[], fields: readonly AnyField[]): readonly AnyField[] {
  return fields.map((field) => inJob(at, field));
}

function inJob(at: readonly string[], field: AnyField): AnyField {
  const named = { ...field, name: fieldName(...at, field.name) };
  return "instead" in named && named.instead ? { ...named, instead: named.instead.map((other) => fieldName(...at, other)) } : named;
}
