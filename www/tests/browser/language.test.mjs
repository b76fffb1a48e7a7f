// The page in another language: chosen by the browser, a link or the person, changed while it is open, and used for the main tasks.
import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import { promisify } from "node:util";
import { breaches } from "./axe.mjs";
import { eventually, figure, openSite, temporaryDirectory, useBrowser, waitUntilKept } from "./site.mjs";

useBrowser();

const typed = (page, field) => page.locator(`input[name="${field}"]`);
const spoken = (page) => page.evaluate(() => document.documentElement.lang);
const chosen = (page, word) => page.locator(`label:has(input[name="language"][value="${word}"])`).click();

for (const [locale, language, title, cone] of [
  ["es-ES", "es", "Banco · Coldwright", "19,3–19,7"],
  ["es-AR", "es", "Banco · Coldwright", "19,3–19,7"],
  ["es-MX", "es", "Banco · Coldwright", "19.3–19.7"], // Mexico writes a decimal point (CLDR, es-MX).
  ["en-GB", "en", "Bench · Coldwright", "19.3–19.7"],
  ["fr-FR", "en", "Bench · Coldwright", "19.3–19.7"],
]) {
  test(`a browser of ${locale} is spoken to in ${language}`, async (t) => {
    const site = await openSite(t, { locale });
    const page = await site.open();
    assert.equal(await spoken(page), language);
    assert.equal(await page.title(), title);
    assert.ok((await figure(page, "cone")).startsWith(cone), await figure(page, "cone"));
  });
}

test("only the sentences of the spoken language are on the way to the first figures", async (t) => {
  const site = await openSite(t, { locale: "es-ES" });
  const page = await site.open();
  const fetched = await page.evaluate(() => performance.getEntriesByType("resource").map(({ name }) => name.split("/").pop()));
  assert.equal(fetched.filter((name) => /^es-[A-Z0-9]{8}\.js$/.test(name)).length, 1);
  assert.deepEqual(fetched.filter((name) => /^en-/.test(name) && !/^en-(cards|job|why|terms|hand-on)-.*\.js$/.test(name)), []);
});

test("a torque and a cone with a decimal comma", async (t) => {
  const site = await openSite(t, { locale: "es-ES" });
  const page = await site.open();
  await page.locator('[data-tube="5/8"]').click();
  await page.getByText("Apriete una tuerca de abocardado de 5/8 a").waitFor();
  assert.match(await figure(page, "torque"), /68–77/);
  for (const [text, verdict, advice] of [["19,5", "in-band", /Úselo/], ["18,9 mm", "out-of-band", /más tubo sobre la barra/]]) {
    await typed(page, "measuredCone").fill(text);
    await page.locator(`[data-verdict="${verdict}"]`).first().waitFor();
    assert.match(await page.locator("[data-advice]").innerText(), advice);
  }
  assert.deepEqual(await breaches(page), []);
});

test("figures are read and written with a comma, and what could be misread says so", async (t) => {
  const site = await openSite(t, { locale: "es-ES" });
  const page = await site.open("#/convert");
  const row = (reading, unit) => page.locator(`[data-reading="${reading}"] [data-unit-row="${unit}"]`);
  await typed(page, "text").fill("12,5 bar");
  await row("gauge-pressure", "kPa").getByText(/1250/).waitFor();
  await typed(page, "text").fill("25 lb-pie"); // 25 × 1.355818 N·m (NIST SP 811 B.8)
  await row("torque", "N·m").getByText(/33,89/).waitFor();
  await typed(page, "text").fill("5/8 pulg");
  await row("length", "mm").getByText("15,875").waitFor();
  const problem = page.locator("#problem-of-text");
  await typed(page, "text").fill("1,250 kg");
  await problem.getByText("“1,250” puede ser 1.250, con punto decimal, o 1250.").waitFor();
  await typed(page, "text").fill("1.250 micras");
  await problem.getByText("“1.250” se lee con punto decimal, como 1,250.").waitFor();
  assert.equal(await page.locator("[data-problem-of]").count(), 0);
});

