// Runs the tests of the bench and of the job on the page that is one file, opened as `file://`:
// `node tests/one-file/run.mjs [chromium | firefox]`, without a name in both. It must have been built into `dist`.
import { existsSync } from "node:fs";
import { basename, join } from "node:path";
import { run } from "node:test";
import { spec } from "node:test/reporters";
import { fileURLToPath } from "node:url";
import { defaultOut } from "../../build.mjs";
import * as chromium from "../browser/chromium.mjs";
import * as firefox from "../browser/firefox.mjs";
import { leftOut } from "./left-out.mjs";

const engines = {
  chromium: { executablePath: chromium.executablePath, missing: "on Debian as root: apt-get install chromium; elsewhere name it in CHROMIUM" },
  firefox: { executablePath: firefox.executablePath, missing: "on Debian as root: apt-get install firefox-esr; elsewhere name it in FIREFOX" },
};

const bench = ["tasks", "mistakes", "lessons", "cards", "charge", "fluids", "insulation", "line-set", "pump-down", "room-limit", "running", "standing-test", "vacuum-hold"];
const job = ["jobs", "job-plan", "job-joints", "job-holds", "job-record", "job-walk", "handed", "hand-on", "one-file"];
const files = [...bench, ...job].map((name) => fileURLToPath(new URL(`../browser/${name}.test.mjs`, import.meta.url)));

const page = join(defaultOut, "coldwright.html");
if (!existsSync(page)) throw new Error(`no ${page}: npm run build`);
const chosen = process.argv.slice(2);
for (const name of chosen) if (!(name in engines)) throw new Error(`no engine ${name}`);
for (const name of chosen.length > 0 ? chosen : Object.keys(engines)) await runIn(name);

async function runIn(name) {
  const { executablePath, missing } = engines[name];
  if (!existsSync(executablePath)) return fail(`no ${executablePath} to open the one file in: ${missing}`);
  Object.assign(process.env, { COLDWRIGHT_PAGE: "one-file", COLDWRIGHT_BROWSER: name });
  const count = { passed: 0, failed: 0, skipped: 0 };
  const skipped = {};
  const events = run({ files, concurrency: 2 });
  events.on("test:fail", () => (count.failed += 1));
  events.on("test:pass", ({ file, skip }) => {
    if (skip === undefined) return void (count.passed += 1);
    count.skipped += 1;
    skipped[basename(file)] = (skipped[basename(file)] ?? 0) + 1;
  });
  for await (const line of events.compose(new spec())) process.stdout.write(line);
  console.log(`one file in ${name}: ${count.passed} passed, ${count.failed} failed, ${count.skipped} left out`);
  if (count.failed > 0) process.exitCode = 1;
  for (const file of new Set([...Object.keys(skipped), ...Object.keys(leftOut[name])])) {
    const [found, listed] = [skipped[file] ?? 0, leftOut[name][file] ?? 0];
    if (found !== listed) fail(`${name} leaves out ${found} tests of ${file}, and tests/one-file/left-out.mjs says ${listed}`);
  }
}

function fail(reason) {
  console.error(reason);
  process.exitCode = 1;
}
