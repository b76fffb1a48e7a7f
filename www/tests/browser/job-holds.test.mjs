// The holds of a job: a clock that is right whatever happens to phone and page, readings in two taps, what they say.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { before, test } from "node:test";
import startCore, { calculate } from "../../generated/coldwright.js";
import { breaches } from "./axe.mjs";
import { only } from "./conditions.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { eventually, openAll, openSite, useBrowser } from "./site.mjs";

useBrowser();
before(async () => {
  await startCore({ module_or_path: await readFile(new URL("../../generated/coldwright_bg.wasm", import.meta.url)) });
});

const minute = 60_000;
const hour = 60 * minute;
const begin = Date.parse("2026-11-25T18:00:00Z");

/** A site whose phones' clocks are at `time`, and a new job at a stage of it. */
async function openJob(t, stage, { time = begin, ...options } = {}) {
  const site = await openSite(t, options);
  await site.context.clock.install({ time });
  const page = await site.open("#/jobs");
  await page.locator('[data-action="new-job"]:not([disabled])').click();
  await page.waitForFunction(() => location.hash.startsWith("#/job?"));
  const place = `${await page.evaluate(() => location.hash)}&stage=${stage}`;
  await page.evaluate((hash) => (location.hash = hash), place);
  await page.locator(`main.stage.${stage}`).waitFor();
  return { site, page, place };
}

const next = (page, name) => page.locator(`input[name="next_${name}"]`);
const readNow = (page) => page.locator('[data-action="read-now"]').click();
const verdict = (page) => page.locator(".finding > .verdict").getAttribute("data-verdict");
const doubts = (page) => page.locator("[data-doubt]").count();
const plain = async (locator) => (await locator.textContent()).replace(/\s+/g, " ").trim();

/** Seconds that the clock shows, after it has ticked. */
async function passed(page, clock = "pressureClock") {
  await page.clock.runFor(2100);
  const figure = page.locator(`[data-clock="${clock}"] [data-passed]`);
  const seconds = Number(await figure.getAttribute("data-passed"));
  const [hours, minutes, rest] = (await figure.textContent()).split(":").map(Number);
  assert.equal(3600 * hours + 60 * minutes + rest, seconds, "what is shown is what is meant");
  return seconds;
}

/** A clock in a test goes on while the test works: so long at most. */
async function assertPassed(page, seconds, clock) {
  const found = await passed(page, clock);
  assert.ok(found >= seconds && found < seconds + 1500, `${found} s shown, ${seconds} s meant`);
}

async function readPressure(page, pressure, temperature) {
  const count = await page.locator("[data-reading]").count();
  await next(page, "gaugePressure").fill(pressure);
  await next(page, "temperature").fill(temperature);
  await readNow(page);
  await page.locator(`[data-reading="${count + 1}"]`).waitFor();
}

async function readVacuum(page, micron, valve) {
  const count = await page.locator("[data-reading]").count();
  if (valve !== undefined) await page.locator(`label:has(input[name="next_valvedOff"][value="${valve}"])`).click();
  await next(page, "pressure").fill(`${micron} micron`);
  await readNow(page);
  await page.locator(`[data-reading="${count + 1}"]`).waitFor();
}

/** Closes every window once all of it is on this phone, and opens the place again when the clock shows so much more. */
async function reopen(site, page, place, wait, count) {
  const other = await site.open(place);
  await other.locator(`[data-reading="${count}"]`).waitFor();
  await other.close();
  const time = await page.evaluate(() => Date.now());
  await page.close();
  await site.context.clock.setSystemTime(time + wait);
  const later = await site.open(place);
  await later.locator(`[data-reading="${count}"]`).waitFor();
  return later;
}

