// From the valves to the record: what must be shown first, the scale, photos, and the record on paper and as files.
import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import { promisify } from "node:util";
import { breaches } from "./axe.mjs";
import { isOneFile } from "./conditions.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { eventually, figure, openAll, openSite, printed, saved, temporaryDirectory, useBrowser } from "./site.mjs";

useBrowser();

const run = promisify(execFile);
const practice = JSON.parse(await readFile(new URL("../../locales/en-practice-job.json", import.meta.url), "utf8"));

/** A job on the screen, at its stage. */
async function openJob(t, { start, stage, ...options }) {
  const site = await openSite(t, options);
  const page = await site.open("#/jobs");
  await page.locator(`[data-action="${start}"]:not([disabled])`).click();
  await page.locator(`.stage-list [data-stage="${stage}"] a`).click();
  await page.locator(`main.stage.${stage}`).waitFor();
  return { site, page };
}

const practiceAt = (t, stage, options) => openJob(t, { start: "practice-job", stage, ...options });

/** Goes to another stage of the open job. */
async function goToStage(page, stage) {
  await page.evaluate((next) => (location.hash = location.hash.replace(/stage=[\w-]+/, `stage=${next}`)), stage);
  await page.locator(`main.stage.${stage}`).waitFor();
}

async function waitUntilWritten(page) {
  await page.locator('.kept-state[data-unsaved="0"]').waitFor();
}

/** A picture of this size, as a file to choose. */
async function picture(page, width, height) {
  const bytes = await page.evaluate(
    async ([width, height]) => {
      const canvas = Object.assign(document.createElement("canvas"), { width, height });
      const context = canvas.getContext("2d");
      context.fillStyle = "teal";
      context.fillRect(0, 0, width, height / 2);
      const blob = await new Promise((done) => canvas.toBlob(done, "image/png"));
      return [...new Uint8Array(await blob.arrayBuffer())];
    },
    [width, height],
  );
  return { name: "gauge.png", mimeType: "image/png", buffer: Buffer.from(bytes) };
}

async function addPhoto(page, caption) {
  await page.locator('input[name="photo-choose"]').setInputFiles(await picture(page, 2400, 1200));
  await page.locator(".photos figure img").waitFor();
  await page.locator('.photos figure input[name$=".caption"]').fill(caption);
}

const widthOf = (page) => page.locator("figure[data-photo] img").evaluate(async (image) => {
  await image.decode();
  return image.naturalWidth;
});

/** The pages of a PDF as texts. */
async function printedPages(t, page, format) {
  const file = join(await temporaryDirectory(t), "record.pdf");
  await writeFile(file, await printed(page, format));
  const { stdout } = await run("pdftotext", ["-layout", file, "-"], { maxBuffer: 1e7 });
  return stdout.split("\f").slice(0, -1);
}

const bare = (text) => text.replace(/\s+/g, "");

/** What stands on the screen of the record and has a figure in it, the drawings aside. */
function figuresOnScreen(page) {
  return page.locator(".job-record").evaluate((record) => {
    const copy = record.cloneNode(true);
    for (const drawing of copy.querySelectorAll("svg, .on-screen, .on-paper, figcaption, .mark-key")) drawing.remove();
    for (const part of copy.querySelectorAll("*")) part.append(" ");
    return [...new Set(copy.textContent.split(/\s+/).filter((word) => /\d/.test(word)))];
  });
}

for (const format of ["A4", "Letter"]) {
  test(`the practice job prints on one page of ${format}, with every figure of its record`, async (t) => {
    const { page } = await practiceAt(t, "record");
    const figures = await figuresOnScreen(page);
    assert.ok(figures.length > 100, `${figures.length} figures`);
    const pages = await printedPages(t, page, format);
    assert.equal(pages.length, 1);
    const printed = bare(pages[0]);
    assert.deepEqual(figures.filter((word) => !printed.includes(bare(word))), []);
    assert.match(pages[0], /Left open or wrong/);
    assert.match(pages[0], /No substitute/);
    assert.ok(printed.includes("1/1"), "the page is numbered");
  });
}

