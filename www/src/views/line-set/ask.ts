// What the line-set card asks. Both lines run the same way, so that the run is entered once; the calculation
// takes it for each line. What is wrong in one place withholds what hangs on it and nothing else.

import { calculate, type Input, type LineSetAnswer, type PortTubeInput, type Problem } from "../../core";
import { problemsOf } from "../../parts/card";
import { sent, type AnyField } from "../../parts/card-fields";
import { textOf } from "../../parts/fields";
import { lastRow, rowsOf, type RowList } from "../../parts/row-list";
import { tubeChoices } from "../../parts/tube-choice";
import { runUnit } from "../../unit-choice";

/** A field of the card and where its text goes in the input: `liquidLine.length`. */
export type LineSetField = AnyField & { readonly to: readonly string[] };

type LineSetInput = Input<"line-set">;

/** Fields of a part, each under a name of its own in the address. */
function within(part: string, stem: string, fields: readonly AnyField[]): readonly LineSetField[] {
  return fields.map((field) => ({
    ...field,
    name: stem + field.name[0]?.toUpperCase() + field.name.slice(1),
    label: field.label ?? `field-${field.name}`,
    to: [`${part}.${field.name}`],
  }));
}

function plain(fields: readonly AnyField[]): readonly LineSetField[] {
  return fields.map((field) => ({ ...field, to: [field.name] }));
}

export const refrigerantField = plain([{ name: "refrigerant", as: "refrigerant" }]);

export const coolingFields = within("cooling", "cooling", [
  { name: "capacity", quantity: "power" },
  { name: "evaporatingTemperature", quantity: "temperature", signed: true },
  { name: "condensingTemperature", quantity: "temperature" },
  { name: "superheat", quantity: "temperature-difference" },
  { name: "subcooling", quantity: "temperature-difference" },
]);

export const heatingFields = within("heating", "heating", [
  { name: "capacity", quantity: "power" },
  { name: "condensingTemperature", quantity: "temperature" },
  { name: "subcooling", quantity: "temperature-difference" },
  { name: "dischargeSuperheat", quantity: "temperature-difference" },
]);

const tube: readonly AnyField[] = [{ name: "tube", as: "tube", none: "line-set-no-tube" }];

export const liquidTube = within("liquidLine", "liquid", tube.map((field) => ({ ...field, label: "field-liquidLine" })));
export const gasTube = within("suctionLine", "gas", tube.map((field) => ({ ...field, label: "field-suctionLine" })));

const width: readonly AnyField[] = [
  { name: "wall", quantity: "length" },
  { name: "bore", quantity: "length", instead: [] },
];

export const liquidWidth = within("liquidLine", "liquid", width.map((field) => ({ ...field, label: `line-set-liquid-${field.name}` })));
export const gasWidth = within("suctionLine", "gas", width.map((field) => ({ ...field, label: `line-set-gas-${field.name}` })));

const lines = ["liquidLine", "suctionLine"] as const;

/** The run that both lines share. */
function shared(fields: readonly AnyField[]): readonly LineSetField[] {
  return fields.map((field) => ({ ...field, to: lines.map((line) => `${line}.${field.name}`) }));
}

export const runFields: readonly LineSetField[] = [
  ...shared([{ name: "length", label: "line-set-length", quantity: "length", unit: runUnit }]),
  ...plain([{ name: "lift", quantity: "length", unit: runUnit }]),
  ...plain([{ name: "higherUnit", choices: ["indoor", "outdoor"] }]),
  ...shared([{ name: "elbows90" }]),
];

export const otherFittings = shared([{ name: "elbows45" }, { name: "teeRuns" }, { name: "teeBranches" }]);

export const plateFields = plain([
  { name: "longestLength", quantity: "length", unit: runUnit },
  { name: "longestLift", quantity: "length", unit: runUnit },
  { name: "prechargedLength", quantity: "length", unit: runUnit },
  { name: "designPressure", quantity: "gauge-pressure" },
  { name: "leastCapacity", quantity: "ratio" },
]);

export const fineFields = plain([
  { name: "tubeTemperature", quantity: "temperature" },
  { name: "oilDensity", quantity: "density" },
]);

/** Every field of the card, as it shows its own problem. */
const fields: readonly LineSetField[] = [
  ...refrigerantField,
  ...coolingFields,
  ...heatingFields,
  ...liquidTube,
  ...gasTube,
  ...liquidWidth,
  ...gasWidth,
  ...runFields,
  ...otherFittings,
  ...plateFields,
  ...fineFields,
];

/** Names under which problems are shown at their field. */
export const shownAt = [...fields.map(({ name }) => name), ...lines];

