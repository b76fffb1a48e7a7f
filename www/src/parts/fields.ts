// The texts that stand in fields, where they are kept, and what is sent to the core of them.

import { enterAll, place, type Place } from "../address";
import { cards } from "../card-list";
import { message, withDecimalMark } from "../locale";
import { show, units, type Problem, type QuantityKind } from "../core";
import { learnEntry } from "../learning";
import { keepInKit, settings } from "../settings";
import { unitOf } from "../unit-choice";

/** Fields that go with the person from nut to nut and from job to job. */
const kitFields: readonly string[] = [
  "tube",
  "flareClass",
  "tool",
  "caliperUncertainty",
  "adapterLength",
  "adapterAngle",
  "wrenchLength",
  "wrenchRange",
  "wrenchAccuracy",
  "refrigerant",
  "altitude",
  "vacuumUnit",
  "technician",
  "ownGaugeResolution",
  "ownGaugeUncertainty",
  "ownThermometerUncertainty",
  "ownVacuumGaugeResolution",
  "ownScaleResolution",
];

/**
 * What stands in a field before anybody has touched it, so that figures are there at once. The job's
 * cards start empty: a figure that could hurt must not come from what nobody entered.
 */
function initialText(name: string): string {
  const isOfTubes = place().path === "tubes";
  switch (name) {
    case "tube":
      return cards.some(({ path }) => path === place().path) ? "" : "5/8";
    case "flareClass":
      return "class-2";
    case "temperature":
      return !isOfTubes ? "" : unitOf("temperature") === "°F" ? "150 °F" : "65 °C";
    case "designPressure":
      return !isOfTubes ? "" : unitOf("gauge-pressure") === "psi" ? "602 psi" : withDecimalMark("41.5 bar");
    case "refrigerant":
      return ["convert", "room-limit", "standing-test"].includes(place().path) ? "" : "R-410A";
    case "tableStep":
      return unitOf("temperature-difference") === "°F" ? "1 °F" : "1 K";
    case "tableRows":
      return "21";
    case "vacuumUnit":
      return "micron";
    default:
      return "";
  }
}

/** Entries of a link that are no fields: `kit=none` leaves out the kit of whoever opens it, `learn=yes` unfolds the working. */
const linkWords: readonly string[] = ["kit", learnEntry];

/** Whether an entry goes along with any question, rather than being one. */
export function goesAlong(name: string): boolean {
  return isOfKit(name) || linkWords.includes(name);
}

/** What the kit has for a field; the altitude gives way to a barometer that was read at the place. */
function kitText(name: string): string | undefined {
  const { barometer, kit } = place().entries;
  const isOutranked = (name === "altitude" && barometer !== undefined) || kit === "none";
  return isOutranked ? undefined : settings().kit[name];
}

/** The fields that this place has asked for their texts, and the unit of a bare number in each. */
const asked = new Map<string, string | undefined>();
let askedAt: string | undefined;

function noteAsked(name: string, unit: string | undefined): void {
  const { path } = place();
  if (path !== askedAt) asked.clear();
  askedAt = path;
  if (unit !== undefined || !asked.has(name)) asked.set(name, unit);
}

/**
 * The place with all that its figures hang on, so that they are the same on another phone: also what came from the
 * kit or stood there from the start, and the unit of each figure. Where the kit here is empty, that of the other
 * phone must not step in.
 */
export function placeToHandOn(): Place {
  const { path, entries } = place();
  const texts = [...asked].map(([name, unit]) => [name, settled(textOf(name), unit)] as const);
  const isKitNeeded = texts.some(([name, text]) => isOfKit(name) && text === "");
  const filled = texts.filter(([, text]) => text.trim() !== "");
  return { path, entries: { ...entries, ...Object.fromEntries(filled), ...(isKitNeeded && { kit: "none" }) } };
}

/** A blank stands for "emptied by the person", or the initial text would come back. */
const emptied = " ";

/** Fields of the open job: what they are called, and where their texts are kept. */
export const jobPrefix = "job:";

export interface JobTexts {
  textOf(path: string): string;
  /** `unit` is that of a bare number. */
  write(texts: Readonly<Record<string, string>>, unit: string | undefined): void;
}

let jobTexts: JobTexts | undefined;

/** From now on the texts of the fields `job:<path>` are kept there. */
export function keepJobTextsIn(kept: JobTexts | undefined): void {
  jobTexts = kept;
}

/** What stands in a field: the job's text, or the place's, else the kit's, else the initial one. */
export function textOf(name: string): string {
  if (name.startsWith(jobPrefix)) return jobTexts?.textOf(name.slice(jobPrefix.length)) ?? "";
  noteAsked(name, undefined);
  const text = place().entries[name] ?? kitText(name) ?? initialText(name);
  return text === emptied ? "" : text;
}

/** Keeps what was typed; the fields that it takes the place of are emptied. */
export function write(name: string, text: string, instead: readonly string[] = [], unit?: string): void {
  if (name.startsWith(jobPrefix)) {
    const emptied = text === "" ? [] : instead.map((other) => [other.slice(jobPrefix.length), ""] as const);
    jobTexts?.write({ ...Object.fromEntries(emptied), [name.slice(jobPrefix.length)]: text }, unit);
    return;
  }
  // No refrigerant in a question does not mean that the person works with none.
  if (isOfKit(name) && !(name === "refrigerant" && text === "")) keepInKit(name, text);
  const replaced = text === "" ? [] : instead.map((other) => [other, ""] as const);
  const isEmptied = text === "" && (kitText(name) ?? initialText(name)) !== "";
  enterAll({ ...Object.fromEntries(replaced), [name]: isEmptied ? emptied : text });
}

