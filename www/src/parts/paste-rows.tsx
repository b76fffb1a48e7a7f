// Takes many rows at once into a list, below those that stand there, and says plainly what it could not take.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { message } from "../locale";
import { Disclosure } from "./disclosure";
import { settled } from "./fields";
import { pastedRows, type RefusedLine } from "./pasted-rows";
import { lastRow, mostRows, unitOfColumn, writeRows, type AnyRowList } from "./row-list";

/** What was taken last. */
export interface Taken {
  readonly count: number;
  readonly refused: readonly RefusedLine[];
  /** Takes it out again. */
  readonly takeOut: () => void;
}

export function PasteRows({ list }: { readonly list: AnyRowList }): JSX.Element {
  const take = (text: string): Taken => {
    const first = lastRow(list) + 1;
    const { rows, refused } = pastedRows(text, list.columns.length, mostRows + 1 - first);
    const units = list.columns.map(unitOfColumn);
    writeRows(list, first, rows.map((row) => row.map((column, place) => settled(column, units[place]))));
    const takeOut = (): void => writeRows(list, first, rows.map(() => []));
    return { count: rows.length, refused, takeOut };
  };
  const names = list.columns.map(({ name, label = `field-${name}` }) => message(label)).join("; ");
  return <PasteBox name={list.name} hint={message("rows-paste-hint", { names })} take={take} />;
}

/** Where rows are pasted; `take` takes them and says which it could not take. */
export function PasteBox({ name, hint, take: taking }: {
  readonly name: string;
  readonly hint: string;
  readonly take: (text: string) => Taken;
}): JSX.Element {
  const [text, setText] = useState("");
  const [taken, setTaken] = useState<Taken | undefined>(undefined);
  const field = `paste-${name}`;
  const take = (): void => {
    const found = taking(text);
    setTaken(found);
    // What was not taken stays, to be put right.
    setText(found.refused.map((line) => line.text).join("\n"));
  };
  const takeOut = (): void => {
    taken?.takeOut();
    setTaken(undefined);
  };
  return (
    <Disclosure name="paste" mustShow={false} summary={<span>{message("rows-paste")}</span>}>
      <label for={field}>{hint}</label>
      <textarea id={field} rows={6} spellcheck={false} value={text} onInput={(event) => setText(event.currentTarget.value)} />
      <div class="actions">
        <button class="framed" data-action="take-rows" disabled={text.trim() === ""} onClick={take}>
          {message("rows-paste-take")}
        </button>
        {taken !== undefined && taken.count > 0 && (
          <button data-action="take-out" onClick={takeOut}>
            {message("rows-paste-take-out")}
          </button>
        )}
      </div>
      <div role="status">{taken && <Told taken={taken} />}</div>
    </Disclosure>
  );
}

function Told({ taken: { count, refused } }: { readonly taken: Taken }): JSX.Element {
  return (
    <>
      <p>{message("rows-paste-taken", { count })}</p>
      {refused.map(({ line, text, reason }) => (
        <p key={line} class="problem" data-refused={reason}>
          {message(`rows-paste-${reason}`, { line, text, most: mostRows })}
        </p>
      ))}
    </>
  );
}
