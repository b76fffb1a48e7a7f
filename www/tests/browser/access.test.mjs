// Everybody can read and reach everything: rules of accessibility, narrow phones, large text.
import assert from "node:assert/strict";
import { test } from "node:test";
import { breaches } from "./axe.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { screens } from "./screens.mjs";
import { openAll, openSite, useBrowser } from "./site.mjs";

useBrowser();

for (const theme of ["day", "dark", "sunlight"]) {
  test(`no screen breaks a rule of accessibility in ${theme}`, async (t) => {
    const site = await openSite(t);
    await chooseTheme(site, theme);
    assert.equal(await onEachScreen(site, breaches), "");
  });
}

test("the rules are applied: a picture without a text breaks one", async (t) => {
  const site = await openSite(t);
  const page = await site.open();
  await page.evaluate(() => document.querySelector("main").append(document.createElement("img")));
  assert.match((await breaches(page)).join(), /image-alt/);
});

for (const { label, width, text } of [
  { label: "at 320 px", width: 320, text: "100%" },
  { label: "at 360 px with text twice as large", width: 360, text: "200%" },
  { label: "at 320 px with text twice as large", width: 320, text: "200%" },
]) {
  test(`every text can be read ${label}, and nothing has to be scrolled sideways`, async (t) => {
    const site = await openSite(t, { viewport: { width, height: 740 } });
    const read = async (page) => {
      await page.evaluate((size) => (document.documentElement.style.fontSize = size), text);
      return page.evaluate(unreadableTexts);
    };
    assert.equal(await onEachScreen(site, read), "");
  });
}

test("what is touched measures 48 px and more", async (t) => {
  const site = await openSite(t, { viewport: { width: 320, height: 740 } });
  assert.equal(await onEachScreen(site, (page) => page.evaluate(smallTargets)), "");
});

/** What `find` finds on each screen with all its parts opened, a line each. */
async function onEachScreen(site, find) {
  const found = [];
  for (const { name, place } of screens) {
    const page = await site.open(place);
    await openAll(page);
    for (const line of new Set(await find(page))) found.push(`${name}: ${line}`);
    await page.close();
  }
  return found.join("\n");
}

async function chooseTheme(site, theme) {
  const page = await site.open("#/settings");
  await page.locator(`label:has(input[name="theme"][value="${theme}"])`).click();
  await page.close();
  const later = await site.open();
  assert.equal(await later.evaluate(() => document.documentElement.dataset.theme), theme);
  await later.close();
}
