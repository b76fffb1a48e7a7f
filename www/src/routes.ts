// Which view opens at which address.

import type { FunctionComponent } from "preact";
import { cards } from "./card-list";
import { fluidCard, jobScreen } from "./fetched";
import { Bench } from "./views/bench";
import { Cards } from "./views/cards";
import { SettingsView } from "./views/settings";
import { Tubes } from "./views/tubes";

export interface Route {
  /** Message id of the title. */
  readonly title: string;
  readonly View: FunctionComponent;
}

const bench: Route = { title: "title-bench", View: Bench };

const routes: Readonly<Record<string, Route>> = {
  "": bench,
  torque: bench,
  tubes: { title: "title-tubes", View: Tubes },
  convert: { title: "title-convert", View: fluidCard("Convert") },
  jobs: { title: "title-jobs", View: jobScreen("Jobs") },
  job: { title: "title-job", View: jobScreen("Job") },
  handed: { title: "title-handed", View: jobScreen("Handed") },
  cards: { title: "title-cards", View: Cards },
  ...Object.fromEntries(cards.map(({ path, View }) => [path, { title: `title-${path}`, View }])),
  settings: { title: "title-settings", View: SettingsView },
};

/** The route of a path; an unknown one opens the bench. */
export function routeOf(path: string): Route {
  return (Object.hasOwn(routes, path) ? routes[path] : undefined) ?? bench;
}
