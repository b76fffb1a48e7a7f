// The joints of a job as whole tasks: flared, made anew, tightened one by one, the list of them changed.
import assert from "node:assert/strict";
import { test } from "node:test";
import { breaches } from "./axe.mjs";
import { only } from "./conditions.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { eventually, figure, openAll, openSite, phone, useBrowser } from "./site.mjs";

useBrowser();

const indoorLiquid = "liquid-line-indoor-port";
const indoorGas = "gas-line-indoor-port";
const union = "gas-line-union-indoor-side-1";

/** Opens the practice job, in which every joint is made and tightened, at a stage and a joint. */
async function openPractice(site, stage, joint) {
  site.context.setDefaultTimeout(120_000);
  const page = await site.open("#/jobs");
  await page.locator('[data-action="practice-job"]:not([disabled])').click();
  await page.locator(".stage-list").waitFor();
  await goTo(page, stage, joint);
  return page;
}

async function goTo(page, stage, joint) {
  await page.evaluate(
    ({ stage, joint }) => {
      const id = /[?&]id=([^&]+)/.exec(location.hash)[1];
      location.hash = `#/job?id=${id}&stage=${stage}&joint=${joint}`;
    },
    { stage, joint },
  );
  await page.locator(`main.${stage}`).waitFor();
  await isShown(page, joint);
}

const isShown = (page, joint) => page.locator(`.joint-walk[data-joint="${joint}"]`).waitFor();
const field = (page, joint, name) => page.locator(`input[name="job:joints.#${joint}.${name}"]`);
const act = (page, name) => page.locator(`[data-action="${name}"]`);
const verdict = (page) => page.locator(".joint-walk .verdict").first().getAttribute("data-verdict");
const line = (page, joint) => page.locator(`.joint-list li[data-joint="${joint}"]`);
const stateOf = (page, joint) => line(page, joint).getAttribute("data-state");
const openItems = (page) => page.locator(".open-items").innerText();
const order = (page) => page.locator(".joint-list li").evaluateAll((lines) => lines.map(({ dataset }) => dataset.joint));

async function type(page, joint, name, text) {
  await field(page, joint, name).fill(text);
  await field(page, joint, name).blur();
}

/** After everything is on the phone. */
async function reload(page) {
  await page.locator(".job-head").waitFor();
  await page.reload();
  await page.locator(".joint-walk").waitFor();
}

async function makeAnew(page, reason) {
  const form = page.locator(".remaking");
  if (!(await form.evaluate((part) => part.open))) await form.locator("summary").click();
  await form.locator(".chips button", { hasText: reason }).click();
  await act(page, "remake").click();
}

const moved = only.chromium("no test can move a finger in Firefox");

/** A finger goes across the figures. */
async function swipe(page, way) {
  const figures = page.locator(".joint-walk .head-band");
  // A tap at the foot may have scrolled them away.
  await page.evaluate(() => scrollTo(0, 0));
  const box = await figures.boundingBox();
  const [y, from] = [box.y + box.height / 2, way < 0 ? 260 : 90];
  const touch = await page.context().newCDPSession(page);
  const send = (type, x) => touch.send("Input.dispatchTouchEvent", { type, touchPoints: x === undefined ? [] : [{ x, y }] });
  await send("touchStart", from);
  for (const step of [0.3, 0.6, 1]) await send("touchMove", from + way * step);
  await send("touchEnd");
  await touch.detach();
}

