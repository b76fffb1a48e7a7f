// Bundles the sources with esbuild.
import { readFile } from "node:fs/promises";
import { basename, dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { FluentResource } from "@fluent/bundle";
import * as esbuild from "esbuild";

/** The oldest browsers that the page's security policy and the core's module both allow. */
const oldestBrowsers = ["chrome101", "firefox102", "safari16"];

/**
 * Bundles each entry; gives the files by name, a hash of the content in each, the names of those that the entries
 * themselves load (the others are fetched later), and the file that a source has become the entry of.
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
    plugins: [messages, style],
  });
  const files = outputFiles.map(({ path, contents }) => [basename(path), contents]);
  const fileOf = (source) => basename(Object.keys(metafile.outputs).find((path) => metafile.outputs[path].entryPoint === source));
  return { files, first: loadedFirst(metafile.outputs, entries), fileOf };
}

/** The entries' files and what they import, directly or through another. */
function loadedFirst(outputs, entries) {
  const first = new Set(Object.keys(outputs).filter((path) => entries.includes(outputs[path].entryPoint)));
  for (const path of first) {
    for (const { path: imported, kind } of outputs[path].imports) if (kind === "import-statement") first.add(imported);
  }
  return [...first].map((path) => basename(path));
}

/** Reads a locale's messages at build time: the phone then needs neither the parser nor the time. */
export const messages = {
  name: "messages",
  setup({ onLoad }) {
    onLoad({ filter: /\.ftl$/ }, async ({ path }) => {
      const source = await readFile(path, "utf8");
      const { body } = new FluentResource(source);
      const read = new Set(body.map(({ id }) => id));
      const written = [...source.matchAll(/^(-?[a-zA-Z][\w-]*) *=/gm)].map(([, id]) => id);
      const bad = written.filter((id, index) => !read.has(id) || written.indexOf(id) !== index);
      const text = `${basename(path)}: these messages cannot be read or stand twice: ${bad.join(", ")}`;
      const errors = bad.length === 0 ? [] : [{ text }];
      const json = JSON.stringify(JSON.stringify({ body }));
      return { contents: `export const messages = JSON.parse(${json});`, errors, watchFiles: [path] };
    });
  },
};

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
