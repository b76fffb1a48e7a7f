// The head of the answer: what the gauge shows and where that goes, the verdict, what it means and what to do next.

import type { JSX } from "preact";
import type { VacuumHoldAnswer, VacuumVerdict } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { Finding, type FoundFigure } from "../../parts/finding";
import type { MarkState } from "../../parts/verdict-line";
import { vacuumPrecision, vacuumText, vacuumUnit } from "../../parts/vacuum-unit";
import { rateUnit, shownAt, type Asked } from "./ask";
import { differenceText, levelPrecision, rateText, timeText } from "./texts";

/** `empty` is what is said before anything is known. */
export function HoldFinding({ asked: { hold, problems }, empty = message("vacuum-hold-empty"), told = [] }: {
  readonly asked: Pick<Asked, "hold" | "problems">;
  readonly empty?: string;
  /** Cautions that stand above already. */
  readonly told?: readonly string[];
}): JSX.Element {
  return (
    <Finding
      figures={hold ? figuresOf(hold) : []}
      verdict={hold && { state: states[hold.verdict], word: message(`vacuum-hold-${hold.verdict}`) }}
      sentence={hold && (hold.reason == null ? message(`vacuum-hold-means-${hold.verdict}`) : message(`choice-${hold.reason}`))}
      problems={problems}
      shownAt={shownAt()}
      empty={empty}
      cautions={["pump-down-caution-compressor"]}
      told={told}
    >
      {hold?.likelihoods && <p data-margin>{marginText(hold)}</p>}
      {hold && <Next hold={hold} />}
    </Finding>
  );
}

const states: Readonly<Record<VacuumVerdict, MarkState>> = {
  "dry-and-tight": "in-band",
  moisture: "out-of-band",
  leak: "out-of-band",
  "cannot-tell": "cannot-tell",
  open: "open",
};

/** What the hold comes to: a leak's rise, moisture's plateau, else what the gauge shows. */
function figuresOf({ verdict, latest, held, leak, plateau }: VacuumHoldAnswer): readonly FoundFigure[] {
  const now = message("vacuum-hold-after", { time: timeText(held) });
  const shown = `${now}: ${vacuumText(latest.pressure)}`;
  if (verdict === "leak" && leak) {
    const beneath = `± ${rateText(leak.uncertainty)}; ${shown}`;
    return [{ mark: "leak", name: message("vacuum-hold-rises"), quantity: "pressure-rate", si: leak.rate, unit: rateUnit(), beneath }];
  }
  const level = { quantity: "absolute-pressure", unit: vacuumUnit(), precision: levelPrecision() } as const;
  if (verdict === "moisture" && plateau) {
    const beneath = `± ${differenceText(plateau.uncertainty)}; ${shown}`;
    return [{ ...level, mark: "plateau", name: message("vacuum-hold-levels-off"), si: plateau.pressure, beneath }];
  }
  const beneath = latest.uncertainty === 0 ? "" : `± ${differenceText(latest.uncertainty)}`;
  return [{ ...level, precision: vacuumPrecision(), mark: "latest", name: now, si: latest.pressure, beneath }];
}

/** How likely, what a verdict needs, and by how much that is met or missed. */
export function marginText({ verdict, probability, needed, leakAllowed, margin }: VacuumHoldAnswer): string {
  return message("vacuum-hold-margin", {
    verdict,
    probability: likely(probability),
    needed: figureText("ratio", needed, "instrument", "%"),
    leak: figureText("ratio", leakAllowed, "instrument", "%"),
    side: margin < 0 ? "short" : "over",
    margin: percent(Math.abs(margin)),
  });
}

function percent(si: number): string {
  return figureText("ratio", si, "table", "%");
}

/** Nothing is told as quite certain. */
function likely(si: number): string {
  return si < nearlyCertain ? percent(si) : message("vacuum-hold-over", { share: percent(nearlyCertain) });
}

const nearlyCertain = 0.999;

function Next({ hold: { verdict, reason, holdLonger } }: { readonly hold: VacuumHoldAnswer }): JSX.Element {
  return (
    <div class="next">
      <h3>{message("vacuum-hold-next")}</h3>
      {holdLonger != null && <p data-hold-longer>{message("vacuum-hold-longer", { time: timeText(holdLonger) })}</p>}
      {holdLonger == null && reason === "causes-alike" && <p>{message("vacuum-hold-no-longer")}</p>}
      <p data-next={reason ?? verdict}>{message(`vacuum-hold-next-${reason ?? verdict}`)}</p>
    </div>
  );
}
