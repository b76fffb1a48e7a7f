// Sizes of the built page, each file compressed by itself, as a host sends it.
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { brotliCompress } from "node:zlib";
import { build } from "../build.mjs";

const compress = promisify(brotliCompress);

export async function measureSizes() {
  const out = await mkdtemp(join(tmpdir(), "coldwright-"));
  const { kept, first, sentences } = await build({ out });
  const sizes = new Map();
  for (const name of new Set([...kept, ...first])) sizes.set(name, await sizeOf(join(out, name === "./" ? "index.html" : name)));
  const worker = await sizeOf(join(out, "worker.js"));
  await rm(out, { recursive: true });
  const sum = (chosen) => [...sizes].reduce((total, [name, size]) => total + (chosen(name) ? size : 0), 0) / 1000;
  const isFirstCore = (name) => name.startsWith("first-core-");
  const isWholeCore = (name) => name.startsWith("core-");
  return [
    { name: "script with styles and sentences", figure: sum((name) => name.endsWith(".js")), unit: "kB" },
    { name: "core of the first screen (wasm)", figure: sum(isFirstCore), unit: "kB", goal: 60 },
    { name: "whole core (wasm)", figure: sum(isWholeCore), unit: "kB", goal: 110 },
    ...Object.entries(sentences).map(([language, file]) => ({
      name: `first screen in ${language}: page, script, sentences, core`,
      figure: sum((name) => name === file || first.includes(name)),
      unit: "kB",
      goal: 150,
    })),
    { name: "all that is kept on the phone", figure: sum((name) => kept.includes(name)) + worker / 1000, unit: "kB", goal: 420 },
  ];
}

async function sizeOf(path) {
  const content = await readFile(path);
  return path.endsWith(".png") ? content.length : (await compress(content)).length;
}
