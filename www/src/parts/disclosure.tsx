// Secondary things behind a line that says what they are. Opens by itself when something inside is
// wrong, and is never closed while somebody types in it.

import type { ComponentChildren, JSX } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";

export function Disclosure({ name, summary, mustShow, children }: {
  readonly name: string;
  readonly summary: ComponentChildren;
  readonly mustShow: boolean;
  readonly children: ComponentChildren;
}): JSX.Element {
  const details = useRef<HTMLDetailsElement>(null);
  // What nobody has opened is not drawn, so that nobody waits for it.
  const [isOpen, setOpen] = useState(false);
  useLayoutEffect(() => {
    if (mustShow && details.current !== null) details.current.open = true;
  }, [mustShow]);
  return (
    <details class={name} ref={details} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      <div class="opened">{(isOpen || mustShow) && children}</div>
    </details>
  );
}
