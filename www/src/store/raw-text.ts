// Broken records as text: whatever is in them, something readable comes out.

const deepest = 200;
/** Parts that are written, so that a record which contains itself many times over comes to an end. */
const mostParts = 200_000;

/** JSON, with a word in place of what JSON has none for. */
export function rawText(found: unknown): string {
  const parts = { left: mostParts };
  return JSON.stringify(plain(found, [], parts), undefined, 1) ?? String(found);
}

function plain(found: unknown, around: readonly object[], parts: { left: number }): unknown {
  parts.left -= 1;
  if (typeof found !== "object" || found === null) {
    return found === undefined || ["string", "number", "boolean"].includes(typeof found) ? found : String(found);
  }
  if (around.includes(found)) return "(contains itself)";
  if (parts.left < 0 || around.length > deepest) return "(left out)";
  if (found instanceof Date) return String(found);
  if (found instanceof ArrayBuffer || ArrayBuffer.isView(found)) return `(${found.byteLength} bytes)`;
  const inside = [...around, found];
  if (Array.isArray(found) || found instanceof Map || found instanceof Set) return Array.from(found, (part) => plain(part, inside, parts));
  return Object.fromEntries(Object.entries(found).map(([name, part]) => [name, plain(part, inside, parts)]));
}
