// Deleted jobs, which can be put back for some time.

import type { JSX } from "preact";
import { momentText } from "../../job/moment";
import { message } from "../../locale";
import { Disclosure } from "../../parts/disclosure";
import type { Shelf } from "../../store/jobs";
import { DeleteForGood } from "./delete-for-good";
import { shownName } from "./job-row";

export function RemovedJobs({ shelf }: { readonly shelf: Shelf }): JSX.Element | null {
  const removed = shelf.removed();
  if (removed.length === 0) return null;
  return (
    <section>
      <Disclosure name="removed-jobs" summary={<span>{message("jobs-removed", { count: removed.length })}</span>} mustShow={false}>
        <p class="note">{message("jobs-removed-hint")}</p>
        <ol class="job-list">
          {removed.map((summary) => (
            <li key={summary.id} data-removed-job={summary.id}>
              <b>{shownName(summary.name)}</b>
              <p class="note">{message("jobs-deleted-at", { at: momentText(summary.removed ?? "") })}</p>
              <div class="job-actions">
                <button class="framed" data-action="put-back" onClick={() => void shelf.restore(summary.id)}>
                  {message("jobs-put-back")}
                </button>
                <DeleteForGood id={summary.id} shelf={shelf} />
              </div>
            </li>
          ))}
        </ol>
      </Disclosure>
    </section>
  );
}
