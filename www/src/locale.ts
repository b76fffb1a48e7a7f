// Every visible sentence, by message id, from locales/*.ftl.

import { FluentBundle, type FluentResource, type FluentVariable } from "@fluent/bundle";
import { messages } from "../locales/en.ftl";

export type MessageArguments = Record<string, FluentVariable>;

/** The language of the page, as in its `lang` attribute. */
export const language = "en";

/** How figures are written in this language. */
export const decimalMark = ".";

// Isolating marks would stand around every figure that a person copies.
const bundle = new FluentBundle(language, { useIsolating: false });
bundle.addResource(messages);

/** Adds the sentences of views that are fetched later. */
export function addMessages(resource: FluentResource): void {
  bundle.addResource(resource);
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
