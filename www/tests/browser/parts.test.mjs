// Parts that cards share, on a page of their own: rows of readings, the example, the drawing of readings.
import assert from "node:assert/strict";
import { copyFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { bundle } from "../../bundle.mjs";
import { breaches } from "./axe.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { eventually, goBack, openAll, openSite, temporaryDirectory, useBrowser } from "./site.mjs";

useBrowser();

/** The page of parts, open at a place. */
async function openParts(t, place = "", options = {}) {
  const directory = await temporaryDirectory(t);
  const { files, first } = await bundle({ entries: ["tests/browser/parts-page.tsx"], modules: { first: "first.wasm", whole: "whole.wasm" }, isDevelopment: false });
  for (const [name, content] of files) await writeFile(join(directory, name), content);
  const modules = new URL("../../generated/", import.meta.url);
  await copyFile(fileURLToPath(new URL("first/coldwright_bg.wasm", modules)), join(directory, "first.wasm"));
  await copyFile(fileURLToPath(new URL("coldwright_bg.wasm", modules)), join(directory, "whole.wasm"));
  const script = `<script type="module" src="${first[0]}"></script>`;
  await writeFile(join(directory, "index.html"), `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><link rel="icon" href="data:,"><title>Parts</title><body><div id="page"></div>${script}`);
  const site = await openSite(t, { directory, ...options });
  return site.open(place);
}

const typed = (page, field) => page.locator(`[name="${field}"]`);
const tap = (page, action, list = "readings") => page.locator(`[data-list="${list}"] [data-action="${action}"]`).click();
const sent = (page) => page.evaluate(() => globalThis.sent());
const entry = (text, assume) => ({ text, assume });

/** Shows problems as if the core had found them. */
async function showProblems(page, problems) {
  await page.evaluate((found) => {
    globalThis.problems = found;
    dispatchEvent(new Event("redraw"));
  }, problems);
}

const two = "#/?time1=0 min&absolutePressure1=900 micron&temperature1=21 °C&time2=10 min&absolutePressure2=950 micron&temperature2=20 °C";

test("rows from a link are sent as a list, empty rows left out, and typing writes the link", async (t) => {
  const page = await openParts(t, "#/?time1=0 min&absolutePressure1=900&time3=10 min&absolutePressure3=950 Pa&tube1=16 mm&elbows90_1=3");
  assert.deepEqual(await sent(page), {
    readings: [
      { time: entry("0 min", "min"), absolutePressure: entry("900", "micron"), temperature: entry("", "°C") },
      { time: entry("10 min", "min"), absolutePressure: entry("950 Pa", "micron"), temperature: entry("", "°C") },
    ],
    lines: [{ tube: "16 mm", elbows90: "3" }],
  });
  await typed(page, "temperature3").fill("-5");
  await typed(page, "temperature3").blur();
  assert.equal(await typed(page, "temperature3").inputValue(), "-5 °C", "the unit is written in when the field is left");
  await eventually(() => page.url(), /temperature3=-5%20%C2%B0C/);
});

test("a new row starts with what repeats, has the focus, and is no row yet", async (t) => {
  const page = await openParts(t, two);
  await tap(page, "add-row");
  assert.equal(await typed(page, "temperature3").inputValue(), "20 °C");
  assert.equal(await page.evaluate(() => document.activeElement.name), "time3");
  assert.equal((await sent(page)).readings.length, 2);
  await typed(page, "time3").fill("20");
  assert.equal((await sent(page)).readings.length, 3);
});

test("a row taken out is put back where it was", async (t) => {
  const page = await openParts(t, two);
  const before = await sent(page);
  await page.getByRole("button", { name: "Take row 1 out" }).click();
  assert.equal(await typed(page, "time1").inputValue(), "10 min");
  assert.equal((await sent(page)).readings.length, 1);
  await page.keyboard.press("Enter");
  assert.deepEqual(await sent(page), before, "the focus is on the button that puts it back");
});

test("a problem stands at the field of its row, also below an empty row, and those of the list at the list", async (t) => {
  const page = await openParts(t, "#/?time1=0&time3=x&elbows90_2=3");
  await showProblems(page, [
    { field: "readings[1].time", code: "not-a-number", at: 1, found: "x", example: "3 min" },
    { field: "readings[0].absolutePressure", code: "missing", example: "500 micron" },
    { field: "readings", code: "too-few", needed: 3, found: 2 },
    { field: "lines[0].elbows90", code: "not-finite" },
    { field: "lines[0]", code: "not-an-object" },
  ]);
  const at = (name) => page.locator(`[data-problem-of="${name}"]`);
  assert.match(await at("time3").innerText(), /“x”/);
  assert.equal(await typed(page, "time3").getAttribute("aria-invalid"), "true");
  assert.equal(await typed(page, "time3").getAttribute("aria-describedby"), await at("time3").getAttribute("id"));
  assert.match(await at("absolutePressure1").innerText(), /500 micron/);
  assert.equal(await typed(page, "absolutePressure1").getAttribute("aria-invalid"), "false", "wanted is no mistake");
  assert.match(await at("readings").innerText(), /3 are needed/);
  assert.equal(await at("elbows90_2").count(), 1);
  assert.match(await at("lines").innerText(), /row 2/);
});

test("pasted lines become rows, what cannot be taken is said and stays, and all of it can be taken out again", async (t) => {
  const page = await openParts(t, two);
  await page.locator('[data-list="readings"] .paste summary').click();
  const text = page.locator('[data-list="readings"] textarea');
  await text.fill("time;pressure;temperature\n20;1000;19\n30\t1.2 torr\t18 °C\n\n40 min 1100 micron\n1;2;3;4");
  await tap(page, "take-rows");
  const rows = (await sent(page)).readings;
  assert.deepEqual(rows.map(({ time }) => time.text), ["0 min", "10 min", "20 min", "30 min", "40 min"]);
  assert.deepEqual(rows.map(({ absolutePressure }) => absolutePressure.text).slice(2), ["1000 micron", "1.2 torr", "1100 micron"]);
  assert.deepEqual(rows.map(({ temperature }) => temperature.text).slice(2), ["19 °C", "18 °C", ""]);
  assert.deepEqual(await page.locator("[data-refused]").evaluateAll((lines) => lines.map((line) => line.dataset.refused)), ["no-figure", "too-many-columns"]);
  assert.equal(await text.inputValue(), "time;pressure;temperature\n1;2;3;4");
  await tap(page, "take-out");
  assert.equal((await sent(page)).readings.length, 2);
});

test("a link carries 60 rows: more are refused, and said", async (t) => {
  const page = await openParts(t, two);
  await page.locator('[data-list="readings"] .paste summary').click();
  await page.locator('[data-list="readings"] textarea').fill(Array.from({ length: 60 }, (_, row) => `${row} ${900 + row}`).join("\n"));
  await tap(page, "take-rows");
  assert.equal((await sent(page)).readings.length, 60);
  assert.equal(await page.locator('[data-refused="no-room"]').count(), 2);
  assert.equal(await page.locator('[data-list="readings"] [data-action="add-row"]').count(), 0);
  await page.evaluate(() => (location.hash = `${location.hash}&time61=1`));
  await page.getByText("more than 60 rows").waitFor();
});

test("the example gives way to what stood here, by its button and by the way back", async (t) => {
  const page = await openParts(t, "#/?time1=3 min");
  await page.locator('[data-action="example"]').click();
  assert.equal(await typed(page, "absolutePressure2").inputValue(), "950 micron");
  await page.locator('[data-action="bring-back"]').click();
  assert.equal(await typed(page, "time1").inputValue(), "3 min");
  assert.equal(await typed(page, "absolutePressure1").inputValue(), "");
  await page.locator('[data-action="example"]').click();
  await goBack(page, /absolutePressure2=950/);
  await eventually(() => typed(page, "time1").inputValue(), /^3 min$/);
});

test("the drawing leaves out what a logarithm cannot show, and follows the unit of the gauge", async (t) => {
  const page = await openParts(t);
  const plot = page.getByRole("img", { name: "Pressure falls to 500 micron." });
  assert.equal(await plot.locator("circle").count(), 4);
  assert.equal(await plot.locator(".beyond-dot").count(), 1);
  assert.doesNotMatch(await plot.innerHTML(), /NaN|Infinity/);
  assert.match(await plot.textContent(), /100\s000.*micron.*500 micron/);
  await page.locator('label:has(input[value="Pa"])').click();
  assert.match(await plot.textContent(), /10\s000.*Pa.*500 micron/);
  assert.doesNotMatch(await page.getByRole("img", { name: "One reading." }).innerHTML(), /NaN|Infinity/);
});

for (const { label, width, size, colorScheme } of [
  { label: "by day", width: 360, size: "100%", colorScheme: "light" },
  { label: "in the dark", width: 320, size: "100%", colorScheme: "dark" },
  { label: "with text twice as large", width: 360, size: "200%", colorScheme: "light" },
]) {
  test(`parts keep the rules of accessibility ${label}`, async (t) => {
    const page = await openParts(t, two, { viewport: { width, height: 740 }, colorScheme });
    await page.evaluate((text) => (document.documentElement.style.fontSize = text), size);
    await page.evaluate(() => dispatchEvent(new Event("resize")));
    await openAll(page);
    await showProblems(page, [{ field: "readings[1].time", code: "not-a-number", at: 1, found: "x", example: "3 min" }]);
    assert.deepEqual(await breaches(page), []);
    assert.deepEqual(await page.evaluate(unreadableTexts), []);
    assert.deepEqual(await page.evaluate(smallTargets), []);
  });
}
