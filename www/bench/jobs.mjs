// How long the list of a thousand jobs takes, against an empty one in the same run; and search, opening and a letter typed:
//   node bench/jobs.mjs
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { bundle } from "../bundle.mjs";
import { serve } from "../serve.mjs";
import { openBrowser } from "../tests/browser/chromium.mjs";
import { median, openSlowed, part, timeKeystrokes } from "./times.mjs";

const jobs = 1000;
const visits = 15;
const words = ["cafe rio 7", "room unit 3", "hold 19"];

export async function measureJobs() {
  const directory = await mkdtemp(join(tmpdir(), "coldwright-"));
  const { files, first } = await bundle({ entries: ["bench/jobs-page.ts"], isDevelopment: false });
  for (const [name, content] of files) await writeFile(join(directory, name), content);
  await writeFile(join(directory, "index.html"), `<!doctype html><html lang="en"><meta charset="utf-8"><title>Jobs</title><input name="search"><ul></ul><script type="module" src="${first[0]}"></script>`);
  const server = await serve(directory);
  const browser = await openBrowser();
  try {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    await fill(context, server.address);
    return [...(await lists(context, server.address)), ...(await searches(context, server.address)), ...(await edits(context, server.address))];
  } finally {
    await browser.close();
    await server.close();
    await rm(directory, { recursive: true });
  }
}

async function fill(context, address) {
  const page = await context.newPage();
  await page.goto(`${address}#full`);
  await listed(page);
  await page.evaluate((count) => window.fill(count), jobs);
  await page.close();
}

const listed = (page) => page.waitForFunction(() => window.listed).then((handle) => handle.jsonValue());

async function openList(context, address, database) {
  const page = await openSlowed(context);
  await page.goto(`${address}#${database}`);
  return { page, time: await listed(page) };
}

/** From navigation until the list is painted, in turns with an empty one. */
async function lists(context, address) {
  const times = { full: [], empty: [] };
  for (let visit = 0; visit <= visits; visit++) {
    for (const database of ["full", "empty"]) {
      const { page, time } = await openList(context, address, database);
      if (visit > 0) times[database].push(time); // The first of each fills the browser's own caches.
      await page.close();
    }
  }
  return [
    { name: `navigation to an empty list (median of ${visits})`, figure: median(times.empty), unit: "ms" },
    { name: `navigation to a list of ${jobs} jobs (median of ${visits})`, figure: median(times.full), unit: "ms" },
    { name: "ratio of the two", figure: median(times.full) / median(times.empty), unit: "×", goal: 2 },
  ];
}

async function searches(context, address) {
  const { page } = await openList(context, address, "full");
  const input = page.locator("input");
  await page.evaluate(timeKeystrokes);
  for (const text of words) {
    await input.fill("");
    await input.pressSequentially(text, { delay: 40 });
  }
  const times = await page.evaluate(() => window.keystrokeTimes);
  await page.close();
  return figures(`key in the search of ${jobs} jobs`, times);
}

async function edits(context, address) {
  const { page } = await openList(context, address, "full");
  const { open, edits: times } = await page.evaluate(() => window.openAndEdit());
  await page.close();
  return [{ name: "opening a job of 500 readings", figure: open, unit: "ms" }, ...figures("edit of a job of 500 readings, handed to the disk", times)];
}

function figures(name, times) {
  return [
    { name: `${name} (median of ${times.length})`, figure: median(times), unit: "ms", goal: 16.7 },
    { name: `${name} (95 % are faster than)`, figure: part(times, 0.95), unit: "ms", goal: 16.7 },
  ];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const { name, figure, unit, goal } of await measureJobs()) {
    console.log(`  ${name.padEnd(70)} ${figure.toFixed(1).padStart(7)} ${unit.padEnd(3)} ${goal === undefined ? "" : `goal ${goal} ${unit}: ${figure <= goal ? "met" : "MISSED"}`}`);
  }
}
