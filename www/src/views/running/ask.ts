// What the card of the running system asks: its fields by panel, and the answers that each panel draws
// from. A bad field withholds its own panel's figures and no other's.

import { calculate, type Problem, type RunningAnswer } from "../../core";
import { airInput } from "../../parts/air-fields";
import { answerOf, problemsOf } from "../../parts/card";
import { inputOf, type AnyField, type CardField } from "../../parts/card-fields";
import { textOf } from "../../parts/fields";

type Fields = readonly CardField<"running">[];

/** Both the circuit and the air hang on it. */
const mode: Fields = [{ name: "mode", choices: ["cooling", "heating"], otherwise: "cooling" }];

/** How it runs, and what throttles. */
export const runningFields: Fields = [...mode, { name: "meteringDevice", choices: ["thermostatic-valve", "electronic-valve", "fixed-orifice"] }];

export const systemFields: Fields = [{ name: "refrigerant", as: "refrigerant" }, ...runningFields];

export const circuitFields: Fields = [
  { name: "suctionGaugePressure", quantity: "gauge-pressure", signed: true },
  { name: "suctionLineTemperature", quantity: "temperature", signed: true },
  { name: "liquidGaugePressure", quantity: "gauge-pressure" },
  { name: "liquidLineTemperature", quantity: "temperature" },
  { name: "plateSuperheat", quantity: "temperature-difference" },
  { name: "plateSubcooling", quantity: "temperature-difference" },
  { name: "outdoorDryBulb", quantity: "temperature", signed: true },
  { name: "runningTime", quantity: "time" },
];

export const airSideFields: Fields = [
  { name: "returnDryBulb", quantity: "temperature" },
  { name: "supplyDryBulb", quantity: "temperature" },
  { name: "returnWetBulb", quantity: "temperature", instead: ["returnRelativeHumidity"] },
  { name: "supplyWetBulb", quantity: "temperature", instead: ["supplyRelativeHumidity"] },
  { name: "returnRelativeHumidity", quantity: "ratio", instead: ["returnWetBulb"] },
  { name: "supplyRelativeHumidity", quantity: "ratio", instead: ["supplyWetBulb"] },
  { name: "targetSplit", quantity: "temperature-difference" },
  { name: "airflow", quantity: "volume-flow", words: true },
  { name: "plateCapacity", quantity: "power", words: true },
];

export const airflowFields: Fields = [{ name: "airflowChecked", as: "yes-no", otherwise: "false" }];

/** What stands in for another reading. */
export const insteadFields: Fields = [{ name: "dischargeGaugePressure", quantity: "gauge-pressure" }];

/** What has a usual value, apart from gauges and thermometer. */
export const usualFields: Fields = [
  { name: "humidityUncertainty", quantity: "ratio" },
  { name: "airflowUncertainty", quantity: "ratio" },
  { name: "evaporatingDifferenceBand", quantity: "temperature-difference" },
  { name: "condensingDifferenceBand", quantity: "temperature-difference" },
];

export const otherFields: Fields = [
  ...insteadFields,
  { name: "suctionGaugeUncertainty", quantity: "pressure-difference" },
  { name: "liquidGaugeUncertainty", quantity: "pressure-difference" },
  { name: "thermometerUncertainty", quantity: "temperature-difference", hint: "running-hint-thermometer" },
  ...usualFields,
];

export const shownAt: readonly string[] = [
  ...[systemFields, circuitFields, airSideFields, airflowFields, otherFields].flat().map(({ name }) => name),
  "altitude",
  "barometer",
];

export interface Asked {
  readonly circuit: RunningAnswer | undefined;
  readonly air: RunningAnswer | undefined;
  readonly problems: readonly Problem[];
}

export function ask(): Asked {
  const ofCircuit = { ...inputOf(systemFields), ...inputOf(circuitFields), ...inputOf(otherFields), ...airInput() };
  const ofAir = { ...inputOf(mode), ...inputOf(airSideFields), ...airInput() };
  const whole = calculate("running", { ...ofCircuit, ...ofAir, ...inputOf(airflowFields) });
  const answer = answerOf(whole);
  if (answer) return { circuit: answer, air: answer, problems: [] };
  return {
    circuit: answerOf(calculate("running", ofCircuit)),
    air: answerOf(calculate("running", ofAir)),
    problems: problemsOf(whole),
  };
}

/** Whether anything stands in these fields, or is wrong there. */
export function concern(fields: readonly AnyField[], problems: readonly Problem[]): boolean {
  const isWrong = problems.some(({ field }) => fields.some(({ name }) => name === field));
  return isWrong || fields.some(({ name }) => textOf(name) !== "");
}
