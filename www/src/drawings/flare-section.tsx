// Section of the flare, to one scale for all sizes: the tube in the bar before, the finished cone after.

import type { JSX } from "preact";
import type { Limits } from "../core";
import { Dimension, Label, arrow, line, round } from "./dimension";
import { Drawing, textWidth, type Sheet } from "./sheet";

/** What is drawn, in metres and radians. */
export interface FlareFigures {
  readonly tube: number;
  readonly wall: number;
  readonly cone?: Limits | undefined;
  readonly halfAngle: number;
  readonly projection?: Limits | undefined;
  readonly measured?: number | undefined;
}

/** The same as it is read. */
export interface FlareLabels {
  readonly alternative: string;
  readonly tube: string;
  readonly cone: string;
  readonly halfAngle: string;
  readonly projection: string;
  readonly inBar: string;
  readonly finished: string;
  readonly scale: string;
}

/** Widest cone there is room for and the length that the sheet shows, metres: they set the scale. */
const tallest = 25e-3;
const longest = 47e-3;
const mostPixelsPerMetre = 9500;

/** What every part of the drawing needs. */
interface Layout {
  readonly sheet: Sheet;
  readonly perMetre: number;
  readonly axis: number;
  readonly top: number;
  readonly isLabelled: boolean;
}

export function FlareSection({ sheet, figures, labels, scaleLength }: {
  readonly sheet: Sheet;
  readonly figures: FlareFigures;
  readonly labels: FlareLabels;
  /** Length of the scale's bar, metres. */
  readonly scaleLength: number;
}): JSX.Element {
  const { width, letter } = sheet;
  // Very large letters leave no room for labels; all figures stand beside the drawing as well.
  const isLabelled = width >= letter * 20;
  const perMetre = Math.min(width / longest, mostPixelsPerMetre);
  const top = isLabelled && figures.projection ? letter * 1.8 : 2;
  const axis = top + (tallest / 2) * perMetre;
  const bottom = axis + (tallest / 2) * perMetre;
  const layout: Layout = { sheet, perMetre, axis, top, isLabelled };
  const split = figures.projection === undefined ? 0 : width * 0.38;
  return (
    <Drawing {...sheet} height={bottom + (isLabelled ? letter * 1.9 : 6)} alternative={labels.alternative}>
      <Hatches />
      {figures.projection && <InBar layout={layout} figures={figures} labels={labels} right={split - 14} />}
      <Finished layout={layout} figures={figures} labels={labels} left={split} />
      {isLabelled && (
        <>
          {figures.projection && <text class="soft" x="0" y={bottom + letter * 1.5}>{labels.inBar}</text>}
          <text class="soft" x={split} y={bottom + letter * 1.5}>{figures.cone ? labels.finished : ""}</text>
          <ScaleBar x={width - scaleLength * perMetre - 1} y={bottom + letter * 1.1} length={scaleLength * perMetre} label={labels.scale} />
        </>
      )}
    </Drawing>
  );
}

function Hatches(): JSX.Element {
  const pattern = (id: string, angle: number, gap: number): JSX.Element => (
    <pattern id={id} width={gap} height={gap} patternUnits="userSpaceOnUse" patternTransform={`rotate(${angle})`}>
      <path class={id} d={`M0 0V${gap}`} />
    </pattern>
  );
  return (
    <defs>
      {pattern("hatch-copper", 45, 4)}
      {pattern("hatch-steel", -45, 6)}
    </defs>
  );
}

/** The tube clamped, before the cone is pressed: how far it stands above the bar. */
function InBar({ layout, figures, labels, right }: Part & { readonly right: number }): JSX.Element | null {
  const { perMetre, axis, top, sheet, isLabelled } = layout;
  const { tube, wall, projection } = figures;
  if (projection === undefined) return null;
  const [outer, inner] = [(tube / 2) * perMetre, (tube / 2 - wall) * perMetre];
  const face = right - 3e-3 * perMetre;
  const [least, end] = [face + projection.low * perMetre, face + projection.high * perMetre];
  const half = (tallest / 2) * perMetre;
  const bar = (side: 1 | -1): string => `M1 ${axis + side * outer}H${face}V${axis + side * half}H1Z`;
  const tubeWall = (side: 1 | -1): string => `M1 ${axis + side * outer}H${end}V${axis + side * inner}H1Z`;
  const above = top - 5;
  return (
    <g>
      <path class="steel" d={bar(1) + bar(-1)} />
      <path class="copper" d={tubeWall(1) + tubeWall(-1)} />
      <path class="centre" d={`M0 ${axis}H${end + 6}`} />
      <path class="extension" d={`M${face} ${axis - half}V${above - 4}M${end} ${axis - outer}V${above - 4}`} />
      {projection.low > 0 && <path class="extension" d={`M${least} ${axis - outer}V${above - 4}`} />}
      <path class="dimension" d={`M${face - 16} ${above}H${face}M${end} ${above}H${end + 12}${arrow({ x: face, y: above }, { x: -1, y: 0 })}${arrow({ x: end, y: above }, { x: 1, y: 0 })}`} />
      {isLabelled && <Label at={{ x: face - 18, y: above }} text={labels.projection} letter={sheet.letter} anchor="end" />}
    </g>
  );
}

interface Part {
  readonly layout: Layout;
  readonly figures: FlareFigures;
  readonly labels: FlareLabels;
}

