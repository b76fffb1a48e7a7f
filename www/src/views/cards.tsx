// The cards: one question each, one tap from everywhere.

import type { JSX } from "preact";
import { writePlace } from "../address";
import { message } from "../locale";

/** Their places, in the order in which they are offered. */
export const cards: readonly string[] = ["saturation", "moist-air", "water"];

export function Cards(): JSX.Element {
  return (
    <main class="cards">
      <h1>{message("cards-heading")}</h1>
      <ul>
        {cards.map((path) => (
          <li key={path}>
            <a href={writePlace({ path, entries: {} })}>
              <b>{message(`title-${path}`)}</b>
              <span>{message(`card-${path}`)}</span>
            </a>
          </li>
        ))}
      </ul>
    </main>
  );
}
