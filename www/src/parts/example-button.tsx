// One tap fills the card with a realistic case; one more brings back what stood there. Either is a place
// of its own in the way back, so that the phone's back button does the same.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { goTo, place, type Entries } from "../address";
import { message } from "../locale";
import { isNoQuestion, isUntouched } from "./fields";

export function ExampleButton({ example }: {
  /** Texts as typed, by field name; whatever else stands in the fields gives way, except what came with the kit. */
  readonly example: Entries;
}): JSX.Element {
  const [before, setBefore] = useState<Entries | undefined>(undefined);
  const put = (entries: Entries): void => goTo({ path: place().path, entries });
  const show = (): void => {
    const { entries } = place();
    setBefore(entries);
    put({ ...Object.fromEntries(Object.entries(entries).filter(([name]) => isNoQuestion(name))), ...example });
  };
  const bringBack = (): void => {
    if (before !== undefined) put(before);
    setBefore(undefined);
  };
  // By the phone's back button it may stand here already.
  const isBack = before === undefined || isShown(before);
  return (
    <p class={isUntouched() ? "example large" : "example"}>
      {!isShown(example) && (
        <button data-action="example" onClick={show}>
          {message("example-show")}
        </button>
      )}
      {isShown(example) && <span role="status">{message("example-shown")}</span>}
      {!isBack && (
        <button data-action="bring-back" onClick={bringBack}>
          {message("bring-back")}
        </button>
      )}
    </p>
  );
}

/** Whether just these texts stand here; those of the kit may stand beside them. */
function isShown(texts: Entries): boolean {
  const { entries } = place();
  const others = Object.keys(entries).filter((name) => !isNoQuestion(name));
  return [...Object.keys(texts), ...others].every((name) => entries[name] === texts[name]);
}
