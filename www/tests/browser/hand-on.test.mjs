// What is on one screen opens on the other: by a code, a link, a file; and what a browser lacks is said.
import assert from "node:assert/strict";
import { test } from "node:test";
import { breaches } from "./axe.mjs";
import { dimmed, readCode } from "./codes.mjs";
import { only } from "./conditions.mjs";
import { handedPlace, practiceDocument } from "./job-links.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { eventually, figure, openSite, phone, saved, useBrowser, waitUntilKept } from "./site.mjs";

useBrowser();

const panel = (page) => page.locator("dialog.hand-on");
const linkField = (page) => page.locator('textarea[name="handedLink"]');

async function handOn(page) {
  await page.locator('[data-action="hand-on"]').click();
  await panel(page).locator('[data-action="close-hand-on"]').waitFor();
}

/** The code is drawn as wide as the panel once that is open. */
async function codeDrawn(page) {
  await page.waitForFunction((canvas) => canvas.getBoundingClientRect().width > innerWidth / 2, await panel(page).locator("canvas").elementHandle());
}

/** The link of what is on the screen. */
async function linkOf(page) {
  await handOn(page);
  const link = await linkField(page).inputValue();
  await panel(page).locator('[data-action="close-hand-on"]').click();
  await panel(page).waitFor({ state: "detached" });
  return link;
}

/** Another phone that has the page, with choices of its own, and no signal from now on. */
async function otherPhone(t, site, place = "", fill = {}) {
  const context = await site.context.browser().newContext({ viewport: phone });
  context.setDefaultTimeout(120_000);
  t.after(() => context.close());
  const page = await context.newPage();
  await page.goto(site.address + place);
  for (const [field, text] of Object.entries(fill)) await page.locator(`input[name="${field}"]`).fill(text);
  await waitUntilKept(page);
  await context.setOffline(true);
  return page;
}

/** What the clipboard holds, as pasted elsewhere. */
async function pasted(site) {
  const page = await site.context.newPage();
  await page.setContent("<textarea autofocus></textarea>");
  const field = page.locator("textarea");
  await field.press("ControlOrMeta+V");
  await eventually(() => field.inputValue(), /./);
  const text = await field.inputValue();
  await page.close();
  return text;
}

async function open(page, link) {
  await page.goto("about:blank");
  await page.goto(link);
  await page.locator("h1").waitFor({ state: "attached" });
}

/** All that the screen says, once `known` is a part of it. */
async function told(page, known) {
  const text = async () => (await page.locator("main").innerText()).replace(/\s+/g, " ");
  await eventually(text, known);
  return text();
}

