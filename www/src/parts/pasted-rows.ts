// Many rows at once, out of a note or a table: one row a line, its columns parted by tabs, semicolons or blanks.

/** A line that cannot be taken, and why. */
export interface RefusedLine {
  /** Its number, from 1. */
  readonly line: number;
  readonly text: string;
  readonly reason: "no-figure" | "too-many-columns" | "no-room" | "no-time";
}

export interface PastedRows {
  /** Texts of each row, in the order of the columns. */
  readonly rows: readonly (readonly string[])[];
  readonly refused: readonly RefusedLine[];
}

/** Reads pasted text for a list with so many columns and so much room; empty lines count for nothing. */
export function pastedRows(text: string, columns: number, room: number): PastedRows {
  const rows: (readonly string[])[] = [];
  const refused: RefusedLine[] = [];
  for (const [place, line] of text.split(/\r?\n/).entries()) {
    if (line.trim() === "") continue;
    const row = columnsOf(line);
    const reason = !/\d/.test(line) ? "no-figure" : row.length > columns ? "too-many-columns" : rows.length >= room ? "no-room" : undefined;
    if (reason === undefined) rows.push(row);
    else refused.push({ line: place + 1, text: line.trim(), reason });
  }
  return { rows, refused };
}

/** A comma parts nothing: it may be a decimal mark. */
function columnsOf(line: string): readonly string[] {
  const mark = ["\t", ";"].find((known) => line.includes(known));
  if (mark !== undefined) return line.split(mark).map((column) => column.trim());
  return line.trim().split(/\s+/).reduce<readonly string[]>(withWord, []);
}

const startOfFigure = /^[+\-−±]?[.,]?\d/;

/** A figure begins a column; what follows it, such as a unit, belongs to it. */
function withWord(columns: readonly string[], word: string): readonly string[] {
  const last = columns[columns.length - 1];
  return last === undefined || startOfFigure.test(word) ? [...columns, word] : [...columns.slice(0, -1), `${last} ${word}`];
}
