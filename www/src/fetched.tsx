// Views that are fetched once the first figures stand, with the whole core that they ask: nobody who comes for a
// torque waits for them.
// The service worker keeps them with all else, so that they need no signal later.

import type { FunctionComponent, VNode } from "preact";
import { useEffect, useState } from "preact/hooks";
import { arriveLate } from "./arrival";
import { startWholeCore } from "./core";
import { fetchSentencesOf, type SentencePart } from "./locale";

type Views<Name extends string> = Readonly<Record<Name, FunctionComponent<never>>>;

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
  view<Props = object>(name: Name, waiting: VNode | null = <main />): FunctionComponent<Props> {
    return (props) => {
      const [isFetched, setFetched] = useState(this.views !== undefined);
      useEffect(() => {
        // They may have come after this was drawn and before it is run.
        if (this.views === undefined || !isFetched) this.fetch(() => setFetched(true));
        else arriveLate();
      }, [isFetched]);
      const View = this.views?.[name] as FunctionComponent<Props> | undefined;
      return View === undefined ? waiting : <View {...props} />;
    };
  }
}

const fluidCards = new FetchedViews<keyof typeof import("./views/fluid-cards")>(() => import("./views/fluid-cards"), ["cards"]);
const jobCards = new FetchedViews<keyof typeof import("./views/job-cards")>(() => import("./views/job-cards"), ["cards"]);

const jobScreens = new FetchedViews<keyof typeof import("./views/job-screens")>(() => import("./views/job-screens"), ["cards", "job"]);

const lessons = new FetchedViews<keyof typeof import("./views/lessons")>(() => import("./views/lessons"), ["why", "terms"]);

/** Fetches all of them; calls back when the terms of the glossary can be marked in what is drawn. */
export function fetchCards(termsAreHere: () => void): void {
  lessons.fetch(termsAreHere);
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

/** The glossary. */
export const Glossary = lessons.view("Glossary");

/** The question at a step of a working; it takes its room before it has come. */
export const StepQuestion = lessons.view<{ readonly step: string }>("StepQuestion", <div class="question" />);
