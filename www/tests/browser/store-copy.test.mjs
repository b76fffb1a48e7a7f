// A browser that has thrown the database away: jobs and photos come back from their second copy, and only those wanted.
import assert from "node:assert/strict";
import { test } from "node:test";
import { useBrowser } from "./site.mjs";
import { createJob, openJob, openStore, until } from "./store-site.mjs";

useBrowser();

/** Runs in the page: the addresses in the second copy. */
const copied = async () => (await (await caches.open("coldwright jobs, second copy")).keys()).map(({ url }) => new URL(url).pathname).sort();

/** Waits until the second copy is of so many jobs and photos. */
const untilCopied = (page, count) => until(page, async (wanted) => {
  const addresses = (await (await caches.open("coldwright jobs, second copy")).keys()).map(({ url }) => url.replace(/\/[01]$/, ""));
  return new Set(addresses).size === wanted;
}, count);

/** Waits until a job's copy holds a text. */
const untilCopyHolds = (page, text) => until(page, async (wanted) => {
  const replies = await (await caches.open("coldwright jobs, second copy")).matchAll();
  return (await Promise.all(replies.map((reply) => reply.text()))).some((found) => found.includes(wanted));
}, text);

/** Takes the whole database away, as a browser does that finds it damaged, and closes the page. */
async function throwAway(page) {
  await page.evaluate(async () => {
    await shelf.close();
    await new Promise((gone, refused) => {
      const request = indexedDB.deleteDatabase("coldwright jobs");
      request.onsuccess = gone;
      request.onerror = refused;
    });
  });
  await page.close();
}

const names = (page) => page.evaluate(() => shelf.list().map(({ name }) => name).sort());

test("a database that is gone gives its jobs and photos back, and none that was taken out", async (t) => {
  const { open } = await openStore(t);
  const first = await open();
  const purged = await createJob(first, { name: "purged" });
  await first.evaluate(() => shelf.addPhoto(job.id, new Blob(["purged"])));
  const removed = await createJob(first, { name: "removed" });
  const kept = await createJob(first, { name: "kept" });
  await first.evaluate(() => job.apply(store.setting(["plate", "refrigerant"], "R-32")));
  const photo = await first.evaluate(() => shelf.addPhoto(job.id, new Blob([new Uint8Array([0, 200, 255])], { type: "image/jpeg" })));
  await untilCopied(first, 5);
  await untilCopyHolds(first, "R-32");
  await first.evaluate(async ([one, other]) => {
    await shelf.remove(one);
    await shelf.purge(other);
  }, [removed, purged]);
  await untilCopied(first, 2);
  await throwAway(first);

  const second = await open();
  assert.deepEqual(await names(second), ["kept"]);
  assert.equal(await second.evaluate(() => shelf.safekeeping.broughtBack), 1);
  assert.equal((await openJob(second, kept)).plate.refrigerant, "R-32");
  const found = await second.evaluate(async (id) => {
    const blob = await shelf.photo(id);
    return [blob.type, ...new Uint8Array(await blob.arrayBuffer())];
  }, photo);
  assert.deepEqual(found, ["image/jpeg", 0, 200, 255]);
  await second.evaluate(async () => {
    job.apply(store.setting(["plate", "charge"], "1 kg"));
    await shelf.settled();
  });
  await second.close();

  const third = await open();
  assert.deepEqual((await openJob(third, kept)).plate, { refrigerant: "R-32", charge: "1 kg" });
  assert.equal(await third.evaluate(() => shelf.safekeeping.broughtBack), 0);
  await third.evaluate((id) => shelf.purge(id), kept);
  await untilCopied(third, 0);
});

test("the copy is left alone as long as the database is whole", async (t) => {
  const { open } = await openStore(t);
  const first = await open();
  await createJob(first, { name: "here" });
  await first.evaluate(async () => {
    const cache = await caches.open("coldwright jobs, second copy");
    await cache.put("copy-of-a-job/other/0", new Response(JSON.stringify({ turn: 1, document: { id: "other", name: "only in the copy" } })));
    await shelf.close();
  });
  assert.deepEqual(await names(await open()), ["here"]);
});

test("a copy that cannot be read is passed over, and the one before it stands in", async (t) => {
  const { open } = await openStore(t);
  const first = await open();
  await first.evaluate(async () => {
    const cache = await caches.open("coldwright jobs, second copy");
    const document = (id, name) => JSON.stringify({ turn: 7, document: { id, name } });
    const texts = { "a/0": "not JSON", "b/0": "[1]", "c/1": `{"turn": 1, "document": {"id": 7}}`, "d/0": document("other", "another's"), "e/0": document("e", "whole"), "f/0": document("f", "before"), "f/1": document("f", "torn").slice(0, -5) };
    for (const [place, text] of Object.entries(texts)) await cache.put(`copy-of-a-job/${place}`, new Response(text));
    await cache.put("copy-of-a-photo/p", new Response("no word about it"));
  });
  await throwAway(first);
  assert.deepEqual(await names(await open()), ["before", "whole"]);
});

test("a job is copied to two places in turn, also after the page has been opened anew", async (t) => {
  const { open } = await openStore(t);
  let page = await open();
  const id = await createJob(page);
  for (const name of ["one", "two", "three"]) {
    await untilCopied(page, 1);
    await page.evaluate((text) => job.apply(store.setting(["name"], text)), name);
    await untilCopyHolds(page, name);
    await page.close();
    page = await open();
    await openJob(page, id);
  }
  assert.deepEqual(await page.evaluate(copied), [`/copy-of-a-job/${id}/0`, `/copy-of-a-job/${id}/1`]);
  await untilCopyHolds(page, "two");
  await untilCopyHolds(page, "three");
});

test("jobs that had not come back yet when the page was closed come back at the next start", async (t) => {
  const { open } = await openStore(t);
  const first = await open();
  for (const name of ["one", "two", "three"]) await createJob(first, { name });
  await untilCopied(first, 3);
  await throwAway(first);
  // The second job of the copy does not answer: the page is closed while it waits.
  const second = await open(() => {
    const { match } = Cache.prototype;
    const asked = new Set();
    Cache.prototype.match = function (address) {
      asked.add(String(address).replace(/\/[01]$/, ""));
      return asked.size > 1 ? new Promise(() => {}) : match.call(this, address);
    };
  });
  assert.equal(await second.evaluate(() => shelf.safekeeping.reason), "slow");
  assert.equal(await second.evaluate(() => rawly(["documents"], (found) => found.count())), 1);
  await second.close();
  assert.deepEqual(await names(await open()), ["one", "three", "two"]);
});

test("jobs come back beside one that was begun before the database had answered", async (t) => {
  const { open } = await openStore(t);
  const holder = await open();
  await createJob(holder, { name: "before" });
  await untilCopied(holder, 1);
  await holder.evaluate(async () => {
    await shelf.close();
    await new Promise((held) => {
      const opening = indexedDB.open("coldwright jobs");
      opening.onsuccess = () => {
        globalThis.held = opening.result;
        indexedDB.deleteDatabase("coldwright jobs").onblocked = held;
      };
    });
  });
  const page = await open();
  await page.evaluate(() => (globalThis.job = shelf.create({ name: "meanwhile" })));
  await holder.evaluate(() => held.close());
  await until(page, () => shelf.list().length === 2 && shelf.safekeeping.kept === "on this phone" && shelf.safekeeping.unsaved === 0);
  assert.deepEqual(await names(await open()), ["before", "meanwhile"]);
});
