// Under what the browser tests run: the page on a server or as one file opened as `file://`, in Chromium or in Firefox.

export const isOneFile = process.env.COLDWRIGHT_PAGE === "one-file";
export const isFirefox = process.env.COLDWRIGHT_BROWSER === "firefox";

/**
 * Options of a test that cannot be everywhere: elsewhere it is left out by its reason. How many are left out, and where, is
 * written in `tests/one-file/left-out.mjs`, and a run that leaves out others fails.
 */
export const only = {
  server: (reason) => unless(!isOneFile, reason),
  chromium: (reason) => unless(!isFirefox, reason),
  inColours: (colorScheme) => unless(!isFirefox || colorScheme === "light", "no test can choose Firefox's colours"),
};

function unless(isFit, reason) {
  return isFit ? {} : { skip: reason };
}
