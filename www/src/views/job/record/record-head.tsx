// What the record is of, who made it, and by which edition.

import type { JSX } from "preact";
import { build, coreEdition } from "../../../edition";
import { nowIn, useJob } from "../../../job/job-context";
import { textAt } from "../../../job/job-path";
import { dayText, momentText } from "../../../job/moment";
import { isFromFile, linkBase } from "../../../link-base";
import { message } from "../../../locale";

export function RecordHead(): JSX.Element {
  const { document } = useJob();
  const created = textAt(document, "created");
  const schema = schemaAddress();
  const about: readonly (readonly [string, string])[] = [
    ["field-site", textAt(document, "site")],
    ["field-customer", textAt(document, "customer")],
    ["field-technician", textAt(document, "technician")],
    ["field-equipment", textAt(document, "plate", "equipment")],
    ["field-refrigerant", textAt(document, "plate", "refrigerant")],
    ["field-created", created === "" ? "" : dayText(created)],
  ];
  return (
    <header class="record-head">
      <h2>{message("record-title")}</h2>
      <p class="record-name">
        <b>{textAt(document, "name")}</b>
        {textAt(document, "practice") === "true" && <strong> {message("record-practice")}</strong>}
      </p>
      <dl>
        {about.filter(([, text]) => text !== "").map(([name, text]) => (
          <div key={name}>
            <dt>{message(name)}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <p class="edition">
        {message("record-edition", { build, core: coreEdition, at: momentText(nowIn(document)) })}
        {schema !== undefined && ` ${message("record-schema", { address: schema })}`}
      </p>
    </header>
  );
}

/** Where the schema of the job's document is published, beside the page; a page that is a file has nothing beside it. */
export function schemaAddress(): string | undefined {
  return isFromFile() ? undefined : new URL("job.schema.json", linkBase()).href;
}
