// Moments: as the core takes them, and as people read them.

import { locale } from "../locale";

/**
 * Now, as a job records it: universal time, and after the clock was set how often it has been. To the second: nobody reads
 * an instrument to less, and the link of a job carries every one.
 */
export function momentNow(clockChanges = 0, at = Date.now()): string {
  const moment = new Date(at).toISOString().replace(/\.\d+Z$/, "Z");
  return clockChanges === 0 ? moment : `${moment}[_clock=${clockChanges}]`;
}

function dateOf(moment: string): Date | undefined {
  const date = new Date(moment.replace(/\[.*$/, ""));
  return Number.isNaN(date.getTime()) ? undefined : date;
}

/** How far the zone of the phone is from universal time, in winter and in summer. */
function zoneMark(): string {
  return [0, 6].map((month) => new Date(2026, month, 1).getTimezoneOffset()).join(" ");
}

/** Made once, since a list has many moments; anew for another language and where the phone has gone to another zone, for it keeps the one it was made in. */
function writerOf(options: Intl.DateTimeFormatOptions): () => Intl.DateTimeFormat {
  let [writer, made] = [undefined as Intl.DateTimeFormat | undefined, ""];
  return () => {
    const here = `${locale} ${zoneMark()}`;
    if (writer === undefined || made !== here) [writer, made] = [new Intl.DateTimeFormat(locale, options), here];
    return writer;
  };
}

/** A day is read as one, and so is a time with its half of the day. */
function unbroken(text: string): string {
  return text.split(", ").map((part) => part.replaceAll(" ", "\u00a0")).join(", ");
}

const dayAndTime = writerOf({ dateStyle: "medium", timeStyle: "short" });

/** Day and time where the phone is. */
export function momentText(moment: string): string {
  const date = dateOf(moment);
  return date === undefined ? moment : unbroken(dayAndTime().format(date));
}

const shortDayAndTime = writerOf({ month: "short", day: "numeric", hour: "2-digit", minute: "2-digit", hourCycle: "h23" });

/** The same where many stand beneath each other and the year is told elsewhere. */
export function shortMoment(moment: string): string {
  const date = dateOf(moment);
  return date === undefined ? moment : unbroken(shortDayAndTime().format(date));
}

/** Whether a text is a moment as jobs record them. */
export function isMoment(text: string): boolean {
  return /^\d{4}-\d\d-\d\dT/.test(text) && dateOf(text) !== undefined;
}

/** The time of day alone. */
export function timeOfDay(moment: string): string {
  return dateOf(moment)?.toLocaleTimeString(locale, { timeStyle: "short" }) ?? moment;
}

/** The day alone. */
export function dayText(moment: string): string {
  return unbroken(dateOf(moment)?.toLocaleDateString(locale, { dateStyle: "medium" }) ?? moment);
}
