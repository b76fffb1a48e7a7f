// The page of the store, served for a test.
import assert from "node:assert/strict";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { bundle } from "../../bundle.mjs";
import { openSite, temporaryDirectory } from "./site.mjs";

/** Leaves the page in a directory. */
export async function writeStorePage(directory, entry = "tests/browser/store-page.ts") {
  const { files, first } = await bundle({ entries: [entry], isDevelopment: false });
  for (const [name, content] of files) await writeFile(join(directory, name), content);
  const script = `<script type="module" src="${first[0]}"></script>`;
  await writeFile(join(directory, "index.html"), `<!doctype html><html lang="en"><meta charset="utf-8"><link rel="icon" href="data:,"><title>Store</title><h1>Store</h1><main></main>${script}`);
}

/** A site with the store's page; `open` gives a page whose shelf is open, `prepare` runs in it before anything else. */
export async function openStore(t, { prepare } = {}) {
  const directory = await temporaryDirectory(t);
  await writeStorePage(directory);
  const site = await openSite(t, { directory });
  const open = async (prepareOne = prepare) => {
    const page = await site.context.newPage();
    if (prepareOne !== undefined) await page.addInitScript(prepareOne);
    await page.goto(site.address);
    await page.evaluate(async () => {
      globalThis.shelf = await store.openShelf();
    });
    return page;
  };
  return { ...site, open };
}

/** Makes a job in the page, as `job`, and gives its id once it is stored. */
export function createJob(page, document = {}) {
  return page.evaluate(async (content) => {
    globalThis.job = shelf.create({ name: "Cold room", readings: [], ...content });
    await shelf.settled();
    return job.id;
  }, document);
}

/** Opens a job in the page, as `job`, and gives its document, or why there is none. */
export function openJob(page, id) {
  return page.evaluate(async (wanted) => {
    const opened = await shelf.open(wanted);
    if (opened.kind !== "job") return opened;
    globalThis.job = opened.job;
    return opened.job.document;
  }, id);
}

/** Waits until something is so in the page; `condition` may be asynchronous, which `waitForFunction` would take for true. */
export async function until(page, condition, argument) {
  const end = Date.now() + 60_000;
  while (!(await page.evaluate(condition, argument))) {
    assert.ok(Date.now() < end, `waited in vain for ${condition}`);
    await new Promise((wake) => setTimeout(wake, 30));
  }
}
