// The store of jobs in a browser: what is written is there again, whatever happens to the page.
import assert from "node:assert/strict";
import { test } from "node:test";
import { useBrowser } from "./site.mjs";
import { createJob, openJob, openStore, until } from "./store-site.mjs";

useBrowser();

test("edits survive a page that is left in the very moment of typing", async (t) => {
  const { open } = await openStore(t);
  // The last thing that the page does, after which it never runs again.
  const page = await open(() => addEventListener("pagehide", () => globalThis.atLast?.()));
  const id = await createJob(page);
  await page.evaluate(() => {
    globalThis.atLast = () => {
      for (let letter = 1; letter <= 50; letter++) job.apply(store.setting(["name"], "x".repeat(letter)));
      job.apply(store.puttingIn(["readings"], { id: "one", pressure: "40 bar" }));
    };
    location.replace("about:blank");
  });
  await page.waitForURL("about:blank");
  await page.close();
  const { name, readings } = await openJob(await open(), id);
  assert.equal(name, "x".repeat(50));
  assert.deepEqual(readings, [{ id: "one", pressure: "40 bar" }]);
});

test("a job made and edited in the moment before the page is closed is there", async (t) => {
  const { open } = await openStore(t);
  const page = await open();
  await Promise.all([
    page.waitForEvent("close"),
    page.evaluate(() => {
      globalThis.job = shelf.create({ name: "first" });
      job.apply(store.setting(["name"], "second"));
    }),
    page.close(),
  ]).catch(() => {}); // The answer of a page that is gone.
  const again = await open();
  const list = await again.evaluate(() => shelf.list());
  // Closing may come before the page has run at all; half a job is never there.
  if (list.length > 0) assert.equal((await openJob(again, list[0].id)).name, "second");
});

test("undo and redo go on after the page has been opened anew", async (t) => {
  const { open } = await openStore(t);
  const first = await open();
  const id = await createJob(first);
  await first.evaluate(async () => {
    job.apply(store.setting(["name"], "two"));
    job.apply([store.setting(["plate"], { charge: "1 kg" }), store.puttingIn(["readings"], { id: "r" })]);
    job.undo();
    await shelf.settled();
  });
  await first.close();
  const page = await open();
  assert.equal((await openJob(page, id)).name, "two");
  const steps = await page.evaluate(() => {
    const names = [];
    const note = () => names.push([job.document.name, job.document.readings.length, job.canUndo, job.canRedo]);
    note();
    job.redo();
    note();
    job.undo();
    job.undo();
    note();
    return names;
  });
  assert.deepEqual(steps, [["two", 0, true, true], ["two", 1, true, false], ["Cold room", 0, false, true]]);
  assert.equal(await page.evaluate(() => job.history().length), 2);
});

test("a log of thousands of edits is cut, opens fast from its snapshot, and is not cut for a window that fell behind", async (t) => {
  const { open } = await openStore(t);
  const page = await open();
  const id = await createJob(page);
  // As a window that the browser has frozen: it hears of nothing.
  const frozen = await open(() => (globalThis.BroadcastChannel = undefined));
  await openJob(frozen, id);
  await page.evaluate(async () => {
    for (let count = 1; count <= 2700; count++) {
      job.apply(store.puttingIn(["readings"], { id: `r${count}`, pressure: `${count}` }));
      if (count % 100 === 0) await shelf.settled();
    }
    await shelf.settled();
  });
  const stored = () => page.evaluate(() => rawly(["edits"], (edits) => edits.getAll()));
  await until(page, async () => (await rawly(["edits"], (edits) => edits.count())) < 2500);
  assert.equal((await stored()).filter(({ cut }) => cut).length, 1);
  const snapshot = await page.evaluate((key) => rawly(["documents"], (documents) => documents.get(key)), id);
  assert.ok(snapshot.document.readings.length >= 2400);
  await frozen.evaluate(async () => {
    job.apply(store.setting(["name"], "from afar"));
    await shelf.settled();
  });
  await page.evaluate(() => job.apply(store.puttingIn(["readings"], { id: "last" })));
  await page.evaluate(() => shelf.settled());
  await frozen.evaluate(() => job.apply(store.setting(["notes"], "heard")));
  await page.evaluate(() => dispatchEvent(new PageTransitionEvent("pageshow", { persisted: true })));
  for (const window of [page, frozen]) {
    await until(window, () => job.document.name === "from afar" && job.document.readings.length === 2701 && job.document.notes === "heard" && job.unsaved === 0);
  }
  assert.deepEqual(await page.evaluate(() => job.document), await frozen.evaluate(() => job.document));
  const anew = await open();
  assert.equal((await openJob(anew, id)).readings.length, 2701);
  assert.ok((await anew.evaluate(() => job.history().length)) >= 2000);
});

