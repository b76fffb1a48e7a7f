// The fluid cards as a person uses them; what they show is what the core says when it is asked directly.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { before, test } from "node:test";
import startCore, { calculate, show } from "../../generated/coldwright.js";
import { only } from "./conditions.mjs";
import { eventually, figure, goBack, openSite, useBrowser } from "./site.mjs";

useBrowser();
before(async () => {
  await startCore({ module_or_path: await readFile(new URL("../../generated/coldwright_bg.wasm", import.meta.url)) });
});

const typed = (page, field) => page.locator(`input[name="${field}"]`);
const mark = (page) => page.getByRole("slider");

/** The core's own answer, and a figure of it as it is shown. */
function asked(name, input) {
  const { answer, problems } = calculate(name, input);
  assert.ok(answer, JSON.stringify(problems));
  return answer;
}
const shown = (quantity, si, unit, precision = "instrument") => show(quantity, si, unit, precision, ".").number;

test("a gauge reading at altitude gives bubble, dew and glide as the core does, and sea level other ones", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/cards");
  await page.locator('main a[href*="saturation"]').click();
  await page.locator('select[name="refrigerant"]').selectOption("R-407C");
  await typed(page, "gaugePressure").fill("8.3");
  const atSeaLevel = await figure(page, "bubble");
  await page.locator(".air summary").click();
  await typed(page, "altitude").fill("1500 m");
  const input = { refrigerant: "R-407C", gaugePressure: "8.3 bar", altitude: "1500 m" };
  const answer = asked("saturation", input);
  assert.equal(await figure(page, "bubble"), `${shown("temperature", answer.bubbleTemperature, "°C")} °C`);
  assert.equal(await figure(page, "dew"), `${shown("temperature", answer.dewTemperature, "°C")} °C`);
  assert.match(await figure(page, "glide"), new RegExp(`${shown("temperature-difference", answer.glide, "K")} K`));
  assert.match(await figure(page, "absolute-pressure"), new RegExp(`^${shown("absolute-pressure", answer.dewPressure, "bar", "table")} bar`));
  assert.match(await figure(page, "liquid-density"), new RegExp(`^${shown("density", answer.liquidDensity, "kg/m³", "table")} kg/m³`));
  assert.notEqual(await figure(page, "bubble"), atSeaLevel);
  assert.equal(await page.title(), "Saturation · Coldwright");
});

test("a published point: R-410A at 1608.6 kPa has its dew at 24 °C", async (t) => {
  const site = await openSite(t);
  // US Department of Energy, EnergyPlus property data, after Lemmon (2003); 101.325 kPa of air.
  const page = await site.open("#/saturation?refrigerant=R-410A&gaugePressure=1507.275 kPa");
  assert.equal(await figure(page, "dew"), "24.0 °C");
});

test("a temperature gives two pressures, takes the place of the gauge reading, and a pure fluid has one", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/saturation?refrigerant=R-454B&gaugePressure=8 bar");
  await typed(page, "temperature").fill("40");
  assert.equal(await typed(page, "gaugePressure").inputValue(), "");
  const answer = asked("saturation", { refrigerant: "R-454B", temperature: "40 °C" });
  assert.equal(await figure(page, "bubble"), `${shown("gauge-pressure", answer.bubbleGaugePressure, "bar")} bar`);
  assert.equal(await figure(page, "dew"), `${shown("gauge-pressure", answer.dewGaugePressure, "bar")} bar`);
  // R-32 with R-1234yf: about 1 % in pressure, 0.4 K.
  assert.match(await figure(page, "uncertainty"), /0\.4 K.*1 %/);
  await page.locator('select[name="refrigerant"]').selectOption("R-32");
  assert.match(await figure(page, "both"), /bar$/);
  assert.equal(await page.locator('[data-figure="dew"], [data-figure="glide"]').count(), 0);
});

test("the mark moves by keys and by drag, and writes the text of the field", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/saturation?refrigerant=R-410A&gaugePressure=8.3 bar");
  const before = await figure(page, "dew");
  await mark(page).focus();
  await page.keyboard.press("ArrowUp");
  assert.equal(await typed(page, "gaugePressure").inputValue(), "8.4 bar");
  assert.notEqual(await figure(page, "dew"), before);
  assert.match(await mark(page).getAttribute("aria-valuetext"), /^8\.4.bar: bubble .*, dew /);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  assert.equal(await typed(page, "gaugePressure").inputValue(), "8.2 bar");
  await eventually(() => page.url(), /gaugePressure=8\.2%20bar/);
  for (const end of ["End", "Home"]) {
    await page.keyboard.press(end);
    assert.match(await figure(page, "dew"), /\d/, "both ends of the curve have figures");
  }
  await typed(page, "gaugePressure").fill("10 bar");
  await mark(page).scrollIntoViewIfNeeded();
  const box = await mark(page).boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 40, y - 50, { steps: 5 });
  await page.mouse.up();
  const dragged = Number.parseFloat(await typed(page, "gaugePressure").inputValue());
  assert.ok(dragged > 12 && dragged < 30, `dragged up to ${dragged} bar`);
  await page.mouse.move(x, y);
  assert.equal(Number.parseFloat(await typed(page, "gaugePressure").inputValue()), dragged, "let go of, it stays");
});

