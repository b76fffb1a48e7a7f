// The pressure-temperature curve with the reading on it. The mark is dragged, or moved by keys; what it
// writes is the text of the field, as the person would type it.

import type { JSX } from "preact";
import { useRef } from "preact/hooks";
import { show, showBand, type SaturationAnswer } from "../../core";
import { axisOf, type Axis } from "../../drawings/axis";
import type { Point } from "../../drawings/dimension";
import { mostAcross, plotField, type PlotField } from "../../drawings/plot";
import { SaturationPlot, dewLine, nearestOn, saturationShape } from "../../drawings/saturation-plot";
import { useSheet } from "../../drawings/sheet";
import { asEntered, message } from "../../locale";
import { textOf, write } from "../../parts/fields";
import { figureText } from "../../parts/figures";
import { unitOf } from "../../unit-choice";
import { askCurve, askFacts, askReading, isByTemperature } from "./ask";

type Curve = SaturationAnswer["curve"];

/** What the mark moves: the field that holds the reading. */
interface Moved {
  readonly field: "gaugePressure" | "temperature";
  readonly other: "gaugePressure" | "temperature";
  readonly quantity: "gauge-pressure" | "temperature";
  readonly low: number;
  readonly high: number;
}

/** Both lines must reach a pressure; a temperature has both. */
function movedOf(curve: Curve): Moved | undefined {
  const [first, last] = [curve[0], curve[curve.length - 1]];
  if (first === undefined || last === undefined) return undefined;
  return isByTemperature()
    ? { field: "temperature", other: "gaugePressure", quantity: "temperature", low: first.dewTemperature, high: last.dewTemperature }
    : { field: "gaugePressure", other: "temperature", quantity: "gauge-pressure", low: first.bubbleGaugePressure, high: last.dewGaugePressure };
}

export function CurvePanel({ answer }: { readonly answer: SaturationAnswer | undefined }): JSX.Element | null {
  const sheet = useSheet();
  const curve = askCurve(answer?.dewTemperature ?? 0);
  const moved = movedOf(curve);
  const last = curve[curve.length - 1];
  if (moved === undefined || last === undefined) return null;
  const temperature = axisOf("temperature", [curve[0]?.dewTemperature ?? 0, last.dewTemperature], unitOf("temperature"), mostAcross(sheet));
  const pressure = axisOf("gauge-pressure", [curve[0]?.dewGaugePressure ?? 0, last.bubbleGaugePressure], unitOf("gauge-pressure"), 8);
  const axes = { across: temperature, up: pressure };
  const field = plotField(sheet, axes, saturationShape);
  const reading = answer && { ...answer, by: isByTemperature() ? ("temperature" as const) : ("pressure" as const) };
  const isPure = askFacts()?.facts.composition.figure.length === 1;
  return (
    <section class="curve">
      <h2>{message("curve-heading", { refrigerant: textOf("refrigerant") })}</h2>
      <div class="plot">
        <SaturationPlot
          sheet={sheet}
          field={field}
          axes={axes}
          curve={curve}
          reading={reading}
          labels={{
            alternative: message("curve-drawing", {
              refrigerant: textOf("refrigerant"),
              coldest: figureText("temperature", temperature.low),
              hottest: figureText("temperature", temperature.high),
              least: figureText("gauge-pressure", pressure.low),
              most: figureText("gauge-pressure", pressure.high),
            }),
            pressureAxis: message("table-gauge-unit", { unit: pressure.unit }),
            temperatureAxis: temperature.unit,
            bubble: message("curve-bubble"),
            dew: message("curve-dew"),
            both: isPure ? "" : message("curve-both"),
          }}
        />
        <Mark answer={answer} moved={moved} curve={curve} field={field} axis={isByTemperature() ? temperature : pressure} />
      </div>
      <p class="note">{message("curve-hint")}</p>
    </section>
  );
}

