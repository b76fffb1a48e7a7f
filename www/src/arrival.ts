// After going to another place: its beginning is in view, and a screen reader says where one is.

/** Whether the person has gone to a place whose view is still on its way. */
let isAwaited = false;

export function arrive(): void {
  const heading = document.querySelector("h1");
  isAwaited = heading === null;
  scrollTo(0, 0);
  if (heading === null) return;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
}

/** To be called by a view that had to be fetched, once it is drawn. */
export function arriveLate(): void {
  if (isAwaited) arrive();
}
