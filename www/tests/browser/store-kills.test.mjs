// A browser that is killed in the middle of edits has lost no more than half a second. COLDWRIGHT_KILLS says how often.
import assert from "node:assert/strict";
import { test } from "node:test";
import { serve } from "../../serve.mjs";
import { killOften, open, start, tear } from "./kills.mjs";
import { temporaryDirectory } from "./site.mjs";
import { until, writeStorePage } from "./store-site.mjs";

const kills = Number(process.env.COLDWRIGHT_KILLS ?? 10);

test(`${kills} times the whole browser is killed: what is older than half a second is there, and every job is whole`, async (t) => {
  const rounds = await killOften(kills);
  assert.equal(rounds.length, kills);
  assert.deepEqual(rounds.flatMap(({ amiss }) => amiss), []);
  for (const { loss } of rounds) assert.ok(loss <= 500, `${loss} ms`);
  t.diagnostic(`worst loss ${Math.max(...rounds.map(({ loss }) => loss))} ms`);
});

test("a database that a kill has torn, and that the browser therefore throws away, gives back every job and photo", async (t) => {
  const [directory, profile] = [await temporaryDirectory(t), await temporaryDirectory(t)];
  await writeStorePage(directory);
  const server = await serve(directory);
  t.after(server.close);
  /** Does something in a page of a browser that is then killed. */
  const untilKilled = async (act) => {
    const browser = await start(profile);
    try {
      return await act(await open(browser, server.address));
    } finally {
      await browser.kill();
    }
  };
  const make = (name) => async (page) => {
    const photo = await page.evaluate(async (text) => {
      globalThis.job = shelf.create({ name: "new" });
      job.apply(store.setting(["name"], text));
      await shelf.settled();
      return shelf.addPhoto(job.id, new Blob([text]));
    }, name);
    await until(page, async (text) => {
      const replies = await (await caches.open("coldwright jobs, second copy")).matchAll();
      return (await Promise.all(replies.map((reply) => reply.text()))).filter((found) => found.includes(text)).length === 2;
    }, name);
    return photo;
  };
  const first = await untilKilled(make("first"));
  const isTorn = await tear(profile);
  const second = await untilKilled(make("second"));
  const found = await untilKilled((page) => page.evaluate(async (photos) => ({
    names: shelf.list().map(({ name }) => name).sort(),
    photos: await Promise.all(photos.map(async (id) => (await shelf.photo(id)).text())),
    opened: await Promise.all(shelf.list().map(async ({ id }) => (await shelf.open(id)).kind)),
    broughtBack: shelf.safekeeping.broughtBack,
  }), [first, second]));
  assert.deepEqual(found, { names: ["first", "second"], photos: ["first", "second"], opened: ["job", "job"], broughtBack: isTorn ? 2 : 0 });
  t.diagnostic(isTorn ? "the browser threw its database away" : "this browser keeps its databases in another way");
});
