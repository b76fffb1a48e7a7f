// Renders the mark into the PNG sizes that phones ask for: `npm run icons`. The results are committed.
import { readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { openBrowser } from "../tests/browser/chromium.mjs";

const path = (name) => fileURLToPath(new URL(name, import.meta.url));
const mark = await readFile(path("mark.svg"), "utf8");

/** A mask may cut away a fifth at each side, so the mark shrinks and its ground grows. */
const maskable = mark.replace('viewBox="0 0 64 64"', 'viewBox="-13 -13 90 90"').replace(
  '<rect width="64" height="64"',
  '<rect x="-13" y="-13" width="90" height="90"',
);

const pictures = [
  ["mark-180.png", 180, mark],
  ["mark-192.png", 192, mark],
  ["mark-512.png", 512, mark],
  ["mark-maskable-512.png", 512, maskable],
];

const browser = await openBrowser();
for (const [name, side, drawing] of pictures) {
  const page = await browser.newPage({ viewport: { width: side, height: side } });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:${side}px}</style>${drawing}`);
  await writeFile(path(name), await page.screenshot());
  await page.close();
}
await browser.close();
