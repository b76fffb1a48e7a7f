// Every card of the job: its example gives a figure and no problem, everybody can read it, and its working opens.
import assert from "node:assert/strict";
import { test } from "node:test";
import { breaches } from "./axe.mjs";
import { cardPaths } from "./card-paths.mjs";
import { only } from "./conditions.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { eventually, openAll, openSite, useBrowser } from "./site.mjs";

useBrowser();

test("the page has cards of the job", () => assert.ok(cardPaths.length > 0));

for (const path of cardPaths) {
  for (const { label, colorScheme, size } of [
    { label: "by day", colorScheme: "light", size: "100%" },
    { label: "in the dark", colorScheme: "dark", size: "100%" },
    { label: "with text twice as large", colorScheme: "light", size: "200%" },
  ]) {
    test(`${path}, ${label}: the example gives a figure and no problem, and its working can be read`, only.inColours(colorScheme), async (t) => {
      const site = await openSite(t, { colorScheme });
      const page = await site.open(`#/${path}`);
      await page.evaluate((text) => (document.documentElement.style.fontSize = text), size);
      await page.evaluate(() => dispatchEvent(new Event("resize")));
      assert.equal(await page.locator("[data-problem-of]").count(), 0, "an empty card complains of nothing");
      await page.locator('[data-action="example"]').click();
      await eventually(() => page.locator("main").innerText(), /\d/);
      assert.ok((await page.locator("main [data-figure]").count()) > 0, "a figure stands");
      assert.deepEqual(await page.locator("[data-problem-of]").allInnerTexts(), []);
      assert.ok((await page.locator("[data-working]").count()) > 0, "the working is there");
      await openAll(page);
      assert.ok((await page.locator("[data-working] .step").count()) > 0, "the working opens");
      assert.deepEqual(await breaches(page), []);
      assert.deepEqual(await page.evaluate(unreadableTexts), []);
      assert.deepEqual(await page.evaluate(smallTargets), []);
      await page.locator('[data-action="bring-back"]').click();
      assert.equal(await page.locator("main [data-problem-of]").count(), 0);
    });
  }

  test(`${path} is offered among the cards and keeps what was entered through a reload`, async (t) => {
    const site = await openSite(t);
    const page = await site.open("#/cards");
    await page.locator(`main a[href="#/${path}"]`).click();
    await page.locator('[data-action="example"]').click();
    const figures = await page.locator("main [data-figure]").allInnerTexts();
    assert.ok(figures.length > 0);
    await page.reload();
    await page.locator("main [data-figure]").first().waitFor();
    assert.deepEqual(await page.locator("main [data-figure]").allInnerTexts(), figures);
  });
}