test("a finger drags the mark, and the page does not scroll away under it", only.chromium("no test can move a finger in Firefox"), async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/saturation?refrigerant=R-410A&gaugePressure=10 bar");
  await mark(page).scrollIntoViewIfNeeded();
  const box = await mark(page).boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const finger = await site.context.newCDPSession(page);
  const touch = (type, points) => finger.send("Input.dispatchTouchEvent", { type, touchPoints: points });
  const scrolled = await page.evaluate(() => scrollY);
  await touch("touchStart", [{ x, y }]);
  for (const part of [1, 2, 3, 4]) await touch("touchMove", [{ x: x + 8 * part, y: y - 12 * part }]);
  await touch("touchEnd", []);
  const dragged = Number.parseFloat(await typed(page, "gaugePressure").inputValue());
  assert.ok(dragged > 12 && dragged < 30, `dragged up to ${dragged} bar`);
  assert.equal(await page.evaluate(() => scrollY), scrolled);
});

test("in psi and °F a key moves by one psi or a tenth of a degree", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/saturation?refrigerant=R-32&gaugePressure=120 psi");
  await page.locator('[data-unit="psi"]').click();
  await mark(page).focus();
  await page.keyboard.press("ArrowRight");
  assert.equal(await typed(page, "gaugePressure").inputValue(), "121 psi");
  await page.locator('[data-unit="°F"]').click();
  await typed(page, "temperature").fill("40 °F");
  await mark(page).focus();
  await page.keyboard.press("ArrowLeft");
  assert.equal(await typed(page, "temperature").inputValue(), "39.9 °F");
});

test("the unit beside the field is changed for the figure that stands in it", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/saturation?refrigerant=R-32");
  await typed(page, "gaugePressure").fill("120");
  await page.locator('[data-unit="psi"]').click();
  assert.equal(await typed(page, "gaugePressure").inputValue(), "120 psi");
  const answer = asked("saturation", { refrigerant: "R-32", gaugePressure: "120 psi" });
  assert.equal(await figure(page, "both"), `${shown("temperature", answer.dewTemperature, "°C")} °C`);
});

test("what cannot be used is said beside its field, and no figure stands in its place", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/saturation?refrigerant=R-410A");
  for (const [field, text, told] of [
    ["gaugePressure", "full", /full/],
    ["gaugePressure", "60 bar", /critical/],
    ["temperature", "90 °C", /critical/],
    ["temperature", "-90 °C", /−60 °C/],
    ["temperature", "5 bar", /pressure/],
  ]) {
    await typed(page, field).fill(text);
    const problem = page.locator(`[data-problem-of="${field}"]`);
    assert.match(await problem.innerText(), told);
    assert.equal(await typed(page, field).getAttribute("aria-invalid"), "true");
    assert.ok((await typed(page, field).getAttribute("aria-describedby")).includes(await problem.getAttribute("id")));
    assert.equal(await page.locator('[data-figure="bubble"]').count(), 0);
  }
  const unknown = await site.open("#/saturation?refrigerant=R-999&gaugePressure=8 bar");
  assert.match(await unknown.locator('[data-problem-of="refrigerant"]').innerText(), /R-999.*R-410A/s);
  assert.equal(await unknown.locator('[data-figure="bubble"]').count(), 0);
});

test("the refrigerant is remembered, a link opens with its own and leaves it alone", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/saturation");
  await page.locator('select[name="refrigerant"]').selectOption("R-290");
  const link = await site.open("#/saturation?refrigerant=R-134a&temperature=-10 °C");
  assert.match(await link.locator("h1").innerText(), /R-134a/);
  const later = await site.open("#/saturation");
  assert.match(await later.locator("h1").innerText(), /R-290/);
  await eventually(() => later.url(), /refrigerant=R-290/);
});