test("the language changes over while the page is open, here and in another tab, and nothing typed is lost", async (t) => {
  const site = await openSite(t, { locale: "en-GB" });
  const other = await site.open("#/convert");
  await typed(other, "text").fill("12,5 ba");
  await other.locator("h1").getByText("Convert", { exact: true }).waitFor();
  const page = await site.open("#/settings");
  await typed(page, "wrenchAccuracy").fill("3,5");
  await chosen(page, "es");
  await page.locator("h1").getByText("Ajustes").waitFor();
  await page.getByText("Un trabajo nuevo empieza con").waitFor();
  assert.equal(await spoken(page), "es");
  assert.equal(await page.title(), "Ajustes · Coldwright");
  assert.match(await typed(page, "wrenchAccuracy").inputValue(), /^3,5/);
  await other.locator("h1").getByText("Convertir").waitFor();
  assert.equal(await typed(other, "text").inputValue(), "12,5 ba");
  await page.reload();
  await page.locator("h1").getByText("Ajustes").waitFor();
  await chosen(page, "");
  await page.locator("h1").getByText("Settings").waitFor();
});

test("a link may ask for a language; what the person has chosen stands", async (t) => {
  const site = await openSite(t, { locale: "en-GB" });
  const page = await site.open("?lang=es#/tubes");
  await page.locator("h1").getByText("Tubo de cobre").waitFor();
  await page.goto(`${site.address}#/settings`);
  await chosen(page, "en");
  await page.locator("h1").getByText("Settings").waitFor();
  await page.goto(`${site.address}?lang=es#/tubes`);
  await page.locator("h1").getByText("Copper tube").waitFor();
});

test("every language is on the phone: it changes over with the server gone", async (t) => {
  const site = await openSite(t, { locale: "en-GB" });
  const page = await site.open("#/settings");
  await waitUntilKept(page);
  await site.stop();
  await page.reload();
  await chosen(page, "es");
  await page.locator("h1").getByText("Ajustes").waitFor();
  await page.goto(`${site.address}#/running`);
  await page.locator("h1").getByText("Comprobación en marcha").waitFor();
});

test("without the sentences the page says so in every language", async (t) => {
  const site = await openSite(t, { locale: "es-ES" });
  const page = await site.context.newPage();
  await page.route(/\/es-[A-Z0-9]{8}\.js$/, (route) => route.abort());
  await page.goto(site.address);
  await page.locator("h1").getByText("Coldwright se ha detenido").waitFor();
  await page.getByRole("button", { name: "Abrir de nuevo" }).waitFor();
  site.offences.length = 0; // The crash is told on the console.
});

test("the practice job, its record on paper and its readings as a table", async (t) => {
  const site = await openSite(t, { locale: "es-ES" });
  const page = await site.open("#/jobs");
  await page.locator('[data-action="practice-job"]:enabled').click();
  await page.locator("h1").getByText("Práctica: la casa del molino").waitFor();
  await page.getByText("12,5 m de línea", { exact: true }).first().waitFor();
  await page.locator('.stage-list [data-stage="record"] a').click();
  await page.locator(".job-record").waitFor();
  const file = join(await temporaryDirectory(t), "informe.pdf");
  await writeFile(file, await page.pdf({ format: "A4" }));
  const { stdout } = await promisify(execFile)("pdftotext", ["-layout", file, "-"], { maxBuffer: 1e7 });
  assert.match(stdout, /Informe de la tubería frigorífica/);
  assert.match(stdout, /PRÁCTICA, datos inventados/);
  assert.match(stdout, /Línea de gas, boca exterior/);
  assert.match(stdout, /44,\d+ bar/);
  assert.match(stdout, /mar 2026/);
  assert.doesNotMatch(stdout, /\b(the|of|Joint|Torque|Left open|Found|readings|not entered)\b/);
  // 7.430 kg as entered keeps its point: with a comma it could be thousands.
  assert.doesNotMatch(stdout, /\d\.\d{1,2} (bar|kg|K|mm)\b/);
  const saved = page.waitForEvent("download");
  await page.locator('[data-action="save-readings"]').click();
  const table = await readFile(await (await saved).path(), "utf8");
  // For programs: the same in every language.
  assert.match(table, /^hold,time,sinceFirst_s,gaugePressure_Pa,/);
  assert.match(table, /,294\.\d+,/);
});

test("other figures of a job are entered as they are read", async (t) => {
  const site = await openSite(t, { locale: "es-ES" });
  const page = await site.open("#/charge");
  await page.locator('[data-action="example"]').click();
  assert.deepEqual(await page.locator("[data-problem-of]").allInnerTexts(), []);
  assert.equal(await typed(page, "plateCharge").inputValue(), "0,95 kg");
  await typed(page, "plateCharge").fill("1,05 kg");
  await eventually(() => page.locator("main").innerText(), /1,050/);
});
