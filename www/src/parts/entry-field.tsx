// A field: label, the text as typed, its unit beside it, and what is wrong with it below.

import type { JSX } from "preact";
import type { Problem, QuantityKind } from "../core";
import { decimalMark, hasMessage, message } from "../locale";
import { unitOf } from "../unit-choice";
import { changeUnit, isMistake, isWanted, lastName, problemOf, problemText, settle, takesUnit, textOf, write } from "./fields";
import { UnitSwitch } from "./unit-switch";

export interface EntryFieldProps {
  readonly name: string;
  readonly problems: readonly Problem[];
  /** Unit of a bare number, shown beside the field. */
  readonly unit?: string;
  /** Whether people write words or units here, rather than figures alone. */
  readonly words?: boolean;
  /** Whether the figure may be negative: some phones' pads of figures have no minus. */
  readonly signed?: boolean;
  /** Message id of the label, where it is not the field's own. */
  readonly label?: string;
  /** Message id of the hint, where it is not the field's own. */
  readonly hint?: string;
  /** Fields that this one takes the place of: writing here empties them. */
  readonly instead?: readonly string[];
  /** Quantity whose unit is changed beside the field. */
  readonly switches?: QuantityKind;
}

export function EntryField(props: EntryFieldProps): JSX.Element {
  const { name, problems, words, signed, label, instead, switches } = props;
  const unit = switches === undefined ? props.unit : unitOf(switches);
  const problem = problemOf(name, problems);
  const [field, hint, complaint] = [`entry-${name}`, props.hint ?? `hint-${lastName(name)}`, `problem-of-${name}`];
  const title = label ?? `field-${lastName(name)}`;
  const hinted = hasMessage(hint);
  const described = [problem && complaint, hinted && hint].filter((id) => typeof id === "string").join(" ");
  return (
    <div class="entry">
      <label for={field}>{message(title)}</label>
      <div class="entry-line">
        <EntryInput
          name={name}
          unit={unit}
          words={words === true}
          instead={instead}
          isInvalid={isMistake(problem)}
          describedBy={described === "" ? undefined : described}
        />
        {unit !== undefined && switches === undefined && takesUnit(name) && <span class="entry-unit">{unit}</span>}
        {signed === true && <SignButton name={name} label={title} />}
        {switches !== undefined && <UnitSwitch quantity={switches} onSwitch={(from, to) => changeUnit(name, from, to)} />}
      </div>
      {hinted && (
        <p class="hint" id={hint}>
          {message(hint)}
        </p>
      )}
      <ProblemLine name={name} problem={problem} unit={unit} />
    </div>
  );
}

/** The input alone, its text kept as typed. */
export function EntryInput({ name, unit, words, instead, isInvalid, describedBy }: {
  readonly name: string;
  readonly unit: string | undefined;
  readonly words: boolean;
  readonly instead?: readonly string[] | undefined;
  readonly isInvalid: boolean;
  readonly describedBy: string | undefined;
}): JSX.Element {
  return (
    <input
      id={`entry-${name}`}
      name={name}
      type="text"
      inputMode={words ? "text" : "decimal"}
      enterkeyhint="done"
      autocomplete="off"
      autocapitalize="off"
      spellcheck={false}
      value={textOf(name)}
      aria-invalid={isInvalid}
      aria-describedby={describedBy}
      onInput={(event) => write(name, event.currentTarget.value, instead, unit)}
      onChange={() => settle(name, unit)}
    />
  );
}

/** What is wrong with a field; quieter where it is only wanted yet. `of` names the field where it stands apart from it. */
export function ProblemLine({ name, problem, unit, of }: {
  readonly name: string;
  readonly problem: Problem | undefined;
  readonly unit?: string | undefined;
  readonly of?: string;
}): JSX.Element {
  const sentence = problem === undefined ? pointNote(textOf(name)) : problemText(problem, unit);
  return (
    <p
      class={problem === undefined || isWanted(problem) ? "problem wanted" : "problem"}
      id={`problem-of-${name}`}
      role="status"
      data-problem-of={problem && name}
    >
      {sentence !== undefined && of !== undefined ? `${of}: ${sentence}` : sentence}
    </p>
  );
}

/** Where a comma parts the fraction, a point may have been meant to part thousands: how it was read must be seen. */
function pointNote(text: string): string | undefined {
  const found = decimalMark === "," ? /^[^\d]*([1-9]\d{0,2}\.\d{3})(?![\d.,])/.exec(text)?.[1] : undefined;
  return found === undefined ? undefined : message("point-is-decimal", { found, decimal: found.replace(".", decimalMark) });
}

function SignButton({ name, label }: { readonly name: string; readonly label: string }): JSX.Element {
  const flip = (): void => {
    const text = textOf(name).trimStart();
    write(name, /^[-−]/.test(text) ? text.slice(1).trimStart() : `−${text}`);
  };
  return (
    <button class="sign" aria-label={message("plus-minus-of", { field: message(label) })} onClick={flip}>
      {message("plus-minus")}
    </button>
  );
}
