// Bundles the sources with esbuild.
import { readFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { FluentResource } from "@fluent/bundle";
import * as esbuild from "esbuild";

/** The oldest browsers that the page's security policy and the core's module both allow. */
const oldestBrowsers = ["chrome101", "firefox102", "safari16"];

/**
 * Bundles each entry; gives the files by name, a hash of the content in each, the names of those that the entries
 * themselves load (the others are fetched later), and the file that a source has become the entry of. `sentences` are
 * the files of the first screen's sentences by language, of which one is loaded. `reshape` as for `messagesReshaped`.
 */
export async function bundle({
  entries,
  modules = {},
  isDevelopment,
  isOneFile = false,
  publicAddress = "",
  version = "",
  kept = {},
  replaced = [],
  reshape,
}) {
  const { outputFiles, metafile } = await esbuild.build({
    absWorkingDir: dirname(fileURLToPath(import.meta.url)),
    entryPoints: entries,
    entryNames: "[name]-[hash]",
    outdir: "out",
    write: false,
    metafile: true,
    bundle: true,
    format: isOneFile ? "iife" : "esm",
    // What the page fetches after the first figures becomes a file of its own.
    splitting: !isOneFile,
    loader: { ".wasm": "binary" },
    target: oldestBrowsers,
    minify: !isDevelopment,
    sourcemap: isDevelopment ? "inline" : false,
    legalComments: "none",
    jsx: "automatic",
    jsxImportSource: "preact",
    define: {
      DEVELOPMENT: JSON.stringify(isDevelopment),
      ONE_FILE: JSON.stringify(isOneFile),
      PUBLIC_ADDRESS: JSON.stringify(publicAddress),
      // What an iife has no use for: the core's glue would look there for the module.
      ...(isOneFile && { "import.meta.url": '""' }),
      FIRST_MODULE: JSON.stringify(modules.first ?? ""),
      WHOLE_MODULE: JSON.stringify(modules.whole ?? ""),
      VERSION: JSON.stringify(version),
      KEPT: JSON.stringify(kept),
      REPLACED: JSON.stringify(replaced),
    },
    plugins: [messagesReshaped(reshape), style, ...(isOneFile ? [] : [firstScreenTogether(entries)])],
  });
  const files = outputFiles.map(({ path, contents }) => [basename(path), contents]);
  const fileOf = (source) => basename(Object.keys(metafile.outputs).find((path) => metafile.outputs[path].entryPoint === source));
  return { files, first: loadedFirst(metafile.outputs, entries), fileOf, sentences: sentencesOf(metafile.outputs) };
}

function sentencesOf(outputs) {
  const language = (path) => outputs[path].entryPoint?.match(/locales\/([a-z]+)\.ftl$/)?.[1];
  return Object.fromEntries(Object.keys(outputs).filter(language).map((path) => [language(path), basename(path)]));
}

/** The entries' files and what they import, directly or through another. */
function loadedFirst(outputs, entries) {
  const first = new Set(Object.keys(outputs).filter((path) => entries.includes(outputs[path].entryPoint)));
  for (const path of first) {
    for (const { path: imported, kind } of outputs[path].imports) if (kind === "import-statement") first.add(imported);
  }
  return [...first].map((path) => basename(path));
}

/** The messages of a locale file, and the ids of those that cannot be read or stand twice. */
export function readMessages(source) {
  const { body } = new FluentResource(source);
  const read = new Set(body.map(({ id }) => id));
  const written = [...source.matchAll(/^(-?[a-zA-Z][\w-]*) *=/gm)].map(([, id]) => id);
  return { body, bad: written.filter((id, index) => !read.has(id) || written.indexOf(id) !== index) };
}

/**
 * Reads a locale's messages at build time: the phone then needs neither the parser nor the time. The ids are those
 * of the English file and stand apart (`en.ftl?ids`), so that they are fetched once for all languages. `reshape`
 * changes the words of a message: a test makes them longer.
 */
export const messagesReshaped = (reshape = (text) => text) => ({
  name: "messages",
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /\.ftl\?ids$/ }, ({ path, resolveDir }) => ({ path: join(resolveDir, path.replace("?ids", "")), namespace: "ids" }));
    onLoad({ filter: /\.ftl$/, namespace: "ids" }, async ({ path }) => {
      const { body } = await readLocale(path);
      return { contents: `export const ids = ${JSON.stringify(body.map(({ id }) => id).join(" "))}.split(" ");`, watchFiles: [path] };
    });
    onLoad({ filter: /\.ftl$/ }, async ({ path }) => {
      const original = join(dirname(path), basename(path).replace(/^[a-z]+/, "en"));
      const [{ body, bad }, { body: english }] = await Promise.all([path, original].map(readLocale));
      const patterns = new Map(body.map(({ id, value }) => [id, value]));
      const ids = english.map(({ id }) => id);
      const flaws = [
        ["cannot be read or stand twice", bad],
        ["are missing", ids.filter((id) => !patterns.has(id))],
        ["are not known in English", [...patterns.keys()].filter((id) => !ids.includes(id))],
        ["have attributes, which nobody reads", body.filter(({ attributes }) => Object.keys(attributes).length > 0).map(({ id }) => id)],
      ];
      const errors = flaws.filter(([, found]) => found.length > 0).map(([flaw, found]) => ({ text: `${basename(path)}: these messages ${flaw}: ${found.join(", ")}` }));
      const json = JSON.stringify(JSON.stringify(ids.map((id) => reshapedPattern(patterns.get(id) ?? null, reshape))));
      return { contents: `export const patterns = JSON.parse(${json});`, errors, watchFiles: [path, original] };
    });
  },
});

export const messages = messagesReshaped();

function reshapedPattern(pattern, reshape) {
  if (typeof pattern === "string") return reshape(pattern);
  if (Array.isArray(pattern)) return pattern.map((element) => reshapedPattern(element, reshape));
  if (pattern?.type !== "select") return pattern;
  return { ...pattern, variants: pattern.variants.map((variant) => ({ ...variant, value: reshapedPattern(variant.value, reshape) })) };
}

async function readLocale(path) {
  return readMessages(await readFile(path, "utf8"));
}

/**
 * Has each file of views that is fetched later import the page's entry. What the entry loads is then needed alike by all of them
 * and becomes one file: the first screen would otherwise wait for one file for each set of views that share something.
 */
const firstScreenTogether = ([entry]) => ({
  name: "first-screen-together",
  setup({ onLoad, initialOptions: { absWorkingDir } }) {
    onLoad({ filter: /src\/views\/(fluid-cards|job-cards|job-screens|lessons|hand-on)\.tsx?$/ }, async ({ path }) => ({
      contents: `import ${JSON.stringify(join(absWorkingDir, entry))};\n${await readFile(path, "utf8")}`,
      loader: path.endsWith("x") ? "tsx" : "ts",
    }));
  },
});

/** The style sheet, its imports put together, as a text that the script applies. */
const style = {
  name: "style",
  setup({ onLoad, initialOptions: { minify, target } }) {
    onLoad({ filter: /\.css$/ }, async ({ path }) => {
      const { outputFiles } = await esbuild.build({ entryPoints: [path], bundle: true, write: false, minify, target });
      const [{ text }] = outputFiles;
      return { contents: text, loader: "text" };
    });
  },
};
