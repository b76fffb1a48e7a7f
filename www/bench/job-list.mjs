// How long the screen of jobs takes with a thousand of them, each of 20 joints and 500 readings, against the same screen
// with none in the same run; and a letter typed into its search.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "../build.mjs";
import { serve } from "../serve.mjs";
import { openBrowser } from "../tests/browser/chromium.mjs";
import { median, openSlowed, part, timeKeystrokes } from "./times.mjs";

const jobs = 1000;
const visits = 9;
const words = ["cafe rio 7", "room unit 3", "tighten 19"];

export async function measureJobList() {
  const out = await mkdtemp(join(tmpdir(), "coldwright-"));
  await build({ out });
  const server = await serve(out);
  const browser = await openBrowser();
  try {
    const contexts = { empty: await keptContext(browser, server.address), full: await keptContext(browser, server.address) };
    await fill(contexts.full, server.address);
    await server.close();
    return [...(await lists(contexts, server.address)), ...(await searches(contexts.full, server.address))];
  } finally {
    await browser.close();
    await server.close();
    await rm(out, { recursive: true });
  }
}

/** A profile of its own, with the whole page kept on the phone. */
async function keptContext(browser, address) {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  context.setDefaultTimeout(300_000);
  await context.addInitScript(markList);
  const page = await context.newPage();
  await page.goto(`${address}#/jobs`);
  await page.locator('[data-keeping="kept"]').first().waitFor({ state: "attached" });
  await page.locator(".job-list-empty").waitFor();
  await page.close();
  return context;
}

async function fill(context, address) {
  const page = await context.newPage();
  await page.goto(`${address}#/settings`);
  await page.evaluate(storeJobs, jobs);
  await page.close();
}

async function openList(context, address) {
  const page = await openSlowed(context);
  await page.goto(`${address}#/jobs`);
  const time = await page.waitForFunction(() => window.listPainted).then((handle) => handle.jsonValue());
  return { page, time };
}

async function lists(contexts, address) {
  const times = { full: [], empty: [] };
  for (let visit = 0; visit <= visits; visit++) {
    for (const kind of ["full", "empty"]) {
      const { page, time } = await openList(contexts[kind], address);
      if (visit > 0) times[kind].push(time); // The first of each fills the browser's own caches.
      await page.close();
    }
  }
  return [
    { name: `navigation to the screen of no jobs (median of ${visits})`, figure: median(times.empty), unit: "ms" },
    { name: `navigation to the screen of ${jobs} jobs (median of ${visits})`, figure: median(times.full), unit: "ms" },
    { name: "ratio of the two", figure: median(times.full) / median(times.empty), unit: "×", goal: 2 },
  ];
}

async function searches(context, address) {
  const { page } = await openList(context, address);
  const input = page.locator('input[name="words"]');
  await page.evaluate(timeKeystrokes);
  for (const text of words) {
    await input.fill("");
    await input.pressSequentially(text, { delay: 40 });
  }
  const times = await page.evaluate(() => window.keystrokeTimes);
  await page.close();
  return [
    { name: `key in the search of ${jobs} jobs (median of ${times.length})`, figure: median(times), unit: "ms", goal: 16.7 },
    { name: `key in the search of ${jobs} jobs (95 % are faster than)`, figure: part(times, 0.95), unit: "ms", goal: 16.7 },
  ];
}

/** Runs in the page before anything else: notes when the list, or that there is none, has been painted. */
function markList() {
  const look = () => {
    if (document.querySelector(".job-list > li, .job-list-empty") === null) return;
    observer.disconnect();
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => (window.listPainted = performance.now());
      port2.postMessage(undefined);
    });
  };
  const observer = new MutationObserver(look);
  observer.observe(document, { childList: true, subtree: true });
}

/** Runs in the page: stores jobs as the page itself would, past its screens. */
async function storeJobs(count) {
  const database = await new Promise((resolve, reject) => {
    const opening = indexedDB.open("coldwright jobs");
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const places = ["Café Río", "Cold room", "Bakery", "Server room", "House"];
  const documentOf = (number) => ({
    version: 1,
    id: `job${number}`,
    name: `${places[number % places.length]} ${number}, unit ${number % 7}`,
    edited: new Date(1.77e12 + number * 1e6).toISOString(),
    joints: Array.from({ length: 20 }, (_, joint) => ({ id: `joint${joint}`, tube: "5/8", kind: "flare", oiled: true, scaleTorque: "68 N·m", note: "backed up" })),
    pressureTest: {
      readings: Array.from({ length: 500 }, (_, reading) => ({
        id: `reading${reading}`,
        at: new Date(1.77e12 + reading * 6e4).toISOString(),
        gaugePressure: `${(40 + reading / 100).toFixed(2)} bar`,
        temperature: "21.5 °C",
      })),
    },
  });
  for (let start = 0; start < count; start += 50) {
    const writing = database.transaction(["summaries", "documents"], "readwrite");
    for (let number = start; number < Math.min(count, start + 50); number++) {
      const document = documentOf(number);
      const { id, name, edited } = document;
      writing.objectStore("documents").put({ id, number: 0, schema: 1, document });
      writing.objectStore("summaries").put({ id, name, edited, glance: `Next: Tighten; Joints not tightened: ${number % 20}; Quay ${number}` });
    }
    await new Promise((resolve, reject) => {
      writing.oncomplete = resolve;
      writing.onabort = () => reject(writing.error);
    });
  }
  database.close();
}
