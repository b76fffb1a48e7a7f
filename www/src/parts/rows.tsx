// A figure in a row: what it is, the figure, and beneath it the same in the other system.

import type { ComponentChildren, JSX } from "preact";

export function Rows({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return <dl class="rows">{children}</dl>;
}

export function Row({ name, figure, beneath, mark }: {
  readonly name: string;
  readonly figure: ComponentChildren;
  readonly beneath?: string | undefined;
  /** Name of the figure, for those who look for it. */
  readonly mark?: string;
}): JSX.Element {
  return (
    <div class="row">
      <dt>{name}</dt>
      <dd data-figure={mark}>
        {figure}
        {beneath !== undefined && <small>{beneath}</small>}
      </dd>
    </div>
  );
}
