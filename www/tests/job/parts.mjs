// The parts of a job's screens that need no page, built for Node.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import * as esbuild from "esbuild";
import { messages } from "../../bundle.mjs";

const directory = await mkdtemp(join(tmpdir(), "coldwright-"));
const file = join(directory, "job.mjs");
await esbuild.build({
  stdin: {
    contents: ["clock-watch", "local-time", "pasted-readings"].map((name) => `export * from "./src/job/${name}";`).join("\n"),
    resolveDir: dirname(dirname(dirname(fileURLToPath(import.meta.url)))),
  },
  bundle: true,
  outfile: file,
  format: "esm",
  jsx: "automatic",
  jsxImportSource: "preact",
  loader: { ".wasm": "empty" },
  plugins: [messages],
});
const parts = await import(pathToFileURL(file).href);
await rm(directory, { recursive: true });

export const { clockChange, unwatchedChange, isSameChange, localTime, momentOfLocal, pastedTimes, pastedReadings } = parts;
