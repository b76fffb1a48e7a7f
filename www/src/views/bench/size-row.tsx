// The tube sizes that are flared, each a large target.

import type { JSX } from "preact";
import { show, tubeSizes } from "../../core";
import { message } from "../../locale";
import { write } from "../../parts/fields";
import { sizeName } from "./joint";

/** Sizes with the outside diameter in mm, as fittings are marked. */
let sizes: readonly { readonly name: string; readonly millimetres: string }[] | undefined;

function flaredSizes(): NonNullable<typeof sizes> {
  sizes ??= tubeSizes()
    .flatMap(({ name, flaredDiameter }) =>
      flaredDiameter == null ? [] : [{ name, millimetres: show("length", flaredDiameter, "mm", "table").number }],
    );
  return sizes;
}

export function SizeRow(): JSX.Element {
  const chosen = sizeName();
  return (
    <div class="sizes" role="group" aria-label={message("bench-sizes")}>
      {flaredSizes().map(({ name, millimetres }) => (
        <button key={name} data-tube={name} aria-pressed={name === chosen} onClick={() => write("tube", name)}>
          {name}
          <small>{millimetres}</small>
        </button>
      ))}
    </div>
  );
}
