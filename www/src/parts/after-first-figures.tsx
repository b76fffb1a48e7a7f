// What lies below the first screen is drawn once the first figures stand, so that they wait for nothing.

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useState } from "preact/hooks";

/** Longest that it waits for the browser to have nothing better to do. */
const longestWait = 300;

/** Its children, as soon as the first figures have been painted. */
export function AfterFirstFigures({ children }: { readonly children: () => ComponentChildren }): JSX.Element {
  const [isDue, setDue] = useState(false);
  useEffect(() => whenIdle(() => setDue(true)), []);
  return <>{isDue && children()}</>;
}

/** Calls back when the browser is idle; gives what calls it off. Safari does not tell: there, soon. */
function whenIdle(idle: () => void): () => void {
  if (!("requestIdleCallback" in globalThis)) {
    const timer = setTimeout(idle, 50);
    return () => clearTimeout(timer);
  }
  const request = requestIdleCallback(idle, { timeout: longestWait });
  return () => cancelIdleCallback(request);
}
