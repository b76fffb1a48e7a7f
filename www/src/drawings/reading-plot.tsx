// Readings over time beside what was to be expected, to scale in the person's units. It computes pixels only.
//
//   <ReadingPlot
//     quantity="gauge-pressure" unit={unitOf("gauge-pressure")} scale="linear"
//     readings={[{ time: 0, value: 41.5e5, uncertainty: 2e4 }, { time: 3600, value: 41.2e5, isLeftOut: true }]}
//     expected={{ curve: [{ time: 0, value: 41.5e5, low: 41.3e5, high: 41.7e5 }, …], label: "expected from the temperature" }}
//     limit={{ value: 41e5, label: "smallest leak that would show" }}
//     labels={{ alternative: "…what the drawing shows, in a sentence…", reading: "reading", leftOut: "left out" }}
//   />
//
// Times in s, values in SI of `quantity`. A reading with `isBeyond` is copper. `scale="logarithmic"` is for
// absolute pressures; what is not above zero is then left out. The axis of time takes the unit that fits.

import type { JSX } from "preact";
import type { QuantityKind } from "../core";
import { axisOf, logarithmicAxis } from "./axis";
import { Label, round } from "./dimension";
import { DrawnAxes, mostAcross, plotField, type PlotAxes, type PlotField, type PlotShape } from "./plot";
import { Drawing, textWidth, useSheet, type Sheet } from "./sheet";

export interface PlottedReading {
  readonly time: number;
  readonly value: number;
  /** Half of the bar around it. */
  readonly uncertainty?: number;
  /** Not used by the calculation: hollow. */
  readonly isLeftOut?: boolean;
  /** Beyond what was to be expected: copper. */
  readonly isBeyond?: boolean;
}

export interface ExpectedPoint {
  readonly time: number;
  readonly value: number;
  /** Edges of the band around it. */
  readonly low?: number;
  readonly high?: number;
}

export interface ReadingPlotProps {
  readonly quantity: QuantityKind;
  readonly unit: string;
  readonly scale: "linear" | "logarithmic";
  readonly readings: readonly PlottedReading[];
  readonly expected?: { readonly curve: readonly ExpectedPoint[]; readonly label: string } | undefined;
  readonly limit?: { readonly value: number; readonly label: string } | undefined;
  readonly labels: {
    /** What the drawing shows, in a sentence, for those who do not see it. */
    readonly alternative: string;
    readonly reading: string;
    readonly leftOut: string;
    /** The unit at the head of the axis; the unit's symbol if nothing is said. */
    readonly axis?: string;
  };
  /** What it is drawn on, where that is not the column of the page. */
  readonly sheet?: Sheet;
  readonly shape?: PlotShape;
}

export function ReadingPlot(props: ReadingPlotProps): JSX.Element | null {
  const column = useSheet();
  const { readings, expected, limit, labels, sheet = column, shape = ofCard } = props;
  const shown = readings.filter(({ value }) => props.scale === "linear" || value > 0);
  const axes = axesOf(props, shown, sheet);
  if (axes === undefined) return null;
  const field = plotField(sheet, axes, shape, props.scale === "linear" ? undefined : Math.log10);
  const hasLabel = limit !== undefined && textWidth(limit.label, sheet.letter) < field.right - field.left;
  return (
    <figure class="reading-plot">
      <Drawing {...sheet} height={field.height} alternative={labels.alternative}>
        <DrawnAxes letter={sheet.letter} field={field} axes={axes} ends={{ across: axes.across.unit, up: labels.axis ?? props.unit }} />
        {expected && <Expected curve={expected.curve} field={field} />}
        {limit && <path class="limit-line" d={`M${field.left} ${round(field.y(limit.value))}H${field.right}`} />}
        {shown.map((reading, place) => (
          <Reading key={place} reading={reading} field={field} />
        ))}
        {hasLabel && <LimitLabel label={limit.label} y={field.y(limit.value)} field={field} letter={sheet.letter} beside={[...shown, ...(expected?.curve ?? [])]} />}
      </Drawing>
      <figcaption class="plot-key">
        <Key text={labels.reading} mark={<circle class="used-dot" cx="12" cy="8" r="4.5" />} />
        {shown.some(({ isLeftOut }) => isLeftOut === true) && (
          <Key text={labels.leftOut} mark={<circle class="left-out-dot" cx="12" cy="8" r="4.5" />} />
        )}
        {expected && <Key text={expected.label} mark={<path class="expected-line" d="M0 8H24" />} />}
        {limit && !hasLabel && <Key text={limit.label} mark={<path class="limit-line" d="M0 8H24" />} />}
      </figcaption>
    </figure>
  );
}

/** How tall the plot of a card is. */
const ofCard: PlotShape = { part: 0.55, tallest: 280 };

