// Ready-made texts: one tap puts one into a field.

import type { JSX } from "preact";
import { withDecimalMark } from "../locale";
import { textOf, write } from "./fields";

export function Chips({ field, label, texts, isInOneLine }: {
  readonly field: string;
  readonly label: string;
  readonly texts: readonly string[];
  /** Many: the line is drawn sideways rather than pushing what follows down. */
  readonly isInOneLine?: boolean;
}): JSX.Element {
  const standing = textOf(field);
  return (
    <div class={isInOneLine === true ? "chips one-line" : "chips"} role="group" aria-label={label}>
      {texts.map(withDecimalMark).map((text) => (
        <button key={text} aria-pressed={text === standing} onClick={() => write(field, text)}>
          {text}
        </button>
      ))}
    </div>
  );
}
