// What lies below the first screen is drawn once the first figures stand, so that they wait for nothing.

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { whenIdle } from "../idle";

/** Its children, as soon as the first figures have been painted. */
export function AfterFirstFigures({ children }: { readonly children: () => ComponentChildren }): JSX.Element {
  const [isDue, setDue] = useState(false);
  useEffect(() => whenIdle(() => setDue(true)), []);
  return <>{isDue && children()}</>;
}
