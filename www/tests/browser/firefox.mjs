// Opens Debian's Firefox, or the one that FIREFOX names, by WebDriver BiDi.
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

export function openBrowser() {
  return firefox.launch({ channel: "moz-firefox", executablePath, firefoxUserPrefs, timeout: 120_000 });
}
