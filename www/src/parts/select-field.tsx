// One of many words, by the phone's own list: for more than a row under the thumb can hold.

import type { JSX } from "preact";
import type { Problem } from "../core";
import type { Choice } from "./choice-row";
import { ProblemLine } from "./entry-field";
import { isMistake, problemOf, textOf, write } from "./fields";

export function SelectField({ name, label, isTitled, none, choices, problems }: {
  readonly name: string;
  readonly label: string;
  /** Whether a heading above says already what it is. */
  readonly isTitled?: boolean;
  /** The label of choosing none, where that can be chosen. */
  readonly none?: string | undefined;
  readonly choices: readonly Choice[];
  readonly problems: readonly Problem[];
}): JSX.Element {
  const problem = problemOf(name, problems);
  return (
    <div class="entry">
      <label for={`entry-${name}`} class={isTitled === true ? "heard" : undefined}>
        {label}
      </label>
      <Select name={name} none={none} choices={choices} isInvalid={isMistake(problem)} describedBy={problem && `problem-of-${name}`} />
      <ProblemLine name={name} problem={problem} />
    </div>
  );
}

/** The list alone. What stands in the address and is no choice is shown as it stands. */
export function Select({ name, none, choices, isInvalid, describedBy }: {
  readonly name: string;
  readonly none?: string | undefined;
  readonly choices: readonly Choice[];
  readonly isInvalid: boolean;
  readonly describedBy: string | undefined;
}): JSX.Element {
  const chosen = textOf(name);
  const isOffered = choices.some(({ word }) => word === chosen) || (chosen === "" && none !== undefined);
  return (
    <select
      id={`entry-${name}`}
      name={name}
      value={chosen}
      aria-invalid={isInvalid}
      aria-describedby={describedBy}
      onChange={(event) => write(name, event.currentTarget.value)}
    >
      {none !== undefined && <option value="">{none}</option>}
      {!isOffered && <option value={chosen}>{chosen}</option>}
      {choices.map(({ word, label }) => (
        <option key={word} value={word}>
          {label}
        </option>
      ))}
    </select>
  );
}
