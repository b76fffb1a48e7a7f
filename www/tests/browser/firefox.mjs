// Opens Debian's Firefox, or the one that FIREFOX names, by WebDriver BiDi.
import { mkdtemp, readFile, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { firefox } from "playwright-core";

export const executablePath = process.env.FIREFOX ?? "/usr/bin/firefox-esr";

/** Nothing but this machine can be reached, whatever a page or the browser itself may ask for. */
const firefoxUserPrefs = {
  "network.proxy.type": 1,
  "network.proxy.http": "127.0.0.1",
  "network.proxy.http_port": 9,
  "network.proxy.ssl": "127.0.0.1",
  "network.proxy.ssl_port": 9,
};

let downloads;

export async function openBrowser() {
  downloads = await mkdtemp(join(tmpdir(), "coldwright-"));
  const browser = await firefox.launch({ channel: "moz-firefox", executablePath, firefoxUserPrefs, downloadsPath: downloads, timeout: 120_000 });
  browser.on("disconnected", () => void rm(downloads, { recursive: true, force: true }));
  return browser;
}

/**
 * Runs in the page: tells of a change when what a test has filled in is left. Playwright puts such a text in as a script does,
 * and after that Firefox, unlike after keys, tells of none.
 */
export function tellOfFilledFields() {
  let filled;
  addEventListener("input", ({ target }) => (filled = target), true);
  addEventListener("change", () => (filled = undefined), true);
  addEventListener("blur", ({ target }) => filled === target && target.dispatchEvent(new Event("change", { bubbles: true })), true);
}

/** Playwright hands Firefox inches where it expects centimetres. */
const papers = { A4: { width: "21in", height: "29.7in" }, Letter: { width: "21.59in", height: "27.94in" } };

export function printed(page, format) {
  return page.pdf(papers[format]);
}

/** What `tap` saves, by its file: this Firefox tells of a download that a link begins in a way that Playwright does not hear. */
export async function savedFile(tap) {
  const before = await readdir(downloads);
  await tap();
  const end = Date.now() + 60_000;
  while (Date.now() < end) {
    const names = await readdir(downloads);
    const name = names.find((found) => !before.includes(found) && !found.endsWith(".part"));
    // A file that is still being written stands there empty, beside its first part.
    const text = name === undefined || names.some((found) => found.endsWith(".part")) ? "" : await readFile(join(downloads, name), "utf8");
    if (text !== "") {
      await rm(join(downloads, name)); // Or the next of its name would get another.
      return { name, text };
    }
    await new Promise((wake) => setTimeout(wake, 30));
  }
  throw new Error("nothing was saved");
}
