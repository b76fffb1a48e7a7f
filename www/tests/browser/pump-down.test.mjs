// The whole task at the pump: from what stands in the van to the time, what to change, and the ice.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, figure, openSite, useBrowser } from "./site.mjs";

useBrowser();

const typed = (page, field) => page.locator(`input[name="${field}"]`);

/** Seconds of a time as it is written. */
function seconds(text) {
  const [, number, unit] = /([\d.]+)\s*(s|min|h)/.exec(text);
  return Number(number) * { s: 1, min: 60, h: 3600 }[unit];
}

test("speed, hose and volume give the milestones; the core taken out gives a shorter time", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/pump-down");
  await typed(page, "pumpSpeed").fill("6 cfm");
  assert.equal(await page.locator("[data-figure]").count(), 0, "no figure without a volume");
  await typed(page, "volume").fill("5");
  await typed(page, "bore1").fill("9 mm");
  await typed(page, "length1").fill("1.5 m");
  await eventually(() => figure(page, "goal"), /\d/);
  const milestones = await page.locator("[data-milestone]").allInnerTexts();
  assert.equal(milestones.length, 3, "5000, 1000 and 500 micron beside 300");
  const before = seconds(await figure(page, "goal"));
  assert.ok(milestones.every((text) => seconds(text) < before));
  assert.match(await page.locator("[data-best]").getAttribute("data-best"), /cores-out/);
  await page.locator('select[name="core1"]').selectOption("out");
  assert.ok(seconds(await figure(page, "goal")) < before / 2, "the core was in the way");
  assert.equal(await page.locator('[data-share="valve-core"]').count(), 0);
});

test("with no hose the time is V/S·ln of the pressures", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/pump-down?pumpSpeed=0.1 m³/s&ultimatePressure=0 Pa&volume=1 m³&startingPressure=1000 mbar&target1=10 mbar");
  // engineeringtoolbox.com, vacuum-evacuation-time-d_844: 46 s.
  assert.match(await figure(page, "goal"), /^46 ?s/);
});

test("the volume comes from the tubes, or from a figure, not from both", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/pump-down?pumpSpeed=6 cfm");
  await page.locator('select[name="tube1"]').selectOption("5/8");
  await typed(page, "tubeLength1").fill("15 m");
  await eventually(() => figure(page, "goal"), /\d/);
  await typed(page, "volume").fill("5 L");
  await page.locator('[data-problem-of="tubes"]').waitFor();
  assert.equal(await page.locator('[data-figure="goal"]').count(), 0);
});

test("water holds the gauge, drops freeze in the cold, a warm room lifts the warning", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/pump-down");
  await page.locator('[data-action="example"]').click();
  assert.match(await figure(page, "stand"), /6 g of water: the gauge stands near 6\d\d\d micron/);
  assert.equal(await page.locator("[data-ice]").getAttribute("data-ice"), "ice-possible");
  await typed(page, "ambientTemperature").fill("-5 °C");
  assert.equal(await page.locator("[data-ice]").getAttribute("data-ice"), "ice-forms");
  await typed(page, "ambientTemperature").fill("30 °C");
  await eventually(() => figure(page, "stand"), /31 \d\d\d micron/);
  assert.equal(await page.locator("[data-ice]").count(), 0);
  await typed(page, "water").fill("");
  await page.locator('input[name="moisture"][value="dry"]').check();
  assert.equal(await page.locator('[data-figure="stand"]').count(), 0);
});

test("a pressure below the pump's own is said never to be reached", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/pump-down?pumpSpeed=6 cfm&volume=5 L&ultimatePressure=400 micron");
  assert.match(await figure(page, "goal"), /\d/);
  assert.match(await page.locator(".milestones div", { hasText: "300" }).innerText(), /never/);
  await typed(page, "ultimatePressure").fill("6000 micron");
  assert.equal(await page.locator("[data-verdict]").getAttribute("data-verdict"), "out-of-band");
});

test("nitrogen breaks thin the first air, step by step", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/pump-down?pumpSpeed=6 cfm&volume=5 L&barometer=760 mmHg&lowPressure1=7600 micron&lowPressure2=7600 micron");
  // 7.6 of 760 mmHg, once and twice.
  assert.match(await figure(page, "evacuation-1"), /leaves 1\.0 % of the first air/);
  assert.match(await figure(page, "evacuation-2"), /leaves 100 ppm of the first air/);
});
