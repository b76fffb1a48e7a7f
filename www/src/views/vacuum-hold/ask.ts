// What the card of the vacuum hold asks, and the answers that it draws from. A bad figure of the rule or of
// the volume withholds what hangs on it, and never the verdict.

import { calculate, type Problem, type VacuumHoldAnswer, type VacuumReadingInput } from "../../core";
import { answerOf, problemsOf } from "../../parts/card";
import { inputOf, type CardField } from "../../parts/card-fields";
import { textOf } from "../../parts/fields";
import { mostRows, rowField, rowsOf, type RowList } from "../../parts/row-list";
import { vacuumUnit } from "../../parts/vacuum-unit";

type Fields = readonly CardField<"vacuum-hold">[];

/** What differences on a vacuum gauge are told in. */
export function stepUnit(): string {
  return vacuumUnit() === "torr" ? "micron" : vacuumUnit();
}

/** What a rise is told in. */
export function rateUnit(): "micron/min" | "Pa/min" {
  return vacuumUnit() === "micron" || vacuumUnit() === "torr" ? "micron/min" : "Pa/min";
}

export const readings: RowList<VacuumReadingInput> = {
  name: "readings",
  least: 4,
  columns: [
    { name: "time", quantity: "time", unit: () => "min" },
    { name: "pressure", quantity: "absolute-pressure", unit: vacuumUnit },
  ],
};

export const placeFields: Fields = [{ name: "ambientTemperature", quantity: "temperature", signed: true }];

export const gaugeFields: Fields = [
  { name: "gaugeResolution", quantity: "pressure-difference", unit: stepUnit },
  { name: "gaugeNoise", quantity: "ratio" },
  { name: "gaugeUncertainty", quantity: "pressure-difference", unit: stepUnit },
  { name: "dryPressure", quantity: "absolute-pressure", unit: vacuumUnit },
];

export const volumeFields: Fields = [{ name: "volume", quantity: "volume", label: "vacuum-hold-volume" }];

const plateFields: Fields = [
  { name: "passPressure", quantity: "absolute-pressure", unit: vacuumUnit },
  { name: "passTime", quantity: "time", unit: () => "min" },
];

/** The plate's own figures are asked for only where the plate's rule is chosen. */
export function ruleFields(): Fields {
  return [
    { name: "passRule", choices: ["ufgs-15182", "real-decreto-552-2019", "plate"], otherwise: "ufgs-15182" },
    ...(textOf("passRule") === "plate" ? plateFields : []),
    { name: "pumpEndPressure", quantity: "absolute-pressure", unit: vacuumUnit },
  ];
}

/** Fields in the vacuum gauge's unit. */
export const vacuumFields: readonly string[] = [
  ...[...gaugeFields, ...plateFields].map(({ name }) => name),
  "pumpEndPressure",
  ...readings.columns.flatMap((column) => Array.from({ length: mostRows }, (_, place) => rowField(column, place + 1))),
];

export const shownAt = (): readonly string[] => [readings, ...placeFields, ...gaugeFields, ...volumeFields, ...ruleFields()].map(({ name }) => name);

export interface Asked {
  readonly hold: VacuumHoldAnswer | undefined;
  /** With the rule. */
  readonly ruled: VacuumHoldAnswer | undefined;
  readonly problems: readonly Problem[];
}

export function ask(): Asked {
  const bare = { ...inputOf([...placeFields, ...gaugeFields]), readings: rowsOf(readings), curvePoints: 49 };
  const [volume, rule] = [inputOf(volumeFields), inputOf(ruleFields())];
  const whole = calculate("vacuum-hold", { ...bare, ...volume, ...rule });
  const answer = answerOf(whole);
  return {
    hold: answer ?? answerOf(calculate("vacuum-hold", { ...bare, ...volume })) ?? answerOf(calculate("vacuum-hold", bare)),
    ruled: answer ?? answerOf(calculate("vacuum-hold", { ...bare, ...rule })),
    problems: problemsOf(whole),
  };
}

/** Whether anything stands in some fields, or is wrong there. */
export function concern(fields: Fields, problems: readonly Problem[]): boolean {
  return fields.some(({ name }) => textOf(name).trim() !== "" || problems.some(({ field }) => field === name));
}

/** A branch circuit of a small office whose ends stood open on a damp day. */
export const example: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    [370, 570, 760, 880, 1050, 1160, 1330, 1430, 1550, 1710, 1840, 2020].flatMap((micron, place) => [
      [`time${place + 1}`, `${[0, 1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 15][place]} min`],
      [`pressure${place + 1}`, `${micron} micron`],
    ]),
  ),
  ambientTemperature: "18 °C",
  gaugeResolution: "10 micron",
  volume: "4.5 L",
};
