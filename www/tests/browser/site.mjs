// What every browser test stands on: the built page on a server of its own or as one file, a fresh browser profile, and
// a record of what must never happen (an error, a breach of the security policy, a request elsewhere).
import assert from "node:assert/strict";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before } from "node:test";
import { pathToFileURL } from "node:url";
import { defaultOut } from "../../build.mjs";
import { serve } from "../../serve.mjs";
import * as chromium from "./chromium.mjs";
import { isFirefox, isOneFile } from "./conditions.mjs";
import * as firefox from "./firefox.mjs";

/** A phone held upright. */
export const phone = { width: 360, height: 740 };

let browser;

/** Opens one browser for all tests of the file. */
export function useBrowser() {
  before(async () => {
    browser = await (isFirefox ? firefox : chromium).openBrowser();
  });
  after(() => browser.close());
}

/** A directory that is gone after the test `t`. */
export async function temporaryDirectory(t) {
  const directory = await mkdtemp(join(tmpdir(), "coldwright-"));
  t.after(() => rm(directory, { recursive: true, force: true }));
  return directory;
}

/** Serves `directory`, or takes the one file in it, and opens a fresh profile for it; both end with the test `t`. */
export async function openSite(t, { directory = defaultOut, base = "/", isFile = isOneFile, ...options } = {}) {
  assert.ok(!(isFirefox && options.colorScheme === "dark"), "no test can choose Firefox's colours");
  const server = isFile ? fileIn(directory) : await serve(directory, { base });
  const context = await browser.newContext({ viewport: phone, hasTouch: true, ...options });
  if (isFirefox) await context.addInitScript(firefox.tellOfFilledFields);
  const offences = watch(context, server.address);
  context.setDefaultTimeout(120_000);
  t.after(async () => {
    await context.close();
    await server.close();
    assert.deepEqual(offences, [], "no error, no breach of the policy, no request elsewhere");
  });
  /** Opens a tab at a place such as `#/?tube=5/8`. */
  const open = async (place = "") => {
    const page = await context.newPage();
    await page.goto(server.address + place);
    await page.locator("h1").waitFor({ state: "attached" });
    return page;
  };
  return { address: server.address, context, open, offences, stop: server.close };
}

/** What stands in a server's place: nothing answers, and nothing has to be closed. */
function fileIn(directory) {
  return { address: pathToFileURL(join(directory, "coldwright.html")).href, close: async () => {} };
}

function watch(context, address) {
  const offences = [];
  context.addInitScript(() => {
    addEventListener("securitypolicyviolation", (event) => {
      console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`);
    });
  });
  context.on("console", (entry) => {
    if (entry.type() === "error") offences.push(entry.text());
  });
  context.on("weberror", (problem) => offences.push(String(problem.error())));
  context.on("request", (request) => {
    const isOwn = /^(data|blob):/.test(request.url()) || request.url().startsWith(address);
    if (!isOwn) offences.push(`request to ${request.url()}`);
  });
  return offences;
}

/** Waits until everything is on this phone. */
export async function waitUntilKept(page) {
  await page.locator(`[data-keeping="${isOneFile ? "one-file" : "kept"}"]`).first().waitFor({ state: "attached" });
}

/** Taps what saves a file, of several the first; gives the file's text and name. */
export async function saved(page, action) {
  const tap = () => page.locator(`[data-action="${action}"]`).first().click();
  if (isFirefox) return firefox.savedFile(tap);
  const [download] = await Promise.all([page.waitForEvent("download"), tap()]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), "utf8") };
}

/** The page on paper of a format, as PDF. */
export function printed(page, format) {
  return isFirefox ? firefox.printed(page, format) : page.pdf({ format });
}

/** The text of a figure, blanks as plain ones. */
export async function figure(page, name) {
  const text = await page.locator(`[data-figure="${name}"]`).first().textContent();
  return text.replace(/\s+/g, " ").trim();
}

/** Waits until `read` gives what `pattern` matches; the limit only ends what would never come, on however slow a machine. */
export async function eventually(read, pattern) {
  const end = Date.now() + 60_000;
  let found = await read();
  while (!pattern.test(found) && Date.now() < end) {
    await new Promise((wake) => setTimeout(wake, 30));
    found = await read();
  }
  assert.match(found, pattern);
}

/**
 * Goes one place back from an address that `leaving` matches. The page goes itself: the browser's own command
 * counts from the last place that the browser process has heard of, which on a slow machine is the one before.
 */
export async function goBack(page, leaving) {
  const address = () => page.evaluate(() => location.hash);
  await eventually(address, leaving);
  // What has just been drawn may write the address once more, which calls off a way back that has begun.
  for (let frame = 0; frame < 3; frame += 1) {
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn))));
  }
  const left = await address();
  await page.evaluate(() => history.back());
  await page.waitForFunction((before) => location.hash !== before, left);
}

/** Opens everything that can be opened, and what that brings to light. */
export async function openAll(page) {
  const closed = page.locator("details:not([open]) > summary");
  for (let left = await closed.count(); left > 0; left = await closed.count()) {
    await page.evaluate(() => document.querySelectorAll("details").forEach((part) => (part.open = true)));
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn))));
  }
}