/** The whole drawing takes a tap; the mark on it is dragged and has the keys. */
function Mark({ answer, moved, curve, field, axis }: {
  readonly answer: SaturationAnswer | undefined;
  readonly moved: Moved;
  readonly curve: Curve;
  readonly field: PlotField;
  readonly axis: Axis;
}): JSX.Element {
  const ground = useRef<HTMLDivElement>(null);
  const points = dewLine(curve, field);
  const follow = (event: PointerEvent): void => {
    const box = ground.current?.getBoundingClientRect();
    if (box === undefined) return;
    moveTo(moved, siAt(curve, moved, nearestOn(points, { x: event.clientX - box.left, y: event.clientY - box.top })));
  };
  const at: Point | undefined = answer && { x: field.x(answer.dewTemperature), y: field.y(answer.dewGaugePressure) };
  const si = answer && (moved.quantity === "temperature" ? answer.dewTemperature : answer.dewGaugePressure);
  return (
    <div class="plot-ground" ref={ground} onClick={(event) => event.target === ground.current && follow(event as unknown as PointerEvent)}>
      {answer && at && si !== undefined && (
        <div
          class="plot-mark"
          role="slider"
          tabIndex={0}
          aria-label={message(`field-${moved.field}`)}
          aria-orientation={moved.quantity === "temperature" ? "horizontal" : "vertical"}
          aria-valuemin={moved.low}
          aria-valuemax={moved.high}
          aria-valuenow={si}
          aria-valuetext={valueText(answer, moved, si)}
          style={{ left: `${at.x}px`, top: `${at.y}px` }}
          onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
          onPointerMove={(event) => event.currentTarget.hasPointerCapture(event.pointerId) && follow(event)}
          onKeyDown={(event) => onKey(event, moved, si, axis)}
        />
      )}
    </div>
  );
}

function valueText(answer: SaturationAnswer, moved: Moved, si: number): string {
  const other = moved.quantity === "temperature" ? "gauge-pressure" : "temperature";
  const [bubble, dew] =
    other === "temperature" ? [answer.bubbleTemperature, answer.dewTemperature] : [answer.bubbleGaugePressure, answer.dewGaugePressure];
  return message("curve-value", { reading: figureText(moved.quantity, si), bubble: figureText(other, bubble), dew: figureText(other, dew) });
}

/** The moved quantity at a place along the curve, counted in points. */
function siAt(curve: Curve, { quantity }: Moved, place: number): number {
  const of = (index: number): number => {
    const point = curve[Math.min(index, curve.length - 1)];
    return (quantity === "temperature" ? point?.dewTemperature : point?.dewGaugePressure) ?? 0;
  };
  const index = Math.floor(place);
  return of(index) + (of(index + 1) - of(index)) * (place - index);
}

const keys: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 1, PageDown: -1 };

function onKey(event: KeyboardEvent, moved: Moved, si: number, axis: Axis): void {
  const way = keys[event.key];
  const end = { Home: moved.low, End: moved.high }[event.key];
  if (way === undefined && end === undefined) return;
  event.preventDefault();
  if (end !== undefined) moveTo(moved, end);
  else if (way !== undefined && event.key.startsWith("Arrow")) moveTo(moved, si + way * finestStep(moved, si, way));
  else if (way !== undefined) moveTo(moved, si + way * ((axis.ticks[1]?.si ?? 0) - (axis.ticks[0]?.si ?? 0)) / 2);
}

/** About the least step in SI after which another figure is shown. */
function finestStep({ quantity }: Moved, si: number, way: number): number {
  const shown = (at: number): string => show(quantity, at, unitOf(quantity)).number;
  let step = 1e-3;
  while (shown(si + way * step) === shown(si) && step < 1e6) step *= 1.25;
  return step;
}

/** Writes the reading as the instrument would show it, rounded inwards at the ends of the curve. */
function moveTo({ field, other, quantity, low, high }: Moved, si: number): void {
  const unit = unitOf(quantity);
  const put = (number: string): void => write(field, `${asEntered(number)} ${unit}`, [other]);
  const ends = showBand(quantity, { low, high }, unit);
  if (si <= low || si >= high) {
    put(si <= low ? ends.low : ends.high);
    return;
  }
  put(show(quantity, si, unit).number);
  if ("problems" in askReading()) put(si - low < high - si ? ends.low : ends.high);
}
