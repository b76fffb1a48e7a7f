// What cannot be used: said beside its field, kept as typed, and no other figure is touched.
import assert from "node:assert/strict";
import { test } from "node:test";
import { figure, openSite, useBrowser } from "./site.mjs";

useBrowser();

/** Texts that no length is, and what the message must speak of. */
const noLengths = [
  ["words", /words/],
  ["1/0", /0/],
  ["-5 mm", /mm/],
  ["1e30 m", /m/],
  ["NaN", /NaN/],
  ["5 parsec", /parsec/],
  ["38 N·m", /torque/],
];

/** Fields of the bench, the figure that hangs on each, those that must stand, and whether a figure needs the field. */
const fields = [
  { field: "measuredCone", kept: ["torque", "cone"] },
  { field: "caliperUncertainty", kept: ["torque", "cone"] },
  { field: "adapterLength", lost: "setting", kept: ["torque", "cone"] },
  { field: "wrenchLength", lost: "setting", kept: ["torque", "cone"], isNeeded: true },
];

for (const { field, lost, kept, isNeeded = false } of fields) {
  test(`no length in ${field} is said beside it, and the other figures stand`, async (t) => {
    const site = await openSite(t);
    const page = await site.open("#/?tube=5/8&adapterLength=40 mm&wrenchLength=280 mm");
    await page.evaluate(() => document.querySelectorAll("details").forEach((part) => (part.open = true)));
    const before = await Promise.all(kept.map((name) => figure(page, name)));
    const input = page.locator(`input[name="${field}"]`);
    for (const [text, told] of noLengths) {
      await input.fill(text);
      await expectMessage(page, field, text, told);
      assert.deepEqual(await Promise.all(kept.map((name) => figure(page, name))), before);
      if (lost !== undefined) assert.doesNotMatch(await figureOrNothing(page, lost), /\d/, `${lost} is withheld`);
    }
    await input.fill("");
    assert.equal(await page.locator(`[data-problem-of="${field}"]`).count(), isNeeded ? 1 : 0, "only a needed field may not be empty");
  });
}

test("no torque on the plate withholds the torque, never a default in its place, and the flare stands", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/?tube=5/8");
  await page.evaluate(() => document.querySelectorAll("details").forEach((part) => (part.open = true)));
  const cone = await figure(page, "cone");
  const input = page.locator('input[name="plateTorque"]');
  for (const [text, told] of [
    ["words", /words/],
    ["1/0", /0/],
    ["-40 N·m", /N·m/],
    ["1e30 N·m", /N·m/],
    ["NaN", /NaN/],
    ["40 parsec", /parsec/],
    ["140 psi", /pressure/],
  ]) {
    await input.fill(text);
    await expectMessage(page, "plateTorque", text, told);
    assert.doesNotMatch(await figureOrNothing(page, "torque"), /\d/);
    assert.equal(await figure(page, "cone"), cone);
  }
  await input.fill("");
  assert.match(await figure(page, "torque"), /68–77/);
});

test("a tube that is none is said, kept in the address, and a tap on a size puts it right", async (t) => {
  const site = await openSite(t);
  for (const [tube, told] of [
    ["words", /words/],
    ["1/0", /0/],
    ["-5 mm", /mm/],
    ["9 in", /5\/8/],
    ["NaN", /NaN/],
    ["5 parsec", /parsec/],
    ["38 N·m", /torque/],
  ]) {
    const place = `#/?tube=${encodeURIComponent(tube)}`;
    const page = await site.open(place);
    assert.doesNotMatch(await figureOrNothing(page, "torque"), /\d/, tube);
    assert.match(await page.locator('[data-problem-of="tube"]').first().innerText(), told);
    assert.equal(page.url(), new URL(place, site.address).href);
    await page.locator('[data-tube="3/8"]').click();
    assert.match(await figure(page, "torque"), /34–42/);
    await page.close();
  }
});

test("the converter says what it cannot read", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/convert");
  const input = page.locator('input[name="text"]');
  for (const [text, told] of [
    ["words", /words|unit|figure/i],
    ["1/0", /0/],
    ["1e30 m", /m\b/],
    ["NaN", /NaN|unit|figure/],
    ["5 parsec", /parsec/],
    ["-4 mm", /./],
  ]) {
    await input.fill(text);
    if (text !== "-4 mm") await expectMessage(page, "text", text, told);
    if (text !== "-4 mm") assert.equal(await page.locator("[data-reading]").count(), 0);
    assert.equal(await input.inputValue(), text);
  }
  await input.fill("140 psi");
  await page.evaluate(() => document.querySelectorAll("details").forEach((part) => (part.open = true)));
  await page.locator('input[name="altitude"]').fill("high");
  await expectMessage(page, "altitude", "high", /high/);
  await input.fill("");
  assert.equal(await page.locator('[data-problem-of="text"]').count(), 0, "an empty field is no mistake");
});

async function figureOrNothing(page, name) {
  return (await page.locator(`[data-figure="${name}"]`).count()) === 0 ? "" : figure(page, name);
}

/** The message stands beside the field, is tied to it, and the text is as typed. */
async function expectMessage(page, field, text, told) {
  const input = page.locator(`input[name="${field}"]`);
  const problem = page.locator(`[data-problem-of="${field}"]`);
  assert.equal(await problem.count(), 1, `${field}: ${text} is said once`);
  assert.match(await problem.innerText(), told, text);
  assert.equal(await input.inputValue(), text);
  assert.equal(await input.getAttribute("aria-invalid"), "true");
  const described = (await input.getAttribute("aria-describedby")) ?? "";
  assert.ok(described.split(" ").includes(await problem.getAttribute("id")), "the message is tied to its field");
  const [place, message] = await Promise.all([input.boundingBox(), problem.boundingBox()]);
  assert.ok(message.y >= place.y && message.y - place.y < 200, "the message stands beside its field");
}
