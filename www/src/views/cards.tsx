// The list of cards by the order of work: one question each, one tap from everywhere.

import type { JSX } from "preact";
import { writePlace } from "../address";
import { cards, groups } from "../card-list";
import { message } from "../locale";

export function Cards(): JSX.Element {
  return (
    <main class="cards">
      <h1>{message("cards-heading")}</h1>
      {groups.map((group) => (
        <CardGroup key={group} group={group} />
      ))}
    </main>
  );
}

function CardGroup({ group }: { readonly group: (typeof groups)[number] }): JSX.Element | null {
  const members = cards.filter((card) => card.group === group);
  if (members.length === 0) return null;
  return (
    <>
      <h2>{message(`cards-group-${group}`)}</h2>
      <ul>
        {members.map(({ path }) => (
          <li key={path}>
            <a href={writePlace({ path, entries: {} })}>
              <b>{message(`title-${path}`)}</b>
              <span>{message(`card-${path}`)}</span>
            </a>
          </li>
        ))}
      </ul>
    </>
  );
}
