// Where figures come from: what kind of thing the source is, and how its figures came here.

import type { JSX } from "preact";
import { bibliography, type SourceId } from "../core";
import { hasMessage, message } from "../locale";

export function SourceList({ ids }: { readonly ids: readonly SourceId[] }): JSX.Element | null {
  const named = bibliography().filter(({ id }) => ids.includes(id));
  if (named.length === 0) return null;
  return (
    <ul class="sources">
      {named.map(({ id, title, place, kind, standing }) => (
        <li key={id} data-standing={standing}>
          <Title id={id} title={[title, place].filter((part) => part !== "").join(", ")} />
          <small>{`${message(`source-kind-${kind}`)} · ${message(`standing-${standing}`)}`}</small>
        </li>
      ))}
    </ul>
  );
}

/** A document is called as it calls itself; what stands for one is said in the person's language. */
function Title({ id, title }: { readonly id: SourceId; readonly title: string }): JSX.Element {
  const sentence = `source-title-${id}`;
  return hasMessage(sentence) ? <span>{message(sentence)}</span> : <span lang="en">{title}</span>;
}
