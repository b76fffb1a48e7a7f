// A list of the job whose items are put in and taken out one by one: ports, rooms, accessories.

import type { JSX } from "preact";
import { useJob } from "../../../job/job-context";
import { JobFields } from "../../../job/job-fields";
import { fieldName, itemsAt } from "../../../job/job-path";
import { message } from "../../../locale";
import type { AnyField } from "../../../parts/card-fields";
import { newItemId, puttingIn, takingOut } from "../../../store/jobs";

export function ItemList({ at, fields, legend, isTitled = false, add, nameOf }: {
  /** The steps to the list. */
  readonly at: readonly string[];
  readonly fields: readonly AnyField[];
  readonly legend: string;
  /** Whether the legend stands above as a heading: it is only heard then. */
  readonly isTitled?: boolean;
  readonly add: string;
  /** What the item of this number is called. */
  readonly nameOf: (number: number) => string;
}): JSX.Element {
  const { job, document } = useJob();
  const put = (): void => {
    const id = newItemId(itemsAt(document, ...at));
    job.apply(puttingIn(at, { id }));
    const first = fields[0];
    if (first) requestAnimationFrame(() => window.document.getElementById(`entry-${fieldName(...at, `#${id}`, first.name)}`)?.focus());
  };
  return (
    <fieldset class="item-list" data-list={at.join(".")}>
      <legend class={isTitled ? "heard" : undefined}>{legend}</legend>
      {itemsAt(document, ...at).map(({ id }, place) => (
        <div key={id} class="item" role="group" aria-label={nameOf(place + 1)}>
          <JobFields at={[...at, `#${id}`]} fields={fields} />
          <button class="take-out" aria-label={message("plan-take-out", { what: nameOf(place + 1) })} onClick={() => job.apply(takingOut([...at, `#${id}`]))}>
            ×
          </button>
        </div>
      ))}
      <button class="framed" data-action="add-item" onClick={put}>
        {add}
      </button>
    </fieldset>
  );
}
