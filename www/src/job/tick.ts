// Draws anew once a second, for a clock on the screen, and as soon as the page is looked at again.

import { useEffect, useReducer } from "preact/hooks";

export function useTick(isRunning: boolean): void {
  const [, draw] = useReducer((count: number) => count + 1, 0);
  useEffect(() => {
    if (!isRunning) return;
    const tick = (): void => draw(undefined);
    const timer = setInterval(tick, 1000);
    document.addEventListener("visibilitychange", tick);
    addEventListener("pageshow", tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", tick);
      removeEventListener("pageshow", tick);
    };
  }, [isRunning]);
}
