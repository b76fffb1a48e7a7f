// Comma-separated values as RFC 4180 has them: for spreadsheets, which must not take a text for a formula.

export type Cell = string | number | boolean | null | undefined;

/** A header row and the rows below it, each ended by carriage return and line feed. */
export function csvText(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [header, ...rows].map((row) => `${row.map(written).join(",")}\r\n`).join("");
}

function written(cell: Cell): string {
  if (cell === null || cell === undefined) return "";
  if (typeof cell === "string") return quoted(guarded(cell));
  // More digits than any instrument has, fewer than the noise of arithmetic.
  return typeof cell === "number" ? String(Number(cell.toPrecision(9))) : String(cell);
}

/** A spreadsheet computes what begins so. */
function guarded(text: string): string {
  return /^[\s]*[=+\-@]/.test(text) || /^[\t\r\n]/.test(text) ? `'${text}` : text;
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
