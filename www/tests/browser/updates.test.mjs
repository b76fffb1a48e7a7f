// From one version of the page to another: whole or not at all, never while somebody waits for a clock, and whatever
// goes wrong the page opens without a signal, is of one version and has every job.
import assert from "node:assert/strict";
import { test } from "node:test";
import { serve } from "../../serve.mjs";
import { accidents, assertWhole, buildOf, deploy, keptVersions, lookForVersion, makeJob, stubbornHost } from "./deployment.mjs";
import { start } from "./kills.mjs";
import { eventually, openSite, temporaryDirectory, useBrowser, waitUntilKept } from "./site.mjs";

useBrowser();

const hour = 3_600_000;
const offer = (page) => page.locator('[data-action="take-update"]');
const lookAgain = (page) => page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));

/** A phone that has the first version and the practice job. */
async function phoneWithVersionOne(t, { time } = {}) {
  const directory = await temporaryDirectory(t);
  const one = await deploy(directory, "one");
  const site = await openSite(t, { directory });
  if (time !== undefined) await site.context.clock.install({ time });
  const page = await site.open();
  await waitUntilKept(page);
  await makeJob(page);
  return { directory, one, site, page };
}

/** Takes the version that waits and gives its build. */
async function takeUpdate(page, version) {
  await offer(page).click();
  await eventually(() => buildOf(page).catch(() => ""), new RegExp(`^${version}$`));
  await page.locator("h1").waitFor({ state: "attached" });
}

/** A new job in which a pressure hold runs; the page stays at its stage. */
async function beginHold(page) {
  await page.evaluate(() => (location.hash = "#/jobs"));
  await page.locator('[data-action="new-job"]:not([disabled])').click();
  await page.waitForFunction(() => location.hash.startsWith("#/job?"));
  await page.evaluate(() => (location.hash += "&stage=pressure-test"));
  await page.locator('input[name="next_gaugePressure"]').fill("44.2");
  await page.locator('input[name="next_temperature"]').fill("21");
  await page.locator('[data-action="read-now"]').click();
  await page.locator('[data-clock="pressureClock"]').waitFor();
  await page.locator(".kept-state[data-unsaved='0']").waitFor();
  return page.evaluate(() => location.hash);
}

async function hoursPassed(page) {
  await page.clock.runFor(2100);
  return Number(await page.locator('[data-clock="pressureClock"] [data-passed]').getAttribute("data-passed")) / 3600;
}

test("a new version waits for the end of a hold, in every window, and is then taken with a tap", async (t) => {
  const { directory, one, site, page } = await phoneWithVersionOne(t, { time: Date.parse("2026-11-25T18:00:00Z") });
  await beginHold(page);
  const bench = await site.open("#/?tube=3/8");
  const two = await deploy(directory, "two");
  assert.equal(await lookForVersion(page), "waits");
  for (const window of [page, bench]) {
    await window.locator('[data-update="clock"]').waitFor();
    assert.equal(await offer(window).count(), 0);
  }
  await page.reload();
  await page.locator('[data-update="clock"]').waitFor();
  assert.equal(await buildOf(page), one, "a reload alone does not take it");
  await bench.close();

  await page.clock.fastForward(30 * hour);
  await lookAgain(page);
  await takeUpdate(page, two);
  await page.locator('[data-clock="pressureClock"]').waitFor();
  assert.ok((await hoursPassed(page)) >= 30);
  await offer(page).waitFor({ state: "detached" });
  await page.close();
  await site.stop();
  await assertWhole(await site.open(), two, 2);
});

test("a version that waits is there when the page is next opened, and a hold that runs goes on", async (t) => {
  const { directory, one, site, page } = await phoneWithVersionOne(t, { time: Date.parse("2026-11-25T18:00:00Z") });
  const place = await beginHold(page);
  const two = await deploy(directory, "two");
  assert.equal(await lookForVersion(page), "waits");
  assert.equal(await buildOf(page), one);
  await page.close();
  await site.stop();
  await site.context.clock.setSystemTime(Date.parse("2026-11-26T01:00:00Z"));
  let later;
  const openNext = async () => {
    await later?.close();
    later = await site.open(place);
    return buildOf(later);
  };
  await eventually(openNext, new RegExp(`^${two}$`));
  await later.locator('[data-clock="pressureClock"]').waitFor();
  const hours = await hoursPassed(later);
  assert.ok(hours > 6.9 && hours < 7.5, `${hours} hours`);
  assert.equal(await later.locator("[data-doubt]").count(), 0);
  await assertWhole(later, two, 2);
});

for (const [accident, breakIt] of Object.entries(accidents)) {
  test(`after a deployment in which ${accident} the version before goes on, and the next one is taken`, async (t) => {
    const { directory, one, site, page } = await phoneWithVersionOne(t);
    const two = await deploy(directory, "two");
    await breakIt(directory);
    assert.match(await lookForVersion(page), /refused|Error/);
    assert.equal(await offer(page).count(), 0);
    await page.reload();
    assert.equal(await buildOf(page), one);
    await eventually(async () => Object.keys(await keptVersions(page)).join(), new RegExp(`^${one}$`));
    const three = await deploy(directory, "three");
    assert.notEqual(three, two);
    assert.equal(await lookForVersion(page), "waits");
    await takeUpdate(page, three);
    await page.close();
    site.offences.length = 0; // The browser has said on the console what was refused.
    await site.stop();
    const last = await site.open();
    await assertWhole(last, three, 1);
    assert.deepEqual(Object.keys(await keptVersions(last)), [three]);
  });
}

