// Secondary things behind a line that says what they are. Opens by itself when something inside is
// wrong, and is never closed while somebody types in it.

import type { ComponentChildren, JSX } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";

export function Disclosure({ name, summary, mustShow, children }: {
  readonly name: string;
  readonly summary: ComponentChildren;
  readonly mustShow: boolean;
  readonly children: ComponentChildren;
}): JSX.Element {
  const details = useRef<HTMLDetailsElement>(null);
  useLayoutEffect(() => {
    if (mustShow && details.current !== null) details.current.open = true;
  }, [mustShow]);
  return (
    <details class={name} ref={details}>
      <summary>{summary}</summary>
      <div class="opened">{children}</div>
    </details>
  );
}
