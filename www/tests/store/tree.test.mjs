// Trees and edits: what they accept, and that every edit can be taken back to the letter.
import assert from "node:assert/strict";
import { test } from "node:test";
import { jobDocument, randomChange, randomNumbers, store } from "./parts.mjs";

const { applied, clearing, editOf, editOfChange, inverse, isSame, moving, newId, newItemId, puttingIn, read, setting, takingOut, treeOf } = store;

function nested(depth) {
  return JSON.parse(`${"[".repeat(depth)}${"]".repeat(depth)}`);
}

test("a tree is what JSON can say, and nothing that could harm", () => {
  const own = { a: [1, "x", null, true, { b: "" }], constructor: "text", toString: "text" };
  assert.deepEqual(treeOf(own), own);
  assert.deepEqual(treeOf({ a: undefined, b: 1 }), { b: 1 }, "what the core leaves out is left out");
  const circle = {};
  circle.one = circle;
  circle.other = circle;
  assert.equal(treeOf(undefined), undefined);
  const hostile = [() => 1, Symbol("x"), 1n, NaN, Infinity, new Date(), new Map(), [, 1], new Array(4e9), JSON.parse('{"__proto__": {"polluted": 1}}'), nested(100_000), circle, { "#a": 1 }];
  for (const found of hostile) {
    assert.equal(treeOf(found), undefined);
    assert.equal(treeOf({ list: [{ id: "x", found }] }), undefined);
  }
  assert.equal({}.polluted, undefined);
});

test("names of the prototype lead nowhere", () => {
  const document = jobDocument();
  for (const name of ["constructor", "__proto__", "toString", "hasOwnProperty"]) assert.equal(read(document, [name]), undefined);
  for (const path of [["__proto__", "polluted"], ["plate", "__proto__"], ["joints", "#a", "__proto__", "x"]]) {
    assert.equal(editOfChange(document, setting(path, "1")), undefined);
    assert.equal(editOf({ kind: "set", path, to: "1", made: 0 }), undefined);
  }
  const edit = editOfChange(document, setting(["constructor", "prototype", "polluted"], "1"));
  assert.deepEqual(applied(document, edit).constructor, { prototype: { polluted: "1" } });
  assert.equal({}.polluted, undefined);
});

test("huge texts go in and out", () => {
  const text = "x".repeat(5_000_000);
  const edit = editOfChange(jobDocument(), setting(["notes"], text));
  assert.equal(applied(jobDocument(), edit).notes, text);
});

test("a change says whether it finds its place", () => {
  const document = jobDocument();
  const applies = (change) => editOfChange(document, change) !== undefined;
  for (const change of [setting(["new", "deep"], "x"), setting(["joints", "#a"], { id: "a" }), puttingIn(["other"], { id: "n" }), puttingIn(["joints"], { id: "n" }, "nobody"), moving(["joints", "#a"], "c"), clearing(["plate"])]) {
    assert.ok(applies(change), JSON.stringify(change));
  }
  for (const change of [
    setting([], {}),
    setting(["id"], "other"),
    setting(["joints", "#a", "id"], "other"),
    setting(["joints", "#a"], { id: "other" }),
    setting(["joints", "#x", "torque"], "1"),
    setting(["joints", "0", "torque"], "1"),
    setting(["others", "#a", "torque"], "1"),
    setting(["name", "inner"], "1"),
    setting(["plate"], nested(100)),
    setting(["plate"], NaN),
    clearing(["id"]),
    clearing(["joints", "#a"]),
    puttingIn(["joints"], { id: "a" }),
    puttingIn(["joints"], { id: "" }),
    puttingIn(["joints"], "text"),
    puttingIn(["plate"], { id: "n" }),
    takingOut(["joints", "#x"]),
    takingOut(["plate"]),
    moving(["joints", "#a"], "a"),
  ]) {
    assert.ok(!applies(change), JSON.stringify(change));
  }
});

