// Sentences about a job: its facts, what is open, its joints.

import type { Fact, JointAssessment, OpenItem } from "../core";
import { message } from "../locale";
import { lastName } from "../parts/fields";
import { figureText } from "../parts/figures";

/** `Charge in all 1.05 kg`, with the uncertainty where there is one. */
export function factText({ meaning, quantity, si, uncertainty }: Fact): string {
  const figure = figureText(quantity, si);
  const text = uncertainty == null ? figure : message("fact-uncertain", { figure, uncertainty: uncertaintyText(quantity, uncertainty) });
  return message("fact-told", { fact: message(meaning), figure: text });
}

function uncertaintyText(quantity: Fact["quantity"], si: number): string {
  const isPressure = quantity === "gauge-pressure" || quantity === "absolute-pressure";
  return figureText(isPressure ? "pressure-difference" : quantity === "temperature" ? "temperature-difference" : quantity, si, "table");
}

export function openText({ matter, field, count }: OpenItem): string {
  const named = field == null ? "" : message(`field-${lastName(field)}`);
  return message(`open-${matter}`, { field: named, count: count ?? 0 });
}

/** Its own name, or where it is: `Gas line, union 2, indoor side`. */
export function jointText({ name, line, place, count }: JointAssessment): string {
  if (name != null) return name;
  const where = message(`joint-place-${place}`);
  return message("joint-named", { line: message(`joint-line-${line}`), place: count == null ? where : message("joint-counted", { place: where, count }) });
}
