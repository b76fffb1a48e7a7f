// Where figures come from: what kind of thing the source is, and how its figures came here.

import type { JSX } from "preact";
import { bibliography, type SourceId } from "../core";
import { message } from "../locale";

export function SourceList({ ids }: { readonly ids: readonly SourceId[] }): JSX.Element | null {
  const named = bibliography().filter(({ id }) => ids.includes(id));
  if (named.length === 0) return null;
  return (
    <ul class="sources">
      {named.map(({ id, title, place, kind, standing }) => (
        <li key={id} data-standing={standing}>
          <span lang="en">{[title, place].filter((part) => part !== "").join(", ")}</span>
          <small>{`${message(`source-kind-${kind}`)} · ${message(`standing-${standing}`)}`}</small>
        </li>
      ))}
    </ul>
  );
}
