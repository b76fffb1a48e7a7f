// The fields of a card as one table: it draws them and gives what is sent to the core.
//
//   const fields: readonly CardField<"pipe-friction">[] = [
//     { name: "bore", quantity: "length" },                          a figure with its unit beside it
//     { name: "pressure", quantity: "absolute-pressure", unit: vacuumUnit },   ... in another unit than the person's
//     { name: "temperature", quantity: "temperature", signed: true },           ... with a ± button
//     { name: "note", words: true },                                 a text without a unit
//     { name: "elbows90" },                                          a count: figures without a unit
//     { name: "tool", choices: ["one", "other"], otherwise: "one" }, words `choice-<word>`; `otherwise` is shown as chosen
//     { name: "outdoors", as: "yes-no", otherwise: "false" },        yes or no
//     { name: "refrigerant", as: "refrigerant" },                    the core's refrigerants
//     { name: "tube", as: "tube" },                                  the core's sizes
//   ];
//   calculate("pipe-friction", inputOf(fields))      names are checked against the calculation's input
//   <CardFields fields={fields} problems={problems} />
//
// The label is `field-<name>`, a hint `hint-<name>` if there is one; `label` names another message. The air
// around is no row here: `...airInput()` and `<AirFields problems={problems} />`.

import type { JSX } from "preact";
import type { Input, Name, Problem, QuantityKind } from "../core";
import { message } from "../locale";
import { unitOf } from "../unit-choice";
import { ChoiceRow } from "./choice-row";
import { EntryField } from "./entry-field";
import { entryOf, lastName, textOf, write } from "./fields";
import { RefrigerantChoice } from "./refrigerant-choice";
import { TubeChoice } from "./tube-choice";

interface Field<Key extends string> {
  /** As in the input of the calculation. */
  readonly name: Key;
  /** Message id of the label, where it is not the field's own. */
  readonly label?: string;
}

interface FigureField<Key extends string> extends Field<Key> {
  readonly quantity?: QuantityKind;
  /** Unit of a bare number, where it is another than the person's usual one. */
  readonly unit?: () => string;
  /** Whether people write words or units here, rather than figures alone. */
  readonly words?: true;
  /** Whether the figure may be negative. */
  readonly signed?: true;
  /** Message id of the hint, where it is not the field's own. */
  readonly hint?: string;
  /** Whether the unit is changed beside the field. */
  readonly switches?: true;
  /** Fields that this one takes the place of. */
  readonly instead?: readonly Key[];
}

interface ChosenField<Key extends string> extends Field<Key> {
  readonly choices: readonly string[];
  /** The word that the core takes if none is chosen, shown as chosen. */
  readonly otherwise?: string;
  /** Message id of choosing none, where that can be chosen. */
  readonly none?: string;
}

interface KnownField<Key extends string> extends Field<Key> {
  readonly as: "yes-no" | "refrigerant" | "tube";
  readonly otherwise?: "true" | "false";
  readonly none?: string;
}

export type AnyField<Key extends string = string> = FigureField<Key> | ChosenField<Key> | KnownField<Key>;

/** A field of the card of a calculation. */
export type CardField<N extends Name> = AnyField<keyof Input<N> & string>;

/** What the fields send: texts as typed. Which words a choice has is for the core to say. */
export function inputOf<N extends Name>(fields: readonly CardField<N>[]): Input<N> {
  return Object.fromEntries(fields.map((field: AnyField) => [field.name, sent(field)])) as Input<N>;
}

/** What one field sends: for a card whose calculation has fields within fields. */
export function sent(field: AnyField): string | ReturnType<typeof entryOf> {
  const isFigure = "quantity" in field && field.quantity !== undefined;
  return isFigure ? entryOf(field.name, field.quantity, field.unit?.()) : textOf(field.name).trim();
}

export function CardFields({ fields, problems }: {
  readonly fields: readonly AnyField[];
  readonly problems: readonly Problem[];
}): JSX.Element {
  return (
    <div class="fields">
      {fields.map((field) => (
        <OneField key={field.name} field={field} problems={problems} />
      ))}
    </div>
  );
}

function OneField({ field, problems }: { readonly field: AnyField; readonly problems: readonly Problem[] }): JSX.Element {
  if ("choices" in field) return <WordField field={field} words={field.choices} prefix="choice-" problems={problems} />;
  if ("as" in field) {
    if (field.as === "yes-no") return <WordField field={field} words={["true", "false"]} prefix="truth-" problems={problems} />;
    const none = field.none === undefined ? undefined : message(field.none);
    if (field.as === "refrigerant") return <RefrigerantChoice name={field.name} problems={problems} none={none} />;
    return <TubeChoice name={field.name} label={field.label} none={none} problems={problems} />;
  }
  const { quantity, unit, switches, ...shown } = field;
  const beside = quantity && (unit?.() ?? unitOf(quantity));
  return (
    <EntryField
      {...shown}
      problems={problems}
      {...(switches === true && quantity !== undefined ? { switches: quantity } : beside !== undefined && { unit: beside })}
    />
  );
}

/** Words side by side. */
function WordField({ field, words, prefix, problems }: {
  readonly field: ChosenField<string> | KnownField<string>;
  readonly words: readonly string[];
  readonly prefix: string;
  readonly problems: readonly Problem[];
}): JSX.Element {
  const { name, label = `field-${lastName(name)}`, otherwise = "", none } = field;
  const choices = words.map((word) => ({ word, label: message(prefix + word) }));
  const text = textOf(name);
  return (
    <ChoiceRow
      name={name}
      legend={message(label)}
      beside
      problems={problems}
      chosen={text === "" ? otherwise : text}
      onChoose={(word) => write(name, word)}
      choices={none === undefined ? choices : [{ word: "", label: message(none) }, ...choices]}
    />
  );
}
