// What the panels of the card ask the core: each just what it depends on, so that one bad field never
// blanks another panel, and a drag asks anew for the reading alone.

import { calculate, type Input, type Reply, type SaturationAnswer } from "../../core";
import { airInput } from "../../parts/air-fields";
import { entryOf, textOf, wordOf } from "../../parts/fields";

/** What is known of the refrigerant hangs on no reading: any temperature that all of them have does. */
const anyTemperature = 273.15;

function refrigerantInput(): Input<"saturation"> {
  return { refrigerant: wordOf("refrigerant") };
}

function readingInput(): Input<"saturation"> {
  return {
    ...refrigerantInput(),
    ...airInput(),
    gaugePressure: entryOf("gaugePressure", "gauge-pressure"),
    temperature: entryOf("temperature", "temperature"),
  };
}

/** The figures of the reading. */
export function askReading(): Reply<"saturation"> {
  return calculate("saturation", readingInput());
}

/** The same with a table around it. */
export function askTable(): Reply<"saturation"> {
  return calculate("saturation", { ...readingInput(), tableStep: textOf("tableStep"), tableRows: textOf("tableRows") });
}

export function askFacts(): SaturationAnswer | undefined {
  const reply = calculate("saturation", { ...refrigerantInput(), temperature: anyTemperature });
  return "answer" in reply ? reply.answer : undefined;
}

/** Hottest end of the curve, where lines of split systems end; a hotter reading has the whole curve. */
const usualEnd = 348.15;
const curvePoints = 64;

export function askCurve(hottest: number): SaturationAnswer["curve"] {
  const reply = calculate("saturation", {
    ...refrigerantInput(),
    ...airInput(),
    temperature: anyTemperature,
    curvePoints,
    curveTo: hottest > usualEnd ? null : usualEnd,
  });
  return "answer" in reply ? reply.answer.curve : [];
}

/** Whether a temperature was read rather than a gauge: then one temperature has two pressures. */
export function isByTemperature(): boolean {
  return textOf("gaugePressure").trim() === "" && textOf("temperature").trim() !== "";
}