test("photos are printed on a second page", async (t) => {
  const { page } = await practiceAt(t, "release-and-charge");
  await addPhoto(page, "The scale at the end");
  await goToStage(page, "record");
  assert.equal(await widthOf(page), 1600);
  const pages = await printedPages(t, page, "A4");
  assert.equal(pages.length, 2);
  assert.doesNotMatch(pages[0], /The scale at the end/);
  assert.match(pages[1], /The scale at the end/);
});

test("a photo is scaled down, captioned, there after a reload, and can be taken out and brought back", async (t) => {
  const { page } = await practiceAt(t, "plan");
  await page.locator('input[name="photo-choose"]').setInputFiles({ name: "notes.txt", mimeType: "text/plain", buffer: Buffer.from("no picture") });
  await page.getByText("no picture that can be read: notes.txt").waitFor();
  await addPhoto(page, "The plate");
  assert.equal(await widthOf(page), 1600);
  await waitUntilWritten(page);
  await page.reload();
  await page.getByRole("img", { name: "The plate" }).waitFor();
  assert.equal(await widthOf(page), 1600);
  await page.locator('[data-action="take-out-photo"]').click();
  await page.locator("figure[data-photo]").waitFor({ state: "detached" });
  await page.locator('[data-action="undo"]').click();
  await page.getByRole("img", { name: "The plate" }).waitFor();
});

/** Rows of a table as RFC 4180 has them, by the names in its first row. */
function rowsOf(text) {
  const cells = /("(?:[^"]|"")*"|[^",\r\n]*)(,|\r\n)/gy;
  const rows = [[]];
  for (const [, cell, end] of text.matchAll(cells)) {
    rows.at(-1).push(cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell);
    if (end === "\r\n") rows.push([]);
  }
  const [head, ...body] = rows.slice(0, -1);
  return body.map((row) => {
    assert.equal(row.length, head.length, row.join());
    return Object.fromEntries(head.map((name, place) => [name, row[place]]));
  });
}

test("readings and joints are saved as tables, the job as its document", async (t) => {
  const { site, page } = await practiceAt(t, "record");
  const readings = await saved(page, "save-readings");
  assert.match(readings.name, /\.csv$/);
  const rows = rowsOf(readings.text);
  assert.equal(rows.length, practice.pressureTest.readings.length + practice.evacuation.readings.length);
  const [first] = rows;
  assert.deepEqual([first.time, first.gaugePressure_Pa, first.tubeTemperature_K, first.holdBegins], ["2026-03-02T09:40:00Z", "4610000", "294.15", "true"]);
  const last = rows.at(-1);
  assert.equal(last.time, "2026-03-03T11:28:00Z");
  // 254 µm of mercury at 133.322 Pa a millimetre.
  assert.ok(Math.abs(Number(last.absolutePressure_Pa) - 33.864) < 0.001, last.absolutePressure_Pa);

  const joints = rowsOf((await saved(page, "save-joints")).text);
  assert.equal(joints.length, 9);
  assert.equal(joints[1].madeAnewBecause, "Cone too narrow: too little tube above the bar");
  assert.deepEqual([joints[5]["torqueAtNut_N.m"], joints[5].torqueVerdict], ["46", "out-of-band"]);

  const job = await saved(page, "save-json");
  assert.match(job.name, /\.json$/);
  const document = JSON.parse(job.text);
  assert.deepEqual(document.pressureTest.readings, practice.pressureTest.readings);
  assert.deepEqual(document.evacuation.readings, practice.evacuation.readings);
  const published = page.locator(".take-along a");
  if (isOneFile) return assert.equal(await published.count(), 0, "a file has no schema beside it");
  const address = await published.getAttribute("href");
  assert.equal(address, `${site.address}job.schema.json`);
  const schema = await (await page.request.get(address)).json();
  const described = Object.keys(schema.$defs.JobInput.properties);
  assert.deepEqual(Object.keys(document).filter((member) => !described.includes(member)), []);
});

