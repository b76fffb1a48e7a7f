// The small plots of the record: once for the screen and its letters, once for paper.

import type { JSX } from "preact";
import type { Assessment } from "../../../core";
import type { PlotShape } from "../../../drawings/plot";
import { ReadingPlot, type ReadingPlotProps } from "../../../drawings/reading-plot";
import type { Sheet } from "../../../drawings/sheet";
import { message } from "../../../locale";
import { vacuumText, vacuumUnit } from "../../../parts/vacuum-unit";
import { plotOfHold } from "../../standing-test/hold-course";

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
  const plot = standingTest && plotOfHold(standingTest);
  return plot ? <Plots {...plot} /> : null;
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
