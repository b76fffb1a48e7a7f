// A list of rows with the same fields, to be filled with one hand: see row-list.ts for how it is declared.
// Rows are added (with the texts that repeat), taken out and put back, or pasted; each problem stands at its row.
//
//   <EntryRows list={readings} problems={problems} legend={message("readings-legend")} add={message("readings-add")} />

import type { JSX } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { Problem } from "../core";
import { message } from "../locale";
import { EntryInput, ProblemLine } from "./entry-field";
import { isMistake, isWanted, problemOf, problemText, takesUnit } from "./fields";
import { PasteRows } from "./paste-rows";
import { hasMoreRows, insertRow, lastRow, mostRows, problemsInRows, problemsOfList, removeRow, rowField, textsOfRow, unitOfColumn, writeRows } from "./row-list";
import type { AnyRowList, Column, RowTexts } from "./row-list";
import { Select } from "./select-field";

interface Removed {
  readonly row: number;
  readonly texts: RowTexts;
}

export function EntryRows({ list, problems, legend, add = message("rows-add"), hint }: {
  readonly list: AnyRowList;
  readonly problems: readonly Problem[];
  readonly legend: string;
  /** What the button says that adds a row. */
  readonly add?: string;
  readonly hint?: string;
}): JSX.Element {
  const frame = useRef<HTMLFieldSetElement>(null);
  const [open, setOpen] = useState(list.least ?? 1);
  const [removed, setRemoved] = useState<Removed | undefined>(undefined);
  const [focus, setFocus] = useState<string | undefined>(undefined);
  useLayoutEffect(() => {
    if (focus !== undefined) frame.current?.querySelector<HTMLElement>(focus)?.focus();
    setFocus(undefined);
  }, [focus]);
  const last = lastRow(list);
  const count = Math.min(Math.max(last, open, list.least ?? 1), mostRows);
  const placed = problemsInRows(list, problems);
  const first = list.columns[0];
  const addRow = (): void => {
    // An empty row that stands there already is the next one.
    const next = last < count ? last + 1 : count + 1;
    const before = next > 1 ? textsOfRow(list, next - 1) : [];
    writeRows(list, next, [list.columns.map(({ repeats }, place) => (repeats === true ? (before[place] ?? "") : ""))]);
    setOpen(next);
    if (first) setFocus(`#entry-${rowField(first, next)}`);
  };
  const takeOut = (row: number): void => {
    setRemoved({ row, texts: textsOfRow(list, row) });
    removeRow(list, row);
    setOpen(count - 1);
    setFocus('[data-action="put-back"]');
  };
  const putBack = ({ row, texts }: Removed): void => {
    insertRow(list, row, texts);
    setOpen(count + 1);
    setRemoved(undefined);
    if (first) setFocus(`#entry-${rowField(first, row)}`);
  };
  return (
    <fieldset class="entry-rows" ref={frame} data-list={list.name} data-columns={list.columns.length} data-stacked={list.isStacked}>
      <legend>{legend}</legend>
      {hint !== undefined && <p class="hint">{hint}</p>}
      <ol>
        {Array.from({ length: count }, (_, place) => (
          <EntryRow
            key={place}
            list={list}
            row={place + 1}
            problems={placed}
            takeOut={place < last || count > 1 ? () => takeOut(place + 1) : undefined}
          />
        ))}
      </ol>
      <ListProblems list={list} problems={problems} />
      <p class="removed" role="status">
        {removed && (
          <>
            <span>{message("rows-removed", { row: removed.row })}</span>
            <button data-action="put-back" disabled={last >= mostRows} onClick={() => putBack(removed)}>
              {message("rows-put-back")}
            </button>
          </>
        )}
      </p>
      {last < mostRows ? (
        <button class="framed" data-action="add-row" onClick={addRow}>
          {add}
        </button>
      ) : (
        <p class="note">{message("rows-full", { most: mostRows })}</p>
      )}
      <PasteRows list={list} />
    </fieldset>
  );
}

function EntryRow({ list, row, problems, takeOut }: {
  readonly list: AnyRowList;
  readonly row: number;
  readonly problems: readonly Problem[];
  readonly takeOut: (() => void) | undefined;
}): JSX.Element {
  return (
    <li class={row === 1 ? "first" : undefined}>
      <span class="number" aria-hidden="true">
        {row}
      </span>
      <div class="cells">
        {list.columns.map((column) => (
          <Cell key={column.name} column={column} row={row} problems={problems} />
        ))}
      </div>
      {takeOut && (
        <button class="take-out" aria-label={message("rows-remove", { row })} onClick={takeOut}>
          ×
        </button>
      )}
      <div class="row-problems">
        {list.columns.map((column) => (
          <ProblemLine
            key={column.name}
            name={rowField(column, row)}
            problem={problemOf(rowField(column, row), problems)}
            unit={unitOfColumn(column)}
            of={message(column.label ?? `field-${column.name}`)}
          />
        ))}
      </div>
    </li>
  );
}

/** The labels of the first row head the columns; those of the others are only heard, but where there is no room for columns. */
function Cell({ column, row, problems }: {
  readonly column: Column;
  readonly row: number;
  readonly problems: readonly Problem[];
}): JSX.Element {
  const name = rowField(column, row);
  const unit = unitOfColumn(column);
  const problem = problemOf(name, problems);
  const shared = { name, isInvalid: isMistake(problem), describedBy: problem && `problem-of-${name}` };
  return (
    <div class="cell">
      <label for={`entry-${name}`}>
        {message(column.label ?? `field-${column.name}`)}
        {unit !== undefined && takesUnit(name) && <small>{unit}</small>}
        <span class="heard">{message("rows-row", { row })}</span>
      </label>
      {column.choices ? (
        <Select {...shared} none={message("choose")} choices={column.choices()} />
      ) : (
        <EntryInput {...shared} unit={unit} words={column.words === true} />
      )}
    </div>
  );
}

/** What is wrong with the list as such or with a whole row. */
function ListProblems({ list, problems }: { readonly list: AnyRowList; readonly problems: readonly Problem[] }): JSX.Element {
  const told = problemsOfList(list, problems);
  return (
    <div role="status">
      {hasMoreRows(list) && <p class="problem">{message("rows-more", { most: mostRows })}</p>}
      {told.map(({ problem, row }) => (
        <p key={`${row} ${problem.code}`} class={isWanted(problem) ? "problem wanted" : "problem"} data-problem-of={list.name}>
          {row !== undefined && `${message("rows-row", { row })}: `}
          {problemText(problem)}
        </p>
      ))}
    </div>
  );
}
