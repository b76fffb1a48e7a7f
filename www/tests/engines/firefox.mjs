// Firefox, by WebDriver BiDi.
import { existsSync } from "node:fs";
import puppeteer from "puppeteer-core";
import { Window } from "./window.mjs";

const executablePath = process.env.FIREFOX ?? "/usr/bin/firefox-esr";

export const name = "Firefox";
export const missing = existsSync(executablePath) ? undefined : `no Firefox at ${executablePath}`;

export async function launch() {
  const browser = await puppeteer.launch({ browser: "firefox", executablePath, headless: true, protocolTimeout: 180_000, timeout: 120_000 });
  const open = async () => {
    const page = await browser.newPage();
    page.setDefaultTimeout(90_000);
    await page.setViewport({ width: 360, height: 740 });
    const withElement = async (selector, text, act) => {
      const element = (await page.evaluateHandle(visibleElement, selector, text)).asElement();
      await act(element);
      await element.dispose();
    };
    return new Window({
      goTo: (address) => page.goto(address),
      evaluate: (run, ...values) => page.evaluate(run, ...values),
      tap: (selector, text) => withElement(selector, text, (element) => element.click()),
      type: (selector, text) =>
        withElement(selector, "", async (element) => {
          await element.evaluate((field) => field.select());
          await element.type(text);
        }),
      close: () => page.close(),
    });
  };
  return { version: await browser.version(), open, close: () => browser.close() };
}

/** Runs in the page. */
function visibleElement(selector, text) {
  return [...document.querySelectorAll(selector)].find((element) => element.textContent.includes(text) && element.getClientRects().length > 0);
}
