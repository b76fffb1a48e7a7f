// Views that are fetched once the first figures stand: nobody who comes for a torque waits for them.
// The service worker keeps them with all else, so that they need no signal later.

import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";

type FluidCards = typeof import("./views/fluid-cards");

let fetched: FluidCards | undefined;
let fetching: Promise<void> | undefined;

/** Fetches them; without a signal in the first visit, the next call tries again. */
export function fetchFluidCards(then: () => void = () => {}): void {
  fetching ??= import("./views/fluid-cards").then(
    (cards) => {
      fetched = cards;
    },
    () => {
      fetching = undefined;
    },
  );
  void fetching.then(then);
}

/** The card of this name, as soon as it is here. */
export function fluidCard(name: keyof FluidCards): FunctionComponent {
  return () => {
    const [, setFetched] = useState(fetched !== undefined);
    useEffect(() => {
      if (fetched === undefined) fetchFluidCards(() => setFetched(true));
    }, []);
    const View = fetched?.[name];
    return View === undefined ? <main /> : <View />;
  };
}
