// The next reading: what was read last stands ready, goes up and down by the instrument's steps, and one tap keeps it
// with the time.

import type { ComponentChildren, JSX } from "preact";
import { useState } from "preact/hooks";
import { enterAll } from "../../../address";
import { steps, type Stepped } from "../../../core";
import { nowIn, useJob } from "../../../job/job-context";
import { itemsAt, textAt } from "../../../job/job-path";
import { timeOfDay } from "../../../job/moment";
import { nextField, nextText, type ReadingColumn, type ReadingKind } from "../../../job/readings";
import { useSteady } from "../../../job/steady";
import { message } from "../../../locale";
import { settled } from "../../../parts/fields";
import { newItemId, puttingIn, type TreeObject } from "../../../store/jobs";

export function ReadingEntry({ kind, more, emptied = {}, children }: {
  readonly kind: ReadingKind;
  /** What else is kept with the reading. */
  readonly more: TreeObject;
  /** Texts of the address that hold for this reading only. */
  readonly emptied?: Readonly<Record<string, string>>;
  readonly children?: ComponentChildren;
}): JSX.Element {
  const { job, document } = useJob();
  const [kept, setKept] = useState("");
  const { part, hold } = useSteady<HTMLButtonElement>();
  const texts = kind.columns.map((column) => [column.name, settled(nextText(document, kind, column), column.unit())] as const);
  const filled = texts.filter(([, text]) => text !== "");
  const keep = (): void => {
    const at = nowIn(document);
    hold();
    if (!job.apply(puttingIn(kind.path, { id: newItemId(itemsAt(document, ...kind.path)), at, ...Object.fromEntries(filled), ...more }))) return;
    setKept(message("reading-kept", { time: timeOfDay(at), texts: filled.map(([, text]) => text).join(", ") }));
    enterAll({ ...Object.fromEntries(kind.columns.map(({ name }) => [nextField(name), ""])), ...emptied });
  };
  return (
    <section class="reading-entry" aria-label={message("reading-next")}>
      {kind.columns.map((column) => (
        <NextFigure key={column.name} kind={kind} column={column} />
      ))}
      {children}
      <button class="read-now" data-action="read-now" ref={part} disabled={filled.length === 0} onClick={keep}>
        {message("reading-take")}
      </button>
      <p class="note" role="status" data-kept={kept === "" ? undefined : true}>
        {kept === "" ? message("reading-hint") : kept}
      </p>
    </section>
  );
}

/** Large enough to be set without looking closely. */
function NextFigure({ kind, column }: { readonly kind: ReadingKind; readonly column: ReadingColumn }): JSX.Element {
  const { document } = useJob();
  const { name, label, quantity, unit, stepAt, counts } = column;
  const text = nextText(document, kind, column);
  const near = steps(quantity, text, unit(), textAt(document, ...stepAt), counts);
  const field = nextField(name);
  const write = (next: string): void => enterAll({ [field]: next === "" ? " " : next });
  const isBare = text === "" || settled(text, unit()) !== text;
  const half = near.length / 2;
  return (
    <div class="next-figure">
      <label for={field}>{message(label)}</label>
      <div class="entry-line">
        <input
          id={field}
          name={field}
          type="text"
          inputMode={name === "temperature" ? "text" : "decimal"}
          enterkeyhint="done"
          autocomplete="off"
          value={text}
          onInput={(event) => write(event.currentTarget.value)}
          onFocus={(event) => event.currentTarget.select()}
        />
        {isBare && <span class="entry-unit">{unit()}</span>}
      </div>
      {near.length > 0 && (
        <div class="step-buttons" data-count={near.length} role="group" aria-label={message("reading-steps", { field: message(label) })}>
          {near.map((step, place) => (
            <StepButton key={step.label} step={step} of={message(label)} side={place < half ? "down" : "up"} take={write} />
          ))}
        </div>
      )}
    </div>
  );
}

function StepButton({ step: { label, text }, of, side, take }: {
  readonly step: Stepped;
  readonly of: string;
  readonly side: "down" | "up";
  readonly take: (text: string) => void;
}): JSX.Element {
  return (
    <button data-side={side} aria-label={`${of} ${label}`} disabled={text == null} onClick={() => text != null && take(text)}>
      {label}
    </button>
  );
}
