// A document that the core does not take, of a later version or none at all, and why.

import type { ComponentChildren, JSX } from "preact";

export function RefusedDocument({ screen, title, texts, children }: {
  /** Class of the screen that it stands on. */
  readonly screen: string;
  readonly title: string;
  /** What is wrong with it, each in a sentence. */
  readonly texts: readonly string[];
  readonly children?: ComponentChildren;
}): JSX.Element {
  return (
    <main class={screen}>
      <h1>{title}</h1>
      {texts.map((text) => (
        <p key={text} class="problem" role="alert">
          {text}
        </p>
      ))}
      {children}
    </main>
  );
}
