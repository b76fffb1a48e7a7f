// A job's drawing, overview and plan as tasks: what somebody fills in before the first cut, what the van must hold,
// what the practice job shows, and who answers for a broken rule.
import assert from "node:assert/strict";
import { test } from "node:test";
import { breaches } from "./axe.mjs";
import { only } from "./conditions.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { eventually, figure, openAll, openSite, phone, useBrowser } from "./site.mjs";

useBrowser();

const field = (page, path) => page.locator(`[name="job:${path}"]`);

async function begin(t, action, options) {
  const site = await openSite(t, options);
  site.context.setDefaultTimeout(120_000);
  const page = await site.open("#/jobs");
  await page.locator(`[data-action="${action}"]:not([disabled])`).click();
  await page.locator(".stage-list").waitFor();
  return page;
}

async function openStage(page, stage) {
  await page.locator(`.stage-list [data-stage="${stage}"] a`).click();
  await page.locator(".stage-ways").waitFor();
}

async function toOverview(page) {
  await page.locator(".job-name").click();
  await page.locator(".stage-list").waitFor();
}

const joints = (page) => page.locator(".circuit [data-joint]");
const text = async (locator) => (await locator.innerText()).replace(/\s+/g, " ");

test("a new job: plate and lines bring the joints, the charge, the room's verdict and the bring list", async (t) => {
  const page = await begin(t, "new-job");
  await eventually(async () => String(await joints(page).count()), /^0$/);
  await openStage(page, "plan");
  await field(page, "plate.refrigerant").selectOption("R-32");
  for (const [path, typed] of [
    ["plate.plateCharge", "2.2"],
    ["plate.prechargedLength", "5 m"],
    ["plate.plateAdder", "20"],
    ["plate.longestLength", "20 m"],
    ["lines.length", "12"],
    ["lines.lift", "3 m"],
    ["lines.gasLine.unions", "1"],
  ]) {
    await field(page, path).fill(typed);
    await field(page, path).blur();
  }
  await page.locator('label:has([name="job:lines.higherUnit"][value="outdoor"])').click();
  await field(page, "lines.liquidLine.tube").selectOption("1/4");
  await field(page, "lines.gasLine.tube").selectOption("1/2");
  // 2.2 kg and 20 g for each of the 7 m beyond 5 m, by hand.
  await eventually(() => figure(page, "totalCharge"), /^2\.340 kg$/);
  await eventually(() => figure(page, "toAdd"), /^0\.140 kg$/);
  assert.match(await text(page.locator('[data-limit="length"]')), /12\.0 m of 20\.0 m.*8\.0 m inside/);
  assert.equal(await page.locator(".finding [data-verdict]").first().getAttribute("data-verdict"), "in-band");

  await page.locator('[data-list="rooms"] [data-action="add-item"]').click();
  const room = page.locator('[data-list="rooms"] .item');
  await room.locator('[name$=".area"]').fill("3 m²");
  await room.locator('label:has([value="floor"])').click();
  await eventually(() => text(page.locator(".finding .verdict").first()), /too much for the room/);
  await room.locator('[name$=".area"]').fill("60 m²");
  await room.locator('label:has([value="wall"])').click();
  await eventually(() => text(page.locator(".finding .verdict").first()), /within the limit|may be in any room/);

  const brought = page.locator(".bring li");
  await eventually(() => text(brought.filter({ hasText: "Refrigerant cylinder" })), /to add 140 g/);
  assert.match(await text(brought.filter({ hasText: "Torque wrench" })), /\d+ N·m to \d+ N·m/);
  assert.match(await text(brought.filter({ hasText: "Oil for threads" })), /Polyolester/);
  assert.match(await text(brought.filter({ hasText: "Scale" })), /common practice, no source/);
  assert.match(await text(page.locator('.bring [data-bring="tube"]').first()), /1\/4 in, 12\.0 m/);
  await brought.first().locator("input").check();
  await eventually(() => text(page.locator(".bring [role=status]")), /^1 of \d+/);

  await toOverview(page);
  // Two ends of each line, two sides of a union, three caps.
  assert.equal(await joints(page).count(), 9);
  assert.match((await page.locator(".circuit").getAttribute("aria-label")).replace(/\s+/g, " "), /12\.0 m of line, outdoor unit 3\.0 m higher, .* 9 joints: 9 open/);
  await page.reload();
  await page.locator(".stage-list").waitFor();
  assert.equal(await joints(page).count(), 9, "what was entered is still there");
});

