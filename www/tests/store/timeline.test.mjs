// The log of a job: undoing, restarts, and windows beside each other, whose entries a list in memory puts in order.
import assert from "node:assert/strict";
import { test } from "node:test";
import { jobDocument, randomChange, randomNumbers, store } from "./parts.mjs";

const { applied, clashOf, differences, entryOf, isSame, read, readTimeline, setting, stepsOf, takingOut, puttingIn, Timeline } = store;

/** A log as the database keeps it, with a document of some time before. */
class Log {
  entries = [];
  snapshot = { number: 0, document: jobDocument() };

  /** A window that knows the log as it is now. */
  window(name) {
    return new Window(name, this);
  }

  read(name) {
    return new Timeline(name, this.snapshot, structuredClone(this.entries), 0);
  }
}

class Window {
  now = Date.parse("2030-01-02T00:00:00Z");

  constructor(name, log) {
    this.name = name;
    this.log = log;
    this.timeline = log.read(name);
  }

  apply(changes, undoing = {}) {
    const edits = this.timeline.edits([changes].flat());
    this.now += 2000;
    if (edits === undefined || edits.length === 0) return false;
    this.timeline.add(edits, { step: `${this.name}${this.now}`, at: new Date(this.now).toISOString(), ...undoing });
    return true;
  }

  undo() {
    this.again(this.timeline.wayBack(), "undoes");
  }

  redo() {
    this.again(this.timeline.wayOn(), "redoes");
  }

  again(way, name) {
    this.now += 2000;
    if (way !== undefined) this.timeline.add(way.edits, { step: `${this.name}${this.now}`, at: new Date(this.now).toISOString(), [name]: way.id });
  }

  /** Stores what waits, behind what others have stored meanwhile. */
  store() {
    const { entries } = this.log;
    for (const entry of this.timeline.pending) entries.push(structuredClone({ ...entry, job: "job", number: entries.length + 1 }));
    this.hear();
  }

  hear() {
    this.timeline.receive(structuredClone(this.log.entries.filter(({ number }) => number > this.timeline.number)));
  }
}

const withoutTime = ({ edited: _, ...document }) => document;

test("undo leads back to the start and redo to the end, also after restarts", () => {
  const random = randomNumbers(2);
  for (let round = 0; round < 40; round++) {
    const log = new Log();
    let window = log.window("w0");
    const states = [withoutTime(window.timeline.document)];
    while (states.length < 30) if (window.apply([randomChange(random), randomChange(random)])) states.push(withoutTime(window.timeline.document));
    const restart = (name) => {
      window.store();
      if (random(2) === 0) log.snapshot = structuredClone(window.timeline.snapshot);
      window = log.window(name);
    };
    restart("w1");
    for (let index = states.length - 2; index >= 0; index--) {
      if (random(10) === 0) restart(`back${index}`);
      window.undo();
      assert.deepEqual(withoutTime(window.timeline.document), states[index]);
    }
    assert.equal(window.timeline.wayBack(), undefined);
    for (const state of states.slice(1)) {
      if (random(10) === 0) restart(`on${random(1e9)}`);
      window.redo();
      assert.deepEqual(withoutTime(window.timeline.document), state);
    }
    assert.equal(window.timeline.wayOn(), undefined);
  }
});

test("an edit after an undo ends what could be done again, and both stay in the history", () => {
  const window = new Log().window("w");
  window.apply(setting(["name"], "one"));
  window.undo();
  assert.notEqual(window.timeline.wayOn(), undefined);
  window.apply(setting(["name"], "two"));
  assert.equal(window.timeline.wayOn(), undefined);
  assert.deepEqual(window.timeline.steps.all.map(({ isUndone }) => isUndone), [true, false]);
});

test("letters typed into the same place are one step", () => {
  const { timeline } = new Log().window("w");
  const type = (text, seconds, path = ["plate", "charge"]) => {
    const edits = timeline.edits([setting(path, text)]);
    const at = new Date(Date.UTC(2030, 0, 2, 0, 0, seconds));
    timeline.add(edits, { at: at.toISOString(), step: timeline.stepToGoOn(edits, at) ?? `${seconds}` });
  };
  type("2", 0);
  type("2.", 1);
  type("2.5", 2);
  type("x", 3, ["name"]);
  type("2.57", 9);
  const steps = timeline.steps.all;
  assert.deepEqual(steps.map(({ edits }) => edits.map(({ from, to }) => [from, to])), [[["1.2 kg", "2.5"]], [["Cold room", "x"]], [["2.5", "2.57"]]]);
});

/** Lets windows edit, store and hear in any order. */
function mingle(seed, changeOf, rounds = 400) {
  const random = randomNumbers(seed);
  const log = new Log();
  const windows = ["v", "w", "x"].map((name) => log.window(name));
  for (let round = 0; round < rounds; round++) {
    const window = windows[random(3)];
    const deed = random(12);
    if (deed < 8) window.apply(changeOf(random, window.name));
    else if (deed === 8) window.undo();
    else if (deed === 9) window.redo();
    else if (deed === 10) window.store();
    else window.hear();
  }
  for (const window of windows) window.store();
  for (const window of windows) window.hear();
  return { log, windows };
}

