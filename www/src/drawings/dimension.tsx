// A dimension line: extension lines from the two points, arrows, the figure on the line or, where
// there is no room for it, beside the line.

import type { JSX } from "preact";
import { textWidth } from "./sheet";

export interface Point {
  readonly x: number;
  readonly y: number;
}

export function Dimension({ from, to, offset, label, letter, isBold }: {
  readonly from: Point;
  readonly to: Point;
  /** How far the line stands off, to the left of the way from one point to the other. */
  readonly offset: number;
  readonly label: string;
  readonly letter: number;
  readonly isBold?: boolean;
}): JSX.Element {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const across = { x: along.y, y: -along.x };
  const [a, b] = [moved(from, across, offset), moved(to, across, offset)];
  const overshoot = Math.sign(offset) * 5;
  const needed = Math.abs(along.x) * (textWidth(label, letter) + 8) + Math.abs(along.y) * letter * 1.3;
  const isBeside = needed + 16 > length;
  const middle = moved(a, along, length / 2);
  const aside = Math.sign(offset) * (letter * 0.75 + Math.abs(across.x) * (textWidth(label, letter) / 2));
  const place = isBeside ? moved(middle, across, aside) : middle;
  return (
    <g>
      {offset !== 0 && <path class="extension" d={line(from, moved(a, across, overshoot)) + line(to, moved(b, across, overshoot))} />}
      <path class="dimension" d={line(a, b) + arrow(a, along) + arrow(b, { x: -along.x, y: -along.y })} />
      <Label at={place} text={label} letter={letter} isBold={isBold === true} isBare={isBeside} />
    </g>
  );
}

/** A text on a patch of paper, so that no line runs through it; bare where it stands clear of all lines. */
export function Label({ at, text, letter, isBold, isBare, anchor = "middle" }: {
  readonly at: Point;
  readonly text: string;
  readonly letter: number;
  readonly isBold?: boolean;
  readonly isBare?: boolean;
  readonly anchor?: "start" | "middle" | "end";
}): JSX.Element {
  const width = textWidth(text, letter) + 6;
  const left = at.x - { start: 3, middle: width / 2, end: width - 3 }[anchor];
  return (
    <>
      {isBare !== true && <rect class="patch" x={left} y={at.y - letter * 0.65} width={width} height={letter * 1.3} />}
      <text x={at.x} y={at.y + letter * 0.35} text-anchor={anchor} font-size={letter} class={isBold === true ? "bold" : undefined}>
        {text}
      </text>
    </>
  );
}

export function moved(point: Point, direction: Point, distance: number): Point {
  return { x: point.x + direction.x * distance, y: point.y + direction.y * distance };
}

export function line(from: Point, to: Point): string {
  return `M${round(from.x)} ${round(from.y)}L${round(to.x)} ${round(to.y)}`;
}

/** An arrow's head with its point here, its shaft in the direction. */
export function arrow(at: Point, shaft: Point): string {
  const back = moved(at, shaft, 7);
  const across = { x: shaft.y, y: -shaft.x };
  return `${line(moved(back, across, 2.6), at)}${line(at, moved(back, across, -2.6))}`;
}

export function round(pixels: number): number {
  return Math.round(pixels * 10) / 10;
}
