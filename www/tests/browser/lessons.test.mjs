// The page teaches: a link opens the working with a question at each step, and terms open where they stand.
import assert from "node:assert/strict";
import { test } from "node:test";
import { breaches } from "./axe.mjs";
import { only } from "./conditions.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { screens } from "./screens.mjs";
import { eventually, openAll, openSite, useBrowser } from "./site.mjs";

useBrowser();

const visible = (page, selector) => page.locator(`${selector} >> visible=true`);
const sheet = (page) => page.getByRole("dialog");
const focused = (page) => page.evaluate(() => document.activeElement?.textContent ?? "");

/** Opens a place and waits for its terms to be marked. */
async function openMarked(site, place) {
  const page = await site.open(place);
  await visible(page, "main .term").first().waitFor();
  return page;
}

test("a link opens the working with a question at each step, which opens into its answer by tap and by key", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/torque?tube=5/8&adapterLength=40 mm&learn=yes");
  const question = page.getByText("Why only what all families allow?");
  await question.waitFor();
  assert.equal(await page.locator("[data-working]").first().evaluate((part) => part.open), true);
  const answer = page.getByText("only a torque that suits each of them is safe");
  assert.equal(await answer.isVisible(), false);
  await question.click();
  await answer.waitFor();
  await question.click();
  await answer.waitFor({ state: "hidden" });
  await page.locator("details.question > summary").first().focus();
  await page.keyboard.press("Enter");
  await answer.waitFor();
  await page.locator(".question .sources li").first().waitFor();
  const [steps, questions] = [page.locator("[data-working] .step"), page.locator("[data-working] .question")];
  await eventually(async () => `${(await steps.count()) > 2} ${(await steps.count()) - (await questions.count())}`, /^true 0$/);
});

test("without it the workings are folded; the switch in a working asks at every step, is kept, and a link does not change it", async (t) => {
  const site = await openSite(t);
  const page = await openMarked(site, "#/torque?tube=5/8");
  const working = page.locator("[data-working]").first();
  assert.equal(await working.evaluate((part) => part.open), false);
  await working.locator("summary").first().click();
  assert.equal(await page.locator(".question").count(), 0);
  await working.locator('[data-action="learn"]').click();
  await visible(page, ".question summary").first().waitFor();
  await eventually(() => page.evaluate(() => JSON.stringify(localStorage)), /\\"learn\\":true/);
  await page.reload();
  await visible(page, ".question summary").first().waitFor();
  assert.equal(await working.evaluate((part) => part.open), true);
  await page.goto(`${site.address}#/settings`);
  await page.locator('label:has(input[name="learn"][value="no"])').click();
  await eventually(() => page.evaluate(() => JSON.stringify(localStorage)), /\\"learn\\":false/);
  await page.close();
  const linked = await site.open("#/torque?tube=1/2&learn=yes");
  await visible(linked, ".question summary").first().waitFor();
  assert.match(await linked.evaluate(() => JSON.stringify(localStorage)), /\\"learn\\":false/);
  await linked.locator('[data-action="learn"]').first().click();
  await eventually(() => linked.evaluate(() => location.hash), /^(?!.*learn)/);
  assert.equal(await linked.locator(".question").count(), 0);
});

test("an empty card that is opened to learn complains of nothing, and its example is learnt from", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/standing-test?learn=yes");
  await page.locator('[data-action="example"]').waitFor();
  assert.equal(await page.locator("[data-problem-of]").count(), 0);
  await page.locator('[data-action="example"]').click();
  await page.getByText("Why do we correct for temperature?").or(page.getByText("Why is nitrogen not taken as ideal?")).first().waitFor();
});

test("a term opens by tap near it and by key; Escape, the button and a tap beside it close it, and the focus returns", async (t) => {
  const site = await openSite(t);
  const page = await openMarked(site, "#/running");
  const term = visible(page, 'main .term[data-term="superheat"]').first();
  await term.focus();
  await page.keyboard.press("Enter");
  await page.getByRole("dialog", { name: "superheat", exact: true }).waitFor();
  assert.match(await sheet(page).innerText(), /above its dew temperature/);
  assert.deepEqual(await breaches(page), []);
  await page.keyboard.press("Escape");
  await sheet(page).waitFor({ state: "hidden" });
  assert.match(await focused(page), /superheat/i);
  await page.keyboard.press("Space");
  await sheet(page).waitFor();
  await page.getByRole("button", { name: "Close" }).click();
  await sheet(page).waitFor({ state: "hidden" });
  await term.click();
  await sheet(page).waitFor();
  await page.mouse.click(180, 30);
  await sheet(page).waitFor({ state: "hidden" });
  assert.match(await focused(page), /superheat/i);
});

test("a finger reaches a term within 48 px, and a field's own label leads to what the term means, not into the field", async (t) => {
  const site = await openSite(t);
  const page = await openMarked(site, "#/terms?find=oil trap");
  const term = page.locator('.term-list p .term[data-term="data-plate"]');
  const { x, y, width, height } = await term.boundingBox();
  assert.ok(height < 48, "the lines are not moved apart");
  await page.mouse.click(x + width / 2, y + height / 2 + 40);
  assert.equal(await sheet(page).count(), 0, "beyond its reach nothing opens");
  await page.mouse.click(x + width / 2, y + height / 2 + 22);
  await page.getByRole("dialog", { name: "plate" }).waitFor();
  const other = await openMarked(site, "#/running");
  await visible(other, "label .term").first().click();
  await sheet(other).waitFor();
  await other.keyboard.press("Escape");
  await sheet(other).waitFor({ state: "hidden" });
  assert.equal(await other.evaluate(() => document.activeElement?.tagName), "SPAN");
});

