// Jobs as links, made by the core in Node: what another phone would send.
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import * as core from "../../generated/coldwright.js";

const at = (path) => fileURLToPath(new URL(path, import.meta.url));
core.initSync({ module: await readFile(at("../../generated/coldwright_bg.wasm")) });

/** The practice job, under an id. */
export async function practiceDocument(id = "practice0001") {
  return { ...JSON.parse(await readFile(at("../../locales/en-practice-job.json"), "utf8")), id };
}

/** The text of a document's link. */
export function linkText(document) {
  const written = core.writeJobLink(document);
  if ("problem" in written) throw new Error(JSON.stringify(written.problem));
  return written.text;
}

/** The place that opens it. */
export function handedPlace(document) {
  return `#/handed?job=${linkText(document)}`;
}