test("an item goes where it is told, and to the end if the one in front is gone", () => {
  const order = (change) => applied(jobDocument(), editOfChange(jobDocument(), change)).joints.map(({ id }) => id).join("");
  assert.equal(order(puttingIn(["joints"], { id: "n" })), "abcn");
  assert.equal(order(puttingIn(["joints"], { id: "n" }, null)), "nabc");
  assert.equal(order(puttingIn(["joints"], { id: "n" }, "a")), "anbc");
  assert.equal(order(puttingIn(["joints"], { id: "n" }, "x")), "abcn");
  assert.equal(order(moving(["joints", "#a"], "c")), "bca");
  assert.equal(order(moving(["joints", "#c"], null)), "cab");
  assert.equal(order(takingOut(["joints", "#b"])), "ac");
});

test("every edit is taken back to the letter, and changes nothing in place", () => {
  const random = randomNumbers(1);
  let count = 0;
  for (let round = 0; round < 300; round++) {
    let document = jobDocument();
    for (let turn = 0; turn < 20; turn++) {
      const edit = editOfChange(document, randomChange(random));
      if (edit === undefined) continue;
      count += 1;
      const before = structuredClone(document);
      const after = applied(document, edit);
      assert.deepEqual(document, before);
      assert.deepEqual(applied(after, inverse(edit)), before, JSON.stringify(edit));
      assert.deepEqual(applied(applied(after, inverse(edit)), inverse(inverse(edit))), after, JSON.stringify(edit));
      assert.deepEqual(editOf(structuredClone(edit)), edit);
      assert.equal(read(after, ["id"]), "job");
      document = after;
    }
  }
  assert.ok(count > 2000);
});

test("what was stored and is no edit is none, and an edit without its place gives no document", () => {
  const whole = { kind: "set", path: ["name"], to: "x", made: 0 };
  assert.deepEqual(editOf(whole), whole);
  for (const broken of [null, 1, [], {}, { ...whole, path: "name" }, { ...whole, path: [1] }, { ...whole, kind: "burn" }, { ...whole, to: NaN }, { ...whole, made: "1" }, { kind: "put", path: ["joints"], item: {}, after: null, made: 0 }, { kind: "move", path: ["joints", "#a"], after: 1, from: null }, { ...whole, path: Array(10_000).fill("x") }]) {
    assert.equal(editOf(broken), undefined, JSON.stringify(broken)?.slice(0, 80));
  }
  for (const document of [null, "text", [], { joints: "text" }]) {
    assert.equal(applied(document, { kind: "take", path: ["joints", "#a"], item: { id: "a" }, after: null, made: 0 }), undefined);
  }
});

test("trees are the same whatever the order of their members", () => {
  assert.ok(isSame({ a: 1, b: [{ c: 2 }] }, { b: [{ c: 2 }], a: 1 }));
  for (const [one, other] of [[{ a: 1 }, { a: 1, b: 1 }], [{ a: 1 }, { b: 1 }], [[1, 2], [2, 1]], [[], {}], [null, {}], [undefined, null], [{ toString: 1 }, {}]]) assert.ok(!isSame(one, other));
});

test("ids are short and not given twice", () => {
  const ids = new Set(Array.from({ length: 10_000 }, newId));
  assert.equal(ids.size, 10_000);
  for (const id of ids) assert.match(id, /^[a-z2-9]{12}$/);
});

test("the id of an item is shorter and none that its list has", () => {
  const items = [];
  for (let count = 0; count < 2_000; count++) items.push({ id: newItemId(items) });
  assert.equal(new Set(items.map(({ id }) => id)).size, items.length);
  for (const { id } of items) assert.match(id, /^[a-z2-9]{5}$/);
  const [drawn, given] = [[7, 7, 7, 7, 7], [8, 8, 8, 8, 8]].map((bytes) => bytes.map((byte) => "abcdefghijkmnpqrstuvwxyz23456789"[byte]).join(""));
  const draws = [7, 8];
  const draw = crypto.getRandomValues;
  crypto.getRandomValues = (bytes) => bytes.fill(draws.shift());
  try {
    assert.equal(newItemId([{ id: drawn }]), given);
  } finally {
    crypto.getRandomValues = draw;
  }
});