test("a version that fails at its start opens the next one with the button of its last screen", async (t) => {
  const { directory, site, page } = await phoneWithVersionOne(t);
  await page.evaluate(() => localStorage.setItem("fails", "yes"));
  await site.context.addInitScript(() => {
    if (location.protocol === "http:" && localStorage.getItem("fails") === "yes") delete globalThis.WebAssembly;
  });
  await page.reload();
  await page.locator("main.crash").waitFor();
  const two = await deploy(directory, "two");
  assert.equal(await lookForVersion(page), "waits");
  await page.evaluate(() => localStorage.removeItem("fails"));
  await page.locator("main.crash button").first().click();
  await eventually(() => buildOf(page).catch(() => ""), new RegExp(`^${two}$`));
  site.offences.length = 0; // The failure is on the console.
  await page.locator("h1").waitFor({ state: "attached" });
  await page.close();
  await site.stop();
  await assertWhole(await site.open(), two, 1);
});

test("going back to an older version keeps every job; one that only the newer can read is refused and left as it is", async (t) => {
  const { directory, one, site, page } = await phoneWithVersionOne(t);
  const two = await deploy(directory, "two");
  assert.equal(await lookForVersion(page), "waits");
  await takeUpdate(page, two);
  await makeJob(page, "Written by the newer version");
  await page.close();
  const writer = await site.context.newPage();
  await writer.goto(`${site.address}job.schema.json`);
  const before = await writer.evaluate(raiseVersion, "Written by the newer version");
  await writer.close();
  site.offences.length = 0; // The host has no icon for what is none of its pages.

  assert.equal(await deploy(directory, "one"), one);
  const newer = await site.open();
  assert.equal(await buildOf(newer), two);
  assert.equal(await lookForVersion(newer), "waits");
  await takeUpdate(newer, one);
  await newer.close();
  await site.stop();
  const older = await site.open("#/jobs");
  await older.locator(".job-list > li a", { hasText: "Written by the newer version" }).click();
  await older.locator("main.job .problem", { hasText: "later version" }).waitFor();
  assert.deepEqual(await older.evaluate(storedDocument, "Written by the newer version"), before);
  await older.evaluate(() => (location.hash = "#/jobs"));
  await older.locator(".job-list > li a", { hasNotText: "Written by the newer version" }).first().click();
  await older.locator(".stage-list [data-stage]").first().waitFor();
  assert.equal(await buildOf(older), one);
});

/** Runs in a page: raises the version of the stored job of this name, as a later page would write it; gives the job. */
async function raiseVersion(name) {
  const [{ name: database }] = await indexedDB.databases();
  const opened = await new Promise((done) => (indexedDB.open(database).onsuccess = ({ target }) => done(target.result)));
  const store = opened.transaction("documents", "readwrite").objectStore("documents");
  const all = await new Promise((done) => (store.getAll().onsuccess = ({ target }) => done(target.result)));
  const record = all.find(({ document }) => document.name === name);
  record.document.version = 99;
  await new Promise((done) => (store.put(record).onsuccess = done));
  opened.close();
  return record.document;
}

/** Runs in a page: the stored job of this name. */
async function storedDocument(name) {
  const [{ name: database }] = await indexedDB.databases();
  const opened = await new Promise((done) => (indexedDB.open(database).onsuccess = ({ target }) => done(target.result)));
  const store = opened.transaction("documents").objectStore("documents");
  const all = await new Promise((done) => (store.getAll().onsuccess = ({ target }) => done(target.result)));
  opened.close();
  return all.find(({ document }) => document.name === name).document;
}

test("a browser that is killed while it fetches a version has the one before, or the next visit fetches it whole", async (t) => {
  const [directory, profile] = [await temporaryDirectory(t), await temporaryDirectory(t)];
  const inner = await serve(directory);
  t.after(inner.close);
  const host = await stubbornHost(t, inner);
  /** Does something in a new page of a browser that is then killed. */
  const untilKilled = async (act) => {
    const browser = await start(profile);
    try {
      const page = await browser.connection.contexts()[0].newPage();
      page.setDefaultTimeout(120_000);
      await page.goto(host.address);
      await page.locator("h1").waitFor({ state: "attached" });
      return await act(page);
    } finally {
      await browser.kill();
    }
  };

  const one = await deploy(directory, "one");
  const firstStuck = host.stick(/version\.txt/);
  await untilKilled(async (page) => {
    await makeJob(page);
    await firstStuck;
    assert.equal(await page.locator('[data-keeping="kept"]').count(), 0);
  });
  host.goOn();
  await untilKilled(waitUntilKept);

  const two = await deploy(directory, "two");
  const secondStuck = host.stick(/version\.txt/);
  await untilKilled(async (page) => {
    assert.equal(await buildOf(page), one);
    await page.evaluate(() => void navigator.serviceWorker.getRegistration().then((found) => found.update()));
    await secondStuck;
  });
  await host.stop();
  await untilKilled((page) => assertWhole(page, one, 1));

  host.goOn();
  await host.begin();
  await untilKilled(async (page) => {
    await eventually(async () => JSON.stringify(await keptVersions(page)) + (await lookForVersion(page)), /waits$/);
    await takeUpdate(page, two);
  });
  await host.stop();
  await untilKilled((page) => assertWhole(page, two, 1));
});
