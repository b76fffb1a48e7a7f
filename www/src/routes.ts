// Which view opens at which address.

import type { FunctionComponent } from "preact";
import { Bench } from "./views/bench";

export interface Route {
  /** Message id of the title. */
  readonly title: string;
  readonly View: FunctionComponent;
}

const bench: Route = { title: "title-bench", View: Bench };

const routes: Readonly<Record<string, Route>> = {
  "": bench,
};

/** The route of a path; an unknown one opens the bench. */
export function routeOf(path: string): Route {
  return (Object.hasOwn(routes, path) ? routes[path] : undefined) ?? bench;
}
