// One tap fills the card with a realistic case; one more brings back what stood there. Either is a place
// of its own in the way back, so that the phone's back button does the same.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { goTo, place, type Entries } from "../address";
import { message } from "../locale";
import { isUntouched } from "./fields";

export function ExampleButton({ example }: {
  /** Texts as typed, by field name; whatever else stands in the fields gives way. */
  readonly example: Entries;
}): JSX.Element {
  const [before, setBefore] = useState<Entries | undefined>(undefined);
  const put = (entries: Entries): void => goTo({ path: place().path, entries });
  const show = (): void => {
    if (!isShown(example)) setBefore(place().entries);
    put(example);
  };
  const bringBack = (): void => {
    if (before !== undefined) put(before);
    setBefore(undefined);
  };
  return (
    <p class={isUntouched() ? "example large" : "example"}>
      {!isShown(example) && (
        <button data-action="example" onClick={show}>
          {message("example-show")}
        </button>
      )}
      {isShown(example) && <span role="status">{message("example-shown")}</span>}
      {before !== undefined && (
        <button data-action="bring-back" onClick={bringBack}>
          {message("bring-back")}
        </button>
      )}
    </p>
  );
}

/** Whether just the example stands here. */
function isShown(example: Entries): boolean {
  return Object.entries(example).every(([name, text]) => place().entries[name] === text);
}