test("a valve opened before anything is shown is loud, and one tap takes it back", async (t) => {
  const { page } = await openJob(t, { start: "new-job", stage: "release-and-charge" });
  await page.locator(".evidence .loud").waitFor();
  assert.equal(await page.locator('.evidence [data-shown="false"]').count(), 2);
  await page.locator('[data-action="open-gas-valve"]').click();
  for (const rule of ["release-before-tight", "release-before-dry", "gas-valve-first"]) await page.locator(`.alarm[data-rule="${rule}"]`).waitFor();
  await page.locator('[data-action="undo"]').click();
  await page.locator(".alarm").first().waitFor({ state: "detached" });
  await page.locator('[data-action="redo"]').click();
  await page.locator('[data-done="open-gas-valve"]').waitFor();
  await page.locator('[data-action="open-gas-valve-not"]').click();
  await page.locator(".alarm").first().waitFor({ state: "detached" });
  await page.locator('[data-action="open-gas-valve"]').waitFor();
});

test("liquid before gas raises no alarm of its own; what was not shown before it does", async (t) => {
  const { page } = await practiceAt(t, "release-and-charge");
  assert.deepEqual(await page.locator(".alarm").evaluateAll((alarms) => alarms.map(({ dataset }) => dataset.rule)), ["release-before-look"]);
  assert.equal(await page.locator('.evidence [data-evidence="dry"]').getAttribute("data-shown"), "true");
});

test("the scale is followed: what remains, the mark to stop at, and too much", async (t) => {
  const { page } = await practiceAt(t, "release-and-charge");
  const now = page.locator('input[name="job:release.charge.cylinderNow"]');
  await now.fill("7.39 kg");
  await eventually(() => figure(page, "remaining"), /^0\.060 kg/);
  assert.match(await figure(page, "stopMark"), /^7\.330 kg/);
  const verdict = () => page.locator(".scale-desk .verdict").getAttribute("data-verdict");
  assert.equal(await verdict(), "open");
  await now.fill("7.33 kg");
  await eventually(verdict, /in-band/);
  await now.fill("7.20 kg");
  await eventually(verdict, /out-of-band/);
});

test("the pressure after release stands on a dimension line between what it should be", async (t) => {
  const { page } = await practiceAt(t, "release-and-charge");
  const verdict = () => page.locator(".after-release .verdict").getAttribute("data-verdict");
  const gauge = page.locator('input[name="job:release.gaugePressure"]');
  assert.equal(await verdict(), "in-band");
  await gauge.fill("6 bar");
  await eventually(verdict, /out-of-band/);
  await page.getByText("Too low: a valve is not open").waitFor();
  await gauge.fill("");
  await eventually(() => page.locator('[data-figure="expectedLow"]').count().then(String), /1/);
});

test("the check of the running unit has a moment, figures and a verdict", async (t) => {
  const { page } = await practiceAt(t, "run-check");
  assert.match(await figure(page, "superheat"), /^5\.5 K/);
  await page.locator('[data-done="run-check-read"]').waitFor();
  // Little liquid in the condenser and much superheat: what an undercharged unit shows.
  await page.locator('input[name="job:runCheck.readings.liquidLineTemperature"]').fill("40 °C");
  await page.locator('input[name="job:runCheck.readings.suctionLineTemperature"]').fill("22 °C");
  await eventually(() => page.locator('[data-check="subcooling"] .verdict').getAttribute("data-verdict"), /out-of-band/);
  await page.locator("[data-cause]").first().waitFor();
});

test("a name under the record is a line to sign", async (t) => {
  const { page } = await practiceAt(t, "record");
  await page.locator('[data-action="add-name"]').click();
  await page.locator('input[name$=".name"]').fill("A. Rowan");
  await page.locator('.signatures p:has-text("A. Rowan, done by")').waitFor();
  assert.equal(await page.locator('[data-open-stage="record"]').count(), 0);
});

for (const stage of ["release-and-charge", "run-check", "record"]) {
  test(`${stage} breaks no rule of accessibility and is readable with large text`, async (t) => {
    const { page } = await practiceAt(t, stage);
    await openAll(page);
    assert.deepEqual(await breaches(page), []);
    assert.deepEqual(await page.evaluate(smallTargets), []);
    await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
    assert.deepEqual(await page.evaluate(unreadableTexts), []);
  });
}
