// Views that are fetched once the first figures stand, with the whole core that they ask: nobody who comes for a
// torque waits for them.
// The service worker keeps them with all else, so that they need no signal later.

import type { FunctionComponent, VNode } from "preact";
import { useEffect, useState } from "preact/hooks";
import { arriveLate } from "./arrival";
import { startWholeCore } from "./core";
import { fetchSentencesOf, type SentencePart } from "./locale";

type Views<Name extends string> = Readonly<Record<Name, FunctionComponent>>;

/** Views that come in one file; `load` imports it, `parts` are the sentences that they say. */
class FetchedViews<Name extends string> {
  private views: Views<Name> | undefined;
  private fetching: Promise<void> | undefined;

  constructor(
    private readonly load: () => Promise<Views<Name>>,
    private readonly parts: readonly SentencePart[],
  ) {}

  /** Fetches them; without a signal in the first visit, the next call tries again. */
  fetch(then: () => void = () => {}): void {
    this.fetching ??= Promise.all([this.load(), startWholeCore(), ...this.parts.map(fetchSentencesOf)]).then(
      ([views]) => {
        this.views = views;
      },
      () => {
        this.fetching = undefined;
      },
    );
    void this.fetching.then(then);
  }

  /** The view of this name, as soon as it is here; `waiting` stands in its place until then. */
  view(name: Name, waiting: VNode | null = <main />): FunctionComponent {
    return () => {
      const [isFetched, setFetched] = useState(this.views !== undefined);
      useEffect(() => {
        // They may have come after this was drawn and before it is run.
        if (this.views === undefined || !isFetched) this.fetch(() => setFetched(true));
        else arriveLate();
      }, [isFetched]);
      const View: FunctionComponent | undefined = this.views?.[name];
      return View === undefined ? waiting : <View />;
    };
  }
}

const fluidCards = new FetchedViews<keyof typeof import("./views/fluid-cards")>(() => import("./views/fluid-cards"), ["cards"]);
const jobCards = new FetchedViews<keyof typeof import("./views/job-cards")>(() => import("./views/job-cards"), ["cards"]);

const jobScreens = new FetchedViews<keyof typeof import("./views/job-screens")>(() => import("./views/job-screens"), ["cards", "job"]);

/** Fetches all of them. */
export function fetchCards(): void {
  fluidCards.fetch();
  jobCards.fetch();
  jobScreens.fetch();
}

/** A view that asks about fluids. */
export function fluidCard(name: keyof typeof import("./views/fluid-cards")): FunctionComponent {
  return fluidCards.view(name);
}

/** A card of the job's calculations. */
export function jobCard(name: keyof typeof import("./views/job-cards")): FunctionComponent {
  return jobCards.view(name);
}

/** A screen of the jobs. */
export function jobScreen(name: keyof typeof import("./views/job-screens")): FunctionComponent {
  return jobScreens.view(name);
}

/** A part of a first screen that is of the jobs. */
export function jobPart(name: keyof typeof import("./views/job-screens")): FunctionComponent {
  return jobScreens.view(name, null);
}
