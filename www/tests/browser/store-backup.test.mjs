// Backups: one file of all jobs and photos, looked at before anything is taken from it.
import assert from "node:assert/strict";
import { test } from "node:test";
import { useBrowser } from "./site.mjs";
import { createJob, openJob, openStore } from "./store-site.mjs";

useBrowser();

/** Two phones, the second with what a backup of the first brought; both then go on with the same job. */
async function twoPhones(t) {
  const [first, second] = [await (await openStore(t)).open(), await (await openStore(t)).open()];
  const id = await createJob(first, { plate: { charge: "1.2 kg" }, joints: [{ id: "a", torque: "16" }, { id: "b", torque: "40" }] });
  const photo = await first.evaluate(() => shelf.addPhoto(job.id, new Blob([new Uint8Array([0, 1, 254, 255])], { type: "image/jpeg" })));
  const file = await backup(first);
  await second.evaluate(async (text) => {
    globalThis.preview = await shelf.previewBackup(text);
    await shelf.takeBackup(preview);
  }, file);
  return { first, second, id, photo };
}

const backup = (page) => page.evaluate(async () => (await shelf.backup()).text());
const preview = (page, file) => page.evaluate(async (text) => {
  globalThis.preview = await shelf.previewBackup(text);
  const { jobs = [], photos = [], ...rest } = globalThis.preview;
  return { ...rest, photos: photos.length, jobs: jobs.map(({ id, kind, differences }) => ({ id, kind, places: differences.map(({ path }) => path.join("/")) })) };
}, file);

test("a backup brings jobs and photos to an empty phone, and brings nothing twice", async (t) => {
  const { first, second, id, photo } = await twoPhones(t);
  assert.deepEqual(await openJob(second, id), await openJob(first, id));
  const bytes = (page) => page.evaluate(async (wanted) => [...new Uint8Array(await (await shelf.photo(wanted)).arrayBuffer())], photo);
  assert.deepEqual(await bytes(second), [0, 1, 254, 255]);
  const found = await preview(second, await backup(first));
  assert.deepEqual(found.jobs, [{ id, kind: "same", places: [] }]);
  assert.deepEqual([found.kind, found.broken], ["backup", 0]);
});

test("jobs that went on apart are shown place by place and merged as chosen, in one step that can be undone", async (t) => {
  const { first, second, id } = await twoPhones(t);
  await openJob(second, id);
  await first.evaluate(async () => {
    job.apply([store.setting(["plate", "charge"], "first"), store.setting(["joints", "#a", "torque"], "first"), store.puttingIn(["joints"], { id: "new", torque: "first" }, "a"), store.takingOut(["joints", "#b"])]);
  });
  await second.evaluate(() => job.apply([store.setting(["plate", "charge"], "second"), store.puttingIn(["readings"], { id: "r" })]));
  const before = await second.evaluate(() => job.document);
  const file = await backup(first);
  const [{ kind, places }] = (await preview(second, file)).jobs;
  assert.deepEqual([kind, places.sort()], ["differs", ["joints/#a/torque", "joints/#b", "joints/#new", "plate/charge", "readings/#r"]]);
  const takenWith = (choices) => second.evaluate(async (chosen) => {
    await shelf.takeBackup(preview, new Map(chosen));
    const { edited: _, ...document } = job.document;
    job.undo();
    return document;
  }, choices);
  const merged = await takenWith([]);
  assert.deepEqual(merged.joints, [{ id: "a", torque: "16" }, { id: "new", torque: "first" }, { id: "b", torque: "40" }]);
  assert.deepEqual([merged.plate.charge, merged.readings.length], ["second", 1]);
  const chosen = await takenWith([[id, { theirs: [["plate", "charge"], ["joints", "#b"]] }]]);
  assert.deepEqual(chosen.joints, [{ id: "a", torque: "16" }, { id: "new", torque: "first" }]);
  assert.deepEqual([chosen.plate.charge, chosen.readings.length], ["first", 1]);
  const { edited: _, ...theirs } = JSON.parse(file).jobs[0];
  assert.deepEqual(await takenWith([[id, "take"]]), theirs);
  const { edited: __, ...untouched } = before;
  assert.deepEqual(await takenWith([[id, "leave"]]), untouched);
});

test("a backup restores what has been removed, and puts a copy beside what is broken", async (t) => {
  const { second, id, photo } = await twoPhones(t);
  const file = await backup(second);
  await second.evaluate((wanted) => shelf.remove(wanted), id);
  await preview(second, file);
  await second.evaluate(() => shelf.takeBackup(preview));
  assert.deepEqual(await second.evaluate(() => [shelf.list().length, shelf.removed().length]), [1, 0]);
  await second.evaluate(async (wanted) => {
    await shelf.settled();
    await rawly(["documents"], (found) => found.put({ id: wanted, schema: 1, number: 0, document: "broken" }));
    await rawly(["photos"], (found) => found.clear());
    globalThis.preview = await shelf.previewBackup(await (await shelf.backup()).text());
  }, id);
  await preview(second, file);
  await second.evaluate(() => shelf.takeBackup(preview));
  const names = () => second.evaluate(() => shelf.list().map(({ name, unreadable }) => [name, unreadable ?? ""]).sort());
  assert.deepEqual(await names(), [["Cold room", ""], ["Cold room", "not-a-document"]]);
  await second.evaluate((wanted) => shelf.purge(wanted), id);
  assert.deepEqual(await names(), [["Cold room", ""]]);
  assert.equal(await second.evaluate(async (wanted) => (await shelf.photo(wanted)).size, photo), 4);
});

test("a hostile or broken file does no harm", async (t) => {
  const { open } = await openStore(t);
  const page = await open();
  await createJob(page);
  const head = `{"format":"coldwright-backup","version":1,"made":"2030-01-01T00:00:00.000Z"`;
  for (const text of ["", "text", "null", "[]", "{}", `${head}}`, head, "[".repeat(100_000), `${head},"jobs":{}}`]) assert.deepEqual((await preview(page, text)).kind, "not-a-backup", text.slice(0, 50));
  assert.equal((await preview(page, `${head.replace(`"version":1`, `"version":2`)},"jobs":[]}`)).kind, "newer");
  const jobs = [
    `{"id":"fine","name":"Fine","notes":"${"x".repeat(1_000_000)}"}`,
    `{"id":"polluting","__proto__":{"polluted":1}}`,
    `{"id":"deep","deep":${"[".repeat(100_000)}${"]".repeat(100_000)}}`,
    `{"id":"${"long".repeat(100)}"}`,
    `{"id":7}`,
    `{}`,
    `null`,
  ];
  const photos = [`{"id":"p","jobs":["fine"],"type":"image/png","bytes":"AAAA"}`, `{"id":"q","jobs":["fine"],"type":"image/png","bytes":"?"}`, `{"id":"r","jobs":7}`, `null`];
  const found = await preview(page, `${head},"jobs":[${jobs}],"photos":[${photos}]}`);
  assert.deepEqual([found.kind, found.jobs.map(({ id }) => id), found.photos, found.broken], ["backup", ["fine"], 1, 9]);
  const result = await page.evaluate(async () => {
    await shelf.takeBackup(preview);
    return { names: shelf.list().map(({ name }) => name).sort(), polluted: {}.polluted, photo: (await shelf.photo("p")).size };
  });
  assert.deepEqual(result, { names: ["Cold room", "Fine"], polluted: undefined, photo: 3 });
});