/** Axes that hold everything with a little room; none where there is nothing to show. */
function axesOf({ quantity, unit, scale, expected, limit }: ReadingPlotProps, readings: readonly PlottedReading[], sheet: Sheet): PlotAxes | undefined {
  const curve = expected?.curve ?? [];
  const times = [...readings, ...curve].map(({ time }) => time);
  const values = [
    ...readings.flatMap(({ value, uncertainty = 0 }) => [value - uncertainty, value, value + uncertainty]),
    ...curve.flatMap(({ value, low = value, high = value }) => [low, value, high]),
    ...(limit ? [limit.value] : []),
  ].filter((value) => Number.isFinite(value) && (scale === "linear" || value > 0));
  if (times.length === 0 || values.length === 0) return undefined;
  const [start, end] = [Math.min(...times), Math.max(...times)];
  const length = end - start || 60;
  const axis = scale === "linear" ? axisOf : logarithmicAxis;
  return {
    across: axisOf("time", [start, start + length], timeUnit(length), mostAcross(sheet)),
    up: axis(quantity, scale === "linear" ? withRoom(values) : withFactor(values), unit, 7),
  };
}

/** A value that stands alone has a hundredth of itself around it. */
function withRoom(values: readonly number[]): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = (high - low) * 0.06 || Math.abs(high) * 0.01 || 1;
  return [low - room, high + room];
}

function withFactor(values: readonly number[]): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const factor = Math.max((high / low) ** 0.06, 1.1);
  return [low / factor, high * factor];
}

/** The largest unit of which there are at least three, as people speak of a test. */
function timeUnit(length: number): string {
  const [, unit = "s"] = ([[259_200, "d"], [10_800, "h"], [180, "min"]] as const).find(([least]) => length >= least) ?? [];
  return unit;
}

function Expected({ curve, field }: { readonly curve: readonly ExpectedPoint[]; readonly field: PlotField }): JSX.Element {
  const along = (read: (point: ExpectedPoint) => number, points = curve): string =>
    points.map((point) => `${round(field.x(point.time))} ${round(field.y(read(point)))}`).join("L");
  const hasBand = curve.length > 1 && curve.every(({ low, high }) => low !== undefined && high !== undefined);
  const [upper, lower] = [along(({ high, value }) => high ?? value), along(({ low, value }) => low ?? value, [...curve].reverse())];
  return (
    <g>
      {hasBand && <path class="expected-band" d={`M${upper}L${lower}Z`} />}
      {curve.length > 1 && <path class="expected-line" d={`M${along(({ value }) => value)}`} />}
    </g>
  );
}

/** The point, and the bar of its uncertainty where it is longer than the point is wide. */
function Reading({ reading, field }: { readonly reading: PlottedReading; readonly field: PlotField }): JSX.Element {
  const { time, value, uncertainty = 0, isLeftOut, isBeyond } = reading;
  const [x, y] = [round(field.x(time)), round(field.y(value))];
  // On a logarithmic axis a bar may reach zero: it then ends at the axis.
  const lower = field.y(value - uncertainty);
  const [top, foot] = [round(field.y(value + uncertainty)), round(Number.isFinite(lower) ? Math.min(lower, field.foot) : field.foot)];
  const kind = isLeftOut === true ? "left-out-dot" : isBeyond === true ? "beyond-dot" : "used-dot";
  return (
    <g class={isBeyond === true ? "beyond" : undefined}>
      {foot - top > 9 && <path class="bar" d={`M${x} ${top}V${foot}M${x - 4} ${top}H${x + 4}M${x - 4} ${foot}H${x + 4}`} />}
      <circle class={kind} cx={x} cy={y} r="4.5" />
    </g>
  );
}

/** Above its line, below it where there is no room above; on the side where less comes near. */
function LimitLabel({ label, y, field, letter, beside }: {
  readonly label: string;
  readonly y: number;
  readonly field: PlotField;
  readonly letter: number;
  readonly beside: readonly ExpectedPoint[];
}): JSX.Element {
  const above = y - letter * 0.85;
  const at = above - letter * 0.65 < field.top ? y + letter * 0.85 : above;
  const middle = (field.left + field.right) / 2;
  const room = (isThere: (x: number) => boolean): number =>
    Math.min(...beside.filter(({ time }) => isThere(field.x(time))).map(({ value }) => Math.abs(field.y(value) - at)));
  const isLeft = room((x) => x < middle) > room((x) => x >= middle);
  return <Label at={{ x: isLeft ? field.left + 5 : field.right - 3, y: at }} text={label} letter={letter} anchor={isLeft ? "start" : "end"} />;
}

function Key({ text, mark }: { readonly text: string; readonly mark: JSX.Element }): JSX.Element {
  return (
    <span>
      <svg class="key-mark" viewBox="0 0 24 16" aria-hidden="true">
        {mark}
      </svg>
      {text}
    </span>
  );
}
