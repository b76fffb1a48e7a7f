// What lies below the first screen is drawn after the first figures have been painted: nobody waits for it.

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useState } from "preact/hooks";

let isPainted = false;

/** Draws its children at once, except in the first drawing of the page: there, right after the first paint. */
export function Later({ children }: { children: () => ComponentChildren }): JSX.Element {
  const [isDrawn, setDrawn] = useState(isPainted);
  useEffect(() => {
    isPainted = true;
    setDrawn(true);
  }, []);
  return <>{isDrawn && children()}</>;
}
