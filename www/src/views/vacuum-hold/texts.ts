// How the card writes what a vacuum gauge shows.

import type { Precision } from "../../core";
import { figureText } from "../../parts/figures";
import { vacuumUnit } from "../../parts/vacuum-unit";
import { rateUnit, stepUnit } from "./ask";

/** A fitted level is known to some ten microns. */
export function levelPrecision(): Precision {
  return ({ micron: "instrument", Pa: "instrument", torr: "table", mbar: "significant" } as const)[vacuumUnit()];
}

export function levelText(si: number): string {
  return figureText("absolute-pressure", si, levelPrecision(), vacuumUnit());
}

export function differenceText(si: number): string {
  return figureText("pressure-difference", si, stepUnit() === "mbar" ? "significant" : "table", stepUnit());
}

export function rateText(si: number): string {
  return figureText("pressure-rate", si, "instrument", rateUnit());
}

/** A time in the unit that people would say it in. */
export function timeText(seconds: number): string {
  const unit = seconds < 180 ? "s" : seconds < 10_800 ? "min" : "h";
  return figureText("time", seconds, unit === "h" ? "table" : "instrument", unit);
}
