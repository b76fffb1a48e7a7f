// The wrench on the nut, seen from the tube: lengths and angle to scale, the second wrench dashed.

import type { JSX } from "preact";
import { Dimension, Label, arrow, line, moved, round, type Point } from "./dimension";
import { Drawing, textWidth, type Sheet } from "./sheet";

/** Lengths in metres; the angle in radians, 0 straight out from the handle. */
export interface WrenchFigures {
  readonly wrench: number;
  readonly adapter: number;
  readonly angle: number;
  readonly nutAcrossFlats?: number | undefined;
}

export interface WrenchLabels {
  readonly alternative: string;
  readonly wrench: string;
  readonly adapter: string;
  readonly angle: string;
  readonly holdStill: string;
}

/** The handle rises a little, so that the second wrench finds room below it. */
const rise = (-16 * Math.PI) / 180;
const tallestDrawing = 150;

/** The three points that make the lever, in pixels. */
interface Lever {
  readonly nut: Point;
  readonly drive: Point;
  readonly hand: Point;
  readonly perMetre: number;
  readonly height: number;
}

export function WrenchView({ sheet, figures, labels }: {
  readonly sheet: Sheet;
  readonly figures: WrenchFigures;
  readonly labels: WrenchLabels;
}): JSX.Element {
  const { letter } = sheet;
  const isLabelled = sheet.width >= letter * 18;
  const lever = layOut(sheet, isLabelled, figures);
  const { nut, drive, hand, perMetre } = lever;
  const handle = direction(drive, hand);
  const flats = (figures.nutAcrossFlats ?? 0) * perMetre;
  const ring = Math.max((flats / 2) * 1.25, 8);
  const standOff = Math.max(letter * 1.7, ring + 6);
  const side = sideOf(figures.angle);
  const isAngled = Math.abs(Math.sin(figures.angle)) > 0.02 || figures.angle > 1;
  return (
    <Drawing {...sheet} height={lever.height} alternative={labels.alternative}>
      <SecondWrench nut={nut} lever={lever} isLeft={isAngled && side < 0 && figures.angle < 2} label={isLabelled ? labels.holdStill : ""} letter={letter} width={sheet.width} />
      <path class="handle" d={line(drive, hand)} />
      <path class="adapter" d={line(drive, nut)} />
      <circle class="ring" cx={nut.x} cy={nut.y} r={ring} />
      {flats > 0 && <path class="nut" d={hexagon(nut, flats)} />}
      <circle class="drive" cx={drive.x} cy={drive.y} r="5" />
      <Turn nut={nut} hand={hand} />
      {isLabelled && (
        <>
          <Dimension from={drive} to={hand} offset={standOff} label={labels.wrench} letter={letter} />
          {figures.adapter > 0 && (
            <Dimension from={nut} to={drive} offset={side * (isAngled ? standOff + letter * 0.9 : standOff)} label={labels.adapter} letter={letter} />
          )}
          {isAngled && <Angle drive={drive} handle={handle} figures={figures} label={labels.angle} letter={letter} />}
        </>
      )}
    </Drawing>
  );
}

/** On which side of the adapter its length finds room, clear of the handle and of the angle. */
function sideOf(angle: number): 1 | -1 {
  const isStraight = Math.abs(Math.sin(angle)) <= 0.02 && angle < 1;
  return isStraight || (angle > 1.1 && angle < 2.8) ? 1 : -1;
}

function layOut({ width, letter }: Sheet, isLabelled: boolean, { wrench, adapter, angle }: WrenchFigures): Lever {
  const turned = (x: number, y: number): Point => ({
    x: x * Math.cos(rise) - y * Math.sin(rise),
    y: x * Math.sin(rise) + y * Math.cos(rise),
  });
  const [drive, hand] = [turned(0, 0), turned(wrench, 0)];
  const nut = turned(-adapter * Math.cos(angle), adapter * Math.sin(angle));
  const [xs, ys] = [[nut.x, drive.x, hand.x], [nut.y, drive.y, hand.y]];
  const [left, upper] = [Math.min(...xs), Math.min(...ys)];
  const [wide, tall] = [Math.max(...xs) - left, Math.max(...ys) - upper];
  const room = isLabelled ? letter : 10;
  const margin = { left: room * 6.4, right: room * 2.4, top: room * 3.4, bottom: room * 4.6 };
  const perMetre = Math.min((width - margin.left - margin.right) / wide, tallestDrawing / (tall || 1));
  const placed = ({ x, y }: Point): Point => ({ x: margin.left + (x - left) * perMetre, y: margin.top + (y - upper) * perMetre });
  const height = margin.top + tall * perMetre + margin.bottom;
  return { nut: placed(nut), drive: placed(drive), hand: placed(hand), perMetre, height };
}

