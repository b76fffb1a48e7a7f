// Storage that is refused, full, broken, slow, or of another version: it is said, and the work goes on.
import assert from "node:assert/strict";
import { test } from "node:test";
import { useBrowser } from "./site.mjs";
import { createJob, openJob, openStore, until } from "./store-site.mjs";

useBrowser();

const safekeeping = (page) => page.evaluate(() => shelf.safekeeping);

for (const { way, reason, prepare } of [
  { way: "there is no such storage", reason: "refused", prepare: () => Object.defineProperty(window, "indexedDB", { value: undefined }) },
  { way: "even its name is refused", reason: "refused", prepare: () => Object.defineProperty(window, "indexedDB", { get: () => { throw new DOMException("no", "SecurityError"); } }) },
  { way: "opening it is refused", reason: "refused", prepare: () => (IDBFactory.prototype.open = () => { throw new DOMException("no", "SecurityError"); }) },
  { way: "the window is private", reason: "private", prepare: () => (IDBFactory.prototype.open = () => { throw new DOMException("no", "InvalidStateError"); }) },
  { way: "it is broken", reason: "failed", prepare: () => (IDBFactory.prototype.open = () => { throw new DOMException("no", "UnknownError"); }) },
]) {
  test(`where ${way}, jobs go on in memory and leave as a file`, async (t) => {
    const { open } = await openStore(t, { prepare });
    const page = await open();
    await createJob(page);
    const found = await page.evaluate(async () => {
      job.apply(store.setting(["name"], "in memory"));
      const photo = await shelf.addPhoto(job.id, new Blob(["picture"]));
      job.close();
      const again = await shelf.open(job.id);
      const file = JSON.parse(await (await shelf.backup()).text());
      again.job.undo();
      return {
        safekeeping: (await shelf.settled()).kept,
        reason: shelf.safekeeping.reason,
        unsaved: shelf.safekeeping.unsaved > 0,
        listed: shelf.list().length,
        name: again.job.document.name,
        file: [file.jobs[0].name, atob(file.photos[0].bytes)],
        photo: await (await shelf.photo(photo)).text(),
        raw: JSON.parse(await shelf.exportRaw(job.id)).open.document.name,
        absent: (await shelf.open("nobody")).kind,
      };
    });
    assert.deepEqual(found, { safekeeping: "in memory only", reason, unsaved: true, listed: 1, name: "Cold room", file: ["in memory", "picture"], photo: "picture", raw: "Cold room", absent: "absent" });
  });
}

/** Says at once that another window is in the way, as the browser does when that window has an older database open. */
function sayBlocked() {
  const { open } = IDBFactory.prototype;
  IDBFactory.prototype.open = function (...about) {
    const request = open.apply(this, about);
    setTimeout(() => request.dispatchEvent(new IDBVersionChangeEvent("blocked", { oldVersion: 0, newVersion: 1 })));
    return request;
  };
}

for (const { way, reason, prepare } of [
  { way: "does not answer", reason: "slow" },
  { way: "is blocked by another window", reason: "blocked", prepare: sayBlocked },
]) {
  test(`where the database ${way}, work starts in memory and is written when it answers`, async (t) => {
    const { open } = await openStore(t);
    const holder = await open();
    await createJob(holder, { name: "there before" });
    await holder.evaluate(() => shelf.close());
    // A deletion that has to wait for this connection makes every opening after it wait.
    await holder.evaluate(() => new Promise((held) => {
      const opening = indexedDB.open("coldwright jobs");
      opening.onsuccess = () => {
        globalThis.held = opening.result;
        indexedDB.deleteDatabase("coldwright jobs").onblocked = held;
      };
    }));
    const page = await open(prepare);
    assert.equal((await safekeeping(page)).reason, reason);
    const id = await page.evaluate(() => {
      globalThis.job = shelf.create({ name: "made meanwhile" });
      job.apply(store.setting(["name"], "edited meanwhile"));
      return job.id;
    });
    await holder.evaluate(() => held.close());
    await until(page, () => shelf.safekeeping.kept === "on this phone" && shelf.safekeeping.unsaved === 0);
    assert.equal((await openJob(await open(), id)).name, "edited meanwhile");
  });
}

