// The plate's adder above that of physics, to one scale; physics stacked of what each line holds.

import type { JSX } from "preact";
import { Label } from "./dimension";
import { Drawing, fittedLetter, textWidth, type Sheet } from "./sheet";
import { message } from "../locale";

export interface BarPart {
  readonly label: string;
  readonly si: number;
}

export function AdderBars({ sheet, plate, physics, textOf, alternative }: {
  readonly sheet: Sheet;
  /** Nothing: the plate gives none. */
  readonly plate: number | undefined;
  readonly physics: readonly BarPart[];
  readonly textOf: (si: number) => string;
  readonly alternative: string;
}): JSX.Element {
  const { width, letter } = sheet;
  const total = physics.reduce((sum, { si }) => sum + si, 0);
  const most = Math.max(total, plate ?? 0) || 1;
  const figures = [plate ?? 0, total].map(textOf);
  const room = width - Math.max(...figures.map((text) => textWidth(text, letter))) - 12;
  const at = (si: number): number => (si / most) * room;
  const [thick, pitch] = [letter * 1.1, letter * 3.1];
  const top = letter * 1.5;
  const edges = physics.map((_, place) => physics.slice(0, place).reduce((sum, { si }) => sum + si, 0));
  const physicsName = [message("charge-bar-physics"), physics.map(({ label }) => label).join(" + ")].join(": ");
  const figure = (si: number, y: number): JSX.Element => (
    <Label at={{ x: at(si) + 6, y: y + thick / 2 }} text={textOf(si)} letter={letter} anchor="start" isBare isBold />
  );
  return (
    <Drawing {...sheet} height={pitch * 2 + letter * 0.4} alternative={alternative}>
      <text class="soft" x="0" y={top - letter * 0.45}>
        {message("charge-bar-plate")}
      </text>
      {plate === undefined ? (
        <path class="extension open-bar" d={`M0 ${top + thick / 2}H${room}`} />
      ) : (
        <>
          <rect class="plate-bar" x="0.5" y={top} width={Math.max(at(plate), 1)} height={thick} />
          {figure(plate, top)}
        </>
      )}
      <text class="soft" x="0" y={top + pitch - letter * 0.45} font-size={fittedLetter(physicsName, letter, width)}>
        {physicsName}
      </text>
      {physics.map(({ label, si }, place) => (
        <rect key={label} class={place === 0 ? "liquid-bar" : "vapour-bar"} x={at(edges[place] ?? 0) + 0.5} y={top + pitch} width={Math.max(at(si), 1)} height={thick} />
      ))}
      {figure(total, top + pitch)}
    </Drawing>
  );
}
