// The jobs on this phone: begun, found, copied, deleted and put back; in two windows; as files; and where nothing is kept.
import assert from "node:assert/strict";
import { test } from "node:test";
import { breaches } from "./axe.mjs";
import { only } from "./conditions.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { eventually, openAll, openSite, saved, useBrowser, waitUntilKept } from "./site.mjs";

useBrowser();

const jobs = "#/jobs";
const rows = (page) => page.locator(".job-rows .job-list > li");
const row = (page, name) => rows(page).filter({ hasText: name });
const nameField = (page) => page.locator('input[name="job:name"]');

/** Opens the list once the shelf is open. */
async function openList(site) {
  const page = await site.open(jobs);
  await page.locator('[data-action="new-job"]:not([disabled])').waitFor();
  return page;
}

/** Goes to the list as a person does. */
async function goToList(page) {
  await page.locator(`footer a[href="#/jobs"]`).click();
  await page.locator('[data-action="new-job"]:not([disabled])').waitFor();
}

/** Begins a job, gives it a name and waits until it is on this phone. */
async function beginJob(page, name) {
  await page.locator('[data-action="new-job"]').click();
  await nameField(page).fill(name);
  await page.locator(".kept-state[data-unsaved='0']").waitFor();
}

async function openActions(page, name) {
  await row(page, name).locator("button[aria-expanded]").click();
}

async function openFile(page, text) {
  await page.locator('input[name="jobFile"]').setInputFiles({ name: "jobs.json", mimeType: "application/json", buffer: Buffer.from(text) });
}

test("a job is begun, named, found by words, deleted and put back, and is there offline", async (t) => {
  const site = await openSite(t);
  const page = await openList(site);
  assert.match(await page.locator(".job-list-empty").innerText(), /No job yet/);
  await beginJob(page, "Mill house, café");
  await goToList(page);
  await beginJob(page, "Cold store");
  await page.locator('input[name="job:site"]').fill("North quay 7");
  await goToList(page);
  assert.equal(await rows(page).count(), 2);
  await eventually(() => row(page, "Cold store").innerText(), /Next: Plan.*North quay 7/s);

  const search = page.locator('input[name="words"]');
  await search.pressSequentially("CAFE mill");
  await eventually(async () => (await rows(page).allInnerTexts()).join("|"), /^Mill house, café[^|]*$/);
  await search.fill("quay");
  await eventually(async () => (await rows(page).allInnerTexts()).join("|"), /^Cold store[^|]*$/);
  await search.fill("nowhere");
  await page.locator('[data-found="0"]').waitFor();
  await search.fill("");

  await openActions(page, "Cold store");
  await page.locator('[data-action="delete"]').click();
  await page.locator('[data-found="1"]').waitFor();
  const back = page.locator('.removed-row [data-action="put-back"]');
  assert.ok(await back.evaluate((button) => button === document.activeElement), "the way back is at hand");
  await back.click();
  await page.locator('[data-found="2"]').waitFor();

  await openActions(page, "Mill house");
  await page.locator('[data-action="delete"]').click();
  await page.locator('[data-found="1"]').waitFor();
  await waitUntilKept(page);
  await site.stop();
  await page.reload();
  await page.locator('[data-found="1"]').waitFor();
  await page.locator(".removed-jobs > summary").click();
  await page.locator('[data-removed-job] [data-action="put-back"]').click();
  await page.locator('[data-found="2"]').waitFor();
  await row(page, "Mill house").locator("a").click();
  await page.locator("h1", { hasText: "Mill house, café" }).waitFor();
  site.offences.length = 0; // Without a server the look for a newer version leaves its line on the console.
});

test("deleting for good is asked twice", async (t) => {
  const site = await openSite(t);
  const page = await openList(site);
  await beginJob(page, "To be gone");
  await goToList(page);
  await openActions(page, "To be gone");
  await page.locator('[data-action="delete"]').click();
  await page.locator(".removed-jobs > summary").click();
  const gone = page.locator("[data-removed-job]");
  await gone.locator('[data-action="delete-for-good"]').click();
  assert.equal(await gone.count(), 1);
  await gone.locator('[data-action="delete-surely"]').click();
  await gone.waitFor({ state: "detached" });
  await page.reload();
  await page.locator(".job-list-empty").waitFor();
});

