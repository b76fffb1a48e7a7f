// The readings, the curve through them with its band, and where it leads.

import type { JSX } from "preact";
import type { VacuumHoldAnswer } from "../../core";
import { ReadingPlot } from "../../drawings/reading-plot";
import { message } from "../../locale";
import { vacuumText, vacuumUnit } from "../../parts/vacuum-unit";
import { ExpectedRows } from "./found-rows";

export function HoldCourse({ answer }: { readonly answer: VacuumHoldAnswer }): JSX.Element {
  const { plotted, curve, dryPressure, latest, verdict } = answer;
  return (
    <section>
      <h2>{message("vacuum-hold-course")}</h2>
      <ReadingPlot
        quantity="absolute-pressure"
        unit={vacuumUnit()}
        scale="linear"
        readings={plotted.map(({ time, pressure }) => ({ time, value: pressure }))}
        expected={
          curve.length > 0
            ? {
                curve: curve.map(({ time, pressure, uncertainty }) => ({ time, value: pressure, low: Math.max(pressure - uncertainty, 0), high: pressure + uncertainty })),
                label: message("vacuum-hold-curve"),
              }
            : undefined
        }
        limit={{ value: dryPressure, label: message("vacuum-hold-dry-line") }}
        labels={{
          alternative: message("vacuum-hold-course-alternative", {
            count: plotted.length,
            pressure: vacuumText(latest.pressure),
            verdict: message(`vacuum-hold-${verdict}`),
          }),
          reading: message("vacuum-hold-reading"),
          leftOut: "",
        }}
      />
      <ExpectedRows answer={answer} />
    </section>
  );
}