test("a cone too narrow is told so, made anew with a reason, and the next one is in band; all of it stays", async (t) => {
  const site = await openSite(t);
  const page = await openPractice(site, "flare", indoorGas);
  await makeAnew(page, "Face scored");
  await eventually(() => stateOf(page, indoorGas), /^open$/);
  await eventually(() => openItems(page), /Joints not made: 1/);
  assert.equal(await figure(page, "cone"), "12.8–13.2 mm", "the band of a 3/8 cone for R-32 by EN 378-2");

  await act(page, "made").click();
  await page.locator('[data-done="made"]').waitFor();
  await eventually(() => openItems(page), /Cones not measured: 1/);
  await type(page, indoorGas, "measuredCone", "12.3");
  await eventually(() => verdict(page), /out-of-band/);
  assert.match(await page.locator(".joint-walk .verdict").innerText(), /0\.50\smm beyond the limit.*±\s0\.05\smm/s);
  assert.match(await page.locator("[data-advice]").innerText(), /more tube above the bar/);
  await page.locator(".remaking[open]").waitFor();

  await makeAnew(page, "Cone too narrow");
  await eventually(() => stateOf(page, indoorGas), /^open$/);
  assert.equal(await field(page, indoorGas, "measuredCone").inputValue(), "");
  await act(page, "made").click();
  await type(page, indoorGas, "measuredCone", "13");
  await eventually(() => verdict(page), /in-band/);
  await reload(page);
  await isShown(page, indoorGas);
  await eventually(() => verdict(page), /in-band/);
  assert.equal(await field(page, indoorGas, "measuredCone").inputValue(), "13 mm");
  const attempts = await page.locator(".attempts li").allInnerTexts();
  assert.equal(attempts.length, 3, "the one of the practice job and the two made here");
  assert.match(attempts[1], /Face scored.*cone 13\.0\smm · torque 33\sN·m · no leak/s);
  assert.match(attempts[2], /Cone too narrow.*cone 12\.3\smm/s);
});

test("a joint is made anew in one step that is undone as one", async (t) => {
  const site = await openSite(t);
  const page = await openPractice(site, "flare", indoorLiquid);
  const before = await stateOf(page, indoorLiquid);
  await makeAnew(page, "Rim cracked");
  await eventually(() => stateOf(page, indoorLiquid), /^open$/);
  await act(page, "undo").click();
  await eventually(() => stateOf(page, indoorLiquid), new RegExp(`^${before}$`));
  assert.equal(await field(page, indoorLiquid, "measuredCone").inputValue(), "8.9 mm");
  assert.equal(await page.locator(".attempts").count(), 0);
});

test("a reason that is wanted is waited for, and one begun survives a reload", async (t) => {
  const site = await openSite(t);
  const page = await openPractice(site, "flare", indoorLiquid);
  await page.locator(".remaking summary").click();
  assert.equal(await act(page, "remake").getAttribute("aria-disabled"), "true");
  await act(page, "remake").click({ force: true });
  const reason = page.locator(".remaking input");
  await page.waitForFunction(() => document.activeElement.matches(".remaking input"));
  assert.equal(await stateOf(page, indoorLiquid), "proven");
  await reason.fill("Dropped on the floor");
  await eventually(() => page.url(), /Dropped/);
  await reload(page);
  assert.equal(await reason.inputValue(), "Dropped on the floor");
});

test("the torque is in view without scrolling as soon as the stage is begun", async (t) => {
  const site = await openSite(t, { viewport: phone });
  const page = await site.open("#/jobs");
  await page.locator('[data-action="new-job"]:not([disabled])').click();
  await page.locator('.stage-list [data-stage="plan"] a').click();
  await page.locator('[name="job:plate.refrigerant"]').selectOption("R-32");
  await page.locator('[name="job:lines.liquidLine.tube"]').selectOption("1/4");
  await page.locator('[name="job:lines.gasLine.tube"]').selectOption("3/8");
  await page.locator(".job-name").click();
  await page.locator('.stage-list [data-stage="tighten"] a').click();
  await act(page, "tightened").click();
  await act(page, "joint-later").click();
  await isShown(page, "gas-line-indoor-port");
  assert.equal(await page.locator(".stage-cautions").evaluate((part) => part.open), false);
  const [figure, foot] = await Promise.all([".joint-walk .head-figure", ".walk-foot"].map((part) => page.locator(part).first().boundingBox()));
  assert.ok(figure.y > 0 && figure.y + figure.height < foot.y, `the torque ends at ${figure.y + figure.height}, the foot begins at ${foot.y}`);
});

