// A field: label, the text as typed, its unit beside it, and what is wrong with it below.

import type { JSX } from "preact";
import type { Problem, QuantityKind } from "../core";
import { hasMessage, message } from "../locale";
import { unitOf } from "../unit-choice";
import { changeUnit, problemOf, problemText, settle, takesUnit, textOf, write } from "./fields";
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
  /** Fields that this one takes the place of: writing here empties them. */
  readonly instead?: readonly string[];
  /** Quantity whose unit is changed beside the field. */
  readonly switches?: QuantityKind;
}

export function EntryField(props: EntryFieldProps): JSX.Element {
  const { name, problems, words, signed, label, instead, switches } = props;
  const unit = switches === undefined ? props.unit : unitOf(switches);
  const problem = problemOf(name, problems);
  const [field, hint, complaint] = [`entry-${name}`, `hint-${name}`, `problem-of-${name}`];
  const hinted = hasMessage(hint);
  const described = [problem && complaint, hinted && hint].filter((id) => typeof id === "string").join(" ");
  return (
    <div class="entry">
      <label for={field}>{message(label ?? `field-${name}`)}</label>
      <div class="entry-line">
        <input
          id={field}
          name={name}
          type="text"
          inputMode={words === true ? "text" : "decimal"}
          enterkeyhint="done"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          value={textOf(name)}
          aria-invalid={problem !== undefined}
          aria-describedby={described === "" ? undefined : described}
          onInput={(event) => write(name, event.currentTarget.value, instead)}
          onChange={() => settle(name, unit)}
        />
        {unit !== undefined && switches === undefined && takesUnit(name) && <span class="entry-unit">{unit}</span>}
        {signed === true && <SignButton name={name} label={label ?? `field-${name}`} />}
        {switches !== undefined && <UnitSwitch quantity={switches} onSwitch={(from, to) => changeUnit(name, from, to)} />}
      </div>
      {hinted && (
        <p class="hint" id={hint}>
          {message(hint)}
        </p>
      )}
      <p class="problem" id={complaint} role="status" data-problem-of={problem && name}>
        {problem && problemText(problem, unit)}
      </p>
    </div>
  );
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
