// Rings when the time of a hold is over, on whichever screen of the job the person is.

import { useEffect, useRef } from "preact/hooks";
import { assess, type HoldClock } from "../../../core";
import { nowIn, useJob } from "../../../job/job-context";
import { isReadyToRing, ring } from "../../../job/ring";
import { clocksOf } from "../../../job/running-clocks";
import { message } from "../../../locale";

/** Timers stand while a device sleeps: looked at again at least so often, in ms. */
const longestWait = 30_000;

export function DueRing(): null {
  const { job } = useJob();
  const waitedFor = useRef<ReadonlySet<string>>(new Set());
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const look = (): void => {
      clearTimeout(timer);
      const clocks = keyedClocks(job.document);
      const due = clocks.filter(([, { remaining }]) => remaining != null && remaining > 0);
      const isOver = clocks.some(([key, { remaining }]) => remaining === 0 && waitedFor.current.has(key));
      if (isOver && isReadyToRing()) void ring(message("ring-over"));
      waitedFor.current = new Set(due.map(([key]) => key));
      const wait = Math.min(longestWait, ...due.map(([, { remaining }]) => 1000 * (remaining ?? 0) + 50));
      if (due.length > 0) timer = setTimeout(look, wait);
    };
    look();
    const unsubscribe = job.subscribe(look);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearTimeout(timer);
      unsubscribe();
      document.removeEventListener("visibilitychange", look);
    };
  }, [job]);
  return null;
}

/** The clocks, each by what it is and when it began: a new hold is waited for anew. */
function keyedClocks(document: Parameters<typeof nowIn>[0]): readonly (readonly [string, HoldClock])[] {
  const reply = assess(document, nowIn(document), null);
  if (!("answer" in reply)) return [];
  return clocksOf(document, reply.answer).map(([name, clock]) => [`${name} ${clock.started}`, clock]);
}