function portsOf(line: (typeof lines)[number], stem: string): RowList<PortTubeInput> {
  return { name: `${line}.ports`, columns: [{ name: "tube", stem, label: "line-set-port", choices: tubeChoices }] };
}

export const liquidPorts = portsOf("liquidLine", "liquidPort");
export const gasPorts = portsOf("suctionLine", "gasPort");

export function isFilled(some: readonly AnyField[]): boolean {
  return some.some(({ name }) => textOf(name).trim() !== "");
}

export function isWrong(some: readonly AnyField[], problems: readonly Problem[]): boolean {
  return some.some(({ name }) => problems.some(({ field }) => field === name));
}

export function hasPorts(): boolean {
  return [liquidPorts, gasPorts].some((list) => lastRow(list) > 0);
}

/** What stands in the fields, as the calculation takes it; parts of which nothing is filled are left out. */
function assembled(): LineSetInput {
  const isLiquid = isFilled([...liquidTube, ...liquidWidth]) || lastRow(liquidPorts) > 0;
  const isGas = isFilled([...gasTube, ...gasWidth]) || lastRow(gasPorts) > 0;
  const isHeating = isFilled(heatingFields);
  const left: Readonly<Record<string, boolean>> = {
    cooling: isHeating && !isFilled(coolingFields),
    heating: !isHeating,
    liquidLine: isGas && !isLiquid,
    suctionLine: isLiquid && !isGas,
  };
  const input: Record<string, unknown> = {};
  for (const field of fields) {
    for (const path of field.to) {
      const [outer = "", inner] = path.split(".");
      if (left[outer] === true) continue;
      if (inner === undefined) input[outer] = sent(field);
      else input[outer] = { ...(input[outer] as object | undefined), [inner]: sent(field) };
    }
  }
  for (const [line, list] of [["liquidLine", liquidPorts], ["suctionLine", gasPorts]] as const) {
    if (input[line] !== undefined) input[line] = { ...(input[line] as object), ports: rowsOf(list) };
  }
  return input as LineSetInput;
}

/** The input without what is wrong in it; nothing if no question is left. */
function withoutFlaws(input: LineSetInput, problems: readonly Problem[]): LineSetInput | undefined {
  const rest: Record<string, unknown> = { ...input };
  for (const { field } of problems) {
    const [outer = ""] = field.split(/[.[]/);
    if (outer === "refrigerant") return undefined;
    if (/^\w+\.ports\b/.test(field)) rest[outer] = { ...(rest[outer] as object), ports: [] };
    else delete rest[outer];
  }
  return rest.cooling === undefined && rest.heating === undefined ? undefined : (rest as LineSetInput);
}

/** Problems under the names of the card's fields, each once. */
function atFields(problems: readonly Problem[]): readonly Problem[] {
  const moved = problems.map((problem) => ({ ...problem, field: fields.find(({ to }) => to.includes(problem.field))?.name ?? problem.field }));
  return moved.filter((problem, place) => moved.findIndex(({ field, code }) => field === problem.field && code === problem.code) === place);
}

export interface Asked {
  readonly problems: readonly Problem[];
  readonly answer: LineSetAnswer | undefined;
}

export function ask(): Asked {
  const problems: Problem[] = [];
  let input: LineSetInput | undefined = assembled();
  // What only shows when the rest is sound comes in a second round.
  for (let round = 0; input !== undefined && round < 3; round += 1) {
    const reply = calculate("line-set", input);
    if ("answer" in reply) return { answer: reply.answer, problems: atFields(problems) };
    problems.push(...problemsOf(reply));
    input = withoutFlaws(input, reply.problems);
  }
  return { answer: undefined, problems: atFields(problems) };
}

/** A heat pump of two small ports a line, joined; the outdoor unit on the roof. */
export const example = {
  refrigerant: "R-32",
  coolingCapacity: "6 kW",
  coolingEvaporatingTemperature: "7 °C",
  coolingCondensingTemperature: "45 °C",
  coolingSuperheat: "5 K",
  coolingSubcooling: "6 K",
  heatingCapacity: "7 kW",
  heatingCondensingTemperature: "42 °C",
  heatingSubcooling: "5 K",
  liquidTube: "8 mm",
  gasTube: "15 mm",
  length: "24 m",
  lift: "8 m",
  higherUnit: "outdoor",
  elbows90: "8",
  liquidPort1: "6 mm",
  liquidPort2: "6 mm",
  gasPort1: "10 mm",
  gasPort2: "10 mm",
  longestLength: "30 m",
  longestLift: "15 m",
  prechargedLength: "10 m",
  designPressure: "40 bar",
  leastCapacity: "25 %",
};
