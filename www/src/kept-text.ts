// Short texts that the browser keeps from visit to visit. Private windows and full storage refuse; that stops nothing.

/** The text of a key, if the browser has kept one. */
export function keptText(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** Keeps a text; whether the browser takes it. */
export function keepText(key: string, text: string): boolean {
  try {
    localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}
