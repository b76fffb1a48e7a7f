// Charging as a lead technician does it: from the plate to the mark on the scale, then the recovery cylinder.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { before, test } from "node:test";
import startCore, { calculate, show } from "../../generated/coldwright.js";
import { eventually, figure, openSite, useBrowser } from "./site.mjs";

useBrowser();
before(async () => {
  await startCore({ module_or_path: await readFile(new URL("../../generated/coldwright_bg.wasm", import.meta.url)) });
});

const typed = (page, field) => page.locator(`input[name="${field}"]`);
const kilograms = (si) => `${show("mass", si, "kg", "table", ".").number} kg`;

function asked(input) {
  const { answer, problems } = calculate("charge", input);
  assert.ok(answer, JSON.stringify(problems));
  return answer;
}

async function fill(page, texts) {
  for (const [field, text] of Object.entries(texts)) {
    await typed(page, field).fill(text);
    await typed(page, field).blur();
  }
}

const plate = { plateCharge: "1.2", prechargedLength: "7.5", length: "19", plateAdder: "20" };
const question = { refrigerant: "R-32", plateCharge: "1.2 kg", prechargedLength: "7.5 m", length: "19 m", plateAdder: "20 g/m" };

test("from the plate to the mark on the scale, until it is reached and passed", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/charge");
  await page.locator('select[name="refrigerant"]').selectOption("R-32");
  await fill(page, plate);
  // 20 g/m over 11.5 m, worked by hand.
  assert.equal(await figure(page, "toAdd"), "0.230 kg");
  assert.match(await figure(page, "total"), /^1\.430 kg/);
  assert.equal(await page.locator(".verdict").count(), 0);
  await fill(page, { cylinderStart: "11.5", cylinderTare: "5" });
  assert.equal(await figure(page, "stopMark"), "11.270 kg");
  await fill(page, { cylinderNow: "11.4" });
  const { scale } = asked({ ...question, cylinderStart: "11.5 kg", cylinderNow: "11.4 kg" });
  assert.equal(await page.locator(".finding .verdict").getAttribute("data-verdict"), "open");
  assert.match(await page.locator(".finding .verdict").innerText(), new RegExp(kilograms(scale.remaining).replace(" ", "\\s")));
  await fill(page, { cylinderNow: "11.275" });
  assert.equal(await page.locator(".finding .verdict").getAttribute("data-verdict"), "in-band");
  await fill(page, { cylinderNow: "11.1" });
  assert.equal(await page.locator(".finding .verdict").getAttribute("data-verdict"), "out-of-band");
  assert.match(await page.locator(".finding .verdict").innerText(), /0\.170\s?kg/);
  // The mark stands where it stood, and a link says all of it.
  assert.equal(await figure(page, "stopMark"), "11.270 kg");
  await eventually(() => page.url(), /refrigerant=R-32.*cylinderNow=11\.1%20kg/);
  const burns = page.locator(".finding .cautions li").first();
  assert.match(await burns.innerText(), /burns/);
});

test("the mark is rounded to the scale's step towards less, and a cylinder that was refilled is told", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/charge?refrigerant=R-32&chargeToAdd=0.233 kg&cylinderStart=11.5 kg&scaleResolution=50 g");
  assert.equal(await figure(page, "stopMark"), "11.300 kg");
  await fill(page, { cylinderNow: "12" });
  await page.locator('[data-problem-of="cylinderNow"]').waitFor();
  // The scale's figures are withheld; what goes in is not.
  assert.equal(await page.locator('[data-figure="stopMark"]').count(), 0);
  assert.equal(await figure(page, "toAdd"), "0.233 kg");
  await fill(page, { cylinderNow: "", cylinderTare: "11.4" });
  assert.match(await page.locator(".finding-sentence").innerText(), /lacks 0\.133\s?kg/);
  assert.equal(await page.locator('[data-notice="cylinder-lacks-refrigerant"]').count(), 1);
});

