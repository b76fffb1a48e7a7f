// Pressure over temperature, bubble and dew line, to scale in the person's units; a reading stands
// on them with its dimension lines.

import type { JSX } from "preact";
import type { SaturationPoint } from "../core";
import { Label, line, round, type Point } from "./dimension";
import { DrawnAxes, type PlotAxes, type PlotField, type PlotShape } from "./plot";
import { Drawing, fittedLetter, type Sheet } from "./sheet";

export interface PlotLabels {
  readonly alternative: string;
  readonly pressureAxis: string;
  readonly temperatureAxis: string;
  readonly bubble: string;
  readonly dew: string;
  readonly both: string;
}

/** A reading and which of the two it was: then one pressure has two temperatures, or the other way round. */
export interface PlotReading extends SaturationPoint {
  readonly by: "pressure" | "temperature";
}

/** How tall the plot is. */
export const saturationShape: PlotShape = { part: 0.62, tallest: 300 };

/** The dew line, on which the reading is dragged, as points of the sheet. */
export function dewLine(curve: readonly SaturationPoint[], field: PlotField): readonly Point[] {
  return curve.map((at) => ({ x: field.x(at.dewTemperature), y: field.y(at.dewGaugePressure) }));
}

/** The place on a line of points that is nearest to a point: how far along, counted in points. */
export function nearestOn(points: readonly Point[], to: Point): number {
  let [nearest, least] = [0, Number.POSITIVE_INFINITY];
  for (const [place, from] of points.entries()) {
    const next = points[place + 1];
    if (next === undefined) break;
    const [dx, dy] = [next.x - from.x, next.y - from.y];
    const part = ((to.x - from.x) * dx + (to.y - from.y) * dy) / (dx * dx + dy * dy || 1);
    const inside = Math.min(Math.max(part, 0), 1);
    const off = Math.hypot(from.x + inside * dx - to.x, from.y + inside * dy - to.y);
    if (off < least) [nearest, least] = [place + inside, off];
  }
  return nearest;
}

export function SaturationPlot({ sheet, field, axes, curve, reading, labels }: {
  readonly sheet: Sheet;
  readonly field: PlotField;
  readonly axes: PlotAxes;
  readonly curve: readonly SaturationPoint[];
  readonly reading: PlotReading | undefined;
  readonly labels: PlotLabels;
}): JSX.Element {
  const bubbles = curve.map((at) => ({ x: field.x(at.bubbleTemperature), y: field.y(at.bubbleGaugePressure) }));
  const dews = dewLine(curve, field);
  return (
    <Drawing {...sheet} height={field.height} alternative={labels.alternative}>
      <DrawnAxes letter={sheet.letter} field={field} axes={axes} ends={{ across: labels.temperatureAxis, up: labels.pressureAxis }} />
      <path class="bubble-line" d={throughAll(bubbles)} />
      <path class="dew-line" d={throughAll(dews)} />
      <Names bubbles={bubbles} dews={dews} field={field} letter={sheet.letter} labels={labels} reading={reading} />
      {reading && <Reading reading={reading} field={field} />}
    </Drawing>
  );
}

function throughAll(points: readonly Point[]): string {
  return `M${points.map(({ x, y }) => `${round(x)} ${round(y)}`).join("L")}`;
}

/** The lines' names beside them, where both sides have room; one name where the eye sees one line. */
function Names({ bubbles, dews, field, letter, labels, reading }: {
  readonly bubbles: readonly Point[];
  readonly dews: readonly Point[];
  readonly field: PlotField;
  readonly letter: number;
  readonly labels: PlotLabels;
  readonly reading: PlotReading | undefined;
}): JSX.Element | null {
  const at = clearOf(reading ? field.y(reading.dewGaugePressure) : field.top, field);
  const [bubble, dew] = [crossing(bubbles, at), crossing(dews, at)];
  if (labels.both === "") return null;
  const isOne = Math.abs(dew.x - bubble.x) < 5;
  const [ofLeft, ofRight] = [isOne ? labels.both : labels.bubble, labels.dew];
  const [leftEnd, rightStart] = [bubble.x - 14, dew.x + 12];
  return (
    <g>
      <Label at={{ x: leftEnd, y: bubble.y }} text={ofLeft} letter={fittedLetter(ofLeft, letter, leftEnd - field.left - 4)} anchor="end" />
      {!isOne && <Label at={{ x: rightStart, y: dew.y + letter }} text={ofRight} letter={fittedLetter(ofRight, letter, field.right - rightStart)} anchor="start" />}
    </g>
  );
}

/** Of two heights the one that is farther from the reading. */
function clearOf(reading: number, { top, foot }: PlotField): number {
  const [upper, lower] = [foot - (foot - top) * 0.45, foot - (foot - top) * 0.22];
  return Math.abs(reading - upper) > Math.abs(reading - lower) ? upper : lower;
}

/** Where a rising line comes to a height. */
function crossing(points: readonly Point[], y: number): Point {
  const place = points.findIndex((point) => point.y <= y);
  const [before, after] = [points[Math.max(place - 1, 0)], points[place]];
  if (before === undefined || after === undefined) return { x: 0, y };
  const part = (before.y - y) / (before.y - after.y || 1);
  return { x: before.x + part * (after.x - before.x), y };
}

/** Filled where all is liquid, hollow where all is vapour. */
function Reading({ reading, field }: { readonly reading: PlotReading; readonly field: PlotField }): JSX.Element {
  const bubble = { x: field.x(reading.bubbleTemperature), y: field.y(reading.bubbleGaugePressure) };
  const dew = { x: field.x(reading.dewTemperature), y: field.y(reading.dewGaugePressure) };
  const isLevel = reading.by === "pressure";
  const toLeft = (at: Point): string => line({ x: field.left, y: at.y }, at);
  const toFoot = (at: Point): string => line({ x: at.x, y: field.foot }, at);
  const upper = bubble.y < dew.y ? bubble : dew;
  return (
    <g>
      <path class="extension" d={isLevel ? toFoot(bubble) + toFoot(dew) : toLeft(bubble) + toLeft(dew)} />
      <path class="aim" d={isLevel ? toLeft(dew) : toFoot(upper)} />
      <circle class="dew-dot" cx={dew.x} cy={dew.y} r="4.5" />
      <circle class="bubble-dot" cx={bubble.x} cy={bubble.y} r="4.5" />
    </g>
  );
}
