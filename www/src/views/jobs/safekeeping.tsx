// Where the jobs are kept; said plainly where they are not on this phone.

import type { JSX } from "preact";
import { message } from "../../locale";
import type { Shelf } from "../../store/jobs";

export function Safekeeping({ shelf }: { readonly shelf: Shelf }): JSX.Element {
  const { safekeeping } = shelf;
  return (
    <p class="safekeeping" role="status">
      {message(safekeeping.kept === "on this phone" ? "jobs-kept" : `jobs-in-memory-${safekeeping.reason}`)}
    </p>
  );
}
