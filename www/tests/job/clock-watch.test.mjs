// What a jump between the device's clock and a steady one means.
import assert from "node:assert/strict";
import { test } from "node:test";
import { clockChange, isSameChange, unwatchedChange } from "./parts.mjs";

const wall = Date.parse("2026-11-25T20:00:00Z");
const second = 1000;
const hour = 3600 * second;
const sight = (wallPassed, steadyPassed, isVisible = true) => ({ wall: wall + wallPassed, steady: 5000 + steadyPassed, isVisible });

test("a clock that goes as the steady one does was not set", () => {
  assert.equal(clockChange(sight(0, 0), sight(second, second)), undefined);
  assert.equal(clockChange(sight(0, 0), sight(second + 1900, second)), undefined, "put right by less than two seconds");
  assert.equal(clockChange(sight(0, 0), sight(second - 1900, second)), undefined);
  assert.equal(clockChange(sight(0, 0, false), sight(8 * hour, 8 * hour)), undefined, "a night, steadily counted");
});

test("back is certain, seen or not: no time passed between what it would show and what it shows", () => {
  for (const isVisible of [true, false]) {
    const found = clockChange(sight(0, 0, isVisible), sight(second - hour, second, isVisible));
    assert.deepEqual(found, { before: wall + second, after: wall + second - hour, mayHaveSlept: false });
  }
  const hiddenLong = clockChange(sight(0, 0, false), sight(3 * hour, 4 * hour));
  assert.deepEqual(hiddenLong, { before: wall + 4 * hour, after: wall + 3 * hour, mayHaveSlept: false });
});

test("ahead while the page was seen and its timers ran: set, or slept", () => {
  const found = clockChange(sight(0, 0), sight(second + hour, second));
  assert.deepEqual(found, { before: wall + second, after: wall + second + hour, mayHaveSlept: true });
});

test("ahead while nobody saw the page, or while its timers stood: the device slept", () => {
  assert.equal(clockChange(sight(0, 0, false), sight(8 * hour, second)), undefined);
  assert.equal(clockChange(sight(0, 0), sight(8 * hour, second, false)), undefined);
  assert.equal(clockChange(sight(0, 0), sight(8 * hour, 40 * second)), undefined);
});

test("a clock that shows less than at the last edit was set back unwatched", () => {
  assert.equal(unwatchedChange(wall, wall + second), undefined);
  assert.equal(unwatchedChange(wall, wall - second), undefined);
  assert.equal(unwatchedChange(Number.NaN, wall), undefined, "never edited");
  assert.deepEqual(unwatchedChange(wall, wall - hour), { before: wall, after: wall - hour, mayHaveSlept: true });
});

test("a change that another window has recorded is the same one; a second of the same size is not", () => {
  const change = clockChange(sight(0, 0), sight(second - hour, second));
  const recorded = { before: wall + 300, after: wall + 300 - hour };
  assert.equal(isSameChange(change, recorded, second), true);
  assert.equal(isSameChange(change, { before: wall + 300, after: wall + 300 + hour }, second), false, "the other way");
  const earlier = { before: wall - hour, after: wall - 2 * hour };
  assert.equal(isSameChange(change, earlier, second), false, "an hour ago");
});
