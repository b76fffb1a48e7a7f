// A browser that has thrown the database away: the jobs come back from their second copy, and only those that are wanted.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, useBrowser } from "./site.mjs";
import { createJob, openJob, openStore } from "./store-site.mjs";

useBrowser();

const copyName = "coldwright jobs, second copy";

/** Runs in the page: the texts in the second copy. */
const copies = async (name) => {
  const replies = await (await caches.open(name)).matchAll();
  return Promise.all(replies.map((reply) => reply.text()));
};

/** Takes the whole database away, as a browser does that finds it damaged. */
async function throwAway(page) {
  await page.evaluate(
    () =>
      new Promise((gone, refused) => {
        const request = indexedDB.deleteDatabase("coldwright jobs");
        request.onsuccess = gone;
        request.onerror = refused;
      }),
  );
}

test("a database that is gone gives its jobs back, and none that was taken out", async (t) => {
  const { open } = await openStore(t);
  const first = await open();
  const kept = await createJob(first, { name: "kept" });
  await first.evaluate(() => job.apply(store.setting(["plate", "refrigerant"], "R-32")));
  const removed = await createJob(first, { name: "removed" });
  const purged = await createJob(first, { name: "purged" });
  await eventually(async () => String((await first.evaluate(copies, copyName)).length), /^3$/);
  await first.evaluate(async ([one, other]) => {
    await shelf.remove(one);
    await shelf.purge(other);
  }, [removed, purged]);
  await eventually(async () => String((await first.evaluate(copies, copyName)).length), /^1$/);
  await eventually(async () => (await first.evaluate(copies, copyName)).join(), /R-32/);
  await first.evaluate(() => shelf.close());
  await throwAway(first);
  await first.close();

  const second = await open();
  assert.deepEqual(await second.evaluate(() => shelf.list().map(({ name }) => name)), ["kept"]);
  assert.equal((await openJob(second, kept)).plate.refrigerant, "R-32");
  await second.evaluate(async () => {
    job.apply(store.setting(["plate", "charge"], "1 kg"));
    await shelf.settled();
    await shelf.close();
  });
  await second.close();

  const third = await open();
  assert.deepEqual((await openJob(third, kept)).plate, { refrigerant: "R-32", charge: "1 kg" });
});

test("the copy is left alone as long as the database has a job", async (t) => {
  const { open } = await openStore(t);
  const first = await open();
  await createJob(first, { name: "here" });
  await eventually(async () => String((await first.evaluate(copies, copyName)).length), /^1$/);
  await first.evaluate(async (name) => {
    const cache = await caches.open(name);
    await cache.put("copy-of-a-job/other", new Response(JSON.stringify({ id: "other", name: "only in the copy" })));
    await shelf.close();
  }, copyName);
  const second = await open();
  assert.deepEqual(await second.evaluate(() => shelf.list().map(({ name }) => name)), ["here"]);
});

test("a copy that cannot be read is passed over", async (t) => {
  const { open } = await openStore(t, {
    prepare: () => {
      globalThis.broken = caches.open("coldwright jobs, second copy").then((cache) => Promise.all(["not JSON", "[1]", '{"id": 7}', '{"id": "whole", "name": "whole"}'].map((text, index) => cache.put(`copy-of-a-job/${index}`, new Response(text)))));
    },
  });
  const page = await open();
  await page.evaluate(async () => {
    await broken;
    await shelf.close();
  });
  const second = await open(undefined);
  assert.deepEqual(await second.evaluate(() => shelf.list().map(({ name }) => name)), ["whole"]);
});
