// The one way to the calculation core. Everything is known here by name and type; nothing is computed.

import type * as FirstModule from "../generated/first/coldwright.js";
import type * as WholeModule from "../generated/coldwright.js";
import type { Catalogue, LinkProblem, Problem, QuantityKind, Source, Stage, TubeSeries } from "./catalogue";
import { decimalMark } from "./locale";

export type * from "./catalogue";

type Calculations = Catalogue["calculations"];
/** Name of a calculation. */
export type Name = keyof Calculations;
/** What a calculation asks for: texts as typed, `{text, assume}` where a unit stands beside the field. */
export type Input<N extends Name> = Calculations[N]["input"];
/** What it finds, in SI. */
export type Answer<N extends Name> = Calculations[N]["answer"];
/** What comes back: an answer, or everything that is wrong with the input. */
export type Reply<N extends Name> = { readonly answer: Answer<N> } | { readonly problems: readonly Problem[] };

/** How fine a figure is shown. */
export type Precision = "instrument" | "table" | "significant";
export interface Shown {
  readonly number: string;
  readonly unit: string;
}
export interface ShownBand {
  readonly low: string;
  readonly high: string;
  readonly unit: string;
}
export interface UnitChoice {
  readonly symbol: string;
  readonly metric: boolean;
}

/** Two limits in SI. */
export interface Limits {
  readonly low: number;
  readonly high: number;
}

/** The core in use: in the first visit what answers the first screen, which is small and soon there, then the whole. */
let core: typeof FirstModule;
let further: typeof WholeModule | undefined;
let wholeCore: Promise<void> | undefined;

/**
 * Makes what answers the first screen ready; everything else here must wait for it. The page names the module that is
 * soonest there: from the host the small one, from this phone the whole, so that the small one need not be kept.
 */
export async function startCore(): Promise<void> {
  if (ONE_FILE || document.querySelector(`link[href="${WHOLE_MODULE}"]`) !== null) return startWholeCore();
  const first = await import("../generated/first/coldwright.js");
  await first.default({ module_or_path: FIRST_MODULE });
  core = first;
}

/** Makes the whole core ready and takes it into use; without a signal in the first visit, the next call tries again. */
export function startWholeCore(): Promise<void> {
  wholeCore ??= fetchWholeCore().catch((reason: unknown) => {
    wholeCore = undefined;
    throw reason;
  });
  return wholeCore;
}

async function fetchWholeCore(): Promise<void> {
  const whole = await import("../generated/coldwright.js");
  await whole.default({ module_or_path: ONE_FILE ? (await import("./core-inside")).coreInside : WHOLE_MODULE });
  core = further = whole;
}

/** The latest replies. The core is pure: the same question has the same answer, so that a key in one field costs nothing elsewhere. */
const replies = new Map<string, unknown>();
const mostReplies = 100;

/** Asks a calculation. Pass just the fields that the answer depends on: a bad one withholds the answer. */
export function calculate<N extends Name>(name: N, input: Input<N>): Reply<N> {
  const question = `${name} ${JSON.stringify(input)}`;
  const known = replies.get(question);
  if (known !== undefined) return known as Reply<N>;
  const reply = core.calculate(name, input);
  if (replies.size >= mostReplies) replies.clear();
  replies.set(question, reply);
  return reply;
}

const assessments = new WeakMap<object, Map<string, Reply<"job">>>();

/** How a job stands, as `calculate("job", …)`: asked once for each state of the document, which is never changed in place. */
export function assess(document: object, now: string, stage: Stage | null): Reply<"job"> {
  const known = assessments.get(document) ?? new Map<string, Reply<"job">>();
  assessments.set(document, known);
  const question = `${now} ${stage}`;
  const reply = known.get(question) ?? (core.calculate("job", { job: document, now, stage }) as Reply<"job">);
  // Only the latest moment is asked again.
  known.clear();
  known.set(question, reply);
  return reply;
}

/** A job as the text of a link, or why it has none; `too-large` says how many characters it would have. */
export type WrittenJobLink =
  | { readonly text: string; readonly photosLeftOut: number }
  | { readonly problem: LinkProblem };

/** The document of a job as the text of a link, of A-Z a-z 0-9 - _. Photos are not in it. Needs the whole core. */
export function writeJobLink(document: object): WrittenJobLink {
  return wholly().writeJobLink(document) as WrittenJobLink;
}

/** The document that a link carries, still unchecked by the store's `treeOf`; or why it cannot be read. Needs the whole core. */
export function readJobLink(text: string): { readonly document: unknown } | { readonly problem: LinkProblem } {
  return wholly().readJobLink(text) as ReturnType<typeof readJobLink>;
}

function wholly(): typeof import("../generated/coldwright.js") {
  if (further === undefined) throw new Error("the whole core is not there yet");
  return further;
}

/** An SI number in a unit of its quantity, rounded as the precision says. */
export function show(quantity: QuantityKind, si: number, unit: string, precision: Precision = "instrument"): Shown {
  return known(core.show(quantity, si, unit, precision, decimalMark), quantity, unit);
}

/** A band in a unit, its limits rounded into it. */
export function showBand(quantity: QuantityKind, { low, high }: Limits, unit: string): ShownBand {
  return known(core.showBand(quantity, low, high, unit, decimalMark), quantity, unit);
}

/** A figure some steps of an instrument away from another. */
export interface Stepped {
  /** How far away: `+0.05`. */
  readonly label: string;
  /** The figure with its unit; nothing beyond what can be. */
  readonly text?: string | null;
}

/** The figures so many steps of an instrument from one as typed; none if it cannot be read. Needs the whole core. */
export function steps(quantity: QuantityKind, text: string, unit: string, step: string, counts: readonly number[]): readonly Stepped[] {
  return wholly().steps(quantity, text, unit, step, new Float64Array(counts), decimalMark) as readonly Stepped[];
}

const unitsByQuantity = new Map<QuantityKind, readonly UnitChoice[]>();

/** The units of a quantity, the usual metric one first. */
export function units(quantity: QuantityKind): readonly UnitChoice[] {
  const remembered = unitsByQuantity.get(quantity);
  if (remembered !== undefined) return remembered;
  const found: readonly UnitChoice[] = core.units(quantity);
  unitsByQuantity.set(quantity, found);
  return found;
}

let sources: readonly Source[] | undefined;

/** The whole bibliography. */
export function bibliography(): readonly Source[] {
  sources ??= core.bibliography() as readonly Source[];
  return sources;
}

/** A size of tube in the core's tables. */
export interface TubeSize {
  readonly name: string;
  readonly series: TubeSeries;
  /** Only where this is not the usual wall of its size: it then goes into the input of `tube`. */
  readonly wall?: number | null;
  /** Nominal outside diameter of a size on which flare joints are made. */
  readonly flaredDiameter?: number | null;
}

let sizes: readonly TubeSize[] | undefined;

/** The sizes of tube in the tables, in their order. */
export function tubeSizes(): readonly TubeSize[] {
  sizes ??= core.tubeSizes() as readonly TubeSize[];
  return sizes;
}

function known<T>(shown: T | null | undefined, quantity: QuantityKind, unit: string): T {
  if (shown === null || shown === undefined) throw new Error(`${quantity} has no unit ${unit}`);
  return shown;
}
