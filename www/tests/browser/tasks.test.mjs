// What a person does with the page, from the first tap to the figure.
import assert from "node:assert/strict";
import { test } from "node:test";
import { only } from "./conditions.mjs";
import { eventually, figure, goBack, openSite, useBrowser } from "./site.mjs";

useBrowser();

const typed = (page, field) => page.locator(`input[name="${field}"]`);

test("5/8 torque in ft·lbf is one tap from the start, and the unit is remembered", async (t) => {
  const site = await openSite(t);
  const page = await site.open();
  await page.locator('[data-unit="ft·lbf"]').click();
  await page.close();

  const later = await site.open();
  await later.locator('[data-tube="3/8"]').click();
  assert.match(await figure(later, "torque"), /26–30 ?ft·lbf/);
  await later.locator('[data-tube="5/8"]').click();
  // 68 to 77 N·m are 50.15 to 56.79 ft·lbf (NIST SP 811); limits are rounded into the band.
  assert.match(await figure(later, "torque"), /51–56 ?ft·lbf/);
  assert.equal(await later.locator('[data-tube="5/8"]').getAttribute("aria-pressed"), "true");
});

test("a measured cone out of band is told so, with what to change", async (t) => {
  const site = await openSite(t);
  const page = await site.open();
  const verdict = page.locator(".verdict-line [data-verdict], [data-verdict]").first();
  const advice = page.locator("[data-advice]");
  await page.locator('[data-tube="5/8"]').click();
  assert.match(await figure(page, "cone"), /19\.3–19\.7/);
  for (const [measured, expected, change] of [
    ["18.9", "out-of-band", /more tube above the bar/],
    ["20.1", "out-of-band", /less tube above the bar/],
    ["19.68", "cannot-tell", /again/],
    ["19,5", "in-band", /./],
  ]) {
    await typed(page, "measuredCone").fill(measured);
    assert.equal(await verdict.getAttribute("data-verdict"), expected, measured);
    assert.match(await advice.innerText(), change);
  }
});

test("the converter understands what people type", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/convert");
  const row = (reading, unit) => page.locator(`[data-reading="${reading}"] [data-unit-row="${unit}"]`).innerText();
  for (const [text, reading, unit, expected] of [
    ["140 psi", "gauge-pressure", "bar", /9\.6527/], // 140 × 6894.757 Pa (NIST SP 811 B.8)
    ["140 psi", "absolute-pressure", "bar", /10\.666/], // and 101 325 Pa of air
    ["5/8", "length", "mm", /15\.875/],
    ["29.9 inHg vac", "gauge-pressure", "kPa", /[-−]101\.25/], // 29.9 × 3386.389 Pa (NIST SP 811 B.8)
    ["29.9 inHg vac", "absolute-pressure", "Pa", /71\.98/], // what is left of 101 325 Pa
    ["-12 °F", "temperature", "°C", /[-−]24\.444/],
  ]) {
    await typed(page, "text").fill(text);
    assert.match(await row(reading, unit), expected, `${text} as ${reading} in ${unit}`);
  }
});

test("an adapter changes what to set on the wrench, as in the published example", async (t) => {
  const site = await openSite(t);
  // US Army TM 1-1500-204-23-9, figure 8-16: 300 lbf·in, wrench 10 in, adapter 4 in: 214 lbf·in, which is 24 N·m.
  const page = await site.open("#/?tube=5/8&plateTorque=300 lbf·in&wrenchLength=10 in&adapterLength=4 in");
  assert.match(await figure(page, "setting"), /^24 ?N·m$/);
  await typed(page, "adapterAngle").fill("90");
  assert.match(await figure(page, "setting"), /^34 ?N·m$/);
});

