// Which refrigerant: the phone's own list.

import type { JSX } from "preact";
import { calculate, type Problem } from "../core";
import { message } from "../locale";
import { problemOf } from "./fields";
import { SelectField } from "./select-field";

let known: readonly string[] | undefined;

/** The core says which it knows when it is asked for one that it cannot know. */
function refrigerants(): readonly string[] {
  if (known !== undefined) return known;
  const reply = calculate("saturation", { refrigerant: "?" as "R-22", temperature: 0 });
  const problem = "problems" in reply ? problemOf("refrigerant", reply.problems) : undefined;
  known = problem?.code === "not-a-choice" ? problem.accepted : [];
  return known;
}

export function RefrigerantChoice({ name = "refrigerant", problems, none, isTitled }: {
  readonly name?: string;
  readonly problems: readonly Problem[];
  /** The label of choosing none, where that can be chosen. */
  readonly none?: string | undefined;
  /** Whether a heading above says already what it is. */
  readonly isTitled?: boolean;
}): JSX.Element {
  const choices = refrigerants().map((name) => ({ word: name, label: name }));
  return (
    <SelectField
      name={name}
      label={message("field-refrigerant")}
      isTitled={isTitled === true}
      none={none}
      choices={choices}
      problems={problems}
    />
  );
}
