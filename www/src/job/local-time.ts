// Moments as people enter them: by the calendar and the clock where they are.

const two = (number: number): string => String(number).padStart(2, "0");

/** A moment for an `input type="datetime-local"`: `2026-03-02T10:40:00`; nothing if there is none. */
export function localTime(moment: string): string {
  const date = new Date(withoutClock(moment));
  if (moment === "" || Number.isNaN(date.getTime())) return "";
  const day = [date.getFullYear(), two(date.getMonth() + 1), two(date.getDate())].join("-");
  return `${day}T${[date.getHours(), date.getMinutes(), date.getSeconds()].map(two).join(":")}`;
}

/** The moment of such an input, on the same setting of the clock as the one before it. */
export function momentOfLocal(local: string, before: string): string | undefined {
  const date = new Date(local);
  if (Number.isNaN(date.getTime())) return undefined;
  return date.toISOString() + (/\[.*$/.exec(before)?.[0] ?? "");
}

/** Milliseconds of a moment, by what the clock showed; not a number if there is none. */
export function wallOf(moment: string): number {
  return Date.parse(withoutClock(moment));
}

function withoutClock(moment: string): string {
  return moment.replace(/\[.*$/, "");
}

const timeOnly = /^(\d{1,2}):(\d{2})(?::(\d{2}))?$/;

/**
 * The moments of pasted rows, in ms: `2026-03-02 18:40`, or times of the day alone, of which the last one is the latest
 * that is not to come, and each before it the latest that is not after the next. What is neither is left open.
 */
export function pastedTimes(texts: readonly string[], now: number): readonly (number | undefined)[] {
  const reversed: (number | undefined)[] = [];
  let next = now;
  for (const text of [...texts].reverse()) {
    const found = pastedTime(text.trim(), next);
    if (found !== undefined) next = found;
    reversed.push(found);
  }
  return reversed.reverse();
}

function pastedTime(text: string, next: number): number | undefined {
  const [, hour, minute, second = "0"] = timeOnly.exec(text) ?? [];
  if (hour !== undefined && minute !== undefined) {
    const date = new Date(next);
    date.setHours(Number(hour), Number(minute), Number(second), 0);
    if (date.getTime() > next) date.setDate(date.getDate() - 1);
    return Number(hour) < 24 && Number(minute) < 60 ? date.getTime() : undefined;
  }
  const [, day, hours = "", rest] = /^(\d{4}-\d{2}-\d{2})[T ](\d{1,2})(:\d{2}.*)$/.exec(text) ?? [];
  const wall = Date.parse(`${day}T${hours.padStart(2, "0")}${rest}`);
  return Number.isNaN(wall) ? undefined : wall;
}
