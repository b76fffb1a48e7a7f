// A day, by the phone's own calendar. A text that is no day stays as it was typed and is changed as a text.

import type { JSX } from "preact";
import type { Problem } from "../../../core";
import { message } from "../../../locale";
import { EntryField, ProblemLine } from "../../../parts/entry-field";
import { isMistake, lastName, problemOf, textOf, write } from "../../../parts/fields";

export function DateField({ name, problems }: { readonly name: string; readonly problems: readonly Problem[] }): JSX.Element {
  const text = textOf(name);
  if (text !== "" && !/^\d{4}-\d\d-\d\d$/.test(text)) return <EntryField name={name} problems={problems} words />;
  const problem = problemOf(name, problems);
  return (
    <div class="entry">
      <label for={`entry-${name}`}>{message(`field-${lastName(name)}`)}</label>
      <div class="entry-line">
        <input
          id={`entry-${name}`}
          name={name}
          type="date"
          value={text}
          aria-invalid={isMistake(problem)}
          aria-describedby={problem && `problem-of-${name}`}
          onChange={(event) => write(name, event.currentTarget.value)}
        />
      </div>
      <ProblemLine name={name} problem={problem} />
    </div>
  );
}
