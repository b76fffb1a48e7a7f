// Every language says everything that the page says: the same messages with the same arguments, each in its own words.
import assert from "node:assert/strict";
import { readFile, readdir } from "node:fs/promises";
import { test } from "node:test";
import { FluentBundle } from "@fluent/bundle";
import { readMessages } from "../../bundle.mjs";
import { spelledAlike } from "./spelled-alike.mjs";

const folder = new URL("../../locales/", import.meta.url);
const names = await readdir(folder);
const original = "en";
const languages = [...new Set(names.map((name) => name.match(/^[a-z]+/)[0]))];
const others = languages.filter((language) => language !== original);
const partsOf = (language) => names.filter((name) => name.endsWith(".ftl") && name.match(/^[a-z]+/)[0] === language).map((name) => name.slice(language.length));
const source = (name) => readFile(new URL(name, folder), "utf8");
const read = async (language, part) => readMessages(await source(language + part));

/** All messages of a language by id. */
async function messagesOf(language) {
  const files = await Promise.all(partsOf(language).map((part) => read(language, part)));
  return new Map(files.flatMap(({ body }) => body).map((message) => [message.id, message]));
}

/** The expressions anywhere in a pattern. */
function* expressions(pattern) {
  if (pattern === null || typeof pattern !== "object") return;
  if (Array.isArray(pattern)) {
    for (const element of pattern) yield* expressions(element);
    return;
  }
  yield pattern;
  for (const inner of [pattern.selector, pattern.args, ...(pattern.variants ?? []).flatMap(({ key, value }) => [key, value])]) yield* expressions(inner);
}

const found = (pattern, type) => [...expressions(pattern)].filter((one) => one.type === type);
const variables = (pattern) => [...new Set(found(pattern, "var").map(({ name }) => name))].sort();
const patternsOf = ({ value, attributes }) => [["", value], ...Object.entries(attributes)].sort(([one], [other]) => (one < other ? -1 : 1));

/** Words that choose a variant; of numbers, which each language has its own of, only that there is a choice. */
function choices(pattern) {
  return found(pattern, "select").map(({ selector, variants }) => {
    const keys = variants.map(({ key }) => String(key.value));
    const isOfNumbers = keys.every((key) => /^(zero|one|two|few|many|other|\d+)$/.test(key));
    return `${selector.name}: ${isOfNumbers ? "number" : keys.sort().join(" ")}`;
  }).sort();
}

/** The words alone, as they stand, without what is filled in. */
function words(pattern) {
  if (typeof pattern === "string") return pattern;
  if (!Array.isArray(pattern)) return "";
  return pattern.map((element) => (typeof element === "string" ? element : element.type === "select" ? element.variants.map(({ value }) => words(value)).join("") : "")).join("");
}

const english = await messagesOf(original);

test("the messages were found", () => {
  assert.ok(english.size > 1000);
  assert.ok(others.length > 0);
});

for (const language of others) {
  const translated = await messagesOf(language);

  test(`${language} has a file for each of ${original}, with the same messages in the same order`, async () => {
    assert.deepEqual(partsOf(language), partsOf(original));
    for (const part of partsOf(original)) {
      const [{ body: theirs, bad }, { body: ours }] = [await read(language, part), await read(original, part)];
      assert.deepEqual(bad, [], `${language}${part}: cannot be read, or stands twice`);
      const ids = (body) => body.map(({ id }) => id).filter((id) => !id.startsWith("-"));
      assert.deepEqual(ids(theirs), ids(ours), language + part);
    }
  });

  test(`${language} takes the same arguments, attributes and choices`, () => {
    const differing = [...english.values()].flatMap((message) => {
      const other = translated.get(message.id);
      if (other === undefined) return [];
      const told = (one) => patternsOf(one).map(([name, pattern]) => ({ name, variables: variables(pattern), choices: choices(pattern) }));
      const [ours, theirs] = [told(message), told(other)].map((one) => JSON.stringify(one));
      return ours === theirs ? [] : [`${message.id}: ${ours} ${theirs}`];
    });
    assert.deepEqual(differing, []);
  });

  test(`${language} refers to messages that it has`, () => {
    const missing = [...translated.values()].flatMap((message) =>
      patternsOf(message).flatMap(([, pattern]) => [
        ...found(pattern, "mesg").map(({ name }) => name),
        ...found(pattern, "term").map(({ name }) => `-${name}`),
      ]).filter((id) => !translated.has(id)).map((id) => `${message.id}: ${id}`));
    assert.deepEqual(missing, []);
  });

  test(`${language} is not ${original}: only what is spelled alike in both is the same`, () => {
    const same = [...english.values()].filter(({ id, value }) => /\p{L}/u.test(words(value)) && words(value) === words(translated.get(id)?.value)).map(({ id }) => id);
    assert.deepEqual(same.sort(), spelledAlike[language].toSorted());
  });

  test(`${language} is seldom longer than a screen has room for`, () => {
    const lengths = [...english.keys()].filter((id) => translated.has(id)).map((id) => ({ id, ours: words(english.get(id).value).length, theirs: words(translated.get(id).value).length }));
    const sum = (which) => lengths.reduce((total, one) => total + one[which], 0);
    assert.ok(sum("theirs") <= 1.3 * sum("ours"), `${sum("theirs")} characters for ${sum("ours")}`);
    // A short word may double; a sentence must not.
    assert.deepEqual(lengths.filter(({ ours, theirs }) => theirs > 1.6 * ours + 16).map(({ id, ours, theirs }) => `${id}: ${theirs} for ${ours}`), []);
  });

  test(`the practice job in ${language} differs in its words alone`, async () => {
    const [ours, theirs] = await Promise.all([original, language].map(async (one) => JSON.parse(await source(`${one}-practice-job.json`))));
    const spoken = ["name", "site", "technician", "customer", "equipment", "reason", "note", "text"];
    const facts = (job) => JSON.stringify(job, (name, inner) => (spoken.includes(name) && typeof inner === "string" ? "" : inner));
    assert.equal(facts(theirs), facts(ours));
    assert.notDeepEqual(theirs, ours);
  });
}

for (const language of languages) {
  test(`every message of ${language} can be formed, with one and with several`, async () => {
    const bundle = new FluentBundle(language, { useIsolating: false });
    for (const part of partsOf(language)) bundle.addResource(await read(language, part));
    for (const { id, value } of (await messagesOf(language)).values()) {
      if (id.startsWith("-")) continue;
      for (const number of [0, 1, 3]) {
        const errors = [];
        const told = bundle.formatPattern(value, Object.fromEntries(variables(value).map((name) => [name, number])), errors);
        assert.deepEqual(errors, [], id);
        assert.notEqual(told.trim(), "", id);
      }
    }
  });
}