test("plate and physics stand beside each other, and the plate holds", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/charge");
  await page.locator('select[name="refrigerant"]').selectOption("R-32");
  await fill(page, plate);
  await page.locator('select[name="liquidTube"]').selectOption("1/4");
  const { line } = asked({ ...question, liquidTube: "1/4" });
  const perMetre = (si) => `${show("mass-per-length", si, "g/m", "table", ".").number} g/m`;
  assert.equal(await figure(page, "liquidPerLength"), perMetre(line.liquid.massPerLength));
  assert.match(await figure(page, "adderDifference"), /^\+/);
  assert.match(await page.locator(".drawing[role=img]").first().getAttribute("aria-label"), /20\.0\s?g\/m.*16\.3\s?g\/m/);
  assert.equal(await figure(page, "toAdd"), "0.230 kg");
  // Without the plate's adder physics takes its place and says so.
  await fill(page, { plateAdder: "" });
  assert.equal(await figure(page, "toAdd"), kilograms(line.physicsExtra));
  assert.equal(await page.locator('[data-notice="line-by-physics"]').count(), 1);
  // A bad temperature withholds physics alone, where the charge does not hang on it.
  await fill(page, { plateAdder: "20" });
  await page.locator(".line-states summary").click();
  await fill(page, { liquidTemperature: "90" });
  await page.locator('[data-problem-of="liquidTemperature"]').waitFor();
  assert.equal(await page.locator('[data-figure="liquidPerLength"]').count(), 0);
  assert.equal(await figure(page, "toAdd"), "0.230 kg");
});

test("a recovery cylinder has no limit before its tare is known, then room, then none", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/charge?refrigerant=R-410A");
  await page.locator(".recovery > summary").click();
  await fill(page, { recoveryVolume: "12.3" });
  await page.locator('[data-problem-of="recoveryTare"]').waitFor();
  assert.equal(await page.locator('[data-figure="largestGross"]').count(), 0);
  await fill(page, { recoveryTare: "7.9", recoveryGross: "13.6" });
  const cylinder = { refrigerant: "R-410A", recoveryVolume: "12.3 L", recoveryTare: "7.9 kg" };
  const { recovery } = asked({ ...cylinder, recoveryGross: "13.6 kg" });
  assert.match(await figure(page, "largestGross"), new RegExp(`^${kilograms(recovery.largestGross)}`));
  assert.match(await figure(page, "never-full-when-hot"), /holds here/);
  assert.equal(await page.locator(".recovery .verdict").getAttribute("data-verdict"), "in-band");
  await fill(page, { recoveryGross: "18.2" });
  assert.equal(await page.locator(".recovery .verdict").getAttribute("data-verdict"), "out-of-band");
  // Water capacity takes the volume's place.
  await fill(page, { recoveryWaterCapacity: "12.3 kg" });
  assert.equal(await typed(page, "recoveryVolume").inputValue(), "");
  await page.locator('select[name="refrigerant"]').selectOption("R-744");
  await page.locator('[data-problem-of="refrigerant"]').waitFor();
  assert.equal(await page.locator('[data-figure="largestGross"]').count(), 0);
});

test("a shorter line takes out what the plate says, into the cylinder on the scale", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/charge?refrigerant=R-32&plateCharge=2 kg&prechargedLength=5 m&length=2 m&plateAdder=20 g/m");
  assert.equal(await figure(page, "toAdd"), "0.000 kg");
  assert.equal(await page.locator('[data-notice="no-reduction-on-plate"]').count(), 1);
  await fill(page, { plateReduction: "15", cylinderStart: "10" });
  assert.equal(await figure(page, "stopMark"), "10.045 kg");
  assert.equal(await page.locator('[data-notice="no-reduction-on-plate"]').count(), 0);
});

test("the charge stands as carbon dioxide by three reports, and the working counts it as a plain number", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/charge?refrigerant=R-410A&plateCharge=2 kg");
  // 2 kg of half R-32 and half R-125: (675 + 3500) / 2, (677 + 3170) / 2, (771 + 3740) / 2.
  for (const [report, mass] of [["ar4", "4175 kg"], ["ar5", "3847 kg"], ["ar6", "4511 kg"]]) {
    assert.match(await figure(page, report), new RegExp(`^${mass}`));
  }
  await page.locator("main > [data-working] > summary").click();
  await eventually(() => page.locator("main > [data-working]").innerText(), /2087\.5(?!\s?%)/);
});
