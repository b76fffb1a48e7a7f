// Which refrigerant: the phone's own list, since there are too many for a row under the thumb.

import type { JSX } from "preact";
import { calculate, type Problem } from "../core";
import { message } from "../locale";
import { problemOf, problemText, textOf, write } from "./fields";

let known: readonly string[] | undefined;

/** The core says which it knows when it is asked for one that it cannot know. */
function refrigerants(): readonly string[] {
  if (known !== undefined) return known;
  const reply = calculate("saturation", { refrigerant: "?" as "R-22", temperature: 0 });
  const problem = "problems" in reply ? problemOf("refrigerant", reply.problems) : undefined;
  known = problem?.code === "not-a-choice" ? problem.accepted : [];
  return known;
}

export function RefrigerantChoice({ problems, none, isTitled }: {
  readonly problems: readonly Problem[];
  /** The label of choosing none, where that can be chosen. */
  readonly none?: string;
  /** Whether a heading above says already what it is. */
  readonly isTitled?: boolean;
}): JSX.Element {
  const problem = problemOf("refrigerant", problems);
  const chosen = textOf("refrigerant");
  const isKnown = refrigerants().includes(chosen) || (chosen === "" && none !== undefined);
  return (
    <div class="entry">
      <label for="entry-refrigerant" class={isTitled === true ? "heard" : undefined}>{message("field-refrigerant")}</label>
      <select
        id="entry-refrigerant"
        name="refrigerant"
        value={chosen}
        aria-invalid={problem !== undefined}
        aria-describedby={problem && "problem-of-refrigerant"}
        onChange={(event) => write("refrigerant", event.currentTarget.value)}
      >
        {none !== undefined && <option value="">{none}</option>}
        {!isKnown && <option>{chosen}</option>}
        {refrigerants().map((name) => (
          <option key={name}>{name}</option>
        ))}
      </select>
      <p class="problem" id="problem-of-refrigerant" role="status" data-problem-of={problem && "refrigerant"}>
        {problem && problemText(problem)}
      </p>
    </div>
  );
}
