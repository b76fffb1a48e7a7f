// How long a person waits, against an empty page that the same service worker serves in the same run: what
// remains is the page's own doing, whatever the machine.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "../build.mjs";
import { serve } from "../serve.mjs";
import { openBrowser } from "../tests/browser/chromium.mjs";

const slowDown = 6;
const visits = 15;
const firstFigure = "first figure at ";
const emptyPage = '<!doctype html><html lang="en"><meta charset="utf-8"><title>Empty</title><p data-figure="torque">0</p></html>';

/** Fields to type into, and what is typed: every key changes a figure. */
const typing = [
  { name: "bench, offset adapter", place: "#/?tube=5/8&wrenchLength=280 mm", field: "adapterLength", text: "41.25 mm" },
  { name: "bench, measured cone", place: "#/?tube=5/8", field: "measuredCone", text: "19.525" },
  { name: "convert", place: "#/convert", field: "text", text: "140.25 psi" },
];
const rounds = 6;

export async function measureTimes() {
  const out = await mkdtemp(join(tmpdir(), "coldwright-"));
  await build({ out, extraFiles: { "empty.html": emptyPage } });
  const server = await serve(out);
  const browser = await openBrowser();
  try {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    await context.addInitScript(tellFirstFigure, firstFigure);
    const first = await context.newPage();
    await first.goto(server.address);
    await first.locator('[data-keeping="kept"]').first().waitFor({ state: "attached" });
    await server.close();
    return [...(await waits(context, server.address)), ...(await keystrokes(context, server.address))];
  } finally {
    await browser.close();
    await server.close();
    await rm(out, { recursive: true });
  }
}

/** From navigation until the torque stands there and is painted, in turns with the empty page. */
async function waits(context, address) {
  const times = { page: [], empty: [] };
  for (let visit = 0; visit <= visits; visit++) {
    const page = await timeOfFigure(context, address);
    const empty = await timeOfFigure(context, `${address}empty.html`);
    if (visit === 0) continue; // The first of each fills the browser's own caches.
    times.page.push(page);
    times.empty.push(empty);
  }
  const ratio = median(times.page) / median(times.empty);
  return [
    { name: `empty page (median of ${visits})`, figure: median(times.empty), unit: "ms" },
    { name: `navigation to usable figures (median of ${visits})`, figure: median(times.page), unit: "ms" },
    { name: "ratio of the two", figure: ratio, unit: "×", goal: 2 },
  ];
}

async function timeOfFigure(context, address) {
  const page = await openSlowed(context);
  // Nothing may be evaluated in the page meanwhile: it would be waited for as if it were the page's own.
  const told = page.waitForEvent("console", (entry) => entry.text().startsWith(firstFigure));
  await page.goto(address, { waitUntil: "commit" });
  const time = Number((await told).text().slice(firstFigure.length));
  await page.close();
  return time;
}

/** From a key's event until the figures it changes are drawn and laid out, ready for the next frame. */
async function keystrokes(context, address) {
  const figures = [];
  for (const { name, place, field, text } of typing) {
    const page = await openSlowed(context);
    await page.goto(address + place);
    const input = page.locator(`input[name="${field}"]`);
    await input.waitFor();
    await page.evaluate(timeKeystrokes);
    for (let round = 0; round < rounds; round++) {
      await input.fill("");
      await input.pressSequentially(text, { delay: 40 });
    }
    const times = await page.evaluate(() => window.keystrokeTimes);
    await page.close();
    figures.push({ name: `key in ${name} (median of ${times.length})`, figure: median(times), unit: "ms", goal: 16.7 });
    figures.push({ name: `key in ${name} (95 % are faster than)`, figure: part(times, 0.95), unit: "ms", goal: 16.7 });
  }
  return figures;
}

export async function openSlowed(context) {
  const page = await context.newPage();
  const protocol = await context.newCDPSession(page);
  await protocol.send("Emulation.setCPUThrottlingRate", { rate: slowDown });
  return page;
}

/** Runs in the page before anything else: tells when the first figure has been painted. */
function tellFirstFigure(firstFigure) {
  const look = () => {
    if (!/\d/.test(document.querySelector('[data-figure="torque"]')?.textContent ?? "")) return;
    observer.disconnect();
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => console.info(firstFigure + performance.now());
      port2.postMessage(undefined);
    });
  };
  const observer = new MutationObserver(look);
  observer.observe(document, { childList: true, subtree: true, characterData: true });
}

/** Runs in the page: from the event until style and layout of what it changed are done. */
export function timeKeystrokes() {
  window.keystrokeTimes = [];
  let start = 0;
  addEventListener("input", () => (start = performance.now()), { capture: true });
  addEventListener("input", () => {
    document.body.getBoundingClientRect();
    window.keystrokeTimes.push(performance.now() - start);
  });
}

export function median(figures) {
  return part(figures, 0.5);
}

export function part(figures, share) {
  const sorted = [...figures].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
}
