// A swipe across: a finger or a pen that goes sideways and not up or down.

import { useRef } from "preact/hooks";

interface Swiped {
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerUp: (event: PointerEvent) => void;
  readonly onPointerCancel: () => void;
}

/** Shortest way across, CSS pixels, and how much longer it is than the way up or down. */
const shortest = 56;
const steepest = 2;

export function useSwipe({ onLeft, onRight }: { readonly onLeft: () => void; readonly onRight: () => void }): Swiped {
  const start = useRef<PointerEvent | undefined>(undefined);
  return {
    onPointerDown: (event) => {
      // A mouse marks text with the same movement, and so does a finger in a field.
      const isOfField = event.target instanceof Element && event.target.matches("input[type=text], select, textarea");
      start.current = event.pointerType === "mouse" || isOfField || !event.isPrimary ? undefined : event;
    },
    onPointerUp: (event) => {
      const from = start.current;
      start.current = undefined;
      if (from?.pointerId !== event.pointerId) return;
      const [across, down] = [event.clientX - from.clientX, Math.abs(event.clientY - from.clientY)];
      if (Math.abs(across) < shortest || Math.abs(across) < steepest * down) return;
      if (across < 0) onLeft();
      else onRight();
    },
    onPointerCancel: () => {
      start.current = undefined;
    },
  };
}
