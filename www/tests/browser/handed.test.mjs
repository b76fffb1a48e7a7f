// A job that comes by a link: looked at, kept, compared, merged; and links that are none.
import assert from "node:assert/strict";
import { test } from "node:test";
import { breaches } from "./axe.mjs";
import { only } from "./conditions.mjs";
import { handedPlace, linkText, practiceDocument } from "./job-links.mjs";
import { smallTargets, unreadableTexts } from "./readable.mjs";
import { eventually, openSite, useBrowser, waitUntilKept } from "./site.mjs";

useBrowser();

const kept = (page) => page.locator(".kept-state[data-unsaved='0']");
const foundJobs = (page) => page.locator(".job-rows [data-found]").getAttribute("data-found");

/** How many jobs the phone keeps, by the list. */
async function listed(site) {
  const page = await site.open("#/jobs");
  await page.locator('[data-action="new-job"]:not([disabled])').waitFor();
  const count = (await page.locator(".job-list-empty").count()) > 0 ? 0 : Number(await foundJobs(page));
  await page.close();
  return count;
}

/** Opens a link as somebody does who has the page already. */
async function openHanded(site, document) {
  const page = await site.open(handedPlace(document));
  await page.locator(".job-record").waitFor();
  return page;
}

async function keep(page) {
  await page.locator('[data-action="keep-handed"]').click();
  await kept(page).waitFor();
}

test("a link is looked at offline, and nothing is stored before it is kept", async (t) => {
  const site = await openSite(t);
  const document = await practiceDocument();
  await waitUntilKept(await site.open());
  await site.stop();
  const page = await openHanded(site, document);
  const record = (await page.locator(".job-record").innerText()).replace(/\s+/g, " ");
  for (const words of [document.name, document.technician, "R-32", "46.10 bar"]) assert.ok(record.includes(words), words);
  assert.equal(await page.locator(".job-record input, .job-record button").count(), 0, "for reading alone");
  assert.equal(await listed(site), 0);
  await keep(page);
  assert.match(page.url(), /#\/job\?id=practice0001$/);
  assert.equal(await listed(site), 1);
});

test("the same job again is told as such, differing it is compared place by place, and merging is one step that can be undone", async (t) => {
  const site = await openSite(t);
  const document = await practiceDocument();
  await keep(await openHanded(site, document));
  const same = await openHanded(site, document);
  await same.locator('[data-differences="0"]').waitFor();
  await same.close();

  const note = { id: "note-of-theirs", stage: "plan", text: "Ask for the key" };
  const page = await openHanded(site, { ...document, site: "Quay 9", customer: "Alder", notes: [...document.notes, note] });
  const merge = page.locator('.merge[data-differences="3"]');
  await merge.waitFor();
  await eventually(() => merge.innerText(), /Ask for the key/);
  const place = merge.locator(".differences li").filter({ hasText: "Quay 9" });
  await place.locator('label:has(input[value="theirs"])').click();
  await page.locator('[data-action="merge-handed"]').click();
  await kept(page).waitFor();
  assert.equal(await listed(site), 1);
  await eventually(() => page.locator(".job-names").innerText(), /Quay 9.*Nobody: this is to practise on/s);
  await page.locator('[data-action="undo"]').click();
  await eventually(() => page.locator(".job-names").innerText(), /An invented house at 620 m/);
  const again = await openHanded(site, { ...document, notes: [...document.notes, note] });
  await again.locator('.merge[data-differences="1"]').waitFor();
});

test("a job that is here already is kept beside it as another, and any job is compared with any", async (t) => {
  const site = await openSite(t);
  const document = await practiceDocument();
  await keep(await openHanded(site, document));
  const page = await openHanded(site, { ...document, site: "Quay 9" });
  await page.locator('[data-action="copy-handed"]').click();
  await kept(page).waitFor();
  assert.equal(await listed(site), 2);
  const other = await openHanded(site, { version: 1, id: "other0000001", name: "Short", site: "Quay 10" });
  await other.locator('select[name="compareWith"]').selectOption("practice0001");
  await other.locator(".merge .differences li").first().waitFor();
  await other.locator('[data-action="keep-handed"]').click();
  await kept(other).waitFor();
  assert.equal(await listed(site), 3);
});

test("a link that is none says what is wrong, stores nothing and runs nothing", async (t) => {
  const site = await openSite(t);
  const good = linkText(await practiceDocument());
  const flipped = `${good.slice(0, 100)}${good[100] === "A" ? "B" : "A"}${good.slice(101)}`;
  const markup = encodeURIComponent('<img src=x onerror="window.hurt=1">');
  for (const [text, told] of [
    [good.slice(0, 300), /cut off or changed/],
    [flipped, /cut off or changed/],
    [`z${good.slice(1)}`, /newer version|cut off or changed|holds no job/],
    ["", /holds no job|cut off/],
    [markup, /holds no job/],
    ["A".repeat(60_000), /./],
  ]) {
    const page = await site.open(`#/handed?job=${text}`);
    await eventually(() => page.locator('.handed [role="alert"]').innerText(), told);
    assert.equal(await page.locator(".handed img, [data-action]").count(), 0);
    assert.equal(await page.evaluate(() => window.hurt), undefined);
    await page.close();
  }
  assert.equal(await listed(site), 0);
});

test("markup in the texts of a job stays text", async (t) => {
  const site = await openSite(t);
  const markup = '<img src=x onerror="window.hurt=1"><script>window.hurt=1</script>';
  const page = await openHanded(site, { version: 1, id: "markup000001", name: markup, site: markup, notes: [{ id: "note1", text: markup }] });
  assert.equal(await page.locator("h1").innerText(), markup);
  assert.equal(await page.locator("main img, main script").count(), 0);
  assert.equal(await page.evaluate(() => window.hurt), undefined);
});

for (const colorScheme of ["light", "dark"]) {
  test(`the screen of a handed job breaks no rule of accessibility and is readable with large text (${colorScheme})`, only.inColours(colorScheme), async (t) => {
    const site = await openSite(t, { colorScheme });
    const document = await practiceDocument();
    await keep(await openHanded(site, document));
    const page = await openHanded(site, { ...document, site: "Quay 9" });
    await page.locator(".merge").waitFor();
    assert.deepEqual(await breaches(page), []);
    assert.deepEqual(await page.evaluate(smallTargets), []);
    await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
    assert.deepEqual(await page.evaluate(unreadableTexts), []);
  });
}
