// The room limit as a whole task: which charge may be in a circuit, and how large the rooms must be.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, figure, openSite, useBrowser } from "./site.mjs";

useBrowser();

const type = (page, name, text) => page.locator(`input[name="${name}"]`).fill(text);
const choose = (page, name, word) => page.locator(`select[name="${name}"]`).selectOption(word);
const verdict = (page) => page.locator("[data-verdict]").first().getAttribute("data-verdict");

test("room-limit: the decree's example comes out as its formula says, typed field by field", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/room-limit");
  assert.equal(await page.locator("main [data-figure]").count(), 0, "no refrigerant is taken for granted");
  await choose(page, "refrigerant", "R-32");
  await type(page, "charge", "8.5");
  await eventually(() => page.locator('[data-figure="smallest-ceiling"]').innerText(), /45\.8\sm²/);
  assert.equal(await verdict(page), "open", "without a room nothing is judged");
  await type(page, "area1", "75");
  await page.locator('[data-problem-of="mounting1"]').waitFor();
  assert.equal(await page.locator('[data-figure="largestCharge"]').count(), 0, "no height of release, no figure");
  await choose(page, "mounting1", "ceiling");
  await eventually(() => figure(page, "largestCharge"), /^10\.880 kg$/);
  assert.equal(await verdict(page), "in-band");
  assert.match(await page.locator(".finding-sentence").innerText(), /Real Decreto 552\/2019.*EN 378-1/);
  assert.match(await page.locator(".cautions").first().innerText(), /decides/);
});

test("room-limit: the room that allows least governs, and more of them can be added", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/room-limit?refrigerant=R-32&charge=2.1 kg&name1=studio&area1=24 m²&mounting1=wall");
  await eventually(() => verdict(page), /in-band/);
  await page.locator('[data-action="add-row"]').click();
  await type(page, "name2", "workshop");
  await type(page, "area2", "16");
  await choose(page, "mounting2", "floor");
  await eventually(() => verdict(page), /out-of-band/);
  // 1.842 kg, on a scale of 5 g.
  assert.equal(await figure(page, "largestCharge"), "1.840 kg");
  assert.match(await page.locator(".finding-sentence").innerText(), /workshop/);
  assert.equal(await figure(page, "room1"), "5.035 kg");
  assert.equal(await figure(page, "smallestArea"), "37.6 m²");
  await page.getByRole("button", { name: "Take row 2 out" }).click();
  await eventually(() => verdict(page), /in-band/);
});

test("room-limit: a refrigerant that does not burn goes by the volume, one not listed by its class", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/room-limit?refrigerant=R-410A&charge=2.62 kg&area1=21 m²");
  await page.locator('[data-problem-of="height1"]').waitFor();
  await type(page, "height1", "2.4");
  await eventually(() => figure(page, "largestCharge"), /^21\.165 kg$/);
  await choose(page, "refrigerant", "");
  await page.locator(".other-limits > summary").click();
  await page.locator('label:has(input[name="safetyClass"][value="A2L"])').click();
  await eventually(() => page.locator('[data-problem-of="lowerFlammabilityLimit"]').innerText(), /Needed/);
  await type(page, "lowerFlammabilityLimit", "0.29 kg/m³");
  await choose(page, "mounting1", "ceiling");
  await eventually(() => figure(page, "largestCharge"), /^5\.360 kg$/);
  assert.match(await page.locator(".cautions").first().innerText(), /LFL is the one entered/);
});

test("room-limit: what cannot be is said at its field, and a charge above the cap is never in band", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/room-limit?refrigerant=R-290&charge=1.2 kg&area1=5000 m²&mounting1=ceiling");
  await eventually(() => verdict(page), /out-of-band/);
  assert.match(await page.locator(".cautions").first().innerText(), /Above the cap/);
  await type(page, "area1", "0");
  await eventually(() => page.locator('[data-problem-of="area1"]').innerText(), /0\.5 m²/);
  assert.equal(await page.locator('[data-figure="largestCharge"]').count(), 0);
});
