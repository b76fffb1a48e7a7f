// The nitrogen hold as a whole task: on the way up, reading by reading, and what the morning's gauge says.
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
const verdict = (page) => page.locator(".finding > .verdict").getAttribute("data-verdict");
const word = (page) => page.locator(".finding > .verdict b").innerText();
/** A row of the way up, by its name. */
const prepared = (page, name) => plain(page.locator(".prepare .row", { hasText: name }).locator("dd"));
const shown = (quantity, si, unit, precision = "table") => `${show(quantity, si, unit, precision, ".").number} ${unit}`;
const plain = async (locator) => (await locator.textContent()).replace(/\s+/g, " ").trim();

function asked(input) {
  const { answer, problems } = calculate("standing-test", input);
  assert.ok(answer, JSON.stringify(problems));
  return answer;
}

/** The input that a link to the card stands for. */
function inputOf(address) {
  const entries = Object.fromEntries(new URLSearchParams(address.slice(address.indexOf("?") + 1).replaceAll("+", "%2B")));
  const input = { readings: [] };
  for (const [name, text] of Object.entries(entries)) {
    const [, column, row] = /^(time|gaugePressure|temperature|ambientTemperature|barometer)(\d+)$/.exec(name) ?? [];
    if (row === undefined) input[name] = text;
    else (input.readings[row - 1] ??= {})[column] = text;
  }
  return input;
}

async function fill(page, texts) {
  for (const [field, text] of Object.entries(texts)) {
    await typed(page, field).fill(text);
    await typed(page, field).blur();
  }
}

/** The place with readings `[time, pressure, temperature]` and other texts. */
function hold(readings, texts = {}) {
  const rows = readings.flatMap((row, place) => ["time", "gaugePressure", "temperature"].map((name, at) => [`${name}${place + 1}`, row[at]]));
  return `#/standing-test?${[...Object.entries(texts), ...rows].map(([name, text]) => `${name}=${encodeURIComponent(text)}`).join("&")}`;
}

/** Losing 5 psi an hour through a night that cools. */
const leaking = [["0 h", "600 psi", "70 °F"], ["2 h", "585 psi", "66 °F"], ["4 h", "569 psi", "61 °F"], ["6 h", "554 psi", "57 °F"], ["8 h", "539 psi", "53 °F"], ["10 h", "525 psi", "50 °F"]];

test("the example is a tight system: every figure is the core's, and the misread one is left out with its reason", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/standing-test");
  await page.locator('[data-action="example"]').click();
  await eventually(() => page.url(), /temperature9=/);
  const answer = asked(inputOf(page.url()));
  const { hold: found, guidance, nitrogen } = answer;
  assert.equal(answer.verdict, "tight");
  assert.equal(await verdict(page), "in-band");
  assert.equal(await word(page), "Tight");
  assert.equal(await figure(page, "expected"), shown("gauge-pressure", found.expectedGaugePressure, "bar"));
  assert.equal(await figure(page, "difference"), shown("pressure-difference", found.difference, "bar"));
  assert.match(await plain(page.locator(".finding")), new RegExp(`± ${shown("pressure-difference", found.differenceUncertainty, "bar")}`));
  const margin = await plain(page.locator("[data-margin]"));
  for (const si of [found.pressureLossRate, found.pressureLossRateUncertainty, found.margin, found.leakToSee]) {
    assert.ok(margin.includes(shown("pressure-rate", si, "mbar/h")), `${margin} has ${si}`);
  }
  assert.match(await figure(page, "upperLimit"), new RegExp(`^${shown("pressure-rate", found.upperLimit, "mbar/h")}${shown("leak-rate", found.upperLimitLeak.nitrogen, "mbar·L/s")}.*${shown("yearly-loss", found.upperLimitLeak.refrigerant, "g/year")} of R-32$`));
  assert.match(await figure(page, "leastDetectable"), new RegExp(`^${shown("pressure-rate", found.leastDetectable, "mbar/h")}`));
  assert.match(await prepared(page, "Nitrogen that flows in"), new RegExp(`^${shown("mass", nitrogen.mass, "g")}`));
  assert.match(await plain(page.locator("[data-cylinder]")), new RegExp(`The cylinder fills it.*${shown("gauge-pressure", nitrogen.cylinder.figure, "bar", "instrument")}`));
  assert.equal(await page.locator("[data-stage]").count(), guidance.stages.length);
  assert.equal(await page.locator(".reading-plot [role=img] .left-out-dot").count(), 1);
  assert.equal(await page.locator(".reading-plot [role=img] .used-dot").count(), 8);
  assert.deepEqual(answer.leftOut, [{ place: 4, reason: "stray" }]);
  assert.match(await plain(page.locator('[data-left-out="stray"]')), /^Row 5, 6 h, 41\.8 bar: off both its neighbours/);
});

