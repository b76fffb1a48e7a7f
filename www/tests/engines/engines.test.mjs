// The main tasks in every engine, after one visit and with the server stopped; and in the page that is one file.
import assert from "node:assert/strict";
import { join } from "node:path";
import { after, before, describe, test } from "node:test";
import { pathToFileURL } from "node:url";
import { build } from "../../build.mjs";
import { serve } from "../../serve.mjs";
import { temporaryDirectory } from "../browser/site.mjs";
import * as chromium from "./chromium.mjs";
import * as firefox from "./firefox.mjs";
import { mainTasks } from "./main-tasks.mjs";
import * as webkit from "./webkit.mjs";

for (const { name, missing, launch } of [chromium, firefox, webkit]) {
  describe(name, { skip: missing }, () => {
    let engine;
    before(async () => {
      engine = await launch();
    });
    after(() => engine?.close());

    test("the main tasks offline, below a path of a host that rewrites nothing", async (t) => {
      t.diagnostic(engine.version);
      const directory = await temporaryDirectory(t);
      await build({ out: directory });
      const server = await serve(directory, { base: "/field/tools/" });
      t.after(server.close);
      const window = await engine.open();
      await window.goTo(`${server.address}#/?tube=3/8`);
      await window.shows('[data-figure="torque"]', /34–42/);
      await window.until(() => window.count('[data-keeping="kept"]'), Boolean, "everything is on this phone");
      await server.close();
      await assert.rejects(fetch(server.address));
      assert.equal(await window.evaluate(() => fetch("./nothing-of-ours").then(String, () => "failed")), "failed");
      await window.reload();
      await mainTasks(window);
      await window.close();
    });

    test("the main tasks in one file without a server", async (t) => {
      const directory = await temporaryDirectory(t);
      await build({ out: directory, isOneFileWanted: true });
      const window = await engine.open();
      await window.goTo(pathToFileURL(join(directory, "coldwright.html")).href);
      await window.until(() => window.count('[data-keeping="one-file"]'), Boolean, "the page says that it is one file");
      await mainTasks(window);
      await window.close();
    });
  });
}