test("two nuts are tightened with one tap each, and the way goes on by a swipe and by a button", moved, async (t) => {
  const site = await openSite(t);
  const page = await openPractice(site, "tighten", indoorLiquid);
  await act(page, "tightened-not").click();
  await eventually(() => openItems(page), /Joints not tightened: 1/);
  await swipe(page, -170);
  await isShown(page, indoorGas);
  await act(page, "tightened-not").click();
  await eventually(() => openItems(page), /Joints not tightened: 2/);
  await swipe(page, 170);
  await isShown(page, indoorLiquid);
  assert.match(await page.locator(".walk-progress").innerText(), /^1 of 9/);

  const set = await figure(page, "setting");
  await act(page, "tightened").click();
  await eventually(() => field(page, indoorLiquid, "scaleTorque").inputValue(), new RegExp(`^${set.split(" ")[0]} N·m$`));
  await eventually(() => verdict(page), /in-band|cannot-tell/);
  await swipe(page, -170);
  await isShown(page, indoorGas);
  await act(page, "tightened").click();
  await page.locator('[data-done="tightened"]').waitFor();
  await act(page, "joint-later").click();
  await isShown(page, union);
  await act(page, "joint-earlier").click();
  await isShown(page, indoorGas);
  await reload(page);
  await isShown(page, indoorGas);
  await page.locator('[data-done="tightened"]').waitFor();
  assert.equal(await page.locator(".open-items li", { hasText: "Joints not tightened" }).count(), 0);
});

test("a finger that goes up and down, or not far, stays at the joint", moved, async (t) => {
  const site = await openSite(t);
  const page = await openPractice(site, "tighten", indoorGas);
  await swipe(page, -30);
  await swipe(page, 30);
  await act(page, "joint-later").click();
  await isShown(page, union);
  await eventually(() => page.evaluate(() => String(scrollY)), /^0$/);
});

test("the adapter changes what is set, not what the nut gets; a typed torque is judged by it", async (t) => {
  const site = await openSite(t);
  const page = await openPractice(site, "tighten", indoorGas);
  const atNut = await figure(page, "torque");
  const adapter = page.locator('input[name="withAdapter"]');
  assert.equal(await adapter.isChecked(), true);
  const levered = Number.parseFloat(await figure(page, "setting"));
  const aim = Number.parseFloat((await figure(page, "aim")).replace("aim ", ""));
  // Adapter 40 mm straight out on a wrench of 280 mm: the nut gets 1 + 40/280 of the scale.
  assert.ok(Math.abs(levered * (1 + 40 / 280) - aim) <= 1, `${levered} on the scale, ${aim} at the nut`);
  await adapter.uncheck();
  await eventually(() => figure(page, "setting"), new RegExp(`^${aim} `));
  assert.equal(await figure(page, "torque"), atNut);
  await type(page, indoorGas, "scaleTorque", "46");
  await eventually(() => verdict(page), /out-of-band/);
  await type(page, indoorGas, "scaleTorque", "tight");
  await page.locator(`[data-problem-of="job:joints.#${indoorGas}.scaleTorque"]`).waitFor();
  await reload(page);
  assert.equal(await field(page, indoorGas, "scaleTorque").inputValue(), "tight", "nothing typed is lost");
  assert.equal(await adapter.isChecked(), false);
});

test("an adapter whose length nobody entered withholds the setting and asks for it", async (t) => {
  const site = await openSite(t);
  const page = await openPractice(site, "tighten", indoorGas);
  await page.locator("summary", { hasText: "Wrench and adapter" }).click();
  await page.locator('input[name="job:instruments.wrench.adapterLength"]').fill("");
  await eventually(() => figure(page, "setting"), /^— /);
  assert.match(await figure(page, "torque"), /N·m/, "the band at the nut needs no wrench");
});

test("caps are put on, without a torque", async (t) => {
  const site = await openSite(t);
  const cap = "gas-line-service-port-cap";
  const page = await openPractice(site, "tighten", cap);
  assert.equal(await page.locator('[data-figure="setting"]').count(), 0);
  await act(page, "tightened").click();
  await page.locator('[data-done="tightened"]').waitFor();
  await eventually(() => stateOf(page, cap), /tightened/);
});

