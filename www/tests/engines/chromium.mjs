// Chromium, by its debugging protocol.
import { existsSync } from "node:fs";
import { executablePath, openBrowser } from "../browser/chromium.mjs";
import { Window } from "./window.mjs";

export const name = "Chromium";
export const missing = existsSync(executablePath) ? undefined : `no Chromium at ${executablePath}`;

export async function launch() {
  const browser = await openBrowser();
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const open = async () => {
    const page = await context.newPage();
    page.setDefaultTimeout(90_000);
    const found = (selector, text) => page.locator(selector).filter({ hasText: text, visible: true }).first();
    return new Window({
      goTo: (address) => page.goto(address),
      evaluate: (run, ...values) => page.evaluate(`(${run})(...${JSON.stringify(values)})`),
      tap: (selector, text) => found(selector, text).click(),
      type: (selector, text) => found(selector, "").fill(text),
      close: () => page.close(),
    });
  };
  return { version: browser.version(), open, close: () => browser.close() };
}
