// The small plots of the record: once for the screen and its letters, once for paper.

import type { JSX } from "preact";
import type { Assessment } from "../../../core";
import type { PlotShape } from "../../../drawings/plot";
import { ReadingPlot, type ReadingPlotProps } from "../../../drawings/reading-plot";
import type { Sheet } from "../../../drawings/sheet";
import { message } from "../../../locale";
import { figureText } from "../../../parts/figures";
import { vacuumText, vacuumUnit } from "../../../parts/vacuum-unit";
import { gaugeUnit } from "../../standing-test/ask";

/** Half the width of a printed page, in CSS pixels. */
const paper: Sheet = { width: 350, letter: 8 };
const flat: PlotShape = { part: 0.25, tallest: 76 };

function Plots(props: ReadingPlotProps): JSX.Element {
  return (
    <>
      <div class="on-screen">
        <ReadingPlot {...props} />
      </div>
      <div class="on-paper">
        <ReadingPlot {...props} sheet={paper} shape={flat} />
      </div>
    </>
  );
}

export function PressurePlot({ assessment: { standingTest } }: { readonly assessment: Assessment }): JSX.Element | null {
  const points = standingTest?.points ?? [];
  const [first, last] = [points[0], points[points.length - 1]];
  if (first === undefined || last === undefined || first === last) return null;
  return (
    <Plots
      quantity="gauge-pressure"
      unit={gaugeUnit()}
      scale="linear"
      readings={points.map(({ time, gaugePressure, leftOut, isBeyond }) => ({ time, value: gaugePressure, isLeftOut: leftOut != null, isBeyond }))}
      expected={{
        curve: points.map(({ time, expectedGaugePressure: value, uncertainty }) => ({ time, value, low: value - uncertainty, high: value + uncertainty })),
        label: message("standing-test-curve"),
      }}
      labels={{
        alternative: message("standing-test-drawing", {
          from: figureText("gauge-pressure", first.gaugePressure, "table"),
          to: figureText("gauge-pressure", last.gaugePressure, "table"),
          expected: figureText("gauge-pressure", last.expectedGaugePressure, "table"),
        }),
        reading: message("standing-test-reading"),
        leftOut: message("standing-test-left-out"),
        axis: message("standing-test-gauge-axis", { unit: gaugeUnit() }),
      }}
    />
  );
}

export function VacuumPlot({ assessment: { recordedVacuums, vacuumHold, vacuumHoldReadings } }: { readonly assessment: Assessment }): JSX.Element | null {
  const readings = recordedVacuums.flatMap(({ moment, pressure, valvedOff }) =>
    moment == null || pressure == null ? [] : [{ time: moment.since, value: pressure, isLeftOut: !valvedOff }],
  );
  if (readings.length < 2) return null;
  const [begins = 0] = vacuumHoldReadings;
  // The curve's times run from the first reading of the hold.
  const start = recordedVacuums[begins]?.moment?.since ?? 0;
  const curve = (vacuumHold?.curve ?? []).map(({ time, pressure: value, uncertainty }) => ({ time: time + start, value, low: value - uncertainty, high: value + uncertainty }));
  return (
    <Plots
      quantity="absolute-pressure"
      unit={vacuumUnit()}
      scale="logarithmic"
      readings={readings}
      expected={curve.length > 1 ? { curve, label: message("vacuum-hold-curve") } : undefined}
      labels={{
        alternative: message("record-vacuum-drawing", { count: readings.length, level: vacuumHold == null ? "" : vacuumText(vacuumHold.latest.pressure) }),
        reading: message("record-valved-off"),
        leftOut: message("record-pump-on"),
      }}
    />
  );
}