test("when storage is full it is said, the job goes on, and all is written when there is space again", async (t) => {
  const { address, context, open } = await openStore(t);
  // Before the database is first used: the browser asks for the space that is left only now and then.
  const protocol = await context.newCDPSession(await context.newPage());
  const origin = new URL(address).origin;
  await protocol.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 100_000 });
  const page = await open();
  const id = await createJob(page);
  await page.evaluate(() => {
    job.apply(store.setting(["notes"], "n".repeat(500_000)));
    job.apply(store.setting(["name"], "written when full"));
  });
  await until(page, () => shelf.safekeeping.reason === "full");
  assert.deepEqual(await page.evaluate(() => [job.document.name, job.unsaved > 0, shelf.list()[0].name]), ["written when full", true, "written when full"]);
  assert.match(await page.evaluate(async () => (await shelf.backup()).text()), /written when full/);
  const photo = await page.evaluate(() => shelf.addPhoto(job.id, new Blob(["p".repeat(100_000)])));
  await protocol.send("Storage.overrideQuotaForOrigin", { origin });
  await until(page, () => shelf.safekeeping.kept === "on this phone" && shelf.safekeeping.unsaved === 0);
  const again = await open();
  const document = await openJob(again, id);
  assert.deepEqual([document.name, document.notes.length], ["written when full", 500_000]);
  assert.equal(await again.evaluate(async (wanted) => (await shelf.photo(wanted)).size, photo), 100_000);
});

test("nothing is written before the first reading has succeeded", async (t) => {
  const { open } = await openStore(t);
  const first = await open();
  await createJob(first, { name: "there before" });
  await first.close();
  const page = await open(() => {
    globalThis.writings = 0;
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (names, mode, options) {
      if (mode === "readwrite") globalThis.writings += 1;
      else if (globalThis.isBroken !== false) throw new DOMException("broken", "UnknownError");
      return transaction.call(this, names, mode, options);
    };
  });
  await createJob(page, { name: "new" });
  assert.deepEqual(await page.evaluate(() => [writings, shelf.safekeeping.reason]), [0, "failed"]);
  await page.evaluate(() => (globalThis.isBroken = false));
  await until(page, () => shelf.list().length === 2 && shelf.safekeeping.unsaved === 0 && writings > 0);
});

test("a newer page takes the database over: the older one writes what it has, closes it and says so", async (t) => {
  const { open } = await openStore(t);
  const page = await open();
  const id = await createJob(page);
  const newer = await open();
  await newer.evaluate(() => shelf.close());
  await page.evaluate(() => job.apply(store.setting(["name"], "just before")));
  await newer.evaluate(() => new Promise((upgraded, failed) => {
    const opening = indexedDB.open("coldwright jobs", 3);
    opening.onsuccess = () => (opening.result.close(), upgraded());
    opening.onerror = failed;
  }));
  await until(page, () => shelf.safekeeping.reason === "newer");
  await page.evaluate(() => job.apply(store.setting(["name"], "after")));
  assert.equal(await page.evaluate(() => job.document.name), "after");
  const older = await open();
  assert.equal((await safekeeping(older)).reason, "newer");
  assert.deepEqual(await older.evaluate(() => shelf.list().map(({ name, unreadable }) => [name, unreadable])), [["just before", "newer"]]);
  assert.deepEqual(await openJob(older, id), { kind: "unreadable", reason: "newer" });
  assert.match(await older.evaluate((wanted) => shelf.exportRaw(wanted), id), /just before/);
});

test("what an older page was still writing when a newer one took the database over does not count as kept", async (t) => {
  const { open } = await openStore(t);
  const page = await open();
  await createJob(page);
  const taken = await page.evaluate(async () => {
    // A writing takes long: the database answers when it has been taken over.
    const { addEventListener: listen } = IDBTransaction.prototype;
    IDBTransaction.prototype.addEventListener = function (kind, answer, ...rest) {
      const late = (event) => setTimeout(() => answer.call(this, event), 500);
      return listen.call(this, kind, this.mode === "readwrite" && kind === "complete" ? late : answer, ...rest);
    };
    job.apply(store.setting(["name"], "just before"));
    await new Promise((begun) => setTimeout(begun, 50));
    await new Promise((upgraded, failed) => {
      const opening = indexedDB.open("coldwright jobs", 3);
      opening.onsuccess = () => (opening.result.close(), upgraded());
      opening.onerror = failed;
    });
    const { reason } = shelf.safekeeping;
    while (shelf.safekeeping.unsaved > 0) await new Promise((wake) => setTimeout(wake, 10));
    await new Promise((wake) => setTimeout(wake, 10));
    return [reason, shelf.safekeeping.reason];
  });
  assert.deepEqual(taken, ["newer", "newer"]);
});

test("a database that is taken away is filled again from what is open", async (t) => {
  const { open } = await openStore(t);
  const [page, other] = [await open(), await open()];
  const id = await createJob(page);
  await page.evaluate(() => job.apply(store.setting(["name"], "before")));
  await other.evaluate(async () => {
    await shelf.close();
    await new Promise((gone, failed) => {
      const deletion = indexedDB.deleteDatabase("coldwright jobs");
      deletion.onsuccess = gone;
      deletion.onerror = failed;
    });
  });
  await page.evaluate(() => job.apply(store.setting(["name"], "after")));
  await until(page, () => shelf.safekeeping.kept === "on this phone" && shelf.safekeeping.unsaved === 0);
  assert.equal((await openJob(await open(), id)).name, "after");
});
