// Which edition of the page and of the core's tables this is.

/** The hash of all files: two pages with the same one are the same page. */
export const build = content("build");

/** The hash of the calculation core with its tables. */
export const coreEdition = content("core");

function content(name: string): string {
  return document.querySelector<HTMLMetaElement>(`meta[name="${name}"]`)?.content ?? "";
}
