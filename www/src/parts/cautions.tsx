// The usual cautions, where they belong.

import type { JSX } from "preact";
import { message } from "../locale";

export function Cautions({ ids }: { readonly ids: readonly string[] }): JSX.Element {
  return (
    <ul class="cautions">
      {ids.map((id) => (
        <li key={id}>{message(id)}</li>
      ))}
    </ul>
  );
}
