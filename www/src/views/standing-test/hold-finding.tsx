// The head of the card: what the gauge should show now and how far off it is, the verdict, and what to do next.
// Before there are readings, the pressure to test at.

import type { JSX } from "preact";
import type { HoldFigures, HoldVerdict, StandingTestAnswer } from "../../core";
import { message } from "../../locale";
import { figureText, limitText } from "../../parts/figures";
import { Finding, type FoundFigure, type FoundVerdict } from "../../parts/finding";
import { VerdictLine, type MarkState } from "../../parts/verdict-line";
import { gaugeUnit, holdText, rateUnit, shownAt, type Asked } from "./ask";

const states: Readonly<Record<HoldVerdict, MarkState>> = {
  tight: "in-band",
  "losing-gas": "out-of-band",
  "cannot-tell": "cannot-tell",
  open: "open",
};

/** `empty` is what is said before anything is known. */
export function HoldFinding({ asked: { before, after, problems }, empty = message("standing-test-empty"), told = [] }: {
  readonly asked: Asked;
  readonly empty?: string;
  /** Cautions that stand above already. */
  readonly told?: readonly string[];
}): JSX.Element {
  const warnings = new Set([...(after?.warnings ?? []), ...(before?.warnings ?? [])]);
  return (
    <Finding
      figures={after?.hold ? figuresOf(after.hold) : before ? testPressure(before) : []}
      verdict={verdictOf(after, before)}
      sentence={after && reasonOf(after)}
      problems={problems}
      shownAt={shownAt()}
      empty={empty}
      cautions={[...[...warnings].map((warning) => `choice-${warning}`), "standing-test-caution-oxygen"]}
      told={told}
    >
      {after && <Reached answer={after} />}
      {after && <Standing answer={after} />}
    </Finding>
  );
}

function figuresOf({ expectedGaugePressure, measuredGaugePressure, difference, differenceUncertainty }: HoldFigures): readonly FoundFigure[] {
  return [
    {
      mark: "expected",
      name: message("standing-test-expected"),
      quantity: "gauge-pressure",
      si: expectedGaugePressure,
      precision: "table",
      beneath: message("standing-test-measured", { pressure: figureText("gauge-pressure", measuredGaugePressure, "table") }),
    },
    {
      mark: "difference",
      name: message("standing-test-difference"),
      quantity: "pressure-difference",
      si: difference,
      unit: gaugeUnit(),
      precision: "table",
      beneath: message("standing-test-plus-minus", { uncertainty: figureText("pressure-difference", differenceUncertainty, "table", gaugeUnit()) }),
    },
  ];
}

/** Never rounded up: the lowest-rated part may bear just this. */
function testPressure({ guidance }: StandingTestAnswer): readonly FoundFigure[] {
  if (!guidance) return [];
  return [{ mark: "testPressure", name: message("standing-test-at"), quantity: "gauge-pressure", si: guidance.testPressure, bound: "most" }];
}

function verdictOf(after: StandingTestAnswer | undefined, before: StandingTestAnswer | undefined): FoundVerdict | undefined {
  if (after === undefined) return before && { state: "open", word: message("standing-test-no-readings") };
  const state = states[after.verdict];
  const word = message(state === "cannot-tell" || state === "open" ? "standing-test-cannot-tell" : `choice-${after.verdict}`);
  const { hold } = after;
  if (!hold || state === "open") return { state, word };
  const { pressureLossRate: figure, pressureLossRateUncertainty: uncertainty, leakToSee: limit, margin } = hold;
  // No loss at all stands in the middle, the loss that matters at the right end.
  return { state, word, judged: { figure, verdict: state, margin, uncertainty, limit }, limits: { low: -limit, high: limit } };
}

function reasonOf({ reason }: StandingTestAnswer): string {
  return message(reason === "too-few-readings" ? "standing-test-too-few-readings" : `choice-${reason}`);
}

/** Whether the pressure was that of the test: without it a tight hold proves nothing. */
function Reached({ answer: { reached } }: { readonly answer: StandingTestAnswer }): JSX.Element {
  if (reached == null) return <p class="note" data-reached="open">{message("standing-test-not-judged")}</p>;
  const shown = { highest: figureText("gauge-pressure", reached.figure, "table"), wanted: limitText("gauge-pressure", reached.limit, "most") };
  return (
    <div data-reached={reached.verdict}>
      <VerdictLine judged={reached} quantity="pressure-difference" unit={gaugeUnit()} words={message(`standing-test-reached-${reached.verdict}`)}>
        <span class="margin">{message("standing-test-reached-of", shown)}</span>
      </VerdictLine>
    </div>
  );
}

/** Loss, margin and uncertainty in a sentence, and what to do next. */
function Standing({ answer: { hold, holdOfTwoReadings, reason, verdict } }: { readonly answer: StandingTestAnswer }): JSX.Element | null {
  if (!hold) {
    return holdOfTwoReadings == null ? null : <p data-wait>{message("standing-test-two-readings", { time: holdText(holdOfTwoReadings) })}</p>;
  }
  const rate = (si: number): string => figureText("pressure-rate", si, "table", rateUnit());
  return (
    <>
      <p data-margin>
        {message(hold.margin < 0 ? "standing-test-beyond" : "standing-test-inside", {
          loss: rate(hold.pressureLossRate),
          uncertainty: rate(hold.pressureLossRateUncertainty),
          matters: rate(hold.leakToSee),
          margin: rate(Math.abs(hold.margin)),
        })}
      </p>
      {verdict === "losing-gas" && <p data-next>{message("standing-test-find-leak")}</p>}
      {verdict === "cannot-tell" && reason !== "test-pressure-not-reached" && hold.longer > 0 && (
        <p data-wait>
          {message("standing-test-wait", { longer: holdText(hold.longer), whole: holdText(hold.holdToSee) })}
        </p>
      )}
    </>
  );
}
