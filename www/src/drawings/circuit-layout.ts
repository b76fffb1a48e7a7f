// Where everything of a circuit stands on the sheet: the units by their lift, the lines between them, each joint in
// its place along its line. Marks that would touch step aside, away from the other line.

import type { Circuit, JointAssessment, JointLine } from "../core";
import { moved, type Point } from "./dimension";
import type { Sheet } from "./sheet";

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface PlacedJoint {
  readonly joint: JointAssessment;
  /** Where it sits on its line. */
  readonly foot: Point;
  /** Where its mark is drawn. */
  readonly at: Point;
}

export interface CircuitLayout {
  readonly width: number;
  readonly height: number;
  /** Of a mark. */
  readonly radius: number;
  readonly indoor: Box;
  readonly outdoor: Box;
  readonly lines: Readonly<Record<JointLine, { readonly path: readonly Point[]; readonly stubs: readonly (readonly Point[])[]; readonly width: number }>>;
  readonly joints: readonly PlacedJoint[];
  /** Whether the lift is drawn to the scale of the length. */
  readonly isLiftToScale: boolean;
  /** Least distance between two marks. */
  readonly nearest: number;
}

/** A target that a thumb in a glove meets. */
export const targetSize = 48;
const tallestLift = 230;
const widestLine = 9;

/** The parts of a line's joints, from the outdoor unit inwards. */
interface Run {
  readonly outdoorPorts: readonly JointAssessment[];
  readonly along: readonly JointAssessment[];
  readonly indoorPorts: readonly JointAssessment[];
}

/** A route with the way that marks step aside. */
interface Route {
  readonly points: readonly Point[];
  /** +1: to the right of the way from the outdoor unit, -1: to its left. */
  readonly side: number;
}

export function circuitLayout({ width, letter }: Sheet, circuit: Circuit, joints: readonly JointAssessment[]): CircuitLayout {
  const radius = Math.min(Math.max(letter * 0.92, 12), 20);
  const runs = { "liquid-line": runOf(joints, "liquid-line"), "gas-line": runOf(joints, "gas-line") };
  const most = Math.max(...(["outdoorPorts", "indoorPorts"] as const).map((end) => ports(runs["liquid-line"][end]) + ports(runs["gas-line"][end])));
  const pitch = most <= 3 ? targetSize : radius * 2 + 4;
  const tall = pitch * (most - 1) + targetSize * 0.85;
  const [outdoorWidth, indoorWidth] = [targetSize * 2 + 8, Math.max(width * 0.17, 44)];
  const { up, isToScale } = liftOnSheet(circuit, width - outdoorWidth - indoorWidth);
  const outdoor = { x: 1, y: Math.max(up, 0), width: outdoorWidth, height: tall };
  const indoor = { x: width - indoorWidth - 1, y: Math.max(-up, 0), width: indoorWidth, height: tall };
  const heights = (box: Box, end: "outdoorPorts" | "indoorPorts") => portHeights(box, pitch, ports(runs["liquid-line"][end]), ports(runs["gas-line"][end]));
  const [atOutdoor, atIndoor] = [heights(outdoor, "outdoorPorts"), heights(indoor, "indoorPorts")];
  const from = outdoor.x + outdoor.width;
  const middle = (from + indoor.x) / 2;
  // The liquid line stays above and outside: to the left of the way up, to the right of the way down.
  const apart = Math.min(targetSize, (indoor.x - from) / 3.2) / 2;
  const bend = { "liquid-line": middle - (up >= 0 ? apart : -apart), "gas-line": middle + (up >= 0 ? apart : -apart) };
  const placed: PlacedJoint[] = capsOf(joints, outdoor, atOutdoor, radius);
  const lines = {} as Record<JointLine, CircuitLayout["lines"][JointLine]>;
  for (const line of ["liquid-line", "gas-line"] as const) {
    const [starts, ends] = [atOutdoor[line], atIndoor[line]];
    const points = [
      { x: from, y: mean(starts) },
      { x: bend[line], y: mean(starts) },
      { x: bend[line], y: mean(ends) },
      { x: indoor.x, y: mean(ends) },
    ];
    const route = { points, side: line === "liquid-line" ? -1 : 1 };
    placed.push(...alongLine(runs[line], route, { starts, ends, from, to: indoor.x, radius }, placed));
    const stubs = [...stubsOf(starts, from, mean(starts), radius * 2.2), ...stubsOf(ends, indoor.x, mean(ends), -radius * 2.2)];
    lines[line] = { path: points, stubs, width: lineWidth(circuit, line) };
  }
  return fitted({ width, radius, indoor, outdoor, lines, joints: placed, isLiftToScale: isToScale }, letter);
}

