// Times as people enter and paste them, in a zone with summer time.
import assert from "node:assert/strict";
import { test } from "node:test";
process.env.TZ = "Europe/Madrid";
const { localTime, momentOfLocal, pastedReadings, pastedTimes } = await import("./parts.mjs");

const at = (text) => new Date(text).getTime();
const iso = (times) => times.map((time) => (time === undefined ? undefined : new Date(time).toISOString()));

test("a moment goes to the calendar and back, on its own setting of the clock", () => {
  assert.equal(localTime("2026-11-25T20:34:21Z"), "2026-11-25T21:34:21");
  assert.equal(localTime("2026-07-01T20:34:21.500Z[_clock=2]"), "2026-07-01T22:34:21");
  assert.equal(localTime(""), "");
  assert.equal(localTime("soon"), "");
  assert.equal(momentOfLocal("2026-11-25T21:30", "2026-11-25T20:34:21Z[_clock=2]"), "2026-11-25T20:30:00.000Z[_clock=2]");
  assert.equal(momentOfLocal("", "2026-11-25T20:34:21Z"), undefined);
});

test("times of the day alone end with the latest that has been, over midnight and over summer time's end", () => {
  const times = pastedTimes(["18:40", "23:10", "3:52", "7:00"], at("2026-11-26T07:30:00Z"));
  assert.deepEqual(iso(times), ["2026-11-25T17:40:00.000Z", "2026-11-25T22:10:00.000Z", "2026-11-26T02:52:00.000Z", "2026-11-26T06:00:00.000Z"]);
  const summer = pastedTimes(["22:00", "07:00"], at("2026-10-25T08:00:00Z"));
  assert.deepEqual(iso(summer), ["2026-10-24T20:00:00.000Z", "2026-10-25T06:00:00.000Z"]);
});

test("days and times together are taken as they are, and what is neither stays open", () => {
  const times = pastedTimes(["2026-11-24 8:05", "2026-11-25T09:10:30", "soon", "25:00", "2026-13-40 10:00"], at("2026-11-26T07:30:00Z"));
  assert.deepEqual(iso(times), ["2026-11-24T07:05:00.000Z", "2026-11-25T08:10:30.000Z", undefined, undefined, undefined]);
});

test("pasted readings take their units, stand where their time belongs, and say which lines were refused", () => {
  const kind = {
    path: ["pressureTest", "readings"],
    columns: [
      { name: "gaugePressure", unit: () => "bar" },
      { name: "temperature", unit: () => "°C" },
    ],
  };
  const document = { pressureTest: { readings: [{ id: "a", at: "2026-11-25T17:00:00Z" }, { id: "b", at: "2026-11-26T06:30:00Z" }] } };
  const text = "2026-11-25 18:40 44.2 bar 21.4 °C\n\ntime pressure\n2026-11-25 22:10; 43.6; 15\n44.1; 20\n2026-11-26 08:00\t42.9\t12.5\t3";
  const taken = pastedReadings(document, kind, text, { wall: at("2026-11-26T07:30:00Z"), momentOf: (wall) => new Date(wall).toISOString(), more: { valvedOff: true } });
  assert.deepEqual(taken.refused.map(({ line, reason }) => [line, reason]), [[3, "no-figure"], [5, "no-time"], [6, "too-many-columns"]]);
  const [first, second] = taken.changes;
  assert.deepEqual({ ...first.item, id: "" }, { id: "", at: "2026-11-25T17:40:00.000Z", valvedOff: true, gaugePressure: "44.2 bar", temperature: "21.4 °C" });
  assert.equal(first.after, "a");
  assert.deepEqual([second.item.gaugePressure, second.item.temperature], ["43.6 bar", "15 °C"]);
  assert.equal(second.after, first.item.id);
  assert.deepEqual(taken.ids, [first.item.id, second.item.id]);
});
