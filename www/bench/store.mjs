// How long the store takes to open a job of 20 joints and 500 readings, and to hand an edit of it to the disk.
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bundle } from "../bundle.mjs";
import { serve } from "../serve.mjs";
import { openBrowser } from "../tests/browser/chromium.mjs";
import { median, openSlowed, part } from "./times.mjs";

const rounds = 15;

export async function measureStore() {
  const directory = await mkdtemp(join(tmpdir(), "coldwright-"));
  const { files, first } = await bundle({ entries: ["bench/store-page.ts"], isDevelopment: false });
  for (const [name, content] of files) await writeFile(join(directory, name), content);
  await writeFile(join(directory, "index.html"), `<!doctype html><html lang="en"><meta charset="utf-8"><title>Store</title><script type="module" src="${first[0]}"></script>`);
  const server = await serve(directory);
  const browser = await openBrowser();
  try {
    const page = await openSlowed(await browser.newContext());
    await page.goto(server.address);
    await page.waitForFunction(() => window.openAndEdit !== undefined);
    const { opens, edits } = await page.evaluate((count) => window.openAndEdit(count), rounds);
    const opening = { name: `opening a job of 500 readings (median of ${rounds})`, figure: median(opens), unit: "ms" };
    const editing = "edit of such a job, handed to the disk";
    return [
      opening,
      { name: `${editing} (median of ${edits.length})`, figure: median(edits), unit: "ms", goal: 16.7 },
      { name: `${editing} (95 % are faster than)`, figure: part(edits, 0.95), unit: "ms", goal: 16.7 },
    ];
  } finally {
    await browser.close();
    await server.close();
    await rm(directory, { recursive: true });
  }
}