test("a reading is two taps: the last value is there, a step, and it is kept with the time", async (t) => {
  const { page } = await openJob(t, "pressure-test");
  assert.equal(await page.locator('[data-action="read-now"]').isDisabled(), true, "nothing to keep yet");
  await readPressure(page, "44.2", "21");
  assert.match(await plain(page.locator('[data-reading="1"] summary')), /44\.2 bar · 21 °C.*The hold begins here/);
  await page.clock.fastForward(2 * hour);
  assert.equal(await next(page, "gaugePressure").inputValue(), "44.2 bar");
  await page.getByRole("button", { name: "Gauge −0.1", exact: true }).click();
  await readNow(page);
  await page.locator('[data-reading="2"]').waitFor();
  assert.match(await plain(page.locator('[data-reading="2"] summary')), /44\.1 bar · 21 °C/);
  await page.getByRole("button", { name: "Tube +0.1", exact: true }).click();
  assert.equal(await next(page, "temperature").inputValue(), "21.1 °C");
  assert.equal(await page.locator('[data-reading="2"] summary').count(), 1);
});

/** How far a part moves on the screen while `act` is done and shown. */
async function moved(part, act, shown) {
  const top = () => part.evaluate((element) => element.getBoundingClientRect().top);
  await part.evaluate((element) => element.scrollIntoView({ block: "center" }));
  const before = await top();
  await act();
  await shown.waitFor();
  await part.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
  return Math.abs((await top()) - before);
}

test("what is tapped stays under the thumb, whatever a reading or the pump brings above it", async (t) => {
  const { site, page, place } = await openJob(t, "pressure-test");
  const take = page.locator('[data-action="read-now"]');
  await next(page, "gaugePressure").fill("44.2");
  await next(page, "temperature").fill("21");
  assert.ok((await moved(take, () => readNow(page), page.locator('[data-clock="pressureClock"]'))) < 1);
  await page.clock.fastForward(hour);
  await next(page, "gaugePressure").fill("44.1");
  assert.ok((await moved(take, () => readNow(page), page.locator('[data-reading="2"]'))) < 1);
  await page.goto(`${site.address}${place.replace("pressure-test", "evacuate")}`);
  const pump = page.locator('[data-action="pump-started"]');
  assert.ok((await moved(pump, () => pump.click(), page.locator('[data-clock="pumpClock"]'))) < 1);
  await page.clock.fastForward(hour);
  await page.locator('label:has(input[name="next_valvedOff"][value="true"])').click();
  await next(page, "pressure").fill("300 micron");
  assert.ok((await moved(take, () => readNow(page), page.locator('[data-clock="vacuumClock"]'))) < 1);
});

test("what was typed for the next reading survives a reload; a reading can be put right, taken out and brought back", async (t) => {
  const { page } = await openJob(t, "pressure-test", { timezoneId: "Europe/Madrid" });
  await readPressure(page, "44.2", "21");
  await page.clock.fastForward(hour);
  await readPressure(page, "44.1", "20");
  await next(page, "gaugePressure").fill("43.9");
  await eventually(() => page.evaluate(() => location.hash), /next_gaugePressure=43\.9/);
  await page.reload();
  await page.locator('[data-reading="2"]').waitFor();
  assert.equal(await next(page, "gaugePressure").inputValue(), "43.9");
  // Its time, by the calendar here, and its figure.
  const second = page.locator('[data-reading="2"]');
  await second.locator("summary").click();
  const time = second.locator('input[type="datetime-local"]');
  assert.match(await time.inputValue(), /^2026-11-25T20:0/);
  await time.fill("2026-11-25T18:30:20");
  // It was before the other one then.
  await eventually(() => plain(page.locator('[data-reading="1"] summary')), /44\.1 bar/);
  const first = page.locator('[data-reading="1"]');
  await first.locator('input[name$=".gaugePressure"]').fill("44.15");
  await eventually(() => plain(first.locator("summary")), /44\.15/);
  await first.locator('input[name$=".gaugePressure"]').fill("full");
  await first.locator('[data-problem-of$=".gaugePressure"]').waitFor();
  await first.locator('input[name$=".gaugePressure"]').fill("44.15 bar");
  await first.locator('[data-action="take-out-reading"]').click();
  await page.locator('[data-reading="2"]').waitFor({ state: "detached" });
  await page.locator('[data-action="undo"]').click();
  await page.locator('[data-reading="2"]').waitFor();
});

