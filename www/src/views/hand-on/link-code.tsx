// The code of a link, as wide as the screen; a tap shows it alone. The screen stays awake meanwhile.

import type { JSX, RefObject } from "preact";
import { useEffect, useLayoutEffect, useMemo, useReducer, useRef, useState } from "preact/hooks";
import { codeOf, drawCode, type Code } from "../../hand-on/code";
import { useAwake } from "../../job/awake";
import { isFromFile } from "../../link-base";
import { message } from "../../locale";

export function LinkCode({ link }: { readonly link: string }): JSX.Element {
  const code = useMemo(() => codeOf(link), [link]);
  return (
    <>
      {isFromFile() && <p data-from-file>{message("hand-on-from-file")}</p>}
      {code === undefined ? (
        <p role="status" data-code="too-large">
          {message("hand-on-code-too-large", { characters: link.length })}
        </p>
      ) : (
        <DrawnCode code={code} />
      )}
    </>
  );
}

function DrawnCode({ code }: { readonly code: Code }): JSX.Element {
  const [isAlone, setAlone] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const waking = useAwake(true);
  useSizeOf(button);
  useLayoutEffect(() => {
    const width = button.current?.clientWidth ?? 0;
    if (canvas.current !== null) drawCode(canvas.current, code, Math.min(width, innerHeight));
  });
  useBackFirst(isAlone, () => setAlone(false));
  return (
    <>
      <button
        class={isAlone ? "link-code alone" : "link-code"}
        data-action="code"
        aria-pressed={isAlone}
        aria-label={message("hand-on-code")}
        ref={button}
        onClick={() => setAlone(!isAlone)}
      >
        <canvas ref={canvas} data-modules={code.length} />
      </button>
      <p class="note">
        {message("hand-on-code-hint")} {waking !== "awake" && message("hand-on-code-sleeps")}
      </p>
    </>
  );
}

/** Draws anew when the part has another size, as when the panel has just opened around it, and on a screen with other pixels. */
function useSizeOf(part: RefObject<HTMLElement | null>): void {
  const [, changed] = useReducer((count: number) => count + 1, 0);
  useEffect(() => {
    const listener = (): void => changed(undefined);
    const observer = new ResizeObserver(listener);
    if (part.current !== null) observer.observe(part.current);
    addEventListener("resize", listener);
    return () => {
      observer.disconnect();
      removeEventListener("resize", listener);
    };
  }, []);
}

/** While something covers the panel, the way out leads back to the panel. */
function useBackFirst(isCovered: boolean, uncover: () => void): void {
  useEffect(() => {
    if (!isCovered) return;
    const cancel = (event: Event): void => {
      event.preventDefault();
      uncover();
    };
    addEventListener("cancel", cancel, true);
    return () => removeEventListener("cancel", cancel, true);
  }, [isCovered]);
}
