// One visit, then no signal ever again: the page must open and compute from the phone alone.
import assert from "node:assert/strict";
import { rm } from "node:fs/promises";
import { test } from "node:test";
import { build } from "../../build.mjs";
import { eventually, figure, openSite, temporaryDirectory, useBrowser, waitUntilKept } from "./site.mjs";

useBrowser();

const torqueOf38 = /34–42/;
const torqueOf58 = /68–77/;

/** Proves that nothing answers at the address any more, inside the browser and outside it. */
async function proveDead(page, address) {
  await assert.rejects(fetch(address));
  const outcome = await page.evaluate(() => fetch("./nothing-of-ours").then(String, () => "failed"));
  assert.equal(outcome, "failed");
}

for (const base of ["/", "/tools/coldwright/"]) {
  test(`after one visit at ${base} and with the server dead, reload, new tab and link still compute`, async (t) => {
    const site = await openSite(t, { base });
    const page = await site.open("#/?tube=5/8");
    await waitUntilKept(page);
    const firstDocument = await page.evaluate(() => performance.timeOrigin);
    await site.stop();
    await proveDead(page, site.address);
    site.offences.length = 0; // The failed request has left its line on the console.

    await page.reload();
    assert.match(await figure(page, "torque"), torqueOf58);
    assert.notEqual(await page.evaluate(() => performance.timeOrigin), firstDocument);
    // The browser may have what only the host should be asked for in a cache of its own.
    const asked = await page.evaluate(() => performance.getEntriesByType("resource").map(({ name }) => name.split("/").at(-1)));
    const isKept = (name) => page.evaluate(async (file) => (await caches.match(new URL(file, document.baseURI))) !== undefined, name);
    for (const name of asked.filter((file) => /\.(js|wasm)$/.test(file))) assert.ok(await isKept(name), `${name} is kept on the phone`);
    assert.ok(asked.some((name) => /^core-.*\.wasm$/.test(name)));
    await page.locator('[data-tube="3/8"]').click();
    assert.match(await figure(page, "torque"), torqueOf38);

    const tab = await site.open();
    await tab.locator('[data-tube="3/8"]').click();
    assert.match(await figure(tab, "torque"), torqueOf38);
    const link = await site.open("#/?tube=3/8");
    assert.match(await figure(link, "torque"), torqueOf38);
    const start = await site.open("?from=home");
    await start.locator('[data-figure="torque"]').first().waitFor();
  });
}

test("without the service worker the same reload fails, so the test above can fail", async (t) => {
  const site = await openSite(t, { serviceWorkers: "block" });
  const page = await site.open();
  await site.stop();
  await assert.rejects(page.reload(), /ERR_CONNECTION_REFUSED/);
  site.offences.length = 0; // The browser's own page about the failure complains too.
});

test("a new version waits until it is asked for, and keeps what was typed", async (t) => {
  const directory = await temporaryDirectory(t);
  const first = await build({ out: directory });
  const site = await openSite(t, { directory });
  const page = await site.open("#/?tube=3/8");
  await waitUntilKept(page);
  const other = await site.open("#/?tube=5/8");
  const edition = (tab) => tab.locator('meta[name="build"]').getAttribute("content");
  assert.equal(await edition(page), first.version);

  const second = await build({ out: directory, extraFiles: { "second.txt": "the second version" } });
  assert.notEqual(second.version, first.version);
  await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
  const offer = page.locator('[data-action="take-update"]');
  await offer.waitFor();
  const otherDocument = await other.evaluate(() => performance.timeOrigin);

  await page.reload();
  assert.equal(await edition(page), first.version, "a reload alone does not take it");
  await offer.click();
  await eventually(() => edition(page).catch(() => ""), new RegExp(second.version));
  assert.match(await figure(page, "torque"), torqueOf38);
  await offer.waitFor({ state: "detached" });
  assert.equal(await other.evaluate(() => performance.timeOrigin), otherDocument, "only the tab that asked reloads");
  const names = await page.evaluate(() => caches.keys());
  assert.equal(names.length, 1, "the first version's files are gone");
  assert.ok(names[0].endsWith(second.version));
});

test("the retired worker takes the page off the phone", async (t) => {
  const directory = await temporaryDirectory(t);
  await build({ out: directory });
  const site = await openSite(t, { directory });
  const page = await site.open();
  await waitUntilKept(page);
  await page.reload();
  await build({ out: directory, worker: "src/retired-worker.ts" });
  await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
  const left = async () => {
    const counts = [
      page.evaluate(() => caches.keys().then((names) => names.length)),
      page.evaluate(() => navigator.serviceWorker.getRegistrations().then((found) => found.length)),
    ];
    return (await Promise.all(counts)).join(" ");
  };
  await eventually(left, /^0 0$/);
});

test("a phone that cannot fetch everything says so, and keeps nothing by halves", async (t) => {
  const directory = await temporaryDirectory(t);
  await build({ out: directory });
  await rm(`${directory}/icons/mark.svg`);
  const site = await openSite(t, { directory });
  const page = await site.open();
  await page.locator('[data-keeping="failed"]').first().waitFor({ state: "attached" });
  assert.match(await figure(page, "torque"), /\d/);
  const kept = await page.evaluate(async () => {
    const names = await caches.keys();
    const counts = names.map(async (name) => (await (await caches.open(name)).keys()).length);
    return (await Promise.all(counts)).reduce((sum, count) => sum + count, 0);
  });
  assert.equal(kept, 0);
  site.offences.length = 0; // The missing file has left its line on the console.
});
