// A page for store.mjs: nothing but the store and one job.

import { openShelf, setting, type Shelf, type TreeObject } from "../src/store/jobs";

declare global {
  /** Opens a job and writes to it, so many times; gives how long each took. */
  var openAndEdit: (rounds: number) => Promise<{ readonly opens: readonly number[]; readonly edits: readonly number[] }>;
}

const editsEach = 10;
const millisecondsBetween = 40;

function joint(number: number): TreeObject {
  return { id: `joint${number}`, tube: "5/8 in", scaleTorque: "68 N·m", measuredCone: "19.4 mm", note: "backed up with a second wrench" };
}

function reading(number: number): TreeObject {
  return { id: `reading${number}`, at: `2030-05-01T08:${String(number % 60).padStart(2, "0")}:00Z`, gaugePressure: `${40 + number / 100} bar`, temperature: "21.5 °C" };
}

function jobDocument(): TreeObject {
  return {
    name: "Cold room",
    joints: Array.from({ length: 20 }, (_, number) => joint(number)),
    readings: Array.from({ length: 500 }, (_, number) => reading(number)),
  };
}

async function openAndEdit(shelf: Shelf, id: string): Promise<{ open: number; edits: readonly number[] }> {
  const start = performance.now();
  const opened = await shelf.open(id);
  const open = performance.now() - start;
  if (opened.kind !== "job") throw new Error(opened.kind);
  const edits: number[] = [];
  for (let count = 0; count < editsEach; count++) {
    const before = performance.now();
    opened.job.apply(setting(["readings", "#reading400", "gaugePressure"], `${count} bar`));
    edits.push(performance.now() - before);
    await new Promise((wake) => setTimeout(wake, millisecondsBetween));
  }
  opened.job.close();
  await shelf.settled();
  return { open, edits };
}

const shelf = await openShelf({ database: "bench" });
const created = shelf.create(jobDocument());
created.close();
await shelf.settled();
globalThis.openAndEdit = async (rounds) => {
  const opens: number[] = [];
  const edits: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const taken = await openAndEdit(shelf, created.id);
    opens.push(taken.open);
    edits.push(...taken.edits);
  }
  return { opens, edits };
};
