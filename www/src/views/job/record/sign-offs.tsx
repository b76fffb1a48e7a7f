// Names under the record: entered on the screen, lines to sign on paper.

import type { JSX } from "preact";
import { JobFields } from "../../../job/job-fields";
import { nowIn, useJob } from "../../../job/job-context";
import { itemsAt, textAt } from "../../../job/job-path";
import { dayText, momentText } from "../../../job/moment";
import { message } from "../../../locale";
import type { AnyField } from "../../../parts/card-fields";
import { clearing, newItemId, puttingIn, setting, takingOut } from "../../../store/jobs";
import { DoneAct } from "../joints/made-act";

const fields: readonly AnyField[] = [
  { name: "name", label: "record-sign-name", words: true },
  { name: "role", words: true },
];

export function SignOffs(): JSX.Element {
  const { job, document } = useJob();
  const names = itemsAt(document, "signOffs");
  const isFirst = names.length === 0;
  const add = (): void => {
    const whose = isFirst ? { name: textAt(document, "technician"), role: message("record-done-by") } : { role: message("record-received-by") };
    job.apply(puttingIn(["signOffs"], { id: newItemId(names), ...whose, at: nowIn(document) }));
  };
  return (
    <section class="sign-offs">
      <h2>{message("record-names")}</h2>
      {names.map(({ id, ...item }) => {
        const path = ["signOffs", `#${id}`];
        const at = textAt(item, "at");
        return (
          <div key={id} data-sign-off={id}>
            <JobFields at={path} fields={fields} />
            <DoneAct
              action="sign"
              word={message("record-sign")}
              done={at === "" ? undefined : message("record-signed", { at: momentText(at) })}
              onDo={() => job.apply(setting([...path, "at"], nowIn(document)))}
              onTakeBack={() => job.apply(clearing([...path, "at"]))}
            />
            <button data-action="take-out-name" onClick={() => job.apply(takingOut(path))}>
              {message("record-take-out-name")}
            </button>
          </div>
        );
      })}
      <button class="framed" data-action="add-name" onClick={add}>
        {message(isFirst ? "record-add-name" : "record-add-another")}
      </button>
    </section>
  );
}

/** A line for each name, and two where there is none. */
export function SignatureLines(): JSX.Element {
  const { document } = useJob();
  const names = itemsAt(document, "signOffs").map((item) => ({ name: textAt(item, "name"), role: textAt(item, "role"), at: textAt(item, "at") }));
  const blank = [message("record-done-by"), message("record-received-by")].map((role) => ({ name: "", role, at: "" }));
  return (
    <div class="signatures">
      {(names.length === 0 ? blank : names).map(({ name, role, at }) => (
        <p key={role + name}>
          {[name, role, at === "" ? message("record-date") : dayText(at)].filter((text) => text !== "").join(", ")}
        </p>
      ))}
    </div>
  );
}
