// A browser that is killed in the middle of edits has lost no more than half a second. COLDWRIGHT_KILLS says how often.
import assert from "node:assert/strict";
import { test } from "node:test";
import { killOften } from "./kills.mjs";

const kills = Number(process.env.COLDWRIGHT_KILLS ?? 10);

test(`${kills} times the whole browser is killed: what is older than half a second is there, and every job is whole`, async (t) => {
  const rounds = await killOften(kills);
  assert.equal(rounds.length, kills);
  assert.deepEqual(rounds.flatMap(({ amiss }) => amiss), []);
  for (const { loss } of rounds) assert.ok(loss <= 500, `${loss} ms`);
  t.diagnostic(`worst loss ${Math.max(...rounds.map(({ loss }) => loss))} ms`);
});
