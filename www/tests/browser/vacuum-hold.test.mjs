// The whole task after the pump is valved off: from the readings to dry, moisture or leak, and whether the rule is met.
import assert from "node:assert/strict";
import { test } from "node:test";
import { eventually, figure, openSite, useBrowser } from "./site.mjs";

useBrowser();

const typed = (page, field) => page.locator(`input[name="${field}"]`);
const verdict = (page) => page.locator(".finding > .verdict").getAttribute("data-verdict");
const word = (page) => page.locator(".finding > .verdict").innerText();
const next = (page) => page.locator("[data-next]").getAttribute("data-next");
const likelihood = async (page, cause) => Number.parseFloat(await page.locator(`[data-likelihood="${cause}"]`).innerText());

/** The place with a reading a minute, and other texts beside them. */
function hold(microns, texts = {}) {
  const readings = microns.flatMap((micron, minute) => [[`time${minute + 1}`, `${minute} min`], [`pressure${minute + 1}`, `${micron} micron`]]);
  const entries = [...readings, ...Object.entries(texts)];
  return `#/vacuum-hold?${entries.map(([name, text]) => `${name}=${encodeURIComponent(text)}`).join("&")}`;
}

/** So many readings from `start` on, each `step` higher. */
const even = (start, step, count) => Array.from({ length: count }, (_, minute) => start + step * minute);

test("the example is moisture: plateau, water's temperature there, what is to be expected, a rule that is not met", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/vacuum-hold");
  assert.equal(await page.locator("[data-figure]").count(), 0, "no figure from what nobody entered");
  await page.locator('[data-action="example"]').click();
  await eventually(() => word(page), /^Moisture/);
  assert.equal(await verdict(page), "out-of-band");
  assert.equal(await next(page), "moisture");
  // Made from a plateau of 2600 micron with a time constant of 11 minutes.
  const plateau = Number.parseInt(await figure(page, "plateau"), 10);
  assert.ok(Math.abs(plateau - 2600) < 210, `${plateau}`);
  // Ice has 2600 micron at -6.7 °C (IAPWS R14-08, by the library iapws).
  assert.match(await figure(page, "plateau-water"), /^−[67]\.\d °C ?as ice/);
  assert.ok((await likelihood(page, "moisture")) > 90);
  const expected = await Promise.all([600, 1800, 3600].map((time) => figure(page, `expected-${time}`)));
  const levels = expected.map((text) => Number.parseInt(text, 10));
  assert.ok(levels[0] < levels[1] && levels[1] < levels[2], `${levels}`);
  assert.ok(expected.every((text) => text.includes("±")));
  assert.equal(await page.locator(".reading-plot circle.used-dot").count(), 13, "twelve readings and the key");
  assert.ok((await page.locator(".reading-plot .expected-band").count()) === 1);
  assert.equal(await page.locator(".rule > .verdict").getAttribute("data-verdict"), "out-of-band", "2020 micron is above 500");
});

test("reading by reading: open at first, then dry and tight; the rule's hour is still to come", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/vacuum-hold");
  for (const [place, micron] of [250, 252, 255, 256, 258, 259, 261, 263].entries()) {
    if (place >= 4) await page.locator('[data-action="add-row"]').click();
    await typed(page, `time${place + 1}`).fill(String(2 * place));
    await typed(page, `pressure${place + 1}`).fill(String(micron));
    if (place === 2) {
      await eventually(() => word(page), /^Open/);
      assert.equal(await next(page), "too-few-readings");
      assert.match(await page.locator("[data-hold-longer]").innerText(), /\d+\smin longer/);
      assert.equal(await page.locator("[data-likelihood]").count(), 0, "nothing is likely yet");
    }
  }
  await eventually(() => word(page), /^Dry and tight/);
  assert.equal(await verdict(page), "in-band");
  assert.match(await page.locator("[data-margin]").innerText(), /to spare/);
  assert.ok((await likelihood(page, "leak")) < 3);
  const rule = page.locator(".rule > .verdict");
  assert.equal(await rule.getAttribute("data-verdict"), "cannot-tell");
  assert.match(await rule.innerText(), /46\smin of 60\smin/);
  assert.match(await figure(page, "rule-start"), /at most 300\smicron/);
  await page.locator('input[name="passRule"][value="plate"]').check();
  await page.locator('[data-problem-of="passPressure"]').waitFor();
  assert.match(await word(page), /^Dry and tight/, "the plate's missing figure withholds the rule alone");
  assert.equal(await page.locator(".rule > .verdict").count(), 0);
  await typed(page, "passPressure").fill("500");
  await typed(page, "passTime").fill("14");
  await eventually(() => page.locator(".rule > .verdict").getAttribute("data-verdict"), /in-band/);
});

