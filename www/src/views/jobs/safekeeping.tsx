// Where the jobs are kept, said plainly, and what to do where that is not safe.

import type { JSX } from "preact";
import { message } from "../../locale";
import type { Shelf } from "../../store/jobs";

export function Safekeeping({ shelf }: { readonly shelf: Shelf }): JSX.Element {
  const { safekeeping } = shelf;
  const { persistence, unsaved } = safekeeping;
  const isKept = safekeeping.kept === "on this phone";
  return (
    <div class="safekeeping" data-kept={isKept ? "kept" : safekeeping.reason} data-persistence={persistence}>
      <p role="status" class={isKept ? "note" : "problem"}>
        {message(isKept ? `jobs-kept-${persistence.replace(" ", "-")}` : `jobs-in-memory-${safekeeping.reason}`)}
      </p>
      {ONE_FILE && isKept && <p class="note">{message("jobs-kept-by-file")}</p>}
      {!isKept && unsaved > 0 && <p class="note">{message("jobs-unsaved", { count: unsaved })}</p>}
    </div>
  );
}
