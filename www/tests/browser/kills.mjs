// Kills a browser in the middle of edits, again and again, and looks at what is there afterwards:
//   node tests/browser/kills.mjs 200
//   node tests/browser/kills.mjs 200 0.3    and after three in ten kills the database is torn
import { spawn } from "node:child_process";
import { once } from "node:events";
import { appendFile, mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { serve } from "../../serve.mjs";
import { args, executablePath } from "./chromium.mjs";
import { writeStorePage } from "./store-site.mjs";

/**
 * Runs `kills` rounds on one profile. Gives for each round the age, when the browser was killed, of the oldest edit that is
 * missing afterwards (0 if none is), what was found amiss (jobs of this or any earlier round that are missing or cannot be
 * read, gaps in what was written), how many jobs came back from the second copy because the browser had thrown its database
 * away, and how long the database took to answer.
 *
 * Edits begin, and what is there is looked at, once the shelf says that it keeps jobs on this phone: on a loaded machine the
 * database may answer so late that it first says otherwise.
 */
export async function killOften(kills, { torn = 0, progress = () => {} } = {}) {
  const directory = await mkdtemp(join(tmpdir(), "coldwright-"));
  await writeStorePage(directory);
  const server = await serve(directory);
  const profile = await mkdtemp(join(tmpdir(), "coldwright-"));
  const rounds = [];
  try {
    let done;
    const made = new Set();
    for (let round = 0; round <= kills; round++) {
      const browser = await start(profile);
      try {
        const page = await open(browser, server.address);
        const { answered, broughtBack } = await page.evaluate(() => ({ answered: globalThis.answered, broughtBack: shelf.safekeeping.broughtBack }));
        if (done !== undefined) rounds.push({ ...losses(done, await page.evaluate(lookAround, [...made])), edits: done.edits.length, answered, broughtBack });
        if (round === kills) break;
        done = await editUntilKilled(page, browser, done?.ids[0]);
        for (const id of done.ids) made.add(id);
        if (Math.random() < torn) await tear(profile);
        progress(rounds.at(-1));
      } finally {
        await browser.kill();
      }
    }
  } finally {
    await server.close();
    await rm(directory, { recursive: true });
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
  return rounds;
}

/**
 * Leaves the browser's database as a kill does between two of its writings: with the head of a record and nothing behind it.
 * The next start goes on behind that, and the one after finds a record that is none. Gives whether there was such a database.
 */
export async function tear(profile) {
  const directories = await glob(join(profile, "Default", "IndexedDB"), /\.leveldb$/);
  const logs = (await Promise.all(directories.map((directory) => glob(directory, /\.log$/)))).flat();
  for (const log of logs) await appendFile(log, Buffer.from([1, 2, 3, 4, 100, 0, 1]));
  return logs.length > 0;
}

async function glob(directory, pattern) {
  const names = await readdir(directory).catch(() => []);
  return names.filter((name) => pattern.test(name)).map((name) => join(directory, name));
}

/** A browser in a process group of its own. */
export async function start(profile) {
  const process = spawn(executablePath, [...args, "--headless", `--user-data-dir=${profile}`, "--remote-debugging-port=0", "about:blank"], { detached: true, stdio: ["ignore", "ignore", "pipe"] });
  const ended = once(process, "exit");
  const kill = async () => {
    try {
      globalThis.process.kill(-process.pid, "SIGKILL");
    } catch {
      // It has been killed already.
    }
    await ended;
  };
  for await (const line of createInterface({ input: process.stderr })) {
    const [, address] = /DevTools listening on (\S+)/.exec(line) ?? [];
    if (address === undefined) continue;
    process.stderr.resume();
    return { connection: await chromium.connectOverCDP(address), kill };
  }
  await kill();
  throw new Error("the browser does not start");
}

/** A page whose shelf keeps jobs on this phone. */
export async function open({ connection }, address) {
  const page = await connection.contexts()[0].newPage();
  await page.goto(address);
  await page.evaluate(async () => {
    const start = performance.now();
    globalThis.shelf = await store.openShelf();
    while (shelf.safekeeping.kept !== "on this phone") {
      if (performance.now() - start > 60_000) throw new Error(`no database: ${shelf.safekeeping.reason}`);
      await new Promise((wake) => setTimeout(wake, 20));
    }
    globalThis.answered = performance.now() - start;
  });
  return page;
}

/** Edits a new job and the one of the first round in turns until a random moment; every edit is reported with its time. */
async function editUntilKilled(page, browser, oldest) {
  const edits = [];
  await page.exposeFunction("report", (edit) => edits.push(edit));
  const ids = await page.evaluate(beginEditing, oldest);
  const end = Date.now() + 200 + Math.random() * 1500;
  while (Date.now() < end || edits.length === 0) await new Promise((wake) => setTimeout(wake, Math.random() * 20));
  const killed = Date.now();
  await browser.kill();
  return { ids, edits, killed };
}

/** Runs in the page: an edit every few milliseconds, with a tick counted up in the document. */
async function beginEditing(oldest) {
  const opened = oldest === undefined ? undefined : await shelf.open(oldest);
  const jobs = [opened?.job ?? shelf.create({ name: "the same", tick: 0, ticks: [] }), shelf.create({ name: "new", tick: 0, ticks: [] })];
  const { kept, unsaved } = await shelf.settled();
  if (kept !== "on this phone" || unsaved > 0) throw new Error("the jobs are not on the disk");
  let count = 0;
  const edit = () => {
    const job = jobs[count++ % 2];
    const tick = job.document.tick + 1;
    const time = Date.now();
    job.apply([store.setting(["tick"], tick), store.puttingIn(["ticks"], { id: `t${tick}` })]);
    globalThis.report({ job: job.id, tick, time });
    setTimeout(edit, Math.random() * 15);
  };
  edit();
  return jobs.map(({ id }) => id);
}

/** Runs in the page: the last tick of each of these jobs, and what is amiss with any job. */
async function lookAround(ids) {
  const amiss = [];
  const ticks = {};
  for (const { id } of shelf.list()) {
    const opened = await shelf.open(id);
    if (opened.kind !== "job") {
      amiss.push(`${id}: ${opened.reason ?? opened.kind}`);
      continue;
    }
    const { tick, ticks: list } = opened.job.document;
    ticks[id] = tick;
    if (list.length !== tick || list.some((item, index) => item.id !== `t${index + 1}`)) amiss.push(`${id}: gap`);
    opened.job.close();
  }
  for (const id of ids) if (!(id in ticks)) amiss.push(`${id}: missing`);
  return { ticks, amiss };
}

function losses({ edits, killed }, { ticks, amiss }) {
  const missing = edits.filter(({ job, tick }) => tick > (ticks[job] ?? 0));
  const oldest = Math.min(killed, ...missing.map(({ time }) => time));
  return { loss: killed - oldest, missing: missing.length, amiss };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const progress = (round) => {
    process.stdout.write(".");
    if (round !== undefined && (round.loss > 500 || round.amiss.length > 0 || round.broughtBack > 0)) console.log(JSON.stringify(round));
  };
  const rounds = await killOften(Number(process.argv[2] ?? 10), { torn: Number(process.argv[3] ?? 0), progress });
  const sorted = rounds.map(({ loss }) => loss).sort((one, other) => one - other);
  const amiss = rounds.flatMap((round) => round.amiss);
  const part = (share) => sorted[Math.floor(share * (sorted.length - 1))];
  console.log(`\n${rounds.length} kills amid ${rounds.reduce((sum, { edits }) => sum + edits, 0)} edits, ${rounds.reduce((sum, { missing }) => sum + missing, 0)} edits missing`);
  console.log(`age of the oldest missing edit: median ${part(0.5)} ms, 95 % below ${part(0.95)} ms, worst ${part(1)} ms; kills with nothing missing: ${sorted.filter((loss) => loss === 0).length}`);
  console.log(`databases thrown away by the browser: ${rounds.filter(({ broughtBack }) => broughtBack > 0).length}`);
  console.log(`slowest answer of the database: ${Math.round(Math.max(...rounds.map(({ answered }) => answered)))} ms`);
  console.log(`amiss: ${amiss.length} ${amiss.join(", ")}`);
}
