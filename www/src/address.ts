// What the person has typed lives in the address, so that a reload, a restored tab and a link all
// open the same place: `#/torque?tube=5/8&adapterLength=40%20mm`. The fragment never reaches a server.

/** A place in the page and the texts entered there, as typed. */
export interface Place {
  /** Path without the slashes at its ends; empty for the start. */
  readonly path: string;
  /** Texts by field name; an empty text is never kept. */
  readonly entries: Entries;
}

export type Entries = Readonly<Record<string, string>>;

/** Longest text that is kept of one field: more is no figure. */
const longestText = 200;
/** Where a whole job may stand in the address; the core says how long it may be. */
const placeOfJobs = "handed";
const longestJob = 50_000;

function longestAt(path: string): number {
  return path === placeOfJobs ? longestJob : longestText;
}

/** Reads a place from the fragment of an address; whatever it holds, a place comes out. */
export function readPlace(fragment: string): Place {
  const [path = "", query = ""] = splitOnce(fragment.replace(/^#/, ""), "?");
  const pairs = query.split("&").map((pair) => splitOnce(pair, "=").map(decoded));
  const entries: Record<string, string> = {};
  const place = decoded(path).replace(/^\/+|\/+$/g, "");
  for (const [name = "", text = ""] of pairs) {
    if (/^[a-zA-Z][a-zA-Z0-9_]*$/.test(name) && text !== "") entries[name] = text.slice(0, longestAt(place));
  }
  return { path: place, entries };
}

/** The fragment that opens a place. */
export function writePlace({ path, entries }: Place): string {
  const query = Object.entries(entries)
    .filter(([, text]) => text !== "")
    .map(([name, text]) => `${name}=${encoded(text.slice(0, longestAt(path)))}`)
    .join("&");
  return `#/${path}${query === "" ? "" : `?${query}`}`;
}

let current: Place | undefined;
/** The fragment that stands for it: as it was read, or as it was last written. */
let known = "";
let listener: () => void = () => {};

/** Where the page is now. */
export function place(): Place {
  current ??= placeOfAddress();
  return current;
}

function placeOfAddress(): Place {
  known = location.hash;
  return readPlace(known);
}

/** Keeps the text of a field as typed; an empty text takes the field out. */
export function enter(name: string, text: string): void {
  enterAll({ [name]: text });
}

/** Keeps the texts of several fields at once. */
export function enterAll(texts: Entries): void {
  const { path, entries } = place();
  const changed = Object.entries({ ...entries, ...texts }).filter(([, text]) => text !== "");
  current = { path, entries: Object.fromEntries(changed) };
  scheduleWriting();
  listener();
}

/** Goes to another place; the way back leads here. */
export function goTo(next: Place): void {
  saveAddress();
  history.pushState(null, "", writePlace(next));
  known = location.hash;
  current = next;
  listener();
}

/** Calls `changed` whenever the place or a text in it has changed; there is one listener, the page. */
export function listenToAddress(changed: () => void): void {
  listener = changed;
  const moved = (): void => {
    cancelWriting();
    current = placeOfAddress();
    changed();
  };
  addEventListener("hashchange", moved);
  // Before a link leads away, so that the way back finds everything.
  addEventListener("click", saveAddress, true);
  addEventListener("pagehide", saveAddress);
  document.addEventListener("visibilitychange", saveAddress);
}

/** Some browsers refuse more than a hundred writings in half a minute. */
const mostWritings = 90;
const millisecondsOfMostWritings = 30_000;
let writings: readonly number[] = [];
let writing: ReturnType<typeof setTimeout> | undefined;

/** Writes after the figures have been drawn; when much is typed, the next writing takes it all together. */
function scheduleWriting(): void {
  const start = performance.now() - millisecondsOfMostWritings;
  writings = writings.filter((time) => time > start);
  const wait = writings.length < mostWritings ? 0 : (writings[0] ?? start) - start;
  writing ??= setTimeout(writeNow, wait);
}

function writeNow(): void {
  cancelWriting();
  // The browser has gone elsewhere and has not said so yet: this place must not be written over that one.
  if (location.hash !== known) return;
  writings = [...writings, performance.now()];
  history.replaceState(null, "", writePlace(place()));
  known = location.hash;
}

function cancelWriting(): void {
  clearTimeout(writing);
  writing = undefined;
}

/** Writes what waits to be written. */
export function saveAddress(): void {
  if (writing !== undefined) writeNow();
}

function splitOnce(text: string, mark: string): [string, string] {
  const at = text.indexOf(mark);
  return at < 0 ? [text, ""] : [text.slice(0, at), text.slice(at + mark.length)];
}

/** Leaves alone what a fragment may hold and a person wants to read, such as the stroke of 5/8. */
function encoded(text: string): string {
  return encodeURIComponent(text).replace(/%(2F|2C|3A|3B|40|24)/g, decodeURIComponent);
}

/** A broken escape is kept as it stands: somebody may have cut the link. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