test("rows can be pasted: they stand where their time belongs, and what is refused is said", async (t) => {
  const { page } = await openJob(t, "pressure-test", { timezoneId: "Europe/Madrid" });
  await readPressure(page, "43.2", "15");
  await page.locator("details.paste > summary").click();
  await page.locator("details.paste textarea").fill("17:00 44.2 bar 21 °C\n18:00 43.8 18\nwarm");
  await page.locator('[data-action="take-rows"]').click();
  await page.locator('[data-reading="3"]').waitFor();
  assert.match(await plain(page.locator('[data-reading="1"] summary')), /5:00 PM.*44\.2 bar · 21 °C/);
  assert.match(await plain(page.locator('[data-reading="2"] summary')), /43\.8 bar · 18 °C/);
  assert.equal(await page.locator('[data-refused="no-figure"]').count(), 1);
});

test("closed for thirty hours the clock has gone on", async (t) => {
  const { site, page, place } = await openJob(t, "pressure-test");
  await readPressure(page, "44.2", "21");
  await assertPassed(page, 0);
  const later = await reopen(site, page, place, 30 * hour, 1);
  await assertPassed(later, 30 * 3600);
  assert.equal(await doubts(later), 0);
  assert.match(await plain(later.locator("[data-remaining]")), /are over/);
});

test("another time zone moves neither the moments nor the clock", only.chromium("no test can move Firefox to another time zone while it runs"), async (t) => {
  const { site, page } = await openJob(t, "pressure-test");
  const door = await site.context.newCDPSession(page);
  const travel = async (timezoneId) => {
    await door.send("Emulation.setTimezoneOverride", { timezoneId });
    await page.waitForFunction((zone) => Intl.DateTimeFormat().resolvedOptions().timeZone === zone, timezoneId);
  };
  await travel("Europe/Madrid");
  await readPressure(page, "44.2", "21");
  await page.clock.fastForward(hour);
  assert.match(await plain(page.locator('[data-reading="1"] summary')), /7:0\d PM/);
  await travel("Asia/Tokyo");
  await assertPassed(page, 3600);
  await readPressure(page, "44.2", "21");
  assert.match(await plain(page.locator('[data-reading="1"] summary')), /3:0\d AM/, "shown by the clock of the place");
  assert.match(await plain(page.locator('[data-reading="2"] summary')), /4:0\d AM/);
  await assertPassed(page, 3600);
  assert.equal(await doubts(page), 0);
});

test("the night in which summer time ends has its hour more", async (t) => {
  const { site, page, place } = await openJob(t, "pressure-test", { timezoneId: "Europe/Madrid", time: Date.parse("2026-10-24T20:00:00Z") });
  await readPressure(page, "44.2", "21");
  assert.match(await plain(page.locator('[data-reading="1"] summary')), /10:0\d PM/);
  const later = await reopen(site, page, place, 10 * hour, 1);
  // From ten in the evening to seven in the morning.
  await assertPassed(later, 10 * 3600);
  await readPressure(later, "44.2", "21");
  assert.match(await plain(later.locator('[data-reading="2"] summary')), /Oct 25, 2026, 7:0\d AM/);
  assert.equal(await doubts(later), 0);
});

test("a clock that is set back while the job is open is put right, and readings keep their order", async (t) => {
  const { page } = await openJob(t, "pressure-test");
  await readPressure(page, "44.2", "21");
  await page.clock.fastForward(3 * hour);
  await assertPassed(page, 3 * 3600);
  await page.clock.setSystemTime(begin + hour);
  await assertPassed(page, 3 * 3600);
  assert.equal(await doubts(page), 0);
  await readPressure(page, "44.2", "21");
  await page.clock.fastForward(hour);
  await readPressure(page, "44.2", "21");
  await assertPassed(page, 4 * 3600);
  assert.equal(await doubts(page), 0);
  assert.equal(await page.locator(".reading-plot [role=img] .used-dot").count(), 3);
});

