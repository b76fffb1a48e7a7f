// What the charge card asks: its fields by panel, and the answers that each panel draws from. A bad field
// withholds its own panel's figures and no other's.

import { calculate, type AccessoryInput, type ChargeAnswer, type Input, type Problem } from "../../core";
import { message } from "../../locale";
import { answerOf, problemsOf } from "../../parts/card";
import { inputOf, type AnyField, type CardField } from "../../parts/card-fields";
import { textOf } from "../../parts/fields";
import { rowsOf, type RowList } from "../../parts/row-list";
import { runUnit } from "../../unit-choice";

type Fields = readonly CardField<"charge">[];

const refrigerant: Fields = [{ name: "refrigerant", as: "refrigerant" }];

/** A weight. Plates and scales in pounds say "6 lb 4 oz", for which a pad of figures has no letters. */
function weight(name: keyof Input<"charge">, unit?: () => string, instead?: readonly (keyof Input<"charge">)[]): CardField<"charge"> {
  return { name, quantity: "mass", ...(unit && { unit }), ...(instead && { instead }), ...(runUnit() === "ft" && { words: true }) };
}

export const plateFields = (): Fields => [
  ...refrigerant,
  weight("plateCharge"),
  { name: "prechargedLength", quantity: "length", unit: runUnit },
  { name: "length", label: "charge-length", quantity: "length", unit: runUnit },
  { name: "plateAdder", quantity: "mass-per-length" },
  { name: "plateReduction", quantity: "mass-per-length" },
  { name: "arrives", choices: ["charged", "empty"], otherwise: "charged" },
];

export const scaleFields = (): Fields => [
  weight("cylinderStart"),
  weight("cylinderNow"),
  weight("cylinderTare"),
];

export const instrumentFields = (): Fields => [
  weight("scaleResolution", fineUnit),
  weight("scaleUncertainty", fineUnit),
  weight("chargeToAdd"),
];

export const lineFields: Fields = [
  { name: "liquidTube", as: "tube", none: "charge-no-line" },
  { name: "vapourTube", as: "tube", none: "charge-no-line" },
];

export const stateFields: Fields = [
  { name: "liquidTemperature", quantity: "temperature", signed: true },
  { name: "vapourDewTemperature", quantity: "temperature", signed: true },
  { name: "superheat", label: "charge-superheat", quantity: "temperature-difference" },
];

export const recoveryFields = (): Fields => [
  weight("recoveryWaterCapacity", undefined, ["recoveryVolume"]),
  { name: "recoveryVolume", quantity: "volume", instead: ["recoveryWaterCapacity"] },
  weight("recoveryTare"),
  weight("recoveryGross"),
  { name: "recoveryTemperature", quantity: "temperature", signed: true },
];

export const hoseFields: Fields = [
  { name: "hoseBore", quantity: "length" },
  { name: "hoseLength", quantity: "length", unit: runUnit },
  { name: "hosePhase", choices: ["liquid", "vapour"], otherwise: "liquid" },
  { name: "hoseTemperature", quantity: "temperature", signed: true },
];

export const accessories: RowList<AccessoryInput> = {
  name: "accessories",
  isStacked: true,
  columns: [
    { name: "name", stem: "accessory", words: true },
    { name: "mass", stem: "accessoryMass", quantity: "mass", unit: fineUnit },
    { name: "volume", stem: "accessoryVolume", quantity: "volume" },
    { name: "phase", stem: "accessoryPhase", choices: () => ["liquid", "vapour"].map((word) => ({ word, label: message(`choice-${word}`) })) },
  ],
};

/** Every field and list of the card. */
export function shownAt(): readonly string[] {
  const fields = [plateFields(), scaleFields(), instrumentFields(), lineFields, stateFields, recoveryFields(), hoseFields].flat();
  return [...fields.map(({ name }) => name), accessories.name];
}

/** What small masses are read in. */
export function fineUnit(): string {
  return runUnit() === "m" ? "g" : "oz";
}

/** A small wall unit with a line somewhat longer than it comes charged for; the work is half done. */
export const example = {
  refrigerant: "R-32",
  plateCharge: "0.95 kg",
  prechargedLength: "7.5 m",
  length: "18 m",
  plateAdder: "20 g/m",
  cylinderStart: "14.36 kg",
  cylinderNow: "14.25 kg",
  cylinderTare: "6.8 kg",
  scaleResolution: "5 g",
  accessory1: "filter drier",
  accessoryMass1: "30 g",
  liquidTube: "1/4",
  vapourTube: "1/2",
  recoveryVolume: "12.3 L",
  recoveryTare: "7.9 kg",
  recoveryGross: "13.6 kg",
  hoseBore: "4.8 mm",
  hoseLength: "1.5 m",
};

export interface Asked {
  readonly problems: readonly Problem[];
  /** Plate, line and accessories. */
  readonly charge: ChargeAnswer | undefined;
  /** The same with the scale. */
  readonly weighed: ChargeAnswer | undefined;
  readonly physics: ChargeAnswer | undefined;
  readonly recovery: ChargeAnswer | undefined;
  readonly hose: ChargeAnswer | undefined;
}

export function ask(): Asked {
  const lines = inputOf([...lineFields, ...stateFields]);
  const scale = inputOf([...scaleFields(), ...instrumentFields()]);
  const { chargeToAdd, ...instrument } = inputOf(instrumentFields());
  const known = inputOf(refrigerant);
  const plate = { ...inputOf(plateFields()), ...(chargeToAdd !== undefined && { chargeToAdd }), accessories: rowsOf(accessories) };
  const recovery = { ...known, ...instrument, ...inputOf(recoveryFields()) };
  const hose = { ...known, ...inputOf(hoseFields) };
  const answer = (input: Parameters<typeof calculate<"charge">>[1]): ChargeAnswer | undefined => answerOf(calculate("charge", input));
  // Where the charge hangs on the lines' sizes it is missing without them, so that no other figure takes its place.
  const whole = { ...plate, ...lines };
  const charge = answer(whole) ?? answer(plate);
  return {
    problems: problemsOf(calculate("charge", { ...whole, ...scale, ...recovery, ...hose })),
    charge,
    weighed: answer({ ...whole, ...scale }) ?? answer({ ...plate, ...scale }),
    physics: answer(whole) ?? answer({ ...known, ...lines }),
    recovery: answer(recovery),
    hose: answer(hose),
  };
}

/** Whether anything stands in some fields. */
export function isFilled(fields: readonly AnyField[]): boolean {
  return fields.some(({ name }) => textOf(name).trim() !== "");
}

/** Whether anything is wrong in some fields. */
export function isWrong(fields: readonly AnyField[], problems: readonly Problem[]): boolean {
  return fields.some(({ name }) => problems.some(({ field }) => field === name));
}
