// Which language the page speaks: the one chosen in the settings, else the one that a link asks for
// (`?lang=es` before the `#`), else the first of the browser's that the page has.

import { keepText, keptText } from "./kept-text";
import { settings } from "./settings";

/** By their subtags of BCP 47; what each calls itself. */
export const languageNames = { en: "English", es: "Español" } as const;

export type Language = keyof typeof languageNames;

export const languages = Object.keys(languageNames) as readonly Language[];

/** What is spoken where nothing known is asked for. */
const fallback: Language = "en";

export function chosenLanguage(): Language {
  const asked = new URLSearchParams(location.search).get("lang");
  return known(settings().language) ?? known(asked ?? "") ?? browserLanguage();
}

/** The first of the browser's languages that the page has. */
function browserLanguage(): Language {
  return navigator.languages.map(known).find((language) => language !== undefined) ?? fallback;
}

/** The page's language for a tag such as `es-MX`. */
function known(tag: string): Language | undefined {
  const [subtag] = tag.toLowerCase().split(/[-_]/, 1);
  return languages.find((language) => language === subtag);
}

/** The browser's own tag for a language, with its region: Mexico writes a decimal point, Spain a comma. */
export function localeOf(language: Language): string {
  return navigator.languages.find((tag) => known(tag) === language) ?? language;
}

/**
 * What parts a number from its fraction, if the core can write it. The browser takes longer to say it than the core takes for
 * the first figures, so what it said is kept: a locale does not change its mind.
 */
export function decimalMarkOf(locale: string): string {
  const storageKey = `coldwright decimal mark ${locale}`;
  const kept = keptText(storageKey);
  if (kept === "," || kept === ".") return kept;
  const parts = new Intl.NumberFormat(locale).formatToParts(0.5);
  const mark = parts.find(({ type }) => type === "decimal")?.value === "," ? "," : ".";
  keepText(storageKey, mark);
  return mark;
}
