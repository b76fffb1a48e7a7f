// What every card of the job's calculations has around it: its heading `title-<name>`, a sentence
// `intro-<name>`, and an example to show. Inside come, in this order: Finding, fields, lists, drawing,
// rows of figures, Working, AirFields.
//
//   const reply = calculate("pipe-friction", inputOf(fields));
//   <Card name="pipe-friction" example={example}> … </Card>
//   answerOf(reply)     the answer, if there is one
//   problemsOf(reply)   what is wrong; nothing as long as nobody has entered anything

import type { ComponentChildren, JSX } from "preact";
import { useEffect } from "preact/hooks";
import type { Answer, Name, Problem, Reply } from "../core";
import { message, withDecimalMark } from "../locale";
import { ExampleButton } from "./example-button";
import { isUntouched, writeOut } from "./fields";

export function Card({ name, example, fromKit = [], children }: {
  /** Its path. */
  readonly name: string;
  /** A realistic case: texts as typed, by field name. */
  readonly example: Readonly<Record<string, string>>;
  /** Fields that the kit fills and the figures hang on: written into the address, so that a link says them. */
  readonly fromKit?: readonly string[];
  readonly children: ComponentChildren;
}): JSX.Element {
  useEffect(() => writeOut(fromKit), []);
  const shown = Object.fromEntries(Object.entries(example).map(([field, text]) => [field, withDecimalMark(text)]));
  return (
    <main class={`card ${name}`}>
      <h1>{message(`title-${name}`)}</h1>
      <p class="note">{message(`intro-${name}`)}</p>
      <ExampleButton example={shown} />
      {children}
    </main>
  );
}

export function answerOf<N extends Name>(reply: Reply<N>): Answer<N> | undefined {
  return "answer" in reply ? reply.answer : undefined;
}

export function problemsOf<N extends Name>(reply: Reply<N>): readonly Problem[] {
  return "problems" in reply && !isUntouched() ? reply.problems : [];
}
