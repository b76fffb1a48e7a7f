// What every plot has: the field between its axes, and the axes with their ticks, grid and units.

import type { JSX } from "preact";
import type { Axis } from "./axis";
import { round } from "./dimension";
import { textWidth, type Sheet } from "./sheet";

export interface PlotAxes {
  readonly across: Axis;
  readonly up: Axis;
}

/** Where on the sheet the SI numbers of both axes stand. */
export interface PlotField {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  readonly height: number;
  readonly x: (across: number) => number;
  readonly y: (up: number) => number;
}

/** Most ticks that the axis across has room for. */
export function mostAcross({ width, letter }: Sheet): number {
  return width < letter * 22 ? 4 : 8;
}

/** How tall the field is: a part of the sheet's width, up to so many pixels. */
export interface PlotShape {
  readonly part: number;
  readonly tallest: number;
}

/** The field; `length` is that of a number along the upright axis, its logarithm for one. */
export function plotField(
  { width, letter }: Sheet,
  { across, up }: PlotAxes,
  { part, tallest }: PlotShape,
  length: (number: number) => number = (number) => number,
): PlotField {
  const widest = Math.max(0, ...up.ticks.map(({ text }) => textWidth(text, letter)));
  const [left, right, top] = [widest + 8, width - letter, letter * 1.8];
  const foot = top + Math.min(Math.max(width * part, letter * 12), tallest);
  const along = (low: number, high: number, at: number): number => (at - low) / (high - low || 1);
  return {
    left,
    right,
    top,
    foot,
    height: foot + letter * 1.7,
    x: (at) => left + along(across.low, across.high, at) * (right - left),
    y: (at) => foot - along(length(up.low), length(up.high), length(at)) * (foot - top),
  };
}

interface Column {
  readonly text: string;
  readonly x: number;
}

/** Those that do not touch the one before. */
function apart(columns: readonly Column[], letter: number): readonly Column[] {
  const kept: Column[] = [];
  for (const column of columns) {
    const before = kept[kept.length - 1];
    const reach = (textWidth(column.text, letter) + textWidth(before?.text ?? "", letter)) / 2;
    if (before === undefined || column.x - before.x > reach) kept.push(column);
  }
  return kept;
}

/** The axes; what stands at their ends are usually the units. */
export function DrawnAxes({ letter, field, axes, ends }: {
  readonly letter: number;
  readonly field: PlotField;
  readonly axes: PlotAxes;
  readonly ends: { readonly across: string; readonly up: string };
}): JSX.Element {
  const { left, right, top, foot } = field;
  const columns = axes.across.ticks.map(({ si, text }) => ({ text, x: field.x(si) }));
  const rows = axes.up.ticks.map(({ si, text }) => ({ text, y: field.y(si) }));
  // What stands at the end of the axis stays free: a figure that would touch it gives way.
  const endStart = right + letter - textWidth(ends.across, letter) - 4;
  const written = apart(columns, letter).filter(({ text, x }) => x + textWidth(text, letter) / 2 < endStart);
  return (
    <g>
      <path class="grid" d={columns.map(({ x }) => `M${round(x)} ${foot}V${top}`).join("") + rows.map(({ y }) => `M${left} ${round(y)}H${right}`).join("")} />
      <path class="dimension" d={`M${left} ${top - 4}V${foot}H${right + 4}`} />
      {written.map(({ text, x }) => (
        <text key={text} x={x} y={foot + letter * 1.25} text-anchor="middle">{text}</text>
      ))}
      {rows.map(({ text, y }) => (
        <text key={text} x={left - 5} y={y + letter * 0.35} text-anchor="end">{text}</text>
      ))}
      <text class="soft" x={right + letter} y={foot + letter * 1.25} text-anchor="end">{ends.across}</text>
      <text class="soft" x={left + 6} y={letter * 0.95}>{ends.up}</text>
    </g>
  );
}
