// The parts of the store that need no database, built for Node; and what tests make up documents with.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import * as esbuild from "esbuild";

const names = ["tree", "edits", "entries", "clashes", "timeline", "difference", "summaries", "backup", "reading", "raw-text"];

const directory = await mkdtemp(join(tmpdir(), "coldwright-"));
const file = join(directory, "store.mjs");
await esbuild.build({
  stdin: {
    contents: names.map((name) => `export * from "./src/store/${name}";`).join("\n"),
    resolveDir: dirname(dirname(dirname(fileURLToPath(import.meta.url)))),
  },
  bundle: true,
  outfile: file,
  format: "esm",
});

export const store = await import(pathToFileURL(file));
await rm(directory, { recursive: true });

/** Random numbers below a limit that are the same in each run. */
export function randomNumbers(seed) {
  let state = seed;
  return (below) => {
    state = (Math.imul(state ^ (state >>> 15), 0x2c1b3c6d) + 0x9e3779b9) | 0;
    return ((state ^ (state >>> 13)) >>> 0) % below;
  };
}

/** A document with a plate, a nested list and two lists. */
export function jobDocument(id = "job") {
  return {
    id,
    name: "Cold room",
    edited: "2030-01-01T00:00:00.000Z",
    plate: { charge: "1.2 kg", tube: { liquid: "6.35 mm" } },
    joints: [
      { id: "a", torque: "16 N·m", tests: [{ id: "t", held: "yes" }] },
      { id: "b", torque: "40 N·m" },
      { id: "c", torque: "" },
    ],
    readings: [{ id: "r", pressure: "40 bar" }],
  };
}

/** A change that may or may not apply, anywhere in such a document. */
export function randomChange(random, tag = "") {
  const pick = (list) => list[random(list.length)];
  const item = () => `${pick(["a", "b", "c", "r", "n1", "n2", "n3"])}`;
  const list = pick([["joints"], ["readings"], ["joints", "#a", "tests"], ["notes", "loose"]]);
  const after = pick([null, "", item()]);
  switch (random(8)) {
    case 0:
      return { kind: "put", path: list, item: { id: `${tag}n${random(20)}`, torque: `${random(100)}` }, after };
    case 1:
      return { kind: "take", path: [...list, `#${item()}`] };
    case 2:
      return { kind: "move", path: [...list, `#${item()}`], after };
    case 3:
      return { kind: "set", path: pick([["plate", "charge"], ["plate", "tube"], ["plate"], ["notes", "deep", "text"], ["joints", "#b", "torque"]]) };
    case 4:
      return { kind: "set", path: pick([["plate"], ["plate", "tube"]]), to: { tube: { liquid: `${random(30)} mm` } } };
    default:
      return {
        kind: "set",
        path: pick([["name"], ["plate", "charge"], ["notes", "deep", "text"], [...list, `#${item()}`, "torque"], ["plate", "tube", "liquid"]]),
        to: `${tag}${random(1000)}`,
      };
  }
}
