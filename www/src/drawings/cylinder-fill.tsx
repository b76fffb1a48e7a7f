// A cylinder cut open: the liquid in it to scale of its volume, and the most that it may take.

import type { JSX } from "preact";
import { Label } from "./dimension";
import { Drawing, type Sheet } from "./sheet";

interface Level {
  /** Part of the volume. */
  readonly part: number;
  readonly text: string;
}

export function CylinderFill({ sheet, limit, now, alternative }: {
  readonly sheet: Sheet;
  readonly limit: Level;
  /** Nothing: it was not weighed. */
  readonly now: Level | undefined;
  readonly alternative: string;
}): JSX.Element {
  const { letter } = sheet;
  const [body, height] = [letter * 5, letter * 10];
  const [left, top] = [1.5, letter * 1.6];
  const bottom = top + height;
  const [right, middle] = [left + body, left + body / 2];
  const width = right + letter * 3.6;
  const at = (part: number): number => bottom - Math.min(Math.max(part, 0), 1) * height;
  // Two figures that would touch part to both sides of their levels.
  const limitAt = at(limit.part);
  const nowAt = now === undefined ? undefined : at(now.part);
  const gap = nowAt === undefined ? Infinity : nowAt - limitAt;
  const apart = Math.abs(gap) < letter * 1.4 ? (letter * 1.4 - Math.abs(gap)) / 2 : 0;
  const up = gap >= 0 ? -apart : apart;
  return (
    <Drawing {...sheet} width={width} height={bottom + 3} alternative={alternative}>
      {nowAt !== undefined && now !== undefined && <rect class={now.part > limit.part ? "over-fill" : "fill"} x={left} y={nowAt} width={body} height={bottom - nowAt} />}
      <path class="vessel" d={`M${middle - letter} ${top - letter}h${letter * 2}v${letter}H${right}V${bottom}H${left}V${top}H${middle - letter}z`} />
      <path class="aim" d={`M${left - 1} ${limitAt}H${right + letter * 0.6}`} />
      <Label at={{ x: right + letter * 0.8, y: limitAt + up }} text={limit.text} letter={letter} anchor="start" isBare isBold />
      {nowAt !== undefined && now !== undefined && <Label at={{ x: right + letter * 0.8, y: nowAt - up }} text={now.text} letter={letter} anchor="start" isBare />}
    </Drawing>
  );
}