/** The finished flare with its dimensions. */
function Finished({ layout, figures, labels, left }: Part & { readonly left: number }): JSX.Element {
  const { perMetre, axis, sheet, isLabelled } = layout;
  const bold = sheet.letter * 1.2;
  const half = isLabelled ? Math.max(textWidth(labels.cone, bold) / 2, 20) : 8;
  const coneLine = sheet.width - half - 3;
  const foot = coneLine - half - 10 - 3.6e-3 * perMetre;
  const [outer, inner] = [(figures.tube / 2) * perMetre, (figures.tube / 2 - figures.wall) * perMetre];
  const rim = figures.cone && flareRim(figures, perMetre, foot);
  const diameterAt = figures.projection === undefined ? left + textWidth(labels.tube, sheet.letter) / 2 + 4 : left + 10;
  return (
    <g>
      {rim ? (
        <path class="copper" d={flaredWall(1, axis, left, foot, outer, inner, rim) + flaredWall(-1, axis, left, foot, outer, inner, rim)} />
      ) : (
        <path class="copper" d={`M${left} ${axis - outer}H${foot}V${axis - inner}H${left}ZM${left} ${axis + outer}H${foot}V${axis + inner}H${left}Z`} />
      )}
      <path class="centre" d={`M${left} ${axis}H${sheet.width}`} />
      {rim && <Angle axis={axis} inner={inner} rim={rim} letter={sheet.letter} label={isLabelled ? labels.halfAngle : ""} halfAngle={figures.halfAngle} />}
      {isLabelled && <TubeDiameter x={diameterAt} axis={axis} outer={outer} layout={layout} label={labels.tube} isInBar={figures.projection !== undefined} />}
      {rim && isLabelled && (
        <Dimension
          from={{ x: rim.outerX, y: axis + rim.outerY }}
          to={{ x: rim.outerX, y: axis - rim.outerY }}
          offset={rim.outerX - coneLine}
          label={labels.cone}
          letter={bold}
          isBold
        />
      )}
      {figures.measured !== undefined && rim && <Measured diameter={figures.measured * perMetre} axis={axis} from={rim.outerX - 10} to={coneLine + 8} />}
    </g>
  );
}

/** Where the rim's two corners lie: the outer one, on which the cone is measured, and the inner one. */
interface Rim {
  readonly outerX: number;
  readonly outerY: number;
  readonly innerX: number;
  readonly innerY: number;
  /** Where the bore turns into the cone. */
  readonly footX: number;
}

function flareRim({ tube, wall, cone, halfAngle }: FlareFigures, perMetre: number, foot: number): Rim | undefined {
  if (cone === undefined) return undefined;
  const rise = (cone.high / 2 - tube / 2) * perMetre;
  const thickness = wall * perMetre;
  const outerX = foot + rise / Math.tan(halfAngle);
  const outerY = (cone.high / 2) * perMetre;
  return {
    outerX,
    outerY,
    innerX: outerX + thickness * Math.sin(halfAngle),
    innerY: outerY - thickness * Math.cos(halfAngle),
    footX: foot + thickness * Math.tan(halfAngle / 2),
  };
}

function flaredWall(side: 1 | -1, axis: number, left: number, foot: number, outer: number, inner: number, rim: Rim): string {
  const corner = (x: number, y: number): string => `${round(x)} ${round(axis + side * y)}`;
  return `M${corner(left, outer)}L${corner(foot, outer)}L${corner(rim.outerX, rim.outerY)}L${corner(rim.innerX, rim.innerY)}L${corner(rim.footX, inner)}L${corner(left, inner)}Z`;
}

/** The cone's face drawn on to the axis, and the angle between the two. */
function Angle({ axis, inner, rim, letter, label, halfAngle }: {
  readonly axis: number;
  readonly inner: number;
  readonly rim: Rim;
  readonly letter: number;
  readonly label: string;
  readonly halfAngle: number;
}): JSX.Element {
  const apex = rim.footX - inner / Math.tan(halfAngle);
  const radius = letter * 1.7;
  const on = { x: apex + radius * Math.cos(halfAngle), y: axis - radius * Math.sin(halfAngle) };
  const middle = { x: apex + (radius + letter * 1.5) * Math.cos(halfAngle / 2), y: axis - radius * 0.62 };
  return (
    <g>
      <path class="extension" d={line({ x: apex, y: axis }, { x: rim.footX, y: axis - inner })} />
      <path class="dimension" d={`M${apex + radius} ${axis}A${radius} ${radius} 0 0 0 ${on.x} ${on.y}`} />
      {label !== "" && <Label at={middle} text={label} letter={letter} />}
    </g>
  );
}

function TubeDiameter({ x, axis, outer, layout, label, isInBar }: {
  readonly x: number;
  readonly axis: number;
  readonly outer: number;
  readonly layout: Layout;
  readonly label: string;
  readonly isInBar: boolean;
}): JSX.Element {
  const at = isInBar ? textWidth(label, layout.sheet.letter) / 2 + 4 : x;
  return (
    <Dimension
      from={{ x: at, y: axis + outer }}
      to={{ x: at, y: axis - outer }}
      offset={0}
      label={label}
      letter={layout.sheet.letter}
    />
  );
}

function Measured({ diameter, axis, from, to }: {
  readonly diameter: number;
  readonly axis: number;
  readonly from: number;
  readonly to: number;
}): JSX.Element {
  return <path class="measured" d={`M${from} ${axis - diameter / 2}H${to}M${from} ${axis + diameter / 2}H${to}`} />;
}

function ScaleBar({ x, y, length, label }: {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly label: string;
}): JSX.Element {
  return (
    <g>
      <path class="dimension" d={`M${x} ${y}h${length}M${x} ${y - 4}v8M${x + length} ${y - 4}v8`} />
      <text class="soft" x={x - 6} y={y + 4} text-anchor="end">{label}</text>
    </g>
  );
}
