// Every visible sentence, by message id, from locales/*.ftl, and how figures and times are written: in the one
// language that is spoken. Only its files are fetched before the first figures.

import { FluentBundle, type FluentResource, type FluentVariable } from "@fluent/bundle";
import { ids } from "../locales/en.ftl?ids";
import { decimalMarkOf, localeOf, type Language } from "./language";

export type MessageArguments = Record<string, FluentVariable>;

/** Which views the sentences of a file come with: the first screen, all cards, the jobs, handing on, the questions at the steps, the glossary. */
export type SentencePart = "first" | "cards" | "job" | "hand-on" | "why" | "terms";

type Patterns = typeof import("*.ftl").patterns;
type Ids = readonly string[];

/** Sentences without their ids, which are alike in all languages and stand in `idsOf`, in the same order. */
const sentences: Readonly<Record<Language, Readonly<Record<SentencePart, () => Promise<{ readonly patterns: Patterns }>>>>> = {
  en: {
    first: () => import("../locales/en.ftl"),
    cards: () => import("../locales/en-cards.ftl"),
    job: () => import("../locales/en-job.ftl"),
    "hand-on": () => import("../locales/en-hand-on.ftl"),
    why: () => import("../locales/en-why.ftl"),
    terms: () => import("../locales/en-terms.ftl"),
  },
  es: {
    first: () => import("../locales/es.ftl"),
    cards: () => import("../locales/es-cards.ftl"),
    job: () => import("../locales/es-job.ftl"),
    "hand-on": () => import("../locales/es-hand-on.ftl"),
    why: () => import("../locales/es-why.ftl"),
    terms: () => import("../locales/es-terms.ftl"),
  },
};

/** Those of the first screen are loaded with it. */
const idsOf: Readonly<Record<SentencePart, () => Promise<{ readonly ids: Ids }>>> = {
  first: () => Promise.resolve({ ids }),
  cards: () => import("../locales/en-cards.ftl?ids"),
  job: () => import("../locales/en-job.ftl?ids"),
  "hand-on": () => import("../locales/en-hand-on.ftl?ids"),
  why: () => import("../locales/en-why.ftl?ids"),
  terms: () => import("../locales/en-terms.ftl?ids"),
};

/** The language that is spoken, as in the page's `lang` attribute. */
export let language: Language = "en";

/** The same with its region, as the browser has it: it decides how figures, days and times are written. */
export let locale: string = language;

/** How figures are written. */
export let decimalMark = ".";

/** Counts how often sentences have come: what was drawn before may have to be drawn anew. */
export let editionOfSentences = 0;

let bundle = new FluentBundle(locale);
let wanted: Language = language;
const parts = new Set<SentencePart>(["first"]);

/** Speaks a language from when all its sentences are here that are in use; until then the one before. */
export async function speak(chosen: Language): Promise<void> {
  wanted = chosen;
  try {
    await fetchSentences();
  } catch (reason) {
    if (wanted === chosen) wanted = language;
    throw reason;
  }
}

/** Sentences of views that are fetched later. */
export async function fetchSentencesOf(part: SentencePart): Promise<void> {
  parts.add(part);
  await fetchSentences();
}

async function fetchSentences(): Promise<void> {
  const [asked, count] = [wanted, parts.size];
  const resources = await Promise.all([...parts].map((part) => resourceOf(asked, part)));
  // Meanwhile another language or part may have come to be wanted.
  if (asked !== wanted || count !== parts.size) return fetchSentences();
  takeUp(asked, resources);
}

async function resourceOf(chosen: Language, part: SentencePart): Promise<FluentResource> {
  const [{ ids }, { patterns }] = await Promise.all([idsOf[part](), sentences[chosen][part]()]);
  return { body: ids.map((id, index) => ({ id, value: patterns[index] ?? null, attributes: {} })) };
}

function takeUp(spoken: Language, resources: readonly FluentResource[]): void {
  language = spoken;
  editionOfSentences += 1;
  locale = localeOf(spoken);
  decimalMark = decimalMarkOf(locale);
  // Isolating marks would stand around every figure that a person copies.
  bundle = new FluentBundle(locale, { useIsolating: false });
  for (const resource of resources) bundle.addResource(resource);
  document.documentElement.lang = spoken;
}

/** The sentence of a message id. An unknown id is shown as such: it is a defect, and must be seen. */
export function message(id: string, args?: MessageArguments): string {
  const pattern = bundle.getMessage(id)?.value;
  if (pattern === undefined || pattern === null) {
    console.error(`no message ${id}`);
    return id;
  }
  const errors: Error[] = [];
  const sentence = bundle.formatPattern(pattern, args, errors);
  for (const error of errors) console.error(`message ${id}: ${error.message}`);
  return sentence;
}

/** Whether there is a message with this id. */
export function hasMessage(id: string): boolean {
  return bundle.hasMessage(id);
}

/**
 * A text whose figures have a decimal point, with the mark of the language. Before just three digits the point
 * stays: `7,430` could be read as thousands, and is refused where it is entered.
 */
export function withDecimalMark(text: string): string {
  return text.replace(/(\d)\.(?!\d{3}(?!\d))(?=\d)/g, `$1${decimalMark}`);
}

/** A figure as it is shown, for a field: there a comma before just three digits would be refused. */
export function asEntered(shown: string): string {
  return shown.replace(/,(?=\d{3}(?!\d))/, ".");
}

/** A plain number as it is read, without a unit. */
export function numberText(number: number): string {
  return String(number).replace(".", decimalMark);
}
