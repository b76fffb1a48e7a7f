// A verdict as a mark on a dimension line: inside and filled; on a limit and hollow, "cannot tell";
// beyond it and copper; dashed while nothing is known. The word always stands beside the mark.

import type { ComponentChildren, JSX } from "preact";
import type { Limits, Precision, QuantityKind, Verdict } from "../core";
import { message } from "../locale";
import { figureText } from "./figures";

/** A figure that was judged, in SI. */
export interface Judged {
  readonly figure: number;
  readonly verdict: Verdict;
  readonly margin: number;
  readonly uncertainty: number;
  readonly limit: number;
}

/** How a mark stands to its limits; `open` while nothing is known. */
export type MarkState = Verdict | "open";

/** Where the two limits stand in the mark, and the ends that a figure beyond them can reach. */
const [least, most, start, end] = [18, 54, 7, 65];

/**
 * The mark alone; without `judged` it is open, or stands where `state` says. A limit without an upper
 * one has only its lower tick.
 */
export function VerdictMark({ judged, limits, state = judged?.verdict ?? "open" }: {
  readonly judged?: Judged | undefined;
  readonly limits?: Limits | undefined;
  readonly state?: MarkState;
}): JSX.Element {
  const upper = judged === undefined || limits !== undefined;
  const at = judged ? position(judged, limits) : placeOf(state);
  const line = at === undefined ? [least, most] : [Math.min(at, least), Math.max(at, most)];
  return (
    <svg class="mark" viewBox="0 0 72 20" aria-hidden="true">
      <path class={at === undefined ? "line open" : "line"} d={`M${line[0]} 10H${line[1]}`} />
      <path class="line" d={`M${least} 3V17${upper ? `M${most} 3V17` : ""}`} />
      {at !== undefined && <circle class={state} cx={at} cy="10" r="5.5" />}
    </svg>
  );
}

/** Where a state without figures stands between two limits. */
function placeOf(state: MarkState): number | undefined {
  return { "in-band": (least + most) / 2, "cannot-tell": most, "out-of-band": end, open: undefined }[state];
}

function position({ figure, verdict, margin, limit }: Judged, limits: Limits | undefined): number {
  const width = most - least;
  if (limits === undefined) {
    return { "in-band": most - 8, "cannot-tell": least, "out-of-band": start }[verdict];
  }
  if (verdict === "in-band") return least + (width * (figure - limits.low)) / (limits.high - limits.low || 1);
  const isLow = limit === limits.low;
  if (verdict === "cannot-tell") return isLow ? least : most;
  return margin < 0 && isLow ? start : end;
}

/** Mark, word, margin and uncertainty in one line. */
export function VerdictLine({ judged, limits, state = judged?.verdict ?? "open", quantity, unit, precision = "table", words, children }: {
  readonly judged?: Judged | undefined;
  readonly limits?: Limits | undefined;
  /** Where it is known without a judged figure. */
  readonly state?: MarkState;
  /** Quantity of the margin. */
  readonly quantity?: QuantityKind;
  /** Unit of the margin, where it is not the quantity's own. */
  readonly unit?: string;
  /** How fine the margin is shown. */
  readonly precision?: Precision;
  /** The verdict's word, where it is another than "in band" and its like. */
  readonly words?: string;
  readonly children?: ComponentChildren;
}): JSX.Element {
  return (
    <div class="verdict" data-verdict={state}>
      <VerdictMark judged={judged} limits={limits} state={state} />
      <div>
        <b>{words ?? message(`verdict-${state}`)}</b>
        {judged && quantity && <span class="margin">{marginText(judged, quantity, precision, unit)}</span>}
        {children}
      </div>
    </div>
  );
}

/** How far from the limit, and how surely. */
export function marginText({ verdict, margin, uncertainty }: Judged, quantity: QuantityKind, precision: Precision, unit?: string): string {
  const where = { "in-band": "inside", "cannot-tell": "on", "out-of-band": "outside" }[verdict];
  const exact = uncertainty === 0 ? "-exact" : "";
  return message(`margin-${where}${exact}`, {
    margin: figureText(quantity, Math.abs(margin), precision, unit),
    uncertainty: figureText(quantity, uncertainty, precision, unit),
  });
}
