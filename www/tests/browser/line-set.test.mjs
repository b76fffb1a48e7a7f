// The whole task of a line set: from tubes and duty to liquid, oil, ports and the plate's limits.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, figure, openSite, useBrowser } from "./site.mjs";

useBrowser();

const typed = (page, field) => page.locator(`input[name="${field}"]`);
const chosen = (page, field) => page.locator(`select[name="${field}"]`);
const verdict = (page, check) => page.locator(`[data-check="${check}"] [data-verdict]`).getAttribute("data-verdict");
const kelvins = async (page) => Number((await figure(page, "left")).match(/[−-]?[\d.]+/)[0].replace("−", "-"));

/** Opens a disclosure by what its line says. */
const disclose = (page, text) => page.locator("summary", { hasText: text }).click();

/** Cooling of 5 kW with R-32 through lines that are wide enough, on level ground. */
const level =
  "#/line-set?refrigerant=R-32&coolingCapacity=5 kW&coolingEvaporatingTemperature=7 °C&coolingCondensingTemperature=45 °C" +
  "&coolingSuperheat=5 K&coolingSubcooling=5 K&liquidTube=8 mm&gasTube=15 mm&length=20 m&lift=0 m";

test("figures come as soon as what they hang on is there, and nothing is guessed", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/line-set");
  await chosen(page, "refrigerant").selectOption("R-32");
  await chosen(page, "gasTube").selectOption("15 mm");
  await typed(page, "coolingCapacity").fill("5");
  await typed(page, "coolingEvaporatingTemperature").fill("7");
  await typed(page, "coolingCondensingTemperature").fill("45");
  await typed(page, "coolingSuperheat").fill("5");
  assert.equal(await page.locator("main [data-figure]").count(), 0, "no figure without subcooling");
  await typed(page, "coolingSubcooling").fill("5");
  await eventually(() => figure(page, "velocity-gas-cooling"), /m\/s/);
  assert.equal(await page.locator('[data-figure="capacity"]').count(), 0, "no drop without a length");
  await typed(page, "length").fill("20");
  await eventually(() => figure(page, "capacity"), /9\d\.\d/);
  await chosen(page, "liquidTube").selectOption("8 mm");
  assert.equal(await page.locator('[data-figure="left"]').count(), 0, "nothing of the liquid without the lift");
  await typed(page, "lift").fill("6");
  assert.equal(await page.locator('[data-figure="left"]').count(), 0, "nor without the higher unit");
  await page.locator('input[name="higherUnit"][value="outdoor"]').check();
  await eventually(() => figure(page, "left"), /\d/);
  assert.equal(await verdict(page, "flash-cooling").catch(() => "inside"), "inside", "what is inside is one line");
  await disclose(page, "checks are inside");
  assert.equal(await verdict(page, "flash-cooling"), "in-band");
  assert.equal(await verdict(page, "oil-cooling"), "in-band");
  assert.match(await page.locator("svg.drawing").getAttribute("aria-label"), /20\.0\sm long\. The outdoor unit stands 6\.0\sm higher/);
});

test("liquid that climbs loses subcooling, liquid that falls gains as much; a high lift makes it boil", async (t) => {
  const site = await openSite(t);
  const page = await site.open(level);
  await eventually(() => figure(page, "left"), /\d/);
  const onLevel = await kelvins(page);
  await typed(page, "lift").fill("10 m");
  await page.locator('input[name="higherUnit"][value="indoor"]').check();
  await eventually(() => kelvins(page).then((left) => String(left < onLevel)), /true/);
  const climbing = await kelvins(page);
  await page.locator('input[name="higherUnit"][value="outdoor"]').check();
  await eventually(() => kelvins(page).then((left) => String(left > onLevel)), /true/);
  // R-32 at 40 °C: 893 kg/m³, so 10 m are 0.88 bar, a bar about 1.6 K.
  assert.ok(Math.abs(onLevel - climbing - 1.4) < 0.25 && Math.abs((await kelvins(page)) - onLevel - 1.4) < 0.25);
  await page.locator('input[name="higherUnit"][value="indoor"]').check();
  await typed(page, "lift").fill("60 m");
  await eventually(() => verdict(page, "flash-cooling"), /out-of-band/);
  assert.match(await page.locator('[data-check="flash-cooling"]').innerText(), /boils before the expansion device/);
});

test("ports, plate and part load are judged; a mistake there withholds only itself", async (t) => {
  const site = await openSite(t);
  const page = await site.open(level);
  await disclose(page, "Ports joined");
  await chosen(page, "gasPort1").selectOption("12 mm");
  await page.locator('[data-list="suctionLine.ports"] [data-action="add-row"]').click();
  await chosen(page, "gasPort2").selectOption("12 mm");
  assert.equal(await verdict(page, "ports-suctionLine"), "out-of-band", "two bores of 10 mm are wider than one of 13 mm");
  await chosen(page, "gasPort2").selectOption("6 mm");
  assert.equal(await page.locator('[data-check="ports-suctionLine"]').count(), 0, "inside, so behind its line");
  await disclose(page, "From the plate");
  await typed(page, "longestLength").fill("15 m");
  assert.equal(await verdict(page, "length"), "out-of-band");
  const before = await figure(page, "left");
  await typed(page, "longestLength").fill("far");
  await page.locator('[data-problem-of="longestLength"]').waitFor();
  assert.equal(await page.locator('[data-check="length"]').count(), 0);
  assert.equal(await figure(page, "left"), before);
  await typed(page, "designPressure").fill("55 bar");
  assert.equal(await verdict(page, "rating-suctionLine"), "out-of-band", "15 × 1 bears 43 bar at 150 °F");
  await typed(page, "leastCapacity").fill("10 %");
  await page.locator('input[name="higherUnit"][value="outdoor"]').check();
  await typed(page, "lift").fill("5 m");
  assert.equal(await verdict(page, "oil-least-cooling"), "out-of-band");
});

test("heating is told beside cooling: hot gas the other way, and its superheat is said to be common practice", async (t) => {
  const site = await openSite(t);
  const page = await site.open(`${level}&heatingCapacity=6 kW&heatingCondensingTemperature=42 °C&heatingSubcooling=4 K`);
  await eventually(() => figure(page, "drop-gas-heating"), /kPa/);
  const main = page.locator("main");
  assert.match(await main.innerText(), /30\.0\sK\s*common practice/);
  assert.ok((await page.locator('[data-figure="drop-gas-cooling"]').count()) > 0);
  await typed(page, "heatingCondensingTemperature").fill("90 °C");
  await page.locator('[data-problem-of="heatingCondensingTemperature"]').waitFor();
  assert.equal(await page.locator('[data-figure="drop-gas-heating"]').count(), 0);
  assert.ok((await page.locator('[data-figure="drop-gas-cooling"]').count()) > 0, "cooling stands without heating");
});

test("a gas line far too narrow is refused at its tube, and the liquid line is still told", async (t) => {
  const site = await openSite(t);
  const page = await site.open(level.replace("gasTube=15 mm", "gasTube=6 mm"));
  await page.locator('[data-problem-of="gasTube"]').waitFor();
  assert.match(await page.locator('[data-problem-of="gasTube"]').innerText(), /Cannot be, together with “Capacity”/);
  assert.match(await figure(page, "left"), /\d/);
});