test("an even rise is a leak, with its rate, and with the volume the air that comes in", async (t) => {
  const site = await openSite(t);
  const page = await site.open(hold(even(300, 60, 16), { volume: "10 L" }));
  await eventually(() => word(page), /^Leak/);
  assert.equal(await next(page), "leak");
  const rate = Number.parseInt(await figure(page, "leak"), 10);
  assert.ok(Math.abs(rate - 60) <= 2, `${rate} micron/min`);
  // 10 L × 60 micron/min = 0.0133 mbar·L/s.
  assert.match(await figure(page, "leak-gas"), /^0\.013\d? mbar·L\/s/);
  await page.locator('input[name="vacuumUnit"][value="Pa"]').check();
  await eventually(() => typed(page, "pressure1").inputValue(), /^300 Pa$/);
  await eventually(() => figure(page, "leak"), /^(59|60)\.\d Pa\/min/);
});

test("pasted readings count; four soon after each other leave leak and moisture alike", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/vacuum-hold");
  await page.locator(".paste summary").click();
  await page.locator("#paste-readings").fill("0; 300\n1; 345\n2; 380\n3; 430\n");
  await page.locator('[data-action="take-rows"]').click();
  await eventually(() => word(page), /^Cannot tell yet/);
  assert.equal(await verdict(page), "cannot-tell");
  assert.equal(await next(page), "causes-alike");
  assert.equal(await typed(page, "pressure4").inputValue(), "430 micron");
  assert.match(await page.locator("[data-margin]").innerText(), /short of it/);
  const likely = await Promise.all(["dry-and-tight", "moisture", "leak", "other"].map((cause) => likelihood(page, cause)));
  assert.ok(likely.every((percent) => percent < 75), `${likely}`);
});

test("too few readings give no cause, whatever they show", async (t) => {
  const site = await openSite(t);
  const page = await site.open(hold([300, 900, 1500]));
  await eventually(() => word(page), /^Open/);
  assert.equal(await page.locator('[data-figure="leak"], [data-figure="plateau"], [data-figure^="expected-"]').count(), 0);
  assert.equal(await page.locator(".reading-plot .expected-band").count(), 0, "no curve where no law is known to hold");
});

test("bad readings are named at their rows, keep their text, and withhold the verdict; a bad volume does not", async (t) => {
  const site = await openSite(t);
  const page = await site.open(hold(even(300, 60, 16)));
  await typed(page, "pressure3").fill("many");
  await typed(page, "time5").fill("1 min");
  await page.locator('[data-problem-of="pressure3"]').waitFor();
  await page.locator('[data-problem-of="time5"]').waitFor();
  assert.equal(await page.locator(".finding > .verdict").count(), 0);
  assert.equal(await typed(page, "pressure3").inputValue(), "many");
  await page.reload();
  assert.equal(await typed(page, "pressure3").inputValue(), "many");
  await typed(page, "pressure3").fill("420");
  await typed(page, "time5").fill("4");
  await eventually(() => word(page), /^Leak/);
  await typed(page, "volume").fill("large");
  await page.locator('[data-problem-of="volume"]').waitFor();
  assert.match(await word(page), /^Leak/);
  assert.equal(await page.locator('[data-figure="leak-gas"]').count(), 0);
});
