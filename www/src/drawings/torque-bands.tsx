// The families' bands on one scale: what holds is shaded, the aim is a copper line.

import type { JSX } from "preact";
import type { Limits } from "../core";
import { Drawing, fittedLetter, textWidth, type Sheet } from "./sheet";

export interface BandLine extends Limits {
  readonly label: string;
}

/** Rows that the drawing has room for, so that the page does not jump from size to size. */
const rows = 3;

export function TorqueBands({ sheet, lines, holds, aim, numberOf, alternative }: {
  readonly sheet: Sheet;
  readonly lines: readonly BandLine[];
  readonly holds: Limits;
  readonly aim: number;
  /** A torque as it is read, without its unit. */
  readonly numberOf: (torque: number) => string;
  readonly alternative: string;
}): JSX.Element {
  const { width, letter } = sheet;
  const isStacked = width < letter * 22;
  const left = isStacked ? letter : letter * 8.8;
  const pitch = letter * (isStacked ? 2.6 : 1.45);
  const foot = rows * pitch + 4;
  const low = Math.min(holds.low, ...lines.map((band) => band.low));
  const high = Math.max(holds.high, ...lines.map((band) => band.high));
  const at = (torque: number): number => left + ((torque - low) / (high - low || 1)) * (width - left - letter * 1.2);
  const figures = legible(
    [holds.low, holds.high, aim, low, high].map((torque) => ({ text: numberOf(torque), x: at(torque), isAim: torque === aim })),
    letter,
  );
  return (
    <Drawing {...sheet} height={foot + letter * 1.5} alternative={alternative}>
      <rect class="wash" x={at(holds.low)} y="0" width={Math.max(at(holds.high) - at(holds.low), 2)} height={foot} />
      {lines.map((band, row) => {
        const y = pitch * row + (isStacked ? letter * 1.9 : pitch / 2 + 2);
        return (
          <g key={band.label}>
            <text
              class="soft"
              x={isStacked ? at(low) : 0}
              y={isStacked ? y - letter * 0.7 : y + letter * 0.35}
              font-size={fittedLetter(band.label, letter, isStacked ? width - at(low) : left)}
            >
              {band.label}
            </text>
            <path class="band" d={`M${at(band.low)} ${y}H${at(band.high)}M${at(band.low)} ${y - 5}v10M${at(band.high)} ${y - 5}v10`} />
          </g>
        );
      })}
      <path class="aim" d={`M${at(aim)} 0V${foot}`} />
      {figures.map(({ text, x, isAim }) => (
        <text key={x} class={isAim ? "aim-figure" : undefined} x={x} y={foot + letter * 1.1} text-anchor="middle">
          {text}
        </text>
      ))}
    </Drawing>
  );
}

interface Placed {
  readonly text: string;
  readonly x: number;
  readonly isAim: boolean;
}

/** Those that find room, the first ones first. */
function legible(figures: readonly Placed[], letter: number): readonly Placed[] {
  const placed: Placed[] = [];
  for (const figure of figures) {
    const room = (other: Placed): number => (textWidth(figure.text, letter) + textWidth(other.text, letter)) / 2 + 5;
    if (placed.every((other) => Math.abs(other.x - figure.x) >= room(other))) placed.push(figure);
  }
  return placed;
}
