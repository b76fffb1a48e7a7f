// What is said where the page is one file on a phone: what it keeps, and what a link from it is worth elsewhere.
import assert from "node:assert/strict";
import { test } from "node:test";
import { breaches } from "./axe.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { eventually, figure, openSite, saved, useBrowser } from "./site.mjs";

useBrowser();

/** What a browser does that keeps nothing for a file. */
function refuseStorage() {
  const refuse = () => {
    throw new DOMException("refused", "SecurityError");
  };
  for (const name of ["indexedDB", "localStorage", "sessionStorage", "caches"]) Object.defineProperty(globalThis, name, { get: refuse });
}

test("where the browser refuses storage to a file this is said, the job goes on in memory and leaves as a file", async (t) => {
  const site = await openSite(t, { isFile: true });
  await site.context.addInitScript(refuseStorage);
  const page = await site.open();
  await page.locator('[data-tube="3/8"]').click();
  assert.match(await figure(page, "torque"), /34–42/);
  await page.locator('footer a[href="#/jobs"]').click();
  await eventually(() => page.locator('[data-kept="refused"]').innerText(), /refuses storage: jobs last until the page is closed\. Save them to a file/);
  await page.locator('[data-action="new-job"]:not([disabled])').click();
  await page.locator('input[name="job:name"]').fill("Only in memory");
  await eventually(() => page.locator(".kept-state.problem[data-reason='refused']").innerText(), /until the page is closed/);
  const { name, text } = await saved(page, "save-job");
  assert.equal(JSON.parse(text).name, "Only in memory");

  const later = await site.open("#/jobs");
  await later.locator('[data-kept="refused"]').waitFor();
  await later.locator(".job-list-empty").waitFor();
  await later.locator('input[name="jobFile"]').setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
  await later.locator('[data-action="take-file"]').click();
  await later.locator(".job-rows .job-list > li", { hasText: "Only in memory" }).waitFor();
});

test("a link from a file is said to open on no other device, and what stands from # on does on one that has the file", async (t) => {
  const site = await openSite(t, { isFile: true });
  const page = await site.open("#/?tube=5/8&measuredCone=19.5 mm");
  await page.locator('[data-action="hand-on"]').click();
  const panel = page.locator("dialog.hand-on");
  await eventually(() => panel.locator("[data-from-file]").innerText(), /opened from a file: code and link open on no other device by themselves.*from # on/s);
  const link = await page.locator('textarea[name="handedLink"]').inputValue();
  assert.ok(link.startsWith(`${site.address}#`), link);
  assert.deepEqual(await breaches(page), []);
  // What lies beneath has tests of its own.
  await page.evaluate(() => document.querySelectorAll("main, footer, header > :not(dialog)").forEach((part) => (part.style.display = "none")));
  assert.deepEqual(await page.evaluate(smallTargets), []);
  assert.deepEqual(await page.evaluate(unreadableTexts), []);

  const elsewhere = await openSite(t, { isFile: true });
  const opened = await elsewhere.open(link.slice(link.indexOf("#")));
  assert.match(await figure(opened, "torque"), /68–77/);
  assert.equal(await opened.locator('input[name="measuredCone"]').inputValue(), "19.5 mm");
});

test("a page on a server names no file", async (t) => {
  const site = await openSite(t, { isFile: false });
  const page = await site.open("#/?tube=5/8");
  await page.locator('[data-action="hand-on"]').click();
  await page.locator('textarea[name="handedLink"]').waitFor();
  assert.equal(await page.locator("[data-from-file]").count(), 0);
});
