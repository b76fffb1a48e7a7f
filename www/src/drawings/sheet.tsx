// The sheet that drawings are drawn on: as wide as the column of the page, letters as large as the
// person's own, so that a drawing never shrinks its labels.

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useState } from "preact/hooks";

export interface Sheet {
  /** Width in CSS pixels. */
  readonly width: number;
  /** Height of a drawing's small letters in CSS pixels. */
  readonly letter: number;
}

/** Widest column of the page and its margins, in letters of the root: as in the style sheet. */
const columnLetters = 40;
const marginLetters = 2;

/** As it was last measured: to measure it again for each drawing would lay out the page while it is being drawn. */
let sheet: Sheet | undefined;
const followers = new Set<(sheet: Sheet) => void>();

function measured(): Sheet {
  const root = document.documentElement;
  const letter = Number.parseFloat(getComputedStyle(root).fontSize) || 16;
  const column = Math.min(root.clientWidth, columnLetters * letter);
  return { width: Math.max(column - marginLetters * letter, 200), letter: 0.8125 * letter };
}

function sheetNow(): Sheet {
  if (sheet === undefined) new ResizeObserver(measureAgain).observe(document.documentElement);
  sheet ??= measured();
  return sheet;
}

/** The page has become wider, narrower or longer: the phone was turned, the letters were made larger, or more is shown. */
function measureAgain(): void {
  const now = measured();
  if (now.width === sheet?.width && now.letter === sheet.letter) return;
  sheet = now;
  for (const follow of followers) follow(now);
}

/** The sheet as it is now; follows the turning of the phone and the size of letters. */
export function useSheet(): Sheet {
  const [current, setCurrent] = useState(sheetNow);
  useEffect(() => {
    followers.add(setCurrent);
    // Between the drawing and this it may have changed.
    setCurrent(sheetNow());
    return () => void followers.delete(setCurrent);
  }, []);
  return current;
}

/** A drawing in CSS pixels with its text alternative. */
export function Drawing({ width, height, letter, alternative, children }: Sheet & {
  readonly height: number;
  readonly alternative: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <svg
      class="drawing"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      font-size={letter}
      role="img"
      aria-label={alternative}
    >
      {children}
    </svg>
  );
}

/** Letters no larger than a text has room for: in some languages it is longer. */
export function fittedLetter(text: string, letter: number, room: number): number {
  return Math.min(letter, (letter * Math.max(room, 0)) / textWidth(text, letter));
}

/** About how wide a text is drawn. */
export function textWidth(text: string, letter: number): number {
  return text.length * letter * 0.6;
}
