// What can wait until the first figures have been painted.

/** Longest that it waits for the browser to have nothing better to do. */
const longestWait = 300;

/** Calls back when the browser is idle; gives what calls it off. Safari does not tell: there, soon. */
export function whenIdle(idle: () => void): () => void {
  if (!("requestIdleCallback" in globalThis)) {
    const timer = setTimeout(idle, 50);
    return () => clearTimeout(timer);
  }
  const request = requestIdleCallback(idle, { timeout: longestWait });
  return () => cancelIdleCallback(request);
}
