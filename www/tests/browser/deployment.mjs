// Versions of the page put on a host, whole or as a deployment goes wrong, and what a phone has of them afterwards.
import assert from "node:assert/strict";
import { readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:http";
import { join } from "node:path";
import { build } from "../../build.mjs";

/** Puts a version on the host, in place of the one that is there; gives its build. */
export async function deploy(directory, name) {
  const { version } = await build({ out: directory, extraFiles: { "version.txt": name } });
  return version;
}

/** How a deployment goes wrong, as what is done to the files of the host. */
export const accidents = {
  "a listed file is missing": (directory) => rm(join(directory, "version.txt")),
  "the host answers with an error page as if all were well": (directory) => writeFile(join(directory, "version.txt"), "<!doctype html><title>Not found</title>"),
  "a file is of another version": (directory) => writeFile(join(directory, "version.txt"), "one"),
  "a file is cut short": async (directory) => {
    const core = join(directory, (await readdir(directory)).find((name) => /^core-/.test(name)));
    await writeFile(core, (await readFile(core)).subarray(0, 1000));
  },
  "the page itself is of another version": async (directory) => {
    const page = join(directory, "index.html");
    await writeFile(page, (await readFile(page, "utf8")).replace('name="build" content="', 'name="build" content="0'));
  },
  "the worker is an error page": (directory) => rename(join(directory, "index.html"), join(directory, "worker.js")),
};

/** The build of the page that is shown. */
export const buildOf = (page) => page.locator('meta[name="build"]').getAttribute("content");

/** Looks for a newer version now, and says how that ended: `waits`, `same` or why not. */
export function lookForVersion(page) {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    try {
      await registration.update();
    } catch (problem) {
      return String(problem);
    }
    const { installing } = registration;
    if (installing === null) return registration.waiting === null ? "same" : "waits";
    return new Promise((known) => {
      installing.addEventListener("statechange", () => {
        if (installing.state === "installed") known("waits");
        if (installing.state === "redundant") known("refused");
      });
    });
  });
}

/** Every version whose files are on the phone, and how many files. */
export function keptVersions(page) {
  return page.evaluate(async () => {
    const names = (await caches.keys()).filter((name) => !name.includes("second copy"));
    return Object.fromEntries(await Promise.all(names.map(async (name) => [name.split(" ").at(-1), (await (await caches.open(name)).keys()).length])));
  });
}

/** Makes the practice job, or one with a name, and goes back to the bench once it is on this phone. */
export async function makeJob(page, name) {
  await page.evaluate(() => (location.hash = "#/jobs"));
  await page.locator(`[data-action="${name === undefined ? "practice-job" : "new-job"}"]:not([disabled])`).click();
  if (name !== undefined) await page.locator('input[name="job:name"]').fill(name);
  await page.locator(".kept-state[data-unsaved='0']").waitFor();
  await page.evaluate(() => (location.hash = "#/"));
  await page.locator('[data-path=""]').waitFor();
}

/** A page opened after the server has stopped is of this build and whole: it computes and opens each of so many jobs. */
export async function assertWhole(page, version, jobs) {
  assert.equal(await buildOf(page), version);
  assert.deepEqual(Object.keys(await keptVersions(page)).includes(version), true);
  await page.evaluate(() => (location.hash = "#/?tube=5/8"));
  await page.getByText(/68–77/).first().waitFor();
  await page.evaluate(() => (location.hash = "#/convert?text=140 psi"));
  await page.locator('[data-unit-row="bar"]', { hasText: "9.6527" }).first().waitFor();
  const rows = page.locator(".job-rows .job-list > li a");
  await page.evaluate(() => (location.hash = "#/jobs"));
  await rows.first().waitFor();
  assert.equal(await rows.count(), jobs);
  for (let place = 0; place < jobs; place++) {
    await page.evaluate(() => (location.hash = "#/jobs"));
    await rows.nth(place).click();
    await page.locator(".stage-list [data-stage]").first().waitFor();
  }
}

/** A host between the browser and `serve`: it can stop, begin again at the same address, and stick in the middle of a file. */
export async function stubbornHost(t, inner) {
  let stuckAt = /(?!)/;
  let stuck = () => {};
  const server = createServer(async (request, response) => {
    const reply = await fetch(new URL(request.url, inner.address));
    const body = Buffer.from(await reply.arrayBuffer());
    const headers = Object.fromEntries([...reply.headers].filter(([name]) => /^(content-type|cache-control)$/.test(name)));
    response.writeHead(reply.status, { ...headers, "Content-Length": body.length });
    if (!stuckAt.test(request.url)) return response.end(body);
    response.write(body.subarray(0, body.length / 2));
    stuck();
  });
  const listen = (port) => new Promise((ready) => server.listen(port, "127.0.0.1", ready));
  const stop = () =>
    new Promise((stopped) => {
      server.close(stopped);
      server.closeAllConnections();
    });
  await listen(0);
  const { port } = server.address();
  t.after(stop);
  return {
    address: `http://localhost:${port}/`,
    stop,
    begin: () => listen(port),
    /** Sends from now on only half of the files that the pattern matches; resolves once it has come to one. */
    stick: (pattern) =>
      new Promise((come) => {
        stuckAt = pattern;
        stuck = come;
      }),
    goOn: () => (stuckAt = /(?!)/),
  };
}