test("a clock that jumps ahead while the page is looked at leaves a doubt, said plainly", async (t) => {
  const { page } = await openJob(t, "pressure-test");
  await readPressure(page, "44.2", "21");
  await page.clock.setSystemTime(begin + 12 * hour);
  await assertPassed(page, 0);
  await page.locator('[data-doubt="clock-jumped-ahead"]').waitFor();
});

test("a clock that was set back while the job was closed makes the time doubtful, and no shorter than was seen", async (t) => {
  const { site, page, place } = await openJob(t, "pressure-test");
  await readPressure(page, "44.2", "21");
  await page.clock.fastForward(2 * hour);
  await readPressure(page, "44.2", "21");
  const later = await reopen(site, page, place, -hour, 2);
  await later.locator('[data-doubt="clock-went-back"]').waitFor();
  await assertPassed(later, 2 * 3600);
  assert.match(await plain(later.locator("[data-doubt]")), /set back while the job was closed.*doubtful/);
});

for (const { name, lost, state, word } of [
  { name: "tight", lost: 0, state: "in-band", word: /Tight/ },
  { name: "losing", lost: 2, state: "out-of-band", word: /Losing gas/ },
]) {
  test(`an overnight hold that is ${name} is told from the weather`, async (t) => {
    const { site, page, place } = await openJob(t, "pressure-test");
    await readPressure(page, "44.2", "21");
    const later = await reopen(site, page, place, 26 * hour, 1);
    const readings = [
      { time: "0 h", gaugePressure: "44.2 bar", temperature: "21 °C" },
      { time: "26 h", gaugePressure: "44.2 bar", temperature: "9 °C" },
    ];
    const { answer } = calculate("standing-test", { readings });
    const shown = (answer.hold.expectedGaugePressure / 1e5 - lost).toFixed(1);
    await readPressure(later, shown, "9");
    assert.equal(await verdict(later), state);
    assert.match(await plain(later.locator(".finding > .verdict b")), word);
    assert.equal(await later.locator('[data-figure="expected"]').count(), 1);
    assert.equal(await later.locator(".reading-plot").count(), 1);
  });
}

test("a system that was filled anew begins its hold there, and the readings before count no more", async (t) => {
  const { page } = await openJob(t, "pressure-test");
  await readPressure(page, "44.2", "21");
  await page.clock.fastForward(2 * hour);
  await readPressure(page, "38", "21");
  assert.equal(await verdict(page), "out-of-band");
  await page.clock.fastForward(hour);
  await page.locator('label:has(input[name="next_holdBegins"])').click();
  await readPressure(page, "44", "21");
  assert.equal(await verdict(page), "open");
  await assertPassed(page, 0);
  assert.equal(await page.locator("[data-reading][data-left-out]").count(), 2);
  assert.equal(await page.locator('input[name="next_holdBegins"]').isChecked(), false, "it holds for one reading");
});

