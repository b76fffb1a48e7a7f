// In the place of a clock that does not run any more.

import type { JSX } from "preact";

export function DueLine({ text }: { readonly text: string }): JSX.Element {
  return <p class="clock-ended">{text}</p>;
}
