// Both lines from unit to unit, seen from the side: run and lift to one scale, diameters to each other.

import type { JSX } from "preact";
import { Dimension, Label, arrow, round, type Point } from "./dimension";
import { Drawing, type Sheet } from "./sheet";

export interface RunFigures {
  /** Length of the line in metres. */
  readonly length: number;
  /** Height of the outdoor unit above the indoor one in metres, negative below it. */
  readonly rise: number;
  /** Outside diameters or bores, in metres. */
  readonly liquid: number | undefined;
  readonly gas: number | undefined;
}

export interface RunLabels {
  readonly alternative: string;
  readonly indoor: string;
  readonly outdoor: string;
  readonly lift: string;
}

/** Width of the wider line. */
const widest = 11;
const tallest = 170;
const indoorUnit = { width: 46, height: 20 };
const outdoorUnit = { width: 44, height: 36 };

export function LineRun({ sheet, figures, labels }: {
  readonly sheet: Sheet;
  readonly figures: RunFigures;
  readonly labels: RunLabels;
}): JSX.Element {
  const { width, letter } = sheet;
  const isLabelled = width >= letter * 18;
  const margin = isLabelled ? { left: 8, right: letter * 5.5, top: letter * 1.6, bottom: 6 } : { left: 8, right: 8, top: 6, bottom: 6 };
  // The outdoor unit is named on the side that no line comes from.
  const isBelow = figures.rise < 0;
  // The way goes level, then up or down: what is not lift is run. A lift longer than the line is no drawing.
  const lift = Math.min(Math.abs(figures.rise), figures.length);
  const level = Math.max(figures.length - lift, figures.length * 0.08);
  const room = width - margin.left - margin.right - indoorUnit.width - outdoorUnit.width;
  const perMetre = Math.min(room / (level || 1), tallest / (lift || 1));
  const [across, up] = [level * perMetre, Math.sign(figures.rise) * lift * perMetre];
  const base = margin.top + outdoorUnit.height / 2 + Math.max(up, 0);
  const from = { x: margin.left + indoorUnit.width, y: base };
  const to = { x: from.x + Math.max(across, 24), y: base - up };
  const height = margin.top + outdoorUnit.height + Math.abs(up) + margin.bottom + (isLabelled && isBelow ? letter * 1.6 : 0);
  const largest = Math.max(figures.liquid ?? 0, figures.gas ?? 0);
  const thick = (diameter: number | undefined): number => ((diameter ?? 0) / (largest || 1)) * widest;
  const [gas, liquid] = [thick(figures.gas), thick(figures.liquid)];
  const apart = (gas + liquid) / 4 + 2.5;
  return (
    <Drawing {...sheet} height={height} alternative={labels.alternative}>
      {gas > 0 && <Tube from={from} to={to} shift={-apart} width={gas} name="gas-line" flowsOut />}
      {liquid > 0 && <Tube from={from} to={to} shift={apart} width={liquid} name="liquid-line" />}
      <rect class="unit" x={margin.left} y={from.y - indoorUnit.height / 2} {...indoorUnit} />
      <rect class="unit" x={to.x} y={to.y - outdoorUnit.height / 2} {...outdoorUnit} />
      <circle class="unit" cx={to.x + outdoorUnit.width / 2} cy={to.y} r={outdoorUnit.height * 0.36} />
      {isLabelled && (
        <>
          <Label at={{ x: margin.left, y: from.y - indoorUnit.height / 2 - letter * 0.9 }} text={labels.indoor} letter={letter} anchor="start" isBare />
          <Label at={{ x: to.x + outdoorUnit.width, y: to.y + (outdoorUnit.height / 2 + letter * 0.9) * (isBelow ? 1 : -1) }} text={labels.outdoor} letter={letter} anchor="end" isBare />
        </>
      )}
      {isLabelled && lift > 0 && (
        <Dimension
          from={{ x: to.x + outdoorUnit.width + 4, y: Math.max(from.y, to.y) }}
          to={{ x: to.x + outdoorUnit.width + 4, y: Math.min(from.y, to.y) }}
          offset={-letter}
          label={labels.lift}
          letter={letter}
        />
      )}
    </Drawing>
  );
}

/** Level from the indoor unit, then up or down into the outdoor one; with an arrow the way it flows in cooling. */
function Tube({ from, to, shift, width, name, flowsOut }: {
  readonly from: Point;
  readonly to: Point;
  readonly shift: number;
  readonly width: number;
  readonly name: string;
  readonly flowsOut?: true;
}): JSX.Element {
  // Side by side, one tube turns inside the other.
  const turn = to.x - 14 + (to.y > from.y ? -shift : shift);
  const [start, end] = [from.y + shift, to.y + shift];
  const middle = { x: (from.x + turn) / 2, y: start };
  const tip = flowsOut === true ? middle.x + 4 : middle.x - 4;
  return (
    <g class={name}>
      <path class="run" stroke-width={round(width)} d={`M${round(from.x)} ${round(start)}H${round(turn)}V${round(end)}H${round(to.x)}`} />
      <path class="flow" d={arrow({ x: tip, y: start }, { x: flowsOut === true ? -1 : 1, y: 0 })} />
    </g>
  );
}
