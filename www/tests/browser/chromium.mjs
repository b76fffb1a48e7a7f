// Opens Debian's Chromium, or the one that CHROMIUM names.
import { chromium } from "playwright-core";

export const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";

export const args = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // Nothing but this machine can be reached, whatever a page may ask for.
  "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost",
];

export function openBrowser() {
  return chromium.launch({ executablePath, args });
}
