// Something that is so or not so: one tap anywhere on its line.

import type { ComponentChildren, JSX } from "preact";

export function Tick({ name, isOn, onChange, detail, children }: {
  readonly name: string;
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
  /** What it means, in smaller letters. */
  readonly detail?: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <label class="tick">
      <input type="checkbox" name={name} checked={isOn} onChange={(event) => onChange(event.currentTarget.checked)} />
      <span>
        {children}
        {detail !== undefined && <small>{detail}</small>}
      </span>
    </label>
  );
}