function direction(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** Dashed and cut off: its length is not known. */
function SecondWrench({ nut, lever, isLeft, label, letter, width }: {
  readonly nut: Point;
  readonly lever: Lever;
  readonly isLeft: boolean;
  readonly label: string;
  readonly letter: number;
  readonly width: number;
}): JSX.Element {
  const end = { x: isLeft ? Math.max(nut.x - width * 0.1, 8) : Math.min(nut.x + width * 0.28, width - 8), y: lever.height - (label === "" ? 8 : letter * 1.9) };
  const half = textWidth(label, letter) / 2;
  const text = { x: Math.max(half, Math.min(end.x, width - half)), y: lever.height - letter * 0.8 };
  return (
    <g>
      <path class="second-wrench" d={line(nut, end)} />
      {label !== "" && <Label at={text} text={label} letter={letter} isBare />}
    </g>
  );
}

/** Clockwise, seen from the tube: that is how a right-hand thread tightens. */
function Turn({ nut, hand }: { readonly nut: Point; readonly hand: Point }): JSX.Element {
  const radius = Math.hypot(hand.x - nut.x, hand.y - nut.y);
  const start = Math.atan2(hand.y - nut.y, hand.x - nut.x);
  const sweep = 34 / (radius || 1);
  const on = (angle: number): Point => ({ x: nut.x + radius * Math.cos(angle), y: nut.y + radius * Math.sin(angle) });
  const [from, to] = [on(start + sweep * 0.25), on(start + sweep)];
  const back = { x: Math.sin(start + sweep * 0.9), y: -Math.cos(start + sweep * 0.9) };
  return (
    <>
      <circle class="grip" cx={hand.x} cy={hand.y} r="6" />
      <path
        class="turn"
        d={`M${round(from.x)} ${round(from.y)}A${round(radius)} ${round(radius)} 0 0 1 ${round(to.x)} ${round(to.y)}${arrow(to, back)}`}
      />
    </>
  );
}

/** From the handle's own direction, drawn on beyond the drive, to the adapter. */
function Angle({ drive, handle, figures, label, letter }: {
  readonly drive: Point;
  readonly handle: Point;
  readonly figures: WrenchFigures;
  readonly label: string;
  readonly letter: number;
}): JSX.Element {
  const radius = letter * 1.7;
  const start = Math.atan2(-handle.y, -handle.x);
  const on = (angle: number, distance: number): Point => ({
    x: drive.x + distance * Math.cos(angle),
    y: drive.y + distance * Math.sin(angle),
  });
  // Screen angles run clockwise and the adapter turns to the handle's lower side.
  const end = start - figures.angle;
  const [from, to] = [on(start, radius), on(end, radius)];
  const isLarge = Math.abs(figures.angle) > Math.PI ? 1 : 0;
  // On the far side of the drawn-on handle, where nothing else is.
  const middle = on(start + 0.3, radius + 8 + textWidth(label, letter) / 2);
  return (
    <g>
      <path class="extension" d={line(drive, on(start, radius + 14))} />
      <path class="dimension" d={`M${round(from.x)} ${round(from.y)}A${radius} ${radius} 0 ${isLarge} ${figures.angle > 0 ? 0 : 1} ${round(to.x)} ${round(to.y)}`} />
      <Label at={middle} text={label} letter={letter} isBare />
    </g>
  );
}

function hexagon(centre: Point, acrossFlats: number): string {
  const corners = [0, 1, 2, 3, 4, 5].map((corner) => {
    const angle = rise + (corner * Math.PI) / 3;
    const at = moved(centre, { x: Math.cos(angle), y: Math.sin(angle) }, acrossFlats / Math.sqrt(3));
    return `${round(at.x)} ${round(at.y)}`;
  });
  return `M${corners.join("L")}Z`;
}
