// Broken records: each is said, exported and removed, and none stands in the way of the others.
import assert from "node:assert/strict";
import { test } from "node:test";
import { useBrowser } from "./site.mjs";
import { createJob, openJob, openStore, until } from "./store-site.mjs";

useBrowser();

/** What may have happened to a record, as functions that run in the page. */
const accidents = [
  { name: "the document is a text", reason: "not-a-document", break: (id) => rawly(["documents"], (found) => found.put({ id, schema: 1, number: 0, document: "text" })) },
  { name: "the document has a date in it", reason: "not-a-document", break: (id) => rawly(["documents"], (found) => found.put({ id, schema: 1, number: 0, document: { id, when: new Date() } })) },
  { name: "the document contains itself", reason: "not-a-document", break: (id) => {
    const document = { id };
    document.self = [document, document];
    return rawly(["documents"], (found) => found.put({ id, schema: 1, number: 0, document }));
  } },
  { name: "the document is a thousand deep", reason: "not-a-document", break: (id) => {
    let document = {};
    for (let depth = 0; depth < 1000; depth++) document = { document };
    return rawly(["documents"], (found) => found.put({ id, schema: 1, number: 0, document: { id, document } }));
  } },
  { name: "the document is another job's", reason: "not-a-document", break: (id) => rawly(["documents"], (found) => found.put({ id, schema: 1, number: 0, document: { id: "other" } })) },
  { name: "the document is missing", reason: "no-document", break: (id) => rawly(["documents"], (found) => found.delete(id)) },
  { name: "an edit is none", reason: "bad-edit", break: (id) => rawly(["edits"], (found) => found.add({ job: id, edit: "text" })) },
  { name: "an edit finds no place", reason: "bad-edit", break: (id) => rawly(["edits"], (found) => found.add({ job: id, by: "w", turn: 1, step: "s", at: "", seen: 1e9, edit: { kind: "take", path: ["readings", "#x"], item: { id: "x" }, after: null, made: 0 } })) },
  { name: "a newer page has written it", reason: "newer", break: (id) => rawly(["documents"], (found) => found.put({ id, schema: 99, number: 0, document: { id } })) },
];

for (const accident of accidents) {
  test(`where ${accident.name}, the others open, and the record can be exported and removed`, async (t) => {
    const { open } = await openStore(t);
    const first = await open();
    const whole = await createJob(first, { name: "whole" });
    const broken = await createJob(first, { name: "broken" });
    await first.evaluate(async () => {
      job.apply(store.setting(["name"], "broken too"));
      await shelf.close();
    });
    await first.evaluate(accident.break, broken);
    const page = await open();
    assert.deepEqual(await openJob(page, broken), { kind: "unreadable", reason: accident.reason });
    assert.equal((await openJob(page, whole)).name, "whole");
    const rows = (found) => found.evaluate(() => shelf.list().map(({ name, unreadable }) => [name, unreadable ?? ""]).sort());
    assert.deepEqual(await rows(page), [["broken too", accident.reason], ["whole", ""]]);
    assert.match(await page.evaluate((id) => shelf.exportRaw(id), broken), /broken too/);
    const backup = JSON.parse(await page.evaluate(async () => (await shelf.backup()).text()));
    assert.deepEqual([backup.jobs.map(({ name }) => name), backup.unreadable.length], [["whole"], 1]);
    await page.evaluate(() => shelf.settled());
    assert.deepEqual(await rows(await open()), [["broken too", accident.reason], ["whole", ""]], "it is known when the page is opened anew");
    await page.evaluate((id) => shelf.remove(id), broken);
    assert.deepEqual(await rows(page), [["whole", ""]]);
    await page.evaluate((id) => shelf.purge(id), broken);
    assert.equal(await page.evaluate(() => shelf.removed().length), 0);
  });
}

test("a summary that is lost or broken is made anew from its document", async (t) => {
  const { open } = await openStore(t);
  const first = await open();
  for (const name of ["lost", "broken", "whole"]) await createJob(first, { name });
  await first.evaluate(async () => {
    const ids = Object.fromEntries(shelf.list().map(({ id, name }) => [name, id]));
    await shelf.close();
    await rawly(["summaries"], (found) => found.delete(ids.lost));
    await rawly(["summaries"], (found) => found.put({ id: ids.broken, name: { constructor: 1 } }));
    await rawly(["summaries"], (found) => found.put({ id: "stray", name: "no document" , edited: "", glance: "" }));
    await rawly(["documents"], (found) => found.put({ id: "unlisted" }));
  });
  const page = await open();
  await until(page, () => shelf.list().length === 5);
  assert.deepEqual(await page.evaluate(() => shelf.list().map(({ name, unreadable }) => `${name} ${unreadable ?? ""}`.trim()).sort()), ["broken", "lost", "no document no-document", "not-a-document", "whole"]);
});

test("one record that the database cannot give does not hide the list", async (t) => {
  const { open } = await openStore(t);
  const first = await open();
  for (const name of ["one", "two"]) await createJob(first, { name });
  await first.close();
  const page = await open(() => {
    const { getAll } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.getAll = function (...about) {
      const request = getAll.apply(this, about);
      if (this.name === "summaries") setTimeout(() => this.transaction.abort());
      return request;
    };
  });
  await until(page, () => shelf.list().length === 2);
});