test("windows beside each other end with the same, and so does one that is opened later, at whatever snapshot", () => {
  for (let seed = 1; seed <= 60; seed++) {
    const { log, windows } = mingle(seed, randomChange);
    const [{ timeline }] = windows;
    for (const other of windows) {
      assert.deepEqual(other.timeline.document, timeline.document);
      assert.deepEqual(other.timeline.snapshot.document, timeline.document);
      assert.equal(other.timeline.pending.length, 0);
      assert.deepEqual(other.timeline.steps, timeline.steps);
    }
    const random = randomNumbers(seed);
    const half = new Timeline("y", log.snapshot, log.entries.slice(0, random(log.entries.length)), 0);
    const late = new Timeline("z", half.snapshot, log.entries, 0);
    assert.deepEqual(late.document, timeline.document);
    assert.ok(!late.isBroken);
    assert.deepEqual(late.steps, timeline.steps);
  }
});

test("no window loses what it wrote last, unless it is told of a clash or has heard of the other's before", () => {
  let clashes = 0;
  for (let seed = 1; seed <= 60; seed++) {
    const onlyTexts = (random, name) => setting([["name"], ["plate", "charge"], ["joints", "#b", "torque"], ["notes", "deep"]][random(4)], `${name}${random(1e6)}`);
    const { log, windows } = mingle(seed, onlyTexts, 120);
    for (const { name, timeline } of windows) {
      for (const path of [["name"], ["plate", "charge"], ["joints", "#b", "torque"], ["notes", "deep"]]) {
        const mine = log.entries.filter(({ by, edit }) => by === name && isSame(edit.path, path)).at(-1);
        const last = log.entries.filter(({ edit }) => isSame(edit.path, path)).at(-1);
        if (mine === undefined || last.by === name) continue;
        const isTold = timeline.clashes.some((clash) => isSame(clash.path, path));
        clashes += isTold ? 1 : 0;
        assert.ok(isTold || last.seen >= mine.number || isSame(last.edit.to, mine.edit.to), `seed ${seed}, ${name}, ${path}`);
      }
    }
  }
  assert.ok(clashes > 20);
});

test("both windows are told of a clash, each from its side, and the later edit stands", () => {
  const log = new Log();
  const [one, other] = [log.window("one"), log.window("other")];
  one.apply(setting(["name"], "first"));
  other.apply(setting(["name"], "second"));
  other.apply(setting(["plate", "charge"], "3 kg"));
  one.store();
  other.store();
  one.hear();
  for (const { timeline } of [one, other]) assert.equal(timeline.document.name, "second");
  assert.deepEqual(one.timeline.clashes, [{ path: ["name"], mine: "first", theirs: "second" }]);
  assert.deepEqual(other.timeline.clashes, [{ path: ["name"], mine: "second", theirs: "first" }]);
  one.timeline.dismiss(["name"]);
  assert.deepEqual(one.timeline.clashes, []);
});

test("what clashes and what does not", () => {
  const { document } = new Log().window("w").timeline;
  const edit = (change) => store.editOfChange(document, change);
  const clash = (one, other) => clashOf(edit(one), edit(other));
  assert.equal(clash(setting(["name"], "x"), setting(["name"], "x")), undefined);
  assert.equal(clash(setting(["name"], "x"), setting(["plate", "charge"], "x")), undefined);
  assert.equal(clash(setting(["joints", "#a", "torque"], "x"), setting(["joints", "#b", "torque"], "y")), undefined);
  assert.equal(clash(setting(["plate"], { charge: "x" }), setting(["plate", "charge"], "x")), undefined);
  assert.equal(clash(puttingIn(["joints"], { id: "m" }), puttingIn(["joints"], { id: "n" })), undefined);
  assert.equal(clash(takingOut(["joints", "#a"]), takingOut(["joints", "#a"])), undefined);
  assert.deepEqual(clash(setting(["plate"], { charge: "y" }), setting(["plate", "charge"], "x")), { path: ["plate", "charge"], mine: "y", theirs: "x" });
  assert.deepEqual(clash(takingOut(["joints", "#a"]), setting(["joints", "#a", "torque"], "x")), { path: ["joints", "#a", "torque"], mine: undefined, theirs: "x" });
  assert.deepEqual(clash(puttingIn(["joints"], { id: "n" }), setting(["joints"], [])), { path: ["joints", "#n"], mine: { id: "n" }, theirs: undefined });
});

test("what is typed into an item that another window takes out is told of, and can be put back from the history", () => {
  const log = new Log();
  const [one, other] = [log.window("one"), log.window("other")];
  one.apply(takingOut(["joints", "#a"]));
  other.apply(setting(["joints", "#a", "torque"], "17 N·m"));
  one.store();
  other.store();
  assert.equal(read(other.timeline.document, ["joints", "#a"]), undefined);
  assert.deepEqual(other.timeline.clashes, [{ path: ["joints", "#a", "torque"], mine: "17 N·m", theirs: undefined }]);
  assert.ok(!log.read("later").isBroken);
  other.undo();
  assert.equal(read(other.timeline.document, ["joints", "#a", "torque"]), "16 N·m");
});

