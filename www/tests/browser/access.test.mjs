// Everybody can read and reach everything: rules of accessibility, narrow phones, large text.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { test } from "node:test";
import { unreadableTexts } from "./readable.mjs";
import { screens } from "./screens.mjs";
import { openSite, useBrowser } from "./site.mjs";

useBrowser();

const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

async function breaches(page) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => globalThis.axe.run());
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) => `${id}: ${target} ${failureSummary}`));
}

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

/** Opens everything that can be opened, and what that brings to light. */
async function openAll(page) {
  const closed = page.locator("details:not([open]) > summary");
  for (let left = await closed.count(); left > 0; left = await closed.count()) {
    await page.evaluate(() => document.querySelectorAll("details").forEach((part) => (part.open = true)));
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn))));
  }
}

/** Runs in the page. */
function smallTargets() {
  const kinds = "button, input:not([type=radio]), select, summary, nav a, header a, label:has(input[type=radio])";
  return [...document.querySelectorAll(kinds)]
    .filter((part) => part.checkVisibility())
    .map((part) => ({ part, box: part.getBoundingClientRect() }))
    .filter(({ box }) => box.height < 47.5 || box.width < 47.5)
    .map(({ part, box }) => `${part.outerHTML.slice(0, 80)}: ${box.width.toFixed(0)} × ${box.height.toFixed(0)}`);
}

async function chooseTheme(site, theme) {
  const page = await site.open("#/settings");
  await page.locator(`label:has(input[name="theme"][value="${theme}"])`).click();
  await page.close();
  const later = await site.open();
  assert.equal(await later.evaluate(() => document.documentElement.dataset.theme), theme);
  await later.close();
}
