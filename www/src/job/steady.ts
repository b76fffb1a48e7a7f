// What is under the thumb stays there: what a tap brings or takes away above it moves the page, not the part that was tapped.

import type { RefObject } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";

/** `hold` before a change keeps the part where it is on the screen once the change is drawn. */
export function useSteady<Part extends HTMLElement>(): { readonly part: RefObject<Part | null>; readonly hold: () => void } {
  const part = useRef<Part>(null);
  const held = useRef<number | undefined>(undefined);
  useLayoutEffect(() => {
    if (held.current === undefined || part.current === null) return;
    scrollBy({ top: topOf(part.current) - held.current, behavior: "instant" });
    held.current = undefined;
  });
  return {
    part,
    hold: () => {
      if (part.current !== null) held.current = topOf(part.current);
    },
  };
}

function topOf(part: HTMLElement): number {
  return part.getBoundingClientRect().top;
}
