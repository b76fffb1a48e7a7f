// What speaks against opening the page anew just now, in this window or another: somebody waits for a clock, or edits
// are in memory only. It is told by the jobs' screens, and must be known where they are not even fetched.

import { keepText, keptText } from "./kept-text";

/** Several pages may share an origin: the name keeps them apart. */
const storageKey = "coldwright running clocks 1";

/** Until when each job's clock runs, in ms since 1970. */
type Clocks = Readonly<Record<string, number>>;

/** What this window alone knows, if the browser stores nothing. */
let unstored: Clocks | undefined;
let unsaved = 0;
let listener: () => void = () => {};

export type Reason = "clock" | "unsaved";

/** Why the page must not be opened anew now, if it must not. */
export function reasonToWait(): Reason | undefined {
  if (Object.keys(running()).length > 0) return "clock";
  return unsaved > 0 ? "unsaved" : undefined;
}

/** Smaller changes than this are none, in ms. */
const slack = 60_000;

/** Notes until when a job's clock runs; nothing if it does not. */
export function noteClock(job: string, until: number | undefined): void {
  const { [job]: before, ...others } = running();
  if (before === until || Math.abs((before ?? 0) - (until ?? 0)) < slack) return;
  const clocks = until === undefined ? others : { ...others, [job]: until };
  if (!keepText(storageKey, JSON.stringify(clocks))) unstored = clocks;
  listener();
}

/** Notes how many edits a reload would lose. */
export function noteUnsaved(count: number): void {
  if (count === unsaved) return;
  unsaved = count;
  listener();
}

/** Calls `changed` after each change; there is one listener, the page. */
export function listenToWaiting(changed: () => void): void {
  listener = changed;
  addEventListener("storage", ({ key }) => {
    if (key === storageKey || key === null) changed();
  });
}

/** The clocks of all windows that still run. */
function running(): Clocks {
  const now = Date.now();
  return Object.fromEntries(Object.entries(unstored ?? stored()).filter(([, until]) => until > now));
}

function stored(): Clocks {
  try {
    const found: unknown = JSON.parse(keptText(storageKey) ?? "{}");
    const isClock = (member: [string, unknown]): member is [string, number] => typeof member[1] === "number";
    return Object.fromEntries(Object.entries(Object(found)).filter(isClock));
  } catch {
    return {};
  }
}
