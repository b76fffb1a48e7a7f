// Keeps the screen awake while a clock runs, where the browser can.

import { useEffect, useState } from "preact/hooks";

/** Whether the screen stays on: `asleep` while the page is not seen, `refused` to save the battery. */
export type Waking = "awake" | "asleep" | "refused" | "not-offered";

export function useAwake(isWanted: boolean): Waking {
  const isOffered = "wakeLock" in navigator;
  // The answer comes at once, and is nearly always yes: another sentence until then would only flash.
  const [waking, setWaking] = useState<Waking>(isOffered ? "awake" : "not-offered");
  useEffect(() => {
    if (!isWanted || !isOffered) return;
    let lock: WakeLockSentinel | undefined;
    let isOver = false;
    // The browser lets go of it whenever the page is hidden.
    const hold = (): void => {
      if (document.visibilityState !== "visible" || (lock !== undefined && !lock.released)) return;
      navigator.wakeLock.request("screen").then(held, () => !isOver && setWaking("refused"));
    };
    const held = (taken: WakeLockSentinel): void => {
      if (isOver) return void taken.release();
      lock = taken;
      setWaking("awake");
      taken.addEventListener("release", () => !isOver && setWaking("asleep"));
    };
    hold();
    document.addEventListener("visibilitychange", hold);
    return () => {
      isOver = true;
      document.removeEventListener("visibilitychange", hold);
      void lock?.release();
    };
  }, [isWanted, isOffered]);
  return waking;
}
