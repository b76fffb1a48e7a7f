// The glossary's data: each name leads to one term, in each language, and answers name steps and sources that there are.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { readMessages } from "../../bundle.mjs";

const source = (path) => readFile(new URL(`../../${path}`, import.meta.url), "utf8");

for (const language of ["en", "es"]) {
  const { body } = readMessages(await source(`locales/${language}-terms.ftl`));
  const of = (prefix) => new Map(body.filter(({ id }) => id.startsWith(prefix)).map(({ id, value }) => [id.slice(prefix.length), value]));
  const [names, meanings] = [of("term-"), of("says-")];

  test(`${language}: every term has names and a meaning`, () => {
    assert.ok(names.size >= 60);
    assert.deepEqual([...names.keys()], [...meanings.keys()]);
    for (const [id, text] of names) assert.ok(text.split(/[;|]/).every((name) => name.trim().length > 1), id);
    for (const [id, text] of meanings) assert.ok(text.length > 20 && text.length < 300, id);
  });

  test(`${language}: a name leads to one term alone`, () => {
    const folded = (name) => name.trim().toLowerCase().replace(/(\p{L}{2,}?)e?s(?!\p{L})/gu, "$1");
    const leads = new Map();
    for (const [id, text] of names) for (const name of text.split(/[;|]/)) leads.set(folded(name), [...new Set([...(leads.get(folded(name)) ?? []), id])]);
    assert.deepEqual([...leads].filter(([, ids]) => ids.length > 1), []);
  });
}

test("sources stand beside answers that there are", async () => {
  const { body } = readMessages(await source("locales/en-why.ftl"));
  const sourced = [...(await source("src/views/lessons/answer-sources.ts")).matchAll(/^  "?([a-z0-9-]+)"?: /gm)].map(([, step]) => step);
  assert.ok(sourced.length > 20);
  assert.deepEqual(sourced.filter((step) => !body.some(({ id }) => id === `because-${step}`)), []);
});