test("several ports are joined, an adapter is a joint of its own, and thirty joints each have a target", async (t) => {
  const page = await begin(t, "new-job");
  await openStage(page, "plan");
  await field(page, "lines.gasLine.unions").fill("5");
  await field(page, "lines.liquidLine.unions").fill("4");
  await openAll(page);
  await page.locator('[data-list="lines.liquidLine.outdoorPorts"] [data-action="add-item"]').click();
  for (let count = 1; count <= 3; count += 1) {
    await page.locator('[data-list="lines.gasLine.indoorPorts"] [data-action="add-item"]').click();
    await page.locator('[data-list="lines.gasLine.indoorPorts"] .item').nth(count - 1).waitFor();
  }
  await toOverview(page);
  // 8 + 10 sides of unions, ports: 1 + 2 (with its adapter) of the liquid line, 4 (with the junction) + 1 of the gas line, 3 caps.
  assert.equal(await joints(page).count(), 29);
  const targets = await page.locator(".joint-strip a").evaluateAll((links) => links.map((link) => link.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)));
  assert.equal(targets.length, 29);
  assert.ok(Math.min(...targets) >= 47.5, `the least target measures ${Math.min(...targets)}`);
  const marks = await page.locator(".circuit .joint-mark text").evaluateAll((all) => all.map((mark) => mark.getBoundingClientRect()).map(({ x, y, width, height }) => ({ x: x + width / 2, y: y + height / 2 })));
  const nearest = marks.flatMap((one, place) => marks.slice(place + 1).map((other) => Math.hypot(one.x - other.x, one.y - other.y)));
  assert.ok(Math.min(...nearest) > 18, "no number lies upon another");
  assert.deepEqual(await page.evaluate(unreadableTexts), []);
});

test("the practice job: how each joint and stage stands, in units that fit", async (t) => {
  const page = await begin(t, "practice-job");
  const row = (stage) => text(page.locator(`[data-stage="${stage}"]`));
  assert.match(await row("pressure-test"), /Held for 22\.6 h/);
  assert.match(await row("release-and-charge"), /11\.7\s±\s0\.3\sbar/);
  assert.match(await row("evacuate"), /micron/);
  assert.equal(await page.locator('[data-stage="tighten"]').getAttribute("data-state"), "out-of-band");
  assert.equal(await page.locator('.stage-list [aria-current="step"]').count(), 1);
  const shape = (joint) => page.locator(`.circuit [data-joint="${joint}"] .shape`).evaluate((mark) => mark.tagName);
  assert.equal(await shape("gas-line-outdoor-port"), "rect", "outside its band: a square");
  assert.equal(await shape("gas-line-indoor-port"), "circle");
  const link = page.locator('a[data-joint="gas-line-outdoor-port"]').first();
  assert.match(await link.getAttribute("aria-label"), /Joint 6: Gas line, outdoor port, outside its band/);
  assert.match(await link.getAttribute("href"), /stage=tighten&joint=gas-line-outdoor-port/);
});