test("guidance alone: the rule, its source, the stages, and never above the lowest-rated part", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/standing-test");
  assert.equal(await page.locator("main [data-figure]").count(), 0);
  await fill(page, { designPressure: "40" });
  // Real Decreto 552/2019, IF-09: 1.1 times the design pressure, 1.5 bar first, half, then tenths, half an hour.
  assert.equal(await figure(page, "testPressure"), "44.0 bar");
  assert.match(await word(page), /No reading/);
  const stages = page.locator("[data-stage]");
  assert.deepEqual((await stages.allInnerTexts()).map((text) => text.replace(/\s/g, " ")), ["1.5 bar", "22.0 bar", "26.4 bar", "30.8 bar", "35.2 bar", "39.6 bar", "44.0 bar"]);
  assert.equal(await prepared(page, "Hold at least"), "30 min");
  assert.match(await plain(page.locator(".prepare .sources")), /552\/2019/);
  assert.match(await plain(page.locator(".prepare .verdict")), /not entered: find it/);
  await fill(page, { lowestRating: "43" });
  assert.equal(await figure(page, "testPressure"), "43.0 bar");
  assert.equal(await page.locator(".prepare .verdict").first().getAttribute("data-verdict"), "out-of-band");
  assert.match(await plain(page.locator(".finding .cautions")), /more than the lowest-rated part bears/);
  await page.locator('input[name="testRule"][value="ufgs-15182"]').check();
  assert.equal(await figure(page, "testPressure"), "40.0 bar");
  assert.equal(await prepared(page, "Hold at least"), "24.0 h");
  await fill(page, { plateTestPressure: "41.5" });
  await page.locator('[data-problem-of="testRule"]').waitFor();
  await page.locator('input[name="testRule"][value="plate"]').check();
  assert.equal(await figure(page, "testPressure"), "41.5 bar");
  await fill(page, { volume: "3", cylinderVolume: "2", cylinderPressure: "60" });
  assert.equal(await page.locator("[data-cylinder] .verdict").getAttribute("data-verdict"), "out-of-band");
  assert.match(await plain(page.locator(".card > .cautions")), /relief valve.*plate’s test pressure outranks/);
});

test("reading by reading: one cannot tell, the second tells what is expected, time decides", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/standing-test");
  await fill(page, { time1: "0", gaugePressure1: "40", temperature1: "20" });
  assert.equal(await verdict(page), "open");
  assert.equal(await word(page), "Cannot tell yet");
  const { holdOfTwoReadings } = asked({ readings: [{ time: "0 h", gaugePressure: "40 bar", temperature: "20 °C" }] });
  const [, wait] = /two readings ([\d.]+) h apart/.exec(await plain(page.locator("[data-wait]")));
  assert.ok(Number(wait) * 3600 >= holdOfTwoReadings && Number(wait) * 3600 < holdOfTwoReadings + 360, "rounded up to a tenth of an hour");
  assert.equal(await page.locator("[data-figure=expected], .reading-plot").count(), 0);
  await fill(page, { time2: "2", gaugePressure2: "39.5", temperature2: "16" });
  assert.equal(await verdict(page), "cannot-tell");
  const early = asked({ readings: [{ time: "0 h", gaugePressure: "40 bar", temperature: "20 °C" }, { time: "2 h", gaugePressure: "39.5 bar", temperature: "16 °C" }] });
  assert.equal(await figure(page, "expected"), shown("gauge-pressure", early.hold.expectedGaugePressure, "bar"));
  assert.match(await plain(page.locator(".finding")), /it shows 39\.50 bar/);
  const [, longer] = /Hold ([\d.]+) h longer/.exec(await plain(page.locator("[data-wait]")));
  assert.ok(Number(longer) * 3600 >= early.hold.longer && Number(longer) * 3600 < early.hold.longer + 360);
  await page.locator('[data-list="readings"] [data-action="add-row"]').click();
  await fill(page, { time3: "30", gaugePressure3: "39.99", temperature3: "20" });
  assert.equal(await verdict(page), "in-band");
  assert.match(await page.evaluate(() => location.hash), /time3=30%20h/);
  // A smaller loss asks for a longer hold.
  await fill(page, { leakToSee: "1" });
  assert.equal(await verdict(page), "cannot-tell");
  const { hold: slow } = asked(inputOf(await page.evaluate(() => location.hash)));
  assert.ok(slow.longer > 0);
  assert.match(await figure(page, "holdToSee"), / more$/);
});

