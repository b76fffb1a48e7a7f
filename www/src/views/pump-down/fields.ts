// The fields of the pump-down card, and how its figures are written.

import type { EvacuatedTubeInput, NitrogenBreakInput, VacuumHoseInput, VacuumTargetInput } from "../../core";
import { message } from "../../locale";
import type { CardField } from "../../parts/card-fields";
import { textOf } from "../../parts/fields";
import { figureText } from "../../parts/figures";
import type { RowList } from "../../parts/row-list";
import { tubeChoices } from "../../parts/tube-choice";
import { vacuumUnit } from "../../parts/vacuum-unit";
import { settings } from "../../settings";
import { runUnit } from "../../unit-choice";

type Field = CardField<"pump-down">;

/** What the speed of small vacuum pumps is marked in. */
export function pumpUnit(): "L/min" | "cfm" {
  return settings().system === "metric" ? "L/min" : "cfm";
}

export const pumpFields: readonly Field[] = [
  { name: "pumpSpeed", quantity: "volume-flow", unit: pumpUnit },
  { name: "ultimatePressure", quantity: "absolute-pressure", unit: vacuumUnit },
];

export const systemFields: readonly Field[] = [
  { name: "volume", quantity: "volume", label: "pump-down-volume", instead: ["coilVolume"] },
  { name: "coilVolume", quantity: "volume", instead: ["volume"] },
];

/** Water that is entered makes a system damp; what is shown as chosen must not deny it. */
export function waterFields(): readonly Field[] {
  return [
    { name: "moisture", choices: ["dry", "damp"], otherwise: textOf("water").trim() === "" ? "dry" : "damp" },
    { name: "water", quantity: "mass", unit: () => (settings().system === "metric" ? "g" : "oz") },
    { name: "waterDepth", quantity: "length" },
    { name: "ambientTemperature", quantity: "temperature", signed: true },
  ];
}

export const finerFields: readonly Field[] = [
  { name: "startingPressure", quantity: "absolute-pressure", unit: vacuumUnit },
  { name: "sharePressure", quantity: "absolute-pressure", unit: vacuumUnit },
  { name: "coreBore", quantity: "length" },
  { name: "coreLength", quantity: "length" },
];

export function allFields(): readonly Field[] {
  return [...pumpFields, ...systemFields, ...waterFields(), ...finerFields];
}

export const hoses: RowList<VacuumHoseInput> = {
  name: "hoses",
  columns: [
    { name: "bore", quantity: "length" },
    { name: "length", quantity: "length", unit: runUnit },
    { name: "core", choices: () => ["in", "out"].map((word) => ({ word, label: message(`choice-${word}`) })) },
  ],
};

export const tubes: RowList<EvacuatedTubeInput> = {
  name: "tubes",
  columns: [
    { name: "tube", choices: tubeChoices },
    { name: "length", stem: "tubeLength", quantity: "length", unit: runUnit },
  ],
};

export const targets: RowList<VacuumTargetInput> = {
  name: "targets",
  columns: [{ name: "pressure", stem: "target", quantity: "absolute-pressure", unit: vacuumUnit }],
};

export const breaks: RowList<NitrogenBreakInput> = {
  name: "evacuations",
  columns: [
    { name: "lowPressure", quantity: "absolute-pressure", unit: vacuumUnit },
    { name: "breakPressure", quantity: "gauge-pressure" },
  ],
};

/** A time in the unit that people would say it in. */
export function timeUnit(seconds: number): "s" | "min" | "h" {
  return seconds < 180 ? "s" : seconds < 10_800 ? "min" : "h";
}

export function timeText(seconds: number): string {
  const unit = timeUnit(seconds);
  return figureText("time", seconds, unit === "s" ? "instrument" : "table", unit);
}

/** A part of a whole: of small ones, parts in a million. */
export function partText(part: number): string {
  if (part < 1e-6) return message("pump-down-under-ppm");
  return figureText("ratio", part, "table", part < 1e-3 ? "ppm" : "%");
}
