// What the card of the pressure hold asks: its fields by panel, and the answers that each panel draws from.
// A bad field withholds its own panel's figures and no other's.

import { calculate, type HoldReadingInput, type Input, type Problem, type QuantityKind, type StandingTestAnswer } from "../../core";
import { airInput, barometerUnit } from "../../parts/air-fields";
import { answerOf, problemsOf } from "../../parts/card";
import { inputOf, type AnyField, type CardField } from "../../parts/card-fields";
import { textOf } from "../../parts/fields";
import { limitText } from "../../parts/figures";
import { lastRow, rowsOf, type Column, type RowList } from "../../parts/row-list";
import { settings } from "../../settings";
import { unitOf } from "../../unit-choice";
import { timeUnit } from "../pump-down/fields";

type Fields = readonly CardField<"standing-test">[];

/** Differences are told in the unit of the gauge. */
export function gaugeUnit(): string {
  return unitOf("gauge-pressure");
}

export function rateUnit(): string {
  return settings().system === "metric" ? "mbar/h" : "psi/h";
}

const lowestRating: Fields = [{ name: "lowestRating", quantity: "gauge-pressure" }];
const volume: Fields = [{ name: "volume", quantity: "volume", label: "standing-test-volume" }];
const leakToSee: Fields = [{ name: "leakToSee", quantity: "pressure-rate", unit: rateUnit, words: true }];

/** A time that must have passed is never rounded down. */
export function holdText(time: number): string {
  return limitText("time", time, "least", timeUnit(time));
}

/** The plate outranks every rule, and is shown as chosen as soon as its pressure stands there. */
export function ruleFields(): Fields {
  const isOnPlate = textOf("plateTestPressure").trim() !== "";
  return [
    { name: "designPressure", quantity: "gauge-pressure" },
    { name: "plateTestPressure", quantity: "gauge-pressure" },
    ...lowestRating,
    { name: "testRule", choices: ["real-decreto-552-2019", "ufgs-15182", "plate"], otherwise: isOnPlate ? "plate" : "real-decreto-552-2019" },
  ];
}

export const nitrogenFields: Fields = [
  ...volume,
  { name: "cylinderVolume", quantity: "volume" },
  { name: "cylinderPressure", quantity: "gauge-pressure" },
];

export const lossFields: Fields = [...leakToSee, { name: "refrigerant", as: "refrigerant", none: "choose" }];

export const instrumentFields: Fields = [
  { name: "gaugeResolution", quantity: "pressure-difference", unit: gaugeUnit },
  { name: "gaugeUncertainty", quantity: "pressure-difference", unit: gaugeUnit },
  { name: "thermometerUncertainty", quantity: "temperature-difference" },
];

const ownColumns: readonly Column<keyof HoldReadingInput & string>[] = [
  { name: "time", quantity: "time", unit: () => "h", words: true },
  { name: "gaugePressure", quantity: "gauge-pressure" },
  { name: "temperature", label: "standing-test-tube", quantity: "temperature", words: true },
];

const airColumns: readonly Column<keyof HoldReadingInput & string>[] = [
  { name: "ambientTemperature", label: "standing-test-ambient", quantity: "temperature", words: true },
  { name: "barometer", label: "standing-test-barometer", quantity: "absolute-pressure", unit: barometerUnit, words: true },
];

/** Whether the air is read with each reading; a link that has such readings says so without being asked. */
function isAirRead(): boolean {
  const chosen = textOf("airRead");
  return chosen === "" ? lastRow({ name: "readings", columns: airColumns }) > 0 : chosen === "true";
}

/** Whether it is: the page's own question, for two more fields in every row. */
export function airField(): AnyField {
  return { name: "airRead", as: "yes-no", otherwise: isAirRead() ? "true" : "false" };
}

/** Air that is not read is neither shown nor sent. */
export function readings(): RowList<HoldReadingInput> {
  const list = { name: "readings", least: 2 };
  return isAirRead() ? { ...list, columns: [...ownColumns, ...airColumns], isStacked: true } : { ...list, columns: ownColumns };
}

/** Fields and lists that show their own problems. */
export function shownAt(): readonly string[] {
  const fields = [ruleFields(), nitrogenFields, lossFields, instrumentFields].flat();
  return [...fields.map(({ name }) => name as string), "readings", "altitude", "barometer"];
}

export interface Asked {
  /** The answer that has the guidance, if there is one. */
  readonly before: StandingTestAnswer | undefined;
  /** The answer that has the verdict on the readings, if there are any. */
  readonly after: StandingTestAnswer | undefined;
  readonly problems: readonly Problem[];
}

export function ask(): Asked {
  const rule = { ...inputOf(ruleFields()), ...airInput() };
  const nitrogen = inputOf(nitrogenFields);
  const bare = { ...inputOf(leakToSee), ...inputOf(instrumentFields), ...airInput(), readings: rowsOf(readings()) };
  const sized = { ...bare, ...inputOf(lossFields), ...inputOf(volume) };
  const reply = calculate("standing-test", { ...rule, ...nitrogen, ...sized });
  const whole = answerOf(reply);
  const before = whole ?? firstAnswer([{ ...rule, ...nitrogen }, rule]);
  const after = whole ?? firstAnswer([{ ...sized, ...inputOf(lowestRating) }, sized, bare]);
  return {
    before: before?.guidance ? before : undefined,
    after: after?.instruments ? after : undefined,
    problems: problemsOf(reply).filter((problem) => !isNothingAsked(problem)),
  };
}

/** The answer to the first of these questions that has one. */
function firstAnswer(questions: readonly Input<"standing-test">[]): StandingTestAnswer | undefined {
  for (const question of questions) {
    const answer = answerOf(calculate("standing-test", question));
    if (answer) return answer;
  }
  return undefined;
}

/** Neither guidance nor readings yet: the head of the card says what to enter. */
function isNothingAsked({ field, code }: Problem): boolean {
  return field === "readings" && code === "too-few";
}

/** Whether anything is wrong in these fields. */
export function isWrong(fields: readonly AnyField[], problems: readonly Problem[]): boolean {
  return problems.some(({ field }) => fields.some(({ name }) => name === field));
}

/** What differences and rates are told in, in the working. */
export function workingUnits(): Partial<Record<QuantityKind, string>> {
  return { "pressure-rate": rateUnit(), "pressure-difference": gaugeUnit(), time: "h" };
}