test("a leak is told as pressure, gas and refrigerant, and its readings leave the band", async (t) => {
  const site = await openSite(t);
  const page = await site.open(hold(leaking, { volume: "4 L", refrigerant: "R-410A", gaugeResolution: "1 psi" }));
  await page.locator("[data-margin]").waitFor();
  const answer = asked(inputOf(page.url()));
  assert.equal(answer.verdict, "losing-gas");
  assert.equal(await verdict(page), "out-of-band");
  assert.equal(await word(page), "Losing gas");
  const { leak, pressureLossRate } = answer.hold;
  assert.ok(await figure(page, "loss").then((text) => text.startsWith(shown("pressure-rate", pressureLossRate, "mbar/h"))));
  assert.equal(await plain(page.locator('[data-figure="loss"] [data-leak="nitrogen"]')), `${shown("leak-rate", leak.nitrogen, "mbar·L/s")} of nitrogen`);
  assert.equal(await plain(page.locator('[data-figure="loss"] [data-leak="refrigerant"]')), `${shown("yearly-loss", leak.refrigerant, "g/year")} of R-410A`);
  assert.match(await plain(page.locator("[data-margin]")), /above the/);
  assert.match(await plain(page.locator("[data-next]")), /Let the pressure out before/);
  assert.equal(await page.locator(".reading-plot [role=img] .beyond-dot").count(), answer.points.filter(({ isBeyond }) => isBeyond).length);
  assert.ok((await page.locator(".reading-plot [role=img] .beyond-dot").count()) > 0);
  await page.locator('select[name="refrigerant"]').selectOption("");
  assert.equal(await page.locator('[data-leak="refrigerant"]').count(), 0, "no refrigerant is taken for granted");
});

test("pasted readings are judged as typed ones, with the air of each when it was read", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/standing-test");
  await page.locator('input[name="airRead"][value="true"]').check();
  await page.locator('[data-list="readings"] .paste summary').click();
  await page.locator('[data-list="readings"] textarea').fill("0;40;20;19;1000 mbar\n24;40.2;20;21;980 mbar");
  await page.locator('[data-action="take-rows"]').click();
  // The gauge rises by what the air falls: 0.2 bar less 20 mbar.
  await eventually(() => figure(page, "difference"), /^0\.18 bar$/);
  await eventually(() => page.evaluate(() => location.hash), /barometer2=980/);
  await page.locator('input[name="airRead"][value="false"]').check();
  assert.equal(await figure(page, "difference"), "0.20 bar", "air that is not read does not count");
  await page.locator('input[name="airRead"][value="true"]').check();
  assert.equal(await typed(page, "barometer2").inputValue(), "980 mbar", "what was typed is kept");
});

test("what is wrong is named at its field and stays; each panel loses its own figures only", async (t) => {
  const site = await openSite(t);
  const page = await site.open(hold(leaking, { designPressure: "40 bar", volume: "4 L" }));
  await page.locator("[data-margin]").waitFor();
  assert.match(await plain(page.locator(".prepare > summary")), /Test at 44\.0 bar/);
  await typed(page, "gaugePressure3").fill("full");
  assert.match(await plain(page.locator('[data-problem-of="gaugePressure3"]')), /Pressure, gauge: .*“full”/);
  assert.equal(await typed(page, "gaugePressure3").getAttribute("aria-invalid"), "true");
  assert.equal(await page.locator("[data-margin], [data-figure=expected]").count(), 0);
  assert.equal(await figure(page, "testPressure"), "44.0 bar", "the way up does not hang on readings");
  await page.reload();
  await eventually(() => typed(page, "gaugePressure3").inputValue(), /^full$/);
  await typed(page, "gaugePressure3").fill("569 psi");
  await typed(page, "time3").fill("1 h");
  assert.match(await plain(page.locator('[data-problem-of="time3"]')), /order of time/);
  await typed(page, "time3").fill("4 h");
  await page.locator("[data-margin]").waitFor();
  await page.locator(".prepare > summary").click();
  await typed(page, "volume").fill("large");
  await page.locator('[data-problem-of="volume"]').waitFor();
  assert.equal(await verdict(page), "out-of-band", "the verdict does not hang on the volume");
  assert.equal(await page.locator("[data-leak]").count(), 0);
  await typed(page, "designPressure").fill("-3");
  await page.locator('[data-problem-of="designPressure"]').waitFor();
  assert.equal(await page.locator("[data-stage]").count(), 0);
});

test("a reading above the lowest-rated part's pressure is warned of before all else", async (t) => {
  const site = await openSite(t);
  const page = await site.open(hold([["0 h", "46 bar", "20 °C"]], { lowestRating: "45 bar" }));
  await eventually(() => page.locator(".finding .cautions li").first().innerText(), /let the pressure down now/);
});
