// Two windows with one job: no edit is lost, contradictions are told, both end with the same.
import assert from "node:assert/strict";
import { test } from "node:test";
import { useBrowser } from "./site.mjs";
import { createJob, openJob, openStore, until } from "./store-site.mjs";

useBrowser();

const joints = Array.from({ length: 6 }, (_, index) => ({ id: `j${index}`, torque: "", nut: "" }));

/** Runs in the page: random edits, in bursts with gaps between, as fast as the other window lets them be. */
async function editAtRandom({ name, count, seed }) {
  let state = seed;
  const random = (below) => {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    return (state >> 8) % below;
  };
  let made = 0;
  const mine = [];
  while (made < count) {
    for (let burst = random(12); burst >= 0 && made < count; burst--) {
      const joint = `#j${random(6)}`;
      const id = `${name}${made}`;
      const change = [
        () => store.setting(["joints", joint, "torque"], id),
        () => store.setting(["joints", joint, "nut"], id),
        () => store.setting(["plate", "charge"], id),
        () => store.puttingIn(["readings"], { id, pressure: id }, [undefined, null, `${name}${random(made + 1)}`][random(3)]),
        () => store.moving(["joints", joint], null),
        () => store.takingOut(["readings", `#${mine[random(mine.length)]}`]),
      ][random(6)]();
      const before = job.document;
      if (!job.apply(change) || job.document === before) continue;
      if (change.kind === "put") mine.push(id);
      made += 1;
    }
    await new Promise((wake) => setTimeout(wake, random(3) * 4));
  }
  await shelf.settled();
}

const stateOf = (page) => page.evaluate(() => ({ document: job.document, clashes: job.clashes, unsaved: job.unsaved }));

test("five hundred random edits in each of two windows: none is lost, and both end with the same", async (t) => {
  const { open } = await openStore(t);
  const pages = [await open(), await open()];
  const id = await createJob(pages[0], { joints, plate: { charge: "" } });
  await openJob(pages[1], id);
  await Promise.all(pages.map((page, index) => page.evaluate(editAtRandom, { name: "ab"[index], count: 500, seed: 7 + index })));
  const log = (await pages[0].evaluate(() => rawly(["edits"], (edits) => edits.getAll()))).filter(({ cut }) => !cut);
  const windows = [...new Set(log.map(({ by }) => by))];
  assert.equal(windows.length, 2);
  for (const window of windows) {
    const turns = new Set(log.filter(({ by }) => by === window).map(({ turn }) => turn));
    assert.deepEqual([...turns].sort((one, other) => one - other), Array.from({ length: 500 }, (_, index) => index + 1));
  }
  assert.ok(log.some(({ by }, index) => index > 0 && by !== log[index - 1].by), "they took turns");
  const whole = JSON.stringify((await stateOf(pages[0])).document);
  await until(pages[1], (text) => JSON.stringify(job.document) === text, whole);
  const states = await Promise.all(pages.map(stateOf));
  const anew = await openJob(await open(), id);
  assert.deepEqual(anew, states[0].document);
  assert.deepEqual(states.map(({ unsaved }) => unsaved), [0, 0]);
  const { document } = states[0];
  const wasTakenOut = new Set(log.filter(({ edit }) => edit.kind === "take").map(({ edit }) => edit.item.id));
  const put = log.filter(({ edit }) => edit.kind === "put").map(({ edit }) => edit.item.id);
  assert.deepEqual(document.readings.map((reading) => reading.id).sort(), put.filter((reading) => !wasTakenOut.has(reading)).sort());
  assert.deepEqual(document.joints.map((joint) => joint.id).sort(), joints.map((joint) => joint.id));
  // Declared to both is each place that both wrote to without knowing of each other, and no other.
  const fields = log.filter(({ edit }) => edit.kind === "set").map((entry) => ({ ...entry, place: entry.edit.path.join("/") }));
  const isUnseen = (entry) => fields.some((other) => other.place === entry.place && other.by !== entry.by && other.number < entry.number && other.number > entry.seen);
  const contradicted = [...new Set(fields.filter(isUnseen).map(({ place }) => place))].sort();
  assert.ok(contradicted.length > 0);
  for (const { clashes } of states) assert.deepEqual(clashes.map(({ path }) => path.join("/")).sort(), contradicted);
  // Each from its own side.
  for (const { path, mine, theirs } of states[0].clashes) {
    const told = states[1].clashes.find((clash) => clash.path.join("/") === path.join("/"));
    assert.deepEqual([told.mine, told.theirs], [theirs, mine]);
  }
  t.diagnostic(`${contradicted.length} places with clashes, ${fields.filter(isUnseen).length} entries made without knowing of another`);
});

test("a window that wrote without hearing of the other is told what stood against it", async (t) => {
  const { open } = await openStore(t);
  const one = await open();
  const deaf = await open(() => (globalThis.BroadcastChannel = undefined));
  const id = await createJob(one, { joints });
  await openJob(deaf, id);
  await one.evaluate(async () => {
    job.apply(store.setting(["name"], "mine"));
    job.apply(store.takingOut(["joints", "#j3"]));
    await shelf.settled();
  });
  await deaf.evaluate(async () => {
    job.apply([store.setting(["name"], "theirs"), store.setting(["joints", "#j3", "torque"], "16 N·m")]);
    await shelf.settled();
  });
  await one.evaluate(() => dispatchEvent(new PageTransitionEvent("pageshow", { persisted: true })));
  await until(one, () => job.document.name === "theirs");
  const clashes = (page) => page.evaluate(() => job.clashes.map(({ path, mine, theirs }) => [path.join("/"), mine ?? null, theirs ?? null]));
  assert.deepEqual(await clashes(one), [["name", "mine", "theirs"], ["joints/#j3/torque", null, "16 N·m"]]);
  assert.deepEqual(await clashes(deaf), [["name", "theirs", "mine"], ["joints/#j3/torque", "16 N·m", null]]);
  await one.evaluate(() => job.dismiss(["name"]));
  assert.equal((await clashes(one)).length, 1);
  assert.equal(await one.evaluate(() => job.document.joints.length), 5);
});

test("a window that listens draws each edit of the other one, and the list follows", async (t) => {
  const { open } = await openStore(t);
  const [one, other] = [await open(), await open()];
  const id = await createJob(one);
  await until(other, () => shelf.list().length === 1);
  await openJob(other, id);
  await other.evaluate(() => {
    globalThis.drawn = [];
    job.subscribe(() => drawn.push(job.document.name));
  });
  await one.evaluate(() => job.apply(store.setting(["name"], "from the other window")));
  await until(other, () => drawn.includes("from the other window") && shelf.list()[0].name === "from the other window");
  await other.evaluate(() => job.undo());
  await until(one, () => job.document.name === "Cold room" && job.canRedo);
});
