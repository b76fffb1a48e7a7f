// The rules of accessibility, applied to an open page.
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";

const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What breaks a rule, a line each. */
export async function breaches(page) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => globalThis.axe.run());
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) => `${id}: ${target} ${failureSummary}`));
}
