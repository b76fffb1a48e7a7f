// Takes a job off this phone for good: the one thing that cannot be taken back, so it is asked twice.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { message } from "../../locale";
import type { Shelf } from "../../store/jobs";

export function DeleteForGood({ id, shelf }: { readonly id: string; readonly shelf: Shelf }): JSX.Element {
  const [isAsked, setAsked] = useState(false);
  if (!isAsked) {
    return (
      <button class="framed" data-action="delete-for-good" onClick={() => setAsked(true)}>
        {message("jobs-delete-for-good")}
      </button>
    );
  }
  return (
    <div class="asked" role="group" aria-label={message("jobs-delete-asked")}>
      <p role="alert">{message("jobs-delete-asked")}</p>
      <button class="framed" data-action="delete-surely" onClick={() => void shelf.purge(id)}>
        {message("jobs-delete-surely")}
      </button>
      <button class="framed" onClick={() => setAsked(false)}>
        {message("jobs-delete-not")}
      </button>
    </div>
  );
}
