// Which clocks of a job somebody waits for, and telling the rest of the page.

import { useEffect } from "preact/hooks";
import type { Assessment, HoldClock } from "../core";
import type { OpenJob, TreeObject } from "../store/jobs";
import { noteClock } from "../waiting";
import { textAt } from "./job-path";

/** A pump has no end that the page knows: it is taken to run for so long after it was last looked at, in ms. */
const longestUnseen = 24 * 3600 * 1000;

/** Whether the system was opened to the refrigerant: no vacuum is held any more. */
export function isReleased(document: TreeObject): boolean {
  return ["liquidValveOpened", "gasValveOpened"].some((valve) => textAt(document, "release", valve) !== "");
}

/** The clocks that nothing has ended: the pump ends the pressure hold, valving off the pump, the opened valves all. */
export function clocksOf(document: TreeObject, { pressureClock, pumpClock, vacuumClock }: Assessment): readonly (readonly [string, HoldClock])[] {
  if (isReleased(document)) return [];
  const clocks = { pressure: pumpClock == null ? pressureClock : undefined, pump: vacuumClock == null ? pumpClock : undefined, vacuum: vacuumClock };
  return Object.entries(clocks).flatMap(([name, clock]) => (clock == null ? [] : [[name, clock] as const]));
}

/** Tells the page until when the job's clocks run: it is not to be opened anew before, also after the job is closed. */
export function useRunningClocks(job: OpenJob, assessment: Assessment | undefined): void {
  useEffect(() => {
    if (assessment === undefined) return;
    const waitedFor = clocksOf(job.document, assessment).filter(([, { remaining }]) => remaining !== 0);
    const ends = waitedFor.map(([, { remaining }]) => Date.now() + (remaining == null ? longestUnseen : 1000 * remaining));
    noteClock(job.id, ends.length === 0 ? undefined : Math.max(...ends));
  }, [job, assessment]);
}
