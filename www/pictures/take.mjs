// Takes the pictures of the README: `npm run pictures` after a build. Those worth keeping are committed.
import { writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { defaultOut } from "../build.mjs";
import { serve } from "../serve.mjs";
import { openBrowser } from "../tests/browser/chromium.mjs";
import { screens } from "../tests/browser/screens.mjs";

const ways = [
  { way: "day", colorScheme: "light", text: "100%" },
  { way: "dark", colorScheme: "dark", text: "100%" },
  { way: "large", colorScheme: "light", text: "200%" },
];

/** The practice job: its overview, and the stages that look unlike each other. */
const stages = [undefined, "tighten", "pressure-test", "record"];

async function takeJob(context, way, text) {
  const page = await context.newPage();
  await page.goto(`${server.address}#/jobs`);
  await page.locator('[data-action="practice-job"]:enabled').click();
  await page.locator(".stage-list").waitFor();
  await page.evaluate((size) => (document.documentElement.style.fontSize = size), text);
  const overview = page.url();
  for (const stage of stages) {
    if (stage !== undefined) await page.goto(`${overview}&stage=${stage}`);
    await page.locator("h1").waitFor();
    const name = stage === undefined ? "job" : `job-${stage}`;
    await writeFile(fileURLToPath(new URL(`${name}-${way}.png`, import.meta.url)), await page.screenshot());
  }
  await page.close();
}

const server = await serve(defaultOut);
const browser = await openBrowser();
for (const { way, colorScheme, text } of ways) {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, colorScheme });
  for (const { name, place, at } of screens) {
    const page = await context.newPage();
    await page.goto(server.address + place);
    await page.locator("h1").waitFor({ state: "attached" });
    await page.evaluate((size) => (document.documentElement.style.fontSize = size), text);
    await page.locator('[data-keeping="kept"]').first().waitFor({ state: "attached" });
    if (at !== undefined) await page.locator(at).first().scrollIntoViewIfNeeded();
    await writeFile(fileURLToPath(new URL(`${name}-${way}.png`, import.meta.url)), await page.screenshot());
    await page.close();
  }
  await takeJob(context, way, text);
  await context.close();
}
await browser.close();
await server.close();