test("a joint is added, named, moved, taken out and put back, and a reload finds it all", async (t) => {
  const site = await openSite(t);
  const page = await openPractice(site, "flare", indoorGas);
  const planned = await order(page);
  await act(page, "add-joint").click();
  await page.waitForFunction((count) => document.querySelectorAll(".joint-list li").length === count, planned.length + 1);
  const added = (await order(page)).find((joint) => !planned.includes(joint));
  assert.equal((await order(page)).indexOf(added), planned.indexOf(indoorGas) + 1, "right after the joint that is shown");
  const editor = line(page, added).locator(".joint-change");
  assert.equal(await page.evaluate(() => document.activeElement.name), `job:joints.#${added}.name`);
  await page.keyboard.type("Filter drier, inlet");
  await editor.locator('label:has(input[value="liquid-line"])').click();
  await editor.locator("select").selectOption("1/4");
  await eventually(() => line(page, added).locator("a").innerText(), /Filter drier, inlet\s+1\/4\sin · open/);

  await editor.locator('[data-action="move-later"]').click();
  await eventually(async () => String((await order(page)).indexOf(added)), new RegExp(`^${planned.indexOf(indoorGas) + 2}$`));
  assert.equal(await page.evaluate(() => document.activeElement.dataset.action), "move-later", "the focus stays on the button");
  await editor.locator('[data-action="move-earlier"]').click();
  await editor.locator('[data-action="move-earlier"]').click();
  await eventually(async () => String((await order(page)).indexOf(added)), new RegExp(`^${planned.indexOf(indoorGas)}$`));

  const taken = line(page, union).locator(".joint-change");
  await taken.locator("summary").click();
  await field(page, union, "name").fill("Union in the attic");
  await taken.locator('[data-action="take-out"]').click();
  await eventually(() => stateOf(page, union), /removed/);
  await reload(page);
  assert.equal(await stateOf(page, union), "removed");
  assert.match(await line(page, union).innerText(), /Union in the attic/);
  assert.equal((await order(page)).indexOf(added), planned.indexOf(indoorGas));
  await taken.locator("summary").click();
  await taken.locator('[data-action="put-back"]').click();
  await eventually(() => stateOf(page, union), /proven/);

  await line(page, added).locator("a").click();
  await isShown(page, added);
  assert.match(await page.locator(".joint-head").innerText(), /Filter drier, inlet/);
  await eventually(() => figure(page, "cone"), /^8\.\d–9\.\d mm$/);
});

test("the keyboard alone makes and tightens a joint", async (t) => {
  const site = await openSite(t);
  const page = await openPractice(site, "tighten", indoorLiquid);
  const reach = async (name) => {
    const isThere = () => page.evaluate((wanted) => document.activeElement.dataset.action === wanted, name);
    for (let steps = 0; steps < 80 && !(await isThere()); steps += 1) await page.keyboard.press("Tab");
    assert.ok(await isThere(), `${name} is reached by Tab`);
  };
  await reach("tightened-not");
  await page.keyboard.press("Enter");
  await act(page, "tightened").waitFor();
  await page.keyboard.press("Shift+Tab");
  await reach("tightened");
  await page.keyboard.press("Enter");
  await page.locator('[data-done="tightened"]').waitFor();
  await reach("joint-later");
  await page.keyboard.press("Enter");
  await isShown(page, indoorGas);
  await page.keyboard.press("ArrowRight");
  await isShown(page, union);
  await page.keyboard.press("ArrowLeft");
  await isShown(page, indoorGas);
});

const looks = ["light", "dark"].flatMap((colorScheme) => [
  { colorScheme, stage: "flare", joint: indoorGas },
  { colorScheme, stage: "tighten", joint: indoorGas },
  { colorScheme, stage: "tighten", joint: "gas-line-valve-cap" },
]);
for (const { colorScheme, stage, joint } of looks) {
  test(`${stage}, ${joint}, ${colorScheme}: rules of accessibility, large text, large targets`, only.inColours(colorScheme), async (t) => {
    const site = await openSite(t, { colorScheme });
    const page = await openPractice(site, stage, joint);
    await openAll(page);
    assert.deepEqual(await breaches(page), []);
    await page.setViewportSize({ ...phone, width: 320 });
    assert.deepEqual(await page.evaluate(smallTargets), []);
    for (const width of [360, 320]) {
      await page.setViewportSize({ ...phone, width });
      for (const size of ["100%", "200%"]) {
        await page.evaluate((text) => (document.documentElement.style.fontSize = text), size);
        assert.deepEqual(await page.evaluate(unreadableTexts), [], `${width} px, ${size}`);
      }
    }
  });
}