test("the list shows name, glance and time, and finds words without their accents and case", async (t) => {
  const { open } = await openStore(t);
  const page = await open();
  for (const name of ["Café Río, north", "Cold room", "cafe south"]) await createJob(page, { name });
  await page.evaluate(() => job.setGlance("hold test open"));
  const names = (words) => page.evaluate((typed) => shelf.list(typed).map(({ name }) => name), words);
  assert.deepEqual((await names()).sort(), ["Café Río, north", "Cold room", "cafe south"].sort());
  assert.deepEqual((await names("CAFE")).sort(), ["Café Río, north", "cafe south"].sort());
  assert.deepEqual(await names("  rio  CAFE "), ["Café Río, north"]);
  assert.deepEqual(await names("café hold"), ["cafe south"]);
  assert.deepEqual(await names("nowhere"), []);
  await page.evaluate(() => shelf.settled());
  const again = await open();
  assert.equal(await again.evaluate(() => shelf.list("hold")[0].glance), "hold test open");
});

test("a removed job can be restored with its photos, is gone after thirty days, and an edit elsewhere brings it back", async (t) => {
  const { open } = await openStore(t);
  const page = await open();
  const id = await createJob(page);
  const photo = await page.evaluate((owner) => shelf.addPhoto(owner, new Blob(["picture"], { type: "image/jpeg" })), id);
  const other = await open();
  await openJob(other, id);
  await page.evaluate((wanted) => shelf.remove(wanted), id);
  const listed = () => page.evaluate(() => [shelf.list().length, shelf.removed().length]);
  assert.deepEqual(await listed(), [0, 1]);
  await until(other, () => shelf.removed().length === 1);
  await page.evaluate((wanted) => shelf.restore(wanted), id);
  assert.deepEqual(await listed(), [1, 0]);
  assert.equal(await page.evaluate(async (wanted) => (await shelf.photo(wanted)).text(), photo), "picture");
  await page.evaluate((wanted) => shelf.remove(wanted), id);
  await until(other, () => shelf.removed().length === 1);
  await other.evaluate(() => job.apply(store.setting(["name"], "still in use")));
  await until(page, () => shelf.list()[0]?.name === "still in use");
  await page.evaluate((wanted) => shelf.remove(wanted), id);
  await other.close();
  const later = await open();
  await later.evaluate(async () => {
    await shelf.close();
    globalThis.shelf = await store.openShelf({ now: () => new Date(Date.now() + 31 * 86_400_000) });
  });
  await until(later, () => shelf.removed().length === 0);
  const left = () => later.evaluate(() => Promise.all(["summaries", "documents", "edits", "photos"].map((name) => rawly([name], (found) => found.count()))));
  await until(later, async () => (await rawly(["photos"], (found) => found.count())) === 0);
  assert.deepEqual(await left(), [0, 0, 0, 0]);
});

test("a copy has an id of its own and keeps the photos it names", async (t) => {
  const { open } = await openStore(t);
  const page = await open();
  const id = await createJob(page);
  const copy = await page.evaluate(async (original) => {
    const [named, other] = [await shelf.addPhoto(original, new Blob(["named"])), await shelf.addPhoto(original, new Blob(["other"]))];
    job.apply(store.puttingIn(["photos"], { id: named }));
    const { job: made } = await shelf.duplicate(original, (document) => ({ ...document, name: "Copy" }));
    await shelf.purge(original);
    return { id: made.id, document: made.document, named: await (await shelf.photo(named)).text(), other: await shelf.photo(other) };
  }, id);
  assert.notEqual(copy.id, id);
  assert.equal(copy.document.name, "Copy");
  assert.equal(copy.named, "named");
  assert.equal(copy.other, undefined);
});

test("a job that a window has open outlives its purge in another one, once it is edited", async (t) => {
  const { open } = await openStore(t);
  const [page, other] = [await open(), await open()];
  const id = await createJob(page);
  await openJob(other, id);
  await page.evaluate((wanted) => shelf.purge(wanted), id);
  await other.evaluate(async () => {
    job.apply(store.setting(["name"], "rescued"));
    await shelf.settled();
  });
  await until(page, () => shelf.list()[0]?.name === "rescued");
  assert.equal((await openJob(await open(), id)).name, "rescued");
});

test("the browser is asked to keep what is stored when the first job is made, and no sooner", async (t) => {
  const { open } = await openStore(t, { prepare: () => {
    globalThis.asked = 0;
    navigator.storage.persist = async () => ++globalThis.asked === 1;
  } });
  const page = await open();
  const asked = () => page.evaluate(() => [globalThis.asked, shelf.safekeeping.persistence]);
  assert.deepEqual(await asked(), [0, "not asked"]);
  await createJob(page);
  await createJob(page);
  assert.deepEqual(await asked(), [1, "granted"]);
});

test("what is no document is refused, and no edit of it is half done", async (t) => {
  const { open } = await openStore(t);
  const page = await open();
  await createJob(page);
  const found = await page.evaluate(() => {
    const refused = [[], "text", { when: new Date() }, JSON.parse('{"__proto__": {}}')].map((document) => {
      try {
        return shelf.create(document).id;
      } catch (problem) {
        return problem.name;
      }
    });
    const isApplied = job.apply([store.setting(["name"], "half"), store.takingOut(["readings", "#nobody"])]);
    return { refused, isApplied, name: job.document.name, listed: shelf.list().length };
  });
  assert.deepEqual(found, { refused: Array(4).fill("TypeError"), isApplied: false, name: "Cold room", listed: 1 });
});