/** How high one unit stands above the other, on the sheet; up: the indoor one is higher. */
function liftOnSheet({ length, lift, higherUnit }: Circuit, run: number): { readonly up: number; readonly isToScale: boolean } {
  if (lift == null || lift === 0 || higherUnit == null) return { up: 0, isToScale: true };
  const part = length == null || length === 0 ? 1 : lift / length;
  // What of the line is not lift is run: the run is as wide as there is room.
  const tall = part < 1 ? (run * part) / (1 - part) : Infinity;
  const up = Math.min(tall, tallestLift);
  return { up: higherUnit === "indoor" ? up : -up, isToScale: tall <= tallestLift };
}

function lineWidth({ liquidLine, gasLine }: Circuit, line: JointLine): number {
  const [own, other] = line === "liquid-line" ? [liquidLine, gasLine] : [gasLine, liquidLine];
  // A line of unknown size is a hairline.
  return own == null ? 0 : (own / Math.max(own, other ?? 0)) * widestLine;
}

const atOutdoorEnd: readonly string[] = ["outdoor-port"];
const atIndoorEnd: readonly string[] = ["indoor-port"];

/** Along the line comes first what is nearest to the outdoor unit; the two sides of a union stay beside each other. */
function runOf(joints: readonly JointAssessment[], line: JointLine): Run {
  const own = joints.filter((joint) => joint.line === line && joint.kind !== "cap");
  const of = (places: readonly string[]): readonly JointAssessment[] => own.filter(({ place }) => places.includes(place));
  const along = [
    ...of(["outdoor-adapter", "outdoor-junction"]),
    ...[...of(["union-indoor-side", "union-outdoor-side"])].sort((one, other) => (other.count ?? 0) - (one.count ?? 0) || (one.place === "union-outdoor-side" ? -1 : 1)),
    ...of(["coupling", "own"]),
    ...of(["indoor-adapter", "indoor-junction"]),
  ];
  return { outdoorPorts: of(atOutdoorEnd), along, indoorPorts: of(atIndoorEnd) };
}

function ports(joints: readonly JointAssessment[]): number {
  return Math.max(joints.length, 1);
}

/** Heights of the ports at a unit: those of the liquid line above. */
function portHeights({ y, height }: Box, pitch: number, liquid: number, gas: number): Readonly<Record<JointLine, readonly number[]>> {
  const all = Array.from({ length: liquid + gas }, (_, place) => y + height / 2 + (place - (liquid + gas - 1) / 2) * pitch);
  return { "liquid-line": all.slice(0, liquid), "gas-line": all.slice(liquid) };
}

/** Caps sit at the service valves, inside the outdoor unit. */
function capsOf(joints: readonly JointAssessment[], { x, width }: Box, heights: Readonly<Record<JointLine, readonly number[]>>, radius: number): PlacedJoint[] {
  const placed: PlacedJoint[] = [];
  for (const line of ["liquid-line", "gas-line"] as const) {
    const caps = joints.filter((joint) => joint.line === line && joint.kind === "cap");
    caps.forEach((joint, place) => {
      const foot = { x: x + width, y: mean(heights[line]) };
      const aside = Math.max(x + width + radius + 2 - targetSize * (place + 1), x + radius + 2);
      placed.push({ joint, foot, at: free({ x: aside, y: foot.y }, { x: 0, y: 1 }, radius, placed) });
    });
  }
  return placed;
}

/** The joints of a line: its ports at the units, the others evenly between. */
function alongLine(run: Run, route: Route, ends: {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly from: number;
  readonly to: number;
  readonly radius: number;
}, before: readonly PlacedJoint[]): readonly PlacedJoint[] {
  const { radius } = ends;
  const placed: PlacedJoint[] = [];
  const put = (joint: JointAssessment, foot: Point, aside: Point): void => {
    placed.push({ joint, foot, at: free(foot, aside, radius, [...before, ...placed]) });
  };
  run.outdoorPorts.forEach((joint, place) => put(joint, { x: ends.from + radius + 2, y: ends.starts[place] ?? 0 }, { x: 0, y: route.side }));
  run.indoorPorts.forEach((joint, place) => put(joint, { x: ends.to - radius - 2, y: ends.ends[place] ?? 0 }, { x: 0, y: route.side }));
  for (const [place, { point, along }] of spread(run.along.length, route.points, radius, [...before, ...placed]).entries()) {
    const joint = run.along[place];
    if (joint) put(joint, point, { x: -along.y * route.side, y: along.x * route.side });
  }
  return placed;
}

