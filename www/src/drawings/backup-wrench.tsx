// Two wrenches, seen along the tube: the one on the nut turns, the one on the fitting behind it stands still.
// Not to scale: it is there to be remembered.

import type { JSX } from "preact";
import { arrow, moved, round, type Point } from "./dimension";
import { Drawing, textWidth, type Sheet } from "./sheet";

export interface BackupWrenchLabels {
  readonly turn: string;
  readonly hold: string;
  readonly alternative: string;
}

/** Directions of the two handles: one hand closes them upon each other. */
const [turned, held] = [(-27 * Math.PI) / 180, (27 * Math.PI) / 180];
const longestHandle = 190;

export function BackupWrench({ sheet, labels }: { readonly sheet: Sheet; readonly labels: BackupWrenchLabels }): JSX.Element {
  const { letter, width } = sheet;
  const isLabelled = width >= textWidth(labels.turn, letter) + letter * 5 && width >= textWidth(labels.hold, letter) + letter * 5;
  const nut = 17;
  const left = nut * 2.4;
  const handle = Math.min(width - left - 16, longestHandle);
  const centre = { x: left, y: handle * Math.sin(held) + (isLabelled ? letter * 1.6 : 0) + 6 };
  const height = centre.y * 2;
  return (
    <Drawing {...sheet} height={height} alternative={labels.alternative}>
      <Wrench centre={centre} direction={held} jaw={nut * 1.42} handle={handle} name="held" />
      <Fixed at={onHandle(centre, held, handle * 0.78)} />
      <path class="nut" d={hexagon(centre, nut * 1.25, held)} />
      <Wrench centre={centre} direction={turned} jaw={nut * 1.2} handle={handle} name="turned" />
      <path class="nut" d={hexagon(centre, nut, turned)} />
      <circle class="ring" cx={centre.x} cy={centre.y} r={nut * 0.55} />
      <Turn centre={centre} radius={handle * 0.94} />
      {isLabelled && (
        <>
          <text x={centre.x} y={letter}>
            {labels.turn}
          </text>
          <text x={centre.x} y={height - letter * 0.35}>
            {labels.hold}
          </text>
        </>
      )}
    </Drawing>
  );
}

function onHandle(centre: Point, direction: number, distance: number): Point {
  return moved(centre, { x: Math.cos(direction), y: Math.sin(direction) }, distance);
}

/** An open jaw around the hexagon and its handle. */
function Wrench({ centre, direction, jaw, handle, name }: {
  readonly centre: Point;
  readonly direction: number;
  readonly jaw: number;
  readonly handle: number;
  readonly name: "turned" | "held";
}): JSX.Element {
  const gap = 0.95;
  const [from, to] = [onHandle(centre, direction + Math.PI - gap, jaw), onHandle(centre, direction + Math.PI + gap, jaw)];
  const [start, end] = [onHandle(centre, direction, jaw), onHandle(centre, direction, handle)];
  const path = `M${round(from.x)} ${round(from.y)}A${round(jaw)} ${round(jaw)} 0 1 0 ${round(to.x)} ${round(to.y)}M${round(start.x)} ${round(start.y)}L${round(end.x)} ${round(end.y)}`;
  return <path class={`wrench-${name}`} d={path} />;
}

/** The sign of what does not move: a line on hatched ground. */
function Fixed({ at }: { readonly at: Point }): JSX.Element {
  const along = { x: Math.cos(held), y: Math.sin(held) };
  const beneath = { x: -along.y, y: along.x };
  const foot = moved(at, beneath, 5);
  const strokes = [-14, -7, 0, 7, 14].map((place) => {
    const [top, low] = [moved(foot, along, place), moved(moved(foot, along, place - 5), beneath, 7)];
    return `M${round(top.x)} ${round(top.y)}L${round(low.x)} ${round(low.y)}`;
  });
  const [left, right] = [moved(foot, along, -20), moved(foot, along, 16)];
  return <path class="dimension" d={`M${round(left.x)} ${round(left.y)}L${round(right.x)} ${round(right.y)}${strokes.join("")}`} />;
}

/** Clockwise, seen from the tube: that is how a right-hand thread tightens. */
function Turn({ centre, radius }: { readonly centre: Point; readonly radius: number }): JSX.Element {
  const [from, to] = [onHandle(centre, turned + 0.1, radius), onHandle(centre, turned + 0.5, radius)];
  const back = { x: Math.sin(turned + 0.47), y: -Math.cos(turned + 0.47) };
  return <path class="turn" d={`M${round(from.x)} ${round(from.y)}A${round(radius)} ${round(radius)} 0 0 1 ${round(to.x)} ${round(to.y)}${arrow(to, back)}`} />;
}

function hexagon(centre: Point, radius: number, direction: number): string {
  const corners = [0, 1, 2, 3, 4, 5].map((corner) => {
    const at = onHandle(centre, direction + (corner * Math.PI) / 3, radius);
    return `${round(at.x)} ${round(at.y)}`;
  });
  return `M${corners.join("L")}Z`;
}
