// What lies below the first screen is drawn one frame later, so that the first figures wait for nothing.

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useState } from "preact/hooks";

/** Its children, from the second frame on. */
export function AfterFirstFigures({ children }: { readonly children: () => ComponentChildren }): JSX.Element {
  const [isDue, setDue] = useState(false);
  useEffect(() => setDue(true), []);
  return <>{isDue && children()}</>;
}
