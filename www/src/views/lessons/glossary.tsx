// The glossary: what the trade's words mean, found by any of their names.

import type { JSX } from "preact";
import { TermText } from "../../glossary/term-sheet";
import { termsFound } from "../../glossary/terms";
import { message } from "../../locale";
import { EntryInput } from "../../parts/entry-field";
import { textOf } from "../../parts/fields";

export function Glossary(): JSX.Element {
  const found = termsFound(textOf("find"));
  return (
    <main class="card terms">
      <h1>{message("title-terms")}</h1>
      <div class="entry">
        <label for="entry-find">{message("terms-find")}</label>
        <div class="entry-line">
          <EntryInput name="find" unit={undefined} words isInvalid={false} describedBy="terms-count" />
        </div>
        <p class="hint" id="terms-count" role="status">
          {message("terms-count", { count: found.length })}
        </p>
      </div>
      <ul class="term-list">
        {found.map((term) => (
          <li key={term.id}>
            <h2>{term.name}</h2>
            <TermText term={term} />
          </li>
        ))}
      </ul>
    </main>
  );
}
