// Section of an insulated tube, to scale: the tube, the wall of its insulation, the temperature of its outside.

import type { JSX } from "preact";
import { Dimension, Label } from "./dimension";
import { Drawing, textWidth, useSheet } from "./sheet";

/** What is written into the drawing. */
export interface InsulationLabels {
  readonly alternative: string;
  readonly tube: string;
  readonly thickness: string;
  readonly temperature: string;
  readonly dewPoint: string;
}

/** Height of the section in letters, and pixels in a metre at most. */
const tallest = 14;
const mostPixelsPerMetre = 3800;

export function InsulationSection({ tube, outside, labels, isDry }: {
  /** Diameters in metres. */
  readonly tube: number;
  readonly outside: number;
  readonly labels: InsulationLabels;
  /** Whether the outside stays above the dew point, as far as can be told. */
  readonly isDry: boolean;
}): JSX.Element {
  const sheet = useSheet();
  const { width, letter } = sheet;
  const room = Math.max(width - textWidth(labels.dewPoint, letter) - 3 * letter, letter * 5);
  const perMetre = Math.min((tallest * letter) / outside, room / outside, mostPixelsPerMetre);
  const [inner, outer] = [(tube / 2) * perMetre, (outside / 2) * perMetre];
  const [x, y] = [outer + 2, outer + 2];
  const height = 2 * outer + letter * 2.6;
  const text = { x: x + outer + letter * 1.5, y: Math.max(y - outer * 0.5, letter * 2) };
  const edge = { x: x + outer * Math.cos(Math.PI / 6), y: y - outer / 2 };
  return (
    <Drawing {...sheet} height={height} alternative={labels.alternative}>
      <defs>
        <pattern id="hatch-foam" width="5" height="5" patternUnits="userSpaceOnUse">
          <circle class="hatch-steel" cx="2.5" cy="2.5" r="1.2" />
        </pattern>
      </defs>
      <circle class={isDry ? "foam" : "foam wet"} cx={x} cy={y} r={outer} />
      <circle class="bare-tube" cx={x} cy={y} r={inner} />
      <path class="centre" d={`M${x - outer} ${y}H${x + outer}M${x} ${y - outer}V${y + outer}`} />
      <Dimension from={{ x: x - outer, y }} to={{ x: x - inner, y }} offset={-(outer + letter * 1.2)} label={labels.thickness} letter={letter} isBold />
      <path class="extension" d={`M${edge.x} ${edge.y}L${text.x - 4} ${text.y}`} />
      <Label at={text} text={labels.temperature} letter={letter * 1.2} isBold anchor="start" />
      <text class="soft" x={text.x} y={text.y + letter * 1.8}>
        {labels.dewPoint}
      </text>
      <text class="soft" x={text.x} y={y + outer * 0.6}>
        {labels.tube}
      </text>
    </Drawing>
  );
}
