// Broken records as text: whatever is in them, something readable comes out.

/** JSON as far as it goes; what JSON has no word for is written as a text. */
export function rawText(found: unknown): string {
  try {
    return JSON.stringify(found, asText, 1) ?? String(found);
  } catch {
    // It contains itself, or is too deep.
    return JSON.stringify({ unwritable: String(found) });
  }
}

function asText(_name: string, found: unknown): unknown {
  if (typeof found === "bigint" || typeof found === "symbol" || typeof found === "function") return String(found);
  if (found instanceof Map) return [...found];
  if (found instanceof Set) return [...found];
  if (found instanceof ArrayBuffer || ArrayBuffer.isView(found)) return `${found.byteLength} bytes`;
  return found;
}
