// Builds the page into ../dist: `node build.mjs [--watch | --retire-worker] [--out DIRECTORY] [--public-address URL]`.
// Addresses are relative everywhere, so that the page works under any path.
import { createHash } from "node:crypto";
import { watch } from "node:fs";
import { mkdir, readFile, readdir, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { bundle } from "./bundle.mjs";
import { contentSecurityPolicy, oneFilePolicy, serve } from "./serve.mjs";

const here = dirname(fileURLToPath(import.meta.url));
export const defaultOut = join(here, "..", "dist");

/** What only the host has: the small module of the first visit, and what nobody opens without a signal. */
const onlyOnHost = /^first-core-|^job\.schema\.json$|^icons\/.*\.png$/;

/**
 * Builds the page.
 * - `out`: directory to leave it in, emptied first.
 * - `isDevelopment`: no service worker, readable code.
 * - `worker`: source of the service worker.
 * - `isOneFileWanted`: leaves beside the page one file with everything inside.
 * - `publicAddress`: what links name in place of where the page is.
 * - `reshape`: changes the words of all messages; a test makes them longer.
 * - `extraFiles`: further files to keep on phones, by name; tests and benches measure with them.
 * Gives the names of all files that are kept on phones, of those that the first screen needs, and by language of its sentences.
 */
export async function build({
  out = defaultOut,
  isDevelopment = false,
  worker = "src/worker.ts",
  isOneFileWanted = false,
  publicAddress = "",
  extraFiles = {},
  reshape,
} = {}) {
  const whole = await readFile(join(here, "generated/coldwright_bg.wasm"));
  const first = await readFile(join(here, "generated/first/coldwright_bg.wasm"));
  const modules = { whole: `core-${hash(whole)}.wasm`, first: `first-core-${hash(first)}.wasm` };
  const { files: code, first: firstCode, fileOf, sentences } = await bundle({ entries: ["src/main.tsx"], modules, isDevelopment, publicAddress, reshape });
  const glue = { whole: fileOf("generated/coldwright.js"), first: fileOf("generated/first/coldwright.js") };
  const files = new Map([...code, [modules.first, first], [modules.whole, whole], ...(await icons()), ...Object.entries(extraFiles)]);
  for (const name of ["manifest.webmanifest", "job.schema.json"]) files.set(name, await readFile(join(here, name)));
  const page = await readFile(join(here, "index.html"), "utf8");
  // They must not wait for the script to name them.
  const preloads = [...firstCode.filter((name) => name.startsWith("chunk-")), glue.first];
  const filled = fill(page, {
    policy: contentSecurityPolicy,
    core: hash(whole),
    script: fileOf("src/main.tsx"),
    module: modules.first,
    preloads: preloads.map((name) => `<link rel="modulepreload" href="${name}">`).join(""),
  });
  const source = await readFile(join(here, worker));
  const version = hash(JSON.stringify([...files, ["./", filled], ["worker.js", source]].map(([name, content]) => [name, hash(content)])));
  files.set("index.html", filled.replace("{{build}}", version));
  const isKept = (name) => name !== "index.html" && name !== glue.first && !onlyOnHost.test(name);
  const kept = Object.fromEntries([...files].filter(([name]) => isKept(name)).map(([name, content]) => [name, integrity(content)]));
  kept["./"] = integrity(files.get("index.html"));
  const replaced = [[modules.first, modules.whole], [glue.first, glue.whole]];
  // Its name never changes, or phones that have the old one would never hear of the new.
  const { files: workers } = await bundle({ entries: [worker], isDevelopment, version, kept, replaced });
  for (const [, content] of workers) files.set("worker.js", content);
  if (isOneFileWanted) files.set("coldwright.html", await oneFile({ isDevelopment, publicAddress, build: version, core: hash(whole) }));
  await write(out, files);
  return { out, version, kept: Object.keys(kept), first: ["./", modules.first, glue.first, ...firstCode], sentences };
}

/** The page with everything inside, to be opened from a phone's own files. */
async function oneFile({ isDevelopment, publicAddress, ...editions }) {
  const { files } = await bundle({ entries: ["src/main.tsx"], isDevelopment, isOneFile: true, publicAddress });
  const [[, content]] = files;
  const script = Buffer.from(content).toString();
  if (/<!--|<\/?script/i.test(script)) throw new Error("the script would end before its end: it holds a mark of HTML");
  return fill(await readFile(join(here, "one-file.html"), "utf8"), {
    ...editions,
    policy: oneFilePolicy(integrity(script)),
    icon: `data:image/svg+xml;base64,${await readFile(join(here, "icons/mark.svg"), "base64")}`,
    script,
  });
}

function fill(template, values) {
  return template.replace(/\{\{(\w+)\}\}/g, (gap, name) => values[name] ?? gap);
}

async function icons() {
  const names = (await readdir(join(here, "icons"))).filter((name) => /\.(svg|png)$/.test(name)).sort();
  return Promise.all(names.map(async (name) => [`icons/${name}`, await readFile(join(here, "icons", name))]));
}

function hash(content) {
  return createHash("sha256").update(content).digest("hex").slice(0, 10);
}

/** As browsers check it themselves: a file that a host has altered or mistaken is never kept. */
function integrity(content) {
  return `sha256-${createHash("sha256").update(content).digest("base64")}`;
}

async function write(out, files) {
  await rm(out, { recursive: true, force: true });
  for (const [name, content] of files) {
    const path = join(out, name);
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, content);
  }
}

/** Builds again after each change below www, and serves. */
async function work(out) {
  let isWaiting = false;
  const again = async () => {
    isWaiting = false;
    await build({ out, isDevelopment: true }).catch((problem) => console.error(problem.message));
    console.log(`built at ${new Date().toLocaleTimeString()}`);
  };
  await again();
  const changed = () => {
    if (!isWaiting) setTimeout(again, 200);
    isWaiting = true;
  };
  for (const directory of ["src", "locales", "icons"]) watch(join(here, directory), { recursive: true }, changed);
  const { address } = await serve(out, { port: 8090 });
  console.log(address);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({
    options: {
      watch: { type: "boolean" },
      "retire-worker": { type: "boolean" },
      "public-address": { type: "string" },
      out: { type: "string" },
    },
  });
  const out = values.out ?? defaultOut;
  if (values.watch) await work(out);
  else {
    const { version } = await build({
      out,
      isOneFileWanted: true,
      ...(values["public-address"] && { publicAddress: values["public-address"] }),
      ...(values["retire-worker"] && { worker: "src/retired-worker.ts" }),
    });
    console.log(`build ${version} in ${out}`);
  }
}