/** A job on this phone, as a file brings it. */
async function openJob(site, document) {
  const page = await site.open("#/jobs");
  await page.locator('input[name="jobFile"]').setInputFiles({ name: "job.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(document)) });
  await page.locator('[data-action="take-file"]').click();
  await page.locator('[data-action="take-file"]').waitFor({ state: "detached" });
  await page.goto(`${site.address}#/job?id=${document.id}`);
  await page.locator(".job .circuit-view").waitFor();
  return page;
}

/** Stands in for what a browser may have or lack, before the page runs. */
const without = (...names) => `for (const name of ${JSON.stringify(names)}) { delete Navigator.prototype[name]; }`;

test("a copied bench link gives the same figures on a phone with no signal and another wrench", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/?tube=3/8");
  await page.locator('input[name="wrenchLength"]').fill("280 mm");
  await page.locator('input[name="adapterLength"]').fill("40");
  const [torque, setting] = [await figure(page, "torque"), await figure(page, "setting")];
  const other = await otherPhone(t, site, "#/?tube=3/4", { wrenchLength: "500 mm", adapterLength: "90 mm", adapterAngle: "60" });
  await handOn(page);
  await page.locator('[data-action="copy-link"]').click();
  await eventually(() => panel(page).innerText(), /Copied/);
  const link = await pasted(site);
  // Readable by people, and a bare number has its unit.
  assert.match(link, /#\/torque\?tube=3\/8&wrenchLength=280%20mm&adapterLength=40%20mm/);
  await open(other, link);
  assert.equal(await figure(other, "torque"), torque);
  assert.equal(await figure(other, "setting"), setting);
  assert.equal(await other.locator('input[name="adapterAngle"]').inputValue(), "", "their own angle stays out of it");
  await open(other, `${site.address}#/`);
  assert.equal(await other.locator('input[name="wrenchLength"]').inputValue(), "500 mm", "what they chose is as before");
});

test("every kind of calculation opens elsewhere with the same figures", async (t) => {
  const site = await openSite(t);
  const other = await otherPhone(t, site, "", { wrenchLength: "500 mm" });
  for (const [place, known] of [
    ["#/tubes?designPressure=40 bar", /14\.10/],
    ["#/convert?text=120 psi&refrigerant=R-454B&altitude=1500 m", /8\.27/], // 120 × 6894.757 Pa (NIST SP 811 B.8)
    ["#/saturation?refrigerant=R-407C&gaugePressure=120 psi", /bubble 16\.1/],
    ["#/moist-air?dryBulb=24 °C&wetBulb=17 °C", /49\.6 ?%/],
    ["#/vacuum-hold?time1=0 min&pressure1=300 micron&time2=2 min&pressure2=420 micron&time3=4 min&pressure3=540 micron&time4=6 min&pressure4=660 micron", /after 6 min/],
    ["#/charge?refrigerant=R-32&plateCharge=0.95 kg&prechargedLength=7.5 m&length=18 m&plateAdder=20 g/m", /1\.160/], // 950 g + 10.5 m × 20 g/m
    ["#/insulation?tube=5/8&lineTemperature=4 °C&dryBulb=29 °C&relativeHumidity=78 %25&thickness=13 mm", /13\.8/],
  ]) {
    const page = await site.open(place);
    const expected = await told(page, known);
    const link = await linkOf(page);
    await open(other, link);
    assert.equal(await told(other, known), expected, link);
    assert.equal(await linkOf(other), link, "handed on further it is the same");
    await page.close();
  }
});

test("with the working unfolded is one tap, and the code changes with the link", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/?tube=3/8");
  await handOn(page);
  assert.doesNotMatch(await linkField(page).inputValue(), /learn/);
  await panel(page).locator('label:has(input[name="learn"])').click();
  await eventually(() => linkField(page).inputValue(), /[?&]learn=yes(&|$)/);
  await codeDrawn(page);
  assert.equal(await readCode(await page.screenshot()), await linkField(page).inputValue());
});

for (const { label, colorScheme = "light", ...options } of [
  { label: "by day" },
  { label: "in the dark", colorScheme: "dark" },
  { label: "with 2.625 pixels to a point", deviceScaleFactor: 2.625 },
  { label: "at 320 px", viewport: { width: 320, height: 640 } },
]) {
  test(`the code of a calculation and of a job is read off the screen ${label}, also at low contrast`, only.inColours(colorScheme), async (t) => {
    const site = await openSite(t, { colorScheme, ...options });
    for (const page of [await site.open("#/?tube=5/8&measuredCone=19.5 mm"), await openJob(site, await practiceDocument())]) {
      await handOn(page);
      const code = panel(page).locator("canvas");
      await code.scrollIntoViewIfNeeded();
      await codeDrawn(page);
      const { pixels, width, modules } = await code.evaluate((canvas) => ({
        pixels: canvas.width,
        width: canvas.getBoundingClientRect().width * devicePixelRatio,
        modules: Number(canvas.dataset.modules) + 8,
      }));
      assert.ok(Math.abs(width - pixels) < 0.1 && pixels % modules === 0, `${modules} modules on ${pixels} pixels, ${width} on the screen`);
      const link = await linkField(page).inputValue();
      const screen = await page.screenshot();
      assert.equal(await readCode(screen), link);
      assert.equal(await readCode(await dimmed(site.context, screen)), link);
      await panel(page).locator('[data-action="code"]').click();
      await panel(page).locator(".link-code.alone").waitFor();
      assert.equal(await readCode(await page.screenshot()), link);
      await page.keyboard.press("Escape");
      await panel(page).locator(".link-code:not(.alone)").waitFor();
      await page.close();
    }
  });
}

test("a job goes by its code to a second phone without a signal, where it is looked at and kept", async (t) => {
  const site = await openSite(t);
  const document = await practiceDocument();
  const page = await openJob(site, document);
  const other = await otherPhone(t, site);
  await handOn(page);
  await open(other, await readCode(await page.screenshot()));
  await other.locator(".job-record").waitFor();
  await eventually(() => other.locator("main").innerText(), /tight it would show/);
  await other.locator('[data-action="keep-handed"]').click();
  await other.locator(".kept-state[data-unsaved='0']").waitFor();
  assert.match(other.url(), new RegExp(`#/job\\?id=${document.id}$`));
  // The link of the job that came is the link that it came by.
  assert.equal(await linkOf(other), await linkField(page).inputValue());
});

test("a job too large for a link is said to be, with its length, and goes as a file", async (t) => {
  const site = await openSite(t);
  await site.context.addInitScript(() => {
    navigator.canShare = () => true;
    navigator.share = async ({ files }) => void (window.shared = { name: files[0].name, type: files[0].type, text: await files[0].text() });
  });
  const practice = await practiceDocument();
  const notes = Array.from({ length: 60 }, (_, index) => ({ id: `long-note-${index}`, stage: "plan", text: `Cellar wall ${index * 7919} behind crate ${index * 104729}, drilled ${index * 31} mm low` }));
  const document = { ...practice, notes, photos: [] };
  const page = await openJob(site, document);
  await handOn(page);
  await eventually(() => panel(page).innerText(), /\d[\d,]{3,} characters are more than a link may have/);
  assert.equal(await panel(page).locator("canvas, textarea").count(), 0);
  await panel(page).locator('[data-action="share-job-file"]').click();
  await page.waitForFunction(() => window.shared !== undefined);
  const { name, type, text } = await page.evaluate(() => window.shared);
  assert.match(name, /\.txt$/);
  assert.equal(type, "text/plain");
  assert.match((await saved(page, "save-job-file")).name, /\.json$/);
  const other = await openSite(t);
  const list = await other.open("#/jobs");
  await list.locator('input[name="jobFile"]').setInputFiles({ name, mimeType: type, buffer: Buffer.from(text) });
  await list.locator('[data-action="take-file"]').click();
  await eventually(() => list.locator(".job-rows").innerText(), /mill house/);
});

test("photos stay behind, and a calculation too long for a camera has no code", async (t) => {
  const site = await openSite(t);
  const document = { ...(await practiceDocument()), photos: [{ id: "photo-1", caption: "Gas port" }, { id: "photo-2" }] };
  const page = await openJob(site, document);
  await handOn(page);
  await panel(page).locator('[data-photos-left-out="2"]').waitFor();
  const readings = Array.from({ length: 40 }, (_, index) => `time${index + 1}=${index} h&gaugePressure${index + 1}=43.${index} bar&temperature${index + 1}=21.${index} °C`).join("&");
  const long = await site.open(`#/standing-test?${readings}`);
  await handOn(long);
  await panel(long).locator('[data-code="too-large"]').waitFor();
  const link = await linkField(long).inputValue();
  assert.ok(link.length > 1628, `${link.length}`);
  assert.match(await panel(long).innerText(), new RegExp(`No code: ${link.length.toLocaleString("en")}`));
});

test("without clipboard, sharing and wake lock the link is there to be copied, and the page says so", async (t) => {
  const site = await openSite(t);
  await site.context.addInitScript(without("clipboard", "share", "canShare", "wakeLock"));
  const page = await site.open("#/?tube=3/8");
  await handOn(page);
  assert.match(await panel(page).innerText(), /may go dark.*no way to send a link/s);
  await codeDrawn(page);
  assert.equal(await readCode(await page.screenshot()), await linkField(page).inputValue());
  assert.equal(await panel(page).locator('[data-action="share-link"]').count(), 0);
  await page.locator('[data-action="copy-link"]').click();
  await eventually(() => panel(page).innerText(), /Copied/);
  await page.evaluate(() => (document.execCommand = () => false));
  await page.locator('[data-action="copy-link"]').click();
  await eventually(() => panel(page).innerText(), /copy it by hand/);
  const marked = await linkField(page).evaluate((field) => field.value.slice(field.selectionStart, field.selectionEnd));
  assert.equal(marked, await linkField(page).inputValue());
});

test("the system's own sharing gets the link; gone back from it nothing is said, refused it is", async (t) => {
  const site = await openSite(t);
  await site.context.addInitScript(() => {
    navigator.canShare = () => true;
    navigator.share = (what) => {
      window.shared = what.url;
      return window.refusal === undefined ? Promise.resolve() : Promise.reject(new DOMException("", window.refusal));
    };
  });
  const page = await site.open("#/?tube=3/8");
  await handOn(page);
  const share = panel(page).locator('[data-action="share-link"]');
  await page.evaluate(() => (window.refusal = "NotAllowedError"));
  await share.click();
  await eventually(() => panel(page).innerText(), /did not take it/);
  await page.evaluate(() => (window.refusal = "AbortError"));
  await share.click();
  await panel(page).getByText("did not take it").waitFor({ state: "detached" });
  assert.equal(await page.evaluate(() => window.shared), await linkField(page).inputValue());
});

test("what is typed in a job as markup travels as text", async (t) => {
  const site = await openSite(t);
  const markup = '<img src=x onerror="window.hurt=1">';
  const page = await openJob(site, { version: 1, id: "markup000001", name: markup, site: markup });
  await handOn(page);
  assert.equal(await panel(page).locator(".handed-name").innerText(), markup);
  assert.equal(await panel(page).locator("img").count(), 0);
  const opened = await site.open(new URL(await readCode(await page.screenshot())).hash);
  await opened.locator(".job-record").waitFor();
  assert.equal(await opened.locator("h1").innerText(), markup);
  assert.equal(await opened.evaluate(() => window.hurt), undefined);
});

for (const { label, colorScheme = "light", width = 360 } of [{ label: "by day" }, { label: "in the dark", colorScheme: "dark" }, { label: "at 320 px", width: 320 }]) {
  test(`the panel breaks no rule of accessibility and is readable with large text ${label}`, only.inColours(colorScheme), async (t) => {
    const site = await openSite(t, { colorScheme, viewport: { width, height: 740 } });
    for (const page of [await site.open("#/?tube=5/8"), await openJob(site, await practiceDocument())]) {
      await handOn(page);
      assert.deepEqual(await breaches(page), []);
      await page.evaluate(() => {
        // What lies beneath has tests of its own.
        for (const part of document.querySelectorAll("main, footer, header > :not(dialog)")) part.style.display = "none";
      });
      assert.deepEqual(await page.evaluate(smallTargets), []);
      assert.deepEqual(await page.evaluate(unreadableTexts), []);
      await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
      assert.deepEqual(await page.evaluate(unreadableTexts), []);
      await page.close();
    }
  });
}
