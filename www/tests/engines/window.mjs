// What a test asks of a window, whatever the engine: each engine opens it, evaluates in it, taps and types in its own way.
import assert from "node:assert/strict";

/** Ends only what would never come, on however slow a machine. */
const longestWait = 90_000;

export class Window {
  /**
   * `doors` are what an engine does in its own way: `goTo(address)`, `evaluate(function, ...values)`, `tap(element)` and
   * `type(element, text)`, where an element is given by a selector and, if several fit, a text in it.
   */
  constructor(doors) {
    this.doors = doors;
  }

  goTo(address) {
    return this.doors.goTo(address);
  }

  /** Runs a function in the page; while the page is being opened anew, that may take several attempts. */
  evaluate(run, ...values) {
    return this.doors.evaluate(run, ...values);
  }

  close() {
    return this.doors.close();
  }

  /** Waits until `read` gives what is wanted. */
  async until(read, isWanted, wanted) {
    const end = Date.now() + longestWait;
    for (;;) {
      const found = await Promise.resolve(read()).catch((problem) => problem);
      if (!(found instanceof Error) && isWanted(found)) return found;
      if (Date.now() > end) assert.fail(`waited in vain for ${wanted}; last: ${found}`);
      await new Promise((wake) => setTimeout(wake, 50));
    }
  }

  /** The text of the first element that fits, blanks as plain ones; undefined if there is none. */
  text(selector) {
    return this.evaluate((wanted) => document.querySelector(wanted)?.textContent.replace(/\s+/g, " ").trim(), selector);
  }

  /** Waits until the first element that fits has a text that the pattern matches, and gives it. */
  shows(selector, pattern = /./) {
    return this.until(() => this.text(selector), (text) => text !== undefined && text !== null && pattern.test(text), `${pattern} in ${selector}`);
  }

  count(selector) {
    return this.evaluate((wanted) => document.querySelectorAll(wanted).length, selector);
  }

  /** What is being drawn anew may be gone between the look and the tap: then once more. */
  async tap(selector, text = "") {
    const attempt = async () => {
      const isReady = await this.evaluate(isThere, selector, text);
      if (isReady) await this.doors.tap(selector, text);
      return isReady;
    };
    await this.until(attempt, Boolean, `${selector} ${text}`);
  }

  async type(selector, text) {
    await this.until(() => this.evaluate(isThere, selector, ""), Boolean, selector);
    await this.doors.type(selector, text);
    await this.until(() => this.evaluate((wanted) => document.querySelector(wanted).value, selector), (found) => found.startsWith(text), text);
  }

  /** Goes to a place of the page as a link would. */
  place(fragment) {
    return this.evaluate((wanted) => void (location.hash = wanted), fragment);
  }

  /** Opens the page anew and waits until the document is another one. */
  async reload() {
    const before = await this.evaluate(() => performance.timeOrigin);
    await this.evaluate(() => void setTimeout(() => location.reload()));
    await this.until(() => this.evaluate(() => (document.querySelector("h1") === null ? 0 : performance.timeOrigin)), (now) => now !== 0 && now !== before, "another document");
  }
}

/** Runs in the page: whether there is an element that can be tapped. */
function isThere(selector, text) {
  return [...document.querySelectorAll(selector)].some((element) => element.textContent.includes(text) && element.disabled !== true && element.getClientRects().length > 0);
}
