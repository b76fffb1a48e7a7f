// Style sheets come with the script that needs them: a file of its own would be one more to wait for.

/** Applies the text of a style sheet, after those applied before. */
export function applyStyle(text: string): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(text);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}
