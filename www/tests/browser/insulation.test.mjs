// Insulation as a whole task: how thick, is this wall enough, and when nothing will do.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, figure, openAll, openSite, useBrowser } from "./site.mjs";

useBrowser();

const type = (page, name, text) => page.locator(`input[name="${name}"]`).fill(text);
const verdict = (page) => page.locator(".finding [data-verdict]").first().getAttribute("data-verdict");
const wall = (page, millimetres) => page.locator(`[data-wall="${millimetres}"]`).innerText();

test("insulation: the least wall, the next one that is sold, and the one in hand", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/insulation");
  await page.locator('select[name="tube"]').selectOption("5/8");
  await type(page, "lineTemperature", "6");
  await type(page, "dryBulb", "26");
  await type(page, "relativeHumidity", "74");
  await eventually(() => figure(page, "thickness"), /^9\.1 mm$/);
  assert.equal(await figure(page, "dewPoint"), "21.0 °C");
  assert.match(await page.locator(".finding-sentence").innerText(), /13\smm/);
  await page.getByRole("img", { name: /Section to scale.*15\.88 mm/ }).waitFor();
  await type(page, "thickness", "6 mm");
  await eventually(() => verdict(page), /out-of-band/);
  assert.match(await wall(page, 6), /will condense/);
  await type(page, "thickness", "3/4");
  await eventually(() => verdict(page), /in-band/);
  await type(page, "thickness", "9");
  await eventually(() => verdict(page), /cannot-tell/);
});

test("insulation: a data sheet's conductivity and coefficient take the place of what is usual", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/insulation?tube=5/8&lineTemperature=5 °C&dryBulb=30 °C&relativeHumidity=80");
  await page.locator(".other-facts > summary").click();
  await type(page, "emissivity", "0.1");
  await eventually(() => figure(page, "coefficient"), /^[2-5]\.\d W/);
  await type(page, "surfaceCoefficient", "9");
  await eventually(() => figure(page, "coefficient"), /^9\.0 W/);
  assert.equal(await page.locator('input[name="emissivity"]').inputValue(), "", "one or the other");
  await type(page, "conductivity", "0.036");
  // 13.90 mm by scipy and PsychroLib: see tests/reference/insulation.
  await eventually(() => figure(page, "thickness"), /^13\.9 mm$/);
  await openAll(page);
  await eventually(() => page.locator("[data-working]").innerText(), /Hyland and Wexler/);
});

test("insulation: saturated air is refused with the most that can be borne, and a warm line needs none", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/insulation?tube=5/8&lineTemperature=6 °C&dryBulb=26 °C&relativeHumidity=100");
  await eventually(() => page.locator('[data-problem-of="relativeHumidity"]').innerText(), /The most is 98\.\d+ %/);
  assert.match(await page.locator(".finding-sentence").innerText(), /No thickness will do/);
  assert.equal(await page.locator("main [data-figure]").count(), 0);
  await type(page, "relativeHumidity", "40");
  await type(page, "lineTemperature", "18");
  await eventually(() => verdict(page), /in-band/);
  assert.match(await page.locator(".finding-sentence").innerText(), /No insulation is needed/);
  assert.equal(await page.locator('[data-figure="thickness"]').count(), 0);
});
