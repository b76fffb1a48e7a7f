// WebKitGTK's small browser, by WebDriver, on a screen that only exists in memory.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, readdirSync } from "node:fs";
import { createServer } from "node:net";
import { join } from "node:path";
import { Builder, Capabilities } from "selenium-webdriver";
import { Window } from "./window.mjs";

const driver = process.env.WEBKIT_DRIVER ?? "/usr/bin/WebKitWebDriver";
const screen = "/usr/bin/xvfb-run";
const binary = miniBrowser();

export const name = "WebKit";
export const missing = [driver, screen, binary].every((path) => existsSync(path)) ? undefined : "no WebKitWebDriver, MiniBrowser or xvfb-run";

/** Where the package puts it depends on the machine and on its version. */
function miniBrowser() {
  const found = (directory, pattern) => (existsSync(directory) ? readdirSync(directory).filter((entry) => pattern.test(entry)) : []);
  const kits = found("/usr/lib", /-linux-gnu/).flatMap((machine) => found(join("/usr/lib", machine), /^webkit2gtk-4/).map((kit) => join("/usr/lib", machine, kit)));
  return kits.map((kit) => join(kit, "MiniBrowser")).find((path) => existsSync(path)) ?? "MiniBrowser";
}

export async function launch() {
  const port = await freePort();
  const server = spawn(screen, ["-a", driver, `--port=${port}`], {
    detached: true,
    stdio: "ignore",
    env: { ...process.env, WEBKIT_DISABLE_COMPOSITING_MODE: "1", LIBGL_ALWAYS_SOFTWARE: "1" },
  });
  const ended = once(server, "exit");
  const stop = async () => {
    process.kill(-server.pid, "SIGTERM");
    await ended;
  };
  try {
    await untilListening(port);
    const session = await new Builder().usingServer(`http://127.0.0.1:${port}`).withCapabilities(capabilities()).build();
    await session.manage().setTimeouts({ script: 90_000, pageLoad: 90_000 });
    const found = await session.getCapabilities();
    const close = async () => {
      await session.quit();
      await stop();
    };
    return { version: `${found.getBrowserName()} ${found.getBrowserVersion()}`, open: () => openWindow(session), close };
  } catch (problem) {
    await stop();
    throw problem;
  }
}

function capabilities() {
  const wanted = new Capabilities();
  wanted.setBrowserName("MiniBrowser");
  wanted.set("webkitgtk:browserOptions", { binary, args: ["--automation"] });
  return wanted;
}

/** One window is all that a session has here. */
async function openWindow(session) {
  const elementOf = (selector, text) => session.executeScript(visibleElement, selector, text);
  return new Window({
    goTo: (address) => session.get(address),
    evaluate: async (run, ...values) => {
      const { value, problem } = await session.executeAsyncScript(`
        const done = arguments[arguments.length - 1];
        Promise.resolve().then(() => (${run})(...${JSON.stringify(values)}))
          .then((value) => done({ value }), (problem) => done({ problem: String(problem) }));`);
      if (problem) throw new Error(problem);
      return value;
    },
    tap: async (selector, text) => (await elementOf(selector, text)).click(),
    type: async (selector, text) => {
      const element = await elementOf(selector, "");
      await element.clear();
      await element.sendKeys(text);
    },
    close: async () => {},
  });
}

/** Runs in the page. */
function visibleElement(selector, text) {
  return [...document.querySelectorAll(selector)].find((element) => element.textContent.includes(text) && element.getClientRects().length > 0);
}

function freePort() {
  const probe = createServer();
  return new Promise((found) => {
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address();
      probe.close(() => found(port));
    });
  });
}

async function untilListening(port) {
  const end = Date.now() + 60_000;
  while (Date.now() < end) {
    const reply = await fetch(`http://127.0.0.1:${port}/status`).catch(() => undefined);
    if (reply?.ok) return;
    await new Promise((wake) => setTimeout(wake, 100));
  }
  throw new Error("WebKitWebDriver does not answer");
}
