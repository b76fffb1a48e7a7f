// Words to choose from, each a large target that says itself whether it is chosen.

import type { ComponentChildren, JSX } from "preact";
import type { Problem } from "../core";
import { problemOf, problemText } from "./fields";

export interface Choice {
  readonly word: string;
  readonly label: string;
  /** What the choice means, in smaller letters. */
  readonly detail?: string;
  /** The language of the label, where it is not the page's. */
  readonly lang?: string;
}

export interface ChoiceRowProps {
  readonly name: string;
  readonly legend: ComponentChildren;
  readonly choices: readonly Choice[];
  readonly chosen: string;
  readonly onChoose: (word: string) => void;
  readonly problems?: readonly Problem[];
  /** Side by side for short words, else one under the other. */
  readonly beside?: boolean;
  readonly children?: ComponentChildren;
}

export function ChoiceRow(props: ChoiceRowProps): JSX.Element {
  const { name, legend, choices, chosen, onChoose, problems = [], beside, children } = props;
  const problem = problemOf(name, problems);
  const arrangement = [beside === true && "beside", choices.length > 4 && "many"].filter((word) => word !== false);
  return (
    <fieldset class={["choices", ...arrangement].join(" ")}>
      <legend>{legend}</legend>
      <div class="choice-cells">
        {choices.map(({ word, label, detail, lang }) => (
          <label key={word}>
            <input type="radio" name={name} value={word} checked={word === chosen} onChange={() => onChoose(word)} />
            <span lang={lang}>
              {label}
              {detail !== undefined && <small>{detail}</small>}
            </span>
          </label>
        ))}
      </div>
      {children}
      {problem && (
        <p class="problem" data-problem-of={name}>
          {problemText(problem)}
        </p>
      )}
    </fieldset>
  );
}
