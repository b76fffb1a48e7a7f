// Every verdict of a line set, in the order in which they are read.

import type { LineSetAnswer, QuantityKind, Verdict } from "../../core";
import { message } from "../../locale";
import type { Judged } from "../../parts/verdict-line";
import { runUnit } from "../../unit-choice";

export interface Check {
  /** What is judged: the words are `line-set-check-<kind>`, the verdict's `line-set-<kind>-<verdict>`. */
  readonly kind: "flash" | "oil" | "oil-least" | "velocity" | "rating" | "ports" | "length" | "lift" | "precharge";
  /** In cooling or heating, or of which line. */
  readonly of?: "cooling" | "heating" | "liquidLine" | "suctionLine";
  readonly judged: Judged;
  readonly quantity: QuantityKind;
  /** Quantity of margin and uncertainty, where it is another. */
  readonly differences?: QuantityKind;
  readonly unit?: string;
}

type Judgement = Judged | null | undefined;
type Kind = Omit<Check, "judged">;

/** A verdict, if there is one. */
function check(judged: Judgement, kind: Kind): readonly Check[] {
  return judged ? [{ ...kind, judged }] : [];
}

export function checksOf(answer: LineSetAnswer): readonly Check[] {
  return [...dutyChecks(answer, "cooling"), ...dutyChecks(answer, "heating"), ...lineChecks(answer, "liquidLine"), ...lineChecks(answer, "suctionLine"), ...plateChecks(answer)];
}

function dutyChecks(answer: LineSetAnswer, of: "cooling" | "heating"): readonly Check[] {
  const duty = answer[of];
  return [
    ...check(duty?.flashMargin, { kind: "flash", of, quantity: "temperature-difference" }),
    ...check(duty?.oilReturn?.atFullCapacity, { kind: "oil", of, quantity: "velocity" }),
    ...check(duty?.oilReturn?.atLeastCapacity, { kind: "oil-least", of, quantity: "velocity" }),
    ...check(duty?.suctionLine?.recommendedVelocity, { kind: "velocity", of, quantity: "velocity" }),
  ];
}

function lineChecks(answer: LineSetAnswer, of: "liquidLine" | "suctionLine"): readonly Check[] {
  const line = answer[of];
  return [
    ...check(line?.rating?.againstDesignPressure, { kind: "rating", of, quantity: "gauge-pressure", differences: "pressure-difference" }),
    ...check(line?.ports?.ratio, { kind: "ports", of, quantity: "ratio" }),
  ];
}

function plateChecks({ limits }: LineSetAnswer): readonly Check[] {
  const run = { quantity: "length", unit: runUnit() } as const;
  return [
    ...check(limits.length, { kind: "length", ...run }),
    ...check(limits.lift, { kind: "lift", ...run }),
    ...check(limits.prechargedLength, { kind: "precharge", ...run }),
  ];
}

/** What is judged, in words. */
export function nameOf({ kind, of }: Check): string {
  return message(`line-set-check-${kind}`, of === undefined ? {} : { of: message(`line-set-${of}`) });
}

export function isInside({ judged }: Check): boolean {
  return judged.verdict === "in-band";
}

/** All together. More line than the factory charge is for is no fault: it is charged for. */
export function overall(checks: readonly Check[]): { readonly state: Verdict; readonly count: number } | undefined {
  const counted = checks.filter(({ kind }) => kind !== "precharge");
  const count = (state: Verdict): number => counted.filter(({ judged }) => judged.verdict === state).length;
  const state = (["out-of-band", "cannot-tell", "in-band"] as const).find((worst) => count(worst) > 0);
  return state && { state, count: count(state) };
}
