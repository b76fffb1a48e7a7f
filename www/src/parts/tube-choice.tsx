// Which size of tube, from the core's tables. The text that it writes is what a person would type: `5/8`, `16 mm`.

import type { JSX } from "preact";
import { tubeSizes, type Problem } from "../core";
import { message } from "../locale";
import type { Choice } from "./choice-row";
import { lastName } from "./fields";
import { SelectField } from "./select-field";

let known: readonly Choice[] | undefined;

/** The sizes with their usual walls, inch sizes first. */
export function tubeChoices(): readonly Choice[] {
  known ??= tubeSizes()
    .filter(({ wall }) => wall == null)
    .map(({ name, series }) => (series === "en-12735-1" ? `${name} mm` : name))
    .map((word) => ({ word, label: word.endsWith("mm") ? word : `${word} in` }));
  return known;
}

export function TubeChoice({ name, label = `field-${lastName(name)}`, none, problems }: {
  readonly name: string;
  /** Message id of the label, where it is not the field's own. */
  readonly label?: string | undefined;
  /** The label of choosing none; without it, one that has been chosen stays. */
  readonly none?: string | undefined;
  readonly problems: readonly Problem[];
}): JSX.Element {
  return <SelectField name={name} label={message(label)} none={none ?? message("choose")} choices={tubeChoices()} problems={problems} />;
}
