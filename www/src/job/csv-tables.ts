// The readings of both holds, and the joints, as tables for spreadsheets. Numbers are in SI: each column names its unit.

import type { Assessment, JointAssessment, Moment } from "../core";
import type { TreeObject } from "../store/tree";
import { csvText, type Cell } from "./csv";
import { itemsAt, textAt } from "./document-text";

export function readingsCsv({ recordedPressures, recordedVacuums }: Assessment): string {
  const header = [
    "hold",
    "time",
    "sinceFirst_s",
    "gaugePressure_Pa",
    "absolutePressure_Pa",
    "tubeTemperature_K",
    "airTemperature_K",
    "airPressure_Pa",
    "holdBegins",
    "pumpValvedOff",
    "clockDoubt",
  ];
  const pressures = recordedPressures.map(({ moment, gaugePressure, temperature, ambientTemperature, barometer, holdBegins }): Cell[] => [
    "pressure",
    isoTime(moment?.at),
    moment?.since,
    gaugePressure,
    null,
    temperature,
    ambientTemperature,
    barometer,
    holdBegins,
    null,
    moment?.doubt,
  ]);
  const vacuums = recordedVacuums.map(({ moment, pressure, valvedOff }): Cell[] => [
    "vacuum",
    isoTime(moment?.at),
    moment?.since,
    null,
    pressure,
    null,
    null,
    null,
    null,
    valvedOff,
    moment?.doubt,
  ]);
  return csvText(header, [...pressures, ...vacuums]);
}

/** `name` says where a joint is. */
export function jointsCsv({ joints }: Assessment, document: TreeObject, name: (joint: JointAssessment) => string): string {
  const columns: readonly (readonly [string, (joint: JointAssessment) => Cell])[] = [
    ["number", ({ number }) => number],
    ["id", ({ id }) => id],
    ["joint", name],
    ["kind", ({ kind }) => kind],
    ["line", ({ line }) => line],
    ["tube_m", ({ tube }) => tube],
    ["made", ({ madeAt }) => isoTime(madeAt)],
    ["coneLeast_m", ({ cone }) => cone?.low],
    ["coneMost_m", ({ cone }) => cone?.high],
    ["cone_m", ({ measuredCone }) => measuredCone?.judgement.figure],
    ["coneUncertainty_m", ({ measuredCone }) => measuredCone?.judgement.uncertainty],
    ["coneVerdict", ({ measuredCone }) => measuredCone?.judgement.verdict],
    ["oiled", ({ oiled }) => oiled],
    ["tightened", ({ tightenedAt }) => isoTime(tightenedAt)],
    ["torqueLeast_N.m", ({ torque }) => torque?.low],
    ["torqueMost_N.m", ({ torque }) => torque?.high],
    ["torqueAtNut_N.m", ({ tightened }) => tightened?.figure],
    ["torqueUncertainty_N.m", ({ tightened }) => tightened?.uncertainty],
    ["torqueVerdict", ({ tightened }) => tightened?.verdict],
    ["leakLook", ({ leakLook }) => leakLook],
    ["looked", ({ lookedAt }) => isoTime(lookedAt)],
    ["state", ({ state }) => state],
    ["madeAnew", ({ remade }) => remade],
    ["madeAnewBecause", ({ id }) => attemptsOf(document, id).map((attempt) => textAt(attempt, "reason")).join("; ")],
    ["note", ({ id }) => textAt(document, "joints", `#${id}`, "note")],
  ];
  return csvText(
    columns.map(([head]) => head),
    joints.map((joint) => columns.map(([, cell]) => cell(joint))),
  );
}

/** Earlier attempts at a joint, as recorded. */
export function attemptsOf(document: TreeObject, id: string): readonly TreeObject[] {
  return itemsAt(document, "joints", `#${id}`, "remade");
}

/** Without the number of the clock's setting, which other programs do not read. */
function isoTime(moment: Moment | null | undefined): string | null {
  return moment == null ? null : moment.replace(/\[.*$/, "");
}