/** Evenly along the way, all of them moved on together to where they keep most apart from the others. */
function spread(count: number, points: readonly Point[], radius: number, placed: readonly PlacedJoint[]): readonly PointOnWay[] {
  const [skip, total] = [radius + 2, lengthOf(points)];
  const moves = [0, 0.1, -0.1, 0.2, -0.2, 0.3, -0.3, 0.4, -0.4];
  const tries = moves.map((move) =>
    Array.from({ length: count }, (_, place) => pointAt(points, skip + ((total - 2 * skip) * (place + 1 + move)) / (count + 1))),
  );
  const gapOf = (feet: readonly PointOnWay[]): number => leastGap([...feet.map(({ point }) => point), ...placed.map(({ at }) => at)]);
  return tries.reduce((best, feet) => (gapOf(feet) > gapOf(best) + 0.5 ? feet : best));
}

function leastGap(points: readonly Point[]): number {
  const gaps = points.flatMap((one, place) => points.slice(place + 1).map((other) => distance(one, other)));
  return Math.min(Infinity, ...gaps);
}

/** The nearest place from the foot outwards where a mark touches no other. */
function free(foot: Point, aside: Point, radius: number, placed: readonly PlacedJoint[]): Point {
  const step = radius * 2 + 2;
  const isFree = (at: Point): boolean => placed.every((other) => Math.hypot(other.at.x - at.x, other.at.y - at.y) >= step - 0.5);
  const tries = Array.from({ length: 16 }, (_, count) => moved(foot, aside, (step * count) / 2));
  return tries.find(isFree) ?? foot;
}

/** From several ports into the line. */
function stubsOf(heights: readonly number[], edge: number, y: number, reach: number): readonly (readonly Point[])[] {
  if (heights.length < 2) return [];
  return heights.map((height) => [{ x: edge, y: height }, { x: edge + reach, y: height }, { x: edge + reach, y }]);
}

function mean(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0) / (numbers.length || 1);
}

function lengthOf(points: readonly Point[]): number {
  return points.slice(1).reduce((sum, point, place) => sum + distance(points[place] ?? point, point), 0);
}

function distance(one: Point, other: Point): number {
  return Math.hypot(other.x - one.x, other.y - one.y);
}

interface PointOnWay {
  readonly point: Point;
  readonly along: Point;
}

/** The point so far along the way, and the direction there. */
function pointAt(points: readonly Point[], far: number): PointOnWay {
  let left = far;
  for (const [place, end] of points.slice(1).entries()) {
    const start = points[place] ?? end;
    const length = distance(start, end);
    if (left <= length && length > 0) {
      const along = { x: (end.x - start.x) / length, y: (end.y - start.y) / length };
      return { point: moved(start, along, left), along };
    }
    left -= length;
  }
  return { point: points[points.length - 1] ?? { x: 0, y: 0 }, along: { x: 1, y: 0 } };
}

/** Moved down so that everything is on the sheet, with room for the names of the units. */
function fitted(layout: Omit<CircuitLayout, "height" | "nearest">, letter: number): CircuitLayout {
  const { indoor, outdoor, joints, radius } = layout;
  const names = letter * 1.7;
  const reach = radius * 1.25 + 2;
  const top = Math.min(Math.min(indoor.y, outdoor.y) - names, ...joints.map(({ at }) => at.y - reach));
  const bottom = Math.max(Math.max(indoor.y, outdoor.y) + outdoor.height + names, ...joints.map(({ at }) => at.y + reach));
  const down = <P extends Point>(point: P): P => ({ ...point, y: point.y - top });
  const lines = Object.fromEntries(
    Object.entries(layout.lines).map(([line, { path, stubs, width }]) => [line, { path: path.map(down), stubs: stubs.map((stub) => stub.map(down)), width }]),
  ) as unknown as CircuitLayout["lines"];
  // Whoever goes from mark to mark goes in the order of work.
  const ordered = [...joints].sort((one, other) => (one.joint.number ?? 0) - (other.joint.number ?? 0));
  const placed = ordered.map(({ joint, foot, at }) => ({ joint, foot: down(foot), at: down(at) }));
  return { ...layout, height: bottom - top, indoor: down(indoor), outdoor: down(outdoor), lines, joints: placed, nearest: leastGap(placed.map(({ at }) => at)) };
}