test("the table around the reading stands on paper alone, on one page", only.inColours("dark"), async (t) => {
  const site = await openSite(t, { colorScheme: "dark" });
  const page = await site.open("#/saturation?refrigerant=R-454B&gaugePressure=8 bar&altitude=1500 m&tableRows=41");
  const table = page.locator(".saturation-table");
  assert.equal(await table.locator("tbody tr").count(), 41);
  const { table: rows } = asked("saturation", { refrigerant: "R-454B", gaugePressure: "8 bar", altitude: "1500 m", tableRows: "41", tableStep: "1 K" });
  const first = (await table.locator("tbody tr").first().innerText()).split(/\s+/);
  assert.deepEqual(first, [
    shown("temperature", rows[0].dewTemperature, "°C"),
    shown("gauge-pressure", rows[0].bubbleGaugePressure, "bar", "table"),
    shown("gauge-pressure", rows[0].dewGaugePressure, "bar", "table"),
  ]);
  await page.emulateMedia({ media: "print" });
  assert.equal(await page.locator("h1, nav, .plot").filter({ visible: true }).count(), 0);
  assert.match(await table.locator("caption").innerText(), /R-454B[^]*1500 m[^]*0\.4\sK/);
  for (const format of ["A4", "Letter"]) {
    const paper = (await page.pdf({ format })).toString("latin1");
    assert.equal(paper.match(/\/Type\s*\/Page\b/g).length, 1, format);
  }
});

test("the converter says what a pressure is for a refrigerant", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/convert?text=120 psi");
  assert.equal(await page.locator('[data-reading="saturation"]').count(), 0);
  await page.locator('select[name="refrigerant"]').selectOption("R-454B");
  const { saturation } = asked("convert", { text: "120 psi", refrigerant: "R-454B" });
  assert.match(await figure(page, "bubble"), new RegExp(`^${shown("temperature", saturation.bubbleTemperature, "°C")} °C`));
  await page.locator(".onward").click();
  assert.equal(await typed(page, "gaugePressure").inputValue(), "120 psi");
  await goBack(page, /^#\/saturation\?.*gaugePressure=/);
  await typed(page, "text").fill("40 °C");
  const { saturation: warm } = asked("convert", { text: "40 °C", refrigerant: "R-454B" });
  assert.match(await figure(page, "dew"), new RegExp(`^${shown("gauge-pressure", warm.dewGaugePressure, "bar")} bar`));
  await page.locator('select[name="refrigerant"]').selectOption("R-32");
  // Tillner-Roth and Yokozeki (1997), through the reference library: 2478.3 kPa, and 101.325 kPa of air.
  assert.match(await figure(page, "both"), /^23\.8 bar/);
  await page.locator('select[name="refrigerant"]').selectOption("");
  assert.equal(await page.locator('[data-reading="saturation"]').count(), 0);
  await page.locator('select[name="refrigerant"]').selectOption("R-454B");
  await typed(page, "text").fill("90 °C");
  assert.match(await page.locator('[data-reading="saturation"] .problem').innerText(), /critical/);
});

test("two facts give the moist air, a third is too many", async (t) => {
  const site = await openSite(t);
  // ASHRAE Fundamentals (2017), chapter 1, example 1: 40 °C dry, 20 °C wet: 6.5 g/kg, dew point 7 °C, 14 %.
  const page = await site.open("#/moist-air?dryBulb=40 °C");
  assert.equal(await page.locator("[data-figure]").count(), 0);
  await typed(page, "wetBulb").fill("20");
  assert.match(await figure(page, "humidityRatio"), /^0\.6[45]\d* %/);
  assert.match(await figure(page, "relativeHumidity"), /^1[34]/);
  assert.match(await figure(page, "dewPoint"), /^7\.\d °C/);
  await typed(page, "dewPoint").fill("7 °C");
  assert.match(await page.locator(".problem[data-problem-of]").first().innerText(), /Dry bulb; Wet bulb/);
});

test("500 micron is ice at -24.5 °C, and one atmosphere boils water at 100 °C", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/water");
  await page.getByRole("button", { name: "500 micron" }).click();
  // IAPWS R14-08: 66.66 Pa over ice.
  assert.equal(await figure(page, "water"), "−24.5 °C");
  assert.match(await figure(page, "supercooled"), /^−27\.\d °C$/);
  await typed(page, "absolutePressure").fill("1013.25 mbar");
  assert.equal(await figure(page, "water"), "100.0 °C");
  await typed(page, "temperature").fill("25");
  assert.equal(await typed(page, "absolutePressure").inputValue(), "");
  assert.match(await figure(page, "water"), /^23\s7\d\d micron$/);
});
