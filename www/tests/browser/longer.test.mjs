// A language that says the same in a third more letters breaks no screen, and no word stands outside the locale files.
import assert from "node:assert/strict";
import { before, test } from "node:test";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after } from "node:test";
import { build } from "../../build.mjs";
import { longer } from "./longer.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { screens } from "./screens.mjs";
import { openAll, openSite, useBrowser } from "./site.mjs";

useBrowser();

let grown;
before(async () => {
  grown = await mkdtemp(join(tmpdir(), "coldwright-"));
  await build({ out: grown, reshape: longer });
});
after(() => rm(grown, { recursive: true, force: true }));

test("the grown language is a third longer, and its arguments are left alone", () => {
  const told = "Hold the fitting still with a second wrench, or the tube twists.";
  assert.ok(longer(told).length > 1.2 * told.length && longer(told).length < 1.35 * told.length, longer(told));
  assert.match(longer("aim 72 N·m"), /72/);
});

const languages = [
  { name: "a language a third longer", options: () => ({ directory: grown }) },
  { name: "Spanish", options: () => ({ locale: "es-ES" }) },
];

const sizes = [
  { label: "at 360 px", width: 360, text: "100%" },
  { label: "at 320 px", width: 320, text: "100%" },
  { label: "at 320 px with text twice as large", width: 320, text: "200%" },
];

for (const { name, options } of languages) {
  for (const { label, width, text } of sizes) {
    test(`in ${name} every text can be read ${label}`, async (t) => {
      const site = await openSite(t, { viewport: { width, height: 740 }, ...options() });
      const found = [];
      await onEachScreen(site, text, async (screen, page) => {
        const flaws = [...(await page.evaluate(unreadableTexts)), ...(await page.evaluate(smallTargets))];
        for (const line of new Set(flaws)) found.push(`${screen}: ${line}`);
      });
      assert.equal(found.join("\n"), "");
    });
  }
}

/** Every screen, and every stage of the practice job, with all that can be opened. */
async function onEachScreen(site, text, look) {
  const show = async (screen, page) => {
    await page.evaluate((size) => (document.documentElement.style.fontSize = size), text);
    await page.evaluate(() => dispatchEvent(new Event("resize")));
    await openAll(page);
    await look(screen, page);
  };
  for (const { name, place } of screens) {
    const page = await site.open(place);
    await show(name, page);
    await page.close();
  }
  const page = await site.open("#/jobs");
  await page.locator('[data-action="practice-job"]:enabled').click();
  await page.locator(".stage-list").waitFor();
  await show("job", page);
  const overview = page.url();
  const stages = await page.locator(".stage-list [data-stage]").evaluateAll((rows) => rows.map((row) => row.dataset.stage));
  for (const stage of stages) {
    await page.goto(`${overview}&stage=${stage}`);
    await page.locator(`main.stage.${stage}`).waitFor();
    await show(`job, ${stage}`, page);
  }
  await page.close();
}
