// A tap on a term, or its key, opens what it means. A finger is wider than a line: what lies within reach of a mark and
// is nothing to tap itself counts as the mark, so that no line has to be moved apart.

import { markClass } from "./marks";
import { openTerm } from "./term-sheet";

/** From the middle of a mark to the edge of its reach, at least: half of 48 px. */
const reach = 24;

const controls = "a, button, input, select, textarea, summary, [contenteditable]";

const marks = (): readonly HTMLElement[] => [...document.querySelectorAll<HTMLElement>(`.${markClass}`)];

document.addEventListener("click", (event) => {
  const mark = markAt(event);
  if (mark === undefined) return;
  // In a label it would lead into the field.
  event.preventDefault();
  open(mark);
});

document.addEventListener("keydown", (event) => {
  const mark = event.target instanceof HTMLElement && event.target.classList.contains(markClass) ? event.target : undefined;
  if (mark === undefined || (event.key !== "Enter" && event.key !== " ")) return;
  event.preventDefault();
  open(mark);
});

function open(mark: HTMLElement): void {
  // The way back leads here.
  mark.focus({ preventScroll: true });
  openTerm(mark.dataset.term ?? "");
}

function markAt(event: MouseEvent): HTMLElement | undefined {
  const { target, clientX, clientY } = event;
  if (!(target instanceof Element)) return undefined;
  const own = target.closest<HTMLElement>(`.${markClass}`);
  if (own !== null) return own;
  const label = target.closest("label");
  const isControl = target.closest(controls) !== null || (label !== null && label.querySelector(`.${markClass}`) === null);
  if (isControl || getSelection()?.isCollapsed === false) return undefined;
  const near = marks().map((mark) => ({ mark, distance: distanceTo(mark, clientX, clientY) })).filter(({ distance }) => distance < Infinity);
  return near.sort((one, other) => one.distance - other.distance)[0]?.mark;
}

/** How far from the middle of the mark's line, or infinite beyond its reach. */
function distanceTo(mark: HTMLElement, x: number, y: number): number {
  const distances = [...mark.getClientRects()].map(({ left, right, top, bottom }) => {
    const [middleX, middleY] = [(left + right) / 2, (top + bottom) / 2];
    const across = Math.max(0, Math.abs(x - middleX) - Math.max(0, (right - left) / 2 - reach));
    return Math.max(across, Math.abs(y - middleY));
  });
  const nearest = Math.min(...distances);
  return nearest <= reach ? nearest : Infinity;
}
