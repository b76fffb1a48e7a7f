// How long a hold has lasted, to the second: asked anew of the core at every tick, so that a locked phone, a closed
// page or another time zone makes no difference.

import type { JSX } from "preact";
import { assess, type Assessment, type HoldClock as Clock } from "../../../core";
import { useAwake } from "../../../job/awake";
import { nowIn, useJob } from "../../../job/job-context";
import { momentText } from "../../../job/moment";
import { useTick } from "../../../job/tick";
import { message } from "../../../locale";
import { holdText } from "../../standing-test/ask";
import { RingChoice } from "./ring-choice";

export type ClockName = "pressureClock" | "pumpClock" | "vacuumClock";

/** Its clock as it is now; nothing if the hold has not begun. */
function useClock(of: ClockName, isRunning: boolean): Clock | undefined {
  const { document, assessment } = useJob();
  useTick(isRunning && assessment[of] != null);
  const reply = assess(document, nowIn(document), null);
  const now: Assessment = "answer" in reply ? reply.answer : assessment;
  return now[of] ?? undefined;
}

export function HoldClock({ of, isRunning }: {
  readonly of: ClockName;
  /** Whether it still runs. */
  readonly isRunning: boolean;
}): JSX.Element | null {
  const clock = useClock(of, isRunning);
  const isWaitedFor = isRunning && clock !== undefined && clock.remaining !== 0;
  const waking = useAwake(isWaitedFor);
  if (clock === undefined) return null;
  const { passed, started, lasts, remaining, due, doubt } = clock;
  return (
    <section class="hold-clock" data-clock={of} aria-label={message(`clock-${of}`)}>
      <p class="clock-line">
        <span>{message(`clock-${of}`)}</span>
        <b class="clock-figure" role="timer" data-passed={Math.floor(passed)}>
          {clockText(Math.floor(passed))}
        </b>
        <span>{message("clock-since", { moment: momentText(started) })}</span>
      </p>
      {lasts != null && remaining != null && (
        <p data-remaining={Math.ceil(remaining)}>
          {remaining === 0
            ? message("clock-over", { lasts: holdText(lasts) })
            : message("clock-to-go", { lasts: holdText(lasts), remaining: clockText(Math.ceil(remaining)), due: momentText(due ?? "") })}
        </p>
      )}
      {doubt != null && (
        <p class="problem" data-doubt={doubt}>
          {message(`clock-doubt-${doubt}`)}
        </p>
      )}
      {isWaitedFor && <p class="note" data-waking={waking}>{message(`waking-${waking}`)}</p>}
      {isWaitedFor && due != null && <RingChoice due={due} />}
    </section>
  );
}

/** `9:12:34`: hours, minutes, seconds. */
export function clockText(seconds: number): string {
  const two = (number: number): string => String(number).padStart(2, "0");
  return `${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(Math.floor(seconds % 60))}`;
}
