// Sentences about a job: its facts, what is open, its joints, what is wrong in it.

import { show, type Fact, type JointAssessment, type OpenItem, type Precision, type Problem, type QuantityKind } from "../core";
import { hasMessage, message } from "../locale";
import { jobPrefix, lastName } from "../parts/fields";
import { figureText, limitText } from "../parts/figures";
import { vacuumUnit } from "../parts/vacuum-unit";
import { runUnit, unitOf } from "../unit-choice";
import { tubeText } from "./tube-words";

/** How a figure is written: its unit and how fine. */
interface Writing {
  readonly quantity: QuantityKind;
  readonly unit: string;
  readonly precision: Precision;
}

/** `Charge in all 1.050 kg`, with the uncertainty where there is one. */
export function factText(fact: Fact): string {
  return message("fact-told", { fact: message(fact.meaning), figure: factFigure(fact) });
}

/** The figure alone: `43.9 ± 0.3 bar`. */
export function factFigure(fact: Fact): string {
  const { meaning, quantity, si, uncertainty } = fact;
  if (meaning === "fact-tube") return tubeText(si);
  const writing = writingOf(fact);
  // What a room allows at most is never rounded up.
  if (meaning === "fact-largest-charge") return limitText(quantity, si, "most", writing.unit);
  if (uncertainty == null || uncertainty === 0) return figureText(quantity, si, writing.precision, writing.unit);
  return uncertainText(writing, si, uncertainty);
}

/** Both in one unit and to one digit, fine enough to show the uncertainty. */
function uncertainText({ quantity, unit, precision }: Writing, si: number, uncertainty: number): string {
  const told = (chosen: Precision): string => show(differenceOf(quantity), uncertainty, unit, chosen).number;
  const fineEnough = [precision, "table" as const].find((chosen) => /[1-9]/.test(told(chosen))) ?? "significant";
  const figure = show(quantity, si, unit, fineEnough);
  return `${message("fact-uncertain", { figure: figure.number, uncertainty: told(fineEnough) })}\u00a0${figure.unit}`;
}

function differenceOf(quantity: QuantityKind): QuantityKind {
  if (quantity === "gauge-pressure") return "pressure-difference";
  return quantity === "temperature" ? "temperature-difference" : quantity;
}

function writingOf({ meaning, quantity, si }: Fact): Writing {
  const [unit, precision] = unitAndPrecision(meaning, quantity, si);
  return { quantity, unit, precision };
}

function unitAndPrecision(meaning: string, quantity: QuantityKind, si: number): readonly [string, Precision] {
  if (meaning === "fact-nut") return ["mm", "significant"];
  switch (quantity) {
    case "length":
      return [runUnit(), "instrument"];
    case "time":
      return si < 180 ? ["s", "instrument"] : si < 10_800 ? ["min", "instrument"] : ["h", "instrument"];
    case "absolute-pressure":
      return [vacuumUnit(), vacuumUnit() === "mbar" ? "significant" : "table"];
    case "pressure-difference":
      return [unitOf("gauge-pressure"), "table"];
    case "mass":
      return massWriting(si);
    default:
      return [unitOf(quantity), "instrument"];
  }
}

/** Small masses in the small unit. */
function massWriting(si: number): readonly [string, Precision] {
  const large = unitOf("mass");
  const isCustomary = large === "lb" || large === "oz";
  if (Math.abs(si) < (isCustomary ? 0.4535 : 0.9995)) return isCustomary ? ["oz", "instrument"] : ["g", "instrument"];
  return [large, "instrument"];
}

export function openText({ matter, field, count }: OpenItem): string {
  return message(`open-${matter}`, { field: field == null ? "" : withinPart(field), count: count ?? 0 });
}

/** What a field is called within its part of the job, which its stage tells: `Gas line: Tube`. */
function withinPart(field: string): string {
  const ids = field.split(".").slice(1, -1).map((step) => `field-${step}`).filter(hasMessage);
  return [...ids, `field-${lastName(field)}`].map((id) => message(id)).join(": ");
}

/** Its own name, or where it is: `Gas line, union 2, indoor side`. */
export function jointText({ name, line, place, count }: JointAssessment): string {
  if (name != null) return name;
  const where = message(`joint-place-${place}`);
  return message("joint-named", { line: message(`joint-line-${line}`), place: count == null ? where : message("joint-counted", { place: where, count }) });
}

/** What the field of a problem is called, with what it stands in: `Gas line: Tube`. */
export function fieldPlaceText({ field }: Problem): string {
  const steps = field.slice(field.startsWith(jobPrefix) ? jobPrefix.length : 0).split(".");
  const names = steps.map((step) => `field-${step}`).filter(hasMessage);
  return names.map((id) => message(id)).join(": ");
}