/** Whether a field goes with the person, rather than with what is asked here. */
export function isOfKit(name: string): boolean {
  return kitFields.includes(name);
}

/** Whether nothing has been entered here yet; what came along in the kit does not count. */
export function isUntouched(): boolean {
  return Object.entries(place().entries).every(([name, text]) => goesAlong(name) || text.trim() === "");
}

/** Puts what the kit has for some fields into the address, so that a link says all that its figures hang on. */
export function writeOut(names: readonly string[]): void {
  enterAll(Object.fromEntries(names.map((name) => [name, place().entries[name] ?? textOf(name)])));
}

/** The figure in a field was meant in another unit. */
export function changeUnit(name: string, from: string, to: string): void {
  changeUnits([name], from, to);
}

/** The figures in some fields were meant in another unit: all in one step, for the page is drawn after each. */
export function changeUnits(names: readonly string[], from: string, to: string): void {
  const meant = names.filter((name) => textOf(name).endsWith(` ${from}`)).map((name) => [name, textOf(name).slice(0, -from.length) + to] as const);
  for (const [name, text] of meant) {
    if (isOfKit(name)) keepInKit(name, text);
  }
  enterAll(Object.fromEntries(meant));
}

/** A word to choose from, as it stands in the address; the core says if it is none of its own. */
export function wordOf<Word extends string>(name: string): Word {
  return textOf(name) as Word;
}

/** What a field sends: the text as typed and the unit of a bare number. */
export function entryOf(
  name: string,
  quantity: QuantityKind,
  unit = unitOf(quantity),
): { readonly text: string; readonly assume: string } {
  noteAsked(name, unit);
  return { text: textOf(name), assume: unit };
}

/** Figures with no unit and no stroke: they take the unit that stands beside the field. */
const bareFigures = /^[\s\d.,±+−–-]*\d[\s\d.,±+−–-]*$/;

/** Whether the text takes the unit that stands beside the field: there is none in it yet. */
export function takesUnit(name: string): boolean {
  const text = textOf(name);
  return text.trim() === "" || bareFigures.test(text);
}

/**
 * When a field is left, the unit that stood beside it is written into it: else the same text would
 * mean something else after a change of units, or on the phone of somebody who gets the link.
 */
export function settle(name: string, unit: string | undefined): void {
  const text = textOf(name);
  if (settled(text, unit) !== text) write(name, settled(text, unit), [], unit);
}

/** The text with the unit written into it, where it had none. */
export function settled(text: string, unit: string | undefined): string {
  return unit !== undefined && bareFigures.test(text) ? `${text.trim()} ${unit}` : text;
}

/** The problem of a field, if it has one. */
export function problemOf(name: string, problems: readonly Problem[]): Problem | undefined {
  return problems.find(({ field }) => field === name);
}

/** Whether a field is only wanted yet: nobody has made a mistake. */
export function isWanted(problem: Problem): boolean {
  return problem.code === "missing" || ((problem.code === "wrong-count" || problem.code === "too-few") && problem.found < problem.needed);
}

/** Whether what stands in a field is a mistake. */
export function isMistake(problem: Problem | undefined): boolean {
  return problem !== undefined && !isWanted(problem);
}

/** The sentence for a problem, its figures in the unit beside its field, else in the person's. */
export function problemText(problem: Problem, fieldUnit?: string): string {
  const quantity = "quantity" in problem ? problem.quantity : undefined;
  const told = Object.entries(problem).map(([name, found]) => {
    const isOfFields = name === "accepted" && problem.code === "wrong-count";
    return [name, isOfFields ? fieldNames(found) : argument(name, found, quantity, fieldUnit)] as const;
  });
  return message(`problem-${problem.code}`, Object.fromEntries(told));
}

function fieldNames(fields: unknown): string {
  return Array.isArray(fields) ? fields.map((field) => message(`field-${lastName(String(field))}`)).join("; ") : "";
}

function argument(name: string, found: unknown, quantity: QuantityKind | undefined, fieldUnit = ""): string {
  if (Array.isArray(found)) return found.join(", ");
  if (typeof found === "number" && quantity !== undefined) {
    const isItsOwn = units(quantity).some(({ symbol }) => symbol === fieldUnit);
    const { number, unit } = show(quantity, found, isItsOwn ? fieldUnit : unitOf(quantity), "significant");
    return `${number} ${unit}`;
  }
  if (name === "quantity" || (name === "found" && quantity !== undefined)) return message(`quantity-${String(found)}`);
  if (name === "with") return message(`field-${lastName(String(found))}`);
  if (name === "example") return withDecimalMark(String(found));
  return String(found);
}

/** The last name of a field within others: `pressure` of `readings[2].pressure`. */
export function lastName(field: string): string {
  return field.slice(Math.max(field.lastIndexOf("."), field.lastIndexOf(":")) + 1);
}