test("a copy as template keeps the plan and drops what was done", async (t) => {
  const site = await openSite(t);
  const page = await openList(site);
  await page.locator('[data-action="practice-job"]').click();
  await page.locator(".stage-list").waitFor();
  await goToList(page);
  await openActions(page, "Practice");
  await page.locator('[data-action="duplicate"]').click();
  await page.locator("h1", { hasText: "Copy of Practice: the mill house" }).waitFor();
  await page.locator(".job-names > summary").click();
  const { name, text } = await saved(page, "save-job");
  assert.match(name, /^\d{4}-\d\d-\d\d Copy of Practice the mill house\.json$/);
  const copy = JSON.parse(text);
  assert.equal(copy.plate.refrigerant, "R-32");
  assert.equal(copy.lines.gasLine.tube, "3/8");
  assert.equal(copy.rooms[0].name, "Hall");
  assert.equal(copy.instruments.gauge.resolution, "0.05 bar");
  for (const dropped of ["joints", "pressureTest", "evacuation", "release", "runCheck", "notes", "photos", "signOffs", "overrides", "clockChanges", "packed"]) {
    assert.equal(copy[dropped], undefined, dropped);
  }
});

test("a second window sees an edit, and the same field in both is a clash that can be settled", async (t) => {
  const site = await openSite(t);
  const page = await openList(site);
  await beginJob(page, "Shared");
  const other = await site.open(new URL(page.url()).hash);
  await other.locator("h1", { hasText: "Shared" }).waitFor();
  await page.locator('input[name="job:site"]').fill("Seen by both");
  await other.locator(".job-names > summary em", { hasText: "Seen by both" }).waitFor();

  // Both write before either hears of the other: the second window is held back as by a slow phone.
  await other.locator(".job-names > summary").click();
  await holdWritesBack(other);
  await other.locator('input[name="job:customer"]').fill("Rowan");
  await page.locator('input[name="job:customer"]').fill("Alder");
  await page.locator(".kept-state[data-unsaved='0']").waitFor();
  await other.evaluate(() => globalThis.letWritesGo());
  const clash = other.locator('[data-clash="customer"]');
  await eventually(() => clash.innerText(), /Done for.*you wrote\s+Rowan.*the other window wrote\s+Alder.*stands now\s+Rowan/s);
  await page.locator('[data-clash="customer"]').waitFor();
  await clash.locator('[data-action="clash-theirs"]').click();
  await clash.waitFor({ state: "detached" });
  await eventually(() => page.locator('input[name="job:customer"]').inputValue(), /^Alder$/);
});

/** Transactions that write wait until `letWritesGo` is called. */
async function holdWritesBack(page) {
  await page.evaluate(() => {
    const { transaction } = IDBDatabase.prototype;
    let isHeld = true;
    globalThis.letWritesGo = () => {
      isHeld = false;
      document.dispatchEvent(new Event("visibilitychange"));
    };
    IDBDatabase.prototype.transaction = function (names, mode, options) {
      if (isHeld) throw new DOMException("held back", "UnknownError");
      return transaction.call(this, names, mode, options);
    };
  });
}

test("undo and redo say what they take back", async (t) => {
  const site = await openSite(t);
  const page = await openList(site);
  await beginJob(page, "Named");
  await page.locator('input[name="job:site"]').fill("Quay");
  const undo = page.locator('[data-action="undo"]');
  await eventually(() => undo.innerText(), /Undo\s+Place/);
  await undo.click();
  await eventually(() => page.locator('[data-action="redo"]').innerText(), /Redo\s+Place/);
  assert.equal(await page.locator('input[name="job:site"]').inputValue(), "");
  await page.locator('[data-action="redo"]').click();
  await eventually(() => page.locator('input[name="job:site"]').inputValue(), /^Quay$/);
});

test("where the browser refuses storage this is said, and a job leaves as a file", async (t) => {
  const site = await openSite(t);
  await site.context.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("refused", "SecurityError");
    };
  });
  const page = await openList(site);
  assert.match(await page.locator('[data-kept="refused"]').innerText(), /refuses storage.*Save them to a file/s);
  await page.locator('[data-action="new-job"]').click();
  await nameField(page).fill("In memory");
  await eventually(() => page.locator(".kept-state").innerText(), /refuses storage/);
  const { text } = await saved(page, "save-job");
  assert.equal(JSON.parse(text).name, "In memory");
  await goToList(page);
  assert.equal(JSON.parse((await saved(page, "backup")).text).jobs[0].name, "In memory");
});

