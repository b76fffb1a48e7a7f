// A list of rows with the same fields (readings, lines, rooms): where its texts are kept, and what is sent
// of it. In the address each text has the name of its field and the number of its row: `time1`, `pressure1`.
//
//   const readings: RowList<ReadingInput> = {
//     name: "readings",
//     columns: [
//       { name: "time", quantity: "time" },
//       { name: "pressure", quantity: "absolute-pressure", unit: vacuumUnit },
//       { name: "temperature", quantity: "temperature", repeats: true },
//     ],
//   };
//   calculate("vacuum-hold", { ...inputOf(fields), readings: rowsOf(readings) })
//   <EntryRows list={readings} problems={problems} />      places `readings[2].pressure` beside its field

import { enterAll, place } from "../address";
import type { Problem, QuantityKind } from "../core";
import { unitOf } from "../unit-choice";
import type { Choice } from "./choice-row";
import { entryOf, textOf } from "./fields";

export interface Column<Key extends string = string> {
  /** As in the input of the calculation. */
  readonly name: Key;
  /** Name in the address, where another list or field of the card has the same one. */
  readonly stem?: string;
  /** Message id of the label, where it is not `field-<name>`. */
  readonly label?: string;
  /** Of a figure with a unit; without it, a text or a count. */
  readonly quantity?: QuantityKind;
  /** Unit of a bare number, where it is another than the person's usual one. */
  readonly unit?: () => string;
  /** Whether people write words, units or a minus here: some phones' pads of figures have none. */
  readonly words?: true;
  /** Words to choose from, by the phone's own list. */
  readonly choices?: () => readonly Choice[];
  /** Whether a new row starts with the text of the last one. Such a text alone does not make a row. */
  readonly repeats?: true;
}

export interface AnyRowList {
  /** Field of the calculation that takes the list. */
  readonly name: string;
  readonly columns: readonly Column[];
  /** How many rows are offered from the start; one if nothing is said. */
  readonly least?: number;
  /** Whether the fields of a row stand in several lines, so that each must bear its own label. */
  readonly isStacked?: true;
}

/** A list of items of the core's type. */
export interface RowList<Item> extends AnyRowList {
  readonly columns: readonly Column<keyof Item & string>[];
}

/** Most rows that are kept: a link must still be sent by any messenger. */
export const mostRows = 60;

/** Name of a field in a row, counted from 1. A name that ends in a figure is kept apart from the row's. */
export function rowField({ name, stem = name }: Column, row: number): string {
  return `${stem}${/\d$/.test(stem) ? "_" : ""}${row}`;
}

/** Unit of a bare number in a column. */
export function unitOfColumn({ quantity, unit }: Column): string | undefined {
  return quantity && (unit?.() ?? unitOf(quantity));
}

/** The number of the last row in which anything stands. */
export function lastRow(list: AnyRowList): number {
  const isFilled = (row: number): boolean => list.columns.some((column) => textOf(rowField(column, row)).trim() !== "");
  return Array.from({ length: mostRows }, (_, place) => mostRows - place).find(isFilled) ?? 0;
}

/** Whether the address has rows beyond those that are read: a link that somebody wrote by hand. */
export function hasMoreRows(list: AnyRowList): boolean {
  return list.columns.some((column) => place().entries[rowField(column, mostRows + 1)] !== undefined);
}

/** The numbers of the rows that are sent: a row that only repeats another one's texts is none yet. */
export function sentRows(list: AnyRowList): readonly number[] {
  const own = list.columns.filter(({ repeats }) => repeats !== true);
  const telling = own.length > 0 ? own : list.columns;
  const rows = Array.from({ length: lastRow(list) }, (_, place) => place + 1);
  return rows.filter((row) => telling.some((column) => textOf(rowField(column, row)).trim() !== ""));
}

/** What the list sends: texts as typed, empty rows left out. */
export function rowsOf<Item>(list: RowList<Item>): Item[] {
  const { columns }: AnyRowList = list;
  return sentRows(list).map((row) => {
    const sent = columns.map((column) => {
      const [field, unit] = [rowField(column, row), unitOfColumn(column)];
      return [column.name, column.quantity === undefined ? textOf(field).trim() : entryOf(field, column.quantity, unit)];
    });
    return Object.fromEntries(sent) as Item;
  });
}

/** The problems of a list's fields, each under the name that its field has in its row. */
export function problemsInRows(list: AnyRowList, problems: readonly Problem[]): readonly Problem[] {
  const rows = sentRows(list);
  return problems.flatMap((problem) => {
    const [, item, name] = /^\[(\d+)\]\.(\w+)/.exec(withinList(list, problem) ?? "") ?? [];
    const column = list.columns.find((known) => known.name === name);
    const row = rows[Number(item)];
    return column === undefined || row === undefined ? [] : [{ ...problem, field: rowField(column, row) }];
  });
}

/** The problems of the list as such and of whole rows, each with the number of its row if it has one. */
export function problemsOfList(list: AnyRowList, problems: readonly Problem[]): readonly { problem: Problem; row: number | undefined }[] {
  const rows = sentRows(list);
  const known = list.columns.map(({ name }) => name);
  return problems.flatMap((problem) => {
    const rest = withinList(list, problem);
    const [, item, name] = /^(?:\[(\d+)\])?(?:\.(\w+))?/.exec(rest ?? "") ?? [];
    if (rest === undefined || (name !== undefined && known.includes(name))) return [];
    return [{ problem, row: item === undefined ? undefined : rows[Number(item)] }];
  });
}

/** What follows the list's name in the field of a problem; nothing if the field is none of the list's. */
function withinList({ name }: AnyRowList, { field }: Problem): string | undefined {
  const isWithin = field === name || field.startsWith(`${name}[`);
  return isWithin ? field.slice(name.length) : undefined;
}

export type RowTexts = readonly string[];

/** The texts of a row, in the order of the columns. */
export function textsOfRow(list: AnyRowList, row: number): RowTexts {
  return list.columns.map((column) => textOf(rowField(column, row)));
}

/** Writes rows from number `first` on, in one step. */
export function writeRows(list: AnyRowList, first: number, rows: readonly RowTexts[]): void {
  const texts = rows.flatMap((row, place) => list.columns.map((column, at) => [rowField(column, first + place), row[at] ?? ""]));
  enterAll(Object.fromEntries(texts));
}

/** Takes a row out; those below move up. */
export function removeRow(list: AnyRowList, row: number): void {
  writeRows(list, row, [...rowsFrom(list, row + 1), []]);
}

/** Puts a row in; those below move down. */
export function insertRow(list: AnyRowList, row: number, texts: RowTexts): void {
  writeRows(list, row, [texts, ...rowsFrom(list, row)]);
}

function rowsFrom(list: AnyRowList, first: number): readonly RowTexts[] {
  return Array.from({ length: Math.max(lastRow(list) - first + 1, 0) }, (_, place) => textsOfRow(list, first + place));
}