test("an entry that was stored twice counts once, in whichever order the writings came through", () => {
  const log = new Log();
  const window = log.window("w");
  window.apply(puttingIn(["joints"], { id: "n" }));
  const first = window.timeline.pending.map((entry) => ({ ...entry, job: "job", number: 1 }));
  window.apply(setting(["joints", "#n", "torque"], "1"));
  const second = window.timeline.pending.map((entry, index) => ({ ...entry, job: "job", number: index + 2 }));
  log.entries = [...first, ...second];
  window.hear();
  const read = log.read("late");
  assert.ok(!read.isBroken);
  assert.deepEqual(read.document, window.timeline.document);
  assert.equal(window.timeline.pending.length, 0);
  assert.equal(read.steps.all.length, 2);
  log.entries = second;
  assert.deepEqual(log.read("late").document, read.document);
});

test("a long history is cut at a whole step, and the rest can still be undone", () => {
  const log = new Log();
  const window = log.window("w");
  const entry = { by: "w", job: "job", at: "2030-01-02T00:00:00Z", seen: 0 };
  log.entries = Array.from({ length: 2501 }, (_, index) => ({ ...entry, turn: index + 1, number: index + 1, step: `${Math.floor(index / 3)}`, edit: { kind: "set", path: ["name"], from: `${index}`, to: `${index + 1}`, made: 0 } }));
  window.hear();
  const cut = window.timeline.superfluous();
  assert.ok(cut >= 498 && cut <= 501 && cut % 3 === 0);
  window.timeline.forget(cut);
  const steps = window.timeline.steps.done.length;
  for (let index = 0; index < steps; index++) window.undo();
  assert.equal(window.timeline.document.name, `${cut}`);
  assert.equal(window.timeline.superfluous(), undefined);
  const anew = readTimeline("v", "job", { ...log.snapshot, number: 2501, id: "job", schema: 1 }, [{ number: cut, job: "job", cut: true }, ...log.entries.slice(cut)]);
  assert.equal(anew.steps.done.length, steps);
});

test("a broken record says what is broken, whatever it is", () => {
  const record = { id: "job", schema: 1, number: 0, document: jobDocument() };
  const entry = { by: "w", turn: 1, job: "job", number: 1, step: "s", at: "2030-01-02T00:00:00Z", seen: 0, edit: { kind: "set", path: ["name"], to: "x", made: 0 } };
  const reading = (found, log = []) => readTimeline("v", "job", found, log);
  assert.equal(reading(record, [entry]).document.name, "x");
  for (const found of [undefined, null, 1, "text"]) assert.equal(reading(found), "no-document");
  for (const found of [{}, [], { ...record, number: "1" }, { ...record, document: null }, { ...record, document: [] }, { ...record, document: new Date() }, { ...record, document: { ...jobDocument(), id: "other" } }]) assert.equal(reading(found), "not-a-document");
  assert.equal(reading({ ...record, schema: 2 }), "newer");
  const astray = { ...entry.edit, path: ["joints", "#nobody", "torque"] };
  for (const broken of [null, {}, { ...entry, edit: {} }, { ...entry, seen: "0" }, { ...entry, edit: astray }, { number: 9, job: "job", cut: true }]) assert.equal(reading(record, [broken]), "bad-edit");
});

test("differences taken over one by one make one document of the other", () => {
  const random = randomNumbers(5);
  const sorted = (document) => JSON.parse(JSON.stringify(document), (_, part) => (Array.isArray(part) ? part.sort((one, other) => (one.id < other.id ? -1 : 1)) : part));
  for (let round = 0; round < 200; round++) {
    const [mine, theirs] = [0, 1].map(() => {
      let document = jobDocument();
      for (let turn = 0; turn < 8; turn++) {
        const edit = store.editOfChange(document, randomChange(random));
        if (edit !== undefined && edit.kind !== "move") document = applied(document, edit);
      }
      return document;
    });
    let document = mine;
    for (const change of store.changesOf(differences(mine, theirs), theirs)) {
      const edit = store.editOfChange(document, change);
      assert.notEqual(edit, undefined, JSON.stringify({ change, document, theirs }));
      document = applied(document, edit);
    }
    assert.deepEqual(sorted(document), sorted(theirs));
  }
});

test("entries and steps bear names of the prototype", () => {
  const edit = { kind: "set", path: ["name"], to: "x", made: 0 };
  const entry = { by: "__proto__", turn: 1, job: "constructor", number: 1, step: "__proto__", at: "", seen: 0, edit };
  assert.deepEqual(entryOf(entry), entry);
  assert.equal(stepsOf([entry, { ...entry, step: "toString", undoes: "__proto__" }]).undone[0].id, "__proto__");
});
