// Splits a sentence where it names a term of the glossary: whole words, the longest name first.

import { editionOfSentences } from "../locale";
import { terms } from "./terms";

export interface NamedTerm {
  readonly id: string;
  /** As it stands in the sentence. */
  readonly text: string;
}

type Pieces = readonly (string | NamedTerm)[];

/** Sentences with figures in them differ with each key: no more are remembered than a screen says. */
const mostRemembered = 2000;

let pattern = /$^/u;
let idOf: ReadonlyMap<string, string> = new Map();
let preparedIn: number | undefined;
const remembered = new Map<string, Pieces>();

/** The sentence in pieces; a term is named at its first place only. */
export function piecesOf(sentence: string): Pieces {
  if (preparedIn !== editionOfSentences) prepare();
  const before = remembered.get(sentence);
  if (before !== undefined) return before;
  if (remembered.size >= mostRemembered) remembered.clear();
  const pieces = split(sentence);
  remembered.set(sentence, pieces);
  return pieces;
}

function prepare(): void {
  preparedIn = editionOfSentences;
  remembered.clear();
  const spellings = terms().flatMap(({ id, spellings }) => spellings.map((name) => [name, id] as const));
  idOf = new Map(spellings.map(([name, id]) => [folded(name), id]));
  const alternatives = spellings.map(([name]) => name).sort((one, other) => other.length - one.length).map(withPlurals);
  // What stands before is read with it: not every browser looks behind.
  pattern = new RegExp(`(^|[^\\p{L}\\p{N}])(${alternatives.join("|")})(?![\\p{L}\\p{N}])`, "giu");
}

/** Each word with or without the ending of the plural, which both languages form alike. */
function withPlurals(name: string): string {
  return name.replace(/[.()+?*[\]\\]/g, "\\$&").replace(/\p{L}{2,}/gu, "$&(?:e?s)?").replaceAll(" ", "[ \\u00a0]");
}

/** Without the endings that `withPlurals` allows, so that a name is found again by any of its forms. */
function folded(name: string): string {
  return name.toLowerCase().replaceAll("\u00a0", " ").replace(/(\p{L}{2,}?)e?s(?!\p{L})/gu, "$1");
}

function split(sentence: string): Pieces {
  const pieces: (string | NamedTerm)[] = [];
  const named = new Set<string>();
  let end = 0;
  for (const { 0: whole, 1: before = "", 2: text = "", index } of sentence.matchAll(pattern)) {
    const id = idOf.get(folded(text));
    if (id === undefined || named.has(id)) continue;
    named.add(id);
    pieces.push(sentence.slice(end, index + before.length), { id, text });
    end = index + whole.length;
  }
  pieces.push(sentence.slice(end));
  return pieces;
}