test("somebody answers for a broken rule, and takes it back", async (t) => {
  const page = await begin(t, "practice-job");
  await openStage(page, "release-and-charge");
  const alarm = page.locator('[data-rule="release-before-look"]');
  assert.equal(await alarm.getAttribute("data-answered"), "false");
  await alarm.locator('[data-action="answer-for"]').click();
  await alarm.locator('[name$=".reason"]').fill("Cap looked at by the owner");
  await eventually(() => alarm.getAttribute("data-answered"), /true/);
  assert.match(await text(alarm), /“Cap looked at by the owner”: A\. Rowan answers for it/);
  await toOverview(page);
  await eventually(() => text(page.locator('[data-stage="release-and-charge"]')), /A\. Rowan answers for it/);
  await openStage(page, "release-and-charge");
  await alarm.locator('[data-action="withdraw"]').click();
  await eventually(() => alarm.getAttribute("data-answered"), /false/);
  await alarm.locator('[data-action="answer-for"]').waitFor();
});

test("notes of a stage are written, kept and taken out", async (t) => {
  const page = await begin(t, "practice-job");
  await openStage(page, "pressure-test");
  assert.equal(await page.locator(".stage-note").count(), 1);
  await page.locator('[data-action="add-note"]').click();
  await page.locator(".stage-note textarea").nth(1).fill("Regulator set to 44 bar");
  await toOverview(page);
  await openStage(page, "pressure-test");
  assert.equal(await page.locator(".stage-note textarea").nth(1).inputValue(), "Regulator set to 44 bar");
  await page.locator('[data-action="take-note-out"]').nth(1).click();
  await eventually(async () => String(await page.locator(".stage-note").count()), /^1$/);
});

test("what is wrong stands at its field, and elsewhere leads to it", async (t) => {
  const page = await begin(t, "practice-job");
  await openStage(page, "plan");
  const lines = page.locator(".plan-part").filter({ hasText: "Lines" });
  assert.equal(await lines.evaluate((part) => part.open), false, "what is filled is one line");
  assert.match(await text(lines), /12\.5 m of line, indoor unit 3\.2 m higher, liquid line 1\/4 in, gas line 3\/8 in/);
  await lines.locator("summary").first().click();
  await field(page, "lines.length").fill("long");
  await page.locator('[data-problem-of="job:lines.length"]').first().waitFor();
  assert.equal(await page.locator(".hidden-problems .problem").count(), 0);
  await toOverview(page);
  const told = page.locator('.hidden-problems [data-problem-of="job:lines.length"] a');
  await told.waitFor();
  await told.click();
  await eventually(() => field(page, "lines.length").inputValue(), /^long$/);
});

test("the keyboard reaches a joint from the overview", async (t) => {
  const page = await begin(t, "practice-job");
  const link = page.locator("a[data-joint]").first();
  await link.focus();
  await page.keyboard.press("Enter");
  await page.locator(".stage-ways").waitFor();
  assert.match(await page.evaluate(() => location.hash), /joint=liquid-line-indoor-port/);
});

test("drawing, stages and plan can be read and touched, also with text twice as large", async (t) => {
  const page = await begin(t, "practice-job", { viewport: phone });
  for (const stage of [undefined, "plan", "release-and-charge"]) {
    if (stage !== undefined) await openStage(page, stage);
    await openAll(page);
    for (const size of ["100%", "200%"]) {
      await page.evaluate((chosen) => {
        document.documentElement.style.fontSize = chosen;
        dispatchEvent(new Event("resize"));
      }, size);
      await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn))));
      assert.deepEqual(await page.evaluate(unreadableTexts), [], `${stage} at ${size}`);
    }
    assert.deepEqual(await page.evaluate(smallTargets), [], `${stage}`);
    assert.deepEqual(await breaches(page), [], `${stage}`);
    await page.evaluate(() => (document.documentElement.style.fontSize = "100%"));
    if (stage !== undefined) await toOverview(page);
  }
});

test("on paper stands the bring list alone", only.chromium("no test can show Firefox's paper on its screen"), async (t) => {
  const page = await begin(t, "practice-job");
  await openStage(page, "plan");
  await page.emulateMedia({ media: "print" });
  const seen = await page.evaluate(() => [...document.querySelectorAll("main > *")].filter((part) => part.checkVisibility()).map(({ className }) => className));
  assert.deepEqual(seen, ["bring printed"]);
});