test("a backup comes back on another phone: new, the same, differing by fields", async (t) => {
  const site = await openSite(t);
  const page = await openList(site);
  await beginJob(page, "First");
  await page.locator('input[name="job:site"]').fill("Quay 1");
  await page.locator('input[name="job:customer"]').fill("Rowan");
  await page.locator(".kept-state[data-unsaved='0']").waitFor();
  const address = new URL(page.url()).hash;
  await goToList(page);
  await beginJob(page, "Second");
  await goToList(page);
  const { name, text } = await saved(page, "backup");
  assert.match(name, /Coldwright jobs\.json$/);

  await openFile(page, text);
  await eventually(() => page.locator(".merge").innerText(), /The same: 2/i);
  assert.ok(await page.locator('[data-action="take-file"]').isDisabled());
  await page.locator('[data-action="leave-file"]').click();

  await row(page, "First").locator("a").click();
  await page.locator(".job-names > summary").click();
  await page.locator('input[name="job:site"]').fill("Quay 2");
  await page.locator('input[name="job:customer"]').fill("Alder");
  await goToList(page);
  await openActions(page, "Second");
  await page.locator('[data-action="delete"]').click();
  await openFile(page, text);
  const differing = page.locator('[data-standing="differs"]');
  await eventually(() => page.locator(".merge").innerText(), /Deleted here: 1; differing: 1/i);
  await eventually(() => differing.innerText(), /Place\s+here\s+Quay 2\s+in the file\s+Quay 1/);
  await differing.locator('label:has(input[value="by-field"])').click();
  const customer = differing.locator(".differences li").filter({ hasText: "Done for" });
  await customer.locator('label:has(input[value="theirs"])').click();
  await page.locator('[data-action="take-file"]').click();
  await page.locator('[data-found="2"]').waitFor();
  await page.locator(".merge").waitFor({ state: "detached" });
  await eventually(() => row(page, "First").innerText(), /Quay 2; Rowan/);

  const elsewhere = await openSite(t);
  const phone = await openList(elsewhere);
  await openFile(phone, text);
  await eventually(() => phone.locator(".merge").innerText(), /New: 2/i);
  await phone.locator('[data-action="take-file"]').click();
  await phone.locator('[data-found="2"]').waitFor();
  await eventually(() => row(phone, "First").innerText(), /Next: Plan.*Quay 1; Rowan/s);
  await phone.goto(elsewhere.address + address);
  await phone.locator("h1", { hasText: "First" }).waitFor();
});

test("the file of one job is compared with the job that is here; other files change nothing", async (t) => {
  const site = await openSite(t);
  const page = await openList(site);
  await beginJob(page, "One");
  const { text } = await saved(page, "save-job");
  await nameField(page).fill("One, renamed");
  await goToList(page);
  await openFile(page, text);
  await eventually(() => page.locator('[data-standing="differs"]').innerText(), /Name\s+here\s+One, renamed\s+in the file\s+One/);
  await page.locator('[data-standing="differs"] label:has(input[value="take"])').click();
  await page.locator('[data-action="take-file"]').click();
  await eventually(async () => (await rows(page).allInnerTexts()).join("|"), /^One\n/);
  for (const other of ["", "[1]", "not JSON", '{"format":"coldwright-backup","version":1,"made":"2026', '{"name":"no version"}']) {
    await openFile(page, other);
    await page.locator('.job-files [role="alert"]', { hasText: "no backup" }).waitFor();
  }
  await openFile(page, '{"version": 2, "name": "From later"}');
  await page.locator('[data-standing="refused"]', { hasText: "later version" }).waitFor();
  assert.ok(await page.locator('[data-action="take-file"]').isDisabled());
  await openFile(page, JSON.stringify({ version: 1, name: "<b>&", note: { toString: 1 }, joints: "none", plate: [[[]]] }));
  await page.locator('[data-standing="new"]').waitFor();
  await page.locator('[data-action="take-file"]').click();
  await page.locator('[data-found="2"]').waitFor();
  await row(page, "<b>&").locator("a").click();
  await page.locator("h1", { hasText: "<b>&" }).waitFor();
});

test("a broken record is shown, saved as it stands and deleted only when asked", async (t) => {
  const site = await openSite(t);
  const page = await openList(site);
  await beginJob(page, "Broken soon");
  const id = new URLSearchParams(new URL(page.url()).hash.split("?")[1]).get("id");
  await goToList(page);
  await page.goto("about:blank");
  const breaker = await site.open("#/settings");
  await breaker.evaluate(breakRecord, id);
  await breaker.goto(`${site.address}#/job?id=${id}`);
  await breaker.locator(".problem", { hasText: "is no job" }).waitFor();
  await goToList(breaker);
  const broken = breaker.locator('[data-unreadable="not-a-document"]');
  await broken.waitFor();
  assert.match((await saved(breaker, "save-raw")).text, /what is left/);
  await broken.locator('[data-action="delete-for-good"]').click();
  await broken.locator('[data-action="delete-surely"]').click();
  await breaker.locator(".job-list-empty").waitFor();
});

/** Writes over the stored document of a job. */
function breakRecord(id) {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open("coldwright jobs");
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const transaction = opening.result.transaction("documents", "readwrite");
      const documents = transaction.objectStore("documents");
      documents.get(id).onsuccess = ({ target }) => documents.put({ ...target.result, document: "what is left" });
      transaction.oncomplete = () => resolve(opening.result.close());
      transaction.onabort = () => reject(transaction.error);
    };
  });
}

