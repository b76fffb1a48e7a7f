// Section of an insulated tube, to scale: the tube, the wall of its insulation, the temperature of its outside.

import type { JSX } from "preact";
import { Dimension, Label, line } from "./dimension";
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
  // Very large letters leave no room for labels; all figures stand beside the drawing as well.
  const isLabelled = width >= letter * 20;
  const room = isLabelled ? width - textWidth(labels.dewPoint, letter) - 3 * letter : width - 4;
  const perMetre = Math.min((tallest * letter) / outside, room / outside, mostPixelsPerMetre);
  const [inner, outer] = [(tube / 2) * perMetre, (outside / 2) * perMetre];
  // The figure of the wall stands under it and may be wider.
  const margin = isLabelled ? Math.max((textWidth(labels.thickness, letter * 1.2) - (outer - inner)) / 2, 2) : 2;
  const [x, y] = [outer + margin, outer + 2];
  return (
    <Drawing {...sheet} height={2 * outer + (isLabelled ? letter * 2.6 : 6)} alternative={labels.alternative}>
      <defs>
        <pattern id="foam-cells" width="6" height="6" patternUnits="userSpaceOnUse">
          <circle class="foam-cell" cx="1.5" cy="1.5" r="0.8" />
          <circle class="foam-cell" cx="4.5" cy="4.5" r="0.8" />
        </pattern>
      </defs>
      <circle class={isDry ? "foam" : "foam wet"} cx={x} cy={y} r={outer} />
      <circle class="bare-tube" cx={x} cy={y} r={inner} />
      <path class="centre" d={`M${x - outer} ${y}H${x + outer}M${x} ${y - outer}V${y + outer}`} />
      {isLabelled && (
        <Labels labels={labels} letter={letter} x={x} y={y} inner={inner} outer={outer} />
      )}
    </Drawing>
  );
}

/** The wall as a dimension beneath; outside and tube named at the right. */
function Labels({ labels, letter, x, y, inner, outer }: {
  readonly labels: InsulationLabels;
  readonly letter: number;
  readonly x: number;
  readonly y: number;
  readonly inner: number;
  readonly outer: number;
}): JSX.Element {
  const right = x + outer + letter * 1.5;
  const top = Math.max(y - outer * 0.5, letter * 0.8);
  const edge = { x: x + outer * Math.cos(Math.PI / 6), y: y - outer / 2 };
  const tubeEdge = { x: x + inner * Math.cos(Math.PI / 4), y: y + inner * Math.sin(Math.PI / 4) };
  const low = Math.max(y + outer * 0.6, top + letter * 3.4);
  return (
    <>
      <Dimension from={{ x: x - outer, y }} to={{ x: x - inner, y }} offset={-(outer + letter * 1.2)} label={labels.thickness} letter={letter} isBold />
      <path class="extension" d={line(edge, { x: right - 4, y: top }) + line(tubeEdge, { x: right - 4, y: low - letter * 0.35 })} />
      <Label at={{ x: right, y: top }} text={labels.temperature} letter={letter * 1.2} isBold anchor="start" />
      <text class="soft" x={right} y={top + letter * 1.8}>
        {labels.dewPoint}
      </text>
      <text class="soft" x={right} y={low}>
        {labels.tube}
      </text>
    </>
  );
}
