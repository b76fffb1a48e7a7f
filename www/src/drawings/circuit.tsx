// The circuit: both units, both lines at their relative diameters, the lift to the scale of the length, and every
// joint where it is, with its number in the order of work. On a screen the marks lead to the joints.

import type { JSX } from "preact";
import type { JointAssessment, JointLine } from "../core";
import { targetSize, type Box, type CircuitLayout, type PlacedJoint } from "./circuit-layout";
import { Dimension, Label, line, round, type Point } from "./dimension";
import { JointMark } from "./joint-mark";
import type { Sheet } from "./sheet";

export interface CircuitLabels {
  readonly alternative: string;
  readonly indoor: string;
  readonly outdoor: string;
  /** Nothing: level, or not known. */
  readonly lift?: string | undefined;
  readonly length?: string | undefined;
}

/** Where a joint leads, and what it is called. */
export interface JointLink {
  readonly href: string;
  readonly name: string;
}

/** Whether each mark has a target of its own that no other touches. */
export function isTouchable({ nearest }: CircuitLayout): boolean {
  return nearest >= targetSize - 0.5;
}

export function CircuitDrawing({ sheet, layout, labels, linkOf }: {
  readonly sheet: Sheet;
  readonly layout: CircuitLayout;
  readonly labels: CircuitLabels;
  /** Nothing on paper. */
  readonly linkOf?: ((joint: JointAssessment) => JointLink) | undefined;
}): JSX.Element {
  const { letter } = sheet;
  const { width, height, indoor, outdoor, joints, radius } = layout;
  const isLinked = linkOf !== undefined && isTouchable(layout);
  // Very large letters leave no room: what they say stands beneath as well.
  const isLabelled = width >= letter * 20;
  return (
    <svg
      class="drawing circuit"
      width={width}
      height={round(height)}
      viewBox={`0 0 ${round(width)} ${round(height)}`}
      font-size={letter}
      role={isLinked ? "group" : "img"}
      aria-label={labels.alternative}
    >
      <Line name="liquid-line" layout={layout} />
      <Line name="gas-line" layout={layout} />
      <rect class="unit" {...rounded(outdoor)} />
      <rect class="unit" {...rounded(indoor)} />
      {isLabelled && <Names layout={layout} labels={labels} letter={letter} />}
      {joints.filter(isAside).map(({ joint, foot, at }) => (
        <path key={joint.id} class="extension" d={line(foot, at)} />
      ))}
      {joints.map((placed) => (
        <Joint key={placed.joint.id} placed={placed} radius={radius} link={isLinked ? linkOf(placed.joint) : undefined} />
      ))}
    </svg>
  );
}

function rounded({ x, y, width, height }: Box): Box {
  return { x: round(x), y: round(y), width: round(width), height: round(height) };
}

function Line({ name, layout }: { readonly name: JointLine; readonly layout: CircuitLayout }): JSX.Element {
  const { path, stubs, width } = layout.lines[name];
  const classes = width === 0 ? `tube ${name} unknown` : `tube ${name}`;
  const thick = width === 0 ? undefined : round(width);
  const thin = width === 0 ? undefined : round(width * 0.7);
  return (
    <g class={classes}>
      <path stroke-width={thick} d={pathOf(path)} />
      {stubs.map((stub, place) => (
        <path key={place} stroke-width={thin} d={pathOf(stub)} />
      ))}
    </g>
  );
}

function pathOf(points: readonly Point[]): string {
  return points.map(({ x, y }, place) => `${place === 0 ? "M" : "L"}${round(x)} ${round(y)}`).join("");
}

/** Names on the side that no line passes, the lift between the feet or the heads of both units. */
function Names({ layout: { indoor, outdoor, width }, labels, letter }: {
  readonly layout: CircuitLayout;
  readonly labels: CircuitLabels;
  readonly letter: number;
}): JSX.Element {
  const isIndoorHigher = indoor.y < outdoor.y;
  const isOutdoorHigher = outdoor.y < indoor.y;
  const nameAt = (box: Box, isBelow: boolean): number => (isBelow ? box.y + box.height + letter * 0.9 : box.y - letter * 0.8);
  const x = indoor.x + indoor.width / 2;
  const level = (box: Box): number => (isIndoorHigher ? box.y + box.height : box.y);
  return (
    <>
      <Label at={{ x: outdoor.x, y: nameAt(outdoor, isIndoorHigher) }} text={labels.outdoor} letter={letter} anchor="start" isBare />
      <Label at={{ x: width - 1, y: nameAt(indoor, isOutdoorHigher) }} text={labels.indoor} letter={letter} anchor="end" isBare />
      {labels.lift !== undefined && (
        <>
          <path class="extension" d={line({ x: outdoor.x + outdoor.width, y: level(outdoor) }, { x: x + 5, y: level(outdoor) })} />
          <Dimension from={{ x, y: Math.max(level(indoor), level(outdoor)) }} to={{ x, y: Math.min(level(indoor), level(outdoor)) }} offset={0} label={labels.lift} letter={letter} />
        </>
      )}
      {labels.length !== undefined && (
        <Label at={{ x: outdoor.x, y: isIndoorHigher ? outdoor.y - letter * 0.8 : outdoor.y + outdoor.height + letter * 0.9 }} text={labels.length} letter={letter} anchor="start" isBold isBare />
      )}
    </>
  );
}

/** A mark without room at its joint: a line leads to it, beneath all marks. */
function isAside({ at, foot }: PlacedJoint): boolean {
  return Math.hypot(at.x - foot.x, at.y - foot.y) > 1;
}

function Joint({ placed: { joint, at }, radius, link }: {
  readonly placed: PlacedJoint;
  readonly radius: number;
  readonly link: JointLink | undefined;
}): JSX.Element {
  const mark = <JointMark at={at} radius={radius} state={joint.state} number={joint.number ?? undefined} />;
  if (link === undefined) return <g data-joint={joint.id}>{mark}</g>;
  return (
    <a href={link.href} aria-label={link.name} data-joint={joint.id} data-state={joint.state}>
      <rect class="target" x={round(at.x - targetSize / 2)} y={round(at.y - targetSize / 2)} width={targetSize} height={targetSize} />
      {mark}
    </a>
  );
}