test("a term in a working opens, one in its explanation takes its place, and the way to all terms leads to the glossary", async (t) => {
  const site = await openSite(t);
  const page = await openMarked(site, "#/torque?tube=5/8&learn=yes");
  await visible(page, "[data-working] .symbols .term").first().click();
  await page.getByRole("dialog", { name: "torque" }).waitFor();
  await sheet(page).locator(".term").first().click();
  await page.getByRole("dialog", { name: "plate" }).waitFor();
  await page.getByRole("link", { name: "All terms" }).click();
  await page.getByRole("heading", { name: "Glossary" }).waitFor();
  await sheet(page).waitFor({ state: "hidden" });
});

test("a term is marked where a screen first says it, and once more in a fold that nobody may have opened", async (t) => {
  const site = await openSite(t);
  const page = await openMarked(site, "#/running");
  const marked = async () => {
    const marks = await visible(page, "main .term").evaluateAll((found) => found.map(({ dataset, tabIndex }) => [dataset.term, tabIndex]));
    assert.ok(marks.length > 3 && marks.every(([, tabIndex]) => tabIndex === 0));
    return marks.map(([term]) => term);
  };
  const terms = await marked();
  assert.equal(new Set(terms).size, terms.length);
  const again = visible(page, "main [data-term]:not(.term)");
  assert.ok((await again.count()) > 0);
  assert.equal(await again.evaluateAll((names) => names.filter((name) => name.hasAttribute("role") || name.tabIndex >= 0).length), 0);
  await page.locator('[data-action="example"]').click();
  await page.locator("[data-working] > summary").click();
  await visible(page, '[data-working] .term').first().waitFor();
  assert.equal(await visible(page, '[data-working] .term[data-term="superheat"]').count(), 0, "it stands above");
});

test("the glossary finds a term by any of its names, by its beginning, and says when there is none", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/cards");
  await page.locator('main a[href="#/terms"]').click();
  const names = () => page.locator(".term-list h2").allInnerTexts().then((texts) => texts.join("; "));
  await eventually(async () => String((await page.locator(".term-list li").count()) > 60), /true/);
  const find = page.getByLabel("A word, by any of its names");
  for (const [asked, found] of [
    ["suction line", /^gas line/],
    ["KING VALVE", /^service valve/],
    ["crowfoot", /^crow-foot adapter/],
    ["mtorr", /^micron/],
    ["hold test", /^standing pressure test/],
    ["nameplate", /plate/],
  ]) {
    await find.fill(asked);
    await eventually(names, found);
  }
  await find.fill("gearbox");
  await page.getByText("None here by that name.").waitFor();
});

test("a term on a stage of a job opens, and the workings of its stages are learnt from", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/jobs");
  await page.locator('[data-action="practice-job"]').click();
  await eventually(() => page.evaluate(() => location.hash), /job\?id=/);
  const place = await page.evaluate(() => location.hash);
  await page.goto(`${site.address}${place.replace(/&stage=[a-z-]*/, "")}&stage=run-check&learn=yes`);
  await visible(page, "main.stage .question summary").first().waitFor();
  await visible(page, "main.stage .term").first().click();
  await sheet(page).waitFor();
  await page.keyboard.press("Escape");
  await sheet(page).waitFor({ state: "hidden" });
});

for (const { language, size, colorScheme } of [
  { language: "en", size: "100%", colorScheme: "light" },
  { language: "es", size: "200%", colorScheme: "dark" },
]) {
  test(`questions, glossary and an open term can be read and reached: ${language}, ${size}, ${colorScheme}`, only.inColours(colorScheme), async (t) => {
    const site = await openSite(t, { colorScheme, locale: language });
    for (const place of ["#/torque?tube=5/8&adapterLength=40 mm&learn=yes", "#/terms"]) {
      const page = await openMarked(site, place);
      await page.evaluate((text) => (document.documentElement.style.fontSize = text), size);
      await openAll(page);
      assert.deepEqual(await breaches(page), []);
      assert.deepEqual(await page.evaluate(unreadableTexts), []);
      assert.deepEqual(await page.evaluate(smallTargets), []);
      await visible(page, "main .term").first().click();
      await sheet(page).waitFor();
      const leaving = await sheet(page).evaluate((part) => part.scrollWidth > part.clientWidth || part.getBoundingClientRect().top < 0);
      assert.equal(leaving, false, "the sheet fits");
      assert.deepEqual(await page.evaluate(smallTargets), []);
      await page.close();
    }
  });
}

test("no term stands in what is tapped as a whole, on any screen in either language", async (t) => {
  for (const locale of ["en", "es"]) {
    const site = await openSite(t, { locale });
    const found = [];
    for (const { name, place } of screens) {
      const page = await site.open(place);
      await page.waitForFunction(() => document.adoptedStyleSheets.some((sheet) => [...sheet.cssRules].some((rule) => rule.selectorText === ".term")));
      await openAll(page);
      const inside = page.locator("a .term, button .term, summary .term, label:has(input) .term, option .term, .term .term");
      for (const text of await inside.evaluateAll((marks) => marks.map((mark) => mark.parentElement.outerHTML))) found.push(`${locale} ${name}: ${text}`);
      await page.close();
    }
    assert.deepEqual(found, []);
  }
});