/** Scrolls until so many rows are drawn. */
async function drawAll(page, wanted) {
  for (let drawn = await rows(page).count(); drawn < wanted; drawn = await rows(page).count()) {
    await page.evaluate(() => document.querySelector('[data-action="more-jobs"]')?.scrollIntoView());
    await page.waitForFunction((before) => document.querySelectorAll(".job-rows .job-list > li").length > before, drawn);
  }
  assert.equal(await rows(page).count(), wanted);
}

test("hundreds of jobs: the first are drawn, the others when asked for, and the search goes over all", async (t) => {
  const site = await openSite(t);
  const page = await openList(site);
  const made = Array.from({ length: 300 }, (_, index) => ({ version: 1, id: `job${index}`, name: `Job number ${index}`, edited: new Date(1.77e12 + index).toISOString() }));
  await openFile(page, JSON.stringify({ format: "coldwright-backup", version: 1, made: "2026-03-02T08:00:00Z", jobs: made }));
  await eventually(() => page.locator(".merge").innerText(), /New: 300/i);
  await page.locator('[data-action="take-file"]').click();
  await page.locator('[data-found="300"]').waitFor();
  await page.locator(".merge").waitFor({ state: "detached" });
  await page.reload();
  await page.locator('[data-found="300"]').waitFor();
  assert.ok((await rows(page).count()) < 300);
  await page.locator('input[name="words"]').fill("number 17 ");
  await page.locator('[data-found="13"]').waitFor(); // 17, 117, 217 and 170 to 179.
  await drawAll(page, 13);
  await page.locator('input[name="words"]').fill("");
  await page.locator('[data-found="300"]').waitFor();
  await drawAll(page, 300);
});

test("a new job begins with the person's own instruments", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/settings");
  await page.locator('input[name="technician"]').fill("A. Rowan");
  await page.locator('input[name="ownGaugeResolution"]').fill("0.05");
  await page.locator('input[name="ownScaleResolution"]').fill("heavy");
  await page.locator('[data-problem-of="ownScaleResolution"]').waitFor();
  await page.locator('input[name="ownScaleResolution"]').fill("5");
  await page.locator('[data-problem-of="ownScaleResolution"]').waitFor({ state: "detached" });
  await goToList(page);
  await beginJob(page, "With my kit");
  const job = JSON.parse((await saved(page, "save-job")).text);
  assert.equal(job.technician, "A. Rowan");
  assert.equal(job.instruments.gauge.resolution, "0.05 bar");
  assert.equal(job.instruments.scale.resolution, "5 g");
});

test("the screen of last resort saves all jobs", async (t) => {
  const site = await openSite(t);
  const page = await openList(site);
  await beginJob(page, "Kept through a crash");
  await page.evaluate(() => void Promise.reject(new Error("on purpose")));
  await page.locator("main.crash").waitFor();
  const { text } = await saved(page, "rescue");
  assert.equal(JSON.parse(text).jobs[0].name, "Kept through a crash");
  site.offences.length = 0; // The failure made on purpose has left its line on the console.
});

for (const { theme, width } of [
  { theme: "light", width: 360 },
  { theme: "dark", width: 320 },
]) {
  test(`list, preview and head can be read and reached at ${width} px, ${theme}, with large text`, only.inColours(theme), async (t) => {
    const site = await openSite(t, { viewport: { width, height: 740 }, colorScheme: theme });
    const page = await openList(site);
    const look = async (where) => {
      await openAll(page);
      await page.evaluate(() => (document.documentElement.style.fontSize = "100%"));
      assert.deepEqual(await breaches(page), [], where);
      assert.deepEqual(await page.evaluate(smallTargets), [], where);
      await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
      assert.deepEqual(await page.evaluate(unreadableTexts), [], where);
      await page.evaluate(() => (document.documentElement.style.fontSize = "100%"));
    };
    await look("no jobs");
    await beginJob(page, "A name so long that it does not fit beside anything at all");
    const { text } = await saved(page, "save-job");
    await page.locator('input[name="job:customer"]').fill("Rowan");
    await lookAtHead(page, look);
    await goToList(page);
    await beginJob(page, "Second");
    await goToList(page);
    await openActions(page, "Second");
    await page.locator('[data-action="delete"]').click();
    await page.locator(".removed-row").waitFor();
    await openActions(page, "A name");
    await openFile(page, text);
    await page.locator('[data-standing="differs"] label:has(input[value="by-field"])').click();
    await look("list with everything");
  });
}

async function lookAtHead(page, look) {
  // The stages below are for their own tests.
  await page.evaluate(() => document.querySelectorAll("main > :not(.job-head)").forEach((part) => part.remove()));
  await look("head");
  await page.reload();
  await page.locator(".job-names").waitFor();
}