test("evacuation: water is found, pumped again, and the hold passes by the plate", async (t) => {
  const { page } = await openJob(t, "evacuate");
  await page.locator('[data-action="pump-started"]').click();
  await page.locator('label:has(input[name="job:evacuation.coresOut"])').click();
  await page.clock.fastForward(30 * minute);
  await assertPassed(page, 1800, "pumpClock");
  await page.locator('label:has(input[name="job:evacuation.hold.passRule"][value="plate"])').click();
  await page.locator('input[name="job:evacuation.hold.passPressure"]').fill("500");
  await page.locator('input[name="job:evacuation.hold.passTime"]').fill("30");
  await page.locator('input[name="job:evacuation.hold.ambientTemperature"]').fill("13");
  await readVacuum(page, 420, "false");
  for (const [wait, micron] of [[2, 650], [3, 1250], [5, 1900], [10, 2350]]) {
    await page.clock.fastForward(wait * minute);
    await readVacuum(page, micron, "true");
  }
  assert.match(await plain(page.locator(".finding > .verdict b")), /Moisture/);
  assert.equal(await page.locator('[data-figure="latest-water"]').count(), 1);
  await page.locator('[data-action="pump-started"]').click();
  await page.clock.fastForward(85 * minute);
  await readVacuum(page, 190, "false");
  assert.equal(await page.locator('[data-clock="vacuumClock"]').count(), 0, "the hold that failed is over");
  assert.equal(await page.locator(".finding > .verdict").count(), 0);
  for (const [place, [wait, micron]] of [[2, 206], [3, 222], [5, 238], [5, 246], [8, 252]].entries()) {
    await page.clock.fastForward(wait * minute);
    await readVacuum(page, micron, place === 0 ? "true" : undefined);
  }
  await assertPassed(page, 21 * 60, "vacuumClock");
  assert.match(await plain(page.locator(".rule .verdict")), /still to come/);
  await page.clock.fastForward(10 * minute);
  await readVacuum(page, 254);
  assert.match(await plain(page.locator(".finding > .verdict b")), /Dry and tight/);
  assert.equal(await page.locator(".rule .verdict").getAttribute("data-verdict"), "in-band");
  for (const seconds of [600, 1800, 3600]) assert.equal(await page.locator(`[data-figure="expected-${seconds}"]`).count(), 1);
  assert.equal(await page.locator(".reading-plot .expected-line").count() > 0, true);
  await page.locator('label:has(input[name="vacuumUnit"][value="Pa"])').click();
  await eventually(() => plain(page.locator('[data-figure="latest"]')), /3\d.*Pa/);
});

test("where the browser can, the screen stays awake while a clock runs; where it cannot, that is said", async (t) => {
  const { site, page, place } = await openJob(t, "pressure-test");
  assert.equal(await page.locator("[data-waking]").count(), 0, "no clock yet");
  await readPressure(page, "44.2", "21");
  await page.locator('[data-waking="awake"]').waitFor();
  const other = await site.context.newPage();
  await other.addInitScript(() => delete Navigator.prototype.wakeLock);
  await other.goto(site.address + place);
  await other.locator('[data-waking="not-offered"]').waitFor();
  assert.match(await plain(other.locator("[data-waking]")), /cannot keep the screen awake/);
});

test("the end of the hold rings if somebody asked for it by a tap, and the page says what it cannot do", async (t) => {
  const { site, page } = await openJob(t, "pressure-test");
  await site.context.grantPermissions(["notifications"]);
  await page.evaluate(() => {
    globalThis.notices = [];
    ServiceWorkerRegistration.prototype.showNotification = async (title, { body }) => void globalThis.notices.push(body);
    globalThis.Notification = class {
      static permission = "granted";
      constructor(title, { body }) {
        globalThis.notices.push(body);
      }
    };
  });
  await readPressure(page, "44.2", "21");
  assert.match(await plain(page.locator(".ring")), /closed page cannot ring/);
  await page.locator('[data-action="ring"]').click();
  await page.locator('[data-ring="granted"]').waitFor();
  await page.clock.fastForward(23 * hour);
  assert.deepEqual(await page.evaluate(() => globalThis.notices), []);
  await page.clock.fastForward(2 * hour);
  await eventually(() => page.evaluate(() => globalThis.notices.join()), /The time of the hold is over/);
});

for (const { stage, time, begun } of [
  { stage: "pressure-test", begun: (page) => readPressure(page, "44.2", "21") },
  { stage: "evacuate", begun: (page) => readVacuum(page, 420, "true") },
]) {
  test(`${stage}: everybody can read and reach it, begun or not, at 360 px with text twice as large`, async (t) => {
    const { page } = await openJob(t, stage, { time });
    for (const step of ["not begun", "begun"]) {
      if (step === "begun") await begun(page);
      await openAll(page);
      await page.evaluate(() => (document.documentElement.style.fontSize = ""));
      assert.deepEqual(await breaches(page), [], step);
      assert.deepEqual(await page.evaluate(smallTargets), [], step);
      await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
      assert.deepEqual(await page.evaluate(unreadableTexts), [], step);
    }
  });
}
