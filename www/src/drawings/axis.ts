// An axis in the unit of the person: the core says what its ends are in that unit, and since every
// unit is a straight line over the SI number, the ticks between them follow.

import { calculate, type QuantityKind } from "../core";
import { decimalMark } from "../locale";

export interface Axis {
  readonly quantity: QuantityKind;
  readonly unit: string;
  /** Ends in SI. */
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly Tick[];
}

export interface Tick {
  readonly si: number;
  readonly text: string;
}

/** An axis with at most so many ticks, at round numbers. */
export function axisOf(quantity: QuantityKind, [low, high]: readonly [number, number], unit: string, most: number): Axis {
  const [first, last] = [numberIn(quantity, low, unit), numberIn(quantity, high, unit)];
  const step = roundStep((last - first) / most);
  const perUnit = (high - low) / (last - first || 1);
  const places = Array.from({ length: most + 1 }, (_, place) => (Math.ceil(first / step) + place) * step);
  const ticks = places.filter((number) => number <= last).map((number) => ({ si: low + (number - first) * perUnit, text: written(number, step) }));
  return { quantity, unit, low, high, ticks };
}

/** An axis on which each decade is as long as the next, for quantities whose units share their zero. */
export function logarithmicAxis(quantity: QuantityKind, [low, high]: readonly [number, number], unit: string, most: number): Axis {
  const perUnit = high / numberIn(quantity, high, unit);
  const [first, last] = [low / perUnit, high / perUnit].map(Math.log10) as [number, number];
  const digits = [[1, 2, 5], [1, 3], [1]].find((kept) => kept.length * (last - first) <= most) ?? [1];
  const decades = Array.from({ length: Math.floor(last) - Math.floor(first) + 1 }, (_, place) => Math.floor(first) + place);
  const numbers = decades.flatMap((decade) => digits.map((digit) => digit * 10 ** decade));
  const inside = numbers.filter((number) => Math.log10(number) >= first - 1e-9 && Math.log10(number) <= last + 1e-9);
  const round = inside.map((number) => ({ si: number * perUnit, text: written(number, number) }));
  // Less than a decade may hold one such number or none, and one tick gives no measure.
  const ticks = round.length > 1 ? round : axisOf(quantity, [low, high], unit, Math.ceil(most / 2)).ticks;
  return { quantity, unit, low, high, ticks };
}

function numberIn(quantity: QuantityKind, si: number, unit: string): number {
  const reply = calculate("convert", { text: String(si), quantity });
  const reading = "answer" in reply ? reply.answer.readings[0] : undefined;
  return reading?.units.find((known) => known.unit === unit)?.value ?? si;
}

/** The next 1, 2 or 5 with its zeros. */
function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return power * ([1, 2, 5].find((digit) => digit * power >= least) ?? 10);
}

function written(number: number, step: number): string {
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const text = grouped(Math.abs(number).toFixed(decimals)).replace(".", decimalMark);
  return number < -step / 2 ? `−${text}` : text;
}

/** Figures in groups of three from five on, as the core writes them. */
function grouped(text: string): string {
  return /^\d{5}/.test(text) ? text.replace(/\B(?=(\d{3})+(?!\d))/g, "\u202f") : text;
}
