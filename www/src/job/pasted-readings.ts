// Readings out of a note or a table: each line a time and the figures, each put where its time belongs.

import { settled } from "../parts/fields";
import { pastedRows, type RefusedLine } from "../parts/pasted-rows";
import { newItemId, puttingIn, type Change, type Item, type TreeObject } from "../store/jobs";
import { itemsAt } from "./job-path";
import { pastedTimes, wallOf } from "./local-time";
import { idBefore, type ReadingKind } from "./readings";

export interface TakenReadings {
  readonly ids: readonly string[];
  readonly changes: readonly Change[];
  readonly refused: readonly RefusedLine[];
}

export interface PastedAt {
  /** What the device's clock shows, in ms. */
  readonly wall: number;
  readonly momentOf: (wall: number) => string;
  /** What else is kept with each reading. */
  readonly more: TreeObject;
}

interface Line {
  readonly line: number;
  readonly text: string;
  readonly row: readonly string[];
}

/** More at once are no readings of a hold. */
const mostPasted = 500;

export function pastedReadings(document: TreeObject, { path, columns }: ReadingKind, text: string, at: PastedAt): TakenReadings {
  const { lines, refused } = linesOf(text, columns.length + 1);
  const times = pastedTimes(lines.map(({ row: [time = ""] }) => time), at.wall);
  const standing = itemsAt(document, ...path).map(({ id, at: moment }) => ({ id, wall: wallOf(String(moment)) }));
  const [ids, changes, untimed]: [string[], Change[], RefusedLine[]] = [[], [], []];
  for (const [place, line] of lines.entries()) {
    const wall = times[place];
    if (wall === undefined || ids.length >= mostPasted) {
      untimed.push({ line: line.line, text: line.text, reason: wall === undefined ? "no-time" : "no-room" });
      continue;
    }
    const figures = columns.map(({ name, unit }, column) => [name, settled(line.row[column + 1] ?? "", unit())] as const);
    const item: Item = { id: newItemId(standing), at: at.momentOf(wall), ...at.more, ...Object.fromEntries(figures.filter(([, figure]) => figure !== "")) };
    const after = idBefore(standing, wall);
    standing.splice(standing.findIndex(({ id }) => id === after) + 1, 0, { id: item.id, wall });
    ids.push(item.id);
    changes.push(puttingIn(path, item, after));
  }
  return { ids, changes, refused: [...refused, ...untimed].sort((one, other) => one.line - other.line) };
}

/** Line by line, so that each keeps its number. */
function linesOf(text: string, columns: number): { readonly lines: readonly Line[]; readonly refused: readonly RefusedLine[] } {
  const [lines, refused]: [Line[], RefusedLine[]] = [[], []];
  for (const [place, written] of text.split(/\r?\n/).entries()) {
    const found = pastedRows(dateJoined(written), columns, 1);
    refused.push(...found.refused.map((line) => ({ ...line, line: place + 1 })));
    lines.push(...found.rows.map((row) => ({ line: place + 1, text: written.trim(), row })));
  }
  return { lines, refused };
}

/** A day and a time of day parted by a blank are one column. */
function dateJoined(line: string): string {
  return line.replace(/^(\s*\d{4}-\d{2}-\d{2})\s+(?=\d{1,2}:\d{2})/, "$1T");
}
