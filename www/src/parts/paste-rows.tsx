// Takes many rows at once into a list, below those that stand there, and says plainly what it could not take.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { message } from "../locale";
import { Disclosure } from "./disclosure";
import { settled } from "./fields";
import { pastedRows, type RefusedLine } from "./pasted-rows";
import { lastRow, mostRows, unitOfColumn, writeRows, type AnyRowList } from "./row-list";

/** What was taken last: so many rows, from this number on. */
interface Taken {
  readonly first: number;
  readonly count: number;
  readonly refused: readonly RefusedLine[];
}

export function PasteRows({ list }: { readonly list: AnyRowList }): JSX.Element {
  const [text, setText] = useState("");
  const [taken, setTaken] = useState<Taken | undefined>(undefined);
  const field = `paste-${list.name}`;
  const names = list.columns.map(({ name, label = `field-${name}` }) => message(label)).join("; ");
  const take = (): void => {
    const first = lastRow(list) + 1;
    const { rows, refused } = pastedRows(text, list.columns.length, mostRows + 1 - first);
    const units = list.columns.map(unitOfColumn);
    writeRows(list, first, rows.map((row) => row.map((column, place) => settled(column, units[place]))));
    setTaken({ first, count: rows.length, refused });
    // What was not taken stays, to be put right.
    setText(refused.map((line) => line.text).join("\n"));
  };
  const takeOut = (): void => {
    if (taken !== undefined) writeRows(list, taken.first, Array.from({ length: taken.count }, () => []));
    setTaken(undefined);
  };
  return (
    <Disclosure name="paste" mustShow={false} summary={<span>{message("rows-paste")}</span>}>
      <label for={field}>{message("rows-paste-hint", { names })}</label>
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
