// Tables for spreadsheets: RFC 4180, and no text that a spreadsheet would compute.
import assert from "node:assert/strict";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { test } from "node:test";
import { fileURLToPath, pathToFileURL } from "node:url";
import * as esbuild from "esbuild";

const page = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

async function load(source) {
  const directory = await mkdtemp(join(tmpdir(), "coldwright-"));
  const outfile = join(directory, "module.mjs");
  await esbuild.build({ entryPoints: [join(page, source)], bundle: true, outfile, format: "esm" });
  const module = await import(pathToFileURL(outfile));
  await rm(directory, { recursive: true });
  return module;
}

const { csvText } = await load("src/job/csv.ts");
const { jointsCsv, readingsCsv } = await load("src/job/csv-tables.ts");

test("rows end with carriage return and line feed; only what needs quotes has them", () => {
  const text = csvText(["a", "b"], [["plain", 1.5], ['says "no"', "one, two"], ["two\nlines", null], [true, undefined]]);
  assert.equal(text, 'a,b\r\nplain,1.5\r\n"says ""no""","one, two"\r\n"two\nlines",\r\ntrue,\r\n');
});

test("the noise of arithmetic is not written", () => {
  assert.equal(csvText(["x"], [[4420000.000000001], [0.1 + 0.2], [-293.15]]), "x\r\n4420000\r\n0.3\r\n-293.15\r\n");
});

test("a text that a spreadsheet would compute is kept from it; a negative number is one", () => {
  for (const text of ["=1+1", "+1", "-1+2", "@SUM(A1)", "\t=1", " =1", "\r=1"]) {
    const [, cell] = csvText(["x"], [[text]]).match(/^x\r\n"?(.*?)"?\r\n$/s);
    assert.equal(cell, `'${text}`, JSON.stringify(text));
  }
  assert.equal(csvText(["x"], [[-5]]), "x\r\n-5\r\n");
  assert.equal(csvText(["x"], [["a=b"]]), "x\r\na=b\r\n");
});

test("readings of both holds stand in one table, times without the clock's number", () => {
  const moment = { at: "2026-03-02T09:40:00Z[_clock=1]", since: 1800, doubt: "clock-went-back" };
  const text = readingsCsv({
    recordedPressures: [{ moment, gaugePressure: 4.42e6, temperature: 294.15, holdBegins: true }],
    recordedVacuums: [{ moment: null, pressure: 33.86, valvedOff: true }],
  });
  const [head, pressure, vacuum] = text.split("\r\n").map((line) => line.split(","));
  const cell = (row, name) => row[head.indexOf(name)];
  assert.equal(cell(pressure, "time"), "2026-03-02T09:40:00Z");
  assert.equal(cell(pressure, "gaugePressure_Pa"), "4420000");
  assert.equal(cell(pressure, "clockDoubt"), "clock-went-back");
  assert.equal(cell(pressure, "pumpValvedOff"), "");
  assert.deepEqual([cell(vacuum, "hold"), cell(vacuum, "time"), cell(vacuum, "absolutePressure_Pa")], ["vacuum", "", "33.86"]);
});

test("a joint's row has its attempts and its note", () => {
  const joint = { id: "j1", number: 1, kind: "flare", line: "gas-line", oiled: true, state: "proven", remade: 1 };
  const document = { joints: [{ id: "j1", note: "=HYPERLINK(1)", remade: [{ id: "r", reason: "too narrow, again" }] }] };
  const [head, row] = jointsCsv({ joints: [joint] }, document, () => "Gas line").split("\r\n");
  assert.equal(head.split(",").at(-1), "note");
  assert.ok(row.endsWith(`,proven,1,"too narrow, again",'=HYPERLINK(1)`), row);
});
