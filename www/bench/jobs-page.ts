// A page for jobs.mjs: the list of jobs with a search, drawn as plainly as can be, so that what is measured is the store.

import { openShelf, setting, type Shelf, type Summary, type TreeObject } from "../src/store/jobs";

declare global {
  /** When the list has been painted, since navigation. */
  var listed: number | undefined;
  var fill: (jobs: number) => Promise<void>;
  /** Opens a job and writes to it; gives how long each took. */
  var openAndEdit: () => Promise<{ readonly open: number; readonly edits: readonly number[] }>;
}

/** Rows that a screen shows at once, and some more. */
const rowsDrawn = 40;

function joint(number: number): TreeObject {
  return { id: `joint${number}`, size: "5/8 in", torque: "68 N·m", cone: "19.4 mm", state: "tightened", note: "backed up with a second wrench" };
}

function reading(number: number): TreeObject {
  return { id: `reading${number}`, time: `2030-05-01T08:${String(number % 60).padStart(2, "0")}:00Z`, pressure: `${40 + number / 100} bar`, temperature: "21.5 °C" };
}

function document(number: number): TreeObject {
  const places = ["Café Río", "Cold room", "Bakery", "Server room", "House"];
  return {
    name: `${places[number % places.length]} ${number}, unit ${number % 7}`,
    joints: Array.from({ length: 20 }, (_, index) => joint(index)),
    readings: Array.from({ length: 500 }, (_, index) => reading(index)),
  };
}

function draw(list: readonly Summary[]): void {
  const rows = list.slice(0, rowsDrawn).map(({ name, edited, glance }) => {
    const row = window.document.createElement("li");
    row.textContent = `${name} · ${glance} · ${edited}`;
    return row;
  });
  window.document.querySelector("ul")?.replaceChildren(...rows);
}

async function openAndEdit(shelf: Shelf): Promise<{ open: number; edits: readonly number[] }> {
  const start = performance.now();
  const opened = await shelf.open(shelf.list()[0]?.id ?? "");
  const open = performance.now() - start;
  if (opened.kind !== "job") throw new Error(opened.kind);
  const edits: number[] = [];
  for (let count = 0; count < 40; count++) {
    const before = performance.now();
    opened.job.apply(setting(["readings", "#reading400", "pressure"], `${count} bar`));
    edits.push(performance.now() - before);
    await new Promise((wake) => setTimeout(wake, 40));
  }
  await shelf.settled();
  return { open, edits };
}

const shelf = await openShelf({ database: location.hash.slice(1) });
draw(shelf.list());
requestAnimationFrame(() => {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => (globalThis.listed = performance.now());
  port2.postMessage(undefined);
});
window.document.querySelector("input")?.addEventListener("input", ({ currentTarget }) => {
  draw(shelf.list((currentTarget as HTMLInputElement).value));
});
globalThis.openAndEdit = () => openAndEdit(shelf);
globalThis.fill = async (jobs) => {
  for (let number = 0; number < jobs; number++) {
    const job = shelf.create(document(number));
    job.setGlance(`${number % 20} of 20 joints, hold test open`);
    job.close();
    if (number % 20 === 0) await shelf.settled();
  }
  await shelf.settled();
};
