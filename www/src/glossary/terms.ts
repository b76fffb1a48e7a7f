// The terms of the glossary in the language that is spoken. `term-<id>` has a term's names, the usual one first, parted by
// semicolons; after a bar come spellings that are recognised and not offered. `says-<id>` is what it means.

import { ids } from "../../locales/en-terms.ftl?ids";
import { editionOfSentences, hasMessage, message } from "../locale";

export interface Term {
  readonly id: string;
  readonly name: string;
  /** What else it is called. */
  readonly others: readonly string[];
  /** All of these, and the spellings that are only recognised. */
  readonly spellings: readonly string[];
}

const prefix = "term-";

/** Whether the glossary's sentences have come. */
export function areTermsHere(): boolean {
  return hasMessage(ids[0] ?? "");
}

let known: readonly Term[] = [];
let knownIn: number | undefined;

/** All terms, by the order of their names. */
export function terms(): readonly Term[] {
  if (knownIn !== editionOfSentences) {
    knownIn = editionOfSentences;
    known = ids.filter((id) => id.startsWith(prefix)).map(termOf).sort((one, other) => one.name.localeCompare(other.name));
  }
  return known;
}

export function termNamed(id: string): Term | undefined {
  return terms().find((term) => term.id === id);
}

function termOf(messageId: string): Term {
  const [offered = [], recognised = []] = message(messageId).split("|").map((part) => part.split(";").map((name) => name.trim()));
  const [name = "", ...others] = offered;
  return { id: messageId.slice(prefix.length), name, others, spellings: [...offered, ...recognised] };
}

/** The terms that a text asks for: those with a name in which a word begins so, then those that say it. */
export function termsFound(text: string): readonly Term[] {
  const wanted = plain(text).trim();
  if (wanted === "") return terms();
  const isNamed = ({ spellings }: Term): boolean => spellings.some((name) => ` ${plain(name)}`.includes(` ${wanted}`));
  const named = terms().filter(isNamed);
  return [...named, ...terms().filter((term) => !named.includes(term) && plain(message(`says-${term.id}`)).includes(wanted))];
}

/** Without accents and capitals, which nobody types in a hurry; whatever parts words is a blank. */
function plain(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ");
}