test("every place and every text in it opens by its own link, and the way back leads to it", async (t) => {
  const site = await openSite(t);
  const page = await site.open();
  await page.locator('[data-tube="3/8"]').click();
  await typed(page, "measuredCone").fill("13,1 mm & more");
  await eventually(() => page.url(), /#\/\?.*measuredCone=13,1%20mm%20%26%20more/);
  const again = await site.open(page.url().slice(site.address.length));
  assert.equal(await typed(again, "measuredCone").inputValue(), "13,1 mm & more");
  assert.equal(await again.locator('[data-tube="3/8"]').getAttribute("aria-pressed"), "true");

  await typed(page, "measuredCone").pressSequentially("!");
  await page.locator('nav a[href*="convert"]').click();
  await typed(page, "text").fill("5/8");
  await goBack(page, /text=5\/8/);
  assert.equal(await typed(page, "measuredCone").inputValue(), "13,1 mm & more!");
  await page.goForward();
  assert.equal(await typed(page, "text").inputValue(), "5/8");
  const broken = await site.open("#/convert?text=%E0%A4&=&x&__proto__=1&text2=%");
  assert.equal(await broken.locator("h1").count(), 1);
});

test("a text that waits to be written is not written over the place that is gone to meanwhile", async (t) => {
  const site = await openSite(t);
  const page = await site.open();
  await typed(page, "measuredCone").waitFor();
  await page.evaluate(() => {
    // The browser says late that it has gone elsewhere.
    const delay = (event) => {
      event.stopImmediatePropagation();
      setTimeout(() => dispatchEvent(new HashChangeEvent("hashchange")), 100);
    };
    addEventListener("hashchange", delay, { capture: true, once: true });
    const field = document.querySelector('input[name="measuredCone"]');
    field.value = "13 mm";
    field.dispatchEvent(new Event("input", { bubbles: true }));
    location.hash = "#/convert?text=1 m";
  });
  await eventually(() => page.locator('input[name="text"]').inputValue(), /^1 m$/);
  assert.match(await page.evaluate(() => location.hash), /^#\/convert\?text=1/);
});

test("a view that arrives before the frame of its first drawing is over is drawn all the same", only.server("in one file no view arrives later"), async (t) => {
  const site = await openSite(t);
  const page = await site.context.newPage();
  await page.addInitScript(() => {
    // Being kept offline would have the page drawn anew; and no frame is over before the test says so.
    delete Navigator.prototype.serviceWorker;
    const [frame, later, waiting] = [requestAnimationFrame, setTimeout, []];
    globalThis.requestAnimationFrame = (drawn) => void waiting.push(() => frame(drawn));
    globalThis.setTimeout = (call, wait = 0, ...rest) => (wait === 0 ? later(call, 0, ...rest) : void waiting.push(() => call(...rest)));
    globalThis.letFramesPass = () => {
      [globalThis.requestAnimationFrame, globalThis.setTimeout] = [frame, later];
      for (const go of waiting) go();
    };
  });
  await page.goto(`${site.address}#/convert?text=1 m`);
  await eventually(() => page.evaluate(() => performance.getEntriesByType("resource").map(({ name }) => name).join(" ")), /\/core-\w+\.wasm/);
  await page.waitForLoadState("networkidle");
  await page.evaluate(() => letFramesPass());
  assert.equal(await typed(page, "text").inputValue(), "1 m");
});

test("a link never changes what the person has chosen", async (t) => {
  const site = await openSite(t);
  const page = await site.open();
  await typed(page, "wrenchLength").fill("300 mm");
  const link = await site.open("#/?wrenchLength=999 mm");
  assert.equal(await typed(link, "wrenchLength").inputValue(), "999 mm");
  const later = await site.open();
  assert.equal(await typed(later, "wrenchLength").inputValue(), "300 mm");
});

test("the theme follows the system until one is chosen, and then stays", only.inColours("dark"), async (t) => {
  const site = await openSite(t, { colorScheme: "dark" });
  const page = await site.open("#/settings");
  const ground = (tab) => tab.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const dark = await ground(page);
  await page.emulateMedia({ colorScheme: "light" });
  const day = await ground(page);
  assert.notEqual(dark, day);
  await page.locator('label:has(input[name="theme"][value="dark"])').click();
  assert.equal(await ground(page), dark);
  const later = await site.open();
  assert.equal(await later.evaluate(() => document.documentElement.dataset.theme), "dark");
  await page.locator('label:has(input[name="theme"][value="sunlight"])').click();
  assert.equal(await ground(page), "rgb(255, 255, 255)");
  // The other tab hears of it.
  await eventually(() => later.evaluate(() => document.documentElement.dataset.theme), /sunlight/);
});

test("keys alone lead from the start to another size, unit, cone and screen", async (t) => {
  const site = await openSite(t);
  const page = await site.open();
  const focused = (selector) => page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector);
  const walkTo = async (selector) => {
    for (let steps = 0; steps < 60; steps++) {
      await page.keyboard.press("Tab");
      if (await focused(selector)) return;
    }
    assert.fail(`no key leads to ${selector}`);
  };
  await walkTo('[data-tube="3/8"]');
  await page.keyboard.press("Enter");
  await walkTo('[data-unit="ft·lbf"]');
  await page.keyboard.press("Space");
  assert.match(await figure(page, "torque"), /26–30 ?ft·lbf/);
  await walkTo('input[name="measuredCone"]');
  await page.keyboard.type("13.0");
  assert.equal(await page.locator("[data-verdict]").first().getAttribute("data-verdict"), "in-band");
  const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
  assert.notEqual(outline, "none", "what has the focus shows it");
  await walkTo('nav a[href*="convert"]');
  await page.keyboard.press("Enter");
  await eventually(() => page.title(), /Convert/);
  // The heading of the new screen has the focus, as soon as the screen is there.
  await eventually(async () => String(await focused("h1")), /true/);
});

test("a stopped core shows a screen that keeps what was typed", async (t) => {
  const site = await openSite(t);
  const page = await site.open("#/?tube=3/8&measuredCone=13.05");
  await page.evaluate(() => {
    dispatchEvent(new ErrorEvent("error", { error: new Error("a stop made for this test") }));
  });
  const screen = page.locator("main.crash");
  assert.match(await screen.innerText(), /13\.05/);
  site.offences.length = 0; // The stop has left its line on the console.
  await screen.getByRole("button", { name: "Open again" }).click();
  await page.locator("main:not(.crash) h1").waitFor({ state: "attached" });
  assert.equal(await typed(page, "measuredCone").inputValue(), "13.05");
});
