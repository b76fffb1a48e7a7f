// Notices that the device's clock was set while a job is open, and records it: the moments after it then say how
// often that has been, so that the core can leave the jump out of the time that passed.

import { itemsAt, textAt } from "./job-path";
import { momentNow } from "./moment";
import { puttingIn, type OpenJob } from "../store/jobs";

/** What the page sees at a tick. */
export interface Sight {
  /** What the device's clock shows, in ms. */
  readonly wall: number;
  /** A clock that nobody can set, in ms; on some devices it stands while they sleep. */
  readonly steady: number;
  readonly isVisible: boolean;
}

/** The clock was set, or may have been. No time passed from the one to the other. */
export interface ClockChange {
  readonly before: number;
  readonly after: number;
  /** Whether time may have passed after all. */
  readonly mayHaveSlept: boolean;
}

/** Clocks drift and are put right by less than this, in ms. */
const slack = 2000;
/** A page whose timers run is never looked at later than this, in ms. */
const longestTick = 10_000;

/**
 * Whether the clock was set between two sights. Back is certain. Ahead may as well be sleep: of a page that nobody
 * saw, or whose timers stood, it is; of one that was seen all the time it cannot be told.
 */
export function clockChange(before: Sight, after: Sight): ClockChange | undefined {
  const passed = after.steady - before.steady;
  const meant = before.wall + passed;
  const jump = after.wall - meant;
  if (jump < -slack) return { before: meant, after: after.wall, mayHaveSlept: false };
  const wasWatched = before.isVisible && after.isVisible && passed <= longestTick;
  return jump > slack && wasWatched ? { before: meant, after: after.wall, mayHaveSlept: true } : undefined;
}

/** Whether the clock was set back since `lastEdit`, while nobody watched: the time till then is lost. */
export function unwatchedChange(lastEdit: number, wall: number): ClockChange | undefined {
  return wall < lastEdit - slack ? { before: lastEdit, after: wall, mayHaveSlept: true } : undefined;
}

/** Whether a change is one that another window has recorded; `passed` is the time between the two sights. */
export function isSameChange(change: ClockChange, recorded: Omit<ClockChange, "mayHaveSlept">, passed: number): boolean {
  const jumpOf = ({ before, after }: Omit<ClockChange, "mayHaveSlept">): number => after - before;
  const isSameJump = Math.abs(jumpOf(change) - jumpOf(recorded)) <= slack;
  return isSameJump && recorded.after <= change.after + slack && recorded.after >= change.after - passed - slack;
}

/** Watches the clock for a job until the function it gives is called. */
export function watchClock(job: OpenJob): () => void {
  let last = sight();
  const unwatched = unwatchedChange(Date.parse(textAt(job.document, "edited")), last.wall);
  if (unwatched) record(job, unwatched);
  const look = (): void => {
    const now = sight();
    const change = clockChange(last, now);
    const passed = now.steady - last.steady;
    last = now;
    const recorded = lastRecorded(job);
    if (change && !(recorded && isSameChange(change, recorded, passed))) record(job, change);
  };
  const timer = setInterval(look, 1000);
  document.addEventListener("visibilitychange", look);
  addEventListener("pageshow", look);
  return () => {
    clearInterval(timer);
    document.removeEventListener("visibilitychange", look);
    removeEventListener("pageshow", look);
  };
}

function sight(): Sight {
  return { wall: Date.now(), steady: performance.now(), isVisible: document.visibilityState === "visible" };
}

function lastRecorded({ document }: OpenJob): Omit<ClockChange, "mayHaveSlept"> | undefined {
  const last = itemsAt(document, "clockChanges").at(-1);
  if (last === undefined) return undefined;
  const [before, after] = [last.before, last.after].map((moment) => Date.parse(String(moment).replace(/\[.*$/, "")));
  return before === undefined || after === undefined ? undefined : { before, after };
}

/** Two windows that notice at once name the change alike, and only one of them is taken. */
function record(job: OpenJob, { before, after, mayHaveSlept }: ClockChange): void {
  const count = itemsAt(job.document, "clockChanges").length;
  job.apply(
    puttingIn(["clockChanges"], {
      id: `clock-${count + 1}`,
      before: momentNow(count, Math.max(before, 0)),
      after: momentNow(count + 1, after),
      mayHaveSlept,
    }),
  );
}
