// The readings over time beside what tight nitrogen would show, and which of them do not count, and why.

import type { JSX } from "preact";
import type { LeftOut, StandingTestAnswer } from "../../core";
import { ReadingPlot, type ReadingPlotProps } from "../../drawings/reading-plot";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { gaugeUnit } from "./ask";

/** What is drawn of a hold; nothing of a single reading, which has no course. */
export function plotOfHold({ points }: StandingTestAnswer): ReadingPlotProps | undefined {
  const [first, last] = [points[0], points[points.length - 1]];
  if (first === undefined || last === undefined || first === last) return undefined;
  return {
    quantity: "gauge-pressure",
    unit: gaugeUnit(),
    scale: "linear",
    readings: points.map(({ time, gaugePressure, leftOut, isBeyond }) => ({ time, value: gaugePressure, isLeftOut: leftOut != null, isBeyond })),
    expected: {
      curve: points.map(({ time, expectedGaugePressure: value, uncertainty }) => ({ time, value, low: value - uncertainty, high: value + uncertainty })),
      label: message("standing-test-curve"),
    },
    labels: {
      alternative: message("standing-test-drawing", {
        from: figureText("gauge-pressure", first.gaugePressure, "table"),
        to: figureText("gauge-pressure", last.gaugePressure, "table"),
        expected: figureText("gauge-pressure", last.expectedGaugePressure, "table"),
      }),
      reading: message("standing-test-reading"),
      leftOut: message("standing-test-left-out"),
      axis: message("standing-test-gauge-axis", { unit: gaugeUnit() }),
    },
  };
}

/** `rowsText` names the readings from one place among those of the answer to another. */
export function HoldCourse({ answer, rowsText }: {
  readonly answer: StandingTestAnswer;
  readonly rowsText: (first: number, last: number) => string;
}): JSX.Element | null {
  const plot = plotOfHold(answer);
  if (plot === undefined) return null;
  return (
    <section>
      <h2>{message("standing-test-course")}</h2>
      <ReadingPlot {...plot} />
      <LeftOutList leftOut={answer.leftOut} rowsText={rowsText} />
    </section>
  );
}

/** Rows next to each other with one reason are one line. */
function LeftOutList({ leftOut, rowsText }: {
  readonly leftOut: readonly LeftOut[];
  readonly rowsText: (first: number, last: number) => string;
}): JSX.Element | null {
  if (leftOut.length === 0) return null;
  return (
    <>
      <h3>{message("standing-test-left-out-heading")}</h3>
      <ul class="left-out">
        {together(leftOut).map(([first, last]) => (
          <li key={first.place} data-left-out={first.reason}>
            <svg class="key-mark" viewBox="0 0 24 16" aria-hidden="true">
              <circle class="left-out-dot" cx="12" cy="8" r="4.5" />
            </svg>
            <span>
              <b>{rowsText(first.place, last.place)}</b> {message(`choice-${first.reason}`)}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

/** First and last of each run of neighbours with the same reason. */
function together(leftOut: readonly LeftOut[]): readonly (readonly [LeftOut, LeftOut])[] {
  return leftOut.reduce<readonly (readonly [LeftOut, LeftOut])[]>((runs, next) => {
    const run = runs[runs.length - 1];
    const goesOn = run !== undefined && run[1].place + 1 === next.place && run[1].reason === next.reason;
    return goesOn ? [...runs.slice(0, -1), [run[0], next]] : [...runs, [next, next]];
  }, []);
}
